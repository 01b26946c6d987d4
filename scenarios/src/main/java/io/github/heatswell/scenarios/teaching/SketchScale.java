package io.github.heatswell.scenarios.teaching;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * A scale for a sketch that gives nothing away: round steps that can be told apart, and room above and below what the runs
 * show, so that the ends of the scale are not the answer.
 *
 * @param from where it begins
 * @param step from line to line, 1, 2 or 5 times a power of ten
 * @param lines how many steps it has
 */
record SketchScale(double from, double step, int lines) {

    /** As many lines as this, or somewhat fewer, are easy to read. */
    private static final int MAX_LINES = 8;

    /** The least that is left free at an end, as a share of what is shown. */
    private static final double FREE = 0.12;

    /** A curve that hardly moves gets a scale of this share of its value, not one that shows its rounding. */
    private static final double NARROW = 0.5;

    /**
     * A scale around values.
     *
     * @param low the lowest value
     * @param high the highest value
     */
    static SketchScale around(double low, double high) {
        double span = Math.max(high - low, NARROW * Math.max(Math.abs(high), Math.abs(low)));
        double missing = span - (high - low);
        double bottom = low - missing / 2 - FREE * span;
        double top = high + missing / 2 + FREE * span;
        if (low >= 0 && bottom < 0) {
            bottom = 0;
        }
        double step = step(top - bottom);
        double first = Math.floor(bottom / step + 1e-9) * step;
        double last = Math.ceil(top / step - 1e-9) * step;
        return new SketchScale(first, step, (int) Math.round((last - first) / step));
    }

    /** What stands at a line. */
    String label(int line) {
        int decimals = Math.max(0, -(int) Math.floor(Math.log10(step) + 1e-9));
        BigDecimal value = BigDecimal.valueOf(from + line * step).setScale(decimals, RoundingMode.HALF_UP);
        return value.signum() == 0 ? "0" : value.toPlainString();
    }

    /** A distance of 1, 2 or 5 times a power of ten, at most eight of which make a span. */
    static double step(double span) {
        double power = Math.pow(10, Math.floor(Math.log10(span / MAX_LINES)));
        double part = span / MAX_LINES / power;
        return power * (part <= 1 ? 1 : part <= 2 ? 2 : part <= 5 ? 5 : 10);
    }
}
