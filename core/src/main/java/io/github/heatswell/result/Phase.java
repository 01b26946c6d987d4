package io.github.heatswell.result;

/**
 * A phase that lasts from one kind of event to another: {@link RunSummary#intervals(Phase)} tells when.
 */
public enum Phase {
    /** A relief valve was off its seat. One that is stuck open never reseats, and has no events. */
    RELIEF_OPEN(EventKind.RELIEF_OPENED, EventKind.RELIEF_RESEATED),
    /** A burner or element was on. */
    HEATER_ON(EventKind.HEATER_ON, EventKind.HEATER_OFF),
    /** A tap was open. */
    DRAW(EventKind.DRAW_STARTED, EventKind.DRAW_ENDED),
    /** The supply was shut off. */
    SUPPLY_SHUT_OFF(EventKind.SUPPLY_SHUT_OFF, EventKind.SUPPLY_RESTORED),
    /** The supply held the pressure, or let water in towards its own. It ends when its valve closes or it is shut off. */
    SUPPLY_FEEDING(EventKind.SUPPLY_OPENED, EventKind.SUPPLY_CLOSED),
    /** The bypass of the reducing valve returned water to the mains. */
    BYPASS_OPEN(EventKind.BYPASS_OPENED, EventKind.BYPASS_CLOSED),
    /** The expansion vessel held water: its diaphragm was off its seat. */
    VESSEL_HOLDS_WATER(EventKind.VESSEL_LIFTED, EventKind.VESSEL_SEATED),
    /** The expansion vessel was at its acceptance limit and took no more water. */
    VESSEL_FULL(EventKind.VESSEL_BOTTOMED_OUT, EventKind.VESSEL_FREED);

    private final EventKind begins;
    private final EventKind ends;

    Phase(EventKind begins, EventKind ends) {
        this.begins = begins;
        this.ends = ends;
    }

    /**
     * The kind of event with which it begins.
     *
     * @return the kind
     */
    public EventKind begins() {
        return begins;
    }

    /**
     * Whether it ends with a kind of event.
     *
     * @param kind what happens
     * @return true if the phase is over then
     */
    public boolean endsWith(EventKind kind) {
        return kind == ends || this == SUPPLY_FEEDING && kind == EventKind.SUPPLY_SHUT_OFF;
    }
}
