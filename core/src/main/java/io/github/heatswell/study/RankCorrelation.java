package io.github.heatswell.study;

import java.util.Arrays;

/** Spearman's rank correlation: the correlation of ranks, where equal values share the mean of their ranks. */
final class RankCorrelation {

    private RankCorrelation() {}

    /**
     * The correlation of the first {@code count} pairs.
     *
     * @return -1 to 1; 0 if either side is constant
     */
    static double of(double[] x, double[] y, int count) {
        double[] ranksX = ranks(x, count);
        double[] ranksY = ranks(y, count);
        double mean = (count + 1) / 2.0;
        double both = 0;
        double squareX = 0;
        double squareY = 0;
        for (int i = 0; i < count; i++) {
            both += (ranksX[i] - mean) * (ranksY[i] - mean);
            squareX += (ranksX[i] - mean) * (ranksX[i] - mean);
            squareY += (ranksY[i] - mean) * (ranksY[i] - mean);
        }
        if (squareX == 0 || squareY == 0) {
            return 0;
        }
        return Math.max(-1, Math.min(1, both / Math.sqrt(squareX * squareY)));
    }

    private static double[] ranks(double[] values, int count) {
        double[] sorted = Arrays.copyOf(values, count);
        Arrays.sort(sorted);
        double[] ranks = new double[count];
        for (int i = 0; i < count; i++) {
            int first = first(sorted, values[i], false);
            int beyond = first(sorted, values[i], true);
            ranks[i] = (first + 1 + beyond) / 2.0;
        }
        return ranks;
    }

    /** The index of the first value that is not below (or, beyond, that is above) the given one. */
    private static int first(double[] sorted, double value, boolean beyond) {
        int low = 0;
        int high = sorted.length;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (sorted[middle] < value || beyond && sorted[middle] == value) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }
}
