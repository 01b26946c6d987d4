package io.github.heatswell.simulation;

import io.github.heatswell.result.Event;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * Ends a segment of the integration: a distance that is positive until the event, and the new modes when it reaches
 * zero.
 *
 * @param kind the event reported, or null for a change internal to the solver
 * @param device the relief valve concerned, or empty text
 * @param cause the cause of a relief valve's opening, empty for all other events
 * @param after the new modes, computed only for the event that occurs
 * @param distance the remaining distance
 * @param ofFlows whether the distance needs the flows of the balance, not just the state
 */
record EventDetector(
        Event.Kind kind,
        String device,
        Optional<Event.OpeningCause> cause,
        UnaryOperator<Modes> after,
        Distance distance,
        boolean ofFlows) {

    /** The modes stay as they are. */
    static final UnaryOperator<Modes> SAME = UnaryOperator.identity();
    /** Pressure and open valves have reached equilibrium. */
    static final UnaryOperator<Modes> SETTLE = modes -> modes.withRule(PressureRegime.SETTLED);
    /** The outlet of a reducing valve now follows the flow. */
    static final UnaryOperator<Modes> FOLLOW = modes -> modes.withRule(PressureRegime.FREE);

    /** The pressure follows from the balance. */
    static final UnaryOperator<Modes> FREED = modes -> modes.withRule(PressureRegime.FREE);

    /** A quantity that falls to zero at the event. */
    interface Distance {
        /**
         * The distance, in whatever unit the threshold has.
         *
         * @param y the state; for a distance of flows the balance was last evaluated for it
         */
        double from(double[] y);
    }

    static EventDetector of(Event.Kind kind, UnaryOperator<Modes> after, Distance distance) {
        return of(kind, "", after, distance);
    }

    static EventDetector of(Event.Kind kind, String device, UnaryOperator<Modes> after, Distance distance) {
        return new EventDetector(kind, device, Optional.empty(), after, distance, false);
    }

    /** A relief valve opens, or opens fully. */
    static EventDetector opening(
            Event.Kind kind, String device, Event.OpeningCause cause, UnaryOperator<Modes> after, Distance distance) {
        return new EventDetector(kind, device, Optional.of(cause), after, distance, false);
    }

    static EventDetector silent(UnaryOperator<Modes> after, Distance distance) {
        return new EventDetector(null, "", Optional.empty(), after, distance, false);
    }

    /** Whether it ends a segment because the pressure no longer needs integrating. */
    boolean settles() {
        return after == SETTLE || after == FOLLOW;
    }

    static EventDetector ofFlows(UnaryOperator<Modes> after, Distance distance) {
        return ofFlows(null, after, distance);
    }

    static EventDetector ofFlows(Event.Kind kind, UnaryOperator<Modes> after, Distance distance) {
        return new EventDetector(kind, "", Optional.empty(), after, distance, true);
    }
}
