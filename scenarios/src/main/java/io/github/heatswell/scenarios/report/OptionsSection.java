package io.github.heatswell.scenarios.report;

import io.github.heatswell.scenarios.wording.Shown;
import java.util.ArrayList;
import java.util.List;

/** Sizes of vessel, what formulas say, and what the water costs. */
final class OptionsSection {

    private OptionsSection() {}

    static void write(Html html, ReportContent content, Shown shown) {
        Options options = content.options();
        if (options.isEmpty()) {
            return;
        }
        html.open("section").leaf("h2", options.sizes().isEmpty() ? "Cost" : "Sizes, alternatives and cost");
        if (!options.sizes().isEmpty()) {
            sizes(html, options.sizes(), shown);
        }
        options.formulas().forEach(formula -> formula(html, formula, shown));
        options.cost().ifPresent(cost -> cost(html, cost, shown));
        html.closeLine();
    }

    private static void sizes(Html html, List<SizeRow> sizes, Shown shown) {
        boolean priced = sizes.stream().anyMatch(size -> !size.price().isBlank());
        List<String> columns =
                new ArrayList<>(List.of("Vessel", "Precharge", "Peak", "Room below the target", "Enough"));
        if (priced) {
            columns.add("Price");
        }
        List<List<String>> rows = new ArrayList<>();
        for (SizeRow size : sizes) {
            List<String> row = new ArrayList<>(List.of(
                    shown.volume(size.volume()),
                    shown.pressure(size.prechargeGauge()),
                    shown.pressure(size.peakGauge()),
                    shown.pressure(size.margin()),
                    size.suffices() ? "yes" : "no"));
            if (priced) {
                row.add(size.price().isBlank() ? "not given" : size.price());
            }
            rows.add(row);
        }
        Tables.grid(html, new Grid("Vessels and what each would do, gauge pressures", columns, rows));
    }

    private static void formula(Html html, FormulaNote formula, Shown shown) {
        html.leaf("h3", formula.name());
        html.open("p").open("code").text(formula.expression()).close();
        html.text(" gives " + shown.volume(formula.volume()) + ".").closeLine();
        if (!formula.inputs().isEmpty()) {
            Tables.grid(
                    html,
                    new Grid(
                            "What went into the formula",
                            List.of("Letter", "Value", "Meaning", "Source"),
                            formula.inputs().stream()
                                    .map(input ->
                                            List.of(input.symbol(), input.value(), input.meaning(), input.source()))
                                    .toList()));
        }
        html.leaf("p", "Source: " + formula.source() + " (" + formula.standing() + ")", "class", "quiet");
        if (!formula.differences().isEmpty()) {
            Tables.grid(
                    html,
                    new Grid(
                            "From the formula to the simulation",
                            List.of("Effect", "Adds to the vessel"),
                            formula.differences().stream()
                                    .map(effect -> List.of(effect.name(), shown.volume(effect.volume())))
                                    .toList()));
        }
    }

    private static void cost(Html html, Cost cost, Shown shown) {
        html.leaf("h3", "Water given off in a year");
        String price = cost.price().isBlank() ? "" : ", which costs " + cost.price();
        html.leaf("p", "The relief valve gives off " + shown.volume(cost.yearlyWater()) + " a year" + price + ".");
        if (!cost.basis().isBlank()) {
            html.leaf("p", cost.basis(), "class", "quiet");
        }
    }
}
