package io.github.heatswell.simulation;

import static io.github.heatswell.units.PressureUnit.BAR;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.result.Event;
import io.github.heatswell.result.Interval;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.result.Trace;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.ReliefValve;
import io.github.heatswell.system.Supply;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.TemperatureUnit;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What lasted in a run, from its start on. */
class PhasesTest {

    private static RunResult run(HotWaterSystem.Builder house) {
        return Simulation.of(house.build(), Duration.ofHours(12)).run();
    }

    /** A house that stays cold is fed from the first moment to the last, and nothing happens in it. */
    @Test
    void aColdHouseIsFedAllTheTime() {
        RunResult run = run(Systems.lodge().site(Systems.site(310, 9)).heater(Systems.heater(11.2, 78, 12, 6)));
        assertTrue(run.first(Event.Kind.SUPPLY_OPENED).isEmpty());
        List<Interval> feeding = run.summary().intervals(Interval.Phase.SUPPLY_FEEDING);
        assertEquals(List.of(new Interval(0, 12 * 3600, "")), feeding);
        assertAgreesWithTheTrace(run, feeding);
    }

    /** Heated, shut off and opened again: the supply feeds wherever the samples say so, and not while it is shut off. */
    @Test
    void theSupplyFeedsWhereTheSamplesSaySo() {
        RunResult run = run(Systems.lodge()
                .supply(Supply.builder()
                        .arrangement(Supply.Arrangement.CHECK_VALVE)
                        .pressure(Pressure.gauge(4.2, BAR))
                        .water(9, TemperatureUnit.CELSIUS)
                        .addOutage(new Supply.Outage(6 * 3600, 8 * 3600))
                        .build())
                .addReliefValve(Systems.valve(ReliefValve.LiftCharacteristic.MODULATING)));
        assertAgreesWithTheTrace(run, run.summary().intervals(Interval.Phase.SUPPLY_FEEDING));
        assertEquals(
                List.of(new Interval(6 * 3600, 8 * 3600, "")), run.summary().intervals(Interval.Phase.SUPPLY_SHUT_OFF));
    }

    /** Charged below the supply, a vessel holds water before anything is heated. */
    @Test
    void anUnderchargedVesselHoldsWaterFromTheStart() {
        RunResult low = run(Systems.lodge().vessel(Systems.vessel(18, Pressure.gauge(2, BAR), 60)));
        assertEquals(
                0,
                low.summary()
                        .intervals(Interval.Phase.VESSEL_HOLDS_WATER)
                        .get(0)
                        .from());
        assertTrue(low.summary().intervals(Interval.Phase.VESSEL_FULL).isEmpty());
        RunResult full = run(Systems.lodge().vessel(Systems.vessel(18, Pressure.gauge(0.5, BAR), 30)));
        assertEquals(List.of(new Interval(0, full.end(), "")), full.summary().intervals(Interval.Phase.VESSEL_FULL));
        RunResult high = run(Systems.lodge().vessel(Systems.vessel(18, Pressure.gauge(4.5, BAR), 60)));
        assertTrue(high.summary()
                        .intervals(Interval.Phase.VESSEL_HOLDS_WATER)
                        .get(0)
                        .from()
                > 0);
    }

    private static boolean feeds(Trace.Regime regime) {
        return regime == Trace.Regime.FED || regime == Trace.Regime.FILLING;
    }

    private static void assertAgreesWithTheTrace(RunResult run, List<Interval> feeding) {
        for (int i = 1; i < run.trace().count() - 1; i++) {
            double time = run.trace().grid().time(i);
            boolean fed = feeding.stream().anyMatch(interval -> interval.contains(time));
            // a sample at an event shows the state after it
            boolean atAnEvent = run.events().stream().anyMatch(event -> Math.abs(event.time() - time) < 1);
            assertTrue(atAnEvent || feeds(run.trace().regime(i)) == fed, "at " + time + " s");
        }
    }
}
