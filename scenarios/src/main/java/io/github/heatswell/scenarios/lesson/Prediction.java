package io.github.heatswell.scenarios.lesson;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.ToIntFunction;

/**
 * What the reader is asked to predict before looking.
 *
 * @param question what will happen
 * @param options three or four answers to choose from
 * @param outcome which of them the run shows, counted from 0
 */
public record Prediction(String question, List<Option> options, ToIntFunction<LessonRun> outcome) {

    /**
     * An answer to choose.
     *
     * @param text the answer
     * @param reply what to tell somebody who chose it where the run shows another; empty for the answer that is right
     */
    public record Option(String text, Optional<Claim> reply) {

        /**
         * Checks that both are there.
         *
         * @param text the answer
         * @param reply what to tell somebody who chose it where the run shows another
         * @throws IllegalArgumentException if the answer is blank
         */
        public Option {
            Texts.require("one of the options of a prediction", text);
            Objects.requireNonNull(reply, "reply");
        }

        /**
         * The right answer.
         *
         * @param text the answer
         * @return the option
         * @throws IllegalArgumentException if it is blank
         */
        public static Option right(String text) {
            return new Option(text, Optional.empty());
        }

        /**
         * A wrong answer.
         *
         * @param text the answer
         * @param reply why it is wrong
         * @return the option
         * @throws IllegalArgumentException if the answer is blank
         */
        public static Option wrong(String text, Claim reply) {
            return new Option(text, Optional.of(reply));
        }
    }

    /**
     * Copies the options.
     *
     * @param question what will happen
     * @param options three or four answers to choose from
     * @param outcome which of them the run shows, counted from 0
     * @throws IllegalArgumentException if the question is blank, or there are fewer than three options or more than four
     */
    public Prediction {
        Texts.require("the question to predict", question);
        options = List.copyOf(options);
        Texts.requireCount("the options of a prediction", options.size(), 3, 4);
        Objects.requireNonNull(outcome, "outcome");
    }

    /**
     * The words of the options.
     *
     * @return one text for each option, in their order
     */
    public List<String> texts() {
        return options.stream().map(Option::text).toList();
    }
}
