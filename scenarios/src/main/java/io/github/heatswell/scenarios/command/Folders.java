package io.github.heatswell.scenarios.command;

import io.github.heatswell.scenarios.output.OutputException;
import io.github.heatswell.scenarios.output.Report;
import io.github.heatswell.scenarios.output.ResultFile;
import io.github.heatswell.scenarios.output.ResultFolder;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Supplier;
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
     * Writes results and shows the report, which is complete before the first file gets its name: where anything fails before,
     * nothing is written. A complaint is made if nothing can be written; the report is shown all the same.
     *
     * @param folder where to
     * @param files the files
     * @param who whose files they are, for complaints
     * @param console takes the report and complaints
     * @param report makes the report, with a line in front
     */
    static ExitStatus deliver(
            ResultFolder folder,
            List<ResultFile> files,
            String who,
            Console console,
            Supplier<? extends Report> report) {
        try (ResultFolder.Reserved reserved = folder.reserve()) {
            return deliver(reserved, files, who, console, report);
        } catch (OutputException e) {
            return refused(e, who, console, report);
        }
    }

    /** The same for a folder that was reserved before. */
    static ExitStatus deliver(
            ResultFolder.Reserved folder,
            List<ResultFile> files,
            String who,
            Console console,
            Supplier<? extends Report> report) {
        StringBuilder text = new StringBuilder();
        ExitStatus[] found = {ExitStatus.RAN};
        try {
            folder.write(files, () -> {
                Report complete = report.get();
                complete.written(folder.path(), files);
                text.append(complete.text());
                found[0] = ExitStatus.of(complete);
            });
        } catch (OutputException e) {
            return refused(e, who, console, report);
        }
        try {
            console.print(text.toString());
        } catch (RuntimeException | Error e) {
            console.complain(who + ": the results are complete in " + folder.path()
                    + ", but the report cannot be shown: " + ErrorMessages.unexpected(e));
            return ExitStatus.FAILED;
        }
        return found[0];
    }

    private static ExitStatus refused(
            OutputException failure, String who, Console console, Supplier<? extends Report> report) {
        console.complain(who + ": " + failure.getMessage());
        Report unwritten = report.get();
        console.print(unwritten.text());
        return ExitStatus.NOT_WRITTEN.and(ExitStatus.of(unwritten));
    }

    /** A line between the reports of two scenarios. */
    static void between(int index, Console console) {
        if (index > 0) {
            console.print("\n" + "-".repeat(WIDTH) + "\n\n");
        }
    }
}
