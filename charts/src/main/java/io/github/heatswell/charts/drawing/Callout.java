package io.github.heatswell.charts.drawing;

import java.awt.BasicStroke;
import java.awt.Color;
import java.util.Optional;

/**
 * A line's name beside the plot.
 *
 * @param at the height (logical pixels) at which the line meets the edge of the plot
 * @param side whether the line lies on the scale or beyond one of its ends
 * @param words the name
 * @param sample how the line is drawn, for a sample before the name; none where the words alone tell which line it is
 * @param color the line's own colour
 */
record Callout(double at, Side side, TextBlock words, Optional<BasicStroke> sample, Color color) {

    /** Where a line lies. */
    enum Side {
        /** On the scale. */
        WITHIN,
        /** Above its upper end. */
        ABOVE,
        /** Below its lower end. */
        BELOW
    }
}
