package io.github.heatswell.simulation;

import java.util.List;
import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.AllowedSolution;
import org.hipparchus.analysis.solvers.PegasusSolver;

/**
 * Finds the first watch that falls due in a step. All distances are positive at the start of a segment (what is due at once
 * is handled before); the first that is not positive at the end of a step has fallen to zero in it.
 *
 * <p>The library's own event detectors would be asked at many points of every step. Here each watch is asked once for each
 * step, and only those that fell due are located, on the polynomial that the step's solution is.
 */
final class EventLocator {

    /** Event times are located this finely (s). */
    private static final double TIME_ACCURACY = 1e-9;

    private static final int MAX_ITERATIONS = 200;

    private final Balance balance;
    /** What is sought is nearly straight over a step: the simplest of methods is there in three or four looks. */
    private final PegasusSolver solver = new PegasusSolver(0, TIME_ACCURACY, 0);

    private double[] distances = {};
    private final double[] state;
    private final double[] rates;

    private Modes modes;
    private List<EventDetector> watches;
    private boolean flowsMatter;

    private EventDetector due;
    private double dueAt;

    EventLocator(Balance balance, int dimension) {
        this.balance = balance;
        state = new double[dimension];
        rates = new double[dimension];
    }

    /** A segment begins. */
    void begin(Modes now, List<EventDetector> toWatch) {
        modes = now;
        watches = toWatch;
        flowsMatter = false;
        for (EventDetector watch : toWatch) {
            flowsMatter |= watch.ofFlows();
        }
        due = null;
    }

    /** The watch that fell due, or null if none did. */
    EventDetector due() {
        return due;
    }

    /**
     * Looks at a step and cuts it where the first watch falls due; says whether one does. The balance must have been
     * evaluated last at the end of the step, where the solver's method takes its last look. What pressure crosses before it
     * turns round inside the step, and crosses again, is not missed.
     */
    boolean isIn(DenseOutput step) {
        double[] end = step.last();
        DenseOutput.Rate pressure = time -> step.rate(StateVector.PRESSURE, time);
        if (step.turns(pressure)) {
            double turn = step.turningPoint(pressure);
            double[] there = end.clone();
            step.at(turn, there);
            if (flowsMatter) {
                balance.evaluate(there, modes, rates);
            }
            if (isDueBy(turn, there, step)) {
                return true;
            }
            if (flowsMatter) {
                balance.evaluate(end, modes, rates);
            }
        }
        return isDueBy(step.to(), end, step);
    }

    private boolean isDueBy(double time, double[] then, DenseOutput step) {
        for (EventDetector watch : watches) {
            if (!(watch.distance().from(then) > 0)) {
                locate(step, time, then);
                step.cutAt(dueAt);
                return true;
            }
        }
        return false;
    }

    /** Of all watches that are due by a time, the one that fell due first. */
    private void locate(DenseOutput step, double until, double[] then) {
        int count = watches.size();
        if (distances.length < count) {
            distances = new double[count];
        }
        for (int i = 0; i < count; i++) {
            distances[i] = watches.get(i).distance().from(then);
        }
        for (int i = 0; i < count; i++) {
            if (!(distances[i] > 0)) {
                double at = time(watches.get(i), step, until, distances[i]);
                if (due == null || at < dueAt) {
                    due = watches.get(i);
                    dueAt = at;
                }
            }
        }
    }

    private double time(EventDetector watch, DenseOutput step, double until, double atEnd) {
        double atStart = distance(watch, step, step.from());
        if (!(atStart > 0)) {
            return step.from();
        }
        if (!(atEnd < 0)) {
            return until;
        }
        // the ends are known, and the solver asks for them first
        UnivariateFunction distance =
                time -> time == step.from() ? atStart : time == until ? atEnd : distance(watch, step, time);
        return solver.solve(MAX_ITERATIONS, distance, step.from(), until, AllowedSolution.RIGHT_SIDE);
    }

    private double distance(EventDetector watch, DenseOutput step, double time) {
        step.at(time, state);
        if (watch.ofFlows()) {
            balance.evaluate(state, modes, rates);
        }
        return watch.distance().from(state);
    }
}
