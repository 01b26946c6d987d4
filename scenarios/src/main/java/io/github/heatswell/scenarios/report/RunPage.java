package io.github.heatswell.scenarios.report;

import io.github.heatswell.assessment.Finding;
import io.github.heatswell.charts.Chart;
import io.github.heatswell.narrative.Narrative;
import io.github.heatswell.result.RunSummary;
import io.github.heatswell.scenarios.choice.YearlyWater;
import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.system.Supply;
import io.github.heatswell.units.QuantityFormat;
import io.github.heatswell.units.UnitSystem;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

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
    Document content(RunFindings findings, Advice advice, Chart chart) throws IOException {
        RunSummary result = findings.summary();
        Narrative narrative = findings.narrative(scenario.doubts());
        List<Finding> found = narrative.findings();
        String answer = narrative.headline().text(shown) + ".";
        List<String> remarks =
                narrative.remarks().stream().map(remark -> remark.text(shown)).toList();
        List<AlarmNote> alarms = new ArrayList<>(Alarms.notes(narrative.alarms(), "", shown));
        alarms.addAll(OpenBalance.ofAdvice(advice.balances()));
        List<Document.Section> sections = new ArrayList<>();
        sections.add(Document.answer(
                scenario.question(), answer, Doubtful.before(scenario, remarks), scenario.expectation()));
        sections.add(Document.pictures(List.of(PagePicture.ofRuns(chart, answer)), List.of(figures(findings))));
        sections.add(advice.check().section(shown));
        if (mayBeFitted(result, found)) {
            sections.add(CommissioningList.of(result.system(), shown).section());
        }
        sections.add(PageFindings.section(found, shown));
        sections.add(
                PageSizes.section(advice.sizes(), List.of(), PageCosts.of(water(result), scenario.costs(), shown)));
        sections.add(PageBasis.of(scenario, !advice.check().readings().isEmpty(), shown));
        sections.add(PageMethods.of(result, shown));
        return Document.of(scenario.title(), scenario.name(), alarms, sections, shown);
    }

    private Grid figures(RunFindings findings) {
        List<List<String>> rows = RunRows.of(findings, shown).stream()
                .map(row -> List.of(PageWords.capitalised(row.label()), row.value(), row.remark()))
                .toList();
        return new Grid("What the run found, gauge pressures", List.of("What", "Value", "Remark"), rows);
    }

    private Map<String, YearlyWater> water(RunSummary result) {
        return YearlyWater.ofNormalLife(result, scenario.doubts())
                .filter(year -> year.volume() > 0)
                .map(year -> Map.of("As it is", year))
                .orElse(Map.of());
    }

    /** Whether a vessel is there or may be put in: behind a closed feed, and not while the heater is to stay off. */
    private boolean mayBeFitted(RunSummary result, List<Finding> found) {
        boolean closed = result.system().supply().arrangement() != Supply.Arrangement.DIRECT;
        boolean vessel = result.system().vessel().isPresent();
        return (vessel || closed) && PageFindings.notBefore(found, shown).isEmpty();
    }
}
