package io.github.heatswell.charts.picture;

import java.util.List;

/**
 * Stretches of time in which something was on, drawn as bars along the foot of a panel.
 *
 * @param label what was on, or empty if there are no bars
 * @param spans the stretches, in the order of time
 */
public record Bands(String label, List<Span> spans) {

    /**
     * Copies the stretches and makes the label printable.
     *
     * @param label what was on, or empty if there are no bars
     * @param spans the stretches, in the order of time
     */
    public Bands {
        label = PlainText.of(label);
        spans = List.copyOf(spans);
    }

    /**
     * No bars.
     *
     * @return bands without a stretch
     */
    public static Bands none() {
        return new Bands("", List.of());
    }

    /**
     * A stretch of time.
     *
     * @param from its start, in the unit of the time axis
     * @param to its end, not before its start
     */
    public record Span(double from, double to) {}
}
