package io.github.heatswell.scenarios.readings;

import java.util.Objects;
import java.util.Optional;

/**
 * What a person says about a log where its file is silent or wrong.
 *
 * @param unit the unit of the pressures, such as {@code psi}, where the file names none
 * @param columns names of all columns with their units, such as {@code time_min,pressure_psi,note}, in place of those in the file, or
 *     where it has none; what should not be used is named {@code -}
 */
public record LogHints(Optional<String> unit, Optional<String> columns) {

    /** Nothing is said. */
    public static final LogHints NONE = new LogHints(Optional.empty(), Optional.empty());

    /**
     * Checks that both are there.
     *
     * @param unit the unit of the pressures
     * @param columns names of all columns with their units
     */
    public LogHints {
        Objects.requireNonNull(unit, "unit");
        Objects.requireNonNull(columns, "columns");
    }
}
