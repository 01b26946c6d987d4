package io.github.heatswell.scenarios.output;

import io.github.heatswell.assessment.Finding;
import io.github.heatswell.assessment.Findings;
import io.github.heatswell.charts.Headline;
import io.github.heatswell.charts.RunChart;
import io.github.heatswell.result.BalanceCount;
import io.github.heatswell.result.RunSummary;
import io.github.heatswell.scenarios.choice.YearlyWater;
import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.scenarios.report.AlarmNote;
import io.github.heatswell.scenarios.report.Answer;
import io.github.heatswell.scenarios.report.Check;
import io.github.heatswell.scenarios.report.Cost;
import io.github.heatswell.scenarios.report.Grid;
import io.github.heatswell.scenarios.report.Heading;
import io.github.heatswell.scenarios.report.Options;
import io.github.heatswell.scenarios.report.ReportContent;
import io.github.heatswell.scenarios.spread.VariedHouse;
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
    private final RunFindings findings;
    private final RunSummary result;
    private final BalanceCount advice;
    private final QuantityFormat shown;

    private RunPage(Scenario scenario, RunFindings findings, BalanceCount advice, UnitSystem units) {
        this.advice = advice;
        this.scenario = scenario;
        this.findings = findings;
        this.result = findings.summary();
        this.shown = QuantityFormat.printed(units).inBoth();
    }

    /**
     * What the report says.
     *
     * @throws IOException if there are no fonts to draw with
     */
    static ReportContent of(
            Scenario scenario, RunFindings findings, RunChart chart, BalanceCount advice, UnitSystem units)
            throws IOException {
        return new RunPage(scenario, findings, advice, units).content(chart);
    }

    private ReportContent content(RunChart chart) throws IOException {
        List<Finding> found = Findings.of(result, Unknowns.of(scenario));
        String answer = Headline.of(result, shown) + ".";
        Heading heading = new Heading(
                scenario.title(), scenario.question(), scenario.expectation(), scenario.name(), Optional.empty());
        Check check = PageCheck.of(
                result.system(), VariedHouse.of(scenario), PageFindings.notBefore(found, shown), advice, shown);
        Options options = options();
        List<AlarmNote> alarms = new ArrayList<>(Alarms.of(result, found, shown));
        alarms.addAll(OpenBalance.ofAdvice(advice.sum()));
        return ReportContent.builder(heading, shown.units())
                .alarms(alarms)
                .answer(new Answer(answer, Remarks.of(findings, shown)))
                .pictures(List.of(PagePicture.of(chart, answer)))
                .figures(List.of(figures()))
                .check(check)
                .commissioning(mayBeFitted(found))
                .findings(PageFindings.notes(found, shown))
                .options(options)
                .basis(PageBasis.of(scenario, !check.readings().isEmpty(), shown))
                .methods(PageMethods.of(result, shown))
                .build();
    }

    private Grid figures() {
        List<List<String>> rows = RunRows.of(findings, shown).stream()
                .map(row -> List.of(PageWords.capitalised(row.label()), row.value(), row.remark()))
                .toList();
        return new Grid("What the run found, gauge pressures", List.of("What", "Value", "Remark"), rows);
    }

    private Options options() {
        List<Cost> costs = result.totals().relieved() > 0 && result.hazard().isEmpty()
                ? List.of(PageCosts.of("As it is", YearlyWater.of(result), scenario.costs()))
                : List.of();
        return new Options(PageSizes.of(scenario, advice), List.of(), costs);
    }

    /** Whether a vessel is there or may be put in: behind a closed feed, and not while the heater is to stay off. */
    private boolean mayBeFitted(List<Finding> found) {
        boolean closed = result.system().supply().arrangement() != Supply.Arrangement.DIRECT;
        boolean vessel = result.system().vessel().isPresent();
        return (vessel || closed) && PageFindings.notBefore(found, shown).isEmpty();
    }
}
