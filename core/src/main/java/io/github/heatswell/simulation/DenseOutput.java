package io.github.heatswell.simulation;

/**
 * Dense output over one step: the fourth-degree polynomial in time of the Dormand-Prince method. It is the cubic
 * through state and rates at both ends plus {@code c s^2 (1 - s)^2}, with a factor from the rates at the method's
 * stages. It is computed when the first interior state is requested.
 *
 * <p>Source: the dense output of the program DOPRI5 in E. Hairer, S. P. Nørsett, G. Wanner, Solving Ordinary
 * Differential Equations I, 2nd ed., Springer 1993, section II.6 and appendix.
 *
 * <p>Working memory of one run, filled anew for every step; not thread-safe.
 */
final class DenseOutput {

    /** Accuracy (s) of turning points, where the value is flat. */
    private static final double TURN_ACCURACY = 1e-3;
    /** Weights of the stage rates in the fourth-degree term. */
    private static final double[] BEND = {
        -12_715_105_075.0 / 11_282_082_432.0,
        0,
        87_487_479_700.0 / 32_700_410_799.0,
        -10_690_763_975.0 / 1_880_347_072.0,
        701_980_252_875.0 / 199_316_789_632.0,
        -1_453_857_185.0 / 822_651_844.0,
        69_997_945.0 / 29_380_423.0
    };

    private final double[] constant;
    private final double[] linear;
    private final double[] square;
    private final double[] cube;
    private final double[] fourth;

    private double[][] stages;
    private double[] first;
    private double[] last;
    private double[] firstRates;
    private double[] lastRates;
    private boolean ready;
    private double from;
    private double length;
    private double to;

    DenseOutput(int dimension) {
        constant = new double[dimension];
        linear = new double[dimension];
        square = new double[dimension];
        cube = new double[dimension];
        fourth = new double[dimension];
    }

    /** A step of no change. */
    static DenseOutput standingAt(double[] state) {
        DenseOutput step = new DenseOutput(state.length);
        System.arraycopy(state, 0, step.constant, 0, state.length);
        step.length = 1;
        step.ready = true;
        return step;
    }

    /**
     * Loads a finished step.
     *
     * @param begins its start (s) since the start of the segment
     * @param start the state at its start
     * @param ends its end (s)
     * @param end the state at its end
     * @param stageRates the rates at the stages of the method, of which the first is at the start and the last at the
     *     end; these arrays and the states are read until the next step is loaded
     */
    void load(double begins, double[] start, double ends, double[] end, double[][] stageRates) {
        stages = stageRates;
        first = start;
        last = end;
        firstRates = stageRates[0];
        lastRates = stageRates[stageRates.length - 1];
        from = begins;
        to = ends;
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
     * Cuts the step short.
     *
     * @param time the new end (s) since the start of the segment
     */
    void cutAt(double time) {
        double[] state = new double[last.length];
        at(time, state);
        last = state;
        to = time;
    }

    /** Rate of a quantity that may turn within a step. */
    interface Rate {
        /**
         * Its rate.
         *
         * @param time a time (s) within the step
         */
        double at(double time);
    }

    /** Whether a quantity turns within the step, judged by the signs of its rates at the ends. */
    boolean turns(Rate rate) {
        return rate.at(from) * rate.at(to) < 0;
    }

    /** Time (s) of the turning point of a quantity that {@link #turns turns}, by bisection. */
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
        atPart((time - from) / length, into);
    }

    /**
     * Works out which fractions (-) of the step have elapsed at some times: 0 at its start, or before.
     *
     * @param times the times (s)
     * @param began when the segment began (s)
     * @param count how many there are
     * @param into the fractions, overwritten
     */
    void putParts(double[] times, double began, int count, double[] into) {
        for (int i = 0; i < count; i++) {
            into[i] = Math.max(0, times[i] - began - from) / length;
        }
    }

    /**
     * The state at a fraction of the step.
     *
     * @param s the fraction (-)
     * @param into the state, overwritten
     */
    void atPart(double s, double[] into) {
        prepare();
        double[] c = constant;
        double[] l = linear;
        double[] q = square;
        double[] t = cube;
        double[] f = fourth;
        for (int k = 0; k < into.length; k++) {
            into[k] = c[k] + s * (l[k] + s * (q[k] + s * (t[k] + s * f[k])));
        }
    }

    /** The sum of adjacent components, from the lowest to the highest, if none changes over the step; else no number (NaN). */
    double standing(int lowest, int highest) {
        prepare();
        double sum = 0;
        for (int k = lowest; k <= highest; k++) {
            if (linear[k] != 0 || square[k] != 0 || cube[k] != 0 || fourth[k] != 0) {
                return Double.NaN;
            }
            sum += constant[k];
        }
        return sum;
    }

    /**
     * Evaluates the sum of adjacent components.
     *
     * @param lowest place of the first component
     * @param highest place of the last component
     * @param factor what the sum is multiplied by
     * @param parts the elapsed fractions (-) of the step
     * @param count how many there are
     * @param into the values, overwritten
     */
    void fill(int lowest, int highest, double factor, double[] parts, int count, double[] into) {
        prepare();
        double c = 0;
        double l = 0;
        double q = 0;
        double t = 0;
        double f = 0;
        for (int k = lowest; k <= highest; k++) {
            c += constant[k];
            l += linear[k];
            q += square[k];
            t += cube[k];
            f += fourth[k];
        }
        c *= factor;
        l *= factor;
        q *= factor;
        t *= factor;
        f *= factor;
        for (int i = 0; i < count; i++) {
            double s = parts[i];
            into[i] = c + s * (l + s * (q + s * (t + s * f)));
        }
    }

    private void prepare() {
        if (ready) {
            return;
        }
        ready = true;
        bend(fourth);
        for (int k = 0; k < constant.length; k++) {
            double change = last[k] - first[k];
            double atFirst = length * firstRates[k];
            double atLast = length * lastRates[k];
            double bend = length * fourth[k];
            constant[k] = first[k];
            linear[k] = atFirst;
            square[k] = 3 * change - 2 * atFirst - atLast + bend;
            cube[k] = atFirst + atLast - 2 * change - 2 * bend;
            fourth[k] = bend;
        }
    }

    /** The part of the polynomial that only the stages inside the step know, over the length of the step. */
    private void bend(double[] into) {
        double[] rate = stages[0];
        for (int k = 0; k < into.length; k++) {
            into[k] = BEND[0] * rate[k];
        }
        for (int stage = 2; stage < BEND.length; stage++) {
            rate = stages[stage];
            double weight = BEND[stage];
            for (int k = 0; k < into.length; k++) {
                into[k] += weight * rate[k];
            }
        }
    }
}
