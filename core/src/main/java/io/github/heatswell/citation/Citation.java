package io.github.heatswell.citation;

import java.util.Objects;

/**
 * Where a formula or a number comes from, and how far that was checked.
 *
 * @param text the publication with its place, or who gave the number
 * @param standing how far it was checked
 */
public record Citation(String text, Standing standing) {

    /** How far the origin of a number was checked. */
    public enum Standing {
        /** The text itself was read. */
        SEEN,
        /** Read where somebody else quotes it. */
        SECOND_HAND,
        /** Known from memory; to be checked against a copy before anything depends on it. */
        FROM_MEMORY,
        /** Given by the caller or worked out from what the caller described. */
        GIVEN
    }

    /**
     * Checks that both parts are there.
     *
     * @param text the publication with its place, or who gave the number
     * @param standing how far it was checked
     */
    public Citation {
        Objects.requireNonNull(text, "text");
        Objects.requireNonNull(standing, "standing");
    }

    /**
     * The origin of a number the caller gave.
     *
     * @return a source that says so
     */
    public static Citation given() {
        return new Citation("given", Standing.GIVEN);
    }
}
