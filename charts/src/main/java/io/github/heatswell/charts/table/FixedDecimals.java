package io.github.heatswell.charts.table;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * Numbers with a fixed number of decimals and a full stop, whatever the language of the machine: no exponent, no
 * grouping, no negative zero, and nothing at all for a value that is missing.
 */
final class FixedDecimals {

    private static final long[] POWERS = {1, 10, 100, 1_000, 10_000, 100_000, 1_000_000};

    /** Up to here a double counts in whole numbers, so that rounding by {@code long} is exact enough. */
    private static final double LARGEST = 9e15;

    private FixedDecimals() {}

    /**
     * Writes a number.
     *
     * @param value the number; NaN and infinity count as missing
     * @param decimals the number of decimals, 0 to 6
     */
    static String of(double value, int decimals) {
        if (Double.isNaN(value) || Double.isInfinite(value)) {
            return "";
        }
        long power = POWERS[decimals];
        double scaled = Math.abs(value) * power;
        if (scaled >= LARGEST) {
            return BigDecimal.valueOf(value)
                    .setScale(decimals, RoundingMode.HALF_UP)
                    .toPlainString();
        }
        long rounded = Math.round(scaled);
        StringBuilder text = new StringBuilder(24);
        if (value < 0 && rounded != 0) {
            text.append('-');
        }
        text.append(rounded / power);
        if (decimals > 0) {
            String fraction = Long.toString(rounded % power);
            text.append('.').append("0".repeat(decimals - fraction.length())).append(fraction);
        }
        return text.toString();
    }

    /** The same without zeros at the end of the decimals: {@code 60}, {@code 61.5}. */
    static String trimmed(double value, int decimals) {
        String text = of(value, decimals);
        if (text.indexOf('.') < 0) {
            return text;
        }
        int end = text.length();
        while (text.charAt(end - 1) == '0') {
            end--;
        }
        return text.substring(0, text.charAt(end - 1) == '.' ? end - 1 : end);
    }
}
