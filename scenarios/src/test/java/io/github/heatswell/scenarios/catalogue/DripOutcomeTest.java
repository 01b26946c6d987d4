package io.github.heatswell.scenarios.catalogue;

import static io.github.heatswell.scenarios.catalogue.Runs.bar;
import static io.github.heatswell.scenarios.catalogue.Runs.count;
import static io.github.heatswell.scenarios.catalogue.Runs.first;
import static io.github.heatswell.scenarios.catalogue.Runs.hottest;
import static io.github.heatswell.scenarios.catalogue.Runs.litres;
import static io.github.heatswell.scenarios.catalogue.Runs.lowest;
import static io.github.heatswell.scenarios.catalogue.Runs.peak;
import static io.github.heatswell.scenarios.catalogue.Runs.relieved;
import static io.github.heatswell.scenarios.catalogue.Runs.run;
import static io.github.heatswell.scenarios.catalogue.Runs.share;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.result.Channel;
import io.github.heatswell.result.Event;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.result.Trace;
import org.junit.jupiter.api.Test;

/** What makes a relief valve drip, and what does not. */
class DripOutcomeTest {

    @Test
    void expansionComesOutWhileHeating() {
        RunResult result = run("mill-cottage");
        assertTrue(share(result, Channel.HEATER_POWER, power -> power > 0) > 0.99);
        assertTrue(relieved(result) > 5 && relieved(result) < 12, relieved(result) + " L");
    }

    @Test
    void aVesselCutOffIsNoVessel() {
        assertEquals(relieved(run("mill-cottage")), relieved(run("mill-cottage-isolated-vessel")), 1e-3);
    }

    @Test
    void aSmallVesselBottomsOutBeforeTheValveOpens() {
        RunResult result = run("mill-cottage-small-vessel");
        assertTrue(first(result, Event.Kind.VESSEL_BOTTOMED_OUT) < first(result, Event.Kind.RELIEF_OPENED));
        RunResult without = run("mill-cottage");
        assertTrue(first(result, Event.Kind.RELIEF_OPENED) > first(without, Event.Kind.RELIEF_OPENED) + 300);
        assertTrue(relieved(result) < 0.6 * relieved(without));
    }

    @Test
    void anOverchargedVesselTakesNothingBeforeItsPrecharge() {
        RunResult result = run("mill-cottage-overcharged-vessel");
        double lifted = result.first(Event.Kind.VESSEL_LIFTED).orElseThrow().pressureAbsolute();
        assertEquals(6.7, bar(result, lifted), 1e-3);
        assertTrue(count(result, Event.Kind.RELIEF_OPENED) > 0);
        assertTrue(relieved(result) < relieved(run("mill-cottage")));
    }

    @Test
    void aDrippingTapHidesTheExpansion() {
        RunResult result = run("mill-cottage-dripping-tap");
        assertEquals(0, relieved(result));
        assertEquals(4, peak(result), 1e-6);
        assertTrue(litres(result.totals().leaked()) > 100);
    }

    @Test
    void aWornSeatDripsAlwaysAndNeverOpens() {
        RunResult result = run("mill-cottage-worn-seat");
        assertEquals(0, count(result, Event.Kind.RELIEF_OPENED));
        Trace trace = result.trace();
        for (int i = 0; i < trace.count(); i++) {
            assertTrue(trace.value(Channel.RELIEF_FLOW, i) > 0);
        }
    }

    @Test
    void aValveStuckOpenRunsOnFedWater() {
        RunResult result = run("mill-cottage-stuck-open");
        assertTrue(relieved(result) > 3 * 300);
        assertEquals(4, peak(result), 1e-6);
        assertTrue(litres(result.totals().letIn()) > relieved(result));
    }

    @Test
    void aHighMainsOpensTheValveAtNightWithoutHeating() {
        RunResult result = run("mill-cottage-night-mains");
        assertEquals(3, count(result, Event.Kind.RELIEF_OPENED));
        result.events().stream()
                .filter(event -> event.kind() == Event.Kind.RELIEF_OPENED)
                .forEach(event -> {
                    double clock = (event.time() + 12 * 3600) % 86_400;
                    assertTrue(clock < 4 * 3600, clock + " s after midnight");
                });
        assertTrue(relieved(result) > 100);
    }

    @Test
    void aSupplyAboveTheReliefSetRunsAllTheTime() {
        RunResult result = run("mill-cottage-high-mains");
        assertEquals(7.3, lowest(result), 1e-6);
        assertEquals(0, count(result, Event.Kind.RELIEF_RESEATED));
        assertTrue(relieved(result) > 10_000);
    }

    @Test
    void aCreepingReducingValveLiftsThePressureAtRest() {
        RunResult result = run("mill-cottage-creeping-reducer");
        assertTrue(share(result, Channel.HEATER_POWER, power -> power == 0) > 0.5);
        assertEquals(7, peak(result), 0.01);
        assertTrue(lowest(result) < 3.8);
    }

    @Test
    void aRunawayIsHeldAtTheTemperatureOfTheValve() {
        RunResult result = run("mill-cottage-thermostat");
        assertEquals(99, hottest(result), 0.01);
        assertTrue(peak(result) < 7);
        assertTrue(relieved(result) > 1000);
    }
}
