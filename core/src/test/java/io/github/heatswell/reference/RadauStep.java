package io.github.heatswell.reference;

import java.util.Arrays;

/**
 * One step of the three-stage Radau IIA method: implicit Runge-Kutta of order 5, L-stable and stiffly accurate, so the
 * last stage is the new solution.
 *
 * <p>Unknowns are the stage increments {@code Z_i = Y_i - y}, found by Newton iteration on
 * {@code Z = h (A x I) F(y + Z)}. The Jacobian of an earlier step serves while iterations converge with it; once they do not, it is
 * taken anew at every stage and in every iteration of the step, and at the beginning of the next: with that of the beginning alone,
 * iterations converge badly where a stiff flow carries a quantity whose density changes in the step.
 * The error is estimated by comparison with a formula of order 3 that uses the slope at the beginning, filtered through
 * {@code (gamma/h I - J)^{-1}} so that stiff components are not overrated.
 *
 * <p>Source: E. Hairer, G. Wanner, Solving Ordinary Differential Equations II, 2nd ed., Springer 1996: coefficients
 * table IV.5.6, error estimate section IV.8, (8.17) to (8.20), the numbers from memory; what the coefficients must
 * fulfil is tested. The stages are solved as one dense system, since there are a dozen unknowns at most.
 *
 * <p>Components that the equations do not depend upon follow each correction through their rows of the Jacobian, which
 * keeps linear invariants between all components to rounding; they have no say in convergence and error.
 */
final class RadauStep {

    private static final double ROOT6 = Math.sqrt(6);

    /** The nodes c. */
    static final double[] NODES = {(4 - ROOT6) / 10, (4 + ROOT6) / 10, 1};

    /** The coefficients A; the last row is also the weights b. */
    static final double[][] WEIGHTS = {
        {(88 - 7 * ROOT6) / 360, (296 - 169 * ROOT6) / 1800, (-2 + 3 * ROOT6) / 225},
        {(296 + 169 * ROOT6) / 1800, (88 + 7 * ROOT6) / 360, (-2 - 3 * ROOT6) / 225},
        {(16 - ROOT6) / 36, (16 + ROOT6) / 36, 1.0 / 9}
    };

    /** The real eigenvalue of the inverse of A. */
    static final double GAMMA = 30 / (6 + Math.cbrt(81) - Math.cbrt(9));

    /** Weights of the stage increments in the error estimate, times h. */
    private static final double[] ERROR = {-(13 + 7 * ROOT6) / 3, (-13 + 7 * ROOT6) / 3, -1.0 / 3};

    private static final int STAGES = 3;
    private static final int MAX_ITERATIONS = 20;
    /**
     * How far the Newton iteration is carried, as a share of the tolerated error of the step. Flows through ample
     * conductances are small differences of the state, so they need the state well below its own tolerance.
     */
    private static final double NEWTON_SHARE = 1e-5;

    /** The share up to which an iteration that stagnates in rounding errors is good enough. */
    private static final double ROUNDING_SHARE = 0.1;

    /** An iteration that shrinks the correction less than to this part (-) asks for a new Jacobian. */
    private static final double SLOW = 0.1;

    private final StiffProblem problem;
    private final double tolerance;
    private final int n;
    private final int coupled;
    private final double[][] jacobian;
    private final double[] slope;
    private final double[] scale;
    private final double[] begin;
    private final double[][] increments;
    private final double[][] stageRates;
    private final double[][][] stageJacobians;
    private final DenseLu stageSystem;
    private final DenseLu filter;
    private double beginTime;
    private boolean serves;
    private int iterations;
    private long evaluations;

    /**
     * Prepares steps of a problem.
     *
     * @param problem the equations
     * @param tolerance the relative tolerance (-)
     */
    RadauStep(StiffProblem problem, double tolerance) {
        this.problem = problem;
        this.tolerance = tolerance;
        n = problem.dimension();
        coupled = problem.coupled();
        jacobian = new double[n][coupled];
        slope = new double[n];
        scale = new double[coupled];
        begin = new double[n];
        increments = new double[STAGES][n];
        stageRates = new double[STAGES][n];
        stageJacobians = new double[STAGES][][];
        stageSystem = new DenseLu(STAGES * coupled);
        filter = new DenseLu(coupled);
    }

    /** Fixes where the next steps begin and evaluates the slope there, and the Jacobian unless the one there is serves. */
    void beginAt(double t, double[] y) {
        beginTime = t;
        System.arraycopy(y, 0, begin, 0, n);
        for (int i = 0; i < coupled; i++) {
            scale[i] = tolerance * Math.max(Math.abs(y[i]), problem.magnitude(i));
        }
        evaluate(t, begin, slope);
        if (!serves) {
            differentiate(t, begin, slope, jacobian);
            serves = true;
        }
    }

    private void evaluate(double t, double[] y, double[] into) {
        problem.rates(t, y, into);
        evaluations++;
    }

    private void differentiate(double t, double[] y, double[] slopeThere, double[][] into) {
        double[] moved = y.clone();
        double[] rates = new double[n];
        for (int j = 0; j < coupled; j++) {
            double size = Math.max(Math.abs(y[j]), problem.magnitude(j));
            moved[j] = y[j] + Math.sqrt(Math.ulp(1.0)) * size;
            evaluate(t, moved, rates);
            for (int i = 0; i < n; i++) {
                into[i][j] = (rates[i] - slopeThere[i]) / (moved[j] - y[j]);
            }
            moved[j] = y[j];
        }
    }

    /**
     * Tries a step.
     *
     * @param h its length
     * @return whether the Newton iteration converged; if not, a shorter step must be tried
     */
    boolean attempt(double h) {
        for (double[] increment : increments) {
            Arrays.fill(increment, 0);
        }
        try {
            return iterate(h);
        } catch (ArithmeticException noSolutionThere) {
            return false;
        }
    }

    private boolean iterate(double h) {
        Arrays.fill(stageJacobians, jacobian);
        boolean anew = false;
        double last = 0;
        for (iterations = 1; iterations <= MAX_ITERATIONS; iterations++) {
            double size = improve(h, anew);
            double rate = iterations == 1 ? 1 : size / last;
            if (small(size, rate, anew)) {
                return true;
            }
            // A numerical Jacobian may let a correction exceed the last one for once.
            if (anew && iterations > 2 && !(size < 10 * last)) {
                return false;
            }
            anew |= iterations > 1 && !(rate < SLOW);
            serves &= !anew;
            last = size;
        }
        return false;
    }

    /** Whether what the next corrections could still bring is negligible, or, with Jacobians taken anew, lost in rounding. */
    private static boolean small(double size, double rate, boolean anew) {
        double remainder = rate < 1 ? rate / (1 - rate) * size : size;
        return remainder <= NEWTON_SHARE || anew && rate > 0.5 && size <= ROUNDING_SHARE;
    }

    private void fillStageSystem(double h) {
        double[][] matrix = stageSystem.matrix();
        for (int a = 0; a < STAGES; a++) {
            for (int b = 0; b < STAGES; b++) {
                for (int i = 0; i < coupled; i++) {
                    for (int j = 0; j < coupled; j++) {
                        double unit = a == b && i == j ? 1 : 0;
                        matrix[a * coupled + i][b * coupled + j] = unit - h * WEIGHTS[a][b] * stageJacobians[b][i][j];
                    }
                }
            }
        }
    }

    /** One Newton iteration, perhaps with Jacobians taken anew; returns the size of the correction in units of the tolerance. */
    private double improve(double h, boolean anew) {
        evaluateStages(h, anew);
        if (anew || iterations == 1) {
            fillStageSystem(h);
            stageSystem.factor();
        }
        double[] correction = new double[STAGES * coupled];
        for (int a = 0; a < STAGES; a++) {
            for (int i = 0; i < coupled; i++) {
                correction[a * coupled + i] = h * weighed(a, i) - increments[a][i];
            }
        }
        stageSystem.solve(correction);
        follow(h, correction);
        double sum = 0;
        for (int a = 0; a < STAGES; a++) {
            for (int i = 0; i < coupled; i++) {
                increments[a][i] += correction[a * coupled + i];
                double relative = correction[a * coupled + i] / scale[i];
                sum += relative * relative;
            }
        }
        return Math.sqrt(sum / (STAGES * coupled));
    }

    /** Gives the components that nothing depends upon their share of a correction. */
    private void follow(double h, double[] correction) {
        double[] change = new double[STAGES];
        for (int i = coupled; i < n; i++) {
            for (int b = 0; b < STAGES; b++) {
                change[b] = stageRates[b][i];
                for (int j = 0; j < coupled; j++) {
                    change[b] += stageJacobians[b][i][j] * correction[b * coupled + j];
                }
            }
            for (int a = 0; a < STAGES; a++) {
                increments[a][i] =
                        h * (WEIGHTS[a][0] * change[0] + WEIGHTS[a][1] * change[1] + WEIGHTS[a][2] * change[2]);
            }
        }
    }

    private void evaluateStages(double h, boolean anew) {
        double[] y = new double[n];
        for (int a = 0; a < STAGES; a++) {
            for (int i = 0; i < n; i++) {
                y[i] = begin[i] + increments[a][i];
            }
            double t = beginTime + NODES[a] * h;
            evaluate(t, y, stageRates[a]);
            if (anew) {
                stageJacobians[a] = new double[n][coupled];
                differentiate(t, y, stageRates[a], stageJacobians[a]);
            }
        }
    }

    private double weighed(int stage, int component) {
        double sum = 0;
        for (int b = 0; b < STAGES; b++) {
            sum += WEIGHTS[stage][b] * stageRates[b][component];
        }
        return sum;
    }

    /** {@return how many iterations the last attempt took} */
    int iterations() {
        return iterations;
    }

    /** {@return how often the equations were evaluated so far} */
    long evaluations() {
        return evaluations;
    }

    /** {@return the solution at the end of the last attempt, a new array} */
    double[] end() {
        double[] y = begin.clone();
        for (int i = 0; i < n; i++) {
            y[i] += increments[STAGES - 1][i];
        }
        return y;
    }

    /**
     * Estimates the error of the last attempt.
     *
     * @param h its length
     * @param afterReset whether the solution has just begun or just failed, when a second filtering tames the estimate
     * @return the error in units of the tolerance; up to 1 is good
     */
    double error(double h, boolean afterReset) {
        double[][] matrix = filter.matrix();
        for (int i = 0; i < coupled; i++) {
            for (int j = 0; j < coupled; j++) {
                matrix[i][j] = (i == j ? GAMMA / h : 0) - jacobian[i][j];
            }
        }
        filter.factor();
        double[] estimate = filtered(h, slope);
        double size = size(estimate);
        if (size >= 1 && afterReset) {
            double[] y = begin.clone();
            for (int i = 0; i < coupled; i++) {
                y[i] += estimate[i];
            }
            double[] rates = new double[n];
            evaluate(beginTime, y, rates);
            size = size(filtered(h, rates));
        }
        return size;
    }

    private double[] filtered(double h, double[] rates) {
        double[] estimate = new double[coupled];
        for (int i = 0; i < coupled; i++) {
            double sum = 0;
            for (int a = 0; a < STAGES; a++) {
                sum += ERROR[a] * increments[a][i];
            }
            estimate[i] = rates[i] + sum / h;
        }
        filter.solve(estimate);
        return estimate;
    }

    private double size(double[] estimate) {
        double sum = 0;
        for (int i = 0; i < coupled; i++) {
            double weighed = estimate[i] / scale[i];
            sum += weighed * weighed;
        }
        return Math.sqrt(sum / coupled);
    }
}
