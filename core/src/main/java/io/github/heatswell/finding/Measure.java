package io.github.heatswell.finding;

import io.github.heatswell.units.LengthUnit;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.Unit;
import io.github.heatswell.units.UnitSystem;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
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
        /** A difference of two pressures (Pa). */
        PRESSURE_DIFFERENCE,
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

    static Measure gauge(double pascal) {
        return new Measure(Kind.GAUGE_PRESSURE, pascal);
    }

    static Measure gauge(Pressure pressure, double atmosphere) {
        return gauge(pressure.gauge(atmosphere));
    }

    static Measure temperature(double kelvin) {
        return new Measure(Kind.TEMPERATURE, kelvin);
    }

    static Measure volume(double cubicMetres) {
        return new Measure(Kind.VOLUME, cubicMetres);
    }

    static Measure time(double seconds) {
        return new Measure(Kind.TIME, seconds);
    }

    static Measure share(double share) {
        return new Measure(Kind.SHARE, share);
    }

    /**
     * The value with its unit, in as many digits as a reader can use.
     *
     * @param units the system of units
     * @return such as {@code 7 bar}, {@code 140 °F} or {@code 2 min 30 s}
     */
    public String text(UnitSystem units) {
        boolean si = Objects.requireNonNull(units, "units") == UnitSystem.SI;
        return switch (kind) {
            case GAUGE_PRESSURE, PRESSURE_DIFFERENCE -> trimmed(units.pressure(), si ? 2 : 1);
            case TEMPERATURE -> digits(units.temperature(), 1) + (si ? " °C" : " °F");
            case TEMPERATURE_DIFFERENCE -> digits(units.temperatureDifference(), 1) + (si ? " K" : " °F");
            case VOLUME -> volume(units.volume());
            case FLOW -> significant(units.flow());
            case POWER -> significant(units.power());
            case MASS -> trimmed(units.mass(), 1);
            case LENGTH -> trimmed(si ? LengthUnit.METRE : LengthUnit.INCH, si ? 2 : 1);
            case MOMENT -> trimmed(units.moment(), 1);
            case TIME -> Elapsed.text(value);
            case SHARE -> plain(100 * value, Math.abs(value) < 0.01 ? 2 : 0) + " %";
        };
    }

    private String volume(Unit unit) {
        double size = Math.abs(unit.fromSi(value));
        return size > 0 && size < 0.01
                ? "less than 0.01 " + unit.symbol()
                : size >= 999.5 ? significant(unit) : trimmed(unit, size < 0.995 ? 2 : size < 99.95 ? 1 : 0);
    }

    private String significant(Unit unit) {
        BigDecimal rounded = new BigDecimal(unit.fromSi(value)).round(new MathContext(3, RoundingMode.HALF_UP));
        return grouped(
                        rounded.signum() == 0
                                ? "0"
                                : rounded.stripTrailingZeros().toPlainString()) + " " + unit.symbol();
    }

    /** Whole numbers in groups of three. */
    private static String grouped(String number) {
        return number.contains(".") ? number : number.replaceAll("(?<=\\d)(?=(\\d{3})+$)", " ");
    }

    private String trimmed(Unit unit, int most) {
        return digits(unit, most) + " " + unit.symbol();
    }

    private String digits(Unit unit, int most) {
        return plain(unit.fromSi(value), most);
    }

    private static String plain(double number, int most) {
        BigDecimal rounded = BigDecimal.valueOf(number).setScale(most, RoundingMode.HALF_UP);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }
}
