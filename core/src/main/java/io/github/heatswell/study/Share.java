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
     * The standard error of the share, {@code sqrt(p (1 - p) / n)} as for independent samples. The low-discrepancy
     * samples of a study do better, so this is conservative; but it is 0 where no sample, or every one, has the
     * property: there {@link #furthest} says more.
     *
     * @return the standard error (-); NaN of no samples
     */
    public double standardError() {
        return Math.sqrt(value() * (1 - value()) / of);
    }

    /**
     * How far the probability may be from none, or from all, where no sample, or every one, has the property: the one-sided
     * limit of 95 % by Clopper and Pearson (Biometrika 26, 1934; from memory), {@code 1 - 0.05^(1/n)} or one less that.
     *
     * @return the highest probability that goes with none, or the lowest with all (-); NaN of no samples or in between
     */
    public double furthest() {
        double highest = 1 - Math.pow(0.05, 1.0 / of);
        return of == 0 || count > 0 && count < of ? Double.NaN : count == 0 ? highest : 1 - highest;
    }
}
