package io.github.heatswell.checksheet;

import java.util.Objects;

/**
 * What a gauge at the tank's drain cock is expected to show at one moment of the procedure.
 *
 * @param kind the moment
 * @param expectedGauge the pressure (Pa, gauge)
 * @param time since the taps were closed (s); 0 for the cold static reading, which is taken before
 */
public record Reading(ReadingKind kind, double expectedGauge, double time) {

    /**
     * Checks that the moment is there.
     *
     * @param kind the moment
     * @param expectedGauge the pressure (Pa, gauge)
     * @param time since the taps were closed (s); 0 for the cold static reading, which is taken before
     */
    public Reading {
        Objects.requireNonNull(kind, "kind");
    }

    /**
     * When the gauge is read.
     *
     * @return the moment in words
     */
    public String when() {
        return kind.when();
    }
}
