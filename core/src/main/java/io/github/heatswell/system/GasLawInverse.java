package io.github.heatswell.system;

/**
 * A law of a vessel's gas and its inverse, in shares of the vessel's volume. Beyond the empty vessel and its limit, where only
 * trial states of a solver lie, the pressure goes on along a straight line.
 *
 * @param law the law
 * @param least the share (-) of the volume left to the gas at the limit
 */
record GasLawInverse(GasLaw law, double least) {

    /** A share is found this closely (-), */
    private static final double ACCURACY = 1e-13;
    /** in no more steps than this: halving alone needs so many. */
    private static final int MAX_STEPS = 60;

    /** Pressure (Pa, absolute) at a share of the volume (-). */
    double pressure(double charge, double share, double warmth) {
        if (!(share < least || share > 1)) {
            return law.pressure(charge, share, warmth);
        }
        double end = share > 1 ? 1 : least;
        return law.pressure(charge, end, warmth) + (share - end) * law.byShare(charge, end, warmth);
    }

    /**
     * The share of the volume (-) at a pressure (Pa, absolute): by Newton's method, kept between two shares that enclose it. It is
     * NaN where the law is.
     */
    double share(double charge, double pressure, double warmth) {
        double empty = law.pressure(charge, 1, warmth);
        if (!(pressure > empty)) {
            return 1 + (pressure - empty) / law.byShare(charge, 1, warmth);
        }
        double full = law.pressure(charge, least, warmth);
        if (pressure >= full) {
            return least + (pressure - full) / law.byShare(charge, least, warmth);
        }
        double low = least;
        double high = 1;
        double guess = Math.max(least, empty / pressure);
        double last = Double.POSITIVE_INFINITY;
        for (int i = 0; i < MAX_STEPS && Math.abs(guess - last) > ACCURACY; i++) {
            last = guess;
            double over = law.pressure(charge, last, warmth) - pressure;
            if (Double.isNaN(over)) {
                return Double.NaN;
            }
            if (over > 0) {
                low = last;
            } else {
                high = last;
            }
            guess = last - over / law.byShare(charge, last, warmth);
            if (!(guess >= low && guess <= high)) {
                guess = (low + high) / 2;
            }
        }
        return guess;
    }
}
