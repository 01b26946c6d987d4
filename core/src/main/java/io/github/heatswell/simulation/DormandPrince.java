package io.github.heatswell.simulation;

import java.util.Arrays;

/**
 * Integrates differential equations with the Dormand-Prince 5(4) method, step by step: each finished step goes to a
 * reader, which decides whether to continue.
 *
 * <p>Step size follows the estimated error: the root mean square of the components' errors, each in units of its
 * tolerance. Components from a given index on are alike and count as one, so that their number cannot hide the error of
 * the others.
 *
 * <p>Source: E. Hairer, S. P. Nørsett, G. Wanner, Solving Ordinary Differential Equations I, 2nd ed., Springer 1993,
 * sections II.4 (step size and starting step) and II.5 (coefficients).
 *
 * <p>Working memory of one run, not thread-safe.
 */
final class DormandPrince {

    /** What the method is called. */
    static final String NAME = "Dormand-Prince 5 (4)";

    /** The equations to integrate. */
    interface Equations {
        /**
         * Works out the rates.
         *
         * @param time time since the start (s)
         * @param y the state
         * @param rates the rates of change of the state, overwritten
         */
        void rates(double time, double[] y, double[] rates);
    }

    /** Takes the finished steps. */
    interface Reader {
        /**
         * Looks at a step before it is taken, and cuts it where the integration ends.
         *
         * @param step the step, valid during the call
         */
        default void cut(DenseOutput step) {
            // it is taken as it is
        }

        /**
         * Takes a step.
         *
         * @param step the step, valid during the call
         * @return whether to continue
         */
        boolean read(DenseOutput step);
    }

    private static final int ORDER = 5;
    /** Safety factor (-) on the step predicted from the last one, */
    static final double SAFETY = 0.85;
    /** and limits (-) on its change. */
    private static final double MAX_REDUCTION = 0.2;

    private static final double MAX_GROWTH = 10;
    /** A step cut before this fraction (-) of it is repeated if the solution there is coarse, */
    private static final double CUT_EARLY = 0.6;
    /** but not before this one (-), where nothing can have gone wrong yet; */
    private static final double CUT_AT_ONCE = 1e-3;
    /** that is, if its rates are off by this many times the tolerance over the time so far, */
    private static final double COARSE = 10;
    /** or those of a running total, whose errors add up from one cut step to the next, by this part (-) of what it gained, */
    private static final double COARSE_GAIN = 4e-7;
    /** with a step this much (-) longer than the cut one, so that the event falls near its end. */
    private static final double LITTLE_LONGER = 1.1;
    /**
     * Errors of a running total add up. Measured by the total itself, a small step late in a run might err by more than
     * it adds; so it may err by this part (-) of that at most, unless told otherwise.
     */
    static final double OF_INCREMENT = 1e-7;
    /** Error (1 is acceptable) assigned to a trial step that left the computable range. */
    private static final double BEYOND_ALL = 1e12;

    private static final double[][] STAGES = {
        {1.0 / 5.0},
        {3.0 / 40.0, 9.0 / 40.0},
        {44.0 / 45.0, -56.0 / 15.0, 32.0 / 9.0},
        {19372.0 / 6561.0, -25360.0 / 2187.0, 64448.0 / 6561.0, -212.0 / 729.0},
        {9017.0 / 3168.0, -355.0 / 33.0, 46732.0 / 5247.0, 49.0 / 176.0, -5103.0 / 18656.0},
        {35.0 / 384.0, 0.0, 500.0 / 1113.0, 125.0 / 192.0, -2187.0 / 6784.0, 11.0 / 84.0}
    };
    private static final double[] TIMES = {1.0 / 5.0, 3.0 / 10.0, 4.0 / 5.0, 8.0 / 9.0, 1.0, 1.0};
    private static final double[] ERRORS = {
        71.0 / 57600.0, 0.0, -71.0 / 16695.0, 71.0 / 1920.0, -17253.0 / 339200.0, 22.0 / 525.0, -1.0 / 40.0
    };

    private final double shortest;
    private final double[] absolute;
    private final double[] relative;
    private final double[] most;
    private final double[] ofIncrement;
    private final boolean[] totals;
    private final int alike;
    private final double[][] rates;
    private final double[] found;
    private final DenseOutput step;
    private int part = -1;
    private double[] y;
    private double[] next;
    private long evaluations;
    private double begun;

    /**
     * A stepper without a limit to the tolerances.
     *
     * @param shortest the shortest step (s)
     * @param absolute absolute tolerance of each component of the state, in its unit
     * @param relative relative tolerance of each component (-)
     * @param totals which components are running totals
     * @param alike the index from which the components are alike
     */
    DormandPrince(double shortest, double[] absolute, double[] relative, boolean[] totals, int alike) {
        this.shortest = shortest;
        this.absolute = absolute.clone();
        this.relative = relative.clone();
        most = new double[absolute.length];
        Arrays.fill(most, Double.POSITIVE_INFINITY);
        ofIncrement = new double[absolute.length];
        Arrays.fill(ofIncrement, OF_INCREMENT);
        this.totals = totals.clone();
        this.alike = alike;
        rates = new double[STAGES.length + 1][absolute.length];
        found = new double[absolute.length];
        y = new double[absolute.length];
        next = new double[absolute.length];
        step = new DenseOutput(absolute.length);
    }

    /**
     * Sets how far a running total may err in a step from now on.
     *
     * @param component its place in the state
     * @param tolerance its absolute tolerance, in its unit
     * @param increment the part (-) of what the step adds to it that it may err by as well
     * @param limit the most that both may come to, in its unit
     */
    void allow(int component, double tolerance, double increment, double limit) {
        absolute[component] = tolerance;
        ofIncrement[component] = increment;
        most[component] = limit;
    }

    /**
     * Lets the first of the components that are alike err the more, the less of it there is: by the root of the part. By the part itself,
     * which is what its heat counts, the many short steps of a layer that has just begun together moved a thermostat's switching by
     * 22 ms in a day; by the root, 6 ms.
     *
     * @param component what part (-) of it there is, itself a component of the state; negative if all of it always is
     */
    void allowFirstByPart(int component) {
        part = component;
    }

    /**
     * Integrates from time zero to the end, or until the reader stops it.
     *
     * @param equations the equations
     * @param start the state at the start
     * @param end the end (s)
     * @param longest the longest step (s)
     * @param trial the first trial step (s); negative to estimate it
     * @param reader takes the steps
     * @return the last step, cut where the reader cut it
     * @throws ArithmeticException if the shortest step is still too long, or the first rates or the end are not finite
     */
    DenseOutput integrate(
            Equations equations, double[] start, double end, double longest, double trial, Reader reader) {
        System.arraycopy(start, 0, y, 0, y.length);
        double time = 0;
        evaluate(equations, 0, y, rates[0]);
        if (!Double.isFinite(end) || !isFinite(rates[0])) {
            throw new ArithmeticException("the rates of change are not finite");
        }
        double wanted = trial > 0 ? trial : startingStep(equations, longest);
        while (true) {
            boolean reachesEnd = wanted >= end - time;
            double length = reachesEnd ? end - time : wanted;
            double error = attempt(equations, time, length);
            double comfortable = length * Math.min(MAX_GROWTH, SAFETY * Math.pow(error, -1.0 / ORDER));
            wanted = Math.min(longest, Math.max(comfortable, MAX_REDUCTION * length));
            if (error >= 1) {
                if (!(wanted >= shortest)) {
                    throw new ArithmeticException("a step of " + length + " s is still too long");
                }
                continue;
            }
            double until = reachesEnd ? end : time + length;
            step.load(time, y, until, next, rates);
            reader.cut(step);
            double cut = (step.to() - time) / length;
            if (cut > CUT_AT_ONCE && cut < CUT_EARLY && isCoarse(equations)) {
                wanted = LITTLE_LONGER * (step.to() - time);
                continue;
            }
            begun = time > 0 ? begun : comfortable;
            if (!reader.read(step) || until >= end) {
                return step;
            }
            time = until;
            wanted = Math.max(wanted, shortest);
            // the rates at the end of a step are those at the start of the next
            double[] first = rates[0];
            rates[0] = rates[STAGES.length];
            rates[STAGES.length] = first;
            double[] before = y;
            y = next;
            next = before;
        }
    }

    private static boolean isFinite(double[] values) {
        for (double value : values) {
            if (!Double.isFinite(value)) {
                return false;
            }
        }
        return true;
    }

    /** Step size (s) with which the last integration might have begun, judged by the error of its first step. */
    double firstStep() {
        return begun;
    }

    /** How often the equations have been evaluated so far. */
    long evaluations() {
        return evaluations;
    }

    private void evaluate(Equations equations, double time, double[] state, double[] into) {
        evaluations++;
        equations.rates(time, state, into);
    }

    /** Tries a step; returns its error, of which 1 is acceptable. */
    private double attempt(Equations equations, double time, double length) {
        for (int stage = 0; stage < STAGES.length; stage++) {
            weigh(STAGES[stage], stage);
            for (int k = 0; k < y.length; k++) {
                next[k] = y[k] + length * next[k];
            }
            evaluate(equations, time + TIMES[stage] * length, next, rates[stage + 1]);
        }
        int others = y.length - alike;
        double squares = errors(length, 0, alike) + (others > 0 ? errors(length, alike, y.length) / others : 0);
        double error = Math.sqrt(squares / (others > 0 ? alike + 1 : alike));
        return Double.isNaN(error) ? BEYOND_ALL : error;
    }

    /** Sums the weighted rates up to a stage into the next state, array by array. */
    private void weigh(double[] weights, int stage) {
        double[] sum = next;
        double[] rate = rates[0];
        double weight = weights[0];
        for (int k = 0; k < sum.length; k++) {
            sum[k] = weight * rate[k];
        }
        for (int i = 1; i <= stage; i++) {
            rate = rates[i];
            weight = weights[i];
            for (int k = 0; k < sum.length; k++) {
                sum[k] += weight * rate[k];
            }
        }
    }

    /**
     * Whether the continuous solution is off where it was cut, judged by its rates. It is of a lower order than the
     * step, whose error estimate says nothing about it.
     */
    private boolean isCoarse(Equations equations) {
        double[] there = step.last();
        evaluate(equations, step.to(), there, found);
        double elapsed = step.to() - step.from();
        for (int k = 0; k < there.length; k++) {
            double off = elapsed * Math.abs(found[k] - step.rate(k, step.to()));
            double gain = totals[k] ? COARSE_GAIN * Math.abs(there[k] - y[k]) : Double.POSITIVE_INFINITY;
            if (off > Math.min(COARSE * tolerance(k, there), COARSE * absolute[k] + gain)) {
                return true;
            }
        }
        return false;
    }

    /** The sum of the squares of the errors of neighbouring components, each in units of its tolerance. */
    private double errors(double length, int from, int until) {
        double squares = 0;
        for (int k = from; k < until; k++) {
            double sum = ERRORS[0] * rates[0][k];
            for (int i = 2; i < ERRORS.length; i++) {
                sum += ERRORS[i] * rates[i][k];
            }
            double ratio = length * sum / tolerance(k, next);
            squares += ratio * ratio;
        }
        return squares;
    }

    /** The error allowed to a step that ends in a state. */
    private double tolerance(int component, double[] after) {
        double from = y[component];
        double to = after[component];
        double ofSize = relative[component] * Math.max(Math.abs(from), Math.abs(to));
        double grown = totals[component] ? Math.min(ofSize, ofIncrement[component] * Math.abs(to - from)) : ofSize;
        double whole = Math.min(most[component], absolute[component] + grown);
        return component == alike && part >= 0 ? whole / Math.sqrt(Math.min(1, after[part])) : whole;
    }

    private double tolerance(int component) {
        return Math.min(most[component], absolute[component] + relative[component] * Math.abs(y[component]));
    }

    /**
     * First step for which an explicit Euler step changes the state and its rates by one per cent. A tight tolerance may ask
     * for a first look far beyond what can be computed; it is then taken nearer.
     */
    private double startingStep(Equations equations, double longest) {
        double states = 0;
        double changes = 0;
        for (int k = 0; k < y.length; k++) {
            double tolerance = tolerance(k);
            states += Math.pow(y[k] / tolerance, 2);
            changes += Math.pow(rates[0][k] / tolerance, 2);
        }
        double small = states < 1e-10 || changes < 1e-10 ? 1e-6 : 0.01 * Math.sqrt(states / changes);
        double bends = bends(equations, small);
        while (!Double.isFinite(bends) && small > shortest) {
            small *= MAX_REDUCTION;
            bends = bends(equations, small);
        }
        double steepest = Math.max(Math.sqrt(changes), Math.sqrt(bends) / small);
        double even = steepest < 1e-15 ? Math.max(1e-6, 0.001 * small) : Math.pow(0.01 / steepest, 1.0 / ORDER);
        return Math.max(shortest, Math.min(longest, Math.min(100 * small, even)));
    }

    /** How far, in tolerances squared, the rates change over an explicit Euler step (s); not finite if it leaves the computable range. */
    private double bends(Equations equations, double step) {
        for (int k = 0; k < y.length; k++) {
            next[k] = y[k] + step * rates[0][k];
        }
        evaluate(equations, step, next, rates[1]);
        double bends = 0;
        for (int k = 0; k < y.length; k++) {
            bends += Math.pow((rates[1][k] - rates[0][k]) / tolerance(k), 2);
        }
        return bends;
    }
}
