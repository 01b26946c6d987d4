package io.github.heatswell.scenarios.command;

import io.github.heatswell.scenarios.choice.VesselChoice;
import io.github.heatswell.scenarios.output.MapFiles;
import io.github.heatswell.scenarios.output.MapReport;
import io.github.heatswell.sizing.PeakMap;
import io.github.heatswell.sizing.PeakSurvey;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;

/** {@code heatswell map}: the peak over vessel volume and precharge. */
final class MapCommand {

    private static final String FOLDER_ENDING = "-map";

    private final Batch batch;
    private final ParseResult arguments;
    private final Console console;

    private MapCommand(Batch batch, ParseResult arguments, Console console) {
        this.batch = batch;
        this.arguments = arguments;
        this.console = console;
    }

    static CommandSpec spec() {
        CommandSpec spec = Specs.command((arguments, console) -> Batch.read(arguments, console)
                .map(batch -> new MapCommand(batch, arguments, console).run())
                .orElse(ExitStatus.BAD_INPUT));
        spec.addPositional(Specs.scenarios());
        spec.addOption(Specs.threads());
        spec.addOption(Specs.out("Default: heatswell-out/NAME-map. With several scenarios: DIR/NAME-map for each."));
        spec.addOption(Specs.set());
        spec.addOption(Specs.units());
        Specs.describe(
                spec,
                "Map the peak over vessel volume and precharge.",
                "Simulates the worst heat-up with vessels of many volumes and precharges, and draws where a relief valve"
                        + " begins to drip, and where the vessel of the scenario lies. Writes into a folder:",
                "  map.csv, map.png, map.svg",
                "Pressures are gauge readings.");
        return spec;
    }

    private ExitStatus run() {
        return batch.each(console, this::run);
    }

    private ExitStatus run(int index) {
        PeakMap map;
        try {
            map = survey(index);
        } catch (IllegalArgumentException e) {
            console.complain(batch.name(index) + ": no map can be drawn: " + e.getMessage());
            return ExitStatus.BAD_INPUT;
        }
        Folders.between(index, console);
        return Folders.deliver(
                Folders.of(arguments, batch, index, FOLDER_ENDING),
                MapFiles.of(map, batch.units()),
                batch.name(index),
                console,
                () -> new MapReport(batch.scenario(index), map, batch.units()));
    }

    private PeakMap survey(int index) {
        VesselChoice choice = VesselChoice.of(batch.scenario(index)).build();
        try (ProgressLine progress = ProgressLine.shownTo(console)) {
            return PeakSurvey.builder(batch.scenario(index).system())
                    .vesselLike(choice.pattern())
                    .target(choice.target())
                    .threads(Specs.threads(arguments))
                    .progress(progress)
                    .build()
                    .map();
        }
    }
}
