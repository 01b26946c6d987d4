package io.github.heatswell.diagnosis;

import static io.github.heatswell.diagnosis.Cause.AS_DESCRIBED;
import static io.github.heatswell.diagnosis.Cause.CHECK_VALVE_PASSES;
import static io.github.heatswell.diagnosis.Cause.LEAK;
import static io.github.heatswell.diagnosis.Cause.PRECHARGE_HIGH;
import static io.github.heatswell.diagnosis.Cause.PRECHARGE_LOW;
import static io.github.heatswell.diagnosis.Cause.REDUCING_VALVE_CREEPS;
import static io.github.heatswell.diagnosis.Cause.RELIEF_OPENS_HIGH;
import static io.github.heatswell.diagnosis.Cause.RELIEF_OPENS_LOW;
import static io.github.heatswell.diagnosis.Cause.RELIEF_SEAT_WEEPS;
import static io.github.heatswell.diagnosis.Cause.RELIEF_STUCK_OPEN;
import static io.github.heatswell.diagnosis.Cause.SUPPLY_PRESSURE;
import static io.github.heatswell.diagnosis.Cause.TRAPPED_AIR;
import static io.github.heatswell.diagnosis.Cause.VESSEL_ISOLATED;
import static io.github.heatswell.diagnosis.Cause.VESSEL_SMALL;
import static io.github.heatswell.diagnosis.Cause.VESSEL_WATERLOGGED;
import static io.github.heatswell.diagnosis.Cause.WATER_TOO_HOT;
import static io.github.heatswell.units.PressureUnit.BAR;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.ReliefFault;
import io.github.heatswell.system.Supply;
import io.github.heatswell.units.FlowUnit;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.RatioUnit;
import io.github.heatswell.units.TemperatureUnit;
import io.github.heatswell.units.VolumeUnit;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Which causes are looked at in which house, and between which values. */
class HypothesisTest {

    private static final double PER_MINUTE = 1e-6 / 60;

    private static List<Cause> causes(HotWaterSystem.Builder house) {
        return Hypothesis.of(house.build()).stream().map(Hypothesis::cause).toList();
    }

    private static HotWaterSystem.Builder with(ExpansionVessel.Builder vessel) {
        return Abbey.plain().vessel(vessel.build());
    }

    /** The range of the number a cause leaves open. */
    private static FreeParameter open(HotWaterSystem.Builder house, Cause cause, int index) {
        return Hypothesis.of(house.build()).stream()
                .filter(hypothesis -> hypothesis.cause() == cause)
                .findFirst()
                .orElseThrow()
                .open()
                .get(index);
    }

    private static void range(double low, double high, FreeParameter found) {
        assertEquals(low, found.low(), 1e-9 * low, found.toString());
        assertEquals(high, found.high(), 1e-9 * high, found.toString());
    }

    @Test
    void aHouseWithEverythingSound() {
        assertEquals(
                List.of(
                        AS_DESCRIBED,
                        PRECHARGE_LOW,
                        PRECHARGE_HIGH,
                        VESSEL_SMALL,
                        VESSEL_WATERLOGGED,
                        VESSEL_ISOLATED,
                        TRAPPED_AIR,
                        SUPPLY_PRESSURE,
                        CHECK_VALVE_PASSES,
                        RELIEF_OPENS_LOW,
                        RELIEF_OPENS_HIGH,
                        RELIEF_SEAT_WEEPS,
                        RELIEF_STUCK_OPEN,
                        WATER_TOO_HOT,
                        LEAK),
                causes(Abbey.plain()));
    }

    @Test
    void whatIsNotThereOrKnownToBeWrongIsNoCause() {
        assertEquals(
                List.of(AS_DESCRIBED, TRAPPED_AIR, SUPPLY_PRESSURE, CHECK_VALVE_PASSES, WATER_TOO_HOT, LEAK),
                causes(Abbey.plain().withoutVessel().withoutReliefValves()));
        assertFalse(causes(with(Abbey.vessel().condition(ExpansionVessel.Condition.ISOLATED)))
                .contains(PRECHARGE_LOW));
        assertFalse(causes(Abbey.plain()
                        .withoutReliefValves()
                        .addReliefValve(Abbey.relief("stuck", 7)
                                .fault(ReliefFault.stuckOpen(0.01, RatioUnit.ONE))
                                .build()))
                .contains(RELIEF_OPENS_LOW));
        assertFalse(causes(Abbey.plain().trappedAir(0.2, VolumeUnit.LITRE)).contains(TRAPPED_AIR));
        assertFalse(causes(Abbey.plain()
                        .supply(Abbey.checkValve(3)
                                .seatLeakage(1, FlowUnit.MILLILITRE_PER_MINUTE)
                                .build()))
                .contains(CHECK_VALVE_PASSES));
        List<Cause> highest = causes(Abbey.plain()
                .withoutReliefValves()
                .addReliefValve(Abbey.relief("high", 22.5).build()));
        assertTrue(highest.contains(RELIEF_OPENS_HIGH));
        List<Cause> tooHigh = causes(Abbey.plain()
                .withoutReliefValves()
                .addReliefValve(Abbey.relief("higher", 23.6).build()));
        assertFalse(tooHigh.contains(RELIEF_OPENS_HIGH));
        assertTrue(tooHigh.contains(RELIEF_OPENS_LOW));
        List<Cause> direct = causes(Abbey.plain()
                .supply(Abbey.checkValve(3)
                        .arrangement(Supply.Arrangement.DIRECT)
                        .build()));
        assertFalse(direct.contains(CHECK_VALVE_PASSES));
        assertTrue(direct.contains(SUPPLY_PRESSURE));
        List<Cause> reducing =
                causes(Abbey.plain().supply(Abbey.reducingValve(6, 3).build()));
        assertTrue(reducing.contains(REDUCING_VALVE_CREEPS));
        assertFalse(reducing.contains(CHECK_VALVE_PASSES));
    }

    @Test
    void aMixingValveMayFail() {
        assertFalse(causes(Abbey.plain()).contains(Cause.MIXING_VALVE_PASSES));
        HotWaterSystem house = Abbey.everything();
        Hypothesis failed = Hypothesis.of(house).stream()
                .filter(hypothesis -> hypothesis.cause() == Cause.MIXING_VALVE_PASSES)
                .findFirst()
                .orElseThrow();
        HotWaterSystem unmixed = failed.house(house, List.of(), new double[0]);
        assertTrue(unmixed.heater().mixedTo().isEmpty());
        assertEquals(house.heater().cutOut(), unmixed.heater().cutOut());
    }

    @Test
    void eachSoundReliefValveHasItsOwn() {
        List<String> names = Hypothesis.of(Abbey.everything()).stream()
                .filter(hypothesis -> hypothesis.cause() == RELIEF_STUCK_OPEN)
                .map(Hypothesis::device)
                .toList();
        assertEquals(List.of("at the feed", "by the tank"), names);
    }

    @Test
    void theRangesOfTheVessel() {
        range(0.1e5, 0.98 * 3e5, open(Abbey.plain(), PRECHARGE_LOW, 0));
        range(1.02 * 3e5, 10e5, open(Abbey.plain(), PRECHARGE_HIGH, 0));
        range(0.12e-3, 0.98 * 12e-3, open(Abbey.plain(), VESSEL_SMALL, 0));
        range(0.1e-3, 0.98 * 2e-3, open(with(Abbey.vessel().volume(2, VolumeUnit.LITRE)), VESSEL_SMALL, 0));
        assertFalse(
                causes(with(Abbey.vessel().precharge(Pressure.gauge(9.9, BAR)))).contains(PRECHARGE_HIGH));
    }

    @Test
    void theRangesOfTheRest() {
        // two standard deviations of valve and gauge: 1.5 % and 1 % of the set pressure, and a tenth of a bar
        double tolerance = 2 * Math.sqrt((0.015 * 0.015 + 0.01 * 0.01) * 7e5 * 7e5 + 0.1e5 * 0.1e5);
        range(0.3 * 7e5, 7e5 - tolerance, open(Abbey.plain(), RELIEF_OPENS_LOW, 0));
        range(0.4, 0.99, open(Abbey.plain(), RELIEF_OPENS_LOW, 1));
        range(7e5 + tolerance, 2.5 * 7e5, open(Abbey.plain(), RELIEF_OPENS_HIGH, 0));
        range(0.5 * PER_MINUTE, 5_000 * PER_MINUTE, open(Abbey.plain(), RELIEF_SEAT_WEEPS, 0));
        range(0.1e5, 0.97 * 7e5, open(Abbey.plain(), RELIEF_SEAT_WEEPS, 1));
        range(273.15 + 65, 273.15 + 95, open(Abbey.plain(), WATER_TOO_HOT, 0));
        range(
                273.15 + 95,
                273.15 + 98,
                open(
                        Abbey.plain()
                                .heater(Abbey.heater(3, 60)
                                        .setPoint(90, TemperatureUnit.CELSIUS)
                                        .build()),
                        WATER_TOO_HOT,
                        0));
        range(0.2 * PER_MINUTE, 3_000 * PER_MINUTE, open(Abbey.plain(), LEAK, 0));
        range(0.2 * PER_MINUTE, 2_000 * PER_MINUTE, open(Abbey.plain(), CHECK_VALVE_PASSES, 0));
        double room = Math.PI / 4 * 0.02 * 0.02 * 20;
        range(5e-6, 0.95 * room, open(Abbey.plain(), TRAPPED_AIR, 0));
    }

    @Test
    void waterGetsNoHotterThanTheCutOutLetsIt() {
        HotWaterSystem.Builder guarded = Abbey.plain()
                .heater(Abbey.heater(3, 60).cutOut(80, TemperatureUnit.CELSIUS).build());
        range(273.15 + 65, 273.15 + 79.5, open(guarded, WATER_TOO_HOT, 0));
        range(273.15 + 65, 273.15 + 82.5, open(Abbey.everything().toBuilder(), WATER_TOO_HOT, 0));
        assertFalse(causes(Abbey.plain()
                        .heater(Abbey.heater(3, 60)
                                .cutOut(65, TemperatureUnit.CELSIUS)
                                .build()))
                .contains(WATER_TOO_HOT));
    }

    @Test
    void theSupplyReachesFromTwoFifthsToTwoAndAHalfTimesAndStaysWithinTheTank() {
        range(1.2e5, 7.5e5, open(Abbey.plain(), SUPPLY_PRESSURE, 0));
        range(0.3e5, 1.25e5, open(Abbey.plain().supply(Abbey.checkValve(0.5).build()), SUPPLY_PRESSURE, 0));
        range(2.4e5, 12e5, open(Abbey.plain().supply(Abbey.checkValve(6).build()), SUPPLY_PRESSURE, 0));
        FreeParameter set = open(Abbey.plain().supply(Abbey.reducingValve(9, 6).build()), SUPPLY_PRESSURE, 0);
        assertEquals(11e5, set.high(), 1e-6, "no reducing valve is set higher");
        List<Double> starts = open(Abbey.plain(), SUPPLY_PRESSURE, 0).starts();
        assertEquals(3e5, starts.get(0), 1e-6);
        assertEquals(0.7 * 3e5 + 0.3 * 1.2e5, starts.get(1), 1e-6);
        assertEquals(0.7 * 3e5 + 0.3 * 7.5e5, starts.get(2), 1e-6);
    }

    static Stream<HotWaterSystem> houses() {
        return Stream.of(
                Abbey.plain().build(),
                Abbey.plain().supply(Abbey.reducingValve(6, 3).build()).build(),
                Abbey.everything());
    }

    /** No search may begin outside, and the house can be built at both ends. */
    @ParameterizedTest
    @MethodSource("houses")
    void everyRangeHoldsItsStartsAndGivesAHouse(HotWaterSystem house) {
        for (Hypothesis hypothesis : Hypothesis.of(house)) {
            for (FreeParameter one : hypothesis.open()) {
                assertTrue(one.low() < one.high(), one.toString());
                assertFalse(one.starts().isEmpty(), one.toString());
                one.starts().forEach(start -> assertTrue(start >= one.low() && start <= one.high(), one.toString()));
            }
            double[] lows =
                    hypothesis.open().stream().mapToDouble(FreeParameter::low).toArray();
            double[] highs =
                    hypothesis.open().stream().mapToDouble(FreeParameter::high).toArray();
            hypothesis.house(house, hypothesis.open(), lows);
            hypothesis.house(house, hypothesis.open(), highs);
        }
    }

    @Test
    void aVesselThatIsFullOrCutOffIsAChangeWithoutNumbers() {
        HotWaterSystem house = Abbey.plain().build();
        for (Hypothesis hypothesis : Hypothesis.of(house)) {
            ExpansionVessel.Condition condition = hypothesis
                    .house(house, List.of(), new double[0])
                    .vessel()
                    .orElseThrow()
                    .condition();
            ExpansionVessel.Condition expected = switch (hypothesis.cause()) {
                case VESSEL_ISOLATED -> ExpansionVessel.Condition.ISOLATED;
                case VESSEL_WATERLOGGED -> ExpansionVessel.Condition.WATERLOGGED;
                default -> ExpansionVessel.Condition.SOUND;
            };
            assertEquals(expected, condition, hypothesis.cause().name());
        }
    }
}
