package io.github.heatswell.scenarios.report;

import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * What a formula says about the size of the vessel, and why the simulation says otherwise.
 *
 * @param name what the formula is called
 * @param expression the formula, in the letters of the inputs
 * @param volume the volume it gives (m3), or empty if it does not apply
 * @param inputs every number that went in
 * @param source where the formula comes from
 * @param standing how far that source was checked, in words
 * @param differences what lies between formula and simulation, possibly nothing
 * @param remark why it does not apply, or what to bear in mind, possibly nothing
 */
public record FormulaNote(
        String name,
        String expression,
        OptionalDouble volume,
        List<Input> inputs,
        String source,
        String standing,
        List<Effect> differences,
        String remark) {

    /**
     * Checks that everything is there and copies the lists.
     *
     * @param name what the formula is called
     * @param expression the formula, in the letters of the inputs
     * @param volume the volume it gives (m3), or empty if it does not apply
     * @param inputs every number that went in
     * @param source where the formula comes from
     * @param standing how far that source was checked, in words
     * @param differences what lies between formula and simulation, possibly nothing
     * @param remark why it does not apply, or what to bear in mind, possibly nothing
     */
    public FormulaNote {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(expression, "expression");
        inputs = List.copyOf(inputs);
        Objects.requireNonNull(source, "source");
        Objects.requireNonNull(standing, "standing");
        differences = List.copyOf(differences);
        Objects.requireNonNull(volume, "volume");
        Objects.requireNonNull(remark, "remark");
    }

    /**
     * A number that went into a formula.
     *
     * @param symbol the letter the formula has for it
     * @param value the number with its unit
     * @param meaning what it is
     * @param source where it comes from
     */
    public record Input(String symbol, String value, String meaning, String source) {

        /**
         * Checks that everything is there.
         *
         * @param symbol the letter the formula has for it
         * @param value the number with its unit
         * @param meaning what it is
         * @param source where it comes from
         */
        public Input {
            Objects.requireNonNull(symbol, "symbol");
            Objects.requireNonNull(value, "value");
            Objects.requireNonNull(meaning, "meaning");
            Objects.requireNonNull(source, "source");
        }
    }

    /**
     * What one effect adds to the volume of the formula.
     *
     * @param name the effect, in words
     * @param volume what it adds (m3), below 0 if it saves
     */
    public record Effect(String name, double volume) {

        /**
         * Checks that the name is there.
         *
         * @param name the effect, in words
         * @param volume what it adds (m3), below 0 if it saves
         */
        public Effect {
            Objects.requireNonNull(name, "name");
        }
    }
}
