package io.github.heatswell.study;

/**
 * How many of a number of samples have some property.
 *
 * @param count those that have it
 * @param of all that were looked at
 */
public record Share(int count, int of) {

    /**
     * The share, as an estimate of the probability.
     *
     * @return the share (-), 0 to 1; NaN of no samples
     */
    public double value() {
        return (double) count / of;
    }

    /**
     * The standard error of the share, {@code sqrt(p (1 - p) / n)} as for independent samples. The evenly strewn samples
     * of a study do better, so it errs on the safe side; but it is 0 where no sample, or every one, has the property, and
     * then only says that the probability is within about {@code 3 / n} of that.
     *
     * @return the standard error (-); NaN of no samples
     */
    public double standardError() {
        return Math.sqrt(value() * (1 - value()) / of);
    }
}
