package io.github.heatswell.scenarios.output;

import java.nio.file.Path;
import java.util.List;

/** What a command answers, for reading on a terminal. */
public interface Report {

    /**
     * Tells the report that files were written.
     *
     * @param folder where they are
     * @param files the files
     */
    void written(Path folder, List<ResultFile> files);

    /**
     * The report.
     *
     * @return lines of at most 79 columns, but for paths
     */
    String text();

    /**
     * Whether people may be hurt; then that stands first.
     *
     * @return true if there is a hazard
     */
    default boolean isHazard() {
        return false;
    }

    /**
     * Whether the balance of the run, or of a run behind the answer, does not close; the report says so near its top.
     *
     * @return true if its figures are not to be relied on
     */
    default boolean isOpen() {
        return false;
    }

    /**
     * The report where nothing is known.
     *
     * @return a report without a line
     */
    static Report none() {
        return new Report() {
            @Override
            public void written(Path folder, List<ResultFile> files) {
                // Nothing is known, so nothing was written.
            }

            @Override
            public String text() {
                return "";
            }
        };
    }
}
