package io.github.heatswell.result;

import java.util.Locale;

/**
 * What fixes the pressure at a moment. One rule holds at a time; located events lead from one to the next.
 */
public enum Regime {
    /** Nothing enters or leaves: the water's growth and the give of tank, pipes and vessel fix the pressure. */
    SEALED,
    /**
     * The supply holds the pressure and lets in what is missing: behind a check valve the pressure is the supply's own, behind a
     * reducing valve its standing pressure less its droop times the flow.
     */
    FED,
    /**
     * The system is on its way to the supply's pressure: it is filled up after an outage, a start below, or a relief valve that
     * let the pressure down. Lasts seconds, or minutes with a large vessel; a reducing valve is {@link #FED} meanwhile.
     */
    FILLING,
    /** An open relief valve: its flow and the water's growth settle against each other. */
    RELIEVING,
    /** An open bypass: the mains holds the pressure a little above its own and takes back what the water gains. */
    RETURNED,
    /** No check valve: the mains holds the pressure and takes back what the water gains. */
    UNSEALED;

    /**
     * The regime as files write it.
     *
     * @return the name in lower case
     */
    public String label() {
        return name().toLowerCase(Locale.ROOT);
    }
}
