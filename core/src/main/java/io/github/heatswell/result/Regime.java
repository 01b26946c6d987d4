package io.github.heatswell.result;

import java.util.Locale;

/**
 * What determines the pressure at a moment. One regime applies at a time; located events lead from one to the next.
 */
public enum Regime {
    /**
     * Nothing enters or leaves but draws, leaks and what leaking seats pass: the water's expansion and the compliance of
     * tank, pipes and vessel determine the pressure.
     */
    SEALED,
    /**
     * The supply holds the pressure and makes up what is missing: behind a check valve at the supply pressure, behind a
     * reducing valve at lock-up pressure minus droop times flow.
     */
    FED,
    /**
     * The system is refilled towards the supply pressure, after an outage, a start below it, or a relief valve that
     * lowered the pressure. Lasts seconds, or minutes with a large vessel; behind a reducing valve the regime is
     * {@link #FED}.
     */
    FILLING,
    /** A relief valve is open: its flow balances the water's expansion. */
    RELIEVING,
    /** The bypass is open: the mains hold the pressure a little above their own and take back the expansion. */
    RETURNED,
    /** No check valve: the mains hold the pressure and take back the expansion. */
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
