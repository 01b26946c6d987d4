package io.github.heatswell.simulation;

import static io.github.heatswell.units.PressureUnit.BAR;
import static io.github.heatswell.units.VolumeUnit.LITRE;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.result.Channel;
import io.github.heatswell.result.Event;
import io.github.heatswell.result.Interval;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.result.Trace;
import io.github.heatswell.system.Draw;
import io.github.heatswell.system.DrawProfile;
import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.Parts;
import io.github.heatswell.system.ReliefValve;
import io.github.heatswell.system.Supply;
import io.github.heatswell.units.FlowUnit;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.TemperatureUnit;
import java.time.Duration;
import java.util.List;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What lasted in a run, from its start on. */
class PhasesTest {

    private static RunResult run(HotWaterSystem.Builder house) {
        return Simulation.of(house.build(), Duration.ofHours(12)).run();
    }

    /** A house that stays cold is fed from the first moment to the last, and nothing happens in it. */
    @Test
    void aColdHouseIsFedAllTheTime() {
        RunResult run = run(Parts.lodge(4.2, 58).site(Parts.site(310, 9)).heater(Parts.heater(11.2, 78, 12, 6)));
        assertTrue(run.first(Event.Kind.SUPPLY_OPENED).isEmpty());
        List<Interval> feeding = run.summary().intervals(Interval.Phase.SUPPLY_FEEDING);
        assertEquals(List.of(new Interval(0, 12 * 3600, "")), feeding);
        assertAgreesWithTheTrace(run, feeding);
    }

    /** Heated, shut off and opened again: the supply feeds wherever the samples say so, and not while it is shut off. */
    @Test
    void theSupplyFeedsWhereTheSamplesSaySo() {
        RunResult run = run(Parts.lodge(4.2, 58)
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
        RunResult low = run(Parts.lodge(4.2, 58).vessel(Systems.vessel(18, Pressure.gauge(2, BAR), 60)));
        assertEquals(
                0,
                low.summary()
                        .intervals(Interval.Phase.VESSEL_HOLDS_WATER)
                        .get(0)
                        .from());
        assertTrue(low.summary().intervals(Interval.Phase.VESSEL_FULL).isEmpty());
        RunResult full = run(Parts.lodge(4.2, 58).vessel(Systems.vessel(18, Pressure.gauge(0.5, BAR), 30)));
        assertEquals(List.of(new Interval(0, full.end(), "")), full.summary().intervals(Interval.Phase.VESSEL_FULL));
        RunResult high = run(Parts.lodge(4.2, 58).vessel(Systems.vessel(18, Pressure.gauge(4.5, BAR), 60)));
        assertTrue(high.summary()
                        .intervals(Interval.Phase.VESSEL_HOLDS_WATER)
                        .get(0)
                        .from()
                > 0);
    }

    /**
     * Contract: vessels charged to the supply's pressure, as is usual, are empty while the supply feeds, and each of them says
     * so, whatever their sizes: {@link Interval.Phase#VESSEL_HOLDS_WATER} and the trace agree at every sample.
     */
    @ParameterizedTest
    @CsvSource({"2.0, 8, 8, 8", "3.8, 8, 8, 8", "3.8, 8, 2, 300", "4.2, 12, 35, 8", "4.5, 8, 80, 2", "6.0, 8, 8, 4"})
    void vesselsChargedAtTheSupplyHoldWaterWhenTheTraceSaysSo(double bar, double first, double second, double third) {
        Pressure supply = Pressure.gauge(bar, BAR);
        List<ExpansionVessel> vessels = DoubleStream.of(first, second, third)
                .mapToObj(litres -> Systems.vessel(litres, supply, 90))
                .toList();
        Draw draw = Draw.ofVolume(7 * 3600, 60, LITRE, 8, FlowUnit.LITRE_PER_MINUTE);
        for (int several = 1; several <= vessels.size(); several++) {
            HotWaterSystem.Builder house = Parts.lodge(4.2, 58)
                    .supply(Parts.supply(Supply.Arrangement.CHECK_VALVE, supply, 9))
                    .draws(DrawProfile.of("one", List.of(draw)));
            vessels.subList(0, several).forEach(house::addVessel);
            RunResult run = run(house);
            for (int vessel = 0; vessel < several; vessel++) {
                assertHoldsWater(run, vessel, several);
            }
        }
    }

    private static void assertHoldsWater(RunResult run, int vessel, int several) {
        String name = run.system().vesselNames().get(vessel);
        List<Interval> holding = run.summary().intervals(Interval.Phase.VESSEL_HOLDS_WATER).stream()
                .filter(interval -> interval.device().equals(name))
                .toList();
        assertTrue(holding.size() > 1, () -> name + " holds water without a break: " + holding);
        Trace trace = run.trace();
        for (int i = 0; i < trace.count(); i++) {
            double time = trace.grid().time(i);
            double water = several == 1
                    ? trace.value(Channel.VESSEL_WATER, i)
                    : trace.sample(i)[Trace.vesselWater(vessel, several)];
            boolean held = holding.stream().anyMatch(interval -> interval.contains(time));
            assertEquals(held, water > 0, () -> name + " of " + several + " holds " + water + " m3 at " + time + " s");
        }
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
