package io.github.heatswell.narrative;

import io.github.heatswell.assessment.Doubts;
import io.github.heatswell.result.RunSummary;
import java.util.Objects;

/**
 * A run whose course was not kept, and what it is called where several are shown together.
 *
 * @param name the name, not blank
 * @param summary what the run found
 * @param doubts what is not known of the house
 */
public record NamedSummary(String name, RunSummary summary, Doubts doubts) {

    /**
     * Checks that the run has a name.
     *
     * @param name the name, not blank
     * @param summary what the run found
     * @param doubts what is not known of the house
     * @throws IllegalArgumentException if the name is blank
     */
    public NamedSummary {
        Objects.requireNonNull(summary, "summary");
        Objects.requireNonNull(doubts, "doubts");
        if (name.isBlank()) {
            throw new IllegalArgumentException("name: a run that is shown with others needs one");
        }
    }

    /**
     * A run of a house of which everything is known.
     *
     * @param name the name, not blank
     * @param summary what the run found
     * @throws IllegalArgumentException if the name is blank
     */
    public NamedSummary(String name, RunSummary summary) {
        this(name, summary, Doubts.NONE);
    }
}
