package io.github.heatswell.scenarios.report;

import io.github.heatswell.assessment.Finding;
import io.github.heatswell.charts.Chart;
import io.github.heatswell.charts.table.EventTable;
import io.github.heatswell.charts.table.TraceTable;
import io.github.heatswell.narrative.Alarm;
import io.github.heatswell.narrative.Narrative;
import io.github.heatswell.result.Balances;
import io.github.heatswell.result.Event;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.result.RunSummary;
import io.github.heatswell.scenarios.choice.YearlyWater;
import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.system.Supply;
import io.github.heatswell.units.QuantityFormat;
import io.github.heatswell.units.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What a run answers: its report, and its files.
 */
public final class Results {

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
    Results(Scenario scenario, RunFindings findings, Advice advice, Chart chart) {
        this.scenario = scenario;
        this.findings = findings;
        this.result = findings.summary();
        this.narrative = findings.narrative(scenario.doubts());
        this.found = narrative.findings();
        this.advice = advice;
        this.chart = chart;
    }

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
    public static CommandResult answer(Scenario scenario, RunResult result, UnitSystem units) {
        Objects.requireNonNull(scenario, "scenario");
        RunFindings findings = RunFindings.of(result);
        findings.requireOf(scenario);
        List<Finding> found = findings.narrative(scenario.doubts()).findings();
        Advice advice = Advice.of(scenario, found, CommandResult.onPage(Objects.requireNonNull(units, "units")));
        Chart chart = Chart.of(result, scenario.doubts(), units);
        return CommandResult.of(
                        new Results(scenario, findings, advice, chart)::content,
                        Balances.of(findings.summary()).and(advice.balances()),
                        units,
                        List.of(
                                ResultFile.ofText("trace.csv", out -> TraceTable.write(result, units, out)),
                                ResultFile.ofText("events.csv", out -> EventTable.write(result, units, out)),
                                SummaryJson.of(scenario, findings).file("summary.json")),
                        CommandResult.pictures("pressure", chart))
                .then(NextStep.afterRun(scenario.system(), found));
    }

    Document content(QuantityFormat shown) {
        String answer = narrative.headline().text(shown) + ".";
        String asked = Narrative.verdict(scenario.question(), result, scenario.doubts())
                .map(said -> said + " ")
                .orElse("");
        List<String> remarks = new ArrayList<>(narrative.remarkTexts(shown));
        advice.yardstick()
                .flatMap(yardstick -> yardstick.joined("This run", result.peak().value()))
                .map(joined -> joined.text(shown))
                .ifPresent(remarks::add);
        Optional<String> small = mayBeFitted(shown)
                ? BoughtVessel.presentIsWeak(result.system(), shown)
                        .or(() -> advice.tooSmall(result.system()).map(told -> told.text(shown)))
                : Optional.empty();
        small.filter(first -> result.system().vessels().isEmpty()).ifPresent(first -> remarks.add(0, first));
        // a range that was given may hold both answers; beside a run that discharges, how few do so in a smaller
        // heat-up misleads
        advice.check()
                .mixed()
                .filter(both ->
                        !scenario.uncertain().isEmpty() && result.totals().openings() == 0)
                .ifPresent(both -> remarks.add(0, "Within what is not known, the valve may open. " + both));
        List<AlarmNote> alarms = new ArrayList<>(AlarmNote.notes(narrative.alarms(), "", shown));
        alarms.addAll(AlarmNote.notes(
                Alarm.open(advice.balances(), "the check sheet and the sizes").stream()
                        .toList(),
                "",
                shown));
        List<Document.Section> sections = new ArrayList<>();
        List<Block> said = new ArrayList<>(Document.answer(
                        PageWords.question(scenario, shown),
                        asked + answer,
                        Document.withDoubts(scenario, shown, remarks))
                .blocks());
        said.add(Block.Picture.beside(chart, answer));
        // the page has it among what to do
        small.filter(told -> !result.system().vessels().isEmpty())
                .ifPresent(told -> said.add(
                        scenario.question().isBlank() ? 1 : 2, new Block.Paragraph(told, Block.Tone.PLAIN).onScreen()));
        Block.Grid numbers = RunRows.of(findings, durationAssumed(), shown);
        said.add(numbers.onScreen());
        List<Finding> first = PageFindings.first(found, shown);
        // what may hurt somebody is cured before anything is bought
        List<String> steps = Stream.of(
                        PageFindings.againstHazards(found, shown),
                        small.stream(),
                        first.stream().map(finding -> PageFindings.sentences(finding, shown)))
                .flatMap(each -> each)
                .toList();
        if (!steps.isEmpty()) {
            said.add(new Block.Subheading("What to do").onPage());
            said.add(new Block.Items(steps, Block.ListKind.QUOTED_BULLETS).onPage());
        }
        forTheAuthority(shown).map(Block::onPage).ifPresent(said::add);
        said.addAll(advice.check().reasons());
        sections.add(new Document.Section("The answer", said));
        if (mayBeFitted(shown)) {
            // a vessel that is too small or too weak gets neither settings nor a tag
            sections.add((small.isPresent() ? FitterPaper.general() : FitterPaper.of(result.system(), shown))
                    .section(shown)
                    .below(small.stream().toList()));
        }
        advice.check().section(shown).ifPresent(sections::add);
        if (!result.system().reliefValves().isEmpty()
                && PageFindings.notBefore(found, shown).isEmpty()) {
            sections.add(DripSheet.of(result.system()).section(shown));
        }
        List<Block> rests = new ArrayList<>(List.of(numbers.onPage()));
        if (!scenario.expectation().isBlank()) {
            rests.add(new Block.Quote("Expected beforehand", scenario.expectation()).onPage());
        }
        rests.addAll(PageFindings.section(found, first, shown).blocks());
        sections.add(new Document.Section("Findings", rests).inAppendix());
        List<Block> sizes = new ArrayList<>();
        advice.sizing()
                .flatMap(found -> PageSizes.of(found, result.system(), shown))
                .map(Block.Grid::onPage)
                .ifPresent(sizes::add);
        PageSizes.costs(water(), scenario, shown).forEach(cost -> sizes.add(cost.onPage()));
        sections.add(PageSizes.section(sizes).inAppendix());
        sections.add(PageBasis.of(scenario, !advice.check().readings().isEmpty(), shown)
                .inAppendix());
        sections.add(PageMethods.of(result, shown).inAppendix());
        Document document = Document.of(scenario.title(), scenario.name(), alarms, sections, shown)
                .printedFor(scenario.system());
        return result.first(Event.Kind.WORKING_PRESSURE_EXCEEDED).isPresent()
                ? document
                : document.withinWorkingPressure(result.system().tank().workingPressureGiven());
    }

    /** Which command makes the sheet that an inspector wants; of a house in a file whose vessel there is, or could be. */
    private Optional<Block> forTheAuthority(QuantityFormat shown) {
        Optional<String> against = result.system()
                .vessel()
                .filter(present -> !result.system().hasSeveralVessels())
                .map(present -> " --against "
                        + NextStep.shut(QuantityFormat.ascii(shown.units()).volume(present.volume())));
        return !scenario.source().isEmpty()
                        && mayBeFitted(shown)
                        && (against.isPresent() || advice.sizing().isPresent())
                ? Optional.of(new Block.Paragraph(
                        "An inspector will ask for more. 'heatswell size" + against.orElse("")
                                + "' with the file of this house makes the sheet \u201cFor the authority\u201d: the clauses, the plates,"
                                + " and two sizes compared with the limit.",
                        Block.Tone.QUIET))
                : Optional.empty();
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
