package io.github.heatswell.simulation;

import static io.github.heatswell.units.FlowUnit.LITRE_PER_MINUTE;
import static io.github.heatswell.units.PressureUnit.BAR;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.result.Channel;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.result.Trace;
import io.github.heatswell.system.MainsPressure;
import io.github.heatswell.system.Parts;
import io.github.heatswell.system.ReducingValve;
import io.github.heatswell.system.ReliefFault;
import io.github.heatswell.system.ReliefValve;
import io.github.heatswell.system.ReliefValve.LiftCharacteristic;
import io.github.heatswell.system.Supply;
import io.github.heatswell.units.FlowUnit;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.RatioUnit;
import io.github.heatswell.units.TemperatureUnit;
import java.time.Duration;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** What relief valves and feeds pass at a pressure: closed forms, and slopes against difference quotients. */
class DeviceCurvesTest {

    private static final double AIR = 1e5;
    /** A column of water (Pa) between the drain cock and the valve. */
    private static final double OFFSET = 2e4;

    private static final double FULL_FLOW = 20e-3 / 60;

    /** The pressure (Pa, absolute) at the drain cock when a gauge at the valve shows so much (bar). */
    private static double atValve(double bar) {
        return bar * 1e5 + AIR + OFFSET;
    }

    private static Valve valve(ReliefValve described) {
        return new Valve(new StateVector.Slots(), described, AIR, OFFSET);
    }

    /** Opens at 7 bar, fully lifted at 7.7, reseats at 5.6: at 6.65 bar a modulating valve is lifted half. */
    @ParameterizedTest
    @CsvSource({
        "MODULATING, 5.6, 0",
        "MODULATING, 6.65, 0.5",
        "MODULATING, 7.7, 1",
        "MODULATING, 9, 1",
        "SNAP, 5.6, 1",
        "SNAP, 6.65, 1",
        "SNAP, 9, 1"
    })
    void openValveIsAnOrificeWithALift(LiftCharacteristic character, double bar, double lift) {
        Valve valve = valve(Systems.valve(character));
        double expected = lift * FULL_FLOW * Math.sqrt(bar / 7.7);
        assertEquals(expected, valve.flow(atValve(bar), Valve.Lift.PRESSURE), 1e-15); // rounding
        double full = FULL_FLOW * Math.sqrt(bar / 7.7);
        assertEquals(full, valve.flow(atValve(bar), Valve.Lift.TEMPERATURE), 1e-15); // rounding
        assertEquals(0, valve.flow(atValve(bar), Valve.Lift.CLOSED));
    }

    /** A solver's trial step beyond the reseat pressure meets the same line, not a kink. */
    @Test
    void modulatingLineGoesOnBelowReseat() {
        Valve valve = valve(Systems.valve(LiftCharacteristic.MODULATING));
        assertEquals(
                -0.1 * FULL_FLOW * Math.sqrt(5.39 / 7.7),
                valve.flow(atValve(5.39), Valve.Lift.PRESSURE),
                1e-15); // rounding
    }

    /**
     * Off its seat, a worn valve lets pass what the seat leaks and what the lift adds: it comes to rest on the seat without a jump, and
     * opening never lessens the discharge.
     */
    @ParameterizedTest
    @CsvSource({"MODULATING, 3", "MODULATING, 6", "SNAP, 3"})
    void aWornSeatLeaksBesideTheLift(LiftCharacteristic character, double leaksFrom) {
        ReliefValve worn = Systems.valve(character).toBuilder()
                .fault(ReliefFault.leakingSeat(Pressure.gauge(leaksFrom, BAR), 60, FlowUnit.MILLILITRE_PER_MINUTE))
                .build();
        Valve valve = valve(worn);
        Valve sound = valve(Systems.valve(character));
        for (double bar : new double[] {5.6, 5.7, 6.5, 6.9}) {
            double closed = valve.flow(atValve(bar), valve.onSeat(atValve(bar)));
            double open = valve.flow(atValve(bar), Valve.Lift.PRESSURE);
            assertEquals(closed + sound.flow(atValve(bar), Valve.Lift.PRESSURE), open, 1e-15); // rounding
            double slope = quotient(p -> valve.flow(p, Valve.Lift.PRESSURE), atValve(bar));
            assertEquals(slope, valve.flowSlope(atValve(bar), Valve.Lift.PRESSURE), 1e-6 * slope); // quotient
        }
        double atSet = valve.flow(atValve(6.9999999), Valve.Lift.SEEPING);
        assertEquals(60e-6 / 60, atSet, 1e-6 * atSet); // just below the set pressure
    }

    /** What is refused of a lift curve from outside is true of our own, too. */
    @ParameterizedTest
    @EnumSource(LiftCharacteristic.class)
    void everyCharacteristicIsALiftCurveAsOneFromOutsideMustBe(LiftCharacteristic character) {
        ReliefValve.LiftCurve same = new ReliefValve.LiftCurve() {
            @Override
            public double lift(double share) {
                return character.lift(share);
            }

            @Override
            public double slope(double share) {
                return character.slope(share);
            }
        };
        assertEquals(
                same,
                Systems.valve(character).toBuilder().liftCurve(same).build().liftCurve());
    }

    /** At the pressure of the air nothing flows, whatever lifts the valve and whatever is wrong with it. */
    @ParameterizedTest
    @EnumSource(Valve.Lift.class)
    void nothingFlowsWithoutADifference(Valve.Lift lift) {
        ReliefValve sound = Systems.valve(LiftCharacteristic.SNAP);
        Valve stuck = valve(sound.toBuilder()
                .fault(ReliefFault.stuckOpen(50, RatioUnit.PERCENT))
                .build());
        for (double bar : new double[] {0, -0.5}) {
            assertEquals(0, valve(sound).flow(atValve(bar), lift));
            assertEquals(0, valve(sound).flowSlope(atValve(bar), lift));
            assertEquals(0, stuck.flow(atValve(bar), lift));
        }
    }

    /** A seat that leaks lets nothing by up to a pressure, and the stated flow just below the opening pressure. */
    @ParameterizedTest
    @CsvSource({"3, 0", "4, 0", "5.5, 0.5", "7, 1"})
    void leakingSeatFollowsALine(double bar, double share) {
        Valve valve = valve(Systems.valve(LiftCharacteristic.SNAP).toBuilder()
                .fault(ReliefFault.leakingSeat(Pressure.gauge(4, BAR), 0.3, LITRE_PER_MINUTE))
                .build());
        double pressure = atValve(bar);
        assertEquals(share * 0.3e-3 / 60, valve.flow(pressure, valve.onSeat(pressure)), 1e-17); // rounding
    }

    /**
     * Rising through the pressure from which a seat leaks, whatever the length of the solver's steps, a run counts no water back
     * (regression: a step across that kink once did).
     */
    @Test
    void aSeatThatBeginsToLeakTakesNoWaterBack() {
        RunResult result = Simulation.of(
                        Parts.lodge(4.2, 58)
                                .supply(Supply.builder()
                                        .mains(MainsPressure.daily(
                                                Map.of(0.0, Pressure.gauge(2, BAR), 43_200.0, Pressure.gauge(5, BAR))))
                                        .water(10, TemperatureUnit.CELSIUS)
                                        .arrangement(Supply.Arrangement.DIRECT)
                                        .build())
                                .addReliefValve(Systems.valve(LiftCharacteristic.SNAP).toBuilder()
                                        .fault(ReliefFault.leakingSeat(Pressure.gauge(4, BAR), 0.3, LITRE_PER_MINUTE))
                                        .build())
                                .build(),
                        Duration.ofDays(1))
                .sampledEvery(Duration.ofMinutes(1))
                .run();
        Trace trace = result.trace();
        for (int i = 1; i < trace.count(); i++) {
            double change = trace.value(Channel.RELIEVED_TOTAL, i) - trace.value(Channel.RELIEVED_TOTAL, i - 1);
            assertTrue(change >= -1e-12, "sample " + i + " falls by " + -change); // rounding
        }
        assertTrue(trace.value(Channel.RELIEVED_TOTAL, trace.count() - 1) > 0.01, "the seat leaks");
    }

    /** Stuck at a fifth of its lift it passes a fifth of an open valve's flow, even where it would be closed. */
    @ParameterizedTest
    @EnumSource(Valve.Lift.class)
    void stuckValveKeepsItsLift(Valve.Lift lift) {
        Valve valve = valve(Systems.valve(LiftCharacteristic.MODULATING).toBuilder()
                .fault(ReliefFault.stuckOpen(20, RatioUnit.PERCENT))
                .build());
        assertEquals(0.2 * FULL_FLOW * Math.sqrt(3 / 7.7), valve.flow(atValve(3), lift), 1e-15); // rounding
    }

    @ParameterizedTest
    @CsvSource({
        "MODULATING, PRESSURE, 5.8",
        "MODULATING, PRESSURE, 6.65",
        "MODULATING, PRESSURE, 7.6",
        "MODULATING, PRESSURE, 8.5",
        "MODULATING, TEMPERATURE, 6.65",
        "MODULATING, CLOSED, 6.65",
        "SNAP, PRESSURE, 6.65",
        "SNAP, TEMPERATURE, 3"
    })
    void slopeOfAValveIsThatOfItsCurve(LiftCharacteristic character, Valve.Lift lift, double bar) {
        Valve valve = valve(Systems.valve(character));
        double expected = quotient(p -> valve.flow(p, lift), atValve(bar));
        assertEquals(expected, valve.flowSlope(atValve(bar), lift), 1e-6 * Math.abs(expected)); // quotient
    }

    @Test
    void slopeOfAStuckValveIsThatOfAnOrifice() {
        Valve valve = valve(Systems.valve(LiftCharacteristic.MODULATING).toBuilder()
                .fault(ReliefFault.stuckOpen(20, RatioUnit.PERCENT))
                .build());
        double expected = quotient(p -> valve.flow(p, Valve.Lift.PRESSURE), atValve(6));
        assertEquals(expected, valve.flowSlope(atValve(6), Valve.Lift.PRESSURE), 1e-6 * expected); // quotient
    }

    private static SupplyBoundary feed(Supply.Arrangement arrangement) {
        return new SupplyBoundary(
                new StateVector.Slots(),
                Parts.supply(arrangement, Pressure.gauge(4, BAR), 10),
                AIR,
                SupplyBoundary.SERVICE_LINE);
    }

    /** Locks up at 3.2 bar, gives 2.5 bar at 20 L/min, and lets water back above 0.3 bar more than the mains. */
    private static SupplyBoundary reducing(boolean bypass) {
        ReducingValve.Builder valve = ReducingValve.builder()
                .set(Pressure.gauge(3, BAR))
                .lockUpRise(0.2, BAR)
                .droop(0.5, BAR)
                .ratedFlow(20, LITRE_PER_MINUTE);
        if (bypass) {
            valve.bypassOpens(0.3, BAR);
        }
        return new SupplyBoundary(
                new StateVector.Slots(),
                Parts.supply(Supply.Arrangement.CHECK_VALVE, Pressure.gauge(4, BAR), 10).toBuilder()
                        .arrangement(Supply.Arrangement.REDUCING_VALVE)
                        .reducingValve(valve.build())
                        .build(),
                AIR,
                SupplyBoundary.SERVICE_LINE);
    }

    /** The outlet of a reducing valve is at its lock-up pressure, but gives no more than the mains has. */
    @ParameterizedTest
    @CsvSource({"6, 3.2, false", "3.2, 3.2, true", "2, 2, true"})
    void reducingValveStandsAtTheLower(double mainsBar, double standingBar, boolean follows) {
        SupplyBoundary feed = reducing(false);
        assertEquals(AIR + standingBar * 1e5, feed.standing(AIR + mainsBar * 1e5), 1e-9); // rounding
        // a hair beside the limit, for rounding of the lock-up pressure
        assertEquals(follows, feed.followsMains(AIR + mainsBar * 1e5 - 1e-6));
    }

    /** At the rated flow the outlet is the droop below the set pressure: 0.7 bar below lock-up at 20 L/min. */
    @Test
    void reducingValveFillsAlongItsDroop() {
        assertEquals(20e-3 / 60, reducing(false).filling(AIR + 2.5e5, AIR + 5e5), 1e-12); // rounding
        assertEquals(10e-3 / 60, reducing(false).filling(AIR + 2.85e5, AIR + 5e5), 1e-12); // rounding
    }

    /** Only an open feed and a bypass let water back, the bypass from its own difference on. */
    @Test
    void onlySomeFeedsTakeWaterBack() {
        double mains = AIR + 4e5;
        SupplyBoundary direct = feed(Supply.Arrangement.DIRECT);
        assertEquals(-direct.filling(mains - 1e4, mains), direct.filling(mains + 1e4, mains), 1e-15); // rounding
        assertTrue(direct.filling(mains - 1e4, mains) > 0);
        assertEquals(0, feed(Supply.Arrangement.CHECK_VALVE).filling(mains + 1e5, mains));
        assertEquals(0, reducing(false).filling(mains + 1e5, mains));
        assertEquals(0, reducing(true).filling(mains + 0.29e5, mains));
        assertEquals(-10e-3 / 60, reducing(true).filling(mains + 0.65e5, mains), 1e-12); // rounding
        assertTrue(reducing(true).bypass);
        assertFalse(reducing(false).bypass);
    }

    @ParameterizedTest
    @CsvSource({"1, true", "2.9, true", "3.5, false", "4.2, false", "4.4, true", "6, true"})
    void slopeOfAFeedIsThatOfItsFlow(double bar, boolean flows) {
        SupplyBoundary feed = reducing(true);
        double mains = AIR + 4e5;
        double expected = -quotient(p -> feed.filling(p, mains), AIR + bar * 1e5);
        assertEquals(expected, feed.fillingSlope(AIR + bar * 1e5, mains), 1e-6 * Math.abs(expected)); // quotient
        assertEquals(flows, expected > 0);
        SupplyBoundary direct = feed(Supply.Arrangement.DIRECT);
        double slope = -quotient(p -> direct.filling(p, mains), AIR + bar * 1e5);
        assertEquals(slope, direct.fillingSlope(AIR + bar * 1e5, mains), 1e-6 * slope); // quotient
    }

    /** The stated flow at one bar, with the square root at other differences, and either way. */
    @Test
    void leakingFeedSeatPassesEitherWay() {
        SupplyBoundary feed = new SupplyBoundary(
                new StateVector.Slots(),
                Parts.supply(Supply.Arrangement.CHECK_VALVE, Pressure.gauge(4, BAR), 10).toBuilder()
                        .seatLeakage(0.2, LITRE_PER_MINUTE)
                        .build(),
                AIR,
                SupplyBoundary.SERVICE_LINE);
        double stated = 0.2e-3 / 60;
        double rounded = 1e-3 * stated; // the curve is rounded off below 100 Pa
        assertEquals(stated, feed.throughSeat(4e5, 5e5), rounded);
        assertEquals(-stated, feed.throughSeat(5e5, 4e5), rounded);
        assertEquals(2 * stated, feed.throughSeat(2e5, 6e5), rounded);
        assertEquals(0, feed.throughSeat(5e5, 5e5));
    }

    private static double quotient(DoubleUnaryOperator curve, double at) {
        return (curve.applyAsDouble(at + 10) - curve.applyAsDouble(at - 10)) / 20;
    }
}
