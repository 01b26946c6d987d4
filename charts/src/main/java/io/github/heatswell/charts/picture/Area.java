package io.github.heatswell.charts.picture;

import java.util.Objects;

/**
 * What lies between two lines, filled: a range that a quantity keeps within, or bars over a foot line.
 *
 * @param role what it is, which settles how it looks
 * @param name what it is called, or empty if the axis says it
 * @param low its lower edge
 * @param high its upper edge, over the same time
 */
public record Area(Role role, String name, Points low, Points high) {

    /**
     * Makes the name printable.
     *
     * @param role what it is, which settles how it looks
     * @param name what it is called, or empty if the axis says it
     * @param low its lower edge
     * @param high its upper edge, over the same time
     */
    public Area {
        Objects.requireNonNull(role, "role");
        Objects.requireNonNull(low, "low");
        Objects.requireNonNull(high, "high");
        name = PlainText.of(Objects.requireNonNull(name, "name"));
    }

    /** What an area is. */
    public enum Role {
        /** From the coldest to the hottest water of a tank. */
        LAYERS,
        /** From the lowest to the highest pressure of each day. */
        PRESSURE_RANGE,
        /** What was discharged each day. */
        GIVEN_OFF,
        /** What was drawn each day. */
        DRAWN
    }
}
