package io.github.heatswell.scenarios.report;

import io.github.heatswell.assessment.Finding;
import io.github.heatswell.charts.Chart;
import io.github.heatswell.charts.DailyFigures;
import io.github.heatswell.charts.DailyFigures.DailyCollector;
import io.github.heatswell.charts.table.EventTable;
import io.github.heatswell.charts.table.TraceTable;
import io.github.heatswell.charts.table.TraceWriter;
import io.github.heatswell.narrative.Narrative;
import io.github.heatswell.narrative.Observer;
import io.github.heatswell.result.Balances;
import io.github.heatswell.result.RunSummary;
import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.simulation.Workers;
import io.github.heatswell.units.UnitSystem;
import java.io.IOException;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * A run too long to be held in memory. It is simulated while its trace is being written, and drawn day by day.
 */
public final class StreamedRun {

    /** Runs of more samples than this are streamed: beyond, their traces take tens of megabytes. */
    private static final long MAX_HELD = 200_000;

    private final Scenario scenario;
    private final UnitSystem units;
    private final Advice advice;
    private Workers.Progress progress = (done, total) -> {};
    private RunFindings findings;
    private DailyFigures days;

    /**
     * Prepares a run. The check sheet and the sizes of its printed report are simulated here.
     *
     * @param scenario what to run
     * @param units the units of report, tables and charts; the summary is in SI units always
     */
    public StreamedRun(Scenario scenario, UnitSystem units) {
        this.scenario = Objects.requireNonNull(scenario, "scenario");
        this.units = Objects.requireNonNull(units, "units");
        this.advice = Advice.before(scenario, CommandResult.onPage(units));
    }

    /**
     * Tells how far the run is while it is simulated.
     *
     * @param listener hears it, see {@link io.github.heatswell.simulation.Simulation#telling}
     * @return this
     */
    public StreamedRun telling(Workers.Progress listener) {
        progress = Objects.requireNonNull(listener, "listener");
        return this;
    }

    /**
     * Whether a run has so many samples that it should be streamed.
     *
     * @param scenario what to run
     * @return true for more than 200 000 samples
     */
    public static boolean suits(Scenario scenario) {
        return scenario.duration().dividedBy(scenario.sample()) > MAX_HELD;
    }

    /**
     * The answer.
     *
     * @return with its {@link #files}; the report is empty where the trace could not be written, since nothing is known then
     */
    public CommandResult answer() {
        return new CommandResult(
                files(),
                () -> findings()
                        .map(found -> Report.of(
                                        report().content(CommandResult.onScreen(units)),
                                        Balances.of(found.summary()).and(advice.balances()))
                                .thenIfCalm(NextStep.afterRun(
                                        scenario.system(),
                                        found.narrative(scenario.doubts()).findings())))
                        .orElse(Report.NONE));
    }

    /**
     * The files of the run. The first of them simulates while it is written, so they must be written in this order;
     * {@link io.github.heatswell.simulation.SimulationException} comes out of writing if that fails.
     *
     * @return trace.csv, events.csv, summary.json, pressure.png, pressure.svg and report.html
     */
    public List<ResultFile> files() {
        return List.of(
                ResultFile.ofText("trace.csv", this::simulate),
                ResultFile.ofText("events.csv", out -> EventTable.write(found().summary(), units, out)),
                ResultFile.of(
                        "summary.json", out -> SummaryJson.of(scenario, found()).write(out)),
                ResultFile.of("pressure.png", out -> chart().writePng(out)),
                ResultFile.ofText("pressure.svg", out -> chart().writeSvg(out)),
                CommandResult.page(out -> HtmlPage.write(report().content(CommandResult.onPage(units)), out)));
    }

    /**
     * What the run found.
     *
     * @return the findings, or empty as long as the trace was not written
     */
    Optional<RunFindings> findings() {
        return Optional.ofNullable(findings);
    }

    private void simulate(Appendable out) throws IOException {
        Observer observer = new Observer(scenario.system());
        DailyCollector collector = DailyFigures.collector(scenario.system());
        try (TraceWriter rows = TraceTable.writer(scenario.system(), units, out)) {
            RunSummary summary = scenario.simulation().telling(progress).stream((time, values, regime) -> {
                rows.sample(time, values, regime);
                collector.sample(time, values, regime);
                observer.sample(time, values, regime);
            });
            days = collector.figures().completedBy(summary);
            findings = new RunFindings(
                    summary, observer.observed(), Narrative.isByDay(summary) ? days.relieved() : List.of());
        }
    }

    private Results report() {
        List<Finding> told = found().narrative(scenario.doubts()).findings();
        return new Results(scenario, found(), advice.after(told, CommandResult.onPage(units)), chart());
    }

    private RunFindings found() {
        if (findings == null) {
            throw new IllegalStateException("the trace must be written first");
        }
        return findings;
    }

    private Chart chart() {
        return Chart.ofDays(found().summary(), scenario.doubts(), days, units);
    }
}
