package io.github.heatswell.charts;

import io.github.heatswell.charts.picture.Axis;

/** A value scale that ends on round numbers and leaves a margin around the curves. */
final class ValueScale {

    private static final int TICKS = 6;
    private static final double[] ROUND = {1, 2, 5, 10};

    private ValueScale() {}

    /**
     * A scale around values.
     *
     * @param airBelow the free share below the lowest value
     * @param airAbove the free share above the highest value
     */
    static Axis around(String label, Range values, double airBelow, double airAbove) {
        double span = values.span();
        double tick = roundStep(span / TICKS);
        double half = tick / 2;
        double from = Math.floor((values.low() - airBelow * span) / half) * half;
        double to = Math.ceil((values.high() + airAbove * span) / half) * half;
        return new Axis(label, from, to, tick);
    }

    /** A scale that starts at zero. */
    static Axis fromZero(String label, double high) {
        double tick = roundStep(high / 4);
        return new Axis(label, 0, Math.ceil(1.06 * high / (tick / 2)) * tick / 2, tick);
    }

    /** The smallest of 1, 2, 5 times a power of ten that is not less. */
    static double roundStep(double least) {
        double power = Math.pow(10, Math.floor(Math.log10(least)));
        for (double round : ROUND) {
            if (round * power >= least * (1 - 1e-9)) {
                return round * power;
            }
        }
        return 10 * power;
    }

    /**
     * A range of values.
     *
     * @param low the lowest
     * @param high the highest
     */
    record Range(double low, double high) {

        double span() {
            return high - low;
        }

        Range with(double value) {
            return new Range(Math.min(low, value), Math.max(high, value));
        }

        Range with(Range other) {
            return with(other.low).with(other.high);
        }

        /** The same range, widened about its middle if it is narrower than that. */
        Range atLeast(double span) {
            double missing = Math.max(0, span - span()) / 2;
            return new Range(low - missing, high + missing);
        }
    }
}
