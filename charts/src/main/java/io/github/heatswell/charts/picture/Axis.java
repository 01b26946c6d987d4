package io.github.heatswell.charts.picture;

import java.util.List;
import java.util.Objects;

/**
 * A scale and where its ticks stand: at whole multiples of the tick distance, with their numbers, or at named places.
 *
 * @param label the quantity with its unit, such as {@code gauge pressure (bar)}
 * @param from the value at the start of the scale, in the unit of the label
 * @param to the value at its end, in the same unit, above {@code from}
 * @param tick the distance of the ticks, in the same unit, above 0
 * @param named the named ticks, which stand instead of those at multiples; empty if there are none
 */
public record Axis(String label, double from, double to, double tick, List<Tick> named) {

    /**
     * Checks that the scale runs forward.
     *
     * @param label the quantity with its unit, such as {@code gauge pressure (bar)}
     * @param from the value at the start of the scale, in the unit of the label
     * @param to the value at its end, in the same unit, above {@code from}
     * @param tick the distance of the ticks, in the same unit, above 0
     * @param named the named ticks, which stand instead of those at multiples; empty if there are none
     * @throws IllegalArgumentException if it does not, or if the tick distance is not above 0
     */
    public Axis {
        Objects.requireNonNull(label, "label");
        named = List.copyOf(Objects.requireNonNull(named, "named"));
        if (!(from < to && tick > 0 && to - from < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(
                    "a scale from " + from + " to " + to + " with ticks every " + tick + " cannot be drawn");
        }
    }

    /**
     * A scale with numbers at its ticks.
     *
     * @param label the quantity with its unit, such as {@code gauge pressure (bar)}
     * @param from the value at the start of the scale, in the unit of the label
     * @param to the value at its end, in the same unit, above {@code from}
     * @param tick the distance of the ticks, in the same unit, above 0
     * @throws IllegalArgumentException if the scale does not run forward, or if the tick distance is not above 0
     */
    public Axis(String label, double from, double to, double tick) {
        this(label, from, to, tick, List.of());
    }

    /**
     * Whether a value lies on the scale.
     *
     * @param value the value, in the unit of the label
     * @return true from the start to the end of the scale, both included
     */
    public boolean holds(double value) {
        return value >= from && value <= to;
    }
}
