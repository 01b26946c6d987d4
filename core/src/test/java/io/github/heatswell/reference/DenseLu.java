package io.github.heatswell.reference;

/** Gaussian elimination with partial pivoting for the small dense systems of an implicit step. */
final class DenseLu {

    private final int size;
    private final double[][] matrix;
    private final int[] pivots;

    /**
     * Prepares storage.
     *
     * @param size the number of unknowns
     */
    DenseLu(int size) {
        this.size = size;
        matrix = new double[size][size];
        pivots = new int[size];
    }

    /** {@return the matrix to be filled before {@link #factor()}, which overwrites it} */
    double[][] matrix() {
        return matrix;
    }

    /**
     * Factors the matrix in place.
     *
     * @throws ArithmeticException if it is singular
     */
    void factor() {
        for (int k = 0; k < size; k++) {
            int pivot = largestBelow(k);
            pivots[k] = pivot;
            double[] row = matrix[pivot];
            matrix[pivot] = matrix[k];
            matrix[k] = row;
            if (!(Math.abs(row[k]) > 0)) {
                throw new ArithmeticException("singular matrix in an implicit step");
            }
            for (int i = k + 1; i < size; i++) {
                double factor = matrix[i][k] / row[k];
                matrix[i][k] = factor;
                if (factor != 0) {
                    for (int j = k + 1; j < size; j++) {
                        matrix[i][j] -= factor * row[j];
                    }
                }
            }
        }
    }

    private int largestBelow(int k) {
        int pivot = k;
        for (int i = k + 1; i < size; i++) {
            if (Math.abs(matrix[i][k]) > Math.abs(matrix[pivot][k])) {
                pivot = i;
            }
        }
        return pivot;
    }

    /**
     * Solves with the factored matrix.
     *
     * @param b the right-hand side on entry, the solution on return
     */
    void solve(double[] b) {
        // Rows were swapped together with their multipliers, so all exchanges come before the elimination.
        for (int k = 0; k < size; k++) {
            double swap = b[pivots[k]];
            b[pivots[k]] = b[k];
            b[k] = swap;
        }
        for (int i = 1; i < size; i++) {
            double sum = b[i];
            for (int j = 0; j < i; j++) {
                sum -= matrix[i][j] * b[j];
            }
            b[i] = sum;
        }
        for (int i = size - 1; i >= 0; i--) {
            double sum = b[i];
            for (int j = i + 1; j < size; j++) {
                sum -= matrix[i][j] * b[j];
            }
            b[i] = sum / matrix[i][i];
        }
    }
}
