package io.github.heatswell.simulation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Which watch falls due in a step, and when: in one step of two seconds in which {@code p = t - t^2 / 2} rises and falls again. */
class EventLocatorTest {

    private static final double END = 2;

    private final EventLocator firstDue = new EventLocator(null, 2);
    private DenseOutput step;
    private int steps;

    @BeforeEach
    void oneStep() {
        double[] tolerance = {1e-3, 1e-3};
        DormandPrince stepper = new DormandPrince(1e-9, tolerance, tolerance, new boolean[2], 2);
        DormandPrince.Equations arch = (time, y, rates) -> {
            rates[0] = 1 - time;
            rates[1] = 1;
        };
        step = stepper.integrate(arch, new double[2], END, END, END, finished -> {
            steps++;
            return true;
        });
        assertEquals(1, steps);
        assertEquals(0, step.last()[0], 1e-12, "back where it began");
    }

    private static EventDetector above(double pressure) {
        return EventDetector.silent(UnaryOperator.identity(), y -> pressure - y[StateVector.PRESSURE]);
    }

    /** A watch of what rises evenly. */
    private static EventDetector after(double seconds) {
        return EventDetector.silent(UnaryOperator.identity(), y -> seconds - y[1]);
    }

    private boolean isIn(EventDetector... watches) {
        firstDue.begin(null, List.of(watches));
        firstDue.lookAt(step);
        return firstDue.due() != null;
    }

    @Test
    void nothingIsDueWhereNothingIsReached() {
        assertFalse(isIn(above(0.51), after(2.1)));
        assertNull(firstDue.due());
        assertEquals(END, step.to());
    }

    /** Crossed on the way up, and again on the way down: at the end of the step nobody would know. */
    @Test
    void whatIsCrossedTwiceInAStepIsNotMissed() {
        EventDetector watch = above(0.4);
        assertTrue(isIn(above(0.6), watch, after(2.5)));
        assertSame(watch, firstDue.due());
        double time = 1 - Math.sqrt(0.2);
        assertEquals(time, step.to(), 1e-8);
        assertEquals(0.4, step.last()[0], 1e-8);
        assertEquals(time, step.last()[1], 1e-8);
    }

    /** Also where the turn is what reaches it. */
    @Test
    void theTurnItselfIsEnough() {
        assertTrue(isIn(above(0.5 - 1e-6)));
        assertEquals(1 - Math.sqrt(2e-6), step.to(), 1e-6);
    }

    @Test
    void ofSeveralTheFirstIsDue() {
        EventDetector early = after(0.3);
        assertTrue(isIn(above(0.4), early, after(0.5)));
        assertSame(early, firstDue.due());
        assertEquals(0.3, step.to(), 1e-8);
    }

    @Test
    void whatIsReachedAfterTheTurnIsDueThen() {
        EventDetector late = after(1.7);
        assertTrue(isIn(above(0.51), late));
        assertSame(late, firstDue.due());
        assertEquals(1.7, step.to(), 1e-8);
        firstDue.begin(null, List.of());
        assertNull(firstDue.due(), "forgotten with the next segment");
    }

    @Test
    void whatIsDueAtOnceIsDueAtTheBeginning() {
        assertTrue(isIn(after(-1)));
        assertEquals(0, step.to());
        assertEquals(0, step.last()[1], 1e-12);
    }

    @Test
    void whatIsReachedExactlyAtTheEndIsDueThere() {
        EventDetector end = EventDetector.silent(UnaryOperator.identity(), y -> y[1] == step.last()[1] ? 0 : 1);
        assertTrue(isIn(end));
        assertEquals(END, step.to(), 1e-12);
    }

    /** The highest pressure inside of a step is found where its rate is zero. */
    @Test
    void aStepKnowsWhereItTurns() {
        DenseOutput.Rate pressure = time -> step.rate(StateVector.PRESSURE, time);
        assertTrue(step.turns(pressure));
        assertEquals(1, step.turningPoint(pressure), 1e-3);
        assertFalse(step.turns(time -> step.rate(1, time)));
        assertEquals(1, step.rate(StateVector.PRESSURE, 0), 1e-12);
        assertEquals(0.5, step.rate(StateVector.PRESSURE, 0.5), 1e-9);
        assertEquals(-1, step.rate(StateVector.PRESSURE, END), 1e-12);
    }
}
