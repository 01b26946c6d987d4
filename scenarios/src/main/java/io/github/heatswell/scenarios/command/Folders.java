package io.github.heatswell.scenarios.command;

import io.github.heatswell.scenarios.output.OutputException;
import io.github.heatswell.scenarios.output.ResultFile;
import io.github.heatswell.scenarios.output.ResultFolder;
import java.nio.file.Path;
import java.util.List;
import java.util.function.BiConsumer;
import picocli.CommandLine.ParseResult;

/** Where the results of each scenario of a command line go. */
final class Folders {

    private static final int WIDTH = 79;

    private Folders() {}

    /**
     * The folder of one scenario.
     *
     * @param arguments the command line
     * @param batch its scenarios
     * @param index which of them
     * @param ending what the name of the folder ends in
     */
    static ResultFolder of(ParseResult arguments, Batch batch, int index, String ending) {
        Path out = arguments.matchedOptionValue(Specs.OUT, null);
        if (out != null && batch.size() == 1) {
            return ResultFolder.at(out);
        }
        return ResultFolder.inside(out == null ? Path.of(Specs.DEFAULT_OUT) : out, batch.name(index) + ending);
    }

    /**
     * Writes files into a folder; a complaint is made if that cannot be done.
     *
     * @param folder where to
     * @param files the files
     * @param who whose files they are, for complaints
     * @param console takes complaints
     * @param told is told where the files are, once they are there
     */
    static ExitStatus write(
            ResultFolder folder,
            List<ResultFile> files,
            String who,
            Console console,
            BiConsumer<Path, List<ResultFile>> told) {
        try {
            folder.write(files);
        } catch (OutputException e) {
            console.complain(who + ": " + e.getMessage());
            return ExitStatus.NOT_WRITTEN;
        }
        told.accept(folder.path(), files);
        return ExitStatus.RAN;
    }

    /** A line between the reports of two scenarios. */
    static void between(int index, Console console) {
        if (index > 0) {
            console.print("\n" + "-".repeat(WIDTH) + "\n\n");
        }
    }
}
