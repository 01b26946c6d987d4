package io.github.heatswell.simulation;

import io.github.heatswell.result.EventKind;
import java.util.Optional;

/**
 * Something that ends a segment of the integration: a distance that is positive while all is as it was, and what becomes
 * of the modes when it has fallen to zero.
 *
 * @param kind what is reported, or empty for a change that is only the solver's business
 * @param device the relief valve concerned, or empty text
 * @param after the modes that hold from then on
 * @param distance how far off it still is
 * @param ofFlows whether the distance asks the balance for what flows, and not the state alone
 */
record Watch(Optional<EventKind> kind, String device, Modes after, Distance distance, boolean ofFlows) {

    /** A quantity that falls to zero when a watch is due. */
    interface Distance {
        /**
         * The distance, in whatever unit the threshold has.
         *
         * @param y the state; for a distance of flows the balance was last evaluated for it
         */
        double from(double[] y);
    }

    static Watch of(EventKind kind, Modes after, Distance distance) {
        return new Watch(Optional.of(kind), "", after, distance, false);
    }

    static Watch of(EventKind kind, String device, Modes after, Distance distance) {
        return new Watch(Optional.of(kind), device, after, distance, false);
    }

    static Watch silent(Modes after, Distance distance) {
        return new Watch(Optional.empty(), "", after, distance, false);
    }

    static Watch ofFlows(Modes after, Distance distance) {
        return new Watch(Optional.empty(), "", after, distance, true);
    }
}
