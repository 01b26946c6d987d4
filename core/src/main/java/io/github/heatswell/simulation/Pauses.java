package io.github.heatswell.simulation;

import java.util.Arrays;

/**
 * The shortest pause of burners and elements. A thermostat takes some tens of seconds to feel that the water
 * cools, and burner controls as long to light again, so one that has just switched off stays off that long. It matters only where so much is drawn from a tank so small that the water at the
 * thermostat cools through its differential within that moment.
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

    /** Whether a burner or element that was called is kept off at a time (s since the start of the run). */
    boolean isPausing(int source, double time) {
        return time < until[source];
    }

    /** When (s) the next pause ends in which one was called; infinite if there is none. */
    double nextEnd(double time) {
        return Arrays.stream(until).filter(end -> end > time).min().orElse(Double.POSITIVE_INFINITY);
    }

    /**
     * Notes what switches off, and keeps off what switches on too soon.
     *
     * @param before the modes so far
     * @param wanted the modes that a watch asks for
     * @param time now (s since the start of the run)
     * @return the modes wanted, without the calls that come too soon
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
