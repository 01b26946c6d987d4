package io.github.heatswell.simulation;

import java.util.Arrays;
import java.util.List;

/**
 * First trial step of a segment. A run is a chain of short segments of a few kinds, and those of one kind are alike. So
 * a segment starts with the step at which the last one of its kind would have continued, instead of the solver's
 * estimate, which starts small and grows tenfold with each step. The solver rejects a step that is too long and retries
 * a shorter one.
 *
 * <p>With a tap open, the first step is set by a volume drawn, whatever the flow.
 */
final class FirstStep {

    /** Leaves the guess to the solver. */
    private static final double UNKNOWN = -1;

    private static final int RULES = PressureRegime.values().length;
    /** First trial of a run (s) while water is heated, */
    private static final double HEATING = 400;
    /** and at rest. */
    private static final double RESTING = 3_600;
    /** First trial of a run (m3) with a tap open, which exchanges a small part of the tank's water, */
    private static final double DRAWING = 10e-3;
    /** and one that empties a small part of a vessel. */
    private static final double DRAWING_OFF = 0.7e-3;

    private double pace;
    private double length;

    private FirstStep(double length) {
        this.length = length;
    }

    /** One for each kind of segment. */
    static FirstStep[] ofEveryKind() {
        FirstStep[] all = new FirstStep[8 * RULES];
        Arrays.setAll(all, kind -> new FirstStep(UNKNOWN));
        for (PressureRegime rule : List.of(PressureRegime.FREE, PressureRegime.HELD)) {
            double drawing = rule == PressureRegime.HELD ? DRAWING : DRAWING_OFF;
            all[kind(rule, false, false, false)] = new FirstStep(RESTING);
            all[kind(rule, false, true, false)] = new FirstStep(HEATING);
            all[kind(rule, false, false, true)] = new FirstStep(drawing);
            all[kind(rule, false, true, true)] = new FirstStep(drawing);
        }
        return all;
    }

    /** The kind of a segment, as a place among all kinds. */
    static int kind(Modes modes, boolean heating, boolean drawing) {
        return kind(modes.rule, modes.anyValveOpen(), heating, drawing);
    }

    private static int kind(PressureRegime rule, boolean valveOpen, boolean heating, boolean drawing) {
        int circumstances = (valveOpen ? 1 : 0) + (heating ? 2 : 0) + (drawing ? 4 : 0);
        return rule.ordinal() + RULES * circumstances;
    }

    /**
     * The step to begin with.
     *
     * @param drawn flow of the open tap (m3/s), 0 if there is none
     * @return its length (s), negative if the solver should estimate it
     */
    double under(double drawn) {
        pace = drawn > 0 ? drawn : 1;
        return length / pace;
    }

    /** The segment is over and would have continued with a step of this length (s). */
    void goingOnWith(double next) {
        length = next * pace;
    }
}
