package io.github.heatswell.narrative;

import io.github.heatswell.study.SampledPeaks;
import io.github.heatswell.units.QuantityFormat;
import java.util.OptionalDouble;

/** What many samples found, in words. A share is said to be one of the samples. */
public final class SpreadWords {

    private static final double HUNDRED = 100;
    private static final int ENOUGH_FOR_TWENTIETHS = 40;

    private final SampledPeaks sampled;
    private final QuantityFormat amounts;

    public SpreadWords(SampledPeaks sampled, QuantityFormat amounts) {
        this.sampled = sampled;
        this.amounts = amounts;
    }

    /** A warning if a tank may burst, else nothing. */
    public String hazard() {
        int ended = sampled.endedEarly();
        return ended == 0
                ? ""
                : "Hazard: in " + share(ended)
                        + " the pressure reaches the test pressure of the tank, where the run ends.";
    }

    public String sentence() {
        if (sampled.reliefSetGauge().isEmpty() && sampled.dripping() == 0) {
            return "Half of the peaks lie above " + amounts.pressure(sampled.quantileGauge(0.5))
                    + ", one in twenty above " + amounts.pressure(sampled.quantileGauge(0.95));
        }
        return "The valve drips in " + share(sampled.dripping());
    }

    public String facts() {
        StringBuilder words = new StringBuilder(sampled.subject().strip());
        if (!words.isEmpty()) {
            words.append(' ');
        }
        boolean many = sampled.count() >= ENOUGH_FOR_TWENTIETHS;
        words.append(many ? "Nine in ten of the " : "The ")
                .append(sampled.count())
                .append(" samples peak between ");
        words.append(amounts.pressure(sampled.quantileGauge(many ? 0.05 : 0))).append(" and ");
        words.append(amounts.pressure(sampled.quantileGauge(many ? 0.95 : 1)));
        words.append(". These are shares of the samples; they say as much about real houses as the ranges that were"
                + " assumed for the inputs.");
        return words.toString();
    }

    /** So many samples, per hundred unless that would hide few or nearly all. */
    public String share(int samples) {
        int count = sampled.count();
        if (samples == 0 || samples == count) {
            return (samples == 0 ? "none of the " : "all ") + count + " houses sampled";
        }
        long rounded = Math.round(HUNDRED * samples / count);
        if (count <= HUNDRED || rounded == 0 || rounded == HUNDRED) {
            return samples + " of the " + count + " houses sampled";
        }
        return rounded + " of 100 such houses (" + samples + " of the " + count + " sampled)";
    }

    /** The same in a few words. */
    public String briefly(int samples) {
        double percent = HUNDRED * samples / sampled.count();
        long rounded = Math.round(percent);
        if (samples > 0 && rounded == 0) {
            return "less than 1 %";
        }
        return samples < sampled.count() && rounded == HUNDRED ? "more than 99 %" : rounded + " %";
    }

    public String reliefLine(OptionalDouble set) {
        int reached = sampled.count() - sampled.countBelow(set.orElseThrow());
        return "relief valve set, " + amounts.pressure(set.getAsDouble()) + ": reached by " + briefly(reached);
    }

    public String workingLine(OptionalDouble working) {
        double limit = working.orElseThrow();
        int above = 0;
        for (int i = sampled.count() - 1; i >= 0 && sampled.peakGauge(i) > limit; i--) {
            above++;
        }
        return "working pressure, " + amounts.pressure(limit) + ": exceeded by " + briefly(above);
    }
}
