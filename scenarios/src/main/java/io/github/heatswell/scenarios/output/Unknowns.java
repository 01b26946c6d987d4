package io.github.heatswell.scenarios.output;

import io.github.heatswell.scenarios.file.Assumption;
import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.scenarios.file.UncertainField;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The fields of a scenario whose values nobody knows: filled in, or given as a range. A measured value is known. */
final class Unknowns {

    private Unknowns() {}

    static Set<String> of(Scenario scenario) {
        Stream<String> ranges = scenario.uncertain().stream()
                .filter(field -> field.text().toLowerCase(Locale.ROOT).contains(" to "))
                .map(UncertainField::field);
        return Stream.concat(scenario.assumptions().stream().map(Assumption::field), ranges)
                .collect(Collectors.toSet());
    }
}
