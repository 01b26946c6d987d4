package io.github.heatswell.scenarios.command;

import io.github.heatswell.ageing.PrechargeLossRange;
import io.github.heatswell.scenarios.outlook.HouseOutlook;
import io.github.heatswell.scenarios.outlook.OutlookAnswer;
import io.github.heatswell.scenarios.output.OutlookFiles;
import io.github.heatswell.scenarios.output.OutlookReport;
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
        return spec;
    }

    private ExitStatus run() {
        return batch.each(console, this::run);
    }

    private ExitStatus run(int index) {
        OutlookAnswer answer;
        try {
            answer = answer(index);
        } catch (IllegalArgumentException e) {
            console.complain(batch.name(index) + ": no outlook is possible: " + e.getMessage());
            return ExitStatus.BAD_INPUT;
        }
        Folders.between(index, console);
        return Folders.deliver(
                Folders.of(arguments, batch, index, FOLDER_ENDING),
                OutlookFiles.of(answer, batch.units()),
                batch.name(index),
                console,
                () -> new OutlookReport(answer, batch.units()));
    }

    private OutlookAnswer answer(int index) {
        return HouseOutlook.of(batch.scenario(index))
                .years(arguments.matchedOptionValue(OutlookSpecs.YEARS, OutlookSpecs.USUAL_YEARS))
                .fading(arguments.matchedOptionValue(OutlookSpecs.FADE, PrechargeLossRange.usual()))
                .mainsSwing(arguments.matchedOptionValue(OutlookSpecs.MAINS_SWING, 0.0))
                .sampled(study -> study.threads(Specs.threads(arguments)))
                .build()
                .answer();
    }
}
