package io.github.heatswell.study;

import java.util.Arrays;

/** Numbers by their ranks, from 1 for the lowest; equal numbers share the mean of their ranks. Immutable. */
final class Ranks {

    private final double[] ranks;

    private Ranks(double[] ranks) {
        this.ranks = ranks;
    }

    /** The ranks of the first {@code count} values. */
    static Ranks of(double[] values, int count) {
        return new Ranks(ranks(values, count));
    }

    /**
     * Spearman's rank correlation with as many other numbers.
     *
     * @return -1 to 1; 0 if either side is constant
     */
    double correlation(Ranks other) {
        double mean = (ranks.length + 1) / 2.0;
        double both = 0;
        double square = 0;
        double otherSquare = 0;
        for (int i = 0; i < ranks.length; i++) {
            both += (ranks[i] - mean) * (other.ranks[i] - mean);
            square += (ranks[i] - mean) * (ranks[i] - mean);
            otherSquare += (other.ranks[i] - mean) * (other.ranks[i] - mean);
        }
        if (square == 0 || otherSquare == 0) {
            return 0;
        }
        return Math.max(-1, Math.min(1, both / Math.sqrt(square * otherSquare)));
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
