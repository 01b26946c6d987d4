package io.github.heatswell.scenarios.command;

import io.github.heatswell.charts.NamedRun;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.scenarios.output.ComparisonReport;
import io.github.heatswell.scenarios.output.OutputException;
import io.github.heatswell.scenarios.output.ResultFile;
import io.github.heatswell.scenarios.output.ResultFolder;
import io.github.heatswell.scenarios.output.Results;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;

/** {@code heatswell compare}: simulates scenarios and shows them in one picture and one table. */
final class CompareCommand {

    private static final String FOLDER = "comparison";
    private static final int FEWEST = 2;
    /** More curves than this cannot be told apart in one picture. */
    private static final int MOST = 6;

    private final Batch batch;
    private final Console console;
    private final Path out;

    private CompareCommand(Batch batch, Console console, Path out) {
        this.batch = batch;
        this.console = console;
        this.out = out;
    }

    static CommandSpec spec() {
        CommandSpec spec = Specs.command(CompareCommand::run);
        spec.addPositional(Specs.scenarios());
        spec.addOption(Specs.out("Default: heatswell-out/comparison."));
        spec.addOption(Specs.set());
        spec.addOption(Specs.units());
        spec.addOption(Specs.sample());
        Specs.describe(
                spec,
                "Simulate two to six scenarios and show them side by side.",
                "Prints one table and draws the pressures of all scenarios over one another. Writes into a folder:",
                "  comparison.csv, comparison.png, comparison.svg, report.html",
                "Pressures are gauge readings.");
        return spec;
    }

    private static ExitStatus run(ParseResult arguments, Console console) {
        Optional<Batch> batch = Batch.read(arguments, console);
        if (batch.isEmpty()) {
            return ExitStatus.BAD_INPUT;
        }
        int count = batch.get().size();
        if (count < FEWEST || count > MOST) {
            console.complain("heatswell: compare takes " + FEWEST + " to " + MOST + " scenarios, not " + count);
            return ExitStatus.BAD_INPUT;
        }
        return new CompareCommand(batch.get(), console, arguments.matchedOptionValue(Specs.OUT, null)).run();
    }

    private ExitStatus run() {
        List<NamedRun> runs = new ArrayList<>();
        for (int i = 0; i < batch.size(); i++) {
            Optional<RunResult> result = batch.simulate(i, console);
            if (result.isEmpty()) {
                return ExitStatus.FAILED;
            }
            runs.add(new NamedRun(batch.name(i), result.get()));
        }
        ComparisonReport report = new ComparisonReport(runs, batch.units());
        ExitStatus written = write(runs, report);
        console.print(report.text());
        boolean hazard = runs.stream().anyMatch(run -> run.result().hazard().isPresent());
        return written.and(hazard ? ExitStatus.HAZARD : ExitStatus.RAN);
    }

    private ExitStatus write(List<NamedRun> runs, ComparisonReport report) {
        ResultFolder folder =
                out == null ? ResultFolder.inside(Path.of(Specs.DEFAULT_OUT), FOLDER) : ResultFolder.at(out);
        List<ResultFile> files = Results.comparing(runs, batch.units());
        try {
            folder.write(files);
        } catch (OutputException e) {
            console.complain(e.getMessage());
            return ExitStatus.NOT_WRITTEN;
        }
        report.written(folder.path(), files);
        return ExitStatus.RAN;
    }
}
