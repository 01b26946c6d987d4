package io.github.heatswell.scenarios.command;

import io.github.heatswell.result.BalanceCount;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.scenarios.output.Report;
import io.github.heatswell.scenarios.output.ResultFile;
import io.github.heatswell.scenarios.output.ResultFolder;
import io.github.heatswell.scenarios.output.Results;
import io.github.heatswell.scenarios.output.RunFindings;
import io.github.heatswell.scenarios.output.RunReport;
import io.github.heatswell.scenarios.output.StreamedRun;
import io.github.heatswell.units.UnitSystem;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Supplier;
import picocli.CommandLine.Model.CommandSpec;

/** {@code heatswell run}: simulates scenarios one by one. */
final class RunCommand {

    private final Batch batch;
    private final Console console;
    private final Path out;

    private RunCommand(Batch batch, Console console, Path out) {
        this.batch = batch;
        this.console = console;
        this.out = out;
    }

    static CommandSpec spec() {
        CommandSpec spec = Specs.command((arguments, console) -> Batch.read(arguments, console)
                .map(batch -> new RunCommand(batch, console, arguments.matchedOptionValue(Specs.OUT, null)).run())
                .orElse(ExitStatus.BAD_INPUT));
        spec.addPositional(Specs.scenarios());
        spec.addOption(Specs.out("Default: heatswell-out/NAME. With several scenarios: DIR/NAME for each."));
        spec.addOption(Specs.set());
        spec.addOption(Specs.units());
        spec.addOption(Specs.sample());
        Specs.describe(
                spec,
                "Simulate scenarios and write what they show.",
                "Prints a short report of each run and writes into a folder:",
                "  trace.csv, events.csv, summary.json, pressure.png, pressure.svg,",
                "  report.html (everything on paper or a phone, hazards first)",
                "All scenarios are read before the first is run. Pressures are gauge readings.");
        return spec;
    }

    /** Runs one file as the command does; without a folder the results go where they usually do. */
    static ExitStatus run(Path file, Path out, UnitSystem units, Console console) {
        return Batch.read(file, units, console)
                .map(batch -> new RunCommand(batch, console, out).run())
                .orElse(ExitStatus.BAD_INPUT);
    }

    private ExitStatus run() {
        return batch.each(console, index -> {
            Folders.between(index, console);
            return StreamedRun.suits(batch.scenario(index)) ? stream(index) : hold(index);
        });
    }

    private ExitStatus hold(int index) {
        BalanceCount advice = new BalanceCount();
        RunResult result = batch.scenario(index).simulation().run();
        RunFindings findings = RunFindings.of(result);
        List<ResultFile> files = Results.of(batch.scenario(index), result, advice, batch.units());
        return deliver(index, files, () -> report(index, findings, advice));
    }

    /** Simulates while writing. If that cannot be done, nothing is known of the run. */
    private ExitStatus stream(int index) {
        BalanceCount advice = new BalanceCount();
        StreamedRun run = new StreamedRun(batch.scenario(index), advice, batch.units());
        return deliver(
                index,
                run.files(),
                () -> run.findings().map(found -> report(index, found, advice)).orElseGet(Report::none));
    }

    private Report report(int index, RunFindings findings, BalanceCount advice) {
        return new RunReport(batch.scenario(index), findings, advice, batch.units());
    }

    private ExitStatus deliver(int index, List<ResultFile> files, Supplier<Report> report) {
        return Folders.deliver(folder(index), files, batch.name(index), console, report);
    }

    private ResultFolder folder(int index) {
        if (out != null && batch.size() == 1) {
            return ResultFolder.at(out);
        }
        return ResultFolder.inside(out == null ? Path.of(Specs.DEFAULT_OUT) : out, batch.name(index));
    }
}
