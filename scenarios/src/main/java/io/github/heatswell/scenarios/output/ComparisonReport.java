package io.github.heatswell.scenarios.output;

import io.github.heatswell.charts.Headline;
import io.github.heatswell.charts.NamedRun;
import io.github.heatswell.result.Extreme;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.scenarios.wording.Shown;
import io.github.heatswell.scenarios.wording.Wrapped;
import io.github.heatswell.units.UnitSystem;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

/**
 * Several runs side by side, for reading on a terminal of 80 columns. Hazards come first.
 */
public final class ComparisonReport {

    private static final int NAME_WIDTH = 26;
    private static final String ROW = "%-" + NAME_WIDTH + "s %10s %13s %10s  %s";

    private final List<NamedRun> runs;
    private final Shown shown;
    private final StringBuilder text = new StringBuilder();
    private String written = "";

    /**
     * Prepares the report of a comparison.
     *
     * @param runs what was run, with different names
     * @param units the units to show it in
     */
    public ComparisonReport(List<NamedRun> runs, UnitSystem units) {
        this.runs = List.copyOf(runs);
        this.shown = new Shown(units);
    }

    /**
     * Tells the report that files were written.
     *
     * @param folder where they are
     * @param files the files
     */
    public void written(Path folder, List<ResultFile> files) {
        written = WrittenFiles.line(folder, files);
    }

    /**
     * The report.
     *
     * @return lines of at most 79 columns, but for paths
     */
    public String text() {
        text.setLength(0);
        runs.forEach(this::hazard);
        text.append(Wrapped.lines(Sentence.of(Headline.comparing(runs, shown.units())), "", ""))
                .append('\n');
        text.append(String.format(Locale.ROOT, ROW, "", "peak", "after", "relieved", "relief set"))
                .append('\n');
        runs.forEach(this::row);
        return text.append(written).append('\n').append(Caution.text()).toString();
    }

    private void hazard(NamedRun run) {
        run.result()
                .hazard()
                .ifPresent(hazard -> text.append(Wrapped.lines(
                                "HAZARD in " + run.name() + ": "
                                        + Alarm.of(hazard, run.result().summary(), shown),
                                "",
                                "        "))
                        .append('\n'));
    }

    private void row(NamedRun run) {
        RunResult result = run.result();
        Extreme peak = result.extremes().highestPressure();
        text.append(String.format(
                        Locale.ROOT,
                        ROW,
                        shortened(run.name()),
                        shown.pressure(result.gauge(peak.value())),
                        Shown.time(peak.time()),
                        shown.volume(result.totals().relieved()),
                        room(result)))
                .append('\n');
    }

    private String room(RunResult result) {
        return Limit.reliefSet(result.summary())
                .map(limit -> limit.reached() ? "reached" : shown.pressure(limit.margin()) + " left")
                .orElse("none");
    }

    private static String shortened(String name) {
        return name.length() <= NAME_WIDTH ? name : name.substring(0, NAME_WIDTH - 3) + "...";
    }
}
