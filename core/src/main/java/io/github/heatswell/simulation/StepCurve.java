package io.github.heatswell.simulation;

import org.hipparchus.ode.ODEStateAndDerivative;
import org.hipparchus.ode.sampling.ODEStateInterpolator;

/**
 * The continuous solution over one step, for reading many states off it. The solver's own interpolant is a polynomial of
 * degree four in time that meets state and rates at both ends, so one state in the middle determines it: the cubic through
 * both ends, and {@code 16 c s^2 (1 - s)^2} with what the middle differs from it. It is worked out when the first state
 * inside is asked for, since most steps are not looked into.
 *
 * <p>Working memory of one run, filled anew for every step; not thread-safe.
 */
final class StepCurve {

    /** Turning points are located this finely (s): what turns is flat there. */
    private static final double TURN_ACCURACY = 1e-3;

    private final double[] constant;
    private final double[] linear;
    private final double[] square;
    private final double[] cube;
    private final double[] fourth;

    private ODEStateInterpolator interpolator;
    private double[] first;
    private double[] last;
    private double[] firstRates;
    private double[] lastRates;
    private boolean ready;
    private double from;
    private double length;
    private double to;

    StepCurve(int dimension) {
        constant = new double[dimension];
        linear = new double[dimension];
        square = new double[dimension];
        cube = new double[dimension];
        fourth = new double[dimension];
    }

    /** Takes over a finished step. */
    void load(ODEStateInterpolator step) {
        interpolator = step;
        ODEStateAndDerivative start = step.getPreviousState();
        ODEStateAndDerivative end = step.getCurrentState();
        first = start.getPrimaryState();
        last = end.getPrimaryState();
        firstRates = start.getPrimaryDerivative();
        lastRates = end.getPrimaryDerivative();
        from = start.getTime();
        to = end.getTime();
        length = to - from;
        ready = false;
    }

    /** Start of the step (s) since the start of the segment. */
    double from() {
        return from;
    }

    /** End of the step (s) since the start of the segment, or where it was cut. */
    double to() {
        return to;
    }

    /** The state at the end; not to be changed. */
    double[] last() {
        return last;
    }

    /**
     * Lets the step end earlier.
     *
     * @param time the new end (s) since the start of the segment
     */
    void cutAt(double time) {
        double[] state = new double[last.length];
        at(time, state);
        last = state;
        to = time;
    }

    /** Something that goes up and down over a step. */
    interface Rate {
        /**
         * Its rate.
         *
         * @param time a time (s) within the step
         */
        double at(double time);
    }

    /** Whether something, after rising, falls, or after falling, rises, judged by its rates at the ends. */
    boolean turns(Rate rate) {
        return rate.at(from) * rate.at(to) < 0;
    }

    /** When (s) something that {@link #turns turns} does so, by bisection. */
    double turningPoint(Rate rate) {
        double low = from;
        double high = to;
        double before = rate.at(low);
        while (high - low > TURN_ACCURACY) {
            double middle = 0.5 * (low + high);
            if (before * rate.at(middle) > 0) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    /**
     * The rate of a component.
     *
     * @param component its place in the state
     * @param time a time (s) within the step
     */
    double rate(int component, double time) {
        if (time <= from) {
            return firstRates[component];
        }
        if (time >= from + length) {
            return lastRates[component];
        }
        prepare();
        double s = (time - from) / length;
        return (linear[component] + s * (2 * square[component] + s * (3 * cube[component] + s * 4 * fourth[component])))
                / length;
    }

    /**
     * The state at a time.
     *
     * @param time a time (s) within the step, since the start of the segment
     * @param into the state, overwritten
     */
    void at(double time, double[] into) {
        prepare();
        double s = (time - from) / length;
        double[] c = constant;
        double[] l = linear;
        double[] q = square;
        double[] t = cube;
        double[] f = fourth;
        for (int k = 0; k < into.length; k++) {
            into[k] = c[k] + s * (l[k] + s * (q[k] + s * (t[k] + s * f[k])));
        }
    }

    private void prepare() {
        if (ready) {
            return;
        }
        ready = true;
        double[] middle = interpolator.getInterpolatedState(from + 0.5 * length).getPrimaryState();
        for (int k = 0; k < constant.length; k++) {
            double change = last[k] - first[k];
            double atFirst = length * firstRates[k];
            double atLast = length * lastRates[k];
            double bend = 16 * (middle[k] - first[k] - 0.5 * change - 0.125 * (atFirst - atLast));
            constant[k] = first[k];
            linear[k] = atFirst;
            square[k] = 3 * change - 2 * atFirst - atLast + bend;
            cube[k] = atFirst + atLast - 2 * change - 2 * bend;
            fourth[k] = bend;
        }
    }
}
