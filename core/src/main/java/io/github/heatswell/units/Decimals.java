package io.github.heatswell.units;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * Numbers in decimal digits, rounded half up: the one rounding of everything that people read.
 *
 * <p>A pressure of 4.005 bar that came from a subtraction may be stored as 4.00499999999. So a number is first rounded to
 * twelve significant digits, which removes what binary arithmetic added, and only then to the digits
 * asked for. Both times a half goes away from zero. What rounds to zero has no sign.
 */
public final class Decimals {

    /** Digits that survive a run's arithmetic in doubles. */
    private static final int NOISE_DIGITS = 12;

    private static final MathContext WITHOUT_NOISE = new MathContext(NOISE_DIGITS, RoundingMode.HALF_UP);

    /** More digits than a double has, on either side of its point. */
    static final int ANY = 1_000;

    /** Digits are grouped from this number on. */
    private static final BigDecimal GROUPED = BigDecimal.valueOf(10_000);

    private static final int GROUP = 3;

    private Decimals() {}

    /**
     * A number with at most so many decimals, without zeros at its end.
     *
     * @param value a finite number, in whatever unit
     * @param decimals how many digits may follow the point, 0 or more
     * @return such as {@code 4.01} or {@code 7}; never an exponent
     * @throws IllegalArgumentException if the number is NaN or infinite
     */
    public static String atMost(double value, int decimals) {
        return plain(rounded(exact(value), decimals, ANY));
    }

    /**
     * A number with exactly so many decimals, zeros included.
     *
     * @param value a finite number, in whatever unit
     * @param decimals how many digits follow the point, 0 or more
     * @return such as {@code 7.00}; never an exponent
     * @throws IllegalArgumentException if the number is NaN or infinite
     */
    public static String fixed(double value, int decimals) {
        return exact(value).setScale(decimals, RoundingMode.HALF_UP).toPlainString();
    }

    /**
     * A number to so many significant digits, without zeros behind its decimal point.
     *
     * @param value a finite number, in whatever unit
     * @param significant how many digits count, at least 1
     * @return such as {@code 7.7}, {@code 0.045} or {@code 38200}; never an exponent
     * @throws IllegalArgumentException if the number is NaN or infinite
     */
    public static String significant(double value, int significant) {
        return plain(rounded(exact(value), ANY, significant));
    }

    /** The number without what binary arithmetic added to it. */
    static BigDecimal exact(double value) {
        if (!(Math.abs(value) < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("only a finite number can be written, not " + value);
        }
        return BigDecimal.valueOf(value).round(WITHOUT_NOISE);
    }

    /** The number with no more decimals and no more significant digits than these. */
    static BigDecimal rounded(BigDecimal exact, int decimals, int significant) {
        int before = exact.precision() - exact.scale();
        int scale = Math.min(decimals, significant - before);
        return exact.scale() <= scale ? exact : exact.setScale(scale, RoundingMode.HALF_UP);
    }

    /** The digits without an exponent and without zeros at the end of the decimals. */
    static String plain(BigDecimal number) {
        return number.signum() == 0 ? "0" : number.stripTrailingZeros().toPlainString();
    }

    /** The digits as {@link #plain}; from 10 000 on in groups of three, with this space between them. */
    static String grouped(BigDecimal number, char space) {
        String plain = plain(number);
        if (number.abs().compareTo(GROUPED) < 0) {
            return plain;
        }
        int point = plain.indexOf('.');
        StringBuilder grouped = new StringBuilder(plain);
        for (int at = (point < 0 ? plain.length() : point) - GROUP; at > (number.signum() < 0 ? 1 : 0); at -= GROUP) {
            grouped.insert(at, space);
        }
        return grouped.toString();
    }
}
