package io.github.heatswell.narrative;

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
}
