package io.github.heatswell.system;

import java.util.List;
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
     */
    public InvalidDescriptionException(List<Problem> problems) {
        super(problems.stream().map(Problem::toString).collect(Collectors.joining("; ")));
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
}
