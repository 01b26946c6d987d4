package io.github.heatswell.scenarios.teaching;

import io.github.heatswell.assessment.Measure;
import io.github.heatswell.assessment.Measure.Kind;
import io.github.heatswell.assessment.Statement;
import io.github.heatswell.narrative.NamedRun;
import io.github.heatswell.result.EventKind;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.units.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** What a chart of a lesson shows, for those who cannot see it: its own runs and no others. */
final class ChartWords {

    /** A pressure that moves by less than this stays where it is (Pa). */
    private static final double STILL = 5e3;

    private ChartWords() {}

    static String of(List<NamedRun> runs, UnitSystem units) {
        return runs.stream()
                .map(one -> one.name() + ": "
                        + said(one.result()).stream()
                                .map(part -> part.text(units))
                                .collect(Collectors.joining("; ", "", ".")))
                .collect(Collectors.joining(" ", "Chart of the gauge pressure over time. ", ""));
    }

    private static List<Statement> said(RunResult run) {
        List<Statement> parts = new ArrayList<>();
        Measure start = new Measure(Kind.GAUGE_PRESSURE, RunMetrics.supply(run));
        Measure peak = new Measure(Kind.GAUGE_PRESSURE, RunMetrics.peak(run));
        double lowest = run.gauge(run.extremes().lowestPressure().value());
        if (peak.value() - start.value() < STILL) {
            parts.add(Statement.of("the pressure stays at {}", start));
        } else {
            String falls = start.value() - lowest < STILL ? "" : ", falls to {}";
            Measure when =
                    new Measure(Kind.TIME, run.extremes().highestPressure().time());
            List<Measure> measures = new ArrayList<>(List.of(start, peak, when));
            if (!falls.isEmpty()) {
                measures.add(1, new Measure(Kind.GAUGE_PRESSURE, lowest));
            }
            parts.add(Statement.of(
                    "the pressure starts at {}" + falls + " and reaches at most {} after {}",
                    measures.toArray(Measure[]::new)));
        }
        parts.add(Statement.of(
                "the hottest water reaches {}",
                new Measure(
                        Kind.TEMPERATURE, run.extremes().highestTemperature().value())));
        parts.add(relief(run));
        run.hazard()
                .ifPresent(event -> parts.add(Statement.of(
                        "the run ends in a hazard: " + event.kind().description() + " after {}",
                        new Measure(Kind.TIME, event.time()))));
        return parts;
    }

    private static Statement relief(RunResult run) {
        if (run.system().reliefValves().isEmpty()) {
            return Statement.of("there is no relief valve");
        }
        return run.first(EventKind.RELIEF_OPENED)
                .map(opened -> Statement.of(
                        "the relief valve opens after {} and releases {}",
                        new Measure(Kind.TIME, opened.time()),
                        new Measure(Kind.VOLUME, RunMetrics.relieved(run))))
                .orElseGet(() -> Statement.of("the relief valve stays shut"));
    }
}
