package io.github.heatswell.units;

import java.util.Objects;

/**
 * A pressure together with what it is measured against. A gauge reads the difference to the air around it; the physics
 * needs the absolute value. The two are never mixed: a {@code Pressure} is made by {@link #gauge} or {@link #absolute}
 * and read back by naming the reference again.
 *
 * @param value the pressure (Pa, gauge or absolute as the reference says)
 * @param reference what the value is measured against
 */
public record Pressure(double value, Reference reference) {

    /** Digits in messages, which must tell apart what was typed. */
    private static final int MESSAGE_DIGITS = 6;

    /** What a pressure is measured against. */
    public enum Reference {
        /** Against the local atmosphere, as pressure gauges and tyre gauges read. */
        GAUGE,
        /** Against vacuum. */
        ABSOLUTE
    }

    /**
     * Checks that the value is a finite number.
     *
     * @param value the pressure (Pa, gauge or absolute as the reference says)
     * @param reference what the value is measured against
     * @throws IllegalArgumentException if the value is NaN or infinite
     */
    public Pressure {
        Objects.requireNonNull(reference, "reference");
        if (!(Math.abs(value) < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("a pressure must be a finite number, not " + value);
        }
    }

    /**
     * A pressure as a gauge shows it.
     *
     * @param value the reading, in {@code unit}, above the local atmosphere
     * @param unit the unit of the reading
     * @return the gauge pressure
     * @throws IllegalArgumentException if the value is NaN or infinite
     */
    public static Pressure gauge(double value, PressureUnit unit) {
        return new Pressure(Objects.requireNonNull(unit, "a pressure: its unit").toSi(value), Reference.GAUGE);
    }

    /**
     * A pressure against vacuum.
     *
     * @param value the pressure, in {@code unit}, above vacuum
     * @param unit the unit of the pressure
     * @return the absolute pressure
     * @throws IllegalArgumentException if the value is NaN or infinite
     */
    public static Pressure absolute(double value, PressureUnit unit) {
        return new Pressure(Objects.requireNonNull(unit, "a pressure: its unit").toSi(value), Reference.ABSOLUTE);
    }

    /**
     * This pressure against vacuum.
     *
     * @param atmosphere the absolute pressure (Pa) of the surrounding air
     * @return the absolute pressure (Pa)
     */
    public double absolute(double atmosphere) {
        return reference == Reference.ABSOLUTE ? value : value + atmosphere;
    }

    /**
     * This pressure as a gauge would show it.
     *
     * @param atmosphere the absolute pressure (Pa) of the surrounding air
     * @return the gauge pressure (Pa)
     */
    public double gauge(double atmosphere) {
        return reference == Reference.GAUGE ? value : value - atmosphere;
    }

    /**
     * This pressure in a unit, against what it is said to be: a gauge pressure stays gauge, an absolute one absolute.
     *
     * @param unit the unit
     * @return the gauge or absolute pressure in the unit given
     */
    public double in(PressureUnit unit) {
        return Objects.requireNonNull(unit, "a pressure: its unit").fromSi(value);
    }

    /** {@return the pressure in bar with its reference, for messages: {@code 4.2 bar gauge} or {@code 5.2 bar abs}} */
    @Override
    public String toString() {
        return text(MESSAGE_DIGITS);
    }

    /**
     * The pressure in bar with its reference, for messages.
     *
     * @param digits the significant digits, 1 or more
     * @return such as {@code 4.2 bar gauge} or {@code 5.2 bar abs}
     */
    public String text(int digits) {
        return Decimals.significant(PressureUnit.BAR.fromSi(value), digits)
                + (reference == Reference.GAUGE ? " bar gauge" : " bar abs");
    }
}
