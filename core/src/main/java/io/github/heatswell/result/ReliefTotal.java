package io.github.heatswell.result;

import java.util.Objects;

/**
 * What one relief valve gave off in a run.
 *
 * @param name the valve
 * @param mass the water given off (kg)
 * @param volume the same as cold water at the air's pressure (m3): what a bucket under the pipe would show
 * @param openings how often the valve left its seat, 0 or more: as many as {@link RunSummary#openings}. That hot water opens fully a
 *     valve that pressure has lifted, and that a valve stands open from the start, is not counted
 */
public record ReliefTotal(String name, double mass, double volume, int openings) {

    /**
     * Checks that the name is there.
     *
     * @param name the valve
     * @param mass the water given off (kg)
     * @param volume the same as cold water at the air's pressure (m3): what a bucket under the pipe would show
     * @param openings how often the valve left its seat, 0 or more: as many as {@link RunSummary#openings}. That hot water opens fully a
     *     valve that pressure has lifted, and that a valve stands open from the start, is not counted
     */
    public ReliefTotal {
        Objects.requireNonNull(name, "name");
    }
}
