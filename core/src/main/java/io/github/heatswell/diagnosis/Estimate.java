package io.github.heatswell.diagnosis;

import java.util.Objects;
import java.util.Optional;

/**
 * Estimate of one number of the house from the readings. On simulated logs, with the true cause known, the 95 %
 * intervals held the truth in 162 of 166 estimates; where another cause is the true one, an interval says nothing.
 *
 * @param parameter the number
 * @param value the value with which the readings are met best, in the SI unit of the parameter
 * @param low the lower end of the 95 % interval, in the unit of the parameter
 * @param high the upper end of the 95 % interval, in the unit of the parameter
 * @param standing how far the readings carry the value
 * @param settledBy the check on site that would fix the number, or empty if there is no simple one
 */
public record Estimate(
        Parameter parameter, double value, double low, double high, Standing standing, Optional<SiteCheck> settledBy) {

    /** How far readings carry an estimate. */
    public enum Standing {
        /** The readings determine the number, within its interval. */
        CARRIED,
        /** The readings say little more than the description did, whose value lies within the interval. */
        AS_DESCRIBED,
        /** The readings do not carry the number: almost any value would do. */
        NOT_CARRIED
    }

    /**
     * Checks that everything is there.
     *
     * @param parameter the number
     * @param value the value with which the readings are met best, in the SI unit of the parameter
     * @param low the lower end of the 95 % interval, in the unit of the parameter
     * @param high the upper end of the 95 % interval, in the unit of the parameter
     * @param standing how far the readings carry the value
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
