package io.github.heatswell.scenarios.wording;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * Numbers written the same way everywhere: with a decimal point, without grouping and without an exponent.
 */
public final class Digits {

    private Digits() {}

    /**
     * A number to a number of significant digits, without trailing noughts.
     *
     * @param value a finite number (no unit)
     * @param significant how many digits count, at least 1
     * @return such as {@code 7.7}
     */
    public static String significant(double value, int significant) {
        BigDecimal rounded = new BigDecimal(value).round(new MathContext(significant, RoundingMode.HALF_EVEN));
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }

    /**
     * A number to a number of decimals, all of them shown.
     *
     * @param value a finite number (no unit)
     * @param decimals how many digits follow the point, 0 or more
     * @return such as {@code 7.00}; what rounds to nothing has no sign
     */
    public static String fixed(double value, int decimals) {
        return new BigDecimal(value).setScale(decimals, RoundingMode.HALF_EVEN).toPlainString();
    }
}
