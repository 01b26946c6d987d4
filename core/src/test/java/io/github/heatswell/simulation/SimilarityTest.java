package io.github.heatswell.simulation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.result.Channel;
import io.github.heatswell.result.Event;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.result.Trace;
import io.github.heatswell.system.HotWaterSystem;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestReporter;

/**
 * Two like houses behind one another are one house twice as large: its pressure takes the same course. More houses by
 * {@code -Dtest.jvm.options=-Dproperties.systems=10000}.
 */
class SimilarityTest {

    private static final int HOUSES = Integer.getInteger("properties.systems", 60) / 3;
    private static final long SEED = Long.getLong("properties.seed", 48);

    /** Absolute pressure (-): what located events and settling leave of the solver's tolerance. */
    private static final double SAME = 1e-4;
    /**
     * The same while what passed the service line or a bypass still shows: neither is twice as wide for twice the house, so that the
     * one lets water in for seconds longer, while the heater is on, and the other stands higher when it closes.
     */
    private static final double SAME_AFTER_A_LINE = 1e-3;
    /** Samples this near (s) to something that happens may lie on either side of it. */
    private static final double NEAR = 60;

    private final List<String> broken = new ArrayList<>();

    @Test
    void twiceTheHouseHasTheSamePressure(TestReporter reporter) {
        RandomHouses houses = RandomHouses.withAirAndVessels(SEED);
        int compared = 0;
        for (int i = 0; i < HOUSES; i++) {
            HotWaterSystem house = houses.nextDisturbed();
            try {
                Optional<HotWaterSystem> doubled = doubled(house);
                compared += doubled.isPresent() ? compare(house, doubled.get(), "house " + i) : 0;
            } catch (SimulationException failed) {
                broken.add("house " + i + ": " + failed.getMessage());
            }
        }
        reporter.publishEntry(compared + " samples, broken by " + broken.size());
        assertEquals(List.of(), broken.subList(0, Math.min(10, broken.size())));
        assertTrue(compared > 20 * HOUSES, compared + " samples");
    }

    /** Empty for a large house: twice as large it would be beyond what may be described. */
    private static Optional<HotWaterSystem> doubled(HotWaterSystem house) {
        try {
            return Optional.of(Doubled.of(house));
        } catch (IllegalArgumentException tooLarge) {
            return Optional.empty();
        }
    }

    private int compare(HotWaterSystem house, HotWaterSystem doubled, String which) {
        RunResult one = run(house);
        RunResult two = run(doubled);
        if (snaps(one)) {
            return 0;
        }
        int compared = 0;
        boolean line = false;
        int last = Math.min(one.trace().count(), two.trace().count()) - 1;
        for (int i = 0; i < last; i++) {
            double time = one.trace().grid().time(i);
            line = passesALine(one, i)
                    || passesALine(two, i)
                    || line && one.trace().regime(i) != Trace.Regime.FED;
            if (one.trace().regime(i) != two.trace().regime(i)
                    || filling(one, i)
                    || filling(two, i)
                    || near(one, time)) {
                continue;
            }
            double p = one.trace().value(Channel.PRESSURE_ABSOLUTE, i);
            double q = two.trace().value(Channel.PRESSURE_ABSOLUTE, i);
            if (Math.abs(p - q) > (line ? SAME_AFTER_A_LINE : SAME) * p) {
                broken.add(which + " at " + time + " s, " + one.trace().regime(i) + ": " + p + " and " + q);
                return compared;
            }
            compared++;
        }
        return compared;
    }

    /** The service line is that of every house, and not twice as wide for twice the house. */
    private static boolean filling(RunResult result, int sample) {
        Trace trace = result.trace();
        return trace.regime(sample) == Trace.Regime.FILLING
                || trace.regime(Math.max(0, sample - 1)) == Trace.Regime.FILLING;
    }

    /** Whether the service line filled the house, or the bypass let water out, since the sample before. */
    private static boolean passesALine(RunResult result, int sample) {
        double from = result.trace().grid().time(Math.max(0, sample - 1));
        double to = result.trace().grid().time(sample);
        return filling(result, sample)
                || result.trace().regime(sample) == Trace.Regime.RETURNED
                || result.events().stream()
                        .filter(event -> event.time() > from && event.time() <= to)
                        .anyMatch(event ->
                                event.kind() == Event.Kind.SUPPLY_RESTORED || event.kind() == Event.Kind.BYPASS_OPENED);
    }

    private static boolean near(RunResult result, double time) {
        return result.events().stream().anyMatch(event -> Math.abs(event.time() - time) < NEAR);
    }

    /** A valve that opens again and again adds up what little differs from one opening to the next. */
    private static boolean snaps(RunResult result) {
        return result.events().stream()
                        .map(Event::kind)
                        .filter(kind -> kind == Event.Kind.RELIEF_OPENED)
                        .count()
                > 3;
    }

    private static RunResult run(HotWaterSystem house) {
        return Simulation.of(house, Duration.ofDays(1))
                .sampledEvery(Duration.ofMinutes(10))
                .run();
    }
}
