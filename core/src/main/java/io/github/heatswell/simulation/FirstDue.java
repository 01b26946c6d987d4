package io.github.heatswell.simulation;

import java.util.List;
import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;

/**
 * Finds the first watch that falls due in a step. All distances are positive at the start of a segment (what is due at once
 * is handled before); the first that is not positive at the end of a step has fallen to zero in it.
 *
 * <p>The library's own event detectors would be asked at many points of every step. Here each watch is asked once for each
 * step, and only those that fell due are located, on the polynomial that the step's solution is.
 */
final class FirstDue {

    /** Event times are located this finely (s). */
    private static final double TIME_ACCURACY = 1e-9;

    private static final int MOST_ITERATIONS = 200;
    private static final int SOLVER_ORDER = 5;

    private final Balance balance;
    private final BracketingNthOrderBrentSolver solver =
            new BracketingNthOrderBrentSolver(0, TIME_ACCURACY, 0, SOLVER_ORDER);
    private final double[] state;
    private final double[] rates;

    private Modes modes;
    private List<Watch> watches;
    /** Whether a watch may ask for a flow; in a sealed system without mixed layers all of them ask for the state only. */
    private boolean flowsMatter;

    private Watch due;
    private double dueAt;

    FirstDue(Balance balance, int dimension) {
        this.balance = balance;
        state = new double[dimension];
        rates = new double[dimension];
    }

    /** A segment begins. */
    void begin(Modes now, List<Watch> toWatch) {
        modes = now;
        watches = toWatch;
        flowsMatter = now.rule != Modes.PressureRule.FREE || now.anyValveOpen() || now.anyJoined();
        due = null;
    }

    /** The watch that fell due, or null if none did. */
    Watch due() {
        return due;
    }

    /**
     * Looks at a step and cuts it where the first watch falls due; says whether one does. The balance must have been
     * evaluated last at the end of the step, where the solver's method takes its last look.
     */
    boolean isIn(StepCurve step) {
        double[] end = step.last();
        for (Watch watch : watches) {
            if (!(watch.distance().from(end) > 0)) {
                locate(step, end);
                step.cutAt(dueAt);
                return true;
            }
        }
        return false;
    }

    /** Of all watches that are due at the end, the one that fell due first. */
    private void locate(StepCurve step, double[] end) {
        double[] atEnd = new double[watches.size()];
        for (int i = 0; i < atEnd.length; i++) {
            atEnd[i] = watches.get(i).distance().from(end);
        }
        for (int i = 0; i < atEnd.length; i++) {
            if (!(atEnd[i] > 0)) {
                double at = time(watches.get(i), step, atEnd[i]);
                if (due == null || at < dueAt) {
                    due = watches.get(i);
                    dueAt = at;
                }
            }
        }
    }

    private double time(Watch watch, StepCurve step, double atEnd) {
        double atStart = distance(watch, step, step.from());
        if (!(atStart > 0)) {
            return step.from();
        }
        if (!(atEnd < 0)) {
            return step.to();
        }
        // the ends are known, and the solver asks for them first
        UnivariateFunction distance =
                time -> time == step.from() ? atStart : time == step.to() ? atEnd : distance(watch, step, time);
        return solver.solveInterval(MOST_ITERATIONS, distance, step.from(), step.to())
                .getRightAbscissa();
    }

    private double distance(Watch watch, StepCurve step, double time) {
        step.at(time, state);
        if (flowsMatter) {
            balance.evaluate(state, modes, rates);
        }
        return watch.distance().from(state);
    }
}
