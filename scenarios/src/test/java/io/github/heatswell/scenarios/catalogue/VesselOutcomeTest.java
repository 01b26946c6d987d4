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
import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.simulation.Simulation;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.PipeRun;
import io.github.heatswell.system.ReliefValve;
import io.github.heatswell.units.LengthUnit;
import java.time.Duration;
import org.junit.jupiter.api.Test;

/** What a vessel does, what acts like one, and what acts like a leak. */
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
        double share = 1 - (3 + 0.97655) * (282.15 / 290.15) / (4.2 + 0.97655); // Boyle and Gay-Lussac, air at 310 m
        assertEquals(1.0 / 4, share, 0.01);
        double atFirst = litres(result.trace().value(Channel.VESSEL_WATER, 0));
        double onTheWall = 8 * (1 - (4 + 0.97655) / (4.2 + 0.97655 - 0.14704)); // 1.5 m of cold water
        assertEquals(6 * share + onTheWall, atFirst, 0.01);
        double asWarm = (3 + 0.97655) * (full.waterTemperature() / 290.15) / (1 - 0.35) - 0.97655;
        assertEquals(asWarm, bar(result, full.pressureAbsolute()), 0.01); // its gas lags by half a minute's heating
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

    /** Without the heat in the branch the same hour lowers the pressure half as far. */
    @Test
    void aCoolingBranchLooksLikeALeak() {
        Scenario scenario = Catalogue.read("orchard-lodge-leak-test");
        RunResult result = scenario.simulation().run();
        HotWaterSystem cold = scenario.system().toBuilder()
                .changePiping(pipe -> pipe.carries() == PipeRun.Carries.HOT ? cold(pipe) : pipe)
                .build();
        RunResult without = Simulation.of(cold, Duration.ofHours(3)).run();
        double off = result.first(Event.Kind.SUPPLY_SHUT_OFF).orElseThrow().pressureAbsolute();
        double falls = off - lowest(result);
        assertTrue(falls > 1.8e5 && falls < 2e5, "almost two bar");
        assertEquals(0.5, (off - lowest(without)) / falls, 0.05);
        Trace trace = result.trace();
        assertEquals(49, trace.value(Channel.WATER_AT_TAP, 42) - 273.15, 0.5);
        assertEquals(31, trace.value(Channel.WATER_AT_TAP, 102) - 273.15, 0.5);
        assertEquals(
                1.0 / 3, trace.value(Channel.WATER_MEAN, 42) - trace.value(Channel.WATER_MEAN, 102), 0.03, "a third");
        assertEquals(0, result.totals().leaked());
    }

    /** Beside the same house without the loop. */
    @Test
    void aLoopCostsHeatAndLittlePressure() {
        Scenario scenario = Catalogue.read("orchard-lodge-circulation");
        RunResult result = scenario.simulation().run();
        HotWaterSystem house = scenario.system();
        HotWaterSystem.Builder bare = HotWaterSystem.builder()
                .site(house.site())
                .supply(house.supply())
                .tank(house.tank())
                .heater(house.heater())
                .start(house.start())
                .vessel(house.vessel().orElseThrow())
                .addPipe(house.piping().get(0));
        house.reliefValves().forEach((ReliefValve valve) -> bare.addReliefValve(valve));
        RunResult without = Simulation.of(bare.build(), Duration.ofDays(1)).run();
        Trace trace = result.trace();
        assertEquals(17, trace.value(Channel.WATER_IN_LOOP, 120) - 273.15, 0.01);
        assertEquals(53, trace.value(Channel.WATER_IN_LOOP, 140) - 273.15, 0.5);
        assertEquals(9, litres(house.hotVolume() - house.tank().volume()), 0.1);
        assertEquals(
                trace.value(Channel.PRESSURE_ABSOLUTE, 120), trace.value(Channel.PRESSURE_ABSOLUTE, 140), 100, "stays");
        double kilowattHours = (result.totals().heatLost() - without.totals().heatLost()) / 3.6e6;
        assertEquals(4.9, kilowattHours, 0.1);
        assertEquals(2.2, without.totals().heatLost() / 3.6e6, 0.1);
        assertEquals(4, count(result, Event.Kind.HEATER_ON));
        assertEquals(1, count(without, Event.Kind.HEATER_ON));
        assertEquals(peak(without), peak(result), 0.02);
        assertEquals(2, fallsAfterTen(result) / fallsAfterTen(without), 0.4);
    }

    /** From ten to midnight. */
    private static double fallsAfterTen(RunResult result) {
        Trace trace = result.trace();
        return trace.value(Channel.PRESSURE_ABSOLUTE, 1080) - trace.value(Channel.PRESSURE_ABSOLUTE, 1200);
    }

    private static double lowest(RunResult result) {
        return result.extremes().lowestPressure().value();
    }

    private static PipeRun cold(PipeRun pipe) {
        double bore = Math.sqrt(pipe.volume() / (Math.PI / 4 * 16));
        return PipeRun.builder()
                .material(pipe.material())
                .outsideDiameter(22, LengthUnit.MILLIMETRE)
                .wall((0.022 - bore) / 2, LengthUnit.METRE)
                .length(16, LengthUnit.METRE)
                .build();
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
