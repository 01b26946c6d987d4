package io.github.heatswell.sizing;

import io.github.heatswell.citation.Citation;
import io.github.heatswell.units.Pressure;
import java.util.List;
import java.util.Objects;

/**
 * Result of a sizing formula, with everything needed to recompute it by hand.
 *
 * @param expression the formula, in the letters of the inputs
 * @param volume the smallest whole volume of the vessel (m3), 0 or more
 * @param precharge the gas pressure to set with the water side empty
 * @param inputs every number that went in
 * @param source where the formula comes from
 */
public record FormulaResult(
        String expression, double volume, Pressure precharge, List<FormulaInput> inputs, Citation source) {

    /**
     * Checks that everything is there and copies the inputs.
     *
     * @param expression the formula, in the letters of the inputs
     * @param volume the smallest whole volume of the vessel (m3), 0 or more
     * @param precharge the gas pressure to set with the water side empty
     * @param inputs every number that went in
     * @param source where the formula comes from
     */
    public FormulaResult {
        Objects.requireNonNull(expression, "expression");
        Objects.requireNonNull(precharge, "precharge");
        Objects.requireNonNull(source, "source");
        inputs = List.copyOf(Objects.requireNonNull(inputs, "inputs"));
    }
}
