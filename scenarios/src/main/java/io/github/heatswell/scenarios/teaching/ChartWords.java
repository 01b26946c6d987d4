package io.github.heatswell.scenarios.teaching;

import io.github.heatswell.assessment.Measure;
import io.github.heatswell.assessment.Statement;
import io.github.heatswell.narrative.NamedRun;
import io.github.heatswell.result.Event;
import io.github.heatswell.result.EventKind;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.units.UnitSystem;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** What a chart of a lesson shows, for those who cannot see it: its own runs and no others. */
final class ChartWords {

    private ChartWords() {}

    static String of(List<NamedRun> runs, UnitSystem units) {
        return runs.stream()
                .map(one -> one.name() + ": " + sentence(one.result()).text(units))
                .collect(Collectors.joining(" ", "Chart of the gauge pressure over time. ", ""));
    }

    private static Statement sentence(RunResult run) {
        double supply = run.gauge(
                run.system().supplyAtStart().absolute(run.system().site().atmosphere()));
        Measure start = new Measure(Measure.Kind.GAUGE_PRESSURE, supply);
        Measure peak = new Measure(
                Measure.Kind.GAUGE_PRESSURE,
                run.gauge(run.extremes().highestPressure().value()));
        Measure when =
                new Measure(Measure.Kind.TIME, run.extremes().highestPressure().time());
        Optional<Event> opened = run.first(EventKind.RELIEF_OPENED);
        if (opened.isEmpty()) {
            return Statement.of("from {} to at most {} after {}; the relief valve stays shut.", start, peak, when);
        }
        return Statement.of(
                "from {} to at most {} after {}; the relief valve opens after {} and releases {}.",
                start,
                peak,
                when,
                new Measure(Measure.Kind.TIME, opened.get().time()),
                new Measure(Measure.Kind.VOLUME, run.totals().relieved()));
    }
}
