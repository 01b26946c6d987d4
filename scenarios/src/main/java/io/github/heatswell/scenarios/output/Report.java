package io.github.heatswell.scenarios.output;

import io.github.heatswell.result.Balances;
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
     * The balances of all runs behind the answer. Where one does not close, the report says so near its top. There is no
     * default, so that no report can leave it out.
     *
     * @return how many runs there are, and how many of them have a balance that does not close
     */
    Balances balances();

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

            @Override
            public Balances balances() {
                return Balances.NONE;
            }
        };
    }
}
