package io.github.heatswell.result;

import java.util.Objects;
import java.util.Optional;

/**
 * Something that happened at a located moment. Immutable.
 *
 * @param time since the start of the run (s), 0 or more, located by root finding and not rounded to a sample
 * @param kind what happened
 * @param device the name of the relief valve, or of the element where there are two; empty for all other kinds
 * @param pressureAbsolute the system's pressure at that moment (Pa, absolute)
 * @param waterTemperature the mean water temperature at that moment (K)
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
     * Checks that kind and device are there, and that an opening, and nothing else, has a cause.
     *
     * @param time since the start of the run (s), 0 or more, located by root finding and not rounded to a sample
     * @param kind what happened
     * @param device the name of the relief valve, or of the element where there are two; empty for all other kinds
     * @param pressureAbsolute the system's pressure at that moment (Pa, absolute)
     * @param waterTemperature the mean water temperature at that moment (K)
     * @param cause what opened the relief valve; empty for all other kinds
     * @throws IllegalArgumentException if a relief valve opens without a cause, or anything else has one
     */
    public Event {
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(device, "device");
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
     * @param pressureAbsolute the system's pressure at that moment (Pa, absolute)
     * @param waterTemperature the mean water temperature at that moment (K)
     * @throws IllegalArgumentException if a relief valve opens: that needs a cause
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
}
