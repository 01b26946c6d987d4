package io.github.heatswell.charts;

import io.github.heatswell.charts.picture.Axis;
import io.github.heatswell.charts.picture.Panel.Level;
import io.github.heatswell.units.QuantityFormat;
import java.util.Comparator;
import java.util.List;

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

    /**
     * The scale of a pressure panel. The run's curve comes first; a level is included as long as the curve keeps enough of
     * the height. A level left out is named at the edge of the panel instead.
     */
    static final class PressureScale {

        /** The narrowest range (Pa) the course is shown in, so that a steady pressure does not look wild. */
        private static final double NARROWEST = 1e5;

        /** The share of the height the course keeps when the relief set pressure is to be shown: the question of the run. */
        private static final double SHARE_BESIDE_RELIEF = 0.2;

        /** The share it keeps beside other levels. */
        private static final double SHARE = 0.5;

        private PressureScale() {}

        /** The share of the height that a lane of bars takes at the foot. */
        private static final double LANE = 0.055;

        static Axis around(Range course, List<Level> levels, int lanes, QuantityFormat amounts) {
            Range curve = course.atLeast(amounts.units().pressure().fromSi(NARROWEST));
            Range shown = curve;
            List<Level> nearestFirst = levels.stream()
                    .sorted(Comparator.comparingDouble((Level level) -> share(level))
                            .thenComparingDouble(
                                    level -> curve.with(level.value()).span()))
                    .toList();
            for (Level level : nearestFirst) {
                Range with = shown.with(level.value());
                if (curve.span() >= share(level) * with.span()) {
                    shown = with;
                }
            }
            Axis axis = ValueScale.around(
                    "gauge pressure (" + amounts.symbol(amounts.units().pressure()) + ")",
                    shown,
                    0.06 + LANE * lanes,
                    0.12);
            boolean belowAir = axis.from() < 0 && course.low() >= 0;
            return belowAir ? axis.from(0) : axis;
        }

        private static double share(Level level) {
            return level.kind() == Level.Kind.RELIEF_SET ? SHARE_BESIDE_RELIEF : SHARE;
        }
    }
}
