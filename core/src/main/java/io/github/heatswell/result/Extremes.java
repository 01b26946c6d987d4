package io.github.heatswell.result;

import java.util.Objects;

/**
 * The largest and smallest values of a run, taken from the continuous solution between the samples. Pressures are those
 * at the tank's drain cock; a device higher up sees less ({@link io.github.heatswell.system.HotWaterSystem#head}).
 *
 * @param highestPressure the highest pressure at the tank's drain cock (Pa, absolute)
 * @param lowestPressure the lowest pressure at the tank's drain cock (Pa, absolute)
 * @param highestTemperature the highest temperature of the hottest water (K)
 * @param mostVesselWater the most water the vessel held (m3); 0 without a vessel
 */
public record Extremes(
        Extreme highestPressure, Extreme lowestPressure, Extreme highestTemperature, Extreme mostVesselWater) {

    /** A pressure that moves less than this (Pa) is steady: own judgement. */
    private static final double STEADY = 5_000;

    /**
     * Checks that everything is there.
     *
     * @param highestPressure the highest pressure at the tank's drain cock (Pa, absolute)
     * @param lowestPressure the lowest pressure at the tank's drain cock (Pa, absolute)
     * @param highestTemperature the highest temperature of the hottest water (K)
     * @param mostVesselWater the most water the vessel held (m3); 0 without a vessel
     */
    public Extremes {
        Objects.requireNonNull(highestPressure, "highestPressure");
        Objects.requireNonNull(lowestPressure, "lowestPressure");
        Objects.requireNonNull(highestTemperature, "highestTemperature");
        Objects.requireNonNull(mostVesselWater, "mostVesselWater");
    }

    /**
     * Whether the pressure hardly moves: a gauge would not show it.
     *
     * @return true if it stays within 0.05 bar
     */
    public boolean isSteady() {
        return highestPressure.value() - lowestPressure.value() < STEADY;
    }

    /**
     * The largest or smallest value a quantity took in a run, and when. Taken from the continuous solution, so it may lie
     * between two samples.
     *
     * @param value the value, in the SI unit of the quantity
     * @param time since the start of the run (s) at which it was first taken
     */
    public record Extreme(double value, double time) {}
}
