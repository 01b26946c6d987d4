package io.github.heatswell.simulation;

import java.util.Arrays;

/**
 * Minimum off-time of burners and elements. A thermostat takes some tens of seconds to sense cooling water, and a
 * burner control as long to relight. It matters only when a draw cools a very small tank through the thermostat's
 * differential within that time.
 */
final class Pauses {

    /** The shortest time (s) between off and on again. Own choice; common practice, no source. */
    static final double MIN_PAUSE = 30;

    private final double[] offSince;
    private final double[] until;

    Pauses(int sources) {
        offSince = new double[sources];
        until = new double[sources];
        Arrays.fill(offSince, Double.NEGATIVE_INFINITY);
        Arrays.fill(until, Double.NEGATIVE_INFINITY);
    }

    /** Whether a burner or element that was called is held off at a time (s since the start of the run). */
    boolean isPausing(int source, double time) {
        return time < until[source];
    }

    /** When (s) the next pause ends in which one was called; infinite if there is none. */
    double nextEnd(double time) {
        return Arrays.stream(until).filter(end -> end > time).min().orElse(Double.POSITIVE_INFINITY);
    }

    /**
     * Records switch-offs, and holds off what switches on too soon.
     *
     * @param before the modes so far
     * @param wanted the modes requested by an event
     * @param time now (s since the start of the run)
     * @return the requested modes without premature calls
     */
    Modes keptBy(Modes before, Modes wanted, double time) {
        Modes kept = wanted;
        for (int i = 0; i < until.length; i++) {
            if (before.calls(i) && !wanted.calls(i)) {
                offSince[i] = time;
            } else if (!before.calls(i) && wanted.calls(i) && time < offSince[i] + MIN_PAUSE) {
                until[i] = offSince[i] + MIN_PAUSE;
                kept = kept.withCall(i, false);
            }
        }
        return kept;
    }
}
