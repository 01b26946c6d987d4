package io.github.heatswell.charts.picture;

import java.util.Objects;
import java.util.Optional;

/**
 * A picture of one plane with its key beside it, and of a list of bars if there is one.
 *
 * @param size the room it takes
 * @param caption the words above
 * @param plane the plane
 * @param bars the bars beside it, or empty
 */
public record PlanePicture(Size size, Caption caption, Plane plane, Optional<Bars> bars) {

    /**
     * Checks that everything is there.
     *
     * @param size the room it takes
     * @param caption the words above
     * @param plane the plane
     * @param bars the bars beside it, or empty
     */
    public PlanePicture {
        Objects.requireNonNull(size, "size");
        Objects.requireNonNull(caption, "caption");
        Objects.requireNonNull(plane, "plane");
        Objects.requireNonNull(bars, "bars");
    }
}
