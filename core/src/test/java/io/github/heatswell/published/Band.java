package io.github.heatswell.published;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * What is predicted where a source leaves something open: from the least to the most, in the unit of the figure.
 *
 * @param low the least
 * @param high the most, infinite where a run ended at the test pressure of the tank before the question was answered
 */
record Band(double low, double high) {

    Band {
        if (!(low <= high)) {
            throw new IllegalArgumentException("a band from " + low + " to " + high);
        }
    }

    static Band of(double... values) {
        return new Band(
                Arrays.stream(values).min().orElseThrow(),
                Arrays.stream(values).max().orElseThrow());
    }

    /** The band over all corners of the ranges of what is open: every combination of their given values. */
    static Band over(ToDoubleFunction<double[]> prediction, double[]... open) {
        List<double[]> corners = new ArrayList<>(List.of(new double[0]));
        for (double[] range : open) {
            List<double[]> longer = new ArrayList<>();
            for (double[] corner : corners) {
                for (double value : range) {
                    double[] next = Arrays.copyOf(corner, corner.length + 1);
                    next[corner.length] = value;
                    longer.add(next);
                }
            }
            corners = longer;
        }
        return of(corners.stream().mapToDouble(prediction).toArray());
    }

    static double[] open(double... values) {
        return values;
    }
}
