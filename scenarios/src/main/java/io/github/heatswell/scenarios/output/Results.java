package io.github.heatswell.scenarios.output;

import io.github.heatswell.charts.NamedSummary;
import io.github.heatswell.charts.RunChart;
import io.github.heatswell.charts.table.ComparisonTable;
import io.github.heatswell.charts.table.EventTable;
import io.github.heatswell.charts.table.TraceTable;
import io.github.heatswell.charts.table.VariationTable;
import io.github.heatswell.result.BalanceCount;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.result.RunSummary;
import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.scenarios.report.ReportPage;
import io.github.heatswell.scenarios.variation.Variant;
import io.github.heatswell.scenarios.variation.VariantRuns;
import io.github.heatswell.units.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The files of results.
 */
public final class Results {

    private Results() {}

    /**
     * The files of one run.
     *
     * @param scenario what was run
     * @param result what the run found
     * @param units the units of tables and charts; the summary is in SI units always
     * @return trace.csv, events.csv, summary.json, pressure.png, pressure.svg and report.html
     * @throws IllegalArgumentException if the run is not one of the scenario: another house, also a changed copy, or another
     *     duration. {@link Scenario#simulation()} makes such a run; for a house that a program changed, make a scenario of it
     *     with {@link Scenario#of}
     */
    public static List<ResultFile> of(Scenario scenario, RunResult result, UnitSystem units) {
        return of(scenario, result, new BalanceCount(), units);
    }

    /**
     * The files of one run.
     *
     * @param scenario what was run
     * @param result what the run found
     * @param advice counts the runs behind the check sheet and the sizes, which are made while report.html is written
     * @param units the units of tables and charts; the summary is in SI units always
     * @return the same files
     * @throws IllegalArgumentException if the run is not one of the scenario: another house, also a changed copy, or another
     *     duration. {@link Scenario#simulation()} makes such a run; for a house that a program changed, make a scenario of it
     *     with {@link Scenario#of}
     */
    public static List<ResultFile> of(Scenario scenario, RunResult result, BalanceCount advice, UnitSystem units) {
        Objects.requireNonNull(scenario, "scenario");
        Objects.requireNonNull(result, "result");
        Objects.requireNonNull(advice, "advice");
        Objects.requireNonNull(units, "units");
        RunFindings findings = RunFindings.of(result);
        findings.requireOf(scenario);
        RunChart chart = RunChart.of(result, units);
        return List.of(
                ResultFile.ofText("trace.csv", out -> TraceTable.write(result, units, out)),
                ResultFile.ofText("events.csv", out -> EventTable.write(result, units, out)),
                ResultFile.of("summary.json", out -> SummaryJson.write(scenario, findings, out)),
                ResultFile.of("pressure.png", chart::writePng),
                ResultFile.ofText("pressure.svg", chart::writeSvg),
                ResultFile.ofText(
                        "report.html",
                        out -> ReportPage.write(RunPage.of(scenario, findings, chart, advice, units), out)));
    }

    /**
     * The files of a comparison of variants.
     *
     * @param fields the varied fields, none if scenarios were compared as they are
     * @param runs what was run; of more than six, the picture shows some
     * @param units the units of tables and chart
     * @return comparison.csv, comparison.png, comparison.svg and report.html, and variations.csv if any field was varied
     */
    public static List<ResultFile> comparing(List<String> fields, VariantRuns runs, UnitSystem units) {
        RunChart chart = RunChart.comparing(runs.drawn(), runs.variants().size(), units);
        List<ResultFile> files = new ArrayList<>(List.of(
                ResultFile.ofText("comparison.csv", out -> ComparisonTable.writeAll(runs.named(), units, out)),
                ResultFile.of("comparison.png", chart::writePng),
                ResultFile.ofText("comparison.svg", chart::writeSvg),
                ResultFile.ofText(
                        "report.html",
                        out -> ReportPage.write(ComparisonPage.of(runs.drawn(), runs.named(), chart, units), out))));
        if (!fields.isEmpty()) {
            files.add(ResultFile.ofText("variations.csv", out -> VariationTable.write(fields, rows(runs), units, out)));
        }
        return List.copyOf(files);
    }

    private static List<VariationTable.Row> rows(VariantRuns runs) {
        List<VariationTable.Row> rows = new ArrayList<>();
        for (int i = 0; i < runs.variants().size(); i++) {
            Variant variant = runs.variants().get(i);
            RunSummary found = runs.summaries().get(i);
            Optional<Limit> limit = Limit.reliefSet(found);
            rows.add(new VariationTable.Row(
                    new NamedSummary(variant.of(), found),
                    variant.values(),
                    limit.isPresent() ? OptionalDouble.of(limit.get().margin()) : OptionalDouble.empty()));
        }
        return rows;
    }
}
