package io.github.heatswell.simulation;

import static io.github.heatswell.units.PressureUnit.BAR;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.result.Channel;
import io.github.heatswell.result.Event;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.result.Trace;
import io.github.heatswell.system.Draw;
import io.github.heatswell.system.DrawProfile;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.Leak;
import io.github.heatswell.system.MainsPressure;
import io.github.heatswell.system.Parts;
import io.github.heatswell.system.ReducingValve;
import io.github.heatswell.system.ReliefValve;
import io.github.heatswell.system.Start;
import io.github.heatswell.system.Supply;
import io.github.heatswell.system.SupplyTemperature;
import io.github.heatswell.units.DurationUnit;
import io.github.heatswell.units.EnergyUnit;
import io.github.heatswell.units.FlowUnit;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.TemperatureDifferenceUnit;
import io.github.heatswell.units.TemperatureUnit;
import io.github.heatswell.units.VolumeUnit;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The cold feed in all its arrangements. */
class SupplyBoundaryTest {

    static final ReliefValve VALVE = Systems.valve(ReliefValve.LiftCharacteristic.MODULATING);
    private static final DrawProfile MEDIUM = DrawProfile.published().get("eu-m");

    static ReducingValve.Builder reducing() {
        return ReducingValve.builder()
                .set(Pressure.gauge(3.5, BAR))
                .lockUpRise(0.3, BAR)
                .droop(0.7, BAR)
                .ratedFlow(20, FlowUnit.LITRE_PER_MINUTE);
    }

    static Supply.Builder supply(Supply.Arrangement arrangement, double mainsBar) {
        return Supply.builder()
                .arrangement(arrangement)
                .pressure(Pressure.gauge(mainsBar, BAR))
                .water(9, TemperatureUnit.CELSIUS);
    }

    private static RunResult day(HotWaterSystem.Builder system) {
        RunResult result = Simulation.of(system.build(), Duration.ofDays(1)).run();
        assertTrue(result.audit().closes(), result.audit().toString());
        return result;
    }

    private static double peakBar(RunResult result) {
        return BAR.fromSi(result.peak().value());
    }

    /** Closed form: during a steady draw outlet pressure is lock-up pressure less droop times flow. */
    @Test
    void reducingValveDroopsWithTheFlow() {
        Draw tap = Draw.ofVolume(600, 20, VolumeUnit.LITRE, 10, FlowUnit.LITRE_PER_MINUTE);
        HotWaterSystem.Builder house = Parts.lodge(4.2, 58)
                .supply(supply(Supply.Arrangement.REDUCING_VALVE, 6.5)
                        .reducingValve(reducing().build())
                        .build())
                .start(Start.builder().water(57, TemperatureUnit.CELSIUS).build())
                .draws(DrawProfile.of("one tap", List.of(tap)));
        RunResult result = Simulation.of(house.build(), Duration.ofMinutes(20)).run();
        Trace trace = result.trace();
        double rest = BAR.fromSi(result.gauge(trace.value(Channel.PRESSURE_ABSOLUTE, 5)));
        double running = BAR.fromSi(result.gauge(trace.value(Channel.PRESSURE_ABSOLUTE, 11)));
        assertEquals(3.8, rest, 1e-4); // locked up; a warm tank shrinks by a drop or two
        double inflow = trace.value(Channel.INFLOW_TOTAL, 12) - trace.value(Channel.INFLOW_TOTAL, 11);
        double share = inflow / 60 / (20e-3 / 60);
        assertEquals(3.8 - 1.0 * share, running, 1e-3);
        assertEquals(3.8, BAR.fromSi(result.gauge(trace.value(Channel.PRESSURE_ABSOLUTE, 14))), 0.005);
    }

    /**
     * Closed form: behind a reducing valve that is wide open, a mains that falls draws water out of the vessel, and the valve
     * passes so much less than what leaks. The outlet stands below the mains by what droop makes of the difference.
     */
    @Test
    void outletOfAnOpenReducingValveLagsByWhatTheHouseGivesBack() {
        double litres = 12;
        HotWaterSystem house = Parts.textbook(150, 10, 5.5, 58)
                .supply(Supply.builder()
                        .arrangement(Supply.Arrangement.REDUCING_VALVE)
                        .mains(MainsPressure.daily(
                                Map.of(0.0, Pressure.gauge(4.5, BAR), 6 * 3600.0, Pressure.gauge(3.5, BAR))))
                        .water(10, TemperatureUnit.CELSIUS)
                        .reducingValve(reducing().set(Pressure.gauge(5, BAR)).build())
                        .build())
                .vessel(Systems.vessel(litres, Pressure.gauge(2, BAR), 100))
                .addLeak(Leak.of(20, FlowUnit.MILLILITRE_PER_MINUTE, Pressure.gauge(4, BAR)))
                .start(Start.builder().water(58, TemperatureUnit.CELSIUS).build())
                .build();
        RunResult result = Simulation.of(house, Duration.ofHours(2)).run();
        Trace trace = result.trace();
        double p = trace.value(Channel.PRESSURE_ABSOLUTE, 60);
        double rate = (trace.value(Channel.PRESSURE_ABSOLUTE, 61) - trace.value(Channel.PRESSURE_ABSOLUTE, 59)) / 120;
        double droop = 1e5 / (20e-3 / 60); // Pa s/m3: 0.3 and 0.7 bar at 20 L/min
        double leak = 20e-6 / 60 * Math.sqrt((p - Systems.SEA_LEVEL) / 4e5);
        double gas = litres * 1e-3 * (2e5 + Systems.SEA_LEVEL) / (p * p); // m3/Pa
        double tank = 150e-3 * 4.43e-10; // m3/Pa; water at 58 degC

        assertEquals(-1e5 / 21_600, rate, 1e-3 * 5);
        assertTrue(droop * gas * -rate > 15, "the vessel's part shows");
        double below = trace.value(Channel.MAINS_ABSOLUTE, 60) - p;
        assertEquals(droop * (leak + (gas + tank) * rate), below, 0.3); // Pa, of some eighty
    }

    /** Without a bypass a reducing valve is a check valve: the relief valve opens at every heat-up. */
    @Test
    void reducingValveWithoutBypassShutsTheSystemIn() {
        RunResult result = day(Parts.lodge(4.2, 58)
                .supply(supply(Supply.Arrangement.REDUCING_VALVE, 6.5)
                        .reducingValve(reducing().build())
                        .build())
                .addReliefValve(VALVE)
                .draws(MEDIUM));
        assertEquals(7.0, peakBar(result), 1e-4);
        assertTrue(result.totals().relieved() > 4e-3);
        assertEquals(0, result.totals().returned(), 1e-9);
    }

    /** With a bypass the house never exceeds the mains by more than the bypass's difference, and nothing drips. */
    @Test
    void bypassCapsTheHouseAtTheMains() {
        RunResult result = day(Parts.lodge(4.2, 58)
                .supply(supply(Supply.Arrangement.REDUCING_VALVE, 5.0)
                        .reducingValve(reducing().bypassOpens(0.2, BAR).build())
                        .build())
                .addReliefValve(VALVE)
                .draws(MEDIUM));
        assertEquals(5.2, peakBar(result), 1e-4);
        assertEquals(0, result.totals().relieved());
        assertTrue(result.totals().returned() > 4e-3);
        assertTrue(result.first(Event.Kind.BYPASS_OPENED).isPresent());
        assertTrue(result.trace().regimes().contains(Trace.Regime.RETURNED));
    }

    /** A house that starts above what the bypass holds is let down to it, and nothing feeds it once it falls further. */
    @Test
    void nothingFeedsAHouseThatHasFallenBelowItsBypass() {
        HotWaterSystem.Builder house = Parts.lodge(4.2, 58)
                .supply(supply(Supply.Arrangement.REDUCING_VALVE, 5.0)
                        .reducingValve(reducing().bypassOpens(0.2, BAR).build())
                        .build())
                .start(Start.builder()
                        .water(40, TemperatureUnit.CELSIUS)
                        .pressure(Pressure.gauge(6, BAR))
                        .build())
                .addPipe(Parts.copper(400));
        RunResult result = Simulation.of(house.build(), Duration.ofHours(2)).run();
        double off = result.first(Event.Kind.HEATER_OFF).orElseThrow().time();
        int later = (int) (off / 60) + 3;
        double p = BAR.fromSi(result.gauge(result.trace().value(Channel.PRESSURE_ABSOLUTE, later)));
        assertTrue(p > 3.9 && p < 5.19, "between the feed and the bypass: " + p);
        assertEquals(Trace.Regime.SEALED, result.trace().regime(later));
        assertTrue(result.first(Event.Kind.SUPPLY_OPENED).isEmpty());
        assertTrue(result.first(Event.Kind.BYPASS_CLOSED).isPresent());
    }

    /** What each channel adds up to is what the books say in the end. */
    @Test
    void channelsAddUpToTheBooks() {
        RunResult result = day(Parts.lodge(4.2, 58)
                .supply(supply(Supply.Arrangement.REDUCING_VALVE, 6.9)
                        .reducingValve(reducing().bypassOpens(0.05, BAR).build())
                        .build())
                .addReliefValve(Systems.valve("low", ReliefValve.LiftCharacteristic.MODULATING, 6.5, 7.0, 6.2))
                .addReliefValve(VALVE)
                .draws(MEDIUM));
        Trace trace = result.trace();
        int last = trace.count() - 1;
        assertEquals(result.totals().returned(), trace.value(Channel.RETURNED_TOTAL, last), 1e-12);
        assertEquals(result.totals().drawn(), trace.value(Channel.DRAWN_TOTAL, last), 1e-12);
        assertEquals(result.totals().letIn(), trace.value(Channel.INFLOW_TOTAL, last), 1e-12);
        assertEquals(result.totals().relieved(), trace.value(Channel.RELIEVED_TOTAL, last), 1e-12);
        assertTrue(result.totals().relief().get(0).openings() > 1);
        assertEquals(0, result.totals().relief().get(1).openings());
        RunResult returning = day(Parts.lodge(4.2, 58)
                .supply(supply(Supply.Arrangement.DIRECT, 4.2).build())
                .draws(MEDIUM));
        Trace back = returning.trace();
        assertTrue(returning.totals().returned() > 3e-3);
        assertEquals(returning.totals().returned(), back.value(Channel.RETURNED_TOTAL, back.count() - 1), 1e-12);
    }

    /** One tap: who opens it a second time, closes it first, if it was still open for want of hot water. */
    @Test
    void aDrawThatWaitsForItsHeatEndsWithTheNext() {
        Draw bath = Draw.ofHeat(600, 300, EnergyUnit.MEGAJOULE, 4, FlowUnit.LITRE_PER_MINUTE);
        Draw basin = Draw.ofVolume(1500, 6, VolumeUnit.LITRE, 2, FlowUnit.LITRE_PER_MINUTE);
        HotWaterSystem.Builder house = Parts.lodge(4.2, 58)
                .start(Start.builder().water(57, TemperatureUnit.CELSIUS).build())
                .draws(DrawProfile.of("two", List.of(bath, basin)));
        RunResult result = Simulation.of(house.build(), Duration.ofMinutes(29)).run();
        List<String> taps = result.events().stream()
                .filter(event -> event.kind() == Event.Kind.DRAW_STARTED || event.kind() == Event.Kind.DRAW_ENDED)
                .map(event -> event.kind().name() + " " + Math.round(event.time()))
                .toList();
        assertEquals(List.of("DRAW_STARTED 600", "DRAW_ENDED 1500", "DRAW_STARTED 1500", "DRAW_ENDED 1680"), taps);
        assertEquals(4e-3 / 60 * 900 + 6e-3, result.totals().drawn(), 0.02e-3 + 0.015 * 66e-3); // hot water is lighter
    }

    /** A bypass does not help where the mains itself stands above the relief set pressure. */
    @Test
    void bypassDoesNotHelpBelowAHighMains() {
        RunResult result = day(Parts.lodge(4.2, 58)
                .supply(supply(Supply.Arrangement.REDUCING_VALVE, 8.0)
                        .reducingValve(reducing().bypassOpens(0.2, BAR).build())
                        .build())
                .addReliefValve(VALVE)
                .draws(MEDIUM));
        assertTrue(result.totals().relieved() > 4e-3);
        assertEquals(0, result.totals().returned(), 1e-9);
        assertEquals(7.0, peakBar(result), 1e-4);
    }

    /** The seat of a reducing valve that creeps lets the house climb towards the mains without any heating. */
    @Test
    void creepingReducingValveRaisesThePressureAtRest() {
        RunResult result = Simulation.of(
                        Parts.lodge(4.2, 58)
                                .supply(supply(Supply.Arrangement.REDUCING_VALVE, 6.0)
                                        .reducingValve(reducing().build())
                                        .seatLeakage(20, FlowUnit.MILLILITRE_PER_MINUTE)
                                        .build())
                                .start(Start.builder()
                                        .water(57, TemperatureUnit.CELSIUS)
                                        .build())
                                .build(),
                        Duration.ofHours(3))
                .run();
        int last = result.trace().count() - 1;
        assertEquals(6.0, BAR.fromSi(result.gauge(result.trace().value(Channel.PRESSURE_ABSOLUTE, last))), 0.01);
        assertTrue(result.audit().closes());
    }

    /** A leaking check valve gives part of the expansion back to the mains, and the pressure falls faster. */
    @Test
    void leakingCheckValveReturnsWater() {
        RunResult tight = Simulation.of(
                        Parts.lodge(4.2, 58).addReliefValve(VALVE).build(), Duration.ofHours(6))
                .run();
        RunResult leaking = Simulation.of(
                        Parts.lodge(4.2, 58)
                                .supply(supply(Supply.Arrangement.CHECK_VALVE, 4.2)
                                        .seatLeakage(20, FlowUnit.MILLILITRE_PER_MINUTE)
                                        .build())
                                .addReliefValve(VALVE)
                                .build(),
                        Duration.ofHours(6))
                .run();
        assertTrue(leaking.totals().returned() > 1e-3);
        assertTrue(leaking.totals().relieved() < 0.5 * tight.totals().relieved());
        assertTrue(leaking.audit().closes());
    }

    /** A dripping tap hides the expansion. */
    @Test
    void drippingTapHidesTheExpansion() {
        RunResult result = Simulation.of(
                        Parts.lodge(4.2, 58)
                                .addLeak(Leak.of(60, FlowUnit.MILLILITRE_PER_MINUTE, Pressure.gauge(4.2, BAR)))
                                .addReliefValve(VALVE)
                                .build(),
                        Duration.ofHours(4))
                .run();
        assertEquals(0, result.totals().relieved());
        assertEquals(60e-6 * 240, result.totals().leaked(), 0.05 * 60e-6 * 240); // the pressure rises now and then
        assertTrue(result.audit().closes());
    }

    /** High mains pressure at night runs water through the valve without any heating. */
    @Test
    void nightMainsRunsThroughTheValve() {
        MainsPressure mains = MainsPressure.daily(Map.of(
                5 * 3600.0, Pressure.gauge(7.4, BAR),
                7 * 3600.0, Pressure.gauge(4.2, BAR),
                20 * 3600.0, Pressure.gauge(4.2, BAR),
                23 * 3600.0, Pressure.gauge(7.4, BAR)));
        RunResult result = day(Parts.lodge(4.2, 58)
                .supply(Supply.builder()
                        .arrangement(Supply.Arrangement.CHECK_VALVE)
                        .mains(mains)
                        .water(9, TemperatureUnit.CELSIUS)
                        .build())
                .addReliefValve(VALVE)
                .start(Start.builder()
                        .timeOfDay(12, DurationUnit.HOUR)
                        .water(57, TemperatureUnit.CELSIUS)
                        .build()));
        Trace trace = result.trace();
        int midnight = 12 * 60;
        assertEquals(Trace.Regime.FED, trace.regime(midnight));
        assertTrue(trace.value(Channel.RELIEF_FLOW, midnight) > 10e-3 / 60);
        assertEquals(
                trace.value(Channel.MAINS_ABSOLUTE, midnight), trace.value(Channel.PRESSURE_ABSOLUTE, midnight), 1e-3);
        assertEquals(0, trace.value(Channel.RELIEF_FLOW, 23 * 60 + 59), 1e-12);
    }

    /** The seasons change the cold water, and the books still close. */
    @Test
    void seasonsCloseTheBooks() {
        HotWaterSystem.Builder house = Parts.lodge(4.2, 58)
                .supply(Supply.builder()
                        .arrangement(Supply.Arrangement.CHECK_VALVE)
                        .pressure(Pressure.gauge(4.2, BAR))
                        .water(SupplyTemperature.seasonal(
                                10, TemperatureUnit.CELSIUS, 20, TemperatureDifferenceUnit.KELVIN))
                        .build())
                .vessel(Systems.vessel(12, Pressure.gauge(4.2, BAR), 60))
                .start(Start.builder().dayOfYear(100).build())
                .draws(MEDIUM);
        RunResult result = Simulation.of(house.build(), Duration.ofDays(30)).run();
        assertTrue(result.audit().closes(), result.audit().toString());
        assertEquals(30 * 5.845 * 3.6e6, result.totals().heatDelivered(), 1e-6 * 30 * 5.845 * 3.6e6);
    }

    /** A start at the supply's own pressure, which its rounding may put a hair beside it, is the usual start. */
    @ParameterizedTest
    @CsvSource({"DIRECT, 2.7, 1e-12", "DIRECT, 2.7, -1e-12", "CHECK_VALVE, 4.2, -1e-12", "CHECK_VALVE, 4.2, 1e-12"})
    void startAHairBesideTheSupplyIsTheUsualStart(Supply.Arrangement arrangement, double bar, double hairBar) {
        HotWaterSystem.Builder house =
                Parts.lodge(4.2, 58).supply(supply(arrangement, bar).build()).addReliefValve(VALVE);
        RunResult usual = day(house);
        RunResult result = day(house.start(
                Start.builder().pressure(Pressure.gauge(bar + hairBar, BAR)).build()));
        assertEquals(peakBar(usual), peakBar(result), 1e-6); // bar; a pascal-sized step may fall elsewhere
        assertEquals(usual.totals().relieved(), result.totals().relieved(), 1e-8); // m3, a hundredth of a millilitre
        assertEquals(usual.totals().letIn(), result.totals().letIn(), 1e-8); // the same
    }
}
