package io.github.heatswell.charts.table;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * Numbers with a fixed number of decimals and a decimal point in every locale: no exponent, no grouping, no negative
 * zero, and an empty text for a missing value. Rounded half up from the exact value of the double, as
 * {@link BigDecimal} would, but without making one for each cell.
 */
final class FixedDecimals {

    private static final long[] POWERS = {1, 10, 100, 1_000, 10_000, 100_000, 1_000_000};

    /** Below this a double and the double half a unit above its whole part are both exact. */
    private static final double MAX = 1L << 51;

    private FixedDecimals() {}

    /**
     * Writes a number.
     *
     * @param value the number; NaN and infinity count as missing
     * @param decimals the number of decimals, 0 to 6
     */
    static String of(double value, int decimals) {
        StringBuilder text = new StringBuilder(24);
        append(text, value, decimals);
        return text.toString();
    }

    /** The same without zeros at the end of the decimals: {@code 60}, {@code 61.5}. */
    static String trimmed(double value, int decimals) {
        StringBuilder text = new StringBuilder(24);
        appendTrimmed(text, value, decimals);
        return text.toString();
    }

    /** Writes a number behind what is there already. */
    static void append(StringBuilder text, double value, int decimals) {
        if (Double.isNaN(value) || Double.isInfinite(value)) {
            return;
        }
        long power = POWERS[decimals];
        double scaled = Math.abs(value) * power;
        if (scaled >= MAX) {
            text.append(new BigDecimal(value)
                    .setScale(decimals, RoundingMode.HALF_UP)
                    .toPlainString());
            return;
        }
        long rounded = rounded(Math.abs(value), power, scaled);
        if (value < 0 && rounded != 0) {
            text.append('-');
        }
        text.append(rounded / power);
        if (decimals > 0) {
            text.append('.');
            appendFraction(text, rounded % power, power);
        }
    }

    /** Writes a number without zeros at the end of the decimals behind what is there already. */
    static void appendTrimmed(StringBuilder text, double value, int decimals) {
        int start = text.length();
        append(text, value, decimals);
        if (decimals == 0 || text.length() == start) {
            return;
        }
        int end = text.length();
        while (text.charAt(end - 1) == '0') {
            end--;
        }
        text.setLength(text.charAt(end - 1) == '.' ? end - 1 : end);
    }

    /**
     * The product of value and power, rounded half up. The product as a double may be off by half its last digit; where
     * that could matter, a fused multiplication and subtraction tells on which side of the half the true one lies.
     */
    private static long rounded(double value, long power, double scaled) {
        long whole = (long) scaled;
        double half = whole + 0.5;
        boolean near = Math.abs(scaled - half) <= Math.ulp(half);
        boolean up = near ? Math.fma(value, power, -half) >= 0 : scaled >= half;
        return up ? whole + 1 : whole;
    }

    private static void appendFraction(StringBuilder text, long fraction, long power) {
        for (long digit = power / 10; digit > 0; digit /= 10) {
            text.append((char) ('0' + fraction / digit % 10));
        }
    }
}
