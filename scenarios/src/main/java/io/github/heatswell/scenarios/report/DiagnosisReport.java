package io.github.heatswell.scenarios.report;

import io.github.heatswell.assessment.Findings;
import io.github.heatswell.assessment.Statement;
import io.github.heatswell.charts.Chart;
import io.github.heatswell.charts.LoggedRuns;
import io.github.heatswell.charts.LoggedRuns.NamedReadings;
import io.github.heatswell.charts.table.ReadingsTable;
import io.github.heatswell.diagnosis.Cause;
import io.github.heatswell.diagnosis.DiagnosisResult;
import io.github.heatswell.diagnosis.HypothesisFit;
import io.github.heatswell.diagnosis.PressureLog;
import io.github.heatswell.narrative.DiagnosisStory;
import io.github.heatswell.narrative.Narrative;
import io.github.heatswell.result.Balances;
import io.github.heatswell.scenarios.choice.VesselChoice;
import io.github.heatswell.scenarios.file.Change;
import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.scenarios.report.Block.Grid;
import io.github.heatswell.units.QuantityFormat;
import io.github.heatswell.units.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Report on the readings of a house. Hazards come first.
 */
public final class DiagnosisReport {

    private static final String REST =
            "How each line was read, the evidence for and against every cause, and the numbers are in report.html.";

    private final DiagnosisAnswer answer;
    private final DiagnosisResult result;
    private final Optional<Chart> chart;
    private final Optional<Statement> supplyFirst;

    DiagnosisReport(DiagnosisAnswer answer, Optional<Chart> chart, Optional<Statement> supplyFirst) {
        this.answer = answer;
        this.supplyFirst = supplyFirst;
        this.result = answer.result();
        this.chart = chart;
    }

    /**
     * The answer.
     *
     * @param answer what was found
     * @param units the units of screen, table and picture; the JSON is in SI units always
     * @return with the files diagnosis.json and, with a log, readings.csv, readings.png and readings.svg; report.html
     */
    public static CommandResult answer(DiagnosisAnswer answer, UnitSystem units) {
        Optional<LoggedRuns> runs = answer.log().map(log -> logged(answer, log));
        Optional<Chart> chart = runs.map(logged -> Chart.of(logged, units));
        List<ResultFile> tables = new ArrayList<>();
        tables.add(DiagnosisJson.of(answer).file("diagnosis.json"));
        runs.ifPresent(logged ->
                tables.add(ResultFile.ofText("readings.csv", out -> ReadingsTable.write(logged, units, out))));
        Balances.Count count = new Balances.Count();
        Optional<Statement> supplyFirst = supplyFirst(answer, count);
        return CommandResult.of(
                        new DiagnosisReport(answer, chart, supplyFirst)::content,
                        answer.balances().and(count.sum()),
                        units,
                        tables,
                        chart.map(drawn -> CommandResult.pictures("readings", drawn))
                                .orElse(List.of()))
                .then(
                        answer.story().isHazardByReading()
                                ? NextStep.afterHazard()
                                : !answer.readings().doubts().isEmpty()
                                        ? NextStep.to("run")
                                        : NextStep.afterDiagnosis(
                                                        answer.scenario().system(), answer.result(), answer.story())
                                                .knowing(rest(answer, units)));
    }

    /** What the readings at rest say of the supply, unless they are to be explained by a reducing valve or mains that are not as described. */
    private static List<Change> rest(DiagnosisAnswer answer, UnitSystem units) {
        Cause best = answer.result().best().cause();
        return best == Cause.REDUCING_VALVE_CREEPS || best == Cause.SUPPLY_PRESSURE
                ? List.of()
                : RestSupply.of(answer.scenario(), answer.story().atRest(), CommandResult.onScreen(units));
    }

    /** That a vessel cures nothing before the supply is lowered; empty where one on sale does, the house has one, or none is asked for. */
    static Optional<Statement> supplyFirst(DiagnosisAnswer answer, Balances.Count count) {
        Scenario scenario = answer.scenario();
        return answer.story().asksForVessel()
                ? Advice.sizing(VesselChoice.of(scenario).build(), scenario, count)
                        .flatMap(found -> Narrative.tooSmall(found, scenario.system()))
                : Optional.empty();
    }

    static LoggedRuns logged(DiagnosisAnswer answer, PressureLog log) {
        List<NamedReadings> runs = answer.story().listed().stream()
                .limit(LoggedRuns.MAX_RUNS)
                .map(DiagnosisReport::run)
                .toList();
        return new LoggedRuns(
                answer.story().headline(),
                answer.scenario().title(),
                answer.scenario().system(),
                log,
                runs);
    }

    /** What the first causes are, which are not likely where none explains the readings. */
    private static String nearest(DiagnosisResult result) {
        return result.misfit() ? "best-fitting" : "likeliest";
    }

    private static NamedReadings run(HypothesisFit fit) {
        String beyond = fit.beyondPlates().isPresent() ? " (goes beyond what the plates allow)" : "";
        return new NamedReadings(fit.inWords() + beyond, fit.gauge(), fit.course());
    }

    /** What is said, with the log and the likeliest causes as a picture where there is a log. */
    Document content(QuantityFormat shown) {
        DiagnosisStory story = answer.story();
        Scenario scenario = answer.scenario();
        List<Block.Picture> pictures = chart
                .map(drawn -> Block.Picture.of(
                        drawn,
                        "The readings and the " + nearest(result)
                                + " causes above, what each cause leaves unexplained below; gauge pressure.",
                        "Chart of the readings over time. " + story.answer().text(shown)))
                .stream()
                .toList();
        return Document.of(
                        scenario.title() + ": what do the readings say?",
                        scenario.name(),
                        alarms(story, shown),
                        List.of(
                                answer(story, shown),
                                Document.pictures(pictures, figures(shown)),
                                new Document.Section(
                                                "The readings", List.of(new DiagnosisTables(answer, shown).readings()))
                                        .onPageInAppendix(),
                                PageFindings.section(Findings.of(scenario.system(), scenario.doubts()), shown)
                                        .onPageInAppendix(),
                                PageBasis.of(scenario, false, shown).onPageInAppendix(),
                                PageMethods.ofDiagnosis().inAppendix()),
                        shown)
                .printedFor(scenario.system())
                .calm(story.calm().text(shown));
    }

    private Document.Section answer(DiagnosisStory story, QuantityFormat shown) {
        List<String> remarks = Stream.of(
                        supplyFirst.map(first -> first.text(shown)),
                        Optional.of(story.details().text(shown)).filter(details -> !details.isEmpty()),
                        story.reducingValve().map(valve -> valve.text(shown)),
                        story.next().map(next -> next.text(shown)),
                        answer.readings().log().flatMap(story::used).map(used -> used.text(shown)))
                .flatMap(Optional::stream)
                .toList();
        List<Block> blocks = new ArrayList<>(
                Document.answer("", story.verdict().text(shown), remarks).blocks());
        // whether the log was understood comes right after the verdict: that rests on it
        blocks.addAll(
                1,
                Stream.concat(
                                answer.readings().doubts().stream().map(doubt -> new AlarmNote("CHECK FIRST", doubt)),
                                story.beyondLimit().stream().map(above -> new AlarmNote("CAUTION", above.text(shown))))
                        .toList());
        Stream.of(
                        answer.readings().understood(),
                        story.start().map(start -> start.text(shown)),
                        answer.scenario().doubts().sentence().map(doubts -> doubts.text(shown)))
                .flatMap(Optional::stream)
                .forEach(remark -> blocks.add(new Block.Paragraph(remark, Block.Tone.QUOTING).onPage()));
        story.notRuledOut().ifPresent(left -> blocks.add(new AlarmNote("CAUTION", left.text(shown))));
        return new Document.Section("The answer", blocks);
    }

    private List<AlarmNote> alarms(DiagnosisStory story, QuantityFormat shown) {
        List<AlarmNote> alarms = new ArrayList<>();
        story.hazard().ifPresent(text -> alarms.add(new AlarmNote("HAZARD", text.text(shown))));
        AlarmNote.of(answer.scenario(), shown)
                .forEach(note -> alarms.add(new AlarmNote(note.word() + " in the house as described", note.text())));
        alarms.addAll(AlarmNote.open(answer.balances(), shown));
        return alarms;
    }

    private List<Block> figures(QuantityFormat shown) {
        DiagnosisTables tables = new DiagnosisTables(answer, shown);
        List<Block> figures = new ArrayList<>();
        figures.add(tables.causes().onPage());
        figures.add(tables.likeliest().onScreen());
        tables.evidence().map(Grid::onPage).ifPresent(figures::add);
        tables.estimates().map(Grid::onPage).forEach(figures::add);
        tables.check().map(Grid::onPage).ifPresent(figures::add);
        tables.installed().ifPresent(figures::add);
        if (!answer.readings().remarks().isEmpty()) {
            figures.add(new Block.Paragraph(
                            "Found in the readings: "
                                    + String.join("; ", answer.readings().remarks()) + ".",
                            Block.Tone.PLAIN)
                    .onScreen());
        }
        figures.add(new Block.Paragraph(REST, Block.Tone.QUIET).onScreen());
        return figures;
    }
}
