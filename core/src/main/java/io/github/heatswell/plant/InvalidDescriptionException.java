package io.github.heatswell.plant;

import java.util.List;
import java.util.stream.Collectors;

/**
 * A description that is incomplete or contradicts itself. All problems found are listed, not the first alone.
 */
public final class InvalidDescriptionException extends IllegalArgumentException {

    private static final long serialVersionUID = 1L;

    /** Not part of the serial form that every exception drags along; nothing here is meant to be serialised. */
    private final transient List<Problem> problems;

    /**
     * Creates the exception.
     *
     * @param problems what is wrong, at least one
     */
    InvalidDescriptionException(List<Problem> problems) {
        super(problems.stream().map(Problem::toString).collect(Collectors.joining("; ")));
        this.problems = List.copyOf(problems);
    }

    /**
     * What is wrong.
     *
     * @return every problem found, at least one
     */
    public List<Problem> problems() {
        return problems;
    }
}
