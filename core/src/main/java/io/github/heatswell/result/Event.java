package io.github.heatswell.result;

import java.util.Objects;

/**
 * Something that happened at a located moment.
 *
 * @param time since the start of the run (s), 0 or more, located by root finding and not rounded to a sample
 * @param kind what happened
 * @param device the name of the relief valve, or empty for all other kinds
 * @param pressureAbsolute the system's pressure at that moment (Pa, absolute)
 * @param waterTemperature the mean water temperature at that moment (K)
 */
public record Event(double time, EventKind kind, String device, double pressureAbsolute, double waterTemperature) {

    /**
     * Checks that kind and device are there.
     *
     * @param time since the start of the run (s), 0 or more, located by root finding and not rounded to a sample
     * @param kind what happened
     * @param device the name of the relief valve, or empty for all other kinds
     * @param pressureAbsolute the system's pressure at that moment (Pa, absolute)
     * @param waterTemperature the mean water temperature at that moment (K)
     */
    public Event {
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(device, "device");
    }
}
