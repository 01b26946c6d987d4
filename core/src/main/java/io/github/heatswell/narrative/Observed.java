package io.github.heatswell.narrative;

/**
 * What the samples of a run showed.
 *
 * @param samples how many there were
 * @param startPressureAbsolute the pressure of the first (Pa, absolute)
 * @param startTemperature the mean water temperature of the first (K)
 * @param relievedWhileFed the volume (m3, as cold water) that relief valves gave off while the supply replaced it; what
 *     lies between two samples counts only if a valve gives off water at both
 * @param drawsTooCool how many draws met water in the tank that was cooler than what was wanted at the tap
 */
public record Observed(
        long samples,
        double startPressureAbsolute,
        double startTemperature,
        double relievedWhileFed,
        long drawsTooCool) {}
