package io.github.heatswell.scenarios.cli;

import io.github.heatswell.narrative.Yardstick;
import io.github.heatswell.result.Balances;
import io.github.heatswell.scenarios.choice.VesselChoice;
import io.github.heatswell.scenarios.cli.Request.NoAnswerException;
import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.scenarios.report.CommandResult;
import io.github.heatswell.scenarios.report.MapReport;
import io.github.heatswell.sizing.PeakMap;
import io.github.heatswell.sizing.PeakSurvey;
import io.github.heatswell.units.VolumeUnit;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;

/** {@code heatswell map}: the peak over vessel volume and precharge. */
final class MapCommand implements ScenarioCommand {

    @Override
    public void describe(CommandSpec spec) {
        spec.addPositional(Specs.scenarios());
        spec.addOption(Specs.threads());
        spec.addOption(Specs.out("Default: heatswell-out/NAME-map. With several scenarios: DIR/NAME-map for each."));
        spec.addOption(Specs.place());
        spec.addOption(Specs.set());
        spec.addOption(Specs.units());
        Specs.describe(
                spec,
                "Map the peak pressure over vessel volume and precharge.",
                "Simulates the worst heat-up with vessels of many volumes and precharges. Shows where a relief valve"
                        + " starts to drip and where the scenario's own vessel is. Writes to a folder:",
                "  map.csv, map.png, map.svg, report.html",
                "Pressures are gauge pressures.");
    }

    @Override
    public String folderEnding() {
        return "-map";
    }

    @Override
    public CommandResult answer(Scenario scenario, Request request) throws NoAnswerException {
        PeakMap map;
        Balances.Count count = new Balances.Count();
        try {
            map = survey(scenario, request, count);
        } catch (IllegalArgumentException e) {
            throw request.refused("cannot draw a map: " + e.getMessage());
        }
        Optional<Yardstick> yardstick = VesselChoice.of(scenario).build().yardstickWithPrecharge();
        yardstick.map(Yardstick::balances).ifPresent(count::add);
        return MapReport.answer(scenario, map, yardstick, map.balances().and(count.sum()));
    }

    private static PeakMap survey(Scenario scenario, Request request, Balances.Count count) {
        VesselChoice choice = VesselChoice.of(scenario).build();
        try (ProgressLine progress = ProgressLine.shownTo(request)) {
            PeakSurvey.Builder survey = PeakSurvey.builder(scenario.system())
                    .vesselLike(choice.pattern())
                    .target(choice.target())
                    .threads(request.threads())
                    .progress(progress::done);
            choice.mapVolumes(count).ifPresent(volumes -> survey.volumes(VolumeUnit.CUBIC_METRE, volumes));
            return survey.build().map();
        }
    }
}
