package io.github.heatswell.diagnosis;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.hipparchus.exception.MathRuntimeException;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresBuilder;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LevenbergMarquardtOptimizer;
import org.hipparchus.optim.nonlinear.vector.leastsquares.ValueAndJacobianFunction;
import org.hipparchus.util.Pair;

/**
 * Looks for the position at which a trial comes closest to the readings: it tries every start, and follows the best of them by the
 * method of Levenberg and Marquardt with derivatives from differences. A parameter may be held.
 */
final class Search {

    /** The change of a position for a derivative: small against what matters, large against the events of a run. */
    static final double DIFFERENCE = 0.02;

    private static final Effort SCREENING = new Effort(8, 2e-3);
    private static final Effort FINISHING = new Effort(20, 5e-5);
    private static final int MOST_RENEWALS = 4;
    /** A gain in the sum of squares below this changes no conclusion. */
    private static final double WORTH_IT = 0.3;

    private static final int PROMISING = 4;
    private static final int FOLLOWED = 3;
    private static final List<Double> FAR = List.of(-2.5, -1.2, -0.5, 0.5, 1.2);
    private static final List<Double> NEAR = List.of(-0.6, -0.15, 0.15, 0.6);
    /** Steps are bounded in units of the residuals, of which a log has hundreds. */
    private static final double FIRST_STEP = 500;

    private final Trial trial;
    private final Effort effort;
    private final boolean[] held;
    private double[] bestPosition;
    private double bestCost = Double.POSITIVE_INFINITY;
    private double[] lastPosition;
    private double[] lastResiduals;

    private Search(Trial trial, int heldIndex, Effort effort) {
        this.trial = trial;
        this.effort = effort;
        held = new boolean[trial.parameters().size()];
        if (heldIndex >= 0) {
            held[heldIndex] = true;
        }
    }

    /** When a search may stop: after so many iterations, or when an iteration gains less than this share. */
    private record Effort(int iterations, double gain) {}

    /**
     * Where a search ended.
     *
     * @param position the position
     * @param cost the sum of squares there
     */
    record End(double[] position, double cost) {}

    /** Searches from all starts, in long blocks first. */
    static End everywhere(Trial trial) {
        Trial coarse = trial.coarse();
        Search first = new Search(coarse, -1, SCREENING);
        List<double[]> promising = coarse.starts().stream()
                .sorted(Comparator.comparingDouble(first::cost))
                .limit(PROMISING)
                .map(start -> first.scanned(start, FAR))
                .sorted(Comparator.comparingDouble(first::cost))
                .limit(FOLLOWED)
                .toList();
        Search search = new Search(trial, -1, SCREENING);
        for (double[] start : promising) {
            first.bestCost = Double.POSITIVE_INFINITY;
            first.follow(start);
            search.cost(first.bestPosition);
        }
        trial.count(coarse.simulations());
        search.follow(search.bestPosition);
        return new End(search.bestPosition, search.bestCost);
    }

    /** The best of the positions around a start, one coordinate after the other, the last first: when the heat-up began. */
    private double[] scanned(double[] start, List<Double> steps) {
        double[] best = start.clone();
        double least = cost(best);
        for (int i = best.length - 1; i >= 0; i--) {
            double home = best[i];
            for (double step : steps) {
                double[] aside = best.clone();
                aside[i] = home + step;
                double cost = cost(aside);
                if (cost < least) {
                    least = cost;
                    best = aside;
                }
            }
        }
        return best;
    }

    /**
     * Goes on from where a search ended, for as long as it gets better.
     *
     * @param trial what is searched
     * @param from where the search ended
     * @param circumstances the last coordinates of a better search, with which it may go on as well
     */
    static End closer(Trial trial, End from, double[] circumstances) {
        Search search = new Search(trial, -1, FINISHING);
        search.cost(from.position());
        double[] other = from.position().clone();
        int shared = Math.min(circumstances.length, other.length);
        System.arraycopy(circumstances, circumstances.length - shared, other, other.length - shared, shared);
        search.cost(other);
        for (int i = 0; i < MOST_RENEWALS; i++) {
            double before = search.bestCost;
            search.follow(search.bestPosition);
            search.scanned(search.bestPosition, NEAR);
            if (before - search.bestCost < WORTH_IT) {
                break;
            }
        }
        return new End(search.bestPosition, search.bestCost);
    }

    /** Searches with one parameter held where it is. */
    static End holding(Trial trial, int index, double[] start) {
        Search search = new Search(trial, index, SCREENING);
        search.follow(start);
        return new End(search.bestPosition, search.bestCost);
    }

    private double cost(double[] position) {
        return Trial.sumOfSquares(residuals(position));
    }

    private double[] residuals(double[] asked) {
        double[] position = trial.clamp(asked);
        if (!Arrays.equals(position, lastPosition)) {
            lastResiduals = trial.residuals(position);
            lastPosition = position;
            double cost = Trial.sumOfSquares(lastResiduals);
            if (cost < bestCost) {
                bestCost = cost;
                bestPosition = position;
            }
        }
        return lastResiduals;
    }

    private void follow(double[] start) {
        try {
            new LevenbergMarquardtOptimizer(FIRST_STEP, effort.gain, effort.gain, 0, 1e-30)
                    .optimize(new LeastSquaresBuilder()
                            .model(new Differences())
                            .target(new double[trial.target().count() + held.length])
                            .start(trial.clamp(start))
                            .lazyEvaluation(true)
                            .maxIterations(effort.iterations)
                            .maxEvaluations(3 * effort.iterations)
                            .parameterValidator(point -> new ArrayRealVector(trial.clamp(point.toArray()), false))
                            .checker((iteration, before, after) -> before.getCost() >= after.getCost()
                                    && before.getCost() - after.getCost() < effort.gain * after.getCost())
                            .build());
        } catch (MathRuntimeException atItsEnd) {
            // out of iterations, or no step improves any more: the best position seen is the answer
        }
    }

    /** Residuals and their derivatives. */
    private final class Differences implements ValueAndJacobianFunction {
        @Override
        public Pair<RealVector, RealMatrix> value(RealVector point) {
            return new Pair<>(computeValue(point.toArray()), computeJacobian(point.toArray()));
        }

        @Override
        public RealVector computeValue(double[] position) {
            return new ArrayRealVector(residuals(position));
        }

        @Override
        public RealMatrix computeJacobian(double[] position) {
            double[] here = residuals(position).clone();
            RealMatrix jacobian = new Array2DRowRealMatrix(here.length, position.length);
            double[] home = position.clone();
            for (int i = 0; i < position.length; i++) {
                if (held[i]) {
                    continue;
                }
                double[] aside = home.clone();
                aside[i] += DIFFERENCE;
                if (trial.clamp(aside)[i] != aside[i]) {
                    aside[i] = home[i] - DIFFERENCE;
                }
                double[] there = residuals(aside);
                for (int j = 0; j < here.length; j++) {
                    jacobian.setEntry(j, i, (there[j] - here[j]) / (aside[i] - home[i]));
                }
            }
            return jacobian;
        }
    }
}
