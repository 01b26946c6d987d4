package io.github.heatswell.scenarios.command;

import io.github.heatswell.ageing.PrechargeLossRange;
import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.scenarios.outlook.HouseOutlook;
import io.github.heatswell.scenarios.outlook.OutlookAnswer;
import io.github.heatswell.scenarios.output.Answer;
import io.github.heatswell.scenarios.output.OutlookReport;
import picocli.CommandLine.Model.CommandSpec;

/** {@code heatswell outlook}: what the years will do as the charge of the vessel fades. */
final class OutlookCommand implements ScenarioQuestion {

    @Override
    public void describe(CommandSpec spec) {
        spec.addPositional(Specs.scenarios());
        spec.addOption(OutlookSpecs.years());
        spec.addOption(OutlookSpecs.fade());
        spec.addOption(OutlookSpecs.mainsSwing());
        spec.addOption(Specs.threads());
        spec.addOption(
                Specs.out("Default: heatswell-out/NAME-outlook. With several scenarios: DIR/NAME-outlook for each."));
        spec.addOption(Specs.set());
        spec.addOption(Specs.units());
        Specs.describe(
                spec,
                "Look years ahead, as the charge of the vessel fades.",
                "Simulates the worst day of every month: the charge fades, the cold water has the temperature of the"
                        + " season. Says when a relief valve begins to drip, how sure that is, how low the charge may"
                        + " fade, when to check it, and what a larger vessel changes. Writes into a folder:",
                "  outlook.csv, outlook.json, outlook.png, outlook.svg, report.html",
                "Pressures are gauge readings.");
    }

    @Override
    public String folderEnding() {
        return "-outlook";
    }

    @Override
    public Answer answer(Scenario scenario, Request request) throws NoAnswerException {
        OutlookAnswer answer;
        try {
            answer = HouseOutlook.of(scenario)
                    .years(request.option(OutlookSpecs.YEARS, OutlookSpecs.USUAL_YEARS))
                    .fading(request.option(OutlookSpecs.FADE, PrechargeLossRange.usual()))
                    .mainsSwing(request.option(OutlookSpecs.MAINS_SWING, 0.0))
                    .sampled(study -> study.threads(request.threads()))
                    .build()
                    .answer();
        } catch (IllegalArgumentException e) {
            throw request.refused("no outlook is possible: " + e.getMessage());
        }
        return OutlookReport.answer(answer, request.units());
    }
}
