package io.github.heatswell.scenarios.report;

import io.github.heatswell.result.Balances;
import io.github.heatswell.scenarios.wording.Printable;
import io.github.heatswell.scenarios.wording.Wrapped;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * What a command answers, for reading on a terminal: lines of at most 79 columns, but for paths. The words of caution follow.
 *
 * @param said the answer; what may hurt somebody stands first. Empty where nothing is known
 * @param isHazard whether people may be hurt
 * @param balances how many runs there are behind the answer, and how many of them have a balance that does not close; where one
 *     does not, the answer says so near its top
 * @param next the command that goes on from here; empty if there is none
 */
public record Report(String said, boolean isHazard, Balances balances, Optional<NextStep> next) {

    /** A document as a report. */
    static Report of(Document document, Balances balances) {
        return new Report(
                TextPage.of(document),
                document.isHazard(),
                balances,
                document.isHazard() ? Optional.of(NextStep.afterHazard()) : Optional.empty());
    }

    /** The same with what comes next where nobody may be hurt: what comes after that is said already. */
    Report thenIfCalm(NextStep step) {
        return isHazard ? this : then(step);
    }

    /** The same with what comes next. */
    Report then(NextStep step) {
        return new Report(said, isHazard, balances, Optional.of(step));
    }

    /** The report where nothing is known. */
    static final Report NONE = new Report("", false, Balances.NONE, Optional.empty());

    /**
     * Checks that everything is there.
     *
     * @param said the answer
     * @param isHazard whether people may be hurt
     * @param balances those of the runs behind the answer
     * @param next the command that goes on from here; empty if there is none
     */
    public Report {
        Objects.requireNonNull(said, "said");
        Objects.requireNonNull(balances, "balances");
        Objects.requireNonNull(next, "next");
    }

    /**
     * The report of an answer that was not written.
     *
     * @return the lines
     */
    public String text() {
        return said.isEmpty() ? "" : said + "\n" + Document.cautionInShort();
    }

    /**
     * The report of an answer that was written.
     *
     * @param folder where its files are
     * @param files the files
     * @return the lines
     */
    public String text(Path folder, List<ResultFile> files) {
        String names = String.join(", ", files.stream().map(ResultFile::name).toList());
        return said + "\nWritten to " + Printable.line(folder.toString()) + ":\n" + Wrapped.lines(names, "  ", "  ")
                + "\n" + Document.cautionInShort();
    }
}
