package io.github.heatswell.study;

import java.util.Objects;

/**
 * A number that is not known exactly.
 *
 * @param name what it is called, in tables and messages; not blank
 * @param distribution how it is spread, in the unit the model expects
 */
public record UncertainInput(String name, Distribution distribution) {

    /**
     * Checks that it has a name and a spread.
     *
     * @param name what it is called, in tables and messages; not blank
     * @param distribution how it is spread, in the unit the model expects
     * @throws IllegalArgumentException if the name is blank
     */
    public UncertainInput {
        Objects.requireNonNull(distribution, "distribution");
        if (Objects.requireNonNull(name, "name").isBlank()) {
            throw new IllegalArgumentException("name: an uncertain input needs a name");
        }
    }
}
