package io.github.heatswell.simulation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.result.Channel;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.result.Totals;
import io.github.heatswell.result.Trace;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.ReducingValve;
import io.github.heatswell.system.Supply;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestReporter;

/**
 * What every sample of every run keeps to, whatever disturbs the house: outages, warm feeds, draws mixed cooler than the feed, seats
 * that let water by. More houses by {@code -Dtest.jvm.options=-Dproperties.systems=10000}.
 */
class RegimeContractsTest {

    private static final int HOUSES = Integer.getInteger("properties.systems", 60);
    private static final long SEED = Long.getLong("properties.seed", 31);

    /** What a step of the solver may err by in what stands still (m3), a hundredth of a millilitre. */
    private static final double COUNTED = 1e-8;
    /** The gap of the check valve's thresholds and the solver's error (Pa). */
    private static final double AT_SUPPLY = 0.05;

    private final List<String> broken = new ArrayList<>();

    @Test
    void everySampleKeepsToItsRegime(TestReporter reporter) {
        RandomHouses houses = RandomHouses.withAirAndVessels(SEED);
        long steps = 0;
        for (int i = 0; i < HOUSES; i++) {
            HotWaterSystem house = houses.nextDisturbed();
            String which = "seed " + SEED + ", house " + i + ": ";
            try {
                RunResult result = Simulation.of(house, Duration.ofDays(1))
                        .sampledEvery(Duration.ofMinutes(2))
                        .run();
                look(result, which);
                steps = Math.max(steps, result.numerics().steps());
            } catch (SimulationException failed) {
                broken.add(which + failed.getMessage());
            }
        }
        reporter.publishEntry(HOUSES + " houses, at most " + steps + " steps in a day, broken by " + broken.size());
        assertEquals(List.of(), broken.subList(0, Math.min(20, broken.size())));
    }

    private void look(RunResult result, String which) {
        if (!result.audit().closes()) {
            broken.add(which + result.audit());
        }
        Totals totals = result.totals();
        if (Math.min(totals.letIn(), totals.returned()) < 0 || Math.min(totals.drawn(), totals.leaked()) < 0) {
            broken.add(which + totals);
        }
        Trace trace = result.trace();
        for (int i = 0; i < trace.count(); i++) {
            String sample = which + "sample " + i + ", " + trace.regime(i) + ": ";
            if (i > 0) {
                lookAtCounted(trace, i, sample);
            }
            lookAtPressure(result, i, sample);
        }
    }

    private void lookAtCounted(Trace trace, int i, String sample) {
        for (Channel channel :
                List.of(Channel.RELIEVED_TOTAL, Channel.DRAWN_TOTAL, Channel.INFLOW_TOTAL, Channel.RETURNED_TOTAL)) {
            double change = trace.value(channel, i) - trace.value(channel, i - 1);
            if (change < 0) {
                broken.add(sample + channel + " falls by " + -change);
            }
        }
    }

    private void lookAtPressure(RunResult result, int i, String sample) {
        Supply supply = result.system().supply();
        Trace trace = result.trace();
        double p = trace.value(Channel.PRESSURE_ABSOLUTE, i);
        double mains = trace.value(Channel.MAINS_ABSOLUTE, i);
        ReducingValve valve = supply.reducingValve().orElse(null);
        double standing = valve == null
                ? mains
                : Math.min(mains, valve.set().absolute(result.system().site().atmosphere()) + valve.lockUpRise());
        boolean droops = valve != null && valve.lockUpRise() + valve.droop() > 0;
        switch (trace.regime(i)) {
            case FED, UNSEALED -> {
                boolean above = p > standing + AT_SUPPLY;
                if (above || !droops && p < standing - AT_SUPPLY) {
                    broken.add(sample + p + " Pa is not the supply's " + standing);
                }
            }
            case RETURNED -> {
                if (p < mains - AT_SUPPLY) {
                    broken.add(sample + p + " Pa is below the mains' " + mains);
                }
            }
            case SEALED -> {
                boolean creeps = valve != null && supply.seatLeakage() > 0;
                boolean same = i > 0 && trace.regime(i - 1) == Trace.Regime.SEALED;
                if (!creeps
                        && p < standing - AT_SUPPLY
                        && !outage(supply, trace.grid().time(i))) {
                    broken.add(sample + p + " Pa is below the supply's " + standing);
                }
                if (!creeps && same && nothingHappened(result, i)) {
                    double in = trace.value(Channel.INFLOW_TOTAL, i) - trace.value(Channel.INFLOW_TOTAL, i - 1);
                    if (in > COUNTED) {
                        broken.add(sample + in + " m3 came in");
                    }
                }
            }
            default -> {
                // on the way, or open
            }
        }
    }

    private static boolean outage(Supply supply, double time) {
        return supply.outages().stream().anyMatch(o -> time >= o.from() - 1 && time <= o.to() + 1);
    }

    /** Whether no event falls between a sample and the one before, so that one regime held all along. */
    private static boolean nothingHappened(RunResult result, int sample) {
        double to = result.trace().grid().time(sample);
        double from = result.trace().grid().time(sample - 1);
        return result.events().stream().noneMatch(e -> e.time() >= from && e.time() <= to);
    }

    /** A house is at its supply's pressure again after an outage, as if there had been none. */
    @Test
    void aDisturbedHouseComesBack() {
        RandomHouses houses = RandomHouses.withAirAndVessels(SEED + 1);
        int compared = 0;
        for (int i = 0; i < HOUSES / 2; i++) {
            HotWaterSystem house = houses.next();
            if (house.supply().arrangement() == Supply.Arrangement.REDUCING_VALVE) {
                continue;
            }
            Supply calm = house.supply().toBuilder().withoutOutages().build();
            Supply cut = calm.toBuilder()
                    .addOutage(new Supply.Outage(30_000, 36_000))
                    .build();
            RunResult undisturbed = run(house, calm);
            RunResult disturbed = run(house, cut);
            int last = Math.min(undisturbed.trace().count(), disturbed.trace().count()) - 1;
            Trace.Regime one = undisturbed.trace().regime(last);
            boolean sameTime = undisturbed.trace().grid().time(last)
                    == disturbed.trace().grid().time(last); // a run that a hazard ends has its last sample there
            if (sameTime
                    && one == disturbed.trace().regime(last)
                    && (one == Trace.Regime.FED || one == Trace.Regime.UNSEALED)) {
                assertEquals(
                        undisturbed.trace().value(Channel.PRESSURE_ABSOLUTE, last),
                        disturbed.trace().value(Channel.PRESSURE_ABSOLUTE, last),
                        2 * AT_SUPPLY,
                        "house " + i);
                compared++;
            }
        }
        assertTrue(compared > 0, "some houses are fed at the end of the day");
    }

    private static RunResult run(HotWaterSystem house, Supply supply) {
        return Simulation.of(house.toBuilder().supply(supply).build(), Duration.ofDays(1))
                .sampledEvery(Duration.ofMinutes(10))
                .run();
    }
}
