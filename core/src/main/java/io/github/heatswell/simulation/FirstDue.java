package io.github.heatswell.simulation;

import io.github.heatswell.simulation.Modes.PressureRule;
import java.util.Comparator;
import java.util.List;
import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.BracketedUnivariateSolver;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.hipparchus.ode.ODEStateAndDerivative;
import org.hipparchus.ode.events.Action;
import org.hipparchus.ode.events.AdaptableInterval;
import org.hipparchus.ode.events.ODEEventDetector;
import org.hipparchus.ode.events.ODEEventHandler;

/**
 * All watches of a segment as one event function, the least of their distances. It is positive at the start (what is due
 * at once is handled before), so its first fall to zero is the first watch due, and there the segment stops.
 */
final class FirstDue implements ODEEventDetector, ODEEventHandler {

    /** Event times are located this finely (s). */
    private static final double TIME_ACCURACY = 1e-9;
    /** Looking this far ahead (s) puts the watch that is due beyond doubt. */
    private static final double LOOK_AHEAD = 10 * TIME_ACCURACY;

    private static final int MOST_ITERATIONS = 200;
    private static final int SOLVER_ORDER = 5;

    private final Balance balance;
    private final Modes modes;
    private final List<Watch> watches;
    private final double checkInterval;
    /** Whether a watch may ask for a flow; in a sealed system all of them ask for the state only. */
    private final boolean flowsMatter;

    private double[] rates = {};
    private boolean met;

    FirstDue(Balance balance, Modes modes, List<Watch> watches, double checkInterval) {
        this.balance = balance;
        this.modes = modes;
        this.watches = watches;
        this.checkInterval = checkInterval;
        flowsMatter = modes.rule != PressureRule.FREE || modes.anyValveOpen();
    }

    /** Whether a watch fell due. */
    boolean met() {
        return met;
    }

    /**
     * The watch that is due at a state, or about to be. Distances have different units and cannot be compared with each
     * other, so the state is moved on by a moment, after which only what is due lies below zero.
     */
    Watch dueAt(double[] y) {
        evaluate(y);
        double[] ahead = y.clone();
        for (int i = 0; i < ahead.length; i++) {
            ahead[i] += LOOK_AHEAD * rates[i];
        }
        evaluate(ahead);
        return watches.stream()
                .min(Comparator.comparingDouble(watch -> watch.distance().from(ahead)))
                .orElseThrow();
    }

    @Override
    public double g(ODEStateAndDerivative state) {
        double[] y = state.getPrimaryState();
        if (flowsMatter) {
            evaluate(y);
        }
        double least = Double.POSITIVE_INFINITY;
        for (Watch watch : watches) {
            least = Math.min(least, watch.distance().from(y));
        }
        return least;
    }

    private void evaluate(double[] y) {
        if (rates.length != y.length) {
            rates = new double[y.length];
        }
        balance.evaluate(y, modes, rates);
    }

    @Override
    public Action eventOccurred(ODEStateAndDerivative state, ODEEventDetector detector, boolean increasing) {
        if (increasing) {
            return Action.CONTINUE;
        }
        met = true;
        return Action.STOP;
    }

    @Override
    public AdaptableInterval getMaxCheckInterval() {
        return AdaptableInterval.of(checkInterval);
    }

    @Override
    public int getMaxIterationCount() {
        return MOST_ITERATIONS;
    }

    @Override
    public BracketedUnivariateSolver<UnivariateFunction> getSolver() {
        return new BracketingNthOrderBrentSolver(0, TIME_ACCURACY, 0, SOLVER_ORDER);
    }

    @Override
    public ODEEventHandler getHandler() {
        return this;
    }
}
