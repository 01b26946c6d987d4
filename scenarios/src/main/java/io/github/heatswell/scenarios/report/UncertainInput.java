package io.github.heatswell.scenarios.report;

import java.util.Objects;

/**
 * An input that is only known within a range, and what that does to the result.
 *
 * @param input which input
 * @param range between which values it lies, as it was written
 * @param outcome what was taken, or what the result is at its ends, possibly nothing
 */
public record UncertainInput(String input, String range, String outcome) {

    /**
     * Checks that everything is there.
     *
     * @param input which input
     * @param range between which values it lies, as it was written
     * @param outcome what was taken, or what the result is at its ends, possibly nothing
     */
    public UncertainInput {
        Objects.requireNonNull(input, "input");
        Objects.requireNonNull(range, "range");
        Objects.requireNonNull(outcome, "outcome");
    }
}
