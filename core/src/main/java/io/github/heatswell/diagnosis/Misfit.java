package io.github.heatswell.diagnosis;

/**
 * What a hypothesis leaves unexplained of a log.
 *
 * @param reduced the sum of squares for each degree of freedom (-): about 1 if nothing but scatter is left
 * @param correlation the correlation of neighbouring residuals (-): about 0 if nothing but scatter is left
 * @param runs how many standard deviations the number of runs of equal sign lies from what scatter gives (-), below 0 for
 *     too few
 * @param systematic how far forecast and log lie apart for whole stretches (Pa, difference), scatter and steps subtracted
 * @param tolerated the largest such distance that the uncertainty of the log allows (Pa, difference)
 */
public record Misfit(double reduced, double correlation, double runs, double systematic, double tolerated) {

    private static final double TOO_MUCH = 2;

    /**
     * Whether the hypothesis leaves something unexplained that is more than the uncertainty of the readings.
     *
     * @return true if the readings are not explained
     */
    public boolean isSerious() {
        return reduced > TOO_MUCH || systematic > tolerated;
    }
}
