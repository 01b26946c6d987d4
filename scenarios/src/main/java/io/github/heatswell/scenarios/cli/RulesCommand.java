package io.github.heatswell.scenarios.cli;

import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.scenarios.interview.Interview;
import io.github.heatswell.scenarios.report.CommandResult;
import io.github.heatswell.scenarios.report.RulesReport;
import picocli.CommandLine.Model.CommandSpec;

/** {@code heatswell rules}: what the code says where a house is. */
final class RulesCommand implements ScenarioCommand {

    @Override
    public void describe(CommandSpec spec) {
        spec.addPositional(Specs.scenarios());
        spec.addOption(
                Specs.out("Default: heatswell-out/NAME-rules. With several scenarios: DIR/NAME-rules for each."));
        spec.addOption(Specs.place());
        spec.addOption(Specs.set());
        spec.addOption(Specs.units());
        Specs.describe(
                spec,
                "List the code rules that apply to the house.",
                "Lists the rules of the place that matter for the house, each with its clause, its wording where it was"
                        + " read, and how far it was checked. Shows which of them the house does not meet, and what to ask the authority where no rule was read. Simulates nothing. Writes to a folder:",
                "  rules.json, report.html");
    }

    @Override
    public String folderEnding() {
        return "-rules";
    }

    @Override
    public CommandResult answer(Scenario scenario, Request request) {
        boolean assumed = request.placeSaid().flatMap(Interview::assumedOf).isPresent();
        return RulesReport.answer(scenario, assumed, scenario.units());
    }
}
