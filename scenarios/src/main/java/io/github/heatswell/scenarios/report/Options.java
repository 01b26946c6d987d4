package io.github.heatswell.scenarios.report;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * What could be done, and what it costs.
 *
 * @param sizes sizes of vessel, in their order
 * @param formulas what formulas say
 * @param cost the water given off in a year
 */
public record Options(List<SizeRow> sizes, List<FormulaNote> formulas, Optional<Cost> cost) {

    /**
     * Checks that everything is there and copies the lists.
     *
     * @param sizes sizes of vessel, in their order
     * @param formulas what formulas say
     * @param cost the water given off in a year
     */
    public Options {
        sizes = List.copyOf(sizes);
        formulas = List.copyOf(formulas);
        Objects.requireNonNull(cost, "cost");
    }

    /**
     * No options.
     *
     * @return nothing of anything
     */
    public static Options none() {
        return new Options(List.of(), List.of(), Optional.empty());
    }

    /** Whether there is nothing to say. */
    boolean isEmpty() {
        return sizes.isEmpty() && formulas.isEmpty() && cost.isEmpty();
    }
}
