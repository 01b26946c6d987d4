package io.github.heatswell.scenarios.catalogue;

import io.github.heatswell.result.Channel;
import io.github.heatswell.result.Event;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.result.Trace;
import java.util.function.DoublePredicate;
import java.util.stream.IntStream;

/** Runs bundled scenarios and reads their results in units of the house. */
final class Runs {

    private Runs() {}

    static RunResult run(String name) {
        return Catalogue.read(name).simulation().run();
    }

    static double litres(double cubicMetres) {
        return 1000 * cubicMetres;
    }

    static double relieved(RunResult result) {
        return litres(result.totals().relieved());
    }

    static double bar(RunResult result, double absolute) {
        return result.gauge(absolute) / 1e5;
    }

    static double peak(RunResult result) {
        return bar(result, result.extremes().highestPressure().value());
    }

    static double lowest(RunResult result) {
        return bar(result, result.extremes().lowestPressure().value());
    }

    static double hottest(RunResult result) {
        return result.extremes().highestTemperature().value() - 273.15;
    }

    static long count(RunResult result, Event.Kind kind) {
        return result.events().stream().filter(event -> event.kind() == kind).count();
    }

    static double first(RunResult result, Event.Kind kind) {
        return result.first(kind).map(Event::time).orElseThrow();
    }

    /** The share of what was relieved that went by where a channel has some value (-). */
    static double share(RunResult result, Channel channel, DoublePredicate holds) {
        Trace trace = result.trace();
        double part = IntStream.range(1, trace.count())
                .filter(i -> holds.test(trace.value(channel, i)) || holds.test(trace.value(channel, i - 1)))
                .mapToDouble(i -> trace.value(Channel.RELIEVED_TOTAL, i) - trace.value(Channel.RELIEVED_TOTAL, i - 1))
                .sum();
        return part / trace.value(Channel.RELIEVED_TOTAL, trace.count() - 1);
    }
}
