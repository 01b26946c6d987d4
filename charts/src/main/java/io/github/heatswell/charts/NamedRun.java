package io.github.heatswell.charts;

import io.github.heatswell.narrative.NamedSummary;
import io.github.heatswell.result.RunResult;
import java.util.Objects;

/**
 * A run and what it is called where several are shown together.
 *
 * @param name the name, not blank
 * @param result what the run found
 */
public record NamedRun(String name, RunResult result) {

    /**
     * Checks that the run has a name.
     *
     * @param name the name, not blank
     * @param result what the run found
     * @throws IllegalArgumentException if the name is blank
     */
    public NamedRun {
        Objects.requireNonNull(result, "result");
        if (name.isBlank()) {
            throw new IllegalArgumentException("name: a run that is shown with others needs one");
        }
    }

    /**
     * The run without its course, of a house of which everything is known.
     *
     * @return its name and what it found
     */
    public NamedSummary summary() {
        return new NamedSummary(name, result.summary());
    }
}
