package io.github.heatswell.simulation;

import java.util.Arrays;

/**
 * How long the first step of a segment is tried. A run is a chain of short segments of few kinds, and those of one kind are
 * alike; so a segment begins with about the step the last one of its kind found long enough to end with, in place of the
 * solver's own guess, which begins small and grows tenfold with each step. A step that is too long is refused by the solver
 * and tried shorter.
 *
 * <p>The guess is not free of consequences in a tank of many layers that are all but equally warm: which of them mix is chosen
 * from differences as small as the solver's error, and longer first steps than these have been seen to mix too many.
 */
final class FirstStep {

    /** Leaves the guess to the solver. */
    private static final double UNKNOWN = -1;

    private static final int RULES = Modes.PressureRule.values().length;
    /** The share of the last step that is tried: one step refused costs as much as two accepted gain. */
    private static final double SAFE = 0.8;

    private double length = UNKNOWN;
    private double longest;

    private FirstStep() {}

    /** One for each kind of segment. */
    static FirstStep[] ofEveryKind() {
        FirstStep[] all = new FirstStep[8 * RULES];
        Arrays.setAll(all, kind -> new FirstStep());
        return all;
    }

    /** The kind of a segment, as a place among all kinds. */
    static int kind(Modes modes, boolean heating, boolean drawing) {
        int circumstances = (modes.anyValveOpen() ? 1 : 0) + (heating ? 2 : 0) + (drawing ? 4 : 0);
        return modes.rule.ordinal() + RULES * circumstances;
    }

    /** The step (s) to begin with, negative if the solver is to guess. */
    double length() {
        return length;
    }

    /** A step of some length (s) was accepted, and perhaps cut where a watch fell due. */
    void see(double step) {
        longest = Math.max(longest, step);
    }

    /** The segment is over. */
    void end() {
        length = longest > 0 ? SAFE * longest : UNKNOWN;
        longest = 0;
    }
}
