package io.github.heatswell.scenarios.output;

import io.github.heatswell.charts.NamedRun;
import io.github.heatswell.charts.RunChart;
import io.github.heatswell.charts.table.ComparisonTable;
import io.github.heatswell.charts.table.EventTable;
import io.github.heatswell.charts.table.TraceTable;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.scenarios.report.ReportPage;
import io.github.heatswell.units.UnitSystem;
import java.util.List;

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
     */
    public static List<ResultFile> of(Scenario scenario, RunResult result, UnitSystem units) {
        RunChart chart = RunChart.of(result, units);
        RunFindings findings = RunFindings.of(result);
        return List.of(
                ResultFile.ofText("trace.csv", out -> TraceTable.write(result, units, out)),
                ResultFile.ofText("events.csv", out -> EventTable.write(result, units, out)),
                ResultFile.of("summary.json", out -> SummaryJson.write(scenario, findings, out)),
                ResultFile.of("pressure.png", chart::writePng),
                ResultFile.ofText("pressure.svg", chart::writeSvg),
                ResultFile.ofText(
                        "report.html", out -> ReportPage.write(RunPage.of(scenario, findings, chart, units), out)));
    }

    /**
     * The files of a comparison.
     *
     * @param runs what was run
     * @param units the units of table and chart
     * @return comparison.csv, comparison.png, comparison.svg and report.html
     */
    public static List<ResultFile> comparing(List<NamedRun> runs, UnitSystem units) {
        RunChart chart = RunChart.comparing(runs, units);
        return List.of(
                ResultFile.ofText("comparison.csv", out -> ComparisonTable.write(runs, units, out)),
                ResultFile.of("comparison.png", chart::writePng),
                ResultFile.ofText("comparison.svg", chart::writeSvg),
                ResultFile.ofText("report.html", out -> ReportPage.write(ComparisonPage.of(runs, chart, units), out)));
    }
}
