package io.github.heatswell.diagnosis;

import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.EigenDecompositionSymmetric;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;

/**
 * How the residuals of a trial change with each coordinate about a position, from central differences: what they say about the
 * position (the matrix of Gauss and Newton), how well it is known, and in which directions it is known least.
 */
final class Slopes {

    /** Beyond its range nothing is a value; so far (positions) out a parameter counts as tied down, weakly. */
    private static final double LOOSE = 1.0 / 900;

    private final RealMatrix slopes;
    private final RealMatrix information;
    private final RealMatrix covariance;

    /**
     * Slopes about a position.
     *
     * @param trial whose residuals
     * @param position about which position
     * @param lengths how far to either side each coordinate is moved
     */
    Slopes(Trial trial, double[] position, double[] lengths) {
        int count = lengths.length;
        slopes = new Array2DRowRealMatrix(trial.residuals(), count);
        for (int i = count - 1; i >= 0; i--) {
            double[] below = moved(trial, position, i, -lengths[i]);
            double[] above = moved(trial, position, i, lengths[i]);
            double[] low = trial.residuals(below);
            double[] high = trial.residuals(above);
            for (int j = 0; j < low.length; j++) {
                slopes.setEntry(j, i, (high[j] - low[j]) / (above[i] - below[i]));
            }
        }
        information = slopes.transposeMultiply(slopes);
        for (int i = 0; i < count; i++) {
            information.addToEntry(i, i, LOOSE);
        }
        covariance = new CholeskyDecomposition(information, 1e-6, 0).getSolver().getInverse();
    }

    private static double[] moved(Trial trial, double[] position, int index, double by) {
        double[] moved = position.clone();
        moved[index] += by;
        return trial.clamp(moved);
    }

    /** The change of each residual with each coordinate. */
    RealMatrix matrix() {
        return slopes.copy();
    }

    /** The standard deviation of each coordinate. */
    double[] deviations() {
        double[] deviations = new double[covariance.getRowDimension()];
        for (int i = 0; i < deviations.length; i++) {
            deviations[i] = Math.sqrt(covariance.getEntry(i, i));
        }
        return deviations;
    }

    /** How the position follows best when one coordinate is held elsewhere: the change of each for one of that. */
    double[] following(int index) {
        double[] all = covariance.getColumn(index);
        double own = all[index];
        for (int i = 0; i < all.length; i++) {
            all[i] /= own;
        }
        return all;
    }

    /** A step of one standard deviation in the direction that is known least (0), second least (1), and so on. */
    double[] weakest(int rank) {
        EigenDecompositionSymmetric parts = new EigenDecompositionSymmetric(information);
        int place = information.getRowDimension() - 1 - rank;
        return parts.getEigenvector(place)
                .mapMultiply(1 / Math.sqrt(parts.getEigenvalue(place)))
                .toArray();
    }

    /** The step that these slopes promise to lead from residuals to the least, across a direction and not along it. */
    double[] across(double[] residuals, double[] direction) {
        RealVector step = covariance.operate(slopes.transpose().operate(new ArrayRealVector(residuals, false)));
        RealVector along = new ArrayRealVector(direction).unitVector();
        return along.mapMultiply(step.dotProduct(along)).subtract(step).toArray();
    }
}
