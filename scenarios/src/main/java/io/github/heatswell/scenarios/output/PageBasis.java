package io.github.heatswell.scenarios.output;

import io.github.heatswell.scenarios.file.Change;
import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.scenarios.report.AssumedValue;
import io.github.heatswell.scenarios.report.Basis;
import io.github.heatswell.scenarios.report.UncertainInput;
import io.github.heatswell.scenarios.wording.Shown;
import java.util.List;

/** What a result rests on beside what its scenario says, as the printed report shows it. */
final class PageBasis {

    private PageBasis() {}

    static Basis of(Scenario scenario, Shown shown) {
        List<AssumedValue> assumed = scenario.assumptions().stream()
                .map(value ->
                        new AssumedValue(value.field(), PageWords.inBoth(value.value(), shown.units()), value.basis()))
                .toList();
        List<UncertainInput> uncertain = scenario.uncertain().stream()
                .map(field -> new UncertainInput(
                        field.field(),
                        field.text(),
                        "taken as " + field.quantity().centre()))
                .toList();
        return new Basis(
                assumed, scenario.changes().stream().map(Change::toString).toList(), uncertain);
    }
}
