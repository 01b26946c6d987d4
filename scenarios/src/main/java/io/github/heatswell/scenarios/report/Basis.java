package io.github.heatswell.scenarios.report;

import java.util.List;

/**
 * What the result rests on beside what the scenario says.
 *
 * @param assumptions values that were filled in
 * @param changes changes made on the command line
 * @param uncertainties inputs known within a range only
 */
public record Basis(List<AssumedValue> assumptions, List<String> changes, List<UncertainInput> uncertainties) {

    /**
     * Checks that everything is there and copies the lists.
     *
     * @param assumptions values that were filled in
     * @param changes changes made on the command line
     * @param uncertainties inputs known within a range only
     */
    public Basis {
        assumptions = List.copyOf(assumptions);
        changes = List.copyOf(changes);
        uncertainties = List.copyOf(uncertainties);
    }

    /**
     * Nothing beside the scenario.
     *
     * @return nothing of anything
     */
    public static Basis none() {
        return new Basis(List.of(), List.of(), List.of());
    }
}
