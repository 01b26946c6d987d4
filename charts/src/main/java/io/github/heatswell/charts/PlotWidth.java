package io.github.heatswell.charts;

import io.github.heatswell.charts.picture.Axis;
import io.github.heatswell.charts.picture.Size;

/** What fits side by side on the plot, whose width is about what the size leaves beside scale and names. */
final class PlotWidth {

    /** The room for the scale at the left and the names at the right, in logical pixels. */
    private static final int BESIDE = 320;

    private static final int TICK_DISTANCE = 62;
    private static final int SHORT_TICK_DISTANCE = 42;
    private static final double MARK_DISTANCE = 15;

    private PlotWidth() {}

    static int mostTicks(Size size) {
        return (size.width() - BESIDE) / TICK_DISTANCE;
    }

    /** How many ticks with names of three letters there is room for. */
    static int mostShortTicks(Size size) {
        return (size.width() - BESIDE) / SHORT_TICK_DISTANCE;
    }

    /** Columns a line is thinned to: those of a picture drawn at twice its logical size. */
    static int columns(Size size) {
        return 2 * (size.width() - BESIDE);
    }

    /** The distance on a time axis, in its unit, below which two marks would cover each other. */
    static double leastMarkDistance(Size size, Axis time) {
        return MARK_DISTANCE / (size.width() - BESIDE) * (time.to() - time.from());
    }
}
