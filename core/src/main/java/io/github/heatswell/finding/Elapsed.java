package io.github.heatswell.finding;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Times that pass, in the two largest units that are worth saying. */
final class Elapsed {

    private static final int MINUTE = 60;
    private static final int HOUR = 3_600;
    private static final int DAY = 86_400;

    private Elapsed() {}

    static String text(double seconds) {
        if (seconds < 10) {
            BigDecimal tenths = BigDecimal.valueOf(seconds).setScale(1, RoundingMode.HALF_UP);
            return (tenths.signum() == 0 ? "0" : tenths.stripTrailingZeros().toPlainString()) + " s";
        }
        long whole = Math.round(seconds);
        if (whole < MINUTE) {
            return whole + " s";
        }
        if (whole < HOUR) {
            return parts(whole / MINUTE, "min", whole % MINUTE, "s");
        }
        long minutes = Math.round(seconds / MINUTE);
        if (minutes < 2 * DAY / MINUTE) {
            return parts(minutes / MINUTE, "h", minutes % MINUTE, "min");
        }
        long hours = Math.round(seconds / HOUR);
        return parts(hours / 24, "d", hours % 24, "h");
    }

    private static String parts(long large, String largeUnit, long small, String smallUnit) {
        return large + " " + largeUnit + (small == 0 ? "" : " " + small + " " + smallUnit);
    }
}
