package io.github.heatswell.study;

/** Distribution of an uncertain number. Immutable; values are in whatever unit the caller chose. */
public sealed interface Distribution permits EvenSpread, NormalSpread {

    /**
     * Every value between two limits is equally likely, and none outside them: for a number of which nothing but its
     * limits is known (the rectangular distribution of JCGM 100:2008, 4.3.7; from memory).
     *
     * @param low the lowest value, in whatever unit the caller chose
     * @param high the highest value, in the same unit, above the lowest
     * @return the spread
     * @throws IllegalArgumentException if a number is not finite or the lowest is not below the highest
     */
    static Distribution between(double low, double high) {
        return new EvenSpread(low, high);
    }

    /**
     * Values near a best estimate are the likeliest: a normal distribution with 95 % of its values within the expanded
     * uncertainty (coverage factor 2 of JCGM 100:2008, 6.2; from memory), cut off at 1.5 times the expanded uncertainty,
     * which is three standard deviations.
     *
     * @param value the best estimate, in whatever unit the caller chose
     * @param expanded the expanded uncertainty, in the same unit, above 0: what stands behind "plus or minus"
     * @return the spread
     * @throws IllegalArgumentException if a number is not finite or the uncertainty is not above 0
     */
    static Distribution around(double value, double expanded) {
        return new NormalSpread(value, expanded);
    }

    /**
     * The value that a share of all values does not exceed.
     *
     * @param share the share (-), 0 to 1
     * @return the value, in the unit of the distribution, from {@link #low()} for 0 to {@link #high()} for 1
     * @throws IllegalArgumentException if the share is outside its range
     */
    double quantile(double share);

    /**
     * The middle of the spread: its mean and its median.
     *
     * @return the value, in the unit of the distribution
     */
    double centre();

    /**
     * The lowest value.
     *
     * @return the value, in the unit of the distribution
     */
    double low();

    /**
     * The highest value.
     *
     * @return the value, in the unit of the distribution
     */
    double high();

    /**
     * Whether nothing but limits is known of the number.
     *
     * @return true if every value between them is equally likely
     */
    default boolean onlyLimitsKnown() {
        return this instanceof EvenSpread;
    }
}
