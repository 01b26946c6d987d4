package io.github.heatswell.scenarios.generated;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.result.Channel;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.scenarios.file.InvalidScenarioException;
import io.github.heatswell.scenarios.generated.Part.Keyed;
import io.github.heatswell.simulation.Simulation;
import io.github.heatswell.system.HotWaterSystem;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestReporter;

/**
 * A house described in metric units, rewritten in those of the United States and back again is never refused and runs to the same
 * results. More of them run with {@code -Dtest.jvm.options=-Dgenerated.round=500}.
 */
class UnitsRoundTripTest {

    private static final int READ = 150;
    private static final int RUN = Integer.getInteger("generated.round", 20);
    private static final Duration LONGEST = Duration.ofHours(12);
    /** What fifteen digits and the steps of the solver leave of a number (-). */
    private static final double SAME = 1e-6;

    @Test
    void nothingIsRefusedInOtherUnits() {
        List<String> refused = new ArrayList<>();
        for (int seed = 0; seed < READ; seed++) {
            Keyed metric = Rewriting.metric(Rewriting.complete(RandomScenarios.of(seed)));
            Keyed us = Rewriting.us(metric);
            for (Keyed file : List.of(metric, us, Rewriting.metric(us))) {
                try {
                    new RandomScenario(seed, file).scenario();
                } catch (InvalidScenarioException e) {
                    refused.add(e.getMessage());
                }
            }
        }
        assertEquals(List.of(), refused);
    }

    @Test
    void resultsAreTheSameInOtherUnits(TestReporter reporter) {
        List<String> different = new ArrayList<>();
        double worst = 0;
        for (int seed = 0; seed < RUN; seed++) {
            Keyed metric = Rewriting.metric(Rewriting.complete(RandomScenarios.tame(seed)));
            Keyed us = Rewriting.us(metric);
            RunResult first = run(metric);
            for (Keyed file : List.of(us, Rewriting.metric(us))) {
                double difference = difference(first, run(file));
                worst = Math.max(worst, difference);
                if (!(difference <= SAME)) {
                    different.add("seed " + seed + " differs by " + difference);
                }
            }
        }
        reporter.publishEntry(RUN + " houses, largest difference " + worst);
        assertEquals(List.of(), different);
        assertTrue(worst > 0, "nothing was rewritten");
    }

    private static RunResult run(Keyed file) {
        RandomScenario scenario = new RandomScenario(0, file);
        HotWaterSystem house = scenario.system();
        Duration duration = scenario.duration().compareTo(LONGEST) < 0 ? scenario.duration() : LONGEST;
        return Simulation.of(house, duration).run();
    }

    /** The largest difference of a channel over its largest value; of volumes over a litre at least. */
    private static double difference(RunResult one, RunResult other) {
        if (one.trace().count() != other.trace().count()
                || one.events().size() != other.events().size()) {
            return Double.POSITIVE_INFINITY;
        }
        double worst = 0;
        for (Channel channel : List.of(
                Channel.PRESSURE_ABSOLUTE,
                Channel.WATER_MEAN,
                Channel.RELIEVED_TOTAL,
                Channel.INFLOW_TOTAL,
                Channel.DRAWN_TOTAL)) {
            double largest = channel.unit().equals("m3") ? 1e-3 : 0;
            double apart = 0;
            for (int i = 0; i < one.trace().count(); i++) {
                largest = Math.max(largest, Math.abs(one.trace().value(channel, i)));
                apart = Math.max(
                        apart,
                        Math.abs(one.trace().value(channel, i) - other.trace().value(channel, i)));
            }
            worst = Math.max(worst, apart / largest);
        }
        return worst;
    }
}
