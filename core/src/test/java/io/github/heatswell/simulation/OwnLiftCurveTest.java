package io.github.heatswell.simulation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.result.Channel;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.result.Trace;
import io.github.heatswell.system.InvalidDescriptionException;
import io.github.heatswell.system.Parts;
import io.github.heatswell.system.ReliefValve;
import io.github.heatswell.system.ReliefValve.LiftCharacteristic;
import io.github.heatswell.system.ReliefValve.LiftCurve;
import io.github.heatswell.units.FlowUnit;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.PressureUnit;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A lift curve from outside: the example of {@link LiftCurve}, run. */
class OwnLiftCurveTest {

    /** As in the documentation. */
    private static final class QuickOpening implements LiftCurve {
        @Override
        public double lift(double share) {
            return share * (2 - share);
        }

        @Override
        public double slope(double share) {
            return 2 - 2 * share;
        }
    }

    private static LiftCurve curve(DoubleUnaryOperator lift, DoubleUnaryOperator slope) {
        return new LiftCurve() {
            @Override
            public double lift(double share) {
                return lift.applyAsDouble(share);
            }

            @Override
            public double slope(double share) {
                return slope.applyAsDouble(share);
            }
        };
    }

    /** A curve that may be asked this often in a run, hundreds of times what a run needs; so a run that spins fails. */
    private static final int MAX_ASKED = 2_000_000;

    private static LiftCurve counted(DoubleUnaryOperator lift, DoubleUnaryOperator slope) {
        int[] asked = {0};
        return curve(
                share -> {
                    assertTrue(++asked[0] < MAX_ASKED, "the run spins");
                    assertTrue(share >= 0 && share <= 1, () -> "asked at " + share);
                    return lift.applyAsDouble(share);
                },
                share -> {
                    assertTrue(share >= 0 && share <= 1, () -> "asked at " + share);
                    return slope.applyAsDouble(share);
                });
    }

    private static ReliefValve with(LiftCurve curve) {
        return Systems.valve(LiftCharacteristic.MODULATING).toBuilder()
                .liftCurve(curve)
                .build();
    }

    private static RunResult run(ReliefValve valve) {
        return Simulation.of(Parts.lodge(4.2, 58).addReliefValve(valve).build(), Duration.ofHours(3))
                .run();
    }

    private static RunResult runHeatedFast(ReliefValve valve) {
        return Simulation.of(
                        Parts.lodge(4.2, 58)
                                .heater(Parts.heater(48, 78, 58, 6))
                                .addReliefValve(valve)
                                .build(),
                        Duration.ofHours(1))
                .run();
    }

    /** A straight line of one's own is the modulating characteristic. */
    @Test
    void aStraightLineModulates() {
        RunResult own = run(with(curve(share -> Math.min(1, share), share -> share < 1 ? 1 : 0)));
        RunResult given = run(Systems.valve(LiftCharacteristic.MODULATING));
        assertEquals(given.events(), own.events());
        assertEquals(given.totals(), own.totals());
    }

    /**
     * Closed form: a valve in equilibrium passes what the water gains, so the lift of a quick-opening one, at the pressure at
     * which it settles, is that of a straight one at its own; it settles lower.
     */
    @Test
    void aQuickOpeningValveSettlesLower() {
        ReliefValve valve = with(new QuickOpening());
        RunResult quick = run(valve);
        assertTrue(quick.audit().closes(), quick.audit().toString());
        Trace trace = quick.trace();
        double air = quick.system().site().atmosphere();
        double reseat = valve.reseatPressure().absolute(air);
        double full = valve.fullLiftPressure().absolute(air);
        int open = 0;
        for (int i = 0; i < trace.count(); i++) {
            if (trace.regime(i) == Trace.Regime.RELIEVING) {
                double p = trace.value(Channel.PRESSURE_ABSOLUTE, i);
                double share = (p - reseat) / (full - reseat);
                double expected = valve.fullFlow() * share * (2 - share) * Math.sqrt((p - air) / (full - air));
                // near equilibrium the flow is taken from the balance, along the slope of the curve
                assertEquals(expected, trace.value(Channel.RELIEF_FLOW, i), 0.02 * expected);
                open++;
            }
        }
        assertTrue(open > 10);
        RunResult straight = run(Systems.valve(LiftCharacteristic.MODULATING));
        int last = (int) (quick.events().get(quick.events().size() - 1).time() / 60) - 2;
        assertTrue(
                trace.value(Channel.PRESSURE_ABSOLUTE, last) < straight.trace().value(Channel.PRESSURE_ABSOLUTE, last));
    }

    /** Contract: above full lift a valve opens no further, whatever its formula would say there: the peak is not hidden. */
    @Test
    void aValveOpensNoFurtherThanFully() {
        ReliefValve narrow = with(counted(share -> share * share, share -> 2 * share)).toBuilder()
                .fullFlow(0.2, FlowUnit.LITRE_PER_MINUTE)
                .build();
        RunResult own = runHeatedFast(narrow);
        RunResult levelled = runHeatedFast(narrow.toBuilder()
                .liftCurve(curve(share -> share < 1 ? share * share : 1, share -> share < 1 ? 2 * share : 0))
                .build());
        double air = own.system().site().atmosphere();
        double peak = own.summary().peak().gauge(air);
        assertTrue(peak > narrow.fullLiftPressure().gauge(air) + 1e5, "" + peak);
        assertEquals(levelled.extremes(), own.extremes());
        assertEquals(levelled.totals(), own.totals());
    }

    /** Contract: a curve is asked where it is defined only; a power of the share has no value below reseat. */
    @Test
    void aCurveIsAskedFromReseatToFullLiftOnly() {
        RunResult own = run(with(counted(share -> Math.pow(share, 1.5), share -> 1.5 * Math.sqrt(share))));
        assertTrue(own.audit().closes(), own.audit().toString());
        assertTrue(own.totals().relief().get(0).volume() > 1e-3);
    }

    /** Contract: a trial state of the solver that is no number has no flow, and does not pass for a fault of the curve. */
    @Test
    void aStateThatIsNoNumberIsNoFaultOfTheCurve() {
        Valve valve = new Valve(new StateVector.Slots(), with(counted(share -> share, share -> 1)), 1e5, 0);
        assertTrue(Double.isNaN(valve.flow(Double.NaN, Valve.Lift.PRESSURE)));
        assertTrue(Double.isNaN(valve.flowSlope(Double.NaN, Valve.Lift.PRESSURE)));
    }

    /** Contract: a curve with a hole between the points at which it was checked ends the run with its name. */
    @Test
    void aHoleInACurveEndsTheRun() {
        ReliefValve valve = with(counted(
                share -> share > 0.03 && share < 0.07 && Math.abs(share * 2000 - Math.rint(share * 2000)) > 1e-6
                        ? Double.NaN
                        : share,
                share -> 1));
        String message =
                assertThrows(SimulationException.class, () -> run(valve)).getMessage();
        assertTrue(message.startsWith("the lift curve of 'expansion valve' at 0.0"), message);
    }

    /** Contract: of a curve and a characteristic the one set last holds, and the valve tells of no other. */
    @Test
    void theLiftSetLastHolds() {
        LiftCurve square = curve(share -> share * share, share -> 2 * share);
        ReliefValve own = with(square);
        assertEquals(Optional.empty(), own.liftCharacteristic());
        assertEquals(0.25, own.liftCurve().lift(0.5));
        for (LiftCharacteristic known : LiftCharacteristic.values()) {
            for (ReliefValve back : List.of(
                    own.toBuilder().liftCharacteristic(known).build(),
                    own.toBuilder().liftCurve(known).build())) {
                assertEquals(Optional.of(known), back.liftCharacteristic());
                assertEquals(known, back.liftCurve());
            }
        }
        assertEquals(square, own.toBuilder().name("again").build().liftCurve(), "a copy keeps the curve");
    }

    /** Contract: a curve alone tells how a valve lifts; without one, and without a characteristic, nothing does. */
    @Test
    void aCurveAloneSuffices() {
        ReliefValve.Builder builder = ReliefValve.builder()
                .name("measured")
                .setPressure(Pressure.gauge(6, PressureUnit.BAR))
                .fullLiftPressure(Pressure.gauge(6.6, PressureUnit.BAR))
                .reseatPressure(Pressure.gauge(5, PressureUnit.BAR))
                .fullFlow(20, FlowUnit.LITRE_PER_MINUTE);
        assertThrows(InvalidDescriptionException.class, builder::build);
        assertEquals(
                0.75, builder.liftCurve(new QuickOpening()).build().liftCurve().lift(0.5));
    }

    @Test
    void aCurveWithoutFiniteEndsIsRefused() {
        String steep = assertThrows(
                        IllegalArgumentException.class, () -> with(curve(Math::sqrt, share -> 0.5 / Math.sqrt(share))))
                .getMessage();
        assertEquals("liftCurve: lift and slope must be finite at reseat (0), and are 0.0 and Infinity", steep);
        assertThrows(
                IllegalArgumentException.class,
                () -> with(curve(
                        share -> 1 - Math.sqrt(1 - share * share), share -> share / Math.sqrt(1 - share * share))));
    }

    /** Contract: a jump is refused wherever it is, between the points that are looked at too, and the message says where. */
    @ParameterizedTest
    @ValueSource(doubles = {0.0003, 0.031, 0.4999, 0.5001, 0.70003, 0.98765, 0.9999})
    void aCurveThatJumpsIsRefused(double where) {
        for (LiftCurve jumping : List.of(
                curve(share -> share < where ? 0 : 1, share -> 0),
                curve(share -> share < where ? 0.1 * share : 0.1 * share + 0.9, share -> 0.1),
                curve(share -> share < where ? share : Math.min(1, share + 1e-3), share -> share < 1 - 1e-3 ? 1 : 0))) {
            String message = assertThrows(IllegalArgumentException.class, () -> with(jumping))
                    .getMessage();
            assertTrue(message.startsWith("liftCurve: between "), message);
            double from = Double.parseDouble(message.split(" ")[2]);
            assertTrue(from <= where && where <= from + 0.01, message);
        }
    }

    /** Contract: kinks and curves that rise late, early or in the middle are no jumps. */
    @Test
    void aCurveWithKinksIsTaken() {
        for (LiftCurve fair : List.of(
                curve(
                        share -> share < 0.30007 ? 0 : (share - 0.30007) / 0.69993,
                        share -> share < 0.30007 ? 0 : 1 / 0.69993),
                curve(share -> Math.pow(share, 12), share -> 12 * Math.pow(share, 11)),
                curve(share -> 1 - Math.pow(1 - share, 12), share -> 12 * Math.pow(1 - share, 11)),
                curve(share -> Math.pow(share, 1.02), share -> 1.02 * Math.pow(share, 0.02)),
                curve(
                        share -> 0.5 + 0.5 * Math.tanh(20 * (share - 0.5)) / Math.tanh(10),
                        share -> 10 / Math.pow(Math.cosh(20 * (share - 0.5)), 2) / Math.tanh(10)),
                curve(
                        share -> share + 0.03 * Math.sin(6 * Math.PI * share) / Math.PI,
                        share -> 1 + 0.18 * Math.cos(6 * Math.PI * share)))) {
            assertEquals(fair, with(fair).liftCurve());
        }
    }

    @Test
    void aCurveThatContradictsItselfIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> with(curve(share -> share, share -> 2)));
        assertThrows(IllegalArgumentException.class, () -> with(curve(share -> 0.5 * share, share -> 0.5)));
        assertThrows(IllegalArgumentException.class, () -> with(curve(share -> 2 * share - 1, share -> 2)));
        assertThrows(IllegalArgumentException.class, () -> with(curve(share -> Double.NaN, share -> 0)));
        assertThrows(NullPointerException.class, () -> with(null));
    }

    /** Contract: what a curve throws is reported as its refusal, with the exception as the cause. */
    @Test
    void aCurveThatThrowsIsRefused() {
        IllegalStateException mine = new IllegalStateException("mine");
        IllegalArgumentException refused = assertThrows(
                IllegalArgumentException.class,
                () -> with(curve(
                        share -> {
                            throw mine;
                        },
                        share -> 1)));
        assertEquals(
                "liftCurve: fails between reseat (0) and full lift (1): java.lang.IllegalStateException: mine",
                refused.getMessage());
        assertEquals(mine, refused.getCause());
    }
}
