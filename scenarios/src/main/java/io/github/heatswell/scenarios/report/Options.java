package io.github.heatswell.scenarios.report;

import java.util.List;

/**
 * What could be done, and what it costs.
 *
 * @param sizes sizes of vessel, in their order
 * @param formulas what formulas say
 * @param costs the water given off in a year
 */
public record Options(List<SizeRow> sizes, List<FormulaNote> formulas, List<Cost> costs) {

    /**
     * Checks that everything is there and copies the lists.
     *
     * @param sizes sizes of vessel, in their order
     * @param formulas what formulas say
     * @param costs the water given off in a year
     */
    public Options {
        sizes = List.copyOf(sizes);
        formulas = List.copyOf(formulas);
        costs = List.copyOf(costs);
    }

    /**
     * No options.
     *
     * @return nothing of anything
     */
    public static Options none() {
        return new Options(List.of(), List.of(), List.of());
    }

    /** Whether there is nothing to say. */
    boolean isEmpty() {
        return sizes.isEmpty() && formulas.isEmpty() && costs.isEmpty();
    }
}
