package io.github.heatswell.study;

import io.github.heatswell.units.Limits;
import io.github.heatswell.units.RatioUnit;
import java.util.Objects;
import org.hipparchus.distribution.continuous.NormalDistribution;

/** Distribution of an uncertain number. Immutable; values are in whatever unit the caller chose. */
public final class Distribution {

    /** What a share of all values may be. */
    static final Limits SHARE = Limits.between("share", 0, 1);

    private static final double COVERAGE_FACTOR = 2;
    private static final double CUT_OFF = 1.5;
    private static final NormalDistribution STANDARD = new NormalDistribution();
    private static final double BELOW_CUT_OFF = STANDARD.cumulativeProbability(-CUT_OFF * COVERAGE_FACTOR);

    private final double low;
    private final double centre;
    private final double high;
    /** Two standard deviations; 0 where every value between the limits is equally likely. */
    private final double expanded;

    private Distribution(double low, double centre, double high, double expanded) {
        this.low = low;
        this.centre = centre;
        this.high = high;
        this.expanded = expanded;
    }

    /**
     * Every value between two limits is equally likely, and none outside them: for a number of which nothing but its
     * limits is known (the rectangular distribution of JCGM 100:2008, 4.3.7; from memory).
     *
     * @param low the lowest value, in whatever unit the caller chose
     * @param high the highest value, in the same unit, above the lowest
     * @return the distribution
     * @throws IllegalArgumentException if a number is not finite or the lowest is not below the highest
     */
    public static Distribution between(double low, double high) {
        finite("low", low);
        finite("high", high);
        if (!(low < high) || !Double.isFinite(high - low)) {
            throw new IllegalArgumentException(
                    "low: " + low + " must be below high, " + high + ", and the two a finite distance apart");
        }
        return new Distribution(low, low + 0.5 * (high - low), high, 0);
    }

    /**
     * Values near a best estimate are the likeliest: a normal distribution with 95 % of its values within the expanded
     * uncertainty (coverage factor 2 of JCGM 100:2008, 6.2; from memory), cut off at 1.5 times the expanded uncertainty,
     * which is three standard deviations.
     *
     * @param value the best estimate, in whatever unit the caller chose
     * @param expanded the expanded uncertainty, in the same unit, above 0: what stands behind "plus or minus"
     * @return the distribution
     * @throws IllegalArgumentException if a number is not finite or the uncertainty is not above 0
     */
    public static Distribution around(double value, double expanded) {
        finite("value", value);
        finite("expanded", expanded);
        if (!(expanded > 0)) {
            throw new IllegalArgumentException("expanded: " + expanded + " must be above 0");
        }
        double low = value - CUT_OFF * expanded;
        double high = value + CUT_OFF * expanded;
        if (!(low < value && value < high) || !Double.isFinite(Math.abs(value) + CUT_OFF * expanded)) {
            throw new IllegalArgumentException("expanded: " + expanded + " is too small or too large beside " + value);
        }
        return new Distribution(low, value, high, expanded);
    }

    /**
     * The value that a share of all values does not exceed.
     *
     * @param share the share (-), 0 to 1
     * @return the value, in the unit of the distribution, from {@link #low()} for 0 to {@link #high()} for 1
     * @throws IllegalArgumentException if the share is outside its range
     */
    public double quantile(double share) {
        double checked = SHARE.checkSi(share, RatioUnit.ONE);
        if (checked == 0 || checked == 1) {
            return checked == 0 ? low : high;
        }
        return Math.max(low, Math.min(high, onlyLimitsKnown() ? even(checked) : normal(checked)));
    }

    private double even(double share) {
        return low + share * (high - low);
    }

    private double normal(double share) {
        double kept = BELOW_CUT_OFF + share * (1 - 2 * BELOW_CUT_OFF);
        return centre + STANDARD.inverseCumulativeProbability(kept) * expanded / COVERAGE_FACTOR;
    }

    /**
     * The middle of the distribution: its mean and its median.
     *
     * @return the value, in the unit of the distribution
     */
    public double centre() {
        return centre;
    }

    /**
     * The lowest value.
     *
     * @return the value, in the unit of the distribution
     */
    public double low() {
        return low;
    }

    /**
     * The highest value.
     *
     * @return the value, in the unit of the distribution
     */
    public double high() {
        return high;
    }

    /**
     * Whether nothing but limits is known of the number.
     *
     * @return true if every value between them is equally likely
     */
    public boolean onlyLimitsKnown() {
        return expanded == 0;
    }

    /**
     * The expanded uncertainty.
     *
     * @return what stands behind "plus or minus", in the unit of the values; 0 where only limits are known
     */
    public double expanded() {
        return expanded;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Distribution that
                && low == that.low
                && centre == that.centre
                && high == that.high
                && expanded == that.expanded;
    }

    @Override
    public int hashCode() {
        return Objects.hash(low, centre, high, expanded);
    }

    private static void finite(String field, double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException(field + ": " + value + " is not a finite number");
        }
    }
}
