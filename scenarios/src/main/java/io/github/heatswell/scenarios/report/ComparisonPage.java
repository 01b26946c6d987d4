package io.github.heatswell.scenarios.report;

import io.github.heatswell.charts.Chart;
import io.github.heatswell.charts.NamedRun;
import io.github.heatswell.narrative.Alarm;
import io.github.heatswell.narrative.Limit;
import io.github.heatswell.narrative.NamedSummary;
import io.github.heatswell.narrative.Narrative;
import io.github.heatswell.result.Extreme;
import io.github.heatswell.result.RunSummary;
import io.github.heatswell.units.QuantityFormat;
import io.github.heatswell.units.UnitSystem;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** What the printed report says of several runs held against each other. */
final class ComparisonPage {

    private final List<NamedRun> drawn;
    private final List<NamedSummary> runs;
    private final QuantityFormat shown;

    private ComparisonPage(List<NamedRun> drawn, List<NamedSummary> runs, UnitSystem units) {
        this.drawn = drawn;
        this.runs = runs;
        this.shown = QuantityFormat.printed(units).inBoth();
    }

    /**
     * What the report says.
     *
     * @param drawn the runs in the picture
     * @param runs all runs
     * @param chart the picture
     * @param units the units that come first
     * @throws IOException if there are no fonts to draw with
     */
    static Document of(List<NamedRun> drawn, List<NamedSummary> runs, Chart chart, UnitSystem units)
            throws IOException {
        return new ComparisonPage(drawn, runs, units).content(chart);
    }

    private Document content(Chart chart) throws IOException {
        Narrative narrative = Narrative.comparing(runs, drawn.size());
        String answer = narrative.headline().text(shown) + ".";
        List<String> remarks = new ArrayList<>(Doubtful.remarks(runs));
        narrative.remarks().forEach(remark -> remarks.add(remark.text(shown)));
        boolean vessel =
                runs.stream().anyMatch(run -> run.summary().system().vessel().isPresent());
        List<Document.Section> sections = new ArrayList<>();
        sections.add(Document.answer("", answer, remarks, ""));
        sections.add(Document.pictures(List.of(PagePicture.ofRuns(chart, answer)), List.of(figures())));
        if (vessel) {
            sections.add(CommissioningList.general().section());
        }
        sections.add(PageMethods.of(drawn));
        String names = runs.stream().map(NamedSummary::name).collect(Collectors.joining(", "));
        return Document.of("Comparison of " + runs.size() + " runs", names, alarms(), sections, shown);
    }

    private List<AlarmNote> alarms() {
        List<AlarmNote> hazards = new ArrayList<>();
        List<AlarmNote> warnings = new ArrayList<>();
        for (NamedSummary run : runs) {
            List<Alarm> alarms = Narrative.of(run.summary(), run.doubts()).alarms();
            Map<Boolean, List<Alarm>> byHazard =
                    alarms.stream().collect(Collectors.partitioningBy(alarm -> alarm.level() == Alarm.Level.HAZARD));
            hazards.addAll(Alarms.notes(byHazard.get(true), " in " + run.name(), shown));
            warnings.addAll(Alarms.notes(byHazard.get(false), " in " + run.name(), shown));
        }
        hazards.addAll(warnings);
        return hazards;
    }

    private Grid figures() {
        return new Grid(
                "The runs side by side, gauge pressures",
                List.of("Run", "Peak", "After", "Relieved", "Room below the relief set"),
                runs.stream().map(this::row).toList());
    }

    private List<String> row(NamedSummary run) {
        RunSummary result = run.summary();
        Extreme peak = result.extremes().highestPressure();
        return List.of(
                run.name(),
                shown.pressure(result.gauge(peak.value())),
                shown.time(peak.time()),
                shown.volume(result.totals().relieved()),
                Limit.reliefSet(result)
                        .map(limit -> RunRows.room(limit, shown))
                        .orElseGet(() -> RunRows.withoutRelief(result)));
    }
}
