package io.github.heatswell.diagnosis;

import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;

/**
 * Misfit of a hypothesis to a log.
 *
 * @param reduced the sum of squares for each degree of freedom (-): about 1 if nothing but scatter is left
 * @param correlation the correlation of neighbouring residuals (-), the error of the model set apart: about 0 if nothing but scatter is left
 * @param runs how many standard deviations the number of runs of equal sign lies from what scatter gives (-), below 0
 *     for too few
 * @param systematic how far forecast and log lie apart for whole stretches (Pa, difference), scatter and steps
 *     subtracted
 * @param tolerated the largest such distance that the uncertainty of the log allows (Pa, difference)
 * @param readings how many readings the log has
 * @param strays the readings that are not explained at all, in their order
 */
public record Misfit(
        double reduced,
        double correlation,
        double runs,
        double systematic,
        double tolerated,
        int readings,
        List<Stray> strays) {

    /** A reading so many standard uncertainties from everything forecast about its time is not explained. */
    static final double ASTRAY = 5;

    private static final double TOO_MUCH = 2;
    /** So many standard deviations of chi-square above its mean is more than scatter makes of a few readings. */
    static final double MORE_THAN_SCATTER = 4;
    /** A logger sends a wild value now and then, but no more often than this; our own judgement. */
    static final double WILD = 0.05;

    /**
     * Copies the list.
     *
     * @param reduced the sum of squares for each degree of freedom (-)
     * @param correlation the correlation of neighbouring residuals (-)
     * @param runs how many standard deviations the number of runs of equal sign lies from what scatter gives (-)
     * @param systematic how far forecast and log lie apart for whole stretches (Pa, difference)
     * @param tolerated the largest such distance that the uncertainty of the log allows (Pa, difference)
     * @param readings how many readings the log has
     * @param strays the readings that are not explained at all, in their order
     */
    public Misfit {
        strays = List.copyOf(Objects.requireNonNull(strays, "strays"));
    }

    /**
     * A reading far from everything the gauge is forecast to show about its time.
     *
     * @param time when it was taken (s, in the time of the log)
     * @param read what was read (Pa, gauge)
     * @param expected what the gauge is forecast to show at that very time (Pa, gauge)
     * @param highest whether the log reads nowhere higher, wild values apart, and nothing like it is forecast within
     *     minutes
     * @param far whether it is missed by far more than gauges and descriptions are off, and is no slip of a logger
     */
    public record Stray(double time, double read, double expected, boolean highest, boolean far) {

        /**
         * How far it lies above what was forecast.
         *
         * @return the distance (Pa, difference), negative if it lies below
         */
        public double above() {
            return read - expected;
        }
    }

    /**
     * Whether the misfit exceeds the uncertainty of the readings, or leaves one unexplained on which the answer depends: the highest, or
     * one that is far off.
     *
     * @return true if the readings are not explained
     */
    public boolean isSerious() {
        return isLarge()
                || strays.size() > WILD * readings
                || strays.stream().anyMatch(stray -> stray.highest() || stray.far());
    }

    /**
     * Whether more than a single reading is missed by more than its uncertainty allows.
     *
     * @return false if all but one are explained
     */
    public boolean isLarge() {
        return reduced > Math.max(TOO_MUCH, 1 + MORE_THAN_SCATTER * Math.sqrt(2.0 / readings))
                || systematic > tolerated
                || strays.size() > Math.max(1, WILD * readings)
                || strays.stream()
                                .filter(stray -> stray.highest() || stray.far())
                                .count()
                        > 1;
    }

    /** Looks at what a forecast leaves of a log, and whether it looks like scatter. */
    static final class Residuals {

        private static final int STRETCHES = 16;
        /** So much of a reading's uncertainty may be systematic, for gauges are not better than that. */
        private static final double ALLOWED = 0.5;
        /**
         * So much (-) of what the log rises a description may be off for a while: a tank's volume is often ten percent from what owners say, and
         * the heater's input fifteen, of which what is left open takes up all but about a third; our own judgement.
         */
        private static final double OF_RISE = 0.05;

        private final PressureLog log;
        private final double[] left;
        /** What neither rounding nor the error of the model accounts for (standard uncertainties), outliers held back. */
        private final double[] beyond;

        Residuals(Target target, Forecaster.Forecast forecast) {
            log = target.log();
            left = new double[log.count()];
            Arrays.setAll(left, i -> target.isDrooping(i) ? 0 : forecast.gauge()[i] - log.gauge(i));
            beyond = target.ofLog(forecast);
        }

        Misfit misfit(double sumOfSquares, int residuals, int parameters, List<Stray> strays) {
            double reduced = sumOfSquares / Math.max(1, residuals - parameters);
            return new Misfit(reduced, correlation(), runs(), systematic(), tolerated(), left.length, strays);
        }

        private double tolerated() {
            double lowest = IntStream.range(0, log.count())
                    .mapToDouble(log::gauge)
                    .min()
                    .orElseThrow();
            return Math.max(Math.max(ALLOWED * log.uncertainty(), log.step() / 2), OF_RISE * (log.highest() - lowest));
        }

        private double correlation() {
            double products = 0;
            double squares = 0;
            for (int i = 1; i < beyond.length; i++) {
                products += beyond[i - 1] * beyond[i];
                squares += beyond[i] * beyond[i];
            }
            return squares == 0 ? 0 : products / squares;
        }

        /** A residual (standard uncertainties), outliers held back. */
        private double held(int index) {
            return Target.robust(left[index] / (log.weights().looseness(index) * log.uncertainty()));
        }

        /** The runs test of Wald and Wolfowitz (Annals of Mathematical Statistics 11, 1940; from memory). */
        private double runs() {
            int runs = 1;
            double above = left[0] > 0 ? 1 : 0;
            for (int i = 1; i < left.length; i++) {
                above += left[i] > 0 ? 1 : 0;
                runs += left[i] > 0 == left[i - 1] > 0 ? 0 : 1;
            }
            double below = left.length - above;
            double expected = 1 + 2 * above * below / left.length;
            double variance = (expected - 1) * (expected - 2) / (left.length - 1);
            return variance > 0 ? (runs - expected) / Math.sqrt(variance) : -Math.sqrt(left.length);
        }

        /** The largest mean over a stretch of the log, less what scatter and steps make of it. */
        private double systematic() {
            int length = Math.max(4, left.length / STRETCHES);
            double largest = 0;
            for (int from = 0; from + length <= left.length; from += Math.max(1, length / 2)) {
                double sum = 0;
                for (int i = from; i < from + length; i++) {
                    sum += held(i);
                }
                largest = Math.max(largest, Math.abs(sum / length));
            }
            double scatter = 3.5 * log.uncertainty() / Math.sqrt(length);
            double steps = log.step() > 2 * scatterOfLog() ? 0.5 * log.step() : 0;
            return Math.max(0, largest * log.uncertainty() - Math.max(scatter, steps));
        }

        /** With steps coarser than the scatter, a whole stretch may show the same number. */
        private double scatterOfLog() {
            return log.scatter();
        }
    }
}
