package io.github.heatswell.simulation;

import io.github.heatswell.result.Channel;
import io.github.heatswell.result.Event;
import io.github.heatswell.result.EventKind;
import io.github.heatswell.result.Extreme;
import io.github.heatswell.result.Extremes;
import io.github.heatswell.result.Regime;
import io.github.heatswell.result.TimeGrid;
import io.github.heatswell.result.Trace;
import io.github.heatswell.simulation.Modes.PressureRule;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * Writes down what happens: samples on the grid, events at their located times, extremes of the continuous solution.
 *
 * <p>A sample that falls on an event shows the state after it. Samples inside a step are taken from the step's continuous
 * solution; the solver does not stop for them.
 */
final class Recorder {

    private final Plant plant;
    private final Balance balance;
    private final double coldDensity;
    private final double interval;
    private final Map<Channel, double[]> columns = new EnumMap<>(Channel.class);
    private final List<Regime> regimes = new ArrayList<>();
    private final List<Event> events = new ArrayList<>();
    private final Peak highestPressure = new Peak(1);
    private final Peak lowestPressure = new Peak(-1);
    private final Peak highestTemperature = new Peak(1);
    private final Peak mostVesselWater = new Peak(1);
    private final double[] rates;

    private double segmentStart;
    private Modes modes;

    Recorder(Plant plant, Balance balance, double coldDensity, TimeGrid planned) {
        this.plant = plant;
        this.balance = balance;
        this.coldDensity = coldDensity;
        this.interval = planned.step();
        this.rates = new double[StateVector.length(plant.valves.size())];
        for (Channel channel : Channel.values()) {
            columns.put(channel, new double[planned.count()]);
        }
    }

    /** A running maximum (or minimum, with sign -1) and when it was first reached. */
    private static final class Peak {
        /** A value that exceeds the last by less than this (-) is the same again, reached later. */
        private static final double SAME_VALUE = 1e-9;

        private final int sign;
        private double value = Double.NaN;
        private double time;

        Peak(int sign) {
            this.sign = sign;
        }

        void see(double candidate, double at) {
            if (!(sign * (candidate - value) <= SAME_VALUE * Math.abs(value))) {
                value = candidate;
                time = at;
            }
        }

        Extreme extreme() {
            return new Extreme(value, time);
        }
    }

    /**
     * A segment begins.
     *
     * @param time since the start of the run (s)
     * @param y the state
     * @param now the modes of the segment
     */
    void begin(double time, double[] y, Modes now) {
        segmentStart = time;
        modes = now;
        look(time, y);
    }

    /** A step of the segment is finished. */
    void step(SegmentSolver.Step step) {
        double end = segmentStart + step.to();
        double sampled = end - TimeGrid.SAME_INSTANT * interval;
        for (double next = nextSample(); next < sampled; next = nextSample()) {
            sample(next, step.state(Math.max(step.from(), next - segmentStart)));
        }
        double[] last = step.state(step.to());
        look(end, last);
        seeTurningPoint(step);
    }

    /** The run is over; the last instant is a sample whether or not it lies on the grid. */
    Trace end(double time, double[] y) {
        sample(time, y);
        int count = regimes.size();
        Map<Channel, double[]> trimmed = new EnumMap<>(Channel.class);
        columns.forEach((channel, column) -> trimmed.put(channel, Arrays.copyOf(column, count)));
        return new Trace(new TimeGrid(interval, time), trimmed, regimes);
    }

    /** Takes down an event. */
    void event(double time, EventKind kind, String device, double[] y) {
        events.add(new Event(time, kind, device, y[StateVector.PRESSURE], y[StateVector.TANK]));
    }

    List<Event> events() {
        return events;
    }

    Extremes extremes() {
        return new Extremes(
                highestPressure.extreme(),
                lowestPressure.extreme(),
                highestTemperature.extreme(),
                mostVesselWater.extreme());
    }

    /** The time (s) of the next sample to take. */
    private double nextSample() {
        return regimes.size() * interval;
    }

    private void sample(double time, double[] y) {
        int row = regimes.size();
        put(Channel.WATER_MEAN, row, y[StateVector.TANK]);
        put(Channel.PRESSURE_ABSOLUTE, row, y[StateVector.PRESSURE]);
        put(Channel.VESSEL_WATER, row, balance.vesselWater(y, modes.diaphragm));
        put(Channel.RELIEF_FLOW, row, reliefFlow(y));
        put(Channel.RELIEVED_TOTAL, row, relieved(y) / coldDensity);
        put(Channel.INFLOW_TOTAL, row, y[StateVector.LET_IN] / coldDensity);
        put(Channel.HEATER_POWER, row, modes.heaterOn ? plant.heaterInput : 0);
        regimes.add(regime());
        look(time, y);
    }

    private void put(Channel channel, int row, double value) {
        columns.get(channel)[row] = value;
    }

    private double reliefFlow(double[] y) {
        if (!modes.anyValveOpen()) {
            return 0;
        }
        balance.evaluate(y, modes, rates);
        return Math.max(0, balance.reliefFlow()) / coldDensity;
    }

    private static double relieved(double[] y) {
        double sum = 0;
        for (int i = StateVector.RELIEVED; i < y.length; i++) {
            sum += y[i];
        }
        return sum;
    }

    private Regime regime() {
        if (modes.rule == PressureRule.HELD) {
            return plant.checked ? Regime.FED : Regime.UNSEALED;
        }
        return modes.anyValveOpen() ? Regime.RELIEVING : Regime.SEALED;
    }

    private void look(double time, double[] y) {
        highestPressure.see(y[StateVector.PRESSURE], time);
        lowestPressure.see(y[StateVector.PRESSURE], time);
        highestTemperature.see(y[StateVector.TANK], time);
        mostVesselWater.see(balance.vesselWater(y, modes.diaphragm), time);
    }

    /** Looks where pressure turned round inside a step, by bisection on its rate. */
    private void seeTurningPoint(SegmentSolver.Step step) {
        double low = step.from();
        double high = step.to();
        double before = step.rates(low)[StateVector.PRESSURE];
        if (!(before * step.rates(high)[StateVector.PRESSURE] < 0)) {
            return;
        }
        while (high - low > 1e-3) {
            double middle = 0.5 * (low + high);
            if (before * step.rates(middle)[StateVector.PRESSURE] > 0) {
                low = middle;
            } else {
                high = middle;
            }
        }
        look(segmentStart + low, step.state(low));
    }
}
