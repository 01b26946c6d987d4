package io.github.heatswell.diagnosis;

import java.util.Arrays;

/**
 * Scatter of a log's readings, estimated from the log itself: each reading is compared with the line between its
 * neighbours, which removes slow changes. The largest tenth, which holds jumps and outliers, is dropped. Where readings
 * are so far apart that more than a tenth of them hold real changes, the quieter half says much less, and is taken instead.
 *
 * <p>Rounding is an error of its own kind. Where the pressure rests, a quiet gauge shows the same digit for an hour, and a
 * hundred such readings say no more than one: that the pressure lies within half a step. Where noise carries the reading from
 * digit to digit, the mean of many tells more than one. {@link #hidden} is what no mean removes, {@link #error} what it does.
 *
 * @param scatter the standard deviation of a reading (Pa)
 * @param noise the part of the scatter that is not rounding (Pa)
 * @param step the distance of the marks or digits the readings fall on (Pa), 0 if none shows
 * @param measured whether the log is long enough to tell its scatter
 */
record LogNoise(double scatter, double noise, double step, boolean measured) {

    private static final double QUANTILE = 0.9;
    private static final double HALF = 0.5;
    /** The standard deviation of the smallest 90 % and 50 % of normal scatter, in that of all (truncated normal distribution). */
    private static final double OF_QUANTILE = 0.7894;

    private static final double OF_HALF = 0.3776;
    /** From so much less on, the quieter half shows that the rest is no scatter; scatter alone makes no such difference. */
    private static final double MUCH_LESS = 0.6;
    /** So few readings are mostly taken by hand and far apart: what they do between two of them is not known. */
    private static final int FEW = 30;
    /** No gauge of a household, and no description of the house, is better than this (Pa); common practice, no source. */
    private static final double MIN_NOISE = 1_000;
    /**
     * Scatter (Pa) taken where the log is too short to tell: half a mark of a dial to 14 bar or 200 psi, which are 0.2 bar or 2 psi apart,
     * is 1 psi; common practice, no source. What such a gauge is off all along is left open besides.
     */
    private static final double UNKNOWN = 7_000;
    /** Readings this close (Pa) are the same reading. */
    private static final double SAME = 1;
    /** So many different readings, all on marks this far apart (Pa) or further, are on them by no accident. */
    private static final int MANY = 10;

    private static final double MARKS = 2_000;
    /** Into no more parts is the smallest difference divided. */
    private static final int MAX_PARTS = 4;

    static LogNoise of(double[] times, double[] gauge) {
        double step = step(gauge);
        double scatter = scatter(times, gauge, step);
        double noise = Math.sqrt(Math.max(0, scatter * scatter - step * step / 12));
        return new LogNoise(Math.max(scatter, MIN_NOISE), noise, step, times.length >= FEW);
    }

    /** What is known of the scatter of a log, for so many of its readings. */
    LogNoise of(int readings) {
        return new LogNoise(scatter, noise, step, readings >= FEW);
    }

    /** The standard uncertainty (Pa) of one reading: scatter, but never less than the steps leave open. */
    double uncertainty() {
        return Math.max(scatter, step / Math.sqrt(12));
    }

    /** How far (Pa) the pressure may lie from what is read again and again: half a step where nothing but rounding is at work. */
    double hidden() {
        return step / 2 * constant();
    }

    /** The standard deviation (Pa) of a reading about what lies within {@link #hidden} of the pressure; it averages out. */
    double error() {
        double averaged = (1 - constant() * constant()) * step * step / 12;
        return Math.max(MIN_NOISE, Math.sqrt(noise * noise + averaged));
    }

    /**
     * The share of a rounding error that stays the same from reading to reading (-). Normal noise weakens the first harmonic of the
     * error by its characteristic function (theory of dither; from memory): half a step of noise leaves a hundredth.
     */
    private double constant() {
        return step == 0 ? 0 : Math.exp(-2 * Math.pow(Math.PI * noise / step, 2));
    }

    private static double scatter(double[] times, double[] gauge, double step) {
        if (times.length < FEW) {
            return UNKNOWN;
        }
        double[] squares = new double[times.length - 2];
        for (int i = 1; i < times.length - 1; i++) {
            double share = (times[i] - times[i - 1]) / (times[i + 1] - times[i - 1]);
            double difference = gauge[i] - (1 - share) * gauge[i - 1] - share * gauge[i + 1];
            squares[i - 1] = difference * difference / (1 + share * share + (1 - share) * (1 - share));
        }
        Arrays.sort(squares);
        double all = root(squares, QUANTILE) / OF_QUANTILE;
        double quiet = root(squares, HALF) / OF_HALF;
        // on coarse steps more than half of the readings may be the same
        return step == 0 && quiet < MUCH_LESS * all ? quiet : all;
    }

    /** The root of the mean of the smallest squares. */
    private static double root(double[] sorted, double share) {
        int kept = (int) Math.ceil(share * sorted.length);
        return Math.sqrt(Arrays.stream(sorted, 0, kept).sum() / kept);
    }

    /**
     * The smallest difference of two readings, or the largest part of it, of which all differences are multiples, if they are so
     * often or are so many. Where the pressure changes fast no two readings may be on neighbouring digits.
     */
    private static double step(double[] gauge) {
        double[] sorted = gauge.clone();
        Arrays.sort(sorted);
        double smallest = Double.POSITIVE_INFINITY;
        int levels = 1;
        for (int i = 1; i < sorted.length; i++) {
            double difference = sorted[i] - sorted[i - 1];
            if (difference > SAME) {
                smallest = Math.min(smallest, difference);
                levels++;
            }
        }
        boolean repeated = levels > 1 && levels * 3 <= sorted.length + 3;
        // a few levels are multiples of some part by accident
        for (int parts = 1; parts == 1 || parts <= MAX_PARTS && levels > 2 * parts; parts++) {
            double step = smallest / parts;
            boolean coarse = repeated || levels >= MANY && step > MARKS;
            if (coarse && multiples(sorted, step)) {
                return step;
            }
        }
        return 0;
    }

    private static boolean multiples(double[] sorted, double step) {
        for (double value : sorted) {
            double steps = (value - sorted[0]) / step;
            if (Math.abs(steps - Math.rint(steps)) > 0.05 * Math.max(1, 0.02 * steps)) {
                return false;
            }
        }
        return true;
    }
}
