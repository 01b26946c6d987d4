package io.github.heatswell.scenarios.file;

import io.github.heatswell.scenarios.quantity.Uncertain;
import io.github.heatswell.study.Distribution;
import io.github.heatswell.study.UncertainInput;
import java.util.Objects;

/**
 * A field of a scenario whose value is known only so well.
 *
 * @param field the field, such as {@code supply.pressure}
 * @param text the value as it was written
 * @param quantity what it says
 */
public record UncertainField(String field, String text, Uncertain quantity) {

    /**
     * Checks that everything is there.
     *
     * @param field the field, such as {@code supply.pressure}
     * @param text the value as it was written
     * @param quantity what it says
     */
    public UncertainField {
        Objects.requireNonNull(field, "field");
        Objects.requireNonNull(text, "text");
        Objects.requireNonNull(quantity, "quantity");
    }

    /**
     * The field as an input of a study, in the unit it was written in.
     *
     * @return the input, named after the field
     */
    public UncertainInput input() {
        return new UncertainInput(field, quantity.distribution());
    }

    /**
     * The lowest value a study uses.
     *
     * @return the quantity as a file would write it
     */
    public String low() {
        Distribution spread = quantity.distribution();
        return quantity.at(spread.low());
    }

    /**
     * The highest value a study uses.
     *
     * @return the quantity as a file would write it
     */
    public String high() {
        Distribution spread = quantity.distribution();
        return quantity.at(spread.high());
    }
}
