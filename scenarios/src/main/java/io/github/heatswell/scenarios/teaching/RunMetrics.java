package io.github.heatswell.scenarios.teaching;

import io.github.heatswell.result.Channel;
import io.github.heatswell.result.Event;
import io.github.heatswell.result.EventKind;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.result.Trace;
import io.github.heatswell.system.ReducingValve;
import io.github.heatswell.system.ReliefValve;
import java.util.stream.IntStream;

/** What a house is set to, and what its run shows at a moment. SI units. */
final class RunMetrics {

    /** Slopes are taken over so much warming (K). */
    static final double SLOPE = 3;

    private RunMetrics() {}

    static double atmosphere(RunResult run) {
        return run.system().site().atmosphere();
    }

    /** The highest pressure (Pa gauge). */
    static double peak(RunResult run) {
        return run.peak().value();
    }

    /** The pressure of the supply at the start (Pa gauge). */
    static double supply(RunResult run) {
        return run.gauge(run.system().supplyAtStart().absolute(atmosphere(run)));
    }

    static ReliefValve relief(RunResult run) {
        return run.system().reliefValves().get(0);
    }

    static ReducingValve reducer(RunResult run) {
        return run.system().supply().reducingValve().orElseThrow();
    }

    /** The set pressure of the first relief valve (Pa gauge). */
    static double reliefSet(RunResult run) {
        return relief(run).setPressure().gauge(atmosphere(run));
    }

    static double cold(RunResult run) {
        return run.system().coldAtStart();
    }

    static double setPoint(RunResult run) {
        return run.system().heater().setPoint();
    }

    /** The reseat pressure of the first relief valve (Pa gauge). */
    static double reseat(RunResult run) {
        return relief(run).reseatPressure().gauge(atmosphere(run));
    }

    /** When a channel first passes a value (SI units), or the end of the run. */
    static double timeWhen(RunResult run, Channel channel, double value) {
        Trace trace = run.trace();
        for (int i = 0; i + 1 < trace.count(); i++) {
            double here = trace.value(channel, i);
            double next = trace.value(channel, i + 1);
            if ((here < value) != (next < value)) {
                double step = trace.grid().time(i + 1) - trace.grid().time(i);
                return trace.grid().time(i) + (value - here) / (next - here) * step;
            }
        }
        return run.end();
    }

    static boolean opened(RunResult run) {
        return run.first(EventKind.RELIEF_OPENED).isPresent();
    }

    static double opening(RunResult run) {
        return time(run, EventKind.RELIEF_OPENED);
    }

    /** When something first happens, or the end of the run. */
    static double time(RunResult run, EventKind kind) {
        return run.first(kind).map(Event::time).orElse(run.end());
    }

    static double pressureAt(RunResult run, EventKind kind) {
        return run.gauge(run.first(kind)
                .map(Event::pressureAbsolute)
                .orElse(run.extremes().highestPressure().value()));
    }

    /** Whether the heater gives no more heat once its cut-out has tripped. */
    static boolean staysCool(RunResult run) {
        Trace trace = run.trace();
        double tripped = time(run, EventKind.CUT_OUT_TRIPPED);
        return IntStream.range(0, trace.count())
                .filter(i -> trace.grid().time(i) > tripped)
                .allMatch(i -> trace.value(Channel.HEATER_POWER, i) == 0);
    }

    static double relieved(RunResult run) {
        return run.totals().relieved();
    }

    /** The rise of the pressure per degree from a temperature on (Pa/K). */
    static double slope(RunResult run, double temperature) {
        return (whenWarmed(run, temperature + SLOPE) - whenWarmed(run, temperature)) / SLOPE;
    }

    /** The pressure when the heater first stops (Pa absolute). */
    static double warmAbsolute(RunResult run) {
        return pressureAt(run, EventKind.HEATER_OFF) + atmosphere(run);
    }

    /** The part of a rigid tank's rise that stretching alone leaves, kappa / (kappa + C). */
    static double stretchedPart(RunResult run) {
        double water = WaterFacts.compressibility(cold(run));
        return water / (water + run.system().tank().shell().compliance());
    }

    /** The mean temperature when the tap is shut (K). */
    static double afterDraw(RunResult run) {
        return run.first(EventKind.DRAW_ENDED).map(Event::waterTemperature).orElse(setPoint(run));
    }

    /** What the supply let in by the time it shut, beyond what was drawn (m3). */
    static double surplus(RunResult run) {
        double shut = time(run, EventKind.SUPPLY_CLOSED) + run.trace().grid().step();
        double start = time(run, EventKind.DRAW_STARTED);
        return at(run, Channel.INFLOW_TOTAL, shut)
                - at(run, Channel.INFLOW_TOTAL, start)
                - run.totals().drawn();
    }

    /** The value of a channel at a moment (SI unit of the channel). */
    static double at(RunResult run, Channel channel, double time) {
        Trace trace = run.trace();
        int before = Math.min((int) (time / trace.grid().step()), trace.count() - 2);
        double part = (time - trace.grid().time(before))
                / (trace.grid().time(before + 1) - trace.grid().time(before));
        return between(trace, channel, before, part);
    }

    /** The pressure when the mean temperature of the water first passes one (Pa absolute). */
    private static double whenWarmed(RunResult run, double temperature) {
        Trace trace = run.trace();
        for (int i = 0; i + 1 < trace.count(); i++) {
            double here = trace.value(Channel.WATER_MEAN, i);
            double next = trace.value(Channel.WATER_MEAN, i + 1);
            if (here <= temperature && temperature < next) {
                return between(trace, Channel.PRESSURE_ABSOLUTE, i, (temperature - here) / (next - here));
            }
        }
        return trace.value(Channel.PRESSURE_ABSOLUTE, trace.count() - 1);
    }

    private static double between(Trace trace, Channel channel, int index, double part) {
        return (1 - part) * trace.value(channel, index) + part * trace.value(channel, index + 1);
    }
}
