package io.github.heatswell.scenarios.file;

import io.github.heatswell.system.Problem;
import java.util.List;
import java.util.stream.Collectors;

/** What does not belong together in one part of a file, where the description itself has no say. */
final class DraftException extends IllegalArgumentException {

    private static final long serialVersionUID = 1L;

    /** Not part of the serial form: whoever reads that gets the message alone. */
    private final transient List<Problem> problems;

    DraftException(List<Problem> problems) {
        super(problems.stream().map(Problem::toString).collect(Collectors.joining("; ")));
        this.problems = List.copyOf(problems);
    }

    DraftException(String key, String message) {
        this(List.of(new Problem(key, message)));
    }

    /** What is wrong, key by key. */
    List<Problem> problems() {
        return problems;
    }
}
