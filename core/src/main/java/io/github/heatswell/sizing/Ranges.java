package io.github.heatswell.sizing;

import io.github.heatswell.units.Decimals;

/** Checks ranges of numbers on entry. NaN is refused too. */
final class Ranges {

    private static final int MESSAGE_DIGITS = 6;

    private Ranges() {}

    /**
     * Checks a number in the SI unit.
     *
     * @throws IllegalArgumentException naming the field, the value with its unit and the range
     */
    static double check(String field, double value, String unit, double low, double high) {
        if (value >= low && value <= high) {
            return value;
        }
        throw new IllegalArgumentException(field + ": " + plain(value) + unit + " is outside the allowed range, "
                + plain(low) + unit + " to " + plain(high) + unit);
    }

    /**
     * Checks that one pressure lies below another.
     *
     * @throws IllegalArgumentException naming both with their values
     */
    static void rising(String low, double lowPascal, String high, double highPascal) {
        if (!(lowPascal < highPascal)) {
            throw new IllegalArgumentException(low + ": " + plain(lowPascal / 1e5) + " bar must be below " + high + ", "
                    + plain(highPascal / 1e5) + " bar");
        }
    }

    private static String plain(double value) {
        if (!(Math.abs(value) < Double.POSITIVE_INFINITY)) {
            return Double.toString(value);
        }
        return Decimals.significant(value, MESSAGE_DIGITS);
    }
}
