package io.github.heatswell.scenarios.teaching;

import io.github.heatswell.units.ConductanceUnit;
import io.github.heatswell.units.Decimals;
import io.github.heatswell.units.FlowUnit;
import io.github.heatswell.units.LengthUnit;
import io.github.heatswell.units.PressureUnit;
import io.github.heatswell.units.TemperatureDifferenceUnit;
import io.github.heatswell.units.TemperatureUnit;
import io.github.heatswell.units.Unit;
import io.github.heatswell.units.UnitSystem;
import io.github.heatswell.units.VolumeUnit;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The quantities of a scenario file, or of a change to one, in the units of the reader. */
final class FileUnits {

    private record Pair(Unit from, Unit to) {}

    private static final Map<String, Pair> TO_US = Map.of(
            "bar", new Pair(PressureUnit.BAR, PressureUnit.PSI),
            "L", new Pair(VolumeUnit.LITRE, VolumeUnit.US_GALLON),
            "L/min", new Pair(FlowUnit.LITRE_PER_MINUTE, FlowUnit.US_GALLON_PER_MINUTE),
            "degC", new Pair(TemperatureUnit.CELSIUS, TemperatureUnit.FAHRENHEIT),
            "K", new Pair(TemperatureDifferenceUnit.KELVIN, TemperatureDifferenceUnit.FAHRENHEIT_DEGREE),
            "m", new Pair(LengthUnit.METRE, LengthUnit.FOOT),
            "mm", new Pair(LengthUnit.MILLIMETRE, LengthUnit.INCH),
            "W/K", new Pair(ConductanceUnit.WATT_PER_KELVIN, ConductanceUnit.BTU_PER_HOUR_FAHRENHEIT));

    private static final Pattern QUANTITY =
            Pattern.compile("(?<![\\w.:-])(-?\\d+(?:\\.\\d+)?) (bar|L/min|L|degC|K|mm|m|W/K)(?![\\w/])");

    /** Finer than any reading of a gauge, and as fine as the numbers of the course. */
    private static final int DIGITS = 4;

    private FileUnits() {}

    /** A text of metric quantities, as the lessons write them, in a system of units; what both systems use stays, such as kW. */
    static String in(UnitSystem units, String text) {
        return units == UnitSystem.US
                ? QUANTITY.matcher(text)
                        .replaceAll(found -> Matcher.quoteReplacement(
                                us(Double.parseDouble(found.group(1)), TO_US.get(found.group(2)))))
                : text;
    }

    private static String us(double value, Pair pair) {
        return Decimals.significant(pair.to().fromSi(pair.from().toSi(value)), DIGITS) + " "
                + pair.to().symbol();
    }
}
