package io.github.heatswell.scenarios.lesson;

import java.util.List;
import java.util.Objects;
import java.util.function.ToIntFunction;

/**
 * What the reader is asked to predict before looking.
 *
 * @param question what will happen
 * @param options two to four answers to choose from
 * @param outcome which of them the run shows, counted from 0
 */
public record Prediction(String question, List<String> options, ToIntFunction<LessonRun> outcome) {

    /**
     * Copies the options.
     *
     * @param question what will happen
     * @param options two to four answers to choose from
     * @param outcome which of them the run shows, counted from 0
     * @throws IllegalArgumentException if the question or an option is blank, or there are fewer than two or more than four
     */
    public Prediction {
        Texts.require("the question to predict", question);
        options = List.copyOf(Texts.require("the options of a prediction", options, 2, 4));
        Objects.requireNonNull(outcome, "outcome");
    }
}
