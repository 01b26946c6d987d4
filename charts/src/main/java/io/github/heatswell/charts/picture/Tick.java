package io.github.heatswell.charts.picture;

import java.util.Objects;

/**
 * A place on a scale with a name of its own, such as a clock time or a month.
 *
 * @param at where it lies, in the unit of the scale
 * @param name what stands there
 */
public record Tick(double at, String name) {

    /**
     * Makes the name printable.
     *
     * @param at where it lies, in the unit of the scale
     * @param name what stands there
     */
    public Tick {
        name = PlainText.of(Objects.requireNonNull(name, "name"));
    }
}
