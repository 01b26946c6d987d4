package io.github.heatswell.scenarios.output;

import io.github.heatswell.charts.Headline;
import io.github.heatswell.charts.NamedRun;
import io.github.heatswell.charts.RunChart;
import io.github.heatswell.result.Event;
import io.github.heatswell.result.EventKind;
import io.github.heatswell.result.Extreme;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.result.RunSummary;
import io.github.heatswell.scenarios.report.AlarmNote;
import io.github.heatswell.scenarios.report.Answer;
import io.github.heatswell.scenarios.report.Grid;
import io.github.heatswell.scenarios.report.Heading;
import io.github.heatswell.scenarios.report.ReportContent;
import io.github.heatswell.scenarios.wording.Shown;
import io.github.heatswell.units.UnitSystem;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What the printed report says of several runs held against each other. */
final class ComparisonPage {

    private final List<NamedRun> runs;
    private final Shown shown;

    private ComparisonPage(List<NamedRun> runs, UnitSystem units) {
        this.runs = runs;
        this.shown = Shown.inBoth(units);
    }

    /**
     * What the report says.
     *
     * @throws IOException if there are no fonts to draw with
     */
    static ReportContent of(List<NamedRun> runs, RunChart chart, UnitSystem units) throws IOException {
        return new ComparisonPage(runs, units).content(chart);
    }

    private ReportContent content(RunChart chart) throws IOException {
        String answer = PageWords.glued(Headline.comparingInBoth(runs, shown.units()) + ".");
        boolean vessel =
                runs.stream().anyMatch(run -> run.result().system().vessel().isPresent());
        return ReportContent.builder(heading(), shown.units())
                .alarms(alarms())
                .answer(new Answer(answer, List.of()))
                .pictures(List.of(PagePicture.of(chart, answer)))
                .figures(List.of(figures()))
                .commissioning(vessel)
                .methods(PageMethods.of(runs))
                .build();
    }

    private Heading heading() {
        List<String> names = runs.stream().map(NamedRun::name).toList();
        return new Heading(
                "Comparison of " + runs.size() + " scenarios", "", "", String.join(", ", names), Optional.empty());
    }

    private List<AlarmNote> alarms() {
        List<AlarmNote> hazards = new ArrayList<>();
        List<AlarmNote> warnings = new ArrayList<>();
        for (NamedRun run : runs) {
            RunSummary result = run.result().summary();
            result.hazard().ifPresent(event -> hazards.add(alarm("HAZARD in ", run, event)));
            result.first(EventKind.WORKING_PRESSURE_EXCEEDED)
                    .ifPresent(event -> warnings.add(alarm("WARNING in ", run, event)));
        }
        hazards.addAll(warnings);
        return hazards;
    }

    private AlarmNote alarm(String word, NamedRun run, Event event) {
        String text = Alarm.of(event, run.result().summary(), shown);
        return new AlarmNote(word + run.name(), PageWords.capitalised(text));
    }

    private Grid figures() {
        return new Grid(
                "The runs side by side, gauge pressures",
                List.of("Scenario", "Peak", "After", "Relieved", "Room below the relief set"),
                runs.stream().map(this::row).toList());
    }

    private List<String> row(NamedRun run) {
        RunResult result = run.result();
        Extreme peak = result.extremes().highestPressure();
        return List.of(
                run.name(),
                shown.pressure(result.gauge(peak.value())),
                Shown.time(peak.time()),
                shown.volume(result.totals().relieved()),
                Limit.reliefSet(result.summary())
                        .map(limit -> RunRows.room(limit, shown))
                        .orElse("no relief valve"));
    }
}
