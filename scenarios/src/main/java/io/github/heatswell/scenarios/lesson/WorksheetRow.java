package io.github.heatswell.scenarios.lesson;

import io.github.heatswell.assessment.Measure;
import java.util.Objects;
import java.util.function.ToDoubleFunction;

/**
 * A reading the reader fills in.
 *
 * @param label what to read off
 * @param kind what it measures
 * @param answer the right answer from the run, in the SI unit of the kind; a pressure as a gauge shows it
 */
public record WorksheetRow(String label, Measure.Kind kind, ToDoubleFunction<LessonRun> answer) {

    /**
     * Checks that everything is there.
     *
     * @param label what to read off
     * @param kind what it measures
     * @param answer the right answer from the run, in the SI unit of the kind; a pressure as a gauge shows it
     * @throws IllegalArgumentException if the label is blank
     */
    public WorksheetRow {
        Texts.require("the label of a reading", label);
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(answer, "answer");
    }

    /**
     * A row of the answer key.
     *
     * @param label what was to be read off
     * @param value the right answer
     */
    public record Answer(String label, Measure value) {}
}
