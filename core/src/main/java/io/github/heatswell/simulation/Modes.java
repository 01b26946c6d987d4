package io.github.heatswell.simulation;

import java.util.Arrays;

/**
 * Discrete state during the integration: changes only between segments, never inside one. Immutable.
 */
final class Modes {

    /** Where the diaphragm of the vessel is. */
    enum Diaphragm {
        /** There is no vessel. */
        ABSENT,
        /** On its seat: the vessel holds no water. */
        SEATED,
        /** Between seat and limit: gas and water at one pressure. */
        FLOATING,
        /** At its limit: the vessel takes no more water. */
        BOTTOMED_OUT
    }

    final PressureRegime rule;
    final Diaphragm diaphragm;
    final boolean lockedOut;
    /** Whether what passes through the supply, its seat included, goes back to the mains. */
    final boolean outward;

    private final boolean[] calls;
    private final Valve.Lift[] lifts;
    private final boolean[] joined;

    private Modes(
            PressureRegime rule,
            Diaphragm diaphragm,
            boolean lockedOut,
            boolean outward,
            boolean[] calls,
            Valve.Lift[] lifts,
            boolean[] joined) {
        this.rule = rule;
        this.diaphragm = diaphragm;
        this.lockedOut = lockedOut;
        this.outward = outward;
        this.calls = calls;
        this.lifts = lifts;
        this.joined = joined;
    }

    /** No thermostat calls, valves closed, no vessel, layers unmixed, pressure free. */
    static Modes resting(CompiledSystem plant) {
        Valve.Lift[] closed = new Valve.Lift[plant.valves.length];
        Arrays.fill(closed, Valve.Lift.CLOSED);
        return new Modes(
                PressureRegime.FREE,
                Diaphragm.ABSENT,
                false,
                false,
                new boolean[plant.sources.length],
                closed,
                new boolean[plant.layers - 1]);
    }

    /** Whether a thermostat calls for heat. */
    boolean calls(int source) {
        return calls[source];
    }

    /** Whether a burner or element is on: its thermostat calls, and no cut-out or upper element blocks it. */
    boolean isOn(int source, CompiledSystem plant) {
        if (lockedOut || !calls[source]) {
            return false;
        }
        for (int above = source + 1; above < calls.length; above++) {
            if (calls[above] && !plant.simultaneous) {
                return false;
            }
        }
        return true;
    }

    /** Whether any burner or element is on. */
    boolean isHeating(CompiledSystem plant) {
        for (int i = 0; i < calls.length; i++) {
            if (isOn(i, plant)) {
                return true;
            }
        }
        return false;
    }

    Valve.Lift lift(int valve) {
        return lifts[valve];
    }

    boolean anyValveOpen() {
        for (Valve.Lift lift : lifts) {
            if (lift.isOpen()) {
                return true;
            }
        }
        return false;
    }

    /** Whether a layer and the one above it are mixed into one zone. */
    boolean joined(int layer) {
        return joined[layer];
    }

    Modes withRule(PressureRegime value) {
        return new Modes(value, diaphragm, lockedOut, outward, calls, lifts, joined);
    }

    Modes withOutward(boolean value) {
        return value == outward ? this : new Modes(rule, diaphragm, lockedOut, value, calls, lifts, joined);
    }

    Modes withDiaphragm(Diaphragm value) {
        return new Modes(rule, value, lockedOut, outward, calls, lifts, joined);
    }

    Modes withCutOutTripped() {
        return new Modes(rule, diaphragm, true, outward, calls, lifts, joined);
    }

    Modes withCall(int source, boolean value) {
        boolean[] changed = calls.clone();
        changed[source] = value;
        return new Modes(rule, diaphragm, lockedOut, outward, changed, lifts, joined);
    }

    Modes withLift(int valve, Valve.Lift value) {
        Valve.Lift[] changed = lifts.clone();
        changed[valve] = value;
        return new Modes(rule, diaphragm, lockedOut, outward, calls, changed, joined);
    }

    Modes withJoined(boolean[] value) {
        return new Modes(rule, diaphragm, lockedOut, outward, calls, lifts, value.clone());
    }

    Modes withJoined(int layer) {
        boolean[] changed = joined.clone();
        changed[layer] = true;
        return new Modes(rule, diaphragm, lockedOut, outward, calls, lifts, changed);
    }

    /**
     * Minimum off-time of burners and elements. A thermostat takes some tens of seconds to sense cooling water, and a
     * burner control as long to relight. It matters only when a draw cools a very small tank through the thermostat's
     * differential within that time.
     */
    static final class Pauses {

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
}
