package io.github.heatswell.result;

import java.util.Objects;
import java.util.Optional;

/**
 * Something that happened at a precisely located time. Immutable.
 *
 * @param time since the start of the run (s), 0 or more, located by root finding and not rounded to a sample
 * @param kind what happened
 * @param device the name of the relief valve, or of the element where there are two; empty for all other kinds
 * @param pressureAbsolute the pressure at that moment at the tank's drain cock (Pa, absolute), above 0; a device higher
 *     up sees less ({@link io.github.heatswell.system.HotWaterSystem#head})
 * @param waterTemperature the mean water temperature at that moment (K), above 0
 * @param cause what opened the relief valve; empty for all other kinds
 */
public record Event(
        double time,
        EventKind kind,
        String device,
        double pressureAbsolute,
        double waterTemperature,
        Optional<OpeningCause> cause) {

    /**
     * Checks that kind and device are there, that the numbers are in their ranges, and that an opening, and nothing
     * else, has a cause.
     *
     * @param time since the start of the run (s), 0 or more, located by root finding and not rounded to a sample
     * @param kind what happened
     * @param device the name of the relief valve, or of the element where there are two; empty for all other kinds
     * @param pressureAbsolute the pressure at that moment at the tank's drain cock (Pa, absolute), above 0; a device
     *     higher up sees less ({@link io.github.heatswell.system.HotWaterSystem#head})
     * @param waterTemperature the mean water temperature at that moment (K), above 0
     * @param cause what opened the relief valve; empty for all other kinds
     * @throws IllegalArgumentException if a number is NaN, infinite or outside its range, if a relief valve opens
     *     without a cause, or if anything else has one
     */
    public Event {
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(device, "device");
        require(time >= 0, "time", time, "s", "0 or more");
        require(pressureAbsolute > 0, "pressureAbsolute", pressureAbsolute, "Pa", "above 0");
        require(waterTemperature > 0, "waterTemperature", waterTemperature, "K", "above 0");
        if (Objects.requireNonNull(cause, "cause").isPresent() != kind.hasCause()) {
            throw new IllegalArgumentException(
                    kind.hasCause() ? "cause: " + kind + " needs one" : "cause: " + kind + " has none");
        }
    }

    /**
     * An event other than the opening of a relief valve.
     *
     * @param time since the start of the run (s), 0 or more
     * @param kind what happened
     * @param device the name of the relief valve, or of the element where there are two; empty for all other kinds
     * @param pressureAbsolute the pressure at that moment at the tank's drain cock (Pa, absolute), above 0; a device
     *     higher up sees less ({@link io.github.heatswell.system.HotWaterSystem#head})
     * @param waterTemperature the mean water temperature at that moment (K), above 0
     * @throws IllegalArgumentException if a number is NaN, infinite or outside its range, or if a relief valve opens:
     *     that needs a cause
     */
    public Event(double time, EventKind kind, String device, double pressureAbsolute, double waterTemperature) {
        this(time, kind, device, pressureAbsolute, waterTemperature, Optional.empty());
    }

    /**
     * Whether pressure opened a relief valve.
     *
     * @return true for an opening of which {@link OpeningCause#byPressure()} holds
     */
    public boolean openedByPressure() {
        return cause.filter(OpeningCause::byPressure).isPresent();
    }

    /**
     * Whether hot water opened a relief valve, or opened fully one that pressure had lifted.
     *
     * @return true for an opening of which {@link OpeningCause#byTemperature()} holds
     */
    public boolean openedByTemperature() {
        return cause.filter(OpeningCause::byTemperature).isPresent();
    }

    private static void require(boolean inRange, String field, double value, String unit, String range) {
        if (!inRange || value == Double.POSITIVE_INFINITY) {
            throw new IllegalArgumentException(
                    field + ": " + value + " " + unit + " is outside the allowed range, " + range);
        }
    }
}
