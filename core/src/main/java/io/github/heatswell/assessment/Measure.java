package io.github.heatswell.assessment;

import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.QuantityFormat;
import io.github.heatswell.units.UnitSystem;
import java.util.Objects;

/**
 * A number in a finding that knows what it measures.
 *
 * @param kind what it measures
 * @param value the value, in the SI unit of the kind; finite
 */
public record Measure(Kind kind, double value) {

    /** What a number measures, and in which SI unit. */
    public enum Kind {
        /** A pressure as a gauge shows it (Pa). */
        GAUGE_PRESSURE,
        /** The highest pressure to which a reducing valve may be set (Pa, gauge), in words rounded down to what can be set. */
        HIGHEST_SETTING,
        /** A difference of two pressures (Pa). */
        PRESSURE_DIFFERENCE,
        /** How far one pressure is above or below another (Pa); in words "just" where that is too little to show. */
        PRESSURE_GAP,
        /** By how much a pressure rises with each degree (Pa/K). */
        PRESSURE_PER_DEGREE,
        /** A temperature on a thermometer (K). */
        TEMPERATURE,
        /** A difference of two temperatures (K). */
        TEMPERATURE_DIFFERENCE,
        /** A volume (m3). */
        VOLUME,
        /** A volume flow (m3/s). */
        FLOW,
        /** A heating power (W). */
        POWER,
        /** A mass (kg). */
        MASS,
        /** A length (m). */
        LENGTH,
        /** A bending moment (N m). */
        MOMENT,
        /** A time that passes (s). */
        TIME,
        /** A share of a whole (-). */
        SHARE
    }

    /**
     * Checks the value.
     *
     * @param kind what it measures
     * @param value the value, in the SI unit of the kind
     * @throws IllegalArgumentException if the value is NaN or infinite
     */
    public Measure {
        Objects.requireNonNull(kind, "kind");
        if (!(Math.abs(value) < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("a measure must be a finite number, not " + value);
        }
    }

    /**
     * A pressure as a gauge shows it.
     *
     * @param pascal the pressure (Pa, gauge)
     * @return the measure
     * @throws IllegalArgumentException if it is NaN or infinite
     */
    public static Measure gauge(double pascal) {
        return new Measure(Kind.GAUGE_PRESSURE, pascal);
    }

    /**
     * A pressure as a gauge shows it.
     *
     * @param pressure the pressure
     * @param atmosphere the pressure of the air (Pa, absolute)
     * @return the measure
     */
    public static Measure gauge(Pressure pressure, double atmosphere) {
        return gauge(pressure.gauge(atmosphere));
    }

    /**
     * A temperature on a thermometer.
     *
     * @param kelvin the temperature (K)
     * @return the measure
     * @throws IllegalArgumentException if it is NaN or infinite
     */
    public static Measure temperature(double kelvin) {
        return new Measure(Kind.TEMPERATURE, kelvin);
    }

    /**
     * A volume.
     *
     * @param cubicMetres the volume (m3)
     * @return the measure
     * @throws IllegalArgumentException if it is NaN or infinite
     */
    public static Measure volume(double cubicMetres) {
        return new Measure(Kind.VOLUME, cubicMetres);
    }

    /**
     * A time that passes.
     *
     * @param seconds the time (s)
     * @return the measure
     * @throws IllegalArgumentException if it is NaN or infinite
     */
    public static Measure time(double seconds) {
        return new Measure(Kind.TIME, seconds);
    }

    /**
     * A time that passes, as closely as people tell it: to ten seconds below two minutes, else to the minute.
     *
     * @param seconds the time (s)
     * @return the measure
     * @throws IllegalArgumentException if it is NaN or infinite
     */
    public static Measure about(double seconds) {
        double step = Math.abs(seconds) < 120 ? 10 : 60;
        return time(step * Math.rint(seconds / step) + 0.0); // no zero below zero
    }

    /**
     * A share of a whole.
     *
     * @param share the share (-)
     * @return the measure
     * @throws IllegalArgumentException if it is NaN or infinite
     */
    public static Measure share(double share) {
        return new Measure(Kind.SHARE, share);
    }

    /**
     * The value with its unit, in as many digits as a reader can use.
     *
     * @param units the system of units
     * @return such as {@code 7 bar}, {@code 140 °F} or {@code 2 min 30 s}
     */
    public String text(UnitSystem units) {
        return text(QuantityFormat.unicode(Objects.requireNonNull(units, "units")));
    }

    /**
     * The value with its unit.
     *
     * @param format the units and their characters
     * @return such as {@code 7 bar}, {@code 140 degF} or {@code 7 bar (102 psi)}
     */
    public String text(QuantityFormat format) {
        Objects.requireNonNull(format, "format");
        return switch (kind) {
            case GAUGE_PRESSURE -> format.pressure(value);
            case HIGHEST_SETTING -> format.setting(value);
            case PRESSURE_DIFFERENCE -> format.pressureDifference(value);
            case PRESSURE_GAP -> format.shows(value) ? format.pressureDifference(value) : "just";
            case PRESSURE_PER_DEGREE -> format.pressurePerDegree(value);
            case TEMPERATURE -> format.temperature(value);
            case TEMPERATURE_DIFFERENCE -> format.temperatureDifference(value);
            case VOLUME -> format.volume(value);
            case FLOW -> format.flow(value);
            case POWER -> format.power(value);
            case MASS -> format.mass(value);
            case LENGTH -> format.length(value);
            case MOMENT -> format.moment(value);
            case TIME -> format.time(value);
            case SHARE -> format.share(value);
        };
    }
}
