package io.github.heatswell.charts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.assessment.Doubts;
import io.github.heatswell.charts.DailyFigures.DailyCollector;
import io.github.heatswell.charts.DailyFigures.Day;
import io.github.heatswell.result.Channel;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.result.RunSummary;
import io.github.heatswell.result.Trace;
import io.github.heatswell.simulation.Simulation;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.units.UnitSystem;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DailyFiguresTest {

    private static final HotWaterSystem SYSTEM = Plants.bare().build();
    private static final double HOUR = 3600;

    @Test
    void aDayTakesInTheSamplesAtBothItsEnds() {
        DailyCollector collector = DailyFigures.collector(SYSTEM);
        give(collector, 0, 4.2, 0);
        give(collector, 24 * HOUR, 6, 1);
        give(collector, 48 * HOUR, 5, 4);
        List<Day> days = collector.figures().days();
        assertEquals(2, days.size(), "no day is begun at its first instant");
        assertDay(4.2e5, 6e5, 1e-3, days.get(0));
        assertDay(5e5, 6e5, 3e-3, days.get(1));
    }

    @Test
    void aVolumeBetweenSamplesIsSharedOutEvenly() {
        DailyCollector collector = DailyFigures.collector(SYSTEM);
        give(collector, 0, 4.2, 0);
        give(collector, 72 * HOUR, 5, 6);
        give(collector, 78 * HOUR, 4, 7);
        List<Day> days = collector.figures().days();
        assertEquals(4, days.size());
        for (int i = 0; i < 3; i++) {
            assertDay(4.2e5, 5e5, 2e-3, days.get(i));
        }
        assertDay(4e5, 5e5, 1e-3, days.get(3));
    }

    @Test
    void aRunOfOneSampleHasOneDay() {
        DailyCollector collector = DailyFigures.collector(SYSTEM);
        assertTrue(collector.figures().days().isEmpty());
        give(collector, 0, 4.2, 0);
        assertDay(4.2e5, 4.2e5, 0, collector.figures().days().get(0));
    }

    /** What the days discharged is what the run discharged, however it was sampled. */
    @ParameterizedTest
    @ValueSource(ints = {60, 420, 3600, 100_000})
    void daysAddUpToTheRun(int interval) {
        HotWaterSystem house = Houses.seasonalWithoutVessel();
        DailyCollector collector = DailyFigures.collector(house);
        RunSummary summary =
                Simulation.of(house, Duration.ofDays(4)).sampledEvery(Duration.ofSeconds(interval)).stream(collector);
        List<Day> days = collector.figures().completedBy(summary).days();
        assertEquals(4, days.size());
        assertEquals(
                summary.totals().relieved(),
                days.stream().mapToDouble(Day::relieved).sum(),
                1e-12,
                "m3, rounding of sums");
        assertEquals(
                summary.totals().drawn(), days.stream().mapToDouble(Day::drawn).sum(), 1e-12, "m3, rounding of sums");
        assertEquals(
                summary.peak().value(),
                days.stream().mapToDouble(Day::highestPressure).max().orElseThrow(),
                1e-3,
                "Pa; a peak reached again counts as the same within rounding");
    }

    /** A valve opens between two samples and its pressure falls within seconds. */
    @Test
    void locatedEventsCount() {
        RunResult result = Houses.europeanDay();
        assertEquals(7e5, DailyFigures.of(result).days().get(0).highestPressure(), 1, "Pa, of the root finding");
    }

    @Test
    void refusesFiguresOfAnotherRun() {
        RunSummary day = Houses.europeanDay().summary();
        DailyFigures none = new DailyFigures(List.of());
        assertThrows(IllegalArgumentException.class, () -> Chart.ofDays(day, Doubts.NONE, none, UnitSystem.SI));
    }

    private static void give(DailyCollector collector, double time, double gaugeBar, double relievedLitres) {
        double[] values = new double[Channel.values().length];
        values[Channel.PRESSURE_ABSOLUTE.ordinal()] =
                gaugeBar * 1e5 + SYSTEM.site().atmosphere();
        values[Channel.RELIEVED_TOTAL.ordinal()] = relievedLitres * 1e-3;
        collector.sample(time, values, Trace.Regime.SEALED);
    }

    private static void assertDay(double lowest, double highest, double relieved, Day day) {
        assertEquals(lowest, day.lowestPressure(), 1e-6);
        assertEquals(highest, day.highestPressure(), 1e-6);
        assertEquals(relieved, day.relieved(), 1e-12);
    }
}
