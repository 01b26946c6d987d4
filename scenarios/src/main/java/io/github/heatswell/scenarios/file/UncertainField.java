package io.github.heatswell.scenarios.file;

import io.github.heatswell.scenarios.quantity.Uncertain;
import io.github.heatswell.study.Distribution;
import io.github.heatswell.study.Study;
import java.util.Objects;

/**
 * An uncertain field of a scenario.
 *
 * @param field the field, such as {@code supply.pressure}
 * @param text the value as it was written
 * @param distribution how its values are spread, in the unit
 * @param unit the unit as it was written, with the reference of a pressure if that was said
 */
public record UncertainField(String field, String text, Distribution distribution, String unit) {

    /**
     * Checks that everything is there.
     *
     * @param field the field, such as {@code supply.pressure}
     * @param text the value as it was written
     * @param distribution how its values are spread, in the unit
     * @param unit the unit as it was written, with the reference of a pressure if that was said
     */
    public UncertainField {
        Objects.requireNonNull(field, "field");
        Objects.requireNonNull(text, "text");
        Objects.requireNonNull(distribution, "distribution");
        Objects.requireNonNull(unit, "unit");
    }

    static UncertainField of(String field, String text, Uncertain quantity) {
        return new UncertainField(field, text, quantity.distribution(), quantity.unit());
    }

    /**
     * The field as an input of a study, in the unit it was written in.
     *
     * @return the input, named after the field
     */
    public Study.Input input() {
        return new Study.Input(field, distribution);
    }

    /**
     * A plain quantity out of the spread.
     *
     * @param value the number, in the unit
     * @return the quantity as a file would write it
     */
    public String at(double value) {
        return new Uncertain(distribution, unit).at(value);
    }

    /**
     * The best estimate as a plain quantity.
     *
     * @return the quantity as a file would write it
     */
    public String centre() {
        return at(distribution.centre());
    }

    /**
     * The lowest value a study uses.
     *
     * @return the quantity as a file would write it
     */
    public String low() {
        return at(distribution.low());
    }

    /**
     * The highest value a study uses.
     *
     * @return the quantity as a file would write it
     */
    public String high() {
        return at(distribution.high());
    }
}
