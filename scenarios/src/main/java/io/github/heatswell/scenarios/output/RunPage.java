package io.github.heatswell.scenarios.output;

import io.github.heatswell.assessment.Finding;
import io.github.heatswell.assessment.Findings;
import io.github.heatswell.charts.Headline;
import io.github.heatswell.charts.RunChart;
import io.github.heatswell.result.RunSummary;
import io.github.heatswell.scenarios.choice.YearlyWater;
import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.scenarios.report.AlarmNote;
import io.github.heatswell.scenarios.report.Answer;
import io.github.heatswell.scenarios.report.Cost;
import io.github.heatswell.scenarios.report.Grid;
import io.github.heatswell.scenarios.report.Heading;
import io.github.heatswell.scenarios.report.Options;
import io.github.heatswell.scenarios.report.ReportContent;
import io.github.heatswell.system.Supply;
import io.github.heatswell.units.QuantityFormat;
import io.github.heatswell.units.UnitSystem;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What the printed report says of a run. */
final class RunPage {

    private final Scenario scenario;
    private final QuantityFormat shown;

    RunPage(Scenario scenario, UnitSystem units) {
        this.scenario = scenario;
        this.shown = QuantityFormat.printed(units).inBoth();
    }

    /** How quantities are written. */
    QuantityFormat shown() {
        return shown;
    }

    /**
     * What the report says.
     *
     * @throws IOException if there are no fonts to draw with
     */
    ReportContent content(RunFindings findings, Advice advice, RunChart chart) throws IOException {
        RunSummary result = findings.summary();
        List<Finding> found = Findings.of(result, Unknowns.of(scenario));
        String answer = Headline.of(result, shown) + ".";
        Heading heading = new Heading(
                scenario.title(), scenario.question(), scenario.expectation(), scenario.name(), Optional.empty());
        List<AlarmNote> alarms = new ArrayList<>(Alarms.of(result, found, shown));
        alarms.addAll(OpenBalance.ofAdvice(advice.balances()));
        return ReportContent.builder(heading, shown.units())
                .alarms(alarms)
                .answer(new Answer(answer, Remarks.of(findings, shown)))
                .pictures(List.of(PagePicture.of(chart, answer)))
                .figures(List.of(figures(findings)))
                .check(advice.check())
                .commissioning(mayBeFitted(result, found))
                .findings(PageFindings.notes(found, shown))
                .options(options(result, advice))
                .basis(PageBasis.of(scenario, !advice.check().readings().isEmpty(), shown))
                .methods(PageMethods.of(result, shown))
                .build();
    }

    private Grid figures(RunFindings findings) {
        List<List<String>> rows = RunRows.of(findings, shown).stream()
                .map(row -> List.of(PageWords.capitalised(row.label()), row.value(), row.remark()))
                .toList();
        return new Grid("What the run found, gauge pressures", List.of("What", "Value", "Remark"), rows);
    }

    private Options options(RunSummary result, Advice advice) {
        List<Cost> costs = result.totals().relieved() > 0 && result.hazard().isEmpty()
                ? List.of(PageCosts.of("As it is", YearlyWater.of(result), scenario.costs()))
                : List.of();
        return new Options(advice.sizes(), List.of(), costs);
    }

    /** Whether a vessel is there or may be put in: behind a closed feed, and not while the heater is to stay off. */
    private boolean mayBeFitted(RunSummary result, List<Finding> found) {
        boolean closed = result.system().supply().arrangement() != Supply.Arrangement.DIRECT;
        boolean vessel = result.system().vessel().isPresent();
        return (vessel || closed) && PageFindings.notBefore(found, shown).isEmpty();
    }
}
