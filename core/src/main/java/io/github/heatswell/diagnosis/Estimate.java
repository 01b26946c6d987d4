package io.github.heatswell.diagnosis;

import java.util.Objects;
import java.util.Optional;

/**
 * Estimate of one number of the house from the readings. On simulated logs with a known cause, the 95 % intervals
 * contained the true value in 162 of 166 estimates; if another cause is true, an interval means nothing.
 *
 * @param parameter the number
 * @param value the best-fitting value, in the SI unit of the parameter
 * @param low the lower end of the 95 % interval, in the unit of the parameter
 * @param high the upper end of the 95 % interval, in the unit of the parameter
 * @param standing how well the readings determine the value
 * @param settledBy the check on site that would fix the number, or empty if there is no simple one
 */
public record Estimate(
        Parameter parameter, double value, double low, double high, Standing standing, Optional<SiteCheck> settledBy) {

    /** How well readings determine an estimate. */
    public enum Standing {
        /** The readings determine the number, within its interval. */
        CARRIED,
        /** The readings add little to the description, whose value lies within the interval. */
        AS_DESCRIBED,
        /** The readings do not determine the number: almost any value would fit. */
        NOT_CARRIED
    }

    /**
     * Checks that everything is there.
     *
     * @param parameter the number
     * @param value the best-fitting value, in the SI unit of the parameter
     * @param low the lower end of the 95 % interval, in the unit of the parameter
     * @param high the upper end of the 95 % interval, in the unit of the parameter
     * @param standing how well the readings determine the value
     * @param settledBy the check on site that would fix the number, or empty if there is no simple one
     */
    public Estimate {
        Objects.requireNonNull(parameter, "parameter");
        Objects.requireNonNull(standing, "standing");
        Objects.requireNonNull(settledBy, "settledBy");
    }

    /**
     * Whether a value lies within the interval.
     *
     * @param candidate the value, in the SI unit of the parameter
     * @return true if it lies between both ends or on one
     */
    public boolean contains(double candidate) {
        return candidate >= low && candidate <= high;
    }
}
