package io.github.heatswell.scenarios.output;

import io.github.heatswell.assessment.Findings;
import io.github.heatswell.charts.Headline;
import io.github.heatswell.charts.NamedRun;
import io.github.heatswell.charts.NamedSummary;
import io.github.heatswell.result.Balances;
import io.github.heatswell.result.Extreme;
import io.github.heatswell.result.RunSummary;
import io.github.heatswell.scenarios.report.AlarmNote;
import io.github.heatswell.scenarios.variation.VariantRuns;
import io.github.heatswell.scenarios.wording.Wrapped;
import io.github.heatswell.units.QuantityFormat;
import io.github.heatswell.units.UnitSystem;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/**
 * Several runs side by side, for reading on a terminal of 80 columns. Hazards come first.
 */
public final class ComparisonReport implements Report {

    private static final int NAME_WIDTH = 26;
    private static final String ROW = "%-" + NAME_WIDTH + "s %10s %13s %10s  %s";

    /** So many hazards are told one by one; what comes after them is named. */
    private static final int MAX_ALARMS = 6;

    private final List<NamedRun> drawn;
    private final List<NamedSummary> runs;
    private final QuantityFormat shown;
    private final StringBuilder text = new StringBuilder();
    private String written = "";

    /**
     * Prepares the report of a comparison.
     *
     * @param runs what was run, with different names
     * @param units the units to show it in
     */
    public ComparisonReport(List<NamedRun> runs, UnitSystem units) {
        this(runs, runs.stream().map(NamedSummary::of).toList(), units);
    }

    /**
     * Prepares the report of a comparison of variants.
     *
     * @param runs what was run
     * @param units the units to show it in
     */
    public ComparisonReport(VariantRuns runs, UnitSystem units) {
        this(runs.drawn(), runs.named(), units);
    }

    private ComparisonReport(List<NamedRun> drawn, List<NamedSummary> runs, UnitSystem units) {
        this.drawn = List.copyOf(drawn);
        this.runs = List.copyOf(runs);
        this.shown = QuantityFormat.ascii(units);
    }

    @Override
    public void written(Path folder, List<ResultFile> files) {
        written = WrittenFiles.line(folder, files);
    }

    @Override
    public Balances balances() {
        return runs.stream().map(run -> Balances.of(run.summary())).reduce(Balances.NONE, Balances::and);
    }

    @Override
    public String text() {
        text.setLength(0);
        hazards();
        text.append(OpenBalance.lines(balances()));
        text.append(Wrapped.lines(found(), "", "")).append('\n');
        text.append(String.format(Locale.ROOT, ROW, "", "peak", "after", "relieved", "relief set"))
                .append('\n');
        runs.forEach(this::row);
        return text.append(written).append('\n').append(Caution.text()).toString();
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

    @Override
    public boolean isHazard() {
        return runs.stream().anyMatch(run -> Hazards.in(run.summary()));
    }

    private void hazards() {
        List<NamedSummary> hazards =
                runs.stream().filter(run -> Hazards.in(run.summary())).toList();
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
        AlarmNote first =
                Alarms.of(run.summary(), Findings.of(run.summary()), shown).get(0);
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
