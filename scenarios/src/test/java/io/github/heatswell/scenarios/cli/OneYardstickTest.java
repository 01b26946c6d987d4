package io.github.heatswell.scenarios.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.narrative.NamedSummary;
import io.github.heatswell.narrative.Narrative;
import io.github.heatswell.narrative.Yardstick;
import io.github.heatswell.result.RunSummary;
import io.github.heatswell.scenarios.catalogue.Catalogue;
import io.github.heatswell.scenarios.choice.VesselChoice;
import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.sizing.PeakMap;
import io.github.heatswell.sizing.PeakSurvey;
import io.github.heatswell.sizing.SizingResult;
import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.units.VolumeUnit;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Regression: one house was too small for size, fine for run and compare, and dry for ten years, and nothing joined the three. */
class OneYardstickTest {

    @TempDir
    private Path folder;

    /** The bundled closed houses with a vessel that works, and a heater that stops. */
    static Stream<Scenario> houses() {
        return Catalogue.names().stream()
                .map(Catalogue::read)
                .filter(scenario -> scenario.system().vessels().size() == 1
                        && scenario.system().vessel().orElseThrow().condition() == ExpansionVessel.Condition.SOUND
                        && VesselChoice.of(scenario).build().yardstick().isPresent());
    }

    /** The same limit and the same peak of the worst heat-up for size, map, outlook, compare and run. */
    @ParameterizedTest
    @MethodSource("houses")
    void allJudgeByOneLimitAndOneHeatUp(Scenario scenario) {
        VesselChoice choice = VesselChoice.of(scenario).build();
        Yardstick yardstick = choice.yardstick().orElseThrow();
        ExpansionVessel vessel = scenario.system().vessel().orElseThrow();
        double air = scenario.system().site().atmosphere();
        SizingResult sizing = choice.forColdFill();
        assertEquals(sizing.target().gauge(), yardstick.limitGauge(), 1e-6);
        PeakMap map = PeakSurvey.builder(scenario.system())
                .target(choice.target())
                .volumes(vessel.volume(), 2 * vessel.volume())
                .precharges(1e5, 2e5)
                .build()
                .map();
        assertEquals(yardstick.limitGauge(), map.setting().targetGauge().orElseThrow(), 1e-6);
        if (vessel.chargedAt().isEmpty()) {
            assertEquals(
                    yardstick.worstGauge(),
                    map.present().orElseThrow().peakGauge(),
                    100,
                    "the same vessel in the same heat-up");
        }
        // a vessel as large as the size that is enough, with that precharge, is sound for both
        sizing.smallestOnSale().ifPresent(size -> {
            Scenario fitted = Scenario.of(
                    scenario.name(),
                    scenario.title(),
                    scenario.system().toBuilder()
                            .vessel(vessel.toBuilder()
                                    .volume(size.volume(), VolumeUnit.CUBIC_METRE)
                                    .precharge(size.precharge())
                                    .build())
                            .build(),
                    scenario.duration(),
                    scenario.sample());
            if (vessel.chargedAt().isEmpty()) {
                assertTrue(VesselChoice.of(fitted)
                                .build()
                                .yardstick()
                                .orElseThrow()
                                .worstGauge()
                        <= size.peakAbsolute() - air + 100);
            }
        });
    }

    /** Where a run is judged otherwise than the worst heat-up, run and compare say so in one sentence, and else they say nothing. */
    @ParameterizedTest
    @MethodSource("houses")
    void whatIsJudgedOtherwiseIsJoined(Scenario scenario) {
        Yardstick yardstick = VesselChoice.of(scenario).build().yardstick().orElseThrow();
        RunSummary run = scenario.simulation().summary();
        double peak = run.peak().value();
        boolean otherwise =
                (peak > yardstick.limitGauge() + 1) != (yardstick.worstGauge() > yardstick.limitGauge() + 1);
        assertEquals(otherwise, yardstick.joined("This run", peak).isPresent());
        NamedSummary named = new NamedSummary("it", run);
        Optional<Yardstick> same = Optional.of(yardstick);
        assertEquals(
                otherwise,
                Narrative.joined(List.of(named, named), List.of(same, same)).isPresent());
    }

    private String said(String... command) {
        String[] words = Stream.concat(
                        Stream.of(command),
                        Stream.of("-o", folder.resolve("out").toString()))
                .toArray(String[]::new);
        return Outcome.execute(words).out().replaceAll("\\s+", " ");
    }

    /** The vessel of Birch street is too small for a cold fill, which its day never shows. */
    @Test
    void aHouseWhoseDayHidesItsWorstHeatUpIsToldSoByAll() {
        String birch = "birch-street-day";
        assertTrue(said("size", birch).contains("The 2 gal expansion tank of this house is too small"));
        String join =
                "stays within the limit of 80 psi, but a heat-up from a cold fill with every tap closed would not: it would"
                        + " peak at 86.1 psi. 'heatswell size' goes by that.";
        assertTrue(said("run", birch).contains("This run " + join));
        assertTrue(said("outlook", birch, "--years", "1").contains("The first of these days " + join));
        assertTrue(said("map", birch).contains("With 2 gal at 60 psi the peak is 86.1 psi, above the limit of 80 psi"));
        String compared = said("compare", birch, "--vary", "vessel.volume=2gal,3gal");
        assertTrue(
                compared.contains(
                        "In the worst heat-up, from a cold fill with every tap closed, which 'heatswell size' uses,"
                                + " \"expansion tank volume 2 gal\" would go above the limit that this run keeps."),
                compared);
        assertTrue(compared.contains("86.1 psi") && compared.contains("75.8 psi"), compared);
    }
}
