package io.github.heatswell.charts.picture;

import java.util.Objects;

/**
 * A point marked on a plane.
 *
 * @param role what it is, which settles the shape
 * @param across where it lies, in the unit of the axis to the right
 * @param up where it lies, in the unit of the axis upwards
 * @param label what is said about it, or empty
 */
public record Spot(Role role, double across, double up, String label) {

    /**
     * Makes the label printable.
     *
     * @param role what it is, which settles the shape
     * @param across where it lies, in the unit of the axis to the right
     * @param up where it lies, in the unit of the axis upwards
     * @param label what is said about it, or empty
     */
    public Spot {
        Objects.requireNonNull(role, "role");
        label = PlainText.of(Objects.requireNonNull(label, "label"));
    }

    /** What a point is. */
    public enum Role {
        /** The installation as it stands, or the answer that was found. */
        CHIEF,
        /** One of several that are read off. */
        READING,
        /** One of several that do not do. */
        FAILING
    }
}
