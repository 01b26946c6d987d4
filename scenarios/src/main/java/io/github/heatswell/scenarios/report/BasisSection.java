package io.github.heatswell.scenarios.report;

import io.github.heatswell.scenarios.markup.Html;
import io.github.heatswell.units.QuantityFormat;
import java.util.List;

/** What the result rests on beside what the scenario says. */
final class BasisSection {

    private BasisSection() {}

    static void write(Html html, ReportContent content, QuantityFormat shown) {
        content.basis().ifPresent(basis -> {
            html.open("section").leaf("h2", "Assumptions");
            assumptions(html, basis.assumptions());
            if (!basis.changes().isEmpty()) {
                html.leaf("p", "Changed on the command line:");
                html.open("ul");
                basis.changes().forEach(change -> html.leaf("li", change, "dir", "auto"));
                html.closeLine();
            }
            if (!basis.uncertainties().isEmpty()) {
                Tables.grid(html, uncertain(basis.uncertainties()));
            }
            html.closeLine();
        });
    }

    private static void assumptions(Html html, List<AssumedValue> assumptions) {
        if (assumptions.isEmpty()) {
            html.leaf("p", "Nothing had to be assumed: the scenario says everything the model needs.");
            return;
        }
        html.leaf("p", "The scenario does not say these. If you know better, write it into the file and run it again.");
        Tables.grid(
                html,
                new Grid(
                        "Filled in with typical values",
                        List.of("Field", "Value", "Why this value"),
                        assumptions.stream()
                                .map(value -> List.of(value.field(), value.value(), value.basis()))
                                .toList()));
    }

    private static Grid uncertain(List<UncertainInput> inputs) {
        return new Grid(
                "Known within a range only",
                List.of("Input", "Range", "What that means"),
                inputs.stream()
                        .map(input -> List.of(input.input(), input.range(), input.outcome()))
                        .toList());
    }
}
