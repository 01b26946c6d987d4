package io.github.heatswell.charts.picture;

import java.util.Objects;
import java.util.OptionalDouble;

/**
 * Everything a picture shows: two panels over one time axis, and the words above them.
 *
 * @param size the room it takes
 * @param caption the words above
 * @param time the time axis
 * @param end where a hazard ended the run, in the unit of the time axis, or empty
 * @param upper the upper panel
 * @param lower the lower panel
 */
public record Picture(Size size, Caption caption, Axis time, OptionalDouble end, Panel upper, Panel lower) {

    /**
     * Checks that everything is there.
     *
     * @param size the room it takes
     * @param caption the words above
     * @param time the time axis
     * @param end where a hazard ended the run, in the unit of the time axis, or empty
     * @param upper the upper panel
     * @param lower the lower panel
     */
    public Picture {
        Objects.requireNonNull(size, "size");
        Objects.requireNonNull(caption, "caption");
        Objects.requireNonNull(time, "time");
        Objects.requireNonNull(end, "end");
        Objects.requireNonNull(upper, "upper");
        Objects.requireNonNull(lower, "lower");
    }
}
