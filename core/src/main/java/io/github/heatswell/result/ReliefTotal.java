package io.github.heatswell.result;

import java.util.Objects;

/**
 * What one relief valve gave off in a run.
 *
 * @param name the valve
 * @param mass the water given off (kg)
 * @param volume the same as cold water at the air's pressure (m3): what a bucket under the pipe would show
 * @param openings how often the valve opened
 */
public record ReliefTotal(String name, double mass, double volume, int openings) {

    /**
     * Checks that the name is there.
     *
     * @param name the valve
     * @param mass the water given off (kg)
     * @param volume the same as cold water at the air's pressure (m3): what a bucket under the pipe would show
     * @param openings how often the valve opened
     */
    public ReliefTotal {
        Objects.requireNonNull(name, "name");
    }
}
