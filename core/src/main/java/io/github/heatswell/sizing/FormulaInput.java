package io.github.heatswell.sizing;

import io.github.heatswell.citation.Citation;
import java.util.Objects;

/**
 * A number that went into a sizing formula.
 *
 * @param symbol its symbol in the formula
 * @param value the number, in {@code unit}
 * @param unit the unit the formula uses, empty for a pure number
 * @param meaning what it is, in words
 * @param source where it comes from
 */
public record FormulaInput(String symbol, double value, String unit, String meaning, Citation source) {

    /**
     * Checks that everything is there.
     *
     * @param symbol its symbol in the formula
     * @param value the number, in {@code unit}
     * @param unit the unit the formula uses, empty for a pure number
     * @param meaning what it is, in words
     * @param source where it comes from
     */
    public FormulaInput {
        Objects.requireNonNull(symbol, "symbol");
        Objects.requireNonNull(unit, "unit");
        Objects.requireNonNull(meaning, "meaning");
        Objects.requireNonNull(source, "source");
    }

    /** A number the caller gave. */
    static FormulaInput given(String symbol, double value, String unit, String meaning) {
        return new FormulaInput(symbol, value, unit, meaning, Citation.given());
    }
}
