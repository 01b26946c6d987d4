package io.github.heatswell.charts.picture;

import java.util.Objects;

/**
 * A line on a plane.
 *
 * @param role what it is, which settles how it looks
 * @param name what the key says, or empty to stay out of the key
 * @param label what stands on the line, or empty
 * @param trail its corners
 */
public record PlaneLine(Role role, String name, String label, Trail trail) {

    /**
     * Makes the words printable.
     *
     * @param role what it is, which settles how it looks
     * @param name what the key says, or empty to stay out of the key
     * @param label what stands on the line, or empty
     * @param trail its corners
     */
    public PlaneLine {
        Objects.requireNonNull(role, "role");
        Objects.requireNonNull(trail, "trail");
        name = PlainText.of(Objects.requireNonNull(name, "name"));
        label = PlainText.of(Objects.requireNonNull(label, "label"));
    }

    /** What a line is. */
    public enum Role {
        /** Where a value is the same. */
        CONTOUR,
        /** Where a relief valve begins to drip. */
        DRIP,
        /** What the peak should stay below. */
        TARGET,
        /** The static pressure of the supply. */
        STATIC,
        /** The set pressure of a relief valve. */
        RELIEF_SET,
        /** The working pressure of the tank. */
        WORKING_PRESSURE,
        /** The share of houses, or the peak, as a curve. */
        CURVE,
        /** A dropped perpendicular that leads the eye. */
        GUIDE
    }
}
