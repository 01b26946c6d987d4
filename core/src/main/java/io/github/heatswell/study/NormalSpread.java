package io.github.heatswell.study;

import org.hipparchus.distribution.continuous.NormalDistribution;

/**
 * Values near a best estimate are the likeliest; see {@link Distribution#around}.
 *
 * @param centre the best estimate
 * @param expanded the expanded uncertainty, two standard deviations, above 0
 */
record NormalSpread(double centre, double expanded) implements Distribution {

    private static final double COVERAGE_FACTOR = 2;
    private static final double CUT_OFF = 1.5;
    private static final NormalDistribution STANDARD = new NormalDistribution();
    private static final double BELOW_CUT_OFF = STANDARD.cumulativeProbability(-CUT_OFF * COVERAGE_FACTOR);

    /**
     * Checks the numbers.
     *
     * @param centre the best estimate
     * @param expanded the expanded uncertainty, two standard deviations, above 0
     * @throws IllegalArgumentException if a number is not finite or the uncertainty is not above 0
     */
    NormalSpread {
        Checks.finite("value", centre);
        Checks.finite("expanded", expanded);
        if (!(expanded > 0)) {
            throw new IllegalArgumentException("expanded: " + expanded + " must be above 0");
        }
        if (!(centre - CUT_OFF * expanded < centre && centre < centre + CUT_OFF * expanded)
                || !Double.isFinite(Math.abs(centre) + CUT_OFF * expanded)) {
            throw new IllegalArgumentException("expanded: " + expanded + " is too small or too large beside " + centre);
        }
    }

    @Override
    public double quantile(double share) {
        Checks.share(share);
        double kept = BELOW_CUT_OFF + share * (1 - 2 * BELOW_CUT_OFF);
        double value = centre + STANDARD.inverseCumulativeProbability(kept) * expanded / COVERAGE_FACTOR;
        if (share == 0 || share == 1) {
            return share == 0 ? low() : high();
        }
        return Math.max(low(), Math.min(high(), value));
    }

    @Override
    public double low() {
        return centre - CUT_OFF * expanded;
    }

    @Override
    public double high() {
        return centre + CUT_OFF * expanded;
    }
}
