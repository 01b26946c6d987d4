package io.github.heatswell.scenarios.report;

import java.util.List;
import java.util.Objects;
import java.util.function.Supplier;

/**
 * What a question came to. Whoever makes one has computed everything; writing its files only puts it in writing. The one
 * exception is a run too long to be held: it goes on while its trace is written, and its report is known after that.
 *
 * @param files what is written, in this order
 * @param report what is shown, once the files are complete
 */
public record Answer(List<ResultFile> files, Supplier<Report> report) {

    /**
     * Checks that everything is there and copies the list.
     *
     * @param files what is written, in this order
     * @param report what is shown, once the files are complete
     */
    public Answer {
        files = List.copyOf(files);
        Objects.requireNonNull(report, "report");
    }

    /** An answer whose report is known. */
    static Answer of(List<ResultFile> files, Report report) {
        return new Answer(files, () -> report);
    }
}
