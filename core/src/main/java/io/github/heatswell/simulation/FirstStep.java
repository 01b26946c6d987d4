package io.github.heatswell.simulation;

import java.util.Arrays;
import java.util.List;

/**
 * How long the first step of a segment is tried. A run is a chain of short segments of few kinds, and those of one kind are
 * alike; so a segment begins with the step with which the last one of its kind would have gone on, in place of the solver's
 * own guess, which begins small and grows tenfold with each step. A step that is too long is refused by the solver and tried
 * shorter.
 */
final class FirstStep {

    /** Leaves the guess to the solver. */
    private static final double UNKNOWN = -1;

    private static final int RULES = Modes.PressureRule.values().length;
    /** The first trial of all (s) with a tap open, while no valve is settling, */
    private static final double DRAWING = 60;
    /** and with none. */
    private static final double RESTING = 600;

    private double length;

    private FirstStep(double length) {
        this.length = length;
    }

    /** One for each kind of segment. */
    static FirstStep[] ofEveryKind() {
        FirstStep[] all = new FirstStep[8 * RULES];
        Arrays.setAll(all, kind -> new FirstStep(UNKNOWN));
        for (Modes.PressureRule rule : List.of(Modes.PressureRule.FREE, Modes.PressureRule.HELD)) {
            for (boolean heating : new boolean[] {false, true}) {
                all[kind(rule, false, heating, true)] = new FirstStep(DRAWING);
                all[kind(rule, false, heating, false)] = new FirstStep(RESTING);
            }
        }
        return all;
    }

    /** The kind of a segment, as a place among all kinds. */
    static int kind(Modes modes, boolean heating, boolean drawing) {
        return kind(modes.rule, modes.anyValveOpen(), heating, drawing);
    }

    private static int kind(Modes.PressureRule rule, boolean valveOpen, boolean heating, boolean drawing) {
        int circumstances = (valveOpen ? 1 : 0) + (heating ? 2 : 0) + (drawing ? 4 : 0);
        return rule.ordinal() + RULES * circumstances;
    }

    /** The step (s) to begin with, negative if the solver is to guess. */
    double length() {
        return length;
    }

    /** A segment of the kind is over, and would have gone on with a step of some length (s). */
    void goingOnWith(double next) {
        length = next;
    }
}
