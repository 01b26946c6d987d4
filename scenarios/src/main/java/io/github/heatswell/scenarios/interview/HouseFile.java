package io.github.heatswell.scenarios.interview;

import io.github.heatswell.scenarios.document.Faults;
import io.github.heatswell.scenarios.document.SourceText;
import io.github.heatswell.scenarios.report.OutputException;
import io.github.heatswell.scenarios.report.ResultFile;
import io.github.heatswell.scenarios.report.ResultFolder;
import io.github.heatswell.units.UnitSystem;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;

/**
 * The file of a house, and the unfinished one beside it.
 *
 * @param path where the finished file belongs; its name ends in {@code .yaml} or {@code .yml}
 */
record HouseFile(Path path) {

    private static final String FINISHED = """
            # A house as its owner described it, written by: heatswell interview
            # Change any line with a text editor. Run it again: heatswell run FILE
            # A to B: any value between is equally likely. A +- B: within B of A, 95 % sure.
            """;

    private static final String UNFINISHED = """
            # NOT FINISHED: the interview ended before its last question, so this file
            # cannot be run yet. To continue, start the interview again in the same folder.
            # The lines that begin with #: keep the answers.
            """;

    /** Whether a file of this name can be run. */
    static boolean isNameOfScenario(Path path) {
        Path name = path.getFileName();
        return name != null && name.toString().toLowerCase(Locale.ROOT).matches(".+\\.ya?ml");
    }

    boolean exists() {
        return Files.exists(path, LinkOption.NOFOLLOW_LINKS);
    }

    /** The unfinished file that belongs to this one. */
    HouseFile unfinished() {
        String name = name().replaceFirst("(?i)\\.ya?ml$", "") + ".partial.yaml";
        return new HouseFile(path.resolveSibling(name));
    }

    /** The answers kept in an unfinished file; empty if there is no such file, none if it is another file. */
    Optional<Notes> notes() {
        if (!exists()) {
            return Optional.empty();
        }
        try {
            return Optional.of(Notes.in(SourceText.of(path, new Faults()).orElse("")));
        } catch (IOException e) {
            return Optional.of(Notes.in(""));
        }
    }

    /** Writes the finished file, complete or not at all. */
    void write(Answers answers, UnitSystem units) throws OutputException {
        write(FINISHED.replace("FILE", "FILE" + (units == UnitSystem.US ? " -u us" : "")) + "\n"
                + ScenarioText.of(answers, units));
    }

    /** Writes the unfinished file, complete or not at all. */
    void keep(Answers answers, UnitSystem units) throws OutputException {
        write(UNFINISHED + Notes.of(answers) + "\n" + ScenarioText.of(answers, units));
    }

    /** Writes a text, complete or not at all. */
    void write(String text) throws OutputException {
        ResultFolder.at(Objects.requireNonNull(path.toAbsolutePath().getParent(), "folder"))
                .write(List.of(ResultFile.ofText(name(), out -> out.append(text))));
    }

    /** Removes the file if it is there; one that cannot be removed does no harm. */
    void remove() {
        try {
            Files.deleteIfExists(path);
        } catch (IOException e) {
            // The file stays; the next interview offers to continue from it, which can be declined.
            return;
        }
    }

    String name() {
        Path last = path.getFileName();
        return last == null ? "" : last.toString();
    }
}
