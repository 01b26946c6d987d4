package io.github.heatswell.charts;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.github.heatswell.charts.picture.Panel.Level;
import io.github.heatswell.place.Place;
import io.github.heatswell.result.Event;
import io.github.heatswell.result.RunSummary;
import io.github.heatswell.simulation.Simulation;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.ReliefValve.LiftCharacteristic;
import io.github.heatswell.units.QuantityFormat;
import io.github.heatswell.units.UnitSystem;
import java.time.Duration;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** The lines a pressure is read against. */
class LevelsTest {

    /** Ten metres above the tank. */
    @Test
    void aHighValvesLinesLieWhereItOpensAndReseats() {
        RunSummary run = Houses.upstairs().summary();
        List<Level> levels = new Levels(run, QuantityFormat.unicode(UnitSystem.SI)).all();
        assertEquals(bar(run, Event.Kind.RELIEF_OPENED), value(levels, Level.Kind.RELIEF_SET), 1e-8); // bar
        // a modulating valve counts as closed a hundredth of a pascal before it is
        assertEquals(bar(run, Event.Kind.RELIEF_RESEATED), value(levels, Level.Kind.RELIEF_RESEAT), 2e-7); // bar
    }

    /** Regression: what a sizing keeps was not in the picture of before and after, where no code says it too. */
    @Test
    void theLimitOfASizingIsDrawnOnce() {
        QuantityFormat amounts = QuantityFormat.unicode(UnitSystem.SI);
        List<NamedRun> runs = Gallery.waysOut();
        List<Level> without = Levels.shared(runs, OptionalDouble.empty(), amounts);
        List<Level> with = Levels.shared(runs, OptionalDouble.of(5.39e5), amounts);
        assertEquals(without.size() + 1, with.size());
        Level limit = with.get(with.size() - 1);
        assertEquals("limit of the sizing", limit.name());
        assertEquals(5.39, limit.value(), 1e-12);
        double set = with.stream()
                .filter(level -> level.kind() == Level.Kind.RELIEF_SET)
                .findFirst()
                .orElseThrow()
                .value();
        assertEquals(
                without.size(),
                Levels.shared(runs, OptionalDouble.of(set * 1e5), amounts).size());
    }

    /** Regression: a run that passes the limit its finding names, and opens no valve, had nothing to be read against. */
    @Test
    void aLimitThatDecidesIsDrawnInAllUnits() {
        RunSummary dry = Simulation.of(
                        Plants.bare()
                                .addReliefValve(Plants.valve("safety valve", 7, 6.3, LiftCharacteristic.MODULATING))
                                .vessel(Plants.vessel(12, 4.2))
                                .build(),
                        Duration.ofHours(3))
                .run()
                .summary();
        assertEquals(0, dry.totals().relieved());
        for (UnitSystem units : UnitSystem.values()) {
            assertEquals(
                    1,
                    new Levels(dry, QuantityFormat.unicode(units))
                            .all().stream()
                                    .filter(level -> level.kind() == Level.Kind.PLACE_LIMIT)
                                    .count());
        }
    }

    /** Regression: the limit of the place was drawn near the peak alone, so that a picture did not tell how far away it is. */
    @Test
    void theLimitOfAKnownPlaceIsAlwaysDrawn() {
        HotWaterSystem cold = Plants.at(Place.US_IPC);
        RunSummary run = Simulation.of(cold, Duration.ofSeconds(1)).run().summary();
        QuantityFormat amounts = QuantityFormat.unicode(UnitSystem.US);
        assertEquals(
                List.of("80 psi"),
                new Levels(run, amounts)
                        .shared().stream()
                                .filter(level -> level.kind() == Level.Kind.PLACE_LIMIT)
                                .map(level ->
                                        level.amount().replace('\u00a0', ' ').replace('\u202f', ' '))
                                .toList());
        assertEquals(
                List.of("relief opens", "limit here"),
                Levels.limits(cold, amounts).stream().map(Level::name).toList());
    }

    /** Regression: where no code caps the pressure, what a sizing keeps to was in no picture of the years. */
    @Test
    void whatASizingKeepsToIsDrawnWhereNoCodeSaysIt() {
        List<Level> levels = Levels.limits(Plants.at(Place.EN), QuantityFormat.unicode(UnitSystem.SI));
        assertEquals(
                List.of("relief opens", "limit of the sizing"),
                levels.stream().map(Level::name).toList());
        assertEquals(6.3 - 0.03 * 7, levels.get(1).value(), 1e-9); // bar: closes again at 6.3, less 3 % of 7
    }

    private static double bar(RunSummary run, Event.Kind kind) {
        return run.events().stream()
                .filter(event -> event.kind() == kind && event.device().equals("attic valve"))
                .mapToDouble(Event::pressureAbsolute)
                .map(absolute -> run.gauge(absolute) / 1e5)
                .findFirst()
                .orElseThrow();
    }

    private static double value(List<Level> levels, Level.Kind kind) {
        return levels.stream()
                .filter(level -> level.kind() == kind && level.name().contains("attic valve"))
                .findFirst()
                .orElseThrow()
                .value();
    }
}
