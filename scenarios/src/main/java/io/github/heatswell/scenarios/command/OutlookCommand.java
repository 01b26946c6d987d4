package io.github.heatswell.scenarios.command;

import io.github.heatswell.outlook.Fading;
import io.github.heatswell.scenarios.outlook.HouseOutlook;
import io.github.heatswell.scenarios.outlook.OutlookAnswer;
import io.github.heatswell.scenarios.output.OutlookFiles;
import io.github.heatswell.scenarios.output.OutlookReport;
import io.github.heatswell.scenarios.output.ResultFile;
import io.github.heatswell.scenarios.output.ResultFolder;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;

/** {@code heatswell outlook}: what the years will do as the charge of the vessel fades. */
final class OutlookCommand {

    private static final String FOLDER_ENDING = "-outlook";

    private final Batch batch;
    private final ParseResult arguments;
    private final Console console;

    private OutlookCommand(Batch batch, ParseResult arguments, Console console) {
        this.batch = batch;
        this.arguments = arguments;
        this.console = console;
    }

    static CommandSpec spec() {
        CommandSpec spec = Specs.command((arguments, console) -> Batch.read(arguments, console)
                .map(batch -> new OutlookCommand(batch, arguments, console).run())
                .orElse(ExitStatus.BAD_INPUT));
        spec.addPositional(Specs.scenarios());
        spec.addOption(OutlookSpecs.years());
        spec.addOption(OutlookSpecs.fade());
        spec.addOption(OutlookSpecs.streetSwing());
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
        return spec;
    }

    private ExitStatus run() {
        ExitStatus status = ExitStatus.RAN;
        for (int i = 0; i < batch.size(); i++) {
            status = status.and(run(i));
        }
        return status;
    }

    private ExitStatus run(int index) {
        try {
            HouseOutlook outlook = HouseOutlook.of(batch.scenario(index))
                    .years(arguments.matchedOptionValue(OutlookSpecs.YEARS, OutlookSpecs.USUAL_YEARS))
                    .fading(arguments.matchedOptionValue(OutlookSpecs.FADE, Fading.usual()))
                    .streetSwing(arguments.matchedOptionValue(OutlookSpecs.STREET_SWING, 0.0))
                    .sampled(study -> study.threads(Specs.threads(arguments)))
                    .build();
            Optional<OutlookAnswer> answer = batch.attempt(index, console, outlook::answer);
            return answer.map(found -> report(index, found)).orElse(ExitStatus.FAILED);
        } catch (IllegalArgumentException e) {
            console.complain(batch.name(index) + ": no outlook is possible: " + e.getMessage());
            return ExitStatus.BAD_INPUT;
        }
    }

    private ExitStatus report(int index, OutlookAnswer answer) {
        OutlookReport report = new OutlookReport(answer, batch.units());
        ResultFolder folder = Folders.of(arguments, batch, index, FOLDER_ENDING);
        List<ResultFile> files = OutlookFiles.of(answer, batch.units());
        ExitStatus written = Folders.write(folder, files, batch.name(index), console, report::written);
        Folders.between(index, console);
        console.print(report.text());
        return written.and(report.isHazard() ? ExitStatus.HAZARD : ExitStatus.RAN);
    }
}
