package io.github.heatswell.scenarios.report;

import java.util.Objects;
import java.util.OptionalDouble;

/**
 * A line of the check sheet: what a gauge should read at some moment.
 *
 * @param when the moment, such as {@code 15 min after the heater came on}
 * @param expectedGauge what the gauge should read (Pa, gauge), or empty where the run says nothing
 * @param lowestGauge the lowest reading that agrees with that (Pa, gauge), or empty if unknown
 * @param highestGauge the highest reading that agrees with that (Pa, gauge), or empty if unknown
 * @param note what to mind, possibly nothing
 */
public record Reading(
        String when,
        OptionalDouble expectedGauge,
        OptionalDouble lowestGauge,
        OptionalDouble highestGauge,
        String note) {

    /**
     * Checks that everything is there.
     *
     * @param when the moment, such as {@code 15 min after the heater came on}
     * @param expectedGauge what the gauge should read (Pa, gauge), or empty where the run says nothing
     * @param lowestGauge the lowest reading that agrees with that (Pa, gauge), or empty if unknown
     * @param highestGauge the highest reading that agrees with that (Pa, gauge), or empty if unknown
     * @param note what to mind, possibly nothing
     */
    public Reading {
        Objects.requireNonNull(when, "when");
        Objects.requireNonNull(expectedGauge, "expectedGauge");
        Objects.requireNonNull(lowestGauge, "lowestGauge");
        Objects.requireNonNull(highestGauge, "highestGauge");
        Objects.requireNonNull(note, "note");
    }
}
