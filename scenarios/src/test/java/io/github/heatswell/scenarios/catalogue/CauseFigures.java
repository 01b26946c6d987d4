package io.github.heatswell.scenarios.catalogue;

import io.github.heatswell.result.Channel;
import io.github.heatswell.result.Event;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.result.Trace;
import java.util.Arrays;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;

/** What a dripping valve leaves in the course of a run, as figures. */
final class CauseFigures {

    private static final double DAY = 86_400;
    private static final double MORNING = 6 * 3_600;
    private static final double EVENING = 22 * 3_600;

    private final RunResult result;
    private final Trace trace;

    CauseFigures(RunResult result) {
        this.result = result;
        this.trace = result.trace();
    }

    /** Share of what was relieved that went while the heater was on (-). */
    double whileHeating() {
        return share(this::heating);
    }

    /** Share of what was relieved that went between 22:00 and 06:00 with the heater off (-). */
    double atNight() {
        return share(i -> !heating(i) && night(i));
    }

    /** Share of what was relieved that went with the heater off and no tap open, by day or night (-). */
    double atRest() {
        return share(i -> !heating(i) && !drawing(i));
    }

    /** Share of the time in which the valve discharges water (-). */
    double running() {
        return IntStream.range(0, trace.count())
                        .filter(i -> trace.value(Channel.RELIEF_FLOW, i) > 0)
                        .count()
                / (double) trace.count();
    }

    double openingsADay() {
        return Runs.count(result, Event.Kind.RELIEF_OPENED) * DAY / result.end();
    }

    double litresADay() {
        return Runs.relieved(result) * DAY / result.end();
    }

    /** The pressure that is exceeded half of the time at rest (bar, gauge); not a number if it never rests. */
    double pressureAtRest() {
        double[] sorted = IntStream.range(1, trace.count())
                .filter(i -> !heating(i) && !drawing(i))
                .mapToDouble(i -> Runs.bar(result, trace.value(Channel.PRESSURE_ABSOLUTE, i)))
                .sorted()
                .toArray();
        return sorted.length == 0 ? Double.NaN : sorted[sorted.length / 2];
    }

    /** The supply pressure when the run starts (bar, gauge). */
    double supplied() {
        return result.system().supplyAtStart().gauge(result.system().site().atmosphere()) / 1e5;
    }

    double hottest() {
        return Runs.hottest(result);
    }

    /**
     * How the pressure climbs to the opening valve: the share of the climb's time after which it is half-way up. A half
     * means evenly; less, a jump and then a slow climb; more, a slow climb and then a jump. Not a number where the valve
     * does not open in a climb.
     */
    double halfWay() {
        double[] shares = result.events().stream()
                .filter(event -> event.kind() == Event.Kind.RELIEF_OPENED)
                .mapToDouble(this::halfWay)
                .filter(share -> share == share)
                .sorted()
                .toArray();
        return shares.length == 0 ? Double.NaN : shares[shares.length / 2];
    }

    private double halfWay(Event opening) {
        double from = result.events().stream()
                .filter(event -> event.kind() == Event.Kind.SUPPLY_CLOSED && event.time() < opening.time())
                .mapToDouble(Event::time)
                .max()
                .orElse(Double.NaN);
        int first = (int) Math.ceil(from / trace.grid().time(1));
        int last = (int) Math.floor(opening.time() / trace.grid().time(1));
        if (from != from || last - first < 4 || !heating(last)) {
            return Double.NaN;
        }
        double middle = (trace.value(Channel.PRESSURE_ABSOLUTE, first) + opening.pressureAbsolute()) / 2;
        int half = IntStream.rangeClosed(first, last)
                .filter(i -> trace.value(Channel.PRESSURE_ABSOLUTE, i) >= middle)
                .findFirst()
                .orElse(last);
        return (half - first) / (double) (last - first);
    }

    private double share(IntPredicate when) {
        double part = IntStream.range(1, trace.count())
                .filter(when)
                .mapToDouble(i -> trace.value(Channel.RELIEVED_TOTAL, i) - trace.value(Channel.RELIEVED_TOTAL, i - 1))
                .sum();
        return part / trace.value(Channel.RELIEVED_TOTAL, trace.count() - 1);
    }

    private boolean heating(int i) {
        return at(Channel.HEATER_POWER, i);
    }

    private boolean drawing(int i) {
        return at(Channel.DRAW_FLOW, i);
    }

    /** Whether something is there at a sample or the one before, and so at some time between them. */
    private boolean at(Channel channel, int i) {
        return Arrays.stream(new int[] {Math.max(0, i - 1), i}).anyMatch(k -> trace.value(channel, k) > 0);
    }

    private boolean night(int i) {
        double clock = (result.system().start().timeOfDay() + trace.grid().time(i)) % DAY;
        return clock < MORNING || clock >= EVENING;
    }
}
