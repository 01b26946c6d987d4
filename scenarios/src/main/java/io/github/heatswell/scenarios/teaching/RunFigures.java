package io.github.heatswell.scenarios.teaching;

import io.github.heatswell.result.Channel;
import io.github.heatswell.result.Event;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.result.Trace;
import io.github.heatswell.system.ReducingValve;
import io.github.heatswell.system.ReliefValve;
import java.util.stream.IntStream;

/**
 * What a house is set to, and what its run shows at a moment. SI units, pressures as a gauge shows them.
 *
 * @param run the run
 */
record RunFigures(RunResult run) {

    /** Slopes are taken over so much warming (K). */
    private static final double SLOPE = 3;

    double atmosphere() {
        return run.system().site().atmosphere();
    }

    double peak() {
        return run.peak().value();
    }

    double lowest() {
        return run.gauge(run.extremes().lowestPressure().value());
    }

    double hottest() {
        return run.extremes().highestTemperature().value();
    }

    /** The pressure of the supply at the start. */
    double supply() {
        return run.gauge(run.system().supplyAtStart().absolute(atmosphere()));
    }

    /** The pressure of the mains at the start. */
    double mains() {
        return run.gauge(run.trace().value(Channel.MAINS_ABSOLUTE, 0));
    }

    /** How far the peak is above the supply. */
    double rise() {
        return peak() - supply();
    }

    /** The first relief valve. */
    ReliefValve relief() {
        return run.system().reliefValves().get(0);
    }

    ReducingValve reducer() {
        return run.system().supply().reducingValve().orElseThrow();
    }

    double reducerSet() {
        return reducer().set().gauge(atmosphere());
    }

    double reliefSet() {
        return relief().setPressure().gauge(atmosphere());
    }

    double reseat() {
        return relief().reseatPressure().gauge(atmosphere());
    }

    double workingPressure() {
        return run.system().tank().workingPressure().gauge(atmosphere());
    }

    double cold() {
        return run.system().coldAtStart();
    }

    double setPoint() {
        return run.system().heater().setPoint();
    }

    double relieved() {
        return run.totals().relieved();
    }

    boolean happens(Event.Kind kind) {
        return run.first(kind).isPresent();
    }

    boolean opened() {
        return happens(Event.Kind.RELIEF_OPENED);
    }

    double opening() {
        return time(Event.Kind.RELIEF_OPENED);
    }

    /** When something first happens, or the end of the run. */
    double time(Event.Kind kind) {
        return run.first(kind).map(Event::time).orElse(run.end());
    }

    /** The pressure when something first happens, or the peak. */
    double pressureAt(Event.Kind kind) {
        return run.first(kind).map(event -> run.gauge(event.pressureAbsolute())).orElse(peak());
    }

    /** How long the heater first runs. */
    double heating() {
        return time(Event.Kind.HEATER_OFF) - time(Event.Kind.HEATER_ON);
    }

    /** Whether the heater gives no more heat once its cut-out has tripped. */
    boolean staysCool() {
        Trace trace = run.trace();
        double tripped = time(Event.Kind.CUT_OUT_TRIPPED);
        return IntStream.range(0, trace.count())
                .filter(i -> trace.grid().time(i) > tripped)
                .allMatch(i -> trace.value(Channel.HEATER_POWER, i) == 0);
    }

    /** The pressure when the heater first stops (Pa absolute). */
    double warmAbsolute() {
        return pressureAt(Event.Kind.HEATER_OFF) + atmosphere();
    }

    /** By how much the pressure has risen when the heater first stops. */
    double warmRise() {
        return pressureAt(Event.Kind.HEATER_OFF) - supply();
    }

    /** The part of a rigid tank's rise that stretching alone leaves, kappa / (kappa + C). */
    double stretchedPart() {
        double water = WaterFacts.compressibility(cold());
        return water / (water + run.system().tank().shell().compliance());
    }

    /** The mean temperature when the tap is shut. */
    double afterDraw() {
        return run.first(Event.Kind.DRAW_ENDED).map(Event::waterTemperature).orElse(setPoint());
    }

    /** What the supply let in by the time it shut, beyond what was drawn. */
    double surplus() {
        double shut = time(Event.Kind.SUPPLY_CLOSED) + run.trace().grid().step();
        return at(Channel.INFLOW_TOTAL, shut)
                - at(Channel.INFLOW_TOTAL, time(Event.Kind.DRAW_STARTED))
                - run.totals().drawn();
    }

    /** The temperature at which the pressure was lowest. */
    double turn() {
        return at(Channel.WATER_MEAN, run.extremes().lowestPressure().time());
    }

    /** The rise of the pressure per degree at the start (Pa/K). */
    double earlySlope() {
        return slope(cold());
    }

    /** The rise of the pressure per degree at the end (Pa/K). */
    double lateSlope() {
        return slope(hottest() - SLOPE);
    }

    private double slope(double temperature) {
        return (whenWarmed(temperature + SLOPE) - whenWarmed(temperature)) / SLOPE;
    }

    /** The pressure when the mean temperature of the water first passes one (Pa absolute). */
    private double whenWarmed(double temperature) {
        Trace trace = run.trace();
        for (int i = 0; i + 1 < trace.count(); i++) {
            double here = trace.value(Channel.WATER_MEAN, i);
            double next = trace.value(Channel.WATER_MEAN, i + 1);
            if (here <= temperature && temperature < next) {
                return between(Channel.PRESSURE_ABSOLUTE, i, (temperature - here) / (next - here));
            }
        }
        return trace.value(Channel.PRESSURE_ABSOLUTE, trace.count() - 1);
    }

    /** When a channel first passes a value, or the end of the run. */
    double timeWhen(Channel channel, double value) {
        Trace trace = run.trace();
        for (int i = 0; i + 1 < trace.count(); i++) {
            double here = trace.value(channel, i);
            double next = trace.value(channel, i + 1);
            if ((here < value) != (next < value)) {
                return trace.grid().time(i)
                        + (value - here)
                                / (next - here)
                                * (trace.grid().time(i + 1) - trace.grid().time(i));
            }
        }
        return run.end();
    }

    /** The value of a channel at a moment. */
    double at(Channel channel, double time) {
        Trace trace = run.trace();
        int before = Math.min((int) (time / trace.grid().step()), trace.count() - 2);
        double start = trace.grid().time(before);
        return between(channel, before, (time - start) / (trace.grid().time(before + 1) - start));
    }

    private double between(Channel channel, int index, double part) {
        return (1 - part) * run.trace().value(channel, index)
                + part * run.trace().value(channel, index + 1);
    }
}
