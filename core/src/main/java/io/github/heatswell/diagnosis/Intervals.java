package io.github.heatswell.diagnosis;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.RealMatrix;

/**
 * How well each parameter of a finished search is known. First the covariance, from differences as long as the uncertainty itself,
 * so that an event between two samples does not pass for a slope. Where that leaves a wide interval, or one that ends at the range,
 * the profile of the sum of squares decides: the parameter is held further and further out, all others are
 * fitted again, and the interval ends where the sum has grown by 3.84, the 95 % point of chi-square with one degree of
 * freedom.
 */
final class Intervals {

    private static final double NORMAL_95 = 1.96;
    private static final double CHI_SQUARE_95 = 3.84;
    /** Beyond its range nothing is a value; so far (positions) out a parameter counts as tied down, weakly. */
    private static final double LOOSE = 1.0 / 900;
    /** An interval wider than this (positions) is checked by the profile. */
    private static final double WIDE = 1.0;
    /** An interval that covers more than this of the range carries nothing. */
    private static final double ALMOST_ALL = 0.6;

    private static final double MAY_DO = 40;
    private static final double HARDLY_BETTER = 0.75;
    private static final double SHORTEST = 0.002;
    private static final double LONGEST = 0.7;
    private static final int HALVINGS = 3;

    private final Trial trial;
    private final Search.End end;
    private final double inflation;

    /**
     * Intervals about the end of a search.
     *
     * @param trial what was searched
     * @param end where it ended
     * @param inflation how much larger the variance is than the uncertainty of the readings says, at least 1
     */
    Intervals(Trial trial, Search.End end, double inflation) {
        this.trial = trial;
        this.end = end;
        this.inflation = inflation;
    }

    List<Estimate> estimates(boolean withProfiles) {
        double[] first = deviations(lengths(null));
        double[] deviations = deviations(lengths(first));
        List<Estimate> estimates = new ArrayList<>();
        for (int i = 0; i < deviations.length; i++) {
            double reach = NORMAL_95 * deviations[i] * Math.sqrt(inflation);
            double[] interval = {end.position()[i] - reach, end.position()[i] + reach};
            FreeParameter parameter = trial.parameters().get(i);
            if (withProfiles && parameter.isOpen() && needsProfile(i, interval)) {
                interval[0] = profileEnd(i, -1);
                interval[1] = profileEnd(i, 1);
            }
            estimates.add(estimate(parameter, end.position()[i], interval));
        }
        return List.copyOf(estimates);
    }

    private boolean needsProfile(int index, double[] interval) {
        FreeParameter parameter = trial.parameters().get(index);
        return mayReach(index, parameter.low())
                || mayReach(index, parameter.high())
                || interval[1] - interval[0] > WIDE
                || parameter.clamp(interval[0]) != interval[0]
                || parameter.clamp(interval[1]) != interval[1];
    }

    /** Whether the end of the range might do, by the look of it. */
    private boolean mayReach(int index, double value) {
        double[] position = end.position().clone();
        position[index] = trial.parameters().get(index).position(value);
        return Trial.sumOfSquares(trial.residuals(position)) - end.cost() < MAY_DO;
    }

    private static Estimate estimate(FreeParameter free, double position, double[] interval) {
        double low = free.clamp(interval[0]);
        double high = free.clamp(interval[1]);
        double range = free.position(free.high()) - free.position(free.low());
        Estimate.Standing standing = Estimate.Standing.CARRIED;
        if (free.isOpen() && high - low > ALMOST_ALL * range) {
            standing = Estimate.Standing.NOT_CARRIED;
        } else if (!free.isOpen() && high - low > 2 * NORMAL_95 * HARDLY_BETTER) {
            standing = Estimate.Standing.AS_DESCRIBED;
        }
        return new Estimate(
                free.parameter(),
                free.value(position),
                free.value(low),
                free.value(high),
                standing,
                Optional.ofNullable(free.parameter().settledBy()));
    }

    private double[] lengths(double[] deviations) {
        double[] lengths = new double[end.position().length];
        for (int i = 0; i < lengths.length; i++) {
            lengths[i] = deviations == null
                    ? Search.DIFFERENCE
                    : Math.min(LONGEST, Math.max(SHORTEST, deviations[i] * Math.sqrt(inflation)));
        }
        return lengths;
    }

    /** The standard deviation of each position. */
    private double[] deviations(double[] lengths) {
        int count = lengths.length;
        RealMatrix slopes = new Array2DRowRealMatrix(trial.target().count() + count, count);
        for (int i = 0; i < count; i++) {
            double[] below = moved(i, -lengths[i]);
            double[] above = moved(i, lengths[i]);
            double[] low = trial.residuals(below);
            double[] high = trial.residuals(above);
            for (int j = 0; j < low.length; j++) {
                slopes.setEntry(j, i, (high[j] - low[j]) / (above[i] - below[i]));
            }
        }
        RealMatrix information = slopes.transposeMultiply(slopes);
        for (int i = 0; i < count; i++) {
            information.addToEntry(i, i, LOOSE);
        }
        RealMatrix covariance =
                new CholeskyDecomposition(information, 1e-6, 0).getSolver().getInverse();
        double[] deviations = new double[count];
        for (int i = 0; i < count; i++) {
            deviations[i] = Math.sqrt(covariance.getEntry(i, i));
        }
        return deviations;
    }

    private double[] moved(int index, double by) {
        double[] position = end.position().clone();
        position[index] += by;
        return trial.clamp(position);
    }

    /** Where, in one direction, the profile has grown too much: the end of the range, or found by halving. */
    private double profileEnd(int index, int direction) {
        FreeParameter free = trial.parameters().get(index);
        double limit = end.position()[index];
        double far = free.position(direction < 0 ? free.low() : free.high());
        double[] start = end.position().clone();
        start[index] = far;
        if (tolerable(Search.holding(trial, index, start))) {
            return far;
        }
        for (int i = 0; i < HALVINGS + 2; i++) {
            double middle = 0.5 * (limit + far);
            start[index] = middle;
            Search.End held = Search.holding(trial, index, start);
            if (tolerable(held)) {
                limit = middle;
                start = held.position().clone();
            } else {
                far = middle;
            }
        }
        return far;
    }

    private boolean tolerable(Search.End held) {
        return held.cost() - end.cost() < CHI_SQUARE_95 * inflation;
    }
}
