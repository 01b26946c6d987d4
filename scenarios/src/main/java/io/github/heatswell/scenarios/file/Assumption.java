package io.github.heatswell.scenarios.file;

import java.util.Objects;

/**
 * A value that a file did not give and that was filled in.
 *
 * @param field the field, such as {@code relief[0].full-lift}
 * @param value the value as a file would write it, such as {@code 7.7 bar}
 * @param basis why this value
 */
public record Assumption(String field, String value, String basis) {

    /**
     * Checks that everything is there.
     *
     * @param field the field, such as {@code relief[0].full-lift}
     * @param value the value as a file would write it, such as {@code 7.7 bar}
     * @param basis why this value
     */
    public Assumption {
        Objects.requireNonNull(field, "field");
        Objects.requireNonNull(value, "value");
        Objects.requireNonNull(basis, "basis");
    }
}
