package io.github.heatswell.charts.picture;

import java.util.List;
import java.util.Objects;

/**
 * Patches that are filled alike.
 *
 * @param role what they are, which determines their look
 * @param shade how dark a band is (-), 0 to 1; of no account for other roles
 * @param name what it is called beside the plot or in the key, or empty
 * @param label what stands on the patches, or empty
 * @param rims the rims; a rim within another is a hole
 */
public record Area(Role role, double shade, String name, String label, List<Points> rims) {

    /**
     * Copies the rims and makes the words printable.
     *
     * @param role what they are, which determines their look
     * @param shade how dark a band is (-), 0 to 1; of no account for other roles
     * @param name what it is called beside the plot or in the key, or empty
     * @param label what stands on the patches, or empty
     * @param rims the rims; a rim within another is a hole
     */
    public Area {
        Objects.requireNonNull(role, "role");
        name = PlainText.of(Objects.requireNonNull(name, "name"));
        label = PlainText.of(Objects.requireNonNull(label, "label"));
        rims = List.copyOf(Objects.requireNonNull(rims, "rims"));
    }

    /**
     * The one patch between two lines over time.
     *
     * @param role what it is, which determines its look
     * @param name what it is called, or empty if the axis says it
     * @param low its lower edge
     * @param high its upper edge, over the same time
     * @return the patch; its rim follows the upper edge, then the lower one back
     */
    public static Area between(Role role, String name, Points low, Points high) {
        int count = high.count() + low.count();
        double[] across = new double[count];
        double[] up = new double[count];
        for (int i = 0; i < count; i++) {
            boolean above = i < high.count();
            across[i] = above ? high.across(i) : low.across(count - 1 - i);
            up[i] = above ? high.up(i) : low.up(count - 1 - i);
        }
        return new Area(role, 0, name, "", List.of(new Points(across, up)));
    }

    /**
     * The lowest place of any rim.
     *
     * @return the place, in the unit of the axis upwards; infinite if there are no rims
     */
    public double lowest() {
        return rims.stream().mapToDouble(Points::lowest).min().orElse(Double.POSITIVE_INFINITY);
    }

    /**
     * The highest place of any rim.
     *
     * @return the place, in the unit of the axis upwards; infinitely low if there are no rims
     */
    public double highest() {
        return rims.stream().mapToDouble(Points::highest).max().orElse(Double.NEGATIVE_INFINITY);
    }

    /** What patches are. */
    public enum Role {
        /** From the coldest to the hottest water of a tank. */
        LAYERS,
        /** Where a curve may lie. */
        UNCERTAIN,
        /** From the lowest to the highest pressure of each day. */
        PRESSURE_RANGE,
        /** Discharge of each day. */
        GIVEN_OFF,
        /** What was drawn each day. */
        DRAWN,
        /** A band of values: the higher, the darker. */
        BAND,
        /** Where a relief valve drips: hatched, rising to the right. */
        DRIPS,
        /** Where runs ended at the test pressure: hatched, falling to the right. */
        ENDED_EARLY
    }
}
