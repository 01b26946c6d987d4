package io.github.heatswell.scenarios.command;

import io.github.heatswell.scenarios.choice.VesselAnswer;
import io.github.heatswell.scenarios.choice.VesselChoice;
import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.scenarios.output.Answer;
import io.github.heatswell.scenarios.output.SizingReport;
import io.github.heatswell.sizing.PrechargeRule;
import io.github.heatswell.units.Pressure;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;

/** {@code heatswell size}: finds the vessel for each scenario. */
final class SizeCommand implements ScenarioQuestion {

    @Override
    public void describe(CommandSpec spec) {
        spec.addPositional(Specs.scenarios());
        spec.addOption(SizeSpecs.limit());
        spec.addOption(SizeSpecs.rating());
        spec.addOption(SizeSpecs.noCodeCap());
        spec.addOption(SizeSpecs.precharge());
        spec.addOption(
                Specs.out("Default: heatswell-out/NAME-sizing. With several scenarios: DIR/NAME-sizing for each."));
        spec.addOption(Specs.set());
        spec.addOption(Specs.units());
        Specs.describe(
                spec,
                "Find the smallest expansion vessel and its precharge.",
                "Simulates the worst heat-up (a cold fill, and the first week of the scenario's own run) with vessels of"
                        + " many sizes, and puts published formulas beside the answer. Writes into a folder:",
                "  sizing.csv, sizing.json, before-after.png, before-after.svg, sizes.png,",
                "  sizes.svg, report.html",
                "Pressures are gauge readings.");
    }

    @Override
    public String folderEnding() {
        return "-sizing";
    }

    @Override
    public Answer answer(Scenario scenario, Request request) throws NoAnswerException {
        VesselAnswer answer;
        try {
            answer = choice(scenario, request).answer();
        } catch (IllegalArgumentException e) {
            throw request.refused(
                    "no vessel can be sized: " + e.getMessage(), SizingReport.hazards(scenario, request.units()));
        }
        return SizingReport.answer(answer, request.units());
    }

    private static VesselChoice choice(Scenario scenario, Request request) {
        VesselChoice.Builder choice = VesselChoice.of(scenario)
                .limit(Optional.ofNullable(request.option(SizeSpecs.LIMIT, (Pressure) null)))
                .precharge(request.option(SizeSpecs.PRECHARGE, PrechargeRule.STATIC));
        Optional.ofNullable(request.option(SizeSpecs.RATING, (Pressure) null)).ifPresent(choice::rating);
        if (request.arguments().hasMatchedOption(SizeSpecs.NO_CODE_CAP)) {
            choice.withoutCodeCap();
        }
        return choice.build();
    }
}
