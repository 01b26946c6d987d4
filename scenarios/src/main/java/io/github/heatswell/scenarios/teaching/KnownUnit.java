package io.github.heatswell.scenarios.teaching;

import io.github.heatswell.assessment.Measure.Kind;
import io.github.heatswell.units.DurationUnit;
import io.github.heatswell.units.LengthUnit;
import io.github.heatswell.units.PowerUnit;
import io.github.heatswell.units.PressureUnit;
import io.github.heatswell.units.TemperatureDifferenceUnit;
import io.github.heatswell.units.TemperatureUnit;
import io.github.heatswell.units.Unit;
import io.github.heatswell.units.UnitSystem;
import io.github.heatswell.units.VolumeUnit;
import java.util.Map;
import java.util.Optional;

/**
 * A unit that a lesson may write behind a number.
 *
 * @param kind what it measures
 * @param unit the unit
 */
record KnownUnit(Kind kind, Unit unit) {

    private static final Map<String, KnownUnit> ALL = Map.of(
            "gal", new KnownUnit(Kind.VOLUME, VolumeUnit.US_GALLON),
            "psi", new KnownUnit(Kind.GAUGE_PRESSURE, PressureUnit.PSI),
            "L", new KnownUnit(Kind.VOLUME, VolumeUnit.LITRE),
            "bar", new KnownUnit(Kind.GAUGE_PRESSURE, PressureUnit.BAR),
            "degC", new KnownUnit(Kind.TEMPERATURE, TemperatureUnit.CELSIUS),
            "K", new KnownUnit(Kind.TEMPERATURE_DIFFERENCE, TemperatureDifferenceUnit.KELVIN),
            "kW", new KnownUnit(Kind.POWER, PowerUnit.KILOWATT),
            "m", new KnownUnit(Kind.LENGTH, LengthUnit.METRE),
            "min", new KnownUnit(Kind.TIME, DurationUnit.MINUTE),
            "h", new KnownUnit(Kind.TIME, DurationUnit.HOUR));

    static Optional<KnownUnit> of(String symbol) {
        return Optional.ofNullable(ALL.get(symbol));
    }

    /** The unit in which readings of a kind are written down; those of time are left to the axis of their picture. */
    static String symbol(Kind kind, UnitSystem units) {
        boolean si = units == UnitSystem.SI;
        return switch (kind) {
            case GAUGE_PRESSURE, HIGHEST_SETTING, PRESSURE_DIFFERENCE, PRESSURE_GAP ->
                units.pressure().symbol();
            case PRESSURE_PER_DEGREE -> units.pressure().symbol() + (si ? "/K" : "/\u00b0F");
            case TEMPERATURE -> si ? "\u00b0C" : "\u00b0F";
            case TEMPERATURE_DIFFERENCE -> si ? "K" : "\u00b0F";
            case VOLUME -> units.volume().symbol();
            case FLOW -> units.flow().symbol();
            case POWER -> units.power().symbol();
            case MASS -> units.mass().symbol();
            case LENGTH -> si ? "m" : "in";
            case MOMENT -> units.moment().symbol();
            case TIME -> "min";
            case SHARE -> "%";
        };
    }

    double toSi(double value) {
        return unit.toSi(value);
    }
}
