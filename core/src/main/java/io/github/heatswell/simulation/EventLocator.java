package io.github.heatswell.simulation;

import java.util.List;
import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.AllowedSolution;
import org.hipparchus.analysis.solvers.PegasusSolver;

/**
 * Finds the first event in a step. All distances are positive at the start of a segment (immediate events are handled
 * before); one that is not positive at the end of a step reached zero within it.
 *
 * <p>Each detector is evaluated once per step, and only those that triggered are located, on the step's dense output.
 */
final class EventLocator {

    /** Event times are located this finely (s). */
    private static final double TIME_ACCURACY = 1e-9;

    private static final int MAX_ITERATIONS = 200;

    private final Balance balance;
    /** Distances are nearly linear over a step: the simplest method needs three or four evaluations. */
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

    /** The detector that triggered, or null if none did. */
    EventDetector due() {
        return due;
    }

    /**
     * Cuts a step at its first event. The balance must have been evaluated last at the end of the step, where the
     * method takes its last stage. A threshold crossed and re-crossed by a pressure that turns within the step is not
     * missed.
     */
    void lookAt(DenseOutput step) {
        due = null;
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
                return;
            }
            if (flowsMatter) {
                balance.evaluate(end, modes, rates);
            }
        }
        isDueBy(step.to(), end, step);
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

    /** Of all detectors triggered by a time, the first. */
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
