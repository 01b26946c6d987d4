package io.github.heatswell.scenarios.output;

import io.github.heatswell.scenarios.file.Change;
import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.scenarios.report.AssumedValue;
import io.github.heatswell.scenarios.report.Basis;
import io.github.heatswell.scenarios.report.UncertainInput;
import io.github.heatswell.scenarios.spread.VariedHouse;
import io.github.heatswell.units.QuantityFormat;
import java.util.List;

/** What a result rests on beside what its scenario says, as the printed report shows it. */
final class PageBasis {

    private PageBasis() {}

    /**
     * What a result rests on.
     *
     * @param scenario what was run
     * @param checked whether a check sheet is given, whose range rests on uncertainties
     * @param shown the units
     */
    static Basis of(Scenario scenario, boolean checked, QuantityFormat shown) {
        return of(scenario, checked ? usual(scenario, "; for the check sheet only") : List.of(), shown);
    }

    /** What an outlook rests on. */
    static Basis ofYears(Scenario scenario, QuantityFormat shown) {
        return of(scenario, usual(scenario, ""), shown);
    }

    private static Basis of(Scenario scenario, List<UncertainInput> usual, QuantityFormat shown) {
        List<AssumedValue> assumed = scenario.assumptions().stream()
                .map(value -> new AssumedValue(value.field(), PageWords.inBoth(value.value(), shown), value.basis()))
                .toList();
        List<UncertainInput> uncertain = scenario.uncertain().isEmpty() ? usual : given(scenario);
        return new Basis(
                assumed, scenario.changes().stream().map(Change::toString).toList(), uncertain);
    }

    private static List<UncertainInput> given(Scenario scenario) {
        return scenario.uncertain().stream()
                .map(field -> new UncertainInput(field.field(), field.text(), "taken as " + field.centre()))
                .toList();
    }

    /** What a range rests on where nothing was said. */
    private static List<UncertainInput> usual(Scenario scenario, String use) {
        return VariedHouse.of(scenario).inputs().stream()
                .map(input ->
                        new UncertainInput(input.name(), input.words(), "usual; common practice, no source" + use))
                .toList();
    }
}
