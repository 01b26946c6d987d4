package io.github.heatswell.simulation;

import io.github.heatswell.result.EventKind;
import io.github.heatswell.result.OpeningCause;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * Something that ends a segment of the integration: a distance that is positive while all is as it was, and what becomes
 * of the modes when it has fallen to zero.
 *
 * @param kind what is reported, or null for a change that is only the solver's business
 * @param device the relief valve concerned, or empty text
 * @param cause what opens the relief valve, or empty for everything but an opening
 * @param after what becomes of the modes, worked out only for the watch that falls due
 * @param distance how far off it still is
 * @param ofFlows whether the distance asks the balance for what flows, and not the state alone
 */
record EventDetector(
        EventKind kind,
        String device,
        Optional<OpeningCause> cause,
        UnaryOperator<Modes> after,
        Distance distance,
        boolean ofFlows) {

    /** The modes stay as they are. */
    static final UnaryOperator<Modes> SAME = UnaryOperator.identity();
    /** Pressure and open valves have settled against each other. */
    static final UnaryOperator<Modes> SETTLE = modes -> modes.withRule(Modes.PressureRule.SETTLED);
    /** The outlet of a reducing valve has come to where it follows the flow. */
    static final UnaryOperator<Modes> FOLLOW = modes -> modes.withRule(Modes.PressureRule.FREE);

    /** A quantity that falls to zero when a watch is due. */
    interface Distance {
        /**
         * The distance, in whatever unit the threshold has.
         *
         * @param y the state; for a distance of flows the balance was last evaluated for it
         */
        double from(double[] y);
    }

    static EventDetector of(EventKind kind, UnaryOperator<Modes> after, Distance distance) {
        return of(kind, "", after, distance);
    }

    static EventDetector of(EventKind kind, String device, UnaryOperator<Modes> after, Distance distance) {
        return new EventDetector(kind, device, Optional.empty(), after, distance, false);
    }

    /** A relief valve opens, or opens fully. */
    static EventDetector opening(
            EventKind kind, String device, OpeningCause cause, UnaryOperator<Modes> after, Distance distance) {
        return new EventDetector(kind, device, Optional.of(cause), after, distance, false);
    }

    static EventDetector silent(UnaryOperator<Modes> after, Distance distance) {
        return new EventDetector(null, "", Optional.empty(), after, distance, false);
    }

    /** Whether it ends a segment because pressure has come to where it need not be integrated. */
    boolean settles() {
        return after == SETTLE || after == FOLLOW;
    }

    static EventDetector ofFlows(UnaryOperator<Modes> after, Distance distance) {
        return new EventDetector(null, "", Optional.empty(), after, distance, true);
    }
}
