package io.github.heatswell.simulation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.result.Channel;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.result.Trace;
import io.github.heatswell.system.ReliefValve;
import io.github.heatswell.system.ReliefValve.LiftCharacteristic;
import io.github.heatswell.system.ReliefValve.LiftCurve;
import java.time.Duration;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/** A lift curve from outside: the example of {@link LiftCurve}, run. */
class OwnLiftCurveTest {

    /** As in the documentation. */
    private static final class QuickOpening implements LiftCurve {
        @Override
        public double lift(double share) {
            return share < 1 ? share * (2 - share) : 1;
        }

        @Override
        public double slope(double share) {
            return share < 1 ? 2 - 2 * share : 0;
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

    private static ReliefValve with(LiftCurve curve) {
        return Systems.valve(LiftCharacteristic.MODULATING).toBuilder()
                .liftCurve(curve)
                .build();
    }

    private static RunResult run(ReliefValve valve) {
        return Simulation.of(Systems.lodge().addReliefValve(valve).build(), Duration.ofHours(3))
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

    @Test
    void aCurveThatContradictsItselfIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> with(curve(share -> share, share -> 2)));
        assertThrows(IllegalArgumentException.class, () -> with(curve(share -> 0.5 * share, share -> 0.5)));
        assertThrows(IllegalArgumentException.class, () -> with(curve(share -> 2 * share - 1, share -> 2)));
        assertThrows(IllegalArgumentException.class, () -> with(curve(share -> Double.NaN, share -> 0)));
        assertThrows(NullPointerException.class, () -> with(null));
    }
}
