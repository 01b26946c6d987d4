package io.github.heatswell.scenarios.variation;

import io.github.heatswell.scenarios.file.Scenario;
import java.util.List;
import java.util.Objects;

/**
 * A scenario with one combination of values.
 *
 * @param name what it is called, different from all others
 * @param of the name of the scenario it is a variant of
 * @param values the value of each varied field, as written
 * @param scenario the scenario with these values
 */
public record Variant(String name, String of, List<String> values, Scenario scenario) {

    /**
     * Copies the values.
     *
     * @param name what it is called, different from all others
     * @param of the name of the scenario it is a variant of
     * @param values the value of each varied field, as written
     * @param scenario the scenario with these values
     */
    public Variant {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(of, "of");
        Objects.requireNonNull(scenario, "scenario");
        values = List.copyOf(values);
    }
}
