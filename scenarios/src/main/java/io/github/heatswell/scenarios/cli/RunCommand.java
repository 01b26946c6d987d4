package io.github.heatswell.scenarios.cli;

import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.scenarios.report.CommandResult;
import io.github.heatswell.scenarios.report.Results;
import io.github.heatswell.scenarios.report.StreamedRun;
import picocli.CommandLine.Model.CommandSpec;

/** {@code heatswell run}: simulates scenarios one by one. */
final class RunCommand implements ScenarioCommand {

    @Override
    public void describe(CommandSpec spec) {
        spec.addPositional(Specs.scenarios());
        spec.addOption(Specs.out("Default: heatswell-out/NAME. With several scenarios: DIR/NAME for each."));
        spec.addOption(Specs.place());
        spec.addOption(Specs.set());
        spec.addOption(Specs.units());
        spec.addOption(Specs.sample());
        Specs.describe(
                spec,
                "Simulate scenarios; write a report, tables and charts.",
                "Prints a short report of each run and writes into a folder:",
                "  trace.csv, events.csv, summary.json, pressure.png, pressure.svg,",
                "  report.html (the full report, for paper or a phone; hazards first)",
                "All scenarios are read before the first one runs. Pressures are gauge pressures.");
    }

    @Override
    public String folderEnding() {
        return "";
    }

    @Override
    public CommandResult answer(Scenario scenario, Request request) {
        ProgressLine progress = ProgressLine.shownTo(request);
        return StreamedRun.suits(scenario)
                ? new StreamedRun(scenario, scenario.units())
                        .telling(progress::done)
                        .answer()
                : Results.answer(
                        scenario, scenario.simulation().telling(progress::done).run(), scenario.units());
    }
}
