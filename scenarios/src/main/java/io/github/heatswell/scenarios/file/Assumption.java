package io.github.heatswell.scenarios.file;

import java.util.List;
import java.util.Objects;

/**
 * A value that a file did not give and that was filled in.
 *
 * @param field the field, such as {@code relief[0].full-lift}
 * @param value the value as a file would write it, such as {@code 7.7 bar}
 * @param basis why this value
 * @param range the ends between which usual values lie, as a file would write them; empty if that is not known
 */
public record Assumption(String field, String value, String basis, List<String> range) {

    /**
     * Checks that everything is there and copies the list.
     *
     * @param field the field, such as {@code relief[0].full-lift}
     * @param value the value as a file would write it, such as {@code 7.7 bar}
     * @param basis why this value
     * @param range the ends between which usual values lie; empty if that is not known
     */
    public Assumption {
        Objects.requireNonNull(field, "field");
        Objects.requireNonNull(value, "value");
        Objects.requireNonNull(basis, "basis");
        range = List.copyOf(range);
    }
}
