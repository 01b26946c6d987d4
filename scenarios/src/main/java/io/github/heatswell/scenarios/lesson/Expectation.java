package io.github.heatswell.scenarios.lesson;

import java.util.Objects;
import java.util.function.Predicate;

/**
 * Something a lesson relies on and that its runs must show.
 *
 * @param description what must be so, as a sentence
 * @param holds whether it is so in a run
 */
public record Expectation(String description, Predicate<LessonRun> holds) {

    /**
     * Checks that both are there.
     *
     * @param description what must be so, as a sentence
     * @param holds whether it is so in a run
     * @throws IllegalArgumentException if the description is blank
     */
    public Expectation {
        Texts.require("the description of an expectation", description);
        Objects.requireNonNull(holds, "holds");
    }

    /**
     * An expectation that was looked at.
     *
     * @param description what was expected
     * @param held whether the run shows it
     */
    public record Checked(String description, boolean held) {}
}
