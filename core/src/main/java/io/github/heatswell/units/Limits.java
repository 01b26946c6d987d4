package io.github.heatswell.units;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Objects;

/**
 * The range a number may have, checked once where the number enters. The comparison is written so that NaN fails it. A value
 * that misses a limit by no more than the rounding of a change of units (1e-9 of the limit) is that limit.
 *
 * @param field the field as its builder calls it
 * @param low the lowest value, in the SI unit
 * @param lowAllowed whether the lowest value itself is allowed
 * @param high the highest value, in the SI unit, allowed
 */
public record Limits(String field, double low, boolean lowAllowed, double high) {

    private static final double ROUNDING = 1e-9;
    private static final int SHOWN_DIGITS = 6;
    private static final int READ_DIGITS = 3;
    /** All digits that a number can have without showing its own rounding. */
    private static final int SOUND_DIGITS = 12;

    private static final int MAX_DIGITS = 17;

    /**
     * A range that includes both ends.
     *
     * @param field the field as its builder calls it
     * @param low the lowest value, in the SI unit
     * @param high the highest value, in the SI unit
     * @return the range
     */
    public static Limits between(String field, double low, double high) {
        return new Limits(field, low, true, high);
    }

    /**
     * A range above, but not including, its lower end.
     *
     * @param field the field as its builder calls it
     * @param low what every value must exceed, in the SI unit
     * @param high the highest value, in the SI unit
     * @return the range
     */
    public static Limits above(String field, double low, double high) {
        return new Limits(field, low, false, high);
    }

    /**
     * Checks a whole number.
     *
     * @param field the field as its builder calls it
     * @param value the number
     * @param low the lowest it may be
     * @param high the highest it may be
     * @return the same number
     * @throws IllegalArgumentException naming the field, the number and the range
     */
    public static int whole(String field, int value, int low, int high) {
        if (value < low || value > high) {
            throw new IllegalArgumentException(
                    field + ": " + value + " is outside the allowed range, " + low + " to " + high);
        }
        return value;
    }

    /**
     * Converts and checks.
     *
     * @param value the value as given
     * @param unit the unit it was given in
     * @return the value in the SI unit, within the range
     * @throws IllegalArgumentException naming the field, the value with its unit and the range in that unit
     */
    public double check(double value, Unit unit) {
        Objects.requireNonNull(unit, () -> field + ": its unit");
        double si = unit.toSi(value);
        if (contains(si)) {
            return Math.max(low, Math.min(high, si));
        }
        throw new IllegalArgumentException(field + ": " + complaint(value, unit));
    }

    /**
     * Checks a value in the SI unit.
     *
     * @param si the value, in the SI unit
     * @param told the unit in which a refusal states the value and the range
     * @return the same value, in the SI unit and within the range
     * @throws IllegalArgumentException naming the field, the value with its unit and the range in that unit
     */
    public double checkSi(double si, Unit told) {
        Objects.requireNonNull(told, () -> field + ": the unit it is told in");
        if (contains(si)) {
            return Math.max(low, Math.min(high, si));
        }
        throw new IllegalArgumentException(field + ": " + complaint(told.fromSi(si), told));
    }

    /**
     * Checks the number of a pressure, whatever its reference.
     *
     * @param value the pressure
     * @return the same pressure, within the range
     * @throws IllegalArgumentException naming the field, the value and the range, in bar
     */
    public Pressure check(Pressure value) {
        Objects.requireNonNull(value, field);
        double si = value.value();
        if (contains(si)) {
            return new Pressure(Math.max(low, Math.min(high, si)), value.reference());
        }
        throw new IllegalArgumentException(field + ": " + complaint(PressureUnit.BAR.fromSi(si), PressureUnit.BAR));
    }

    /**
     * Tells whether a value lies in the range, or so close to it that it is its limit.
     *
     * @param si the value, in the SI unit
     * @return whether it may be used
     */
    public boolean contains(double si) {
        boolean aboveLow = lowAllowed ? si >= low - ROUNDING * Math.abs(low) : si > low;
        return aboveLow && si <= high + ROUNDING * Math.abs(high);
    }

    /**
     * The sentence for a value outside the range, without the field.
     *
     * @param value the value as given
     * @param unit the unit it was given in
     * @return such as {@code 4000 psi is outside the allowed range, 7.26 psi to 181 psi}
     */
    public String complaint(double value, Unit unit) {
        return outside(value, unit) + " is outside the allowed range, " + (lowAllowed ? "" : "above ")
                + withUnit(lowest(unit), unit) + " to " + withUnit(highest(unit), unit);
    }

    /**
     * A value outside the range, with as many digits as it takes to see that it is.
     *
     * @param value the value as given
     * @param unit the unit it was given in
     * @return the value and its unit
     */
    public String outside(double value, Unit unit) {
        if (!Double.isFinite(value)) {
            return quantity(value, unit);
        }
        int digits = SHOWN_DIGITS;
        while (digits < MAX_DIGITS
                && contains(
                        unit.toSi(rounded(value, digits, RoundingMode.HALF_UP).doubleValue()))) {
            digits++;
        }
        return withUnit(rounded(value, digits, RoundingMode.HALF_UP), unit);
    }

    /** A displayed limit is rounded towards the range, so that it is itself allowed. */
    private BigDecimal lowest(Unit unit) {
        return limit(unit.fromSi(low), RoundingMode.CEILING);
    }

    private BigDecimal highest(Unit unit) {
        return limit(unit.fromSi(high), RoundingMode.FLOOR);
    }

    /** In all its digits if they are few, and else in as many as people read. */
    private static BigDecimal limit(double value, RoundingMode inwards) {
        double sound = sound(value);
        int digits = BigDecimal.valueOf(sound).stripTrailingZeros().precision();
        return rounded(sound, digits > SHOWN_DIGITS ? READ_DIGITS : SHOWN_DIGITS, inwards);
    }

    private static double sound(double value) {
        return rounded(value, SOUND_DIGITS, RoundingMode.HALF_UP).doubleValue();
    }

    /**
     * A number and its unit, in at most six digits.
     *
     * @param value the number
     * @param unit the unit
     * @return such as {@code 4.2 bar}
     */
    public static String quantity(double value, Unit unit) {
        if (Math.abs(value) < Double.POSITIVE_INFINITY) {
            return withUnit(rounded(value, SHOWN_DIGITS, RoundingMode.HALF_UP), unit);
        }
        return unit.symbol().isEmpty() ? Double.toString(value) : value + " " + unit.symbol();
    }

    private static String withUnit(BigDecimal number, Unit unit) {
        String plain = number.signum() == 0 ? "0" : number.stripTrailingZeros().toPlainString();
        return unit.symbol().isEmpty() ? plain : plain + " " + unit.symbol();
    }

    /** Takes the decimal number that stands for the value, not the binary one. */
    private static BigDecimal rounded(double value, int digits, RoundingMode mode) {
        return BigDecimal.valueOf(value).round(new MathContext(digits, mode));
    }
}
