package io.github.heatswell.study;

/**
 * Every value between two limits is equally likely; see {@link Distribution#between}.
 *
 * @param low the lowest value
 * @param high the highest value, above the lowest
 */
record EvenSpread(double low, double high) implements Distribution {

    /**
     * Checks the limits.
     *
     * @param low the lowest value
     * @param high the highest value, above the lowest
     * @throws IllegalArgumentException if a number is not finite or the lowest is not below the highest
     */
    EvenSpread {
        Checks.finite("low", low);
        Checks.finite("high", high);
        if (!(low < high) || !Double.isFinite(high - low)) {
            throw new IllegalArgumentException(
                    "low: " + low + " must be below high, " + high + ", and the two a finite distance apart");
        }
    }

    @Override
    public double quantile(double share) {
        Checks.share(share);
        return share == 1 ? high : Math.min(high, low + share * (high - low));
    }

    @Override
    public double centre() {
        return low + 0.5 * (high - low);
    }
}
