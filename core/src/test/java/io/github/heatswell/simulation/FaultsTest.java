package io.github.heatswell.simulation;

import static io.github.heatswell.units.PressureUnit.BAR;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.result.Channel;
import io.github.heatswell.result.Event;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.result.Totals;
import io.github.heatswell.result.Trace;
import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.Parts;
import io.github.heatswell.system.ReliefFault;
import io.github.heatswell.system.ReliefValve;
import io.github.heatswell.system.Supply;
import io.github.heatswell.units.FlowUnit;
import io.github.heatswell.units.LengthUnit;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.RatioUnit;
import io.github.heatswell.units.TemperatureUnit;
import io.github.heatswell.units.VolumeUnit;
import io.github.heatswell.water.GibbsPolynomialWater;
import java.time.Duration;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What happens when a device fails. */
class FaultsTest {

    private static ReliefValve.Builder expansionValve() {
        return ReliefValve.builder()
                .name("expansion valve")
                .setPressure(Pressure.gauge(7, BAR))
                .fullLiftPressure(Pressure.gauge(7.7, BAR))
                .reseatPressure(Pressure.gauge(5.6, BAR))
                .fullFlow(20, FlowUnit.LITRE_PER_MINUTE)
                .liftCharacteristic(ReliefValve.LiftCharacteristic.MODULATING);
    }

    private static RunResult run(HotWaterSystem.Builder system, int hours) {
        RunResult result =
                Simulation.of(system.build(), Duration.ofHours(hours)).run();
        assertTrue(result.audit().closes(), result.audit().toString());
        return result;
    }

    /** Thermostat stuck, no cut-out: the T&P valve holds the tank by throughput and lets nothing boil. */
    @Test
    void temperatureAndPressureValveHoldsARunaway() {
        RunResult result = run(
                Parts.lodge(4.2, 58)
                        .heater(Systems.runaway().build())
                        .addReliefValve(Systems.temperatureAndPressure().build())
                        .addReliefValve(expansionValve().build()),
                24);
        assertTrue(result.hazard().isEmpty());
        assertEquals(99 + 273.15, result.extremes().highestTemperature().value(), 1e-3);
        assertTrue(result.peak().value() <= 7e5 + 1);
        Totals.Relief device = result.totals().relief().get(0);
        assertTrue(device.openings() > 10 && device.mass() > 500, device.toString());
        assertTrue(result.totals().letIn() > 0.5, "the supply cools the tank");
    }

    /** Lifted a little by pressure, the T&P valve opens fully once its probe is hot. */
    @Test
    void temperatureLiftsAValveThatPressureHadLiftedALittle() {
        RunResult result = run(
                Parts.lodge(4.2, 58)
                        .heater(Systems.runaway().build())
                        .addReliefValve(Systems.temperatureAndPressure().build()),
                24);
        Trace trace = result.trace();
        double expansion = 0;
        double washed = 0;
        for (int i = 0; i < trace.count(); i++) {
            boolean hot = trace.value(Channel.WATER_TOP, i) > 88 + 273.15;
            double flow = trace.value(Channel.RELIEF_FLOW, i);
            expansion = hot ? expansion : Math.max(expansion, flow);
            washed = Math.max(washed, flow);
        }
        assertTrue(expansion > 0 && expansion < 0.2e-3 / 60, "by pressure as much as the water grows: " + expansion);
        assertTrue(washed > 10e-3 / 60, "by temperature all it can: " + washed);
        assertEquals(99 + 273.15, result.extremes().highestTemperature().value(), 1e-3);
    }

    /** A house that empties through an open valve ends where that valve draws air: as much higher as the water column to it. */
    @ParameterizedTest
    @ValueSource(doubles = {0, 1, 4})
    void anOpenValveHigherUpMeetsTheAirFirst(double metres) {
        HotWaterSystem house = Parts.lodge(4.2, 58)
                .supply(SupplyBoundaryTest.supply(Supply.Arrangement.CHECK_VALVE, 4.2)
                        .addOutage(new Supply.Outage(1_800, 36_000))
                        .build())
                .heater(Systems.runaway()
                        .thermostatStuck(false)
                        .setPoint(12, TemperatureUnit.CELSIUS)
                        .build())
                .addReliefValve(expansionValve()
                        .fault(ReliefFault.stuckOpen(5, RatioUnit.PERCENT))
                        .height(metres, LengthUnit.METRE)
                        .build())
                .build();
        RunResult result = Simulation.of(house, Duration.ofHours(2)).run();
        Event end = result.hazard().orElseThrow();
        assertEquals(Event.Kind.ATMOSPHERE_REACHED, end.kind());
        double column = 999.8 * 9.80665 * metres; // density at 9 degC: handbook, 999.8
        assertEquals(house.site().atmosphere() + column, end.pressureAbsolute(), 120);
        assertTrue(result.end() > 1_800 && result.end() < 2_400);
    }

    /** The same with the T&P blocked: it ends in the hazard it is. */
    @Test
    void blockedTemperatureAndPressureValveEndsInVapour() {
        RunResult result = run(
                Parts.lodge(4.2, 58)
                        .heater(Systems.runaway().build())
                        .addReliefValve(Systems.temperatureAndPressure()
                                .fault(ReliefFault.blocked())
                                .build())
                        .addReliefValve(expansionValve().build()),
                24);
        assertTrue(result.hazard().isPresent());
        assertEquals(0, result.totals().relief().get(0).openings());
        assertTrue(result.extremes().highestTemperature().value() > 99 + 273.15);
    }

    /** The cut-out ends a runaway and stays off. */
    @Test
    void cutOutEndsARunaway() {
        RunResult result = run(
                Parts.lodge(4.2, 58)
                        .heater(Systems.runaway()
                                .cutOut(85, TemperatureUnit.CELSIUS)
                                .build())
                        .addReliefValve(expansionValve().build()),
                48);
        Event tripped = result.first(Event.Kind.CUT_OUT_TRIPPED).orElseThrow();
        assertEquals(85 + 273.15, tripped.waterTemperature(), 1e-5);
        assertEquals(
                1,
                result.events().stream()
                        .filter(e -> e.kind() == Event.Kind.HEATER_ON)
                        .count());
        assertEquals(
                0, result.trace().value(Channel.HEATER_POWER, result.trace().count() - 1));
    }

    /** Stuck open: the valve runs steadily, and the house stays at supply pressure whatever the heater does. */
    @Test
    void valveStuckOpenRunsSteadily() {
        RunResult result = run(
                Parts.lodge(4.2, 58)
                        .addReliefValve(expansionValve()
                                .fault(ReliefFault.stuckOpen(5, RatioUnit.PERCENT))
                                .build()),
                6);
        assertEquals(4.2e5, result.peak().value(), 1);
        double first = result.trace().value(Channel.RELIEF_FLOW, 10);
        double last = result.trace().value(Channel.RELIEF_FLOW, 350);
        assertEquals(first, last, 1e-3 * first);
        double byOrifice = 0.05 * 20e-3 / 60 * Math.sqrt(4.2 / 7.7);
        assertEquals(byOrifice, first, 1e-3 * byOrifice); // closed form; cold water at 4.2 bar and at the air differ
    }

    /** Leaking seat: it drips from a lower pressure, heating or not, and never opens. On the tank it drips hot water. */
    @ParameterizedTest
    @EnumSource(ReliefValve.Location.class)
    void leakingSeatDripsAlways(ReliefValve.Location location) {
        RunResult result = run(
                Parts.lodge(4.2, 58)
                        .vessel(Systems.vessel(12, Pressure.gauge(4.2, BAR), 60))
                        .addReliefValve(expansionValve()
                                .location(location)
                                .fault(ReliefFault.leakingSeat(
                                        Pressure.gauge(3, BAR), 10, FlowUnit.MILLILITRE_PER_MINUTE))
                                .build()),
                24);
        assertTrue(result.first(Event.Kind.RELIEF_OPENED).isEmpty());
        GibbsPolynomialWater water = GibbsPolynomialWater.instance();
        double cold = water.density(
                result.system().coldAtStart(), result.system().site().atmosphere());
        for (int i = 0; i < result.trace().count(); i++) {
            double pressure = result.trace().value(Channel.PRESSURE_ABSOLUTE, i);
            double above = result.gauge(pressure) - 3e5;
            // flows are told as cold water
            double density = location == ReliefValve.Location.BRANCH
                    ? cold
                    : water.density(result.trace().value(Channel.WATER_TOP, i), pressure);
            double byLine = 10e-6 / 60 * above / 4e5 * density / cold;
            assertEquals(byLine, result.trace().value(Channel.RELIEF_FLOW, i), 1e-3 * byLine); // closed form
        }
    }

    /** An isolated or a water-logged vessel is none. */
    @ParameterizedTest
    @ValueSource(strings = {"ISOLATED", "WATERLOGGED", "UPSTREAM_OF_CHECK"})
    void deadVesselIsNoVessel(String condition) {
        ExpansionVessel dead = ExpansionVessel.builder()
                .volume(12, VolumeUnit.LITRE)
                .precharge(Pressure.gauge(4.2, BAR))
                .acceptance(60, RatioUnit.PERCENT)
                .condition(ExpansionVessel.Condition.valueOf(condition))
                .build();
        RunResult with = run(
                Parts.lodge(4.2, 58)
                        .vessel(dead)
                        .addReliefValve(expansionValve().build()),
                4);
        RunResult without =
                run(Parts.lodge(4.2, 58).addReliefValve(expansionValve().build()), 4);
        double expected = without.totals().relieved();
        assertEquals(expected, with.totals().relieved(), 2e-3 * expected); // 12 L more water give a little
    }

    /** Closed form: a vessel warmer than on the day it was charged pushes harder, in the ratio of temperatures. */
    @Test
    void warmVesselPushesHarder() {
        ExpansionVessel warm = ExpansionVessel.builder()
                .volume(12, VolumeUnit.LITRE)
                .precharge(Pressure.gauge(4.0, BAR))
                .acceptance(60, RatioUnit.PERCENT)
                .chargedAt(5, TemperatureUnit.CELSIUS)
                .temperature(40, TemperatureUnit.CELSIUS)
                .build();
        RunResult result = run(Parts.lodge(4.2, 58).vessel(warm), 1);
        Event lifted = result.first(Event.Kind.VESSEL_LIFTED).orElseThrow();
        double charge = 4.0e5 + result.system().site().atmosphere();
        assertEquals(charge * (40 + 273.15) / (5 + 273.15), lifted.pressureAbsolute(), 0.1);
    }

    /** Closed form: trapped air obeys Boyle's law and softens the rise. */
    @Test
    void trappedAirSoftensTheRise() {
        RunResult with = run(
                Parts.lodge(4.2, 58)
                        .trappedAir(1, VolumeUnit.LITRE)
                        .addReliefValve(expansionValve().build()),
                4);
        RunResult without =
                run(Parts.lodge(4.2, 58).addReliefValve(expansionValve().build()), 4);
        double late = with.first(Event.Kind.RELIEF_OPENED).orElseThrow().time();
        double early = without.first(Event.Kind.RELIEF_OPENED).orElseThrow().time();
        assertTrue(late > 2 * early, late + " s against " + early + " s");
    }

    /** A valve, a vessel and a gauge above the drain cock see so much less pressure: 0.98 bar for ten metres. */
    @Test
    void heightsShiftWhatADeviceSees() {
        double column = 9.80665 * 10 * 999.8;
        RunResult low = run(Parts.lodge(4.2, 58).addReliefValve(expansionValve().build()), 1);
        RunResult high = run(
                Parts.lodge(4.2, 58)
                        .gaugeHeight(10, LengthUnit.METRE)
                        .addReliefValve(
                                expansionValve().height(10, LengthUnit.METRE).build()),
                1);
        double below = low.first(Event.Kind.RELIEF_OPENED).orElseThrow().pressureAbsolute();
        double above = high.first(Event.Kind.RELIEF_OPENED).orElseThrow().pressureAbsolute();
        assertEquals(column, above - below, 10); // the density of cold water to 1e-4
        assertEquals(
                high.gauge(high.trace().value(Channel.PRESSURE_ABSOLUTE, 5)) - column,
                high.trace().value(Channel.GAUGE_READING, 5),
                10);
    }
}
