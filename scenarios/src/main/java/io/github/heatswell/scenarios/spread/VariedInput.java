package io.github.heatswell.scenarios.spread;

import io.github.heatswell.study.UncertainInput;
import java.util.Objects;

/**
 * An input that differs from sample to sample.
 *
 * @param input its name and its spread
 * @param unit the unit of its values
 * @param words what is known of it, in words
 */
public record VariedInput(UncertainInput input, String unit, String words) {

    /**
     * Checks that everything is there.
     *
     * @param input its name and its spread
     * @param unit the unit of its values
     * @param words what is known of it, in words
     */
    public VariedInput {
        Objects.requireNonNull(input, "input");
        Objects.requireNonNull(unit, "unit");
        Objects.requireNonNull(words, "words");
    }

    /**
     * What it is called.
     *
     * @return the name, such as {@code supply.pressure}
     */
    public String name() {
        return input.name();
    }
}
