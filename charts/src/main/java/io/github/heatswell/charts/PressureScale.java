package io.github.heatswell.charts;

import io.github.heatswell.charts.ValueScale.Range;
import io.github.heatswell.charts.picture.Axis;
import io.github.heatswell.charts.picture.Level;
import io.github.heatswell.units.QuantityFormat;
import java.util.Comparator;
import java.util.List;

/**
 * The scale of a pressure panel. The run's curve comes first; a level is included as long as the curve keeps enough of
 * the height. A level left out is named at the edge of the panel instead.
 */
final class PressureScale {

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
                        .thenComparingDouble(level -> curve.with(level.value()).span()))
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
