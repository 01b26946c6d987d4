package io.github.heatswell.scenarios.report;

import java.util.Objects;

/**
 * A value that was filled in because nobody gave it.
 *
 * @param field the field
 * @param value the value, as a scenario file has it
 * @param basis why this value
 */
public record AssumedValue(String field, String value, String basis) {

    /**
     * Checks that everything is there.
     *
     * @param field the field
     * @param value the value, as a scenario file has it
     * @param basis why this value
     */
    public AssumedValue {
        Objects.requireNonNull(field, "field");
        Objects.requireNonNull(value, "value");
        Objects.requireNonNull(basis, "basis");
    }
}
