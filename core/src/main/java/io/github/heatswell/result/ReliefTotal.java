package io.github.heatswell.result;

import java.util.Objects;

/**
 * Discharge of one relief valve in a run.
 *
 * @param name the valve
 * @param mass the water discharged (kg)
 * @param volume the same as cold water at air pressure (m3): what a bucket under the pipe would collect
 * @param openings how often the valve left its seat, 0 or more: as many as {@link RunSummary#openings}. Hot water fully
 *     opening a valve already lifted by pressure, and a valve open from the start, are not counted
 */
public record ReliefTotal(String name, double mass, double volume, int openings) {

    /**
     * Checks that the name is there.
     *
     * @param name the valve
     * @param mass the water discharged (kg)
     * @param volume the same as cold water at air pressure (m3): what a bucket under the pipe would collect
     * @param openings how often the valve left its seat, 0 or more: as many as {@link RunSummary#openings}. Hot water
     *     fully opening a valve already lifted by pressure, and a valve open from the start, are not counted
     */
    public ReliefTotal {
        Objects.requireNonNull(name, "name");
    }
}
