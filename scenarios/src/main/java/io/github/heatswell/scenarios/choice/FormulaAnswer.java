package io.github.heatswell.scenarios.choice;

import io.github.heatswell.sizing.SizingReconciliation;
import io.github.heatswell.sizing.VesselFormula;
import java.util.Objects;
import java.util.Optional;

/**
 * Result of a published formula for a house.
 *
 * @param name what the formula is called
 * @param result what it says; empty if it does not apply
 * @param differences why the simulated volume differs, effect by effect; empty if unknown
 * @param remark why the formula does not apply, or what to bear in mind; may be empty
 */
public record FormulaAnswer(
        String name, Optional<VesselFormula.Result> result, Optional<SizingReconciliation> differences, String remark) {

    /**
     * Checks that everything is there.
     *
     * @param name what the formula is called
     * @param result what it says; empty if it does not apply
     * @param differences why the simulated volume differs, effect by effect; empty if unknown
     * @param remark why the formula does not apply, or what to bear in mind; may be empty
     */
    public FormulaAnswer {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(result, "result");
        Objects.requireNonNull(differences, "differences");
        Objects.requireNonNull(remark, "remark");
    }

    static FormulaAnswer of(String name, SizingReconciliation differences) {
        return new FormulaAnswer(name, Optional.of(differences.formula()), Optional.of(differences), "");
    }

    static FormulaAnswer without(String name, String remark) {
        return new FormulaAnswer(name, Optional.empty(), Optional.empty(), remark);
    }
}
