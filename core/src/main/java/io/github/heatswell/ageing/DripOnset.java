package io.github.heatswell.ageing;

import io.github.heatswell.study.OutputSpread;
import io.github.heatswell.study.Share;
import io.github.heatswell.study.StudyResult;
import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * When dripping begins, as far as it can be said: the house is followed through the years many times, each time with
 * other plausible values and another plausible rate of precharge loss. Immutable.
 */
public final class DripOnset {

    /** What a sample answers. */
    static final List<String> OUTPUTS = List.of("first dripping (years; the end of the look if none)", "drips in time");

    private static final double LOW = 0.05;
    private static final double HIGH = 0.95;

    private final StudyResult result;
    private final int years;

    DripOnset(StudyResult result, int years) {
        this.result = Objects.requireNonNull(result, "result");
        this.years = years;
    }

    /** The answers of one sample. */
    static double[] answers(OptionalDouble first, int years) {
        return new double[] {first.orElse(years), first.isPresent() ? 1 : 0};
    }

    /**
     * The time by which nine in ten samples have not begun earlier: one in twenty has.
     *
     * @return the 5 % quantile (years), or empty if it lies beyond the years looked at
     */
    public OptionalDouble early() {
        return quantile(LOW);
    }

    /**
     * The time by which half of the samples have begun.
     *
     * @return the median (years), or empty if it lies beyond the years looked at
     */
    public OptionalDouble middle() {
        return quantile(0.5);
    }

    /**
     * The time by which all but one in twenty samples have begun.
     *
     * @return the 95 % quantile (years), or empty if it lies beyond the years looked at
     */
    public OptionalDouble late() {
        return quantile(HIGH);
    }

    /**
     * How many of the samples drip before the years are over.
     *
     * @return the share, an estimate of the probability
     */
    public Share withinYears() {
        return spread(1).above(0.5);
    }

    /**
     * The samples, with what each of them was given.
     *
     * @return the result of the study
     */
    public StudyResult result() {
        return result;
    }

    private OptionalDouble quantile(double share) {
        double time = spread(0).quantile(share);
        return time < years ? OptionalDouble.of(time) : OptionalDouble.empty();
    }

    private OutputSpread spread(int output) {
        return result.spread(output);
    }
}
