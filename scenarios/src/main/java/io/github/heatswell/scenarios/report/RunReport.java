package io.github.heatswell.scenarios.report;

import io.github.heatswell.assessment.Finding;
import io.github.heatswell.charts.Chart;
import io.github.heatswell.narrative.Narrative;
import io.github.heatswell.result.Event;
import io.github.heatswell.result.RunSummary;
import io.github.heatswell.scenarios.choice.YearlyWater;
import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.system.Supply;
import io.github.heatswell.units.QuantityFormat;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** What is said of a run. */
final class RunReport {

    private final Scenario scenario;
    private final RunFindings findings;
    private final RunSummary result;
    private final Narrative narrative;
    private final List<Finding> found;
    private final Advice advice;
    private final Chart chart;

    /**
     * The report of a run.
     *
     * @param scenario what was run
     * @param findings what the run found
     * @param advice what the page gives beside the run
     * @param chart the picture
     */
    RunReport(Scenario scenario, RunFindings findings, Advice advice, Chart chart) {
        this.scenario = scenario;
        this.findings = findings;
        this.result = findings.summary();
        this.narrative = findings.narrative(scenario.doubts());
        this.found = narrative.findings();
        this.advice = advice;
        this.chart = chart;
    }

    Document content(QuantityFormat shown) {
        String answer = narrative.headline().text(shown) + ".";
        String asked = Narrative.verdict(scenario.question(), scenario.system(), found)
                .map(said -> said + " ")
                .orElse("");
        List<String> remarks = narrative.texts(shown);
        List<AlarmNote> alarms = new ArrayList<>(Alarms.notes(narrative.alarms(), "", shown));
        alarms.addAll(OpenBalance.ofAdvice(advice.balances()));
        List<Document.Section> sections = new ArrayList<>();
        sections.add(Document.answer(
                scenario.question(),
                asked + answer,
                Doubtful.before(scenario, shown, remarks),
                scenario.expectation()));
        sections.add(Document.pictures(
                List.of(PagePicture.ofRuns(chart, answer)), List.of(RunRows.of(findings, durationAssumed(), shown))));
        sections.add(advice.check().section(shown));
        if (mayBeFitted(shown)) {
            sections.add(CommissioningList.of(result.system(), shown).section());
        }
        sections.add(PageFindings.section(found, shown));
        sections.add(PageSizes.section(advice.sizes(), List.of(), PageCosts.of(water(), scenario.costs(), shown))
                .onPage());
        sections.add(PageBasis.of(scenario, !advice.check().readings().isEmpty(), shown));
        sections.add(PageMethods.of(result, shown));
        Document document = Document.of(scenario.title(), scenario.name(), alarms, sections, shown);
        return result.first(Event.Kind.WORKING_PRESSURE_EXCEEDED).isPresent()
                ? document
                : document.withinWorkingPressure(result.system().tank().workingPressureGiven());
    }

    private boolean durationAssumed() {
        return scenario.assumptions().stream().anyMatch(value -> value.field().equals("run.duration"));
    }

    private Map<String, YearlyWater> water() {
        return YearlyWater.ofNormalLife(result, scenario.doubts())
                .filter(year -> year.volume() > 0)
                .map(year -> Map.of("As it is", year))
                .orElse(Map.of());
    }

    /** Whether a vessel is there or may be put in: behind a closed feed, and not while the heater is to stay off. */
    private boolean mayBeFitted(QuantityFormat shown) {
        boolean closed = result.system().supply().arrangement() != Supply.Arrangement.DIRECT;
        boolean vessel = result.system().vessel().isPresent();
        return (vessel || closed) && PageFindings.notBefore(found, shown).isEmpty();
    }
}
