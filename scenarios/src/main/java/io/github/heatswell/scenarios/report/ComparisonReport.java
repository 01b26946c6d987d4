package io.github.heatswell.scenarios.report;

import io.github.heatswell.assessment.Findings;
import io.github.heatswell.charts.Chart;
import io.github.heatswell.charts.table.ComparisonTable;
import io.github.heatswell.charts.table.VariationTable;
import io.github.heatswell.narrative.Headline;
import io.github.heatswell.narrative.Limit;
import io.github.heatswell.narrative.NamedRun;
import io.github.heatswell.narrative.NamedSummary;
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
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

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
        this.shown = QuantityFormat.ascii(units);
    }

    private static List<ResultFile> files(List<String> fields, VariantRuns runs, UnitSystem units) {
        Chart chart = Chart.comparing(runs.drawn(), runs.variants().size(), units);
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
        text.append(Wrapped.lines(found(), "", "")).append('\n');
        text.append(String.format(Locale.ROOT, ROW, "", "peak", "after", "relieved", "relief set"))
                .append('\n');
        runs.forEach(this::row);
        return text.toString();
    }

    private String found() {
        if (drawn.size() == runs.size()) {
            return Sentence.of(Headline.comparing(drawn, drawn.size(), shown));
        }
        Comparator<NamedSummary> byPeak = Comparator.comparingDouble(ComparisonReport::peak);
        NamedSummary lowest = runs.stream().min(byPeak).orElseThrow();
        NamedSummary highest = runs.stream().max(byPeak).orElseThrow();
        long reached = runs.stream()
                .filter(run ->
                        Limit.reliefSet(run.summary()).filter(Limit::reached).isPresent())
                .count();
        return "Peaks go from " + shown.pressure(peak(lowest)) + " (" + lowest.name() + ") to "
                + shown.pressure(peak(highest)) + " (" + highest.name() + "). " + (reached == 0 ? "None" : reached)
                + " of "
                + runs.size() + " runs " + (reached == 1 ? "reaches" : "reach")
                + " the set pressure of a relief valve. The picture shows " + drawn.size() + " of them.";
    }

    private static double peak(NamedSummary run) {
        return run.summary().peak().value();
    }

    private boolean isHazard() {
        return runs.stream().anyMatch(run -> Hazards.in(run.summary(), run.doubts()));
    }

    private void hazards() {
        List<NamedSummary> hazards = runs.stream()
                .filter(run -> Hazards.in(run.summary(), run.doubts()))
                .toList();
        hazards.stream().limit(MAX_ALARMS).forEach(this::hazard);
        if (hazards.size() > MAX_ALARMS) {
            String others =
                    hazards.stream().skip(MAX_ALARMS).map(NamedSummary::name).collect(Collectors.joining("; "));
            text.append(Wrapped.lines(
                            "HAZARD in " + (hazards.size() - MAX_ALARMS) + " more runs: " + others + ".",
                            "",
                            "        "))
                    .append('\n');
        }
    }

    private void hazard(NamedSummary run) {
        AlarmNote first = Alarms.of(run.summary(), Findings.of(run.summary(), run.doubts()), shown)
                .get(0);
        text.append(Wrapped.lines("HAZARD in " + run.name() + ": " + first.text(), "", "        "))
                .append('\n');
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
