package io.github.heatswell.scenarios.command;

import io.github.heatswell.result.RunResult;
import io.github.heatswell.scenarios.output.OutputException;
import io.github.heatswell.scenarios.output.ResultFile;
import io.github.heatswell.scenarios.output.ResultFolder;
import io.github.heatswell.scenarios.output.Results;
import io.github.heatswell.scenarios.output.RunFindings;
import io.github.heatswell.scenarios.output.RunReport;
import io.github.heatswell.scenarios.output.StreamedRun;
import io.github.heatswell.units.UnitSystem;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
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
        ExitStatus status = ExitStatus.RAN;
        for (int i = 0; i < batch.size(); i++) {
            if (i > 0) {
                console.print("\n" + "-".repeat(79) + "\n\n");
            }
            status = status.and(run(i));
        }
        return status;
    }

    private ExitStatus run(int index) {
        return StreamedRun.suits(batch.scenario(index))
                ? batch.attempt(index, console, () -> stream(index)).orElse(ExitStatus.FAILED)
                : hold(index);
    }

    private ExitStatus hold(int index) {
        Optional<RunResult> result = batch.simulate(index, console);
        if (result.isEmpty()) {
            return ExitStatus.FAILED;
        }
        RunFindings findings = RunFindings.of(result.get());
        List<ResultFile> files = Results.of(batch.scenario(index), result.get(), batch.units());
        return report(index, findings, files, write(index, files));
    }

    /** Simulates while writing. If that cannot be done, nothing is known of the run. */
    private ExitStatus stream(int index) {
        StreamedRun run = new StreamedRun(batch.scenario(index), batch.units());
        List<ResultFile> files = run.files();
        ExitStatus written = write(index, files);
        return run.findings()
                .map(findings -> report(index, findings, files, written))
                .orElse(written);
    }

    private ExitStatus report(int index, RunFindings findings, List<ResultFile> files, ExitStatus written) {
        RunReport report = new RunReport(batch.scenario(index), findings, batch.units());
        if (written == ExitStatus.RAN) {
            report.written(folder(index).path(), files);
        }
        console.print(report.text());
        return written.and(report.isHazard() ? ExitStatus.HAZARD : ExitStatus.RAN);
    }

    private ExitStatus write(int index, List<ResultFile> files) {
        try {
            folder(index).write(files);
        } catch (OutputException e) {
            console.complain(batch.name(index) + ": " + e.getMessage());
            return ExitStatus.NOT_WRITTEN;
        }
        return ExitStatus.RAN;
    }

    private ResultFolder folder(int index) {
        if (out != null && batch.size() == 1) {
            return ResultFolder.at(out);
        }
        return ResultFolder.inside(out == null ? Path.of(Specs.DEFAULT_OUT) : out, batch.name(index));
    }
}
