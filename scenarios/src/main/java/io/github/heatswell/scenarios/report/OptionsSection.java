package io.github.heatswell.scenarios.report;

import io.github.heatswell.scenarios.markup.Html;
import io.github.heatswell.units.QuantityFormat;
import java.util.ArrayList;
import java.util.List;

/** Sizes of vessel, what formulas say, and what the water costs. */
final class OptionsSection {

    private OptionsSection() {}

    static void write(Html html, ReportContent content, QuantityFormat shown) {
        Options options = content.options();
        if (options.isEmpty()) {
            return;
        }
        html.open("section")
                .leaf(
                        "h2",
                        options.sizes().isEmpty() && options.formulas().isEmpty()
                                ? "Cost"
                                : "Sizes, alternatives and cost");
        if (!options.sizes().isEmpty()) {
            sizes(html, options.sizes(), shown);
        }
        options.formulas().forEach(formula -> formula(html, formula, shown));
        if (!options.costs().isEmpty()) {
            costs(html, options.costs(), shown);
        }
        html.closeLine();
    }

    private static void sizes(Html html, List<SizeRow> sizes, QuantityFormat shown) {
        boolean alike =
                sizes.stream().mapToDouble(SizeRow::prechargeGauge).distinct().count() == 1;
        boolean priced = sizes.stream().anyMatch(size -> !size.price().isBlank());
        List<String> columns = new ArrayList<>(List.of("Vessel", "Peak", "Room below the limit", "Enough"));
        if (!alike) {
            columns.add("Precharge");
        }
        if (priced) {
            columns.add("Price");
        }
        List<List<String>> rows = new ArrayList<>();
        for (SizeRow size : sizes) {
            List<String> row = size(size, shown);
            if (!alike) {
                row.add(shown.pressure(size.prechargeGauge()));
            }
            if (priced) {
                row.add(size.price().isBlank() ? "not given" : size.price());
            }
            rows.add(row);
        }
        String precharged =
                alike ? ", precharged to " + shown.pressure(sizes.get(0).prechargeGauge()) : "";
        Tables.grid(
                html,
                new Grid(
                        "What each vessel would do in the worst heat-up" + precharged + "; gauge pressures",
                        columns,
                        rows));
    }

    private static List<String> size(SizeRow size, QuantityFormat shown) {
        return new ArrayList<>(List.of(
                shown.volume(size.volume()),
                (size.higher() ? "over " : "") + shown.pressure(size.peakGauge()),
                size.higher() ? "none" : shown.pressureDifference(size.margin()),
                size.enough()));
    }

    private static void formula(Html html, FormulaNote formula, QuantityFormat shown) {
        html.leaf("h3", formula.name());
        if (formula.volume().isPresent()) {
            html.open("p").open("code").text(formula.expression()).close();
            html.text(" gives " + shown.volume(formula.volume().getAsDouble()) + ".")
                    .closeLine();
        }
        if (!formula.remark().isBlank()) {
            html.leaf("p", formula.remark());
        }
        if (!formula.inputs().isEmpty()) {
            Tables.grid(html, inputs(formula.inputs()));
        }
        if (!formula.source().isBlank()) {
            html.leaf("p", "Source: " + formula.source() + standing(formula.standing()), "class", "quiet");
        }
        if (!formula.differences().isEmpty()) {
            Tables.grid(html, differences(formula.differences(), shown));
        }
    }

    private static String standing(String standing) {
        return standing.isBlank() ? "" : " (" + standing + ")";
    }

    private static Grid inputs(List<FormulaNote.Input> inputs) {
        return new Grid(
                "What went into the formula",
                List.of("Letter", "Value", "Meaning", "Source"),
                inputs.stream()
                        .map(input -> List.of(input.symbol(), input.value(), input.meaning(), input.source()))
                        .toList());
    }

    private static Grid differences(List<FormulaNote.Effect> differences, QuantityFormat shown) {
        return new Grid(
                "From the formula to the simulation",
                List.of("Effect", "Adds to the vessel"),
                differences.stream()
                        .map(effect -> List.of(effect.name(), shown.volume(effect.volume())))
                        .toList());
    }

    private static void costs(Html html, List<Cost> costs, QuantityFormat shown) {
        List<List<String>> rows = costs.stream()
                .map(cost -> List.of(
                        cost.of(),
                        shown.volume(cost.yearlyWater()),
                        cost.price().isBlank() ? "not known" : cost.price()))
                .toList();
        Tables.grid(html, new Grid("Water given off in a year", List.of("House", "Water", "Price"), rows));
        costs.stream()
                .map(Cost::basis)
                .filter(basis -> !basis.isBlank())
                .distinct()
                .forEach(basis -> html.leaf("p", basis, "class", "quiet"));
    }
}
