package io.github.heatswell.charts.picture;

import java.util.List;
import java.util.Objects;

/**
 * Patches of a plane, filled alike.
 *
 * @param role what they are, which settles how they look
 * @param shade how dark a band is (-), 0 to 1; of no account for other roles
 * @param name what the key says, or empty to stay out of the key
 * @param label what stands on the patches, or empty
 * @param rims the rims; a rim within another is a hole
 */
public record Tint(Role role, double shade, String name, String label, List<Trail> rims) {

    /**
     * Copies the rims and makes the words printable.
     *
     * @param role what they are, which settles how they look
     * @param shade how dark a band is (-), 0 to 1; of no account for other roles
     * @param name what the key says, or empty to stay out of the key
     * @param label what stands on the patches, or empty
     * @param rims the rims; a rim within another is a hole
     */
    public Tint {
        Objects.requireNonNull(role, "role");
        name = PlainText.of(Objects.requireNonNull(name, "name"));
        label = PlainText.of(Objects.requireNonNull(label, "label"));
        rims = List.copyOf(Objects.requireNonNull(rims, "rims"));
    }

    /** What patches are. */
    public enum Role {
        /** A band of values: the higher, the darker. */
        BAND,
        /** Where a relief valve drips: hatched, rising to the right. */
        DRIPS,
        /** Where runs ended at the test pressure: hatched, falling to the right. */
        ENDED_EARLY
    }
}
