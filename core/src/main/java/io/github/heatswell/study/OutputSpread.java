package io.github.heatswell.study;

import java.util.Arrays;

/** Distribution of one output over the samples that have an answer. Immutable. */
public final class OutputSpread {

    private final double[] sorted;

    private OutputSpread(double[] sorted) {
        this.sorted = sorted;
    }

    /** The spread of the first {@code count} values, without those that are NaN. */
    static OutputSpread of(double[] values, int count) {
        double[] answers = new double[count];
        int answered = 0;
        for (int i = 0; i < count; i++) {
            if (!Double.isNaN(values[i])) {
                answers[answered++] = values[i] + 0.0; // makes -0.0 and 0.0 the same
            }
        }
        double[] sorted = Arrays.copyOf(answers, answered);
        Arrays.sort(sorted);
        return new OutputSpread(sorted);
    }

    /**
     * How many samples have an answer.
     *
     * @return the number
     */
    public int answered() {
        return sorted.length;
    }

    /**
     * The mean.
     *
     * @return the mean, in the unit of the output; NaN without answers
     */
    public double mean() {
        double sum = 0;
        for (double value : sorted) {
            sum += value;
        }
        return sum / sorted.length;
    }

    /**
     * The value that a share of the answers does not exceed, interpolated between neighbours: with the n answers in order,
     * that of place 1 + share (n - 1) (definition 7 of Hyndman and Fan, The American Statistician 50 (1996) 361; from
     * memory).
     *
     * @param share the share (-), 0 to 1, such as 0.05 or 0.95
     * @return the value, in the unit of the output; NaN without answers
     * @throws IllegalArgumentException if the share is outside its range
     */
    public double quantile(double share) {
        Checks.share(share);
        if (sorted.length == 0) {
            return Double.NaN;
        }
        double place = share * (sorted.length - 1);
        int below = (int) place;
        int above = Math.min(below + 1, sorted.length - 1);
        return sorted[below] + (place - below) * (sorted[above] - sorted[below]);
    }

    /**
     * The share of the answers that are larger than a threshold, as an estimate of the probability.
     *
     * @param threshold the threshold, in the unit of the output
     * @return the share with its standard error
     */
    public Share above(double threshold) {
        int count = 0;
        for (double value : sorted) {
            count += value > threshold ? 1 : 0;
        }
        return new Share(count, sorted.length);
    }
}
