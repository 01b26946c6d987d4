package io.github.heatswell.charts;

import io.github.heatswell.plant.HotWaterSystem;
import io.github.heatswell.plant.ReliefValve;
import io.github.heatswell.result.Event;
import io.github.heatswell.result.EventKind;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;

/** What made a relief valve open. */
public enum OpeningCause {
    /** The pressure reached the valve's set pressure. */
    PRESSURE,
    /** The hottest water reached the temperature at which the valve opens. */
    TEMPERATURE;

    /** A valve that opens this far (Pa) below its set pressure did not open by pressure. */
    private static final double BELOW = 2_000;

    /**
     * The cause of an opening, from the pressure at which it happened.
     *
     * @param system the system
     * @param event any event of its run
     * @return the cause, or empty if the event is no opening of one of the system's valves
     */
    public static Optional<OpeningCause> of(HotWaterSystem system, Event event) {
        if (Objects.requireNonNull(event, "event").kind() != EventKind.RELIEF_OPENED) {
            return Optional.empty();
        }
        return system.reliefValves().stream()
                .filter(valve -> valve.name().equals(event.device()))
                .findFirst()
                .map(valve -> of(system, valve, event));
    }

    /**
     * The cause as files write it.
     *
     * @return the name in lower case
     */
    public String label() {
        return name().toLowerCase(Locale.ROOT);
    }

    private static OpeningCause of(HotWaterSystem system, ReliefValve valve, Event event) {
        double gauge = event.pressureAbsolute() - system.site().atmosphere();
        boolean minds = valve.opensAtTemperature().isPresent();
        return minds && gauge < AtDrainCock.opens(system, valve) - BELOW ? TEMPERATURE : PRESSURE;
    }
}
