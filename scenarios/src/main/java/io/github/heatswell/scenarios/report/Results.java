package io.github.heatswell.scenarios.report;

import io.github.heatswell.assessment.Finding;
import io.github.heatswell.charts.Chart;
import io.github.heatswell.charts.table.EventTable;
import io.github.heatswell.charts.table.TraceTable;
import io.github.heatswell.result.Balances;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.units.UnitSystem;
import java.util.List;
import java.util.Objects;

/**
 * The files of results.
 */
public final class Results {

    private Results() {}

    /**
     * The files of one run. The check sheet and the sizes of the printed report are simulated here.
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
        return answer(scenario, result, units).files();
    }

    /**
     * The answer of one run: the files, and what is shown on a terminal.
     *
     * @param scenario what was run
     * @param result what the run found
     * @param units the units of report, tables and charts; the summary is in SI units always
     * @return with the files {@link #of}
     * @throws IllegalArgumentException if the run is not one of the scenario
     */
    public static Answer answer(Scenario scenario, RunResult result, UnitSystem units) {
        Objects.requireNonNull(scenario, "scenario");
        RunFindings findings = RunFindings.of(result);
        findings.requireOf(scenario);
        List<Finding> found = findings.narrative(scenario.doubts()).findings();
        Advice advice = Advice.of(scenario, found, Answer.onPage(Objects.requireNonNull(units, "units")));
        Chart chart = Chart.of(result, scenario.doubts(), units);
        return Answer.of(
                new RunReport(scenario, findings, advice, chart)::content,
                Balances.of(findings.summary()).and(advice.balances()),
                units,
                List.of(
                        ResultFile.ofText("trace.csv", out -> TraceTable.write(result, units, out)),
                        ResultFile.ofText("events.csv", out -> EventTable.write(result, units, out)),
                        SummaryJson.of(scenario, findings).file("summary.json")),
                Answer.pictures("pressure", chart));
    }
}
