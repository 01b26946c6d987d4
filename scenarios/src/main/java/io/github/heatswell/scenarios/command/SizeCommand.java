package io.github.heatswell.scenarios.command;

import io.github.heatswell.result.BalanceCount;
import io.github.heatswell.scenarios.choice.VesselAnswer;
import io.github.heatswell.scenarios.choice.VesselChoice;
import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.scenarios.output.SizingFiles;
import io.github.heatswell.scenarios.output.SizingReport;
import io.github.heatswell.sizing.PrechargeRule;
import io.github.heatswell.units.Pressure;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;

/** {@code heatswell size}: finds the vessel for each scenario. */
final class SizeCommand {

    private static final String FOLDER_ENDING = "-sizing";

    private final Batch batch;
    private final ParseResult arguments;
    private final Console console;

    private SizeCommand(Batch batch, ParseResult arguments, Console console) {
        this.batch = batch;
        this.arguments = arguments;
        this.console = console;
    }

    static CommandSpec spec() {
        CommandSpec spec = Specs.command((arguments, console) -> Batch.read(arguments, console)
                .map(batch -> new SizeCommand(batch, arguments, console).run())
                .orElse(ExitStatus.BAD_INPUT));
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
        return spec;
    }

    private ExitStatus run() {
        return batch.each(console, this::run);
    }

    private ExitStatus run(int index) {
        VesselAnswer answer;
        try {
            answer = choice(batch.scenario(index)).answer();
        } catch (IllegalArgumentException e) {
            String hazards = SizingReport.hazards(batch.scenario(index).system(), batch.units());
            if (!hazards.isEmpty()) {
                console.print(hazards);
            }
            console.complain(batch.name(index) + ": no vessel can be sized: " + e.getMessage());
            return ExitStatus.BAD_INPUT;
        }
        BalanceCount check = new BalanceCount();
        Folders.between(index, console);
        return Folders.deliver(
                Folders.of(arguments, batch, index, FOLDER_ENDING),
                SizingFiles.of(answer, check, batch.units()),
                batch.name(index),
                console,
                () -> new SizingReport(answer, check, batch.units()));
    }

    private VesselChoice choice(Scenario scenario) {
        VesselChoice.Builder choice = VesselChoice.of(scenario)
                .limit(Optional.ofNullable(arguments.matchedOptionValue(SizeSpecs.LIMIT, (Pressure) null)))
                .precharge(arguments.matchedOptionValue(SizeSpecs.PRECHARGE, PrechargeRule.STATIC));
        Pressure rating = arguments.matchedOptionValue(SizeSpecs.RATING, null);
        if (rating != null) {
            choice.rating(rating);
        }
        if (arguments.hasMatchedOption(SizeSpecs.NO_CODE_CAP)) {
            choice.withoutCodeCap();
        }
        return choice.build();
    }
}
