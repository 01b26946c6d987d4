package io.github.heatswell.system;

import java.io.Serializable;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;

/**
 * A description that is incomplete or contradicts itself. All problems found are listed, not just the first.
 */
public final class InvalidDescriptionException extends IllegalArgumentException {

    private static final long serialVersionUID = 1L;

    /** An array, since a list need not be serialisable. */
    private final Problem[] problems;

    /**
     * Creates the exception, for builders of descriptions outside this package too.
     *
     * @param problems what is wrong, at least one
     * @throws IllegalArgumentException if there is none
     */
    public InvalidDescriptionException(List<Problem> problems) {
        super(problems.stream().map(Problem::toString).collect(Collectors.joining("; ")));
        if (problems.isEmpty()) {
            throw new IllegalArgumentException("problems: there must be at least one");
        }
        this.problems = problems.toArray(new Problem[0]);
    }

    /**
     * What is wrong.
     *
     * @return every problem found, at least one
     */
    public List<Problem> problems() {
        return List.of(problems);
    }

    /**
     * One thing wrong with a description.
     *
     * @param field the field at fault, as scenario files write it, such as {@code reseats}; of a whole system with its
     *     section in front, such as {@code vessel.precharge} or {@code relief[0].opens}
     * @param message the value with its unit, what is wrong with it and what would be allowed
     * @serial exclude
     */
    public record Problem(String field, String message) implements Serializable {

        /**
         * Checks that both parts are there.
         *
         * @param field the field at fault, as scenario files write it, such as {@code reseats}; of a whole system with its
         *     section in front, such as {@code vessel.precharge} or {@code relief[0].opens}
         * @param message the value with its unit, what is wrong with it and what would be allowed
         */
        public Problem {
            Objects.requireNonNull(field, "field");
            Objects.requireNonNull(message, "message");
        }

        /** {@return the field as its builder calls it, here {@code reseatPressure}, and what is wrong with it, in one line} */
        @Override
        public String toString() {
            return Property.of(field) + ": " + message;
        }
    }
}
