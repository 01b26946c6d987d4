package io.github.heatswell.scenarios.report;

import java.util.Objects;
import java.util.OptionalDouble;

/**
 * A line of the check sheet: what a gauge should read at some moment.
 *
 * @param when the moment, such as {@code 15 min after the heater came on}
 * @param expectedGauge what the gauge should read (Pa, gauge), or empty where the run says nothing
 * @param tolerance how far a reading may lie above or below that (Pa), or empty if unknown
 * @param note what to mind, possibly nothing
 */
public record Reading(String when, OptionalDouble expectedGauge, OptionalDouble tolerance, String note) {

    /**
     * Checks that everything is there.
     *
     * @param when the moment, such as {@code 15 min after the heater came on}
     * @param expectedGauge what the gauge should read (Pa, gauge), or empty where the run says nothing
     * @param tolerance how far a reading may lie above or below that (Pa), or empty if unknown
     * @param note what to mind, possibly nothing
     */
    public Reading {
        Objects.requireNonNull(when, "when");
        Objects.requireNonNull(expectedGauge, "expectedGauge");
        Objects.requireNonNull(tolerance, "tolerance");
        Objects.requireNonNull(note, "note");
    }
}
