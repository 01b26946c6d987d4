package io.github.heatswell.scenarios.report;

import io.github.heatswell.charts.Chart;
import io.github.heatswell.charts.NamedRun;
import io.github.heatswell.charts.table.ComparisonTable;
import io.github.heatswell.charts.table.VariationTable;
import io.github.heatswell.narrative.Limit;
import io.github.heatswell.narrative.NamedSummary;
import io.github.heatswell.narrative.Narrative;
import io.github.heatswell.result.Balances;
import io.github.heatswell.result.Extreme;
import io.github.heatswell.result.RunSummary;
import io.github.heatswell.scenarios.variation.Variant;
import io.github.heatswell.scenarios.variation.VariantRuns;
import io.github.heatswell.scenarios.wording.Printable;
import io.github.heatswell.scenarios.wording.Wrapped;
import io.github.heatswell.units.QuantityFormat;
import io.github.heatswell.units.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Several runs side by side, for reading on a terminal of 80 columns. Hazards come first.
 */
public final class ComparisonReport {

    private static final int NAME_WIDTH = 26;
    private static final String ROW = "%-" + NAME_WIDTH + "s %10s %13s %10s  %s";

    /** So many hazards are told one by one; what comes after them is named. */
    private static final int MAX_ALARMS = 6;

    private final List<NamedRun> drawn;
    private final List<NamedSummary> runs;
    private final List<Narrative> told;
    private final QuantityFormat shown;
    private final StringBuilder text = new StringBuilder();

    /**
     * The answer.
     *
     * @param fields the varied fields, none if scenarios were compared as they are
     * @param runs what was run; of more than six, the picture shows some
     * @param units the units of report, tables and picture
     * @return with the files comparison.csv, comparison.png, comparison.svg and report.html, and variations.csv if any field was
     *     varied
     */
    public static Answer answer(List<String> fields, VariantRuns runs, UnitSystem units) {
        return Answer.of(files(fields, runs, units), of(runs.drawn(), runs.named(), units));
    }

    /** The report of some runs, of which some are drawn. */
    static Report of(List<NamedRun> drawn, List<NamedSummary> runs, UnitSystem units) {
        ComparisonReport report = new ComparisonReport(drawn, runs, units);
        return new Report(report.said(), report.isHazard(), report.balances());
    }

    private ComparisonReport(List<NamedRun> drawn, List<NamedSummary> runs, UnitSystem units) {
        this.drawn = List.copyOf(drawn);
        this.runs = List.copyOf(runs);
        this.told = runs.stream()
                .map(run -> Narrative.of(run.summary(), run.doubts()))
                .toList();
        this.shown = QuantityFormat.ascii(units);
    }

    private static List<ResultFile> files(List<String> fields, VariantRuns runs, UnitSystem units) {
        Chart chart = Chart.comparing(runs.drawn(), runs.named(), units);
        List<ResultFile> files = new ArrayList<>(List.of(
                ResultFile.ofText("comparison.csv", out -> ComparisonTable.writeAll(runs.named(), units, out)),
                ResultFile.of("comparison.png", chart::writePng),
                ResultFile.ofText("comparison.svg", chart::writeSvg),
                ResultFile.ofText(
                        "report.html",
                        out -> HtmlPage.write(ComparisonPage.of(runs.drawn(), runs.named(), chart, units), out))));
        if (!fields.isEmpty()) {
            files.add(ResultFile.ofText("variations.csv", out -> VariationTable.write(fields, rows(runs), units, out)));
        }
        return List.copyOf(files);
    }

    private static List<VariationTable.Row> rows(VariantRuns runs) {
        List<VariationTable.Row> rows = new ArrayList<>();
        for (int i = 0; i < runs.variants().size(); i++) {
            Variant variant = runs.variants().get(i);
            RunSummary found = runs.summaries().get(i);
            Optional<Limit> limit = Limit.reliefSet(found);
            rows.add(new VariationTable.Row(
                    new NamedSummary(variant.of(), found),
                    variant.values(),
                    limit.isPresent() ? OptionalDouble.of(limit.get().margin()) : OptionalDouble.empty()));
        }
        return rows;
    }

    private Balances balances() {
        return runs.stream().map(run -> Balances.of(run.summary())).reduce(Balances.NONE, Balances::and);
    }

    private String said() {
        hazards();
        text.append(OpenBalance.lines(balances()));
        Doubtful.remarks(runs)
                .forEach(said ->
                        text.append(Wrapped.lines(Printable.line(said), "", "")).append('\n'));
        Narrative narrative = Narrative.comparing(runs, drawn.size());
        text.append(Wrapped.lines(Sentence.of(narrative.headline().text(shown)), "", ""));
        narrative.remarks().forEach(remark -> text.append(Wrapped.lines(remark.text(shown), "", "")));
        text.append('\n');
        text.append(String.format(Locale.ROOT, ROW, "", "peak", "after", "relieved", "relief set"))
                .append('\n');
        runs.forEach(this::row);
        return text.toString();
    }

    private boolean isHazard() {
        return told.stream().anyMatch(Narrative::isHazard);
    }

    private void hazards() {
        List<String> others = new ArrayList<>();
        for (int i = 0, hazards = 0; i < runs.size(); i++) {
            if (told.get(i).isHazard() && hazards++ < MAX_ALARMS) {
                AlarmNote first = Alarms.notes(told.get(i).alarms(), "", shown).get(0);
                alarm("HAZARD in " + runs.get(i).name() + ": " + first.text());
            } else if (told.get(i).isHazard()) {
                others.add(runs.get(i).name());
            }
        }
        if (!others.isEmpty()) {
            alarm("HAZARD in " + others.size() + " more runs: " + String.join("; ", others) + ".");
        }
    }

    private void alarm(String words) {
        text.append(Wrapped.lines(words, "", "        ")).append('\n');
    }

    private void row(NamedSummary run) {
        RunSummary result = run.summary();
        boolean fits = run.name().length() <= NAME_WIDTH;
        if (!fits) {
            text.append(Wrapped.lines(run.name(), "", "  "));
        }
        Extreme peak = result.extremes().highestPressure();
        text.append(String.format(
                        Locale.ROOT,
                        ROW,
                        fits ? run.name() : "",
                        shown.pressure(result.gauge(peak.value())),
                        shown.time(peak.time()),
                        shown.volume(result.totals().relieved()),
                        room(result)))
                .append('\n');
    }

    private String room(RunSummary result) {
        return Limit.reliefSet(result)
                .map(limit -> limit.reached() ? "reached" : shown.pressureDifference(limit.margin()) + " left")
                .orElse("none");
    }
}
