package io.github.heatswell.study;

import io.github.heatswell.units.Limits;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * Peaks of many houses within the uncertainties, and the influence of each input. Shares refer to the samples only.
 * Immutable.
 */
public final class SampledPeaks {

    private final double[] peaks;
    private final StudyResult.Spread spread;
    private final OptionalDouble reliefSet;
    private final boolean reliefVaries;
    private final OptionalDouble limit;
    private final OptionalDouble workingPressure;
    private final boolean workingPressureAssumed;
    private final int dripping;
    private final int endedEarly;
    private final List<Influence> influences;
    private final String subject;

    private SampledPeaks(Builder from) {
        peaks = from.peaks;
        spread = StudyResult.Spread.of(peaks, peaks.length);
        reliefSet = from.reliefSet;
        reliefVaries = from.reliefVaries;
        limit = from.limit;
        workingPressure = from.workingPressure;
        workingPressureAssumed = from.workingPressureAssumed;
        dripping = from.dripping.orElse(reliefSet.isPresent() ? peaks.length - countBelow(reliefSet.getAsDouble()) : 0);
        endedEarly = from.endedEarly;
        influences = List.copyOf(from.influences.stream()
                .sorted(Comparator.comparingDouble(influence -> -Math.abs(influence.rankCorrelation())))
                .toList());
        subject = from.subject;
    }

    /**
     * Influence of an input on the peak.
     *
     * @param name what the input is called
     * @param rankCorrelation the correlation of its rank with that of the peak (-), -1 to 1: above 0 if more of it
     *     raises the peak
     */
    public record Influence(String name, double rankCorrelation) {

        /**
         * Checks the range.
         *
         * @param name what the input is called
         * @param rankCorrelation the correlation of its rank with that of the peak (-), -1 to 1
         * @throws IllegalArgumentException if the name is blank or the correlation outside its range
         */
        public Influence {
            if (name.isBlank()) {
                throw new IllegalArgumentException("influence: needs a name");
            }
            if (!(Math.abs(rankCorrelation) <= 1)) {
                throw new IllegalArgumentException(
                        "influence: " + rankCorrelation + " of \"" + name + "\" is outside the allowed range, -1 to 1");
            }
        }
    }

    /**
     * Starts with the peaks.
     *
     * @param peaksGauge the highest pressure of each sample (Pa, gauge), 2 or more, in any order
     * @return a builder
     * @throws IllegalArgumentException if there are fewer than 2, or if one is not a finite number
     */
    public static Builder builder(double... peaksGauge) {
        return new Builder(peaksGauge);
    }

    /**
     * How many samples there are.
     *
     * @return the number, at least 2
     */
    public int count() {
        return peaks.length;
    }

    /**
     * A peak in rising order.
     *
     * @param rank its place, counted from 0
     * @return the peak (Pa, gauge)
     */
    public double peakGauge(int rank) {
        return peaks[rank];
    }

    /**
     * The peak that a share of the samples does not exceed, as {@link StudyResult.Spread#quantile} defines it.
     *
     * @param share the share (-), 0 to 1
     * @return the peak (Pa, gauge)
     * @throws IllegalArgumentException if the share is outside its range
     */
    public double quantileGauge(double share) {
        return spread.quantile(share);
    }

    /**
     * How many samples peak below a pressure.
     *
     * @param gauge the pressure (Pa, gauge)
     * @return the number of samples
     */
    public int countBelow(double gauge) {
        int below = 0;
        while (below < peaks.length && peaks[below] < gauge) {
            below++;
        }
        return below;
    }

    /**
     * The set pressure of the relief valve; as described, where every sample has its own.
     *
     * @return the pressure (Pa, gauge), or empty
     */
    public OptionalDouble reliefSetGauge() {
        return reliefSet;
    }

    /**
     * Whether every sample has its own set pressure.
     *
     * @return whether it is uncertain
     */
    public boolean reliefVaries() {
        return reliefVaries;
    }

    /**
     * What a vessel is sized to keep the peak below.
     *
     * @return the pressure (Pa, gauge), or empty
     */
    public OptionalDouble limitGauge() {
        return limit;
    }

    /**
     * The working pressure of the tank.
     *
     * @return the pressure (Pa, gauge), or empty
     */
    public OptionalDouble workingPressureGauge() {
        return workingPressure;
    }

    /**
     * Tells whether that working pressure is assumed.
     *
     * @return true if nobody read it on the tank's plate
     */
    public boolean isWorkingPressureAssumed() {
        return workingPressureAssumed;
    }

    /**
     * In how many samples a relief valve drips.
     *
     * @return as given, else the number of samples whose peak reaches the set pressure
     */
    public int dripping() {
        return dripping;
    }

    /**
     * How many runs ended in a hazard, so that their peak is at least what is given.
     *
     * @return the number of samples
     */
    public int endedEarly() {
        return endedEarly;
    }

    /**
     * The influence of the inputs on the peak.
     *
     * @return the inputs, the strongest first
     */
    public List<Influence> influences() {
        return influences;
    }

    /**
     * What was sampled, in words.
     *
     * @return a sentence, possibly empty
     */
    public String subject() {
        return subject;
    }

    /** Builds {@link SampledPeaks}. */
    public static final class Builder {
        private final double[] peaks;
        private OptionalDouble reliefSet = OptionalDouble.empty();
        private boolean reliefVaries;
        private OptionalDouble limit = OptionalDouble.empty();
        private OptionalDouble workingPressure = OptionalDouble.empty();
        private boolean workingPressureAssumed;
        private OptionalInt dripping = OptionalInt.empty();
        private int endedEarly;
        private final List<Influence> influences = new ArrayList<>();
        private String subject = "";

        private Builder(double... peaksGauge) {
            if (Objects.requireNonNull(peaksGauge, "peaks").length < 2) {
                throw new IllegalArgumentException(
                        "peaks: " + peaksGauge.length + " are too few; 2 or more are needed");
            }
            peaks = peaksGauge.clone();
            Arrays.sort(peaks);
            for (double peak : peaks) {
                finite("peaks", peak);
            }
        }

        /**
         * Sets the set pressure of the relief valve.
         *
         * @param gauge the pressure (Pa, gauge)
         * @return this builder
         */
        public Builder reliefSet(double gauge) {
            reliefSet = OptionalDouble.of(finite("relief-set", gauge));
            return this;
        }

        /**
         * Says that every sample has its own set pressure.
         *
         * @param varies whether that pressure is uncertain
         * @return this builder
         */
        public Builder reliefVaries(boolean varies) {
            reliefVaries = varies;
            return this;
        }

        /**
         * Sets what a vessel is sized to keep the peak below.
         *
         * @param gauge the pressure (Pa, gauge)
         * @return this builder
         */
        public Builder limit(double gauge) {
            limit = OptionalDouble.of(finite("limit", gauge));
            return this;
        }

        /**
         * Sets the working pressure of the tank.
         *
         * @param gauge the pressure (Pa, gauge)
         * @return this builder
         */
        public Builder workingPressure(double gauge) {
            workingPressure = OptionalDouble.of(finite("working-pressure", gauge));
            return this;
        }

        /**
         * Sets a working pressure that nobody read on the tank's plate.
         *
         * @param gauge the pressure that is assumed (Pa, gauge)
         * @return this builder
         */
        public Builder assumedWorkingPressure(double gauge) {
            workingPressureAssumed = true;
            return workingPressure(gauge);
        }

        /**
         * Sets in how many samples a relief valve drips, where that does not follow from one set pressure.
         *
         * @param samples the number of samples, 0 to all
         * @return this builder
         * @throws IllegalArgumentException if the number is outside its range
         */
        public Builder dripping(int samples) {
            dripping = OptionalInt.of(Limits.whole("dripping", samples, 0, peaks.length));
            return this;
        }

        /**
         * Sets how many runs ended in a hazard.
         *
         * @param samples the number of samples, 0 to all
         * @return this builder
         * @throws IllegalArgumentException if the number is outside its range
         */
        public Builder endedEarly(int samples) {
            endedEarly = Limits.whole("ended-early", samples, 0, peaks.length);
            return this;
        }

        /**
         * Adds the influence of an input on the peak.
         *
         * @param value the input and its rank correlation
         * @return this builder
         */
        public Builder influence(Influence value) {
            influences.add(Objects.requireNonNull(value, "influence"));
            return this;
        }

        /**
         * Says what was sampled.
         *
         * @param value a sentence
         * @return this builder
         */
        public Builder subject(String value) {
            subject = Objects.requireNonNull(value, "subject");
            return this;
        }

        /**
         * Completes the description.
         *
         * @return the peaks
         */
        public SampledPeaks build() {
            return new SampledPeaks(this);
        }

        private static double finite(String field, double value) {
            if (!(Math.abs(value) < Double.POSITIVE_INFINITY)) {
                throw new IllegalArgumentException(field + ": " + value + " is not a finite number");
            }
            return value;
        }
    }
}
