package io.github.heatswell.scenarios.catalogue;

import static io.github.heatswell.scenarios.catalogue.Runs.bar;
import static io.github.heatswell.scenarios.catalogue.Runs.count;
import static io.github.heatswell.scenarios.catalogue.Runs.first;
import static io.github.heatswell.scenarios.catalogue.Runs.litres;
import static io.github.heatswell.scenarios.catalogue.Runs.peak;
import static io.github.heatswell.scenarios.catalogue.Runs.relieved;
import static io.github.heatswell.scenarios.catalogue.Runs.run;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.result.Channel;
import io.github.heatswell.result.Event;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.result.Trace;
import org.junit.jupiter.api.Test;

/** What a vessel does, and what acts like one. */
class VesselOutcomeTest {

    @Test
    void aWaterloggedVesselIsWorthNothing() {
        RunResult result = run("orchard-lodge-waterlogged");
        RunResult without = run("orchard-lodge");
        assertEquals(relieved(without), relieved(result), 0.01);
        assertEquals(first(without, Event.Kind.RELIEF_OPENED), first(result, Event.Kind.RELIEF_OPENED), 15);
    }

    @Test
    void aWarmVesselPeaksHigher() {
        RunResult result = run("orchard-lodge-warm-vessel");
        double lifted = result.first(Event.Kind.VESSEL_LIFTED).orElseThrow().pressureAbsolute();
        assertTrue(bar(result, lifted) > 4.7);
        assertTrue(peak(result) > peak(run("orchard-lodge-vessel")) + 0.5);
        assertEquals(0, relieved(result));
    }

    @Test
    void aVesselAtItsLimitLeavesTheRestToTheOther() {
        RunResult result = run("orchard-lodge-two-vessels");
        assertTrue(result.first(Event.Kind.RELIEF_OPENED).isEmpty());
        Event full = result.first(Event.Kind.VESSEL_BOTTOMED_OUT).orElseThrow();
        assertEquals("in the tank", full.device());
        assertTrue(
                full.time() < result.first(Event.Kind.HEATER_OFF).orElseThrow().time());
        double share = 1 - (3 + 0.97655) * (313.15 / 290.15) / (4.2 + 0.97655); // Boyle and Gay-Lussac, air at 310 m
        assertEquals(1.0 / 6, share, 0.01);
        double atFirst = litres(result.trace().value(Channel.VESSEL_WATER, 0));
        double onTheWall = 8 * (1 - (4 + 0.97655) / (4.2 + 0.97655 - 0.14704)); // 1.5 m of cold water
        assertEquals(6 * share + onTheWall, atFirst, 0.01);
    }

    @Test
    void aColdVesselHoldsWaterFromTheStartAndPeaksHigher() {
        RunResult result = run("orchard-lodge-cold-vessel");
        assertTrue(litres(result.trace().value(Channel.VESSEL_WATER, 0)) > 0.8);
        assertTrue(peak(result) > peak(run("orchard-lodge-vessel")) + 0.15);
    }

    @Test
    void airDelaysTheValve() {
        RunResult result = run("orchard-lodge-air");
        assertTrue(
                first(result, Event.Kind.RELIEF_OPENED) > 1.5 * first(run("orchard-lodge"), Event.Kind.RELIEF_OPENED));
        assertTrue(relieved(result) < relieved(run("orchard-lodge")));
    }

    @Test
    void plasticPipesGiveWay() {
        RunResult result = run("orchard-lodge-pex");
        assertTrue(
                first(result, Event.Kind.RELIEF_OPENED) > 1.15 * first(run("orchard-lodge"), Event.Kind.RELIEF_OPENED));
    }

    @Test
    void everyDeviceSeesThePressureOfItsHeight() {
        RunResult result = run("beacon-tower");
        Trace trace = result.trace();
        double gauge = trace.value(Channel.GAUGE_READING, 0) / 1e5;
        assertEquals(5 - 0.98, gauge, 0.01);
        assertEquals(0, relieved(result));
        assertTrue(peak(result) > 6.5, "above what the attic valve is set to");
        assertEquals(0, count(result, Event.Kind.VESSEL_BOTTOMED_OUT));
    }
}
