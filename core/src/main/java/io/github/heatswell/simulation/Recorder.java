package io.github.heatswell.simulation;

import io.github.heatswell.result.Channel;
import io.github.heatswell.result.Event;
import io.github.heatswell.result.EventKind;
import io.github.heatswell.result.Extreme;
import io.github.heatswell.result.Extremes;
import io.github.heatswell.result.Regime;
import io.github.heatswell.result.TimeGrid;
import io.github.heatswell.simulation.Modes.PressureRule;
import java.util.ArrayList;
import java.util.List;

/**
 * Writes down what happens: samples on the grid, events at their located times, extremes of the continuous solution.
 *
 * <p>A sample that falls on an event shows the state after it. Samples inside a step are taken from the step's continuous
 * solution; the solver does not stop for them.
 */
final class Recorder {

    private final Plant plant;
    private final StateVector vector;
    private final Balance balance;
    private final double interval;
    private final SampleListener listener;
    private final double[] values = new double[Channel.values().length];
    private final List<Event> events = new ArrayList<>();
    private final Peak highestPressure = new Peak(1);
    private final Peak lowestPressure = new Peak(-1);
    private final Peak highestTemperature = new Peak(1);
    private final Peak mostVesselWater = new Peak(1);
    private final double[] rates;
    private final double[] inside;

    private long sampled;
    private double segmentStart;
    private Modes modes;
    private boolean drawing;
    private double power;
    private Regime regime;

    Recorder(Plant plant, StateVector vector, Balance balance, double interval, SampleListener listener) {
        this.plant = plant;
        this.vector = vector;
        this.balance = balance;
        this.interval = interval;
        this.listener = listener;
        this.rates = new double[vector.length];
        this.inside = new double[vector.length];
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
     * @param draw whether a tap is open
     */
    void begin(double time, double[] y, Modes now, boolean draw) {
        segmentStart = time;
        modes = now;
        drawing = draw;
        power = power();
        regime = regime();
        look(time, y);
    }

    /** A step of the segment is finished. */
    void step(StepCurve step) {
        double end = segmentStart + step.to();
        double last = end - TimeGrid.SAME_INSTANT * interval;
        for (double next = nextSample(); next < last; next = nextSample()) {
            step.at(Math.max(step.from(), next - segmentStart), inside);
            sample(next, inside);
        }
        look(end, step.last());
        seeTurningPoints(step);
    }

    /** The run is over; the last instant is a sample whether or not it lies on the grid. */
    void end(double time, double[] y) {
        sample(time, y);
    }

    /** Takes down an event. */
    void event(double time, EventKind kind, String device, double[] y) {
        events.add(new Event(time, kind, device, y[StateVector.PRESSURE], vector.mean(y)));
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
        return sampled * interval;
    }

    private void sample(double time, double[] y) {
        double relief = 0;
        double draw = 0;
        if (drawing || plant.anySeatLeaks || modes.anyValveOpen()) {
            balance.evaluate(y, modes, rates);
            relief = Math.max(0, balance.givenOff());
            draw = balance.drawFlow();
        }
        put(Channel.WATER_MEAN, vector.mean(y));
        put(Channel.PRESSURE_ABSOLUTE, y[StateVector.PRESSURE]);
        put(Channel.VESSEL_WATER, balance.vesselWater(y, modes.diaphragm));
        put(Channel.RELIEF_FLOW, relief / plant.coldDensity);
        put(Channel.RELIEVED_TOTAL, vector.relieved(y) / plant.coldDensity);
        put(Channel.INFLOW_TOTAL, y[StateVector.LET_IN] / plant.coldDensity);
        put(Channel.HEATER_POWER, power);
        put(Channel.WATER_TOP, y[vector.highest]);
        put(Channel.WATER_BOTTOM, y[vector.lowest]);
        put(Channel.DRAW_FLOW, draw / plant.coldDensity);
        put(Channel.DRAWN_TOTAL, y[StateVector.DRAWN] / plant.coldDensity);
        put(Channel.RETURNED_TOTAL, y[StateVector.RETURNED] / plant.coldDensity);
        put(Channel.STREET_ABSOLUTE, y[StateVector.STREET]);
        put(Channel.GAUGE_READING, y[StateVector.PRESSURE] - plant.atmosphere - plant.gaugeOffset);
        sampled++;
        listener.sample(time, values, regime);
    }

    private void put(Channel channel, double value) {
        values[channel.ordinal()] = value;
    }

    private double power() {
        double sum = 0;
        for (int i = 0; i < plant.sources.size(); i++) {
            sum += modes.isOn(i, plant) ? plant.sources.get(i).input : 0;
        }
        return sum;
    }

    private Regime regime() {
        if (modes.rule == PressureRule.RETURNING) {
            return Regime.RETURNED;
        }
        if (modes.rule == PressureRule.HELD || modes.rule == PressureRule.FILLING) {
            return plant.feed.open ? Regime.UNSEALED : Regime.FED;
        }
        return modes.anyValveOpen() ? Regime.RELIEVING : Regime.SEALED;
    }

    private void look(double time, double[] y) {
        highestPressure.see(y[StateVector.PRESSURE], time);
        lowestPressure.see(y[StateVector.PRESSURE], time);
        highestTemperature.see(y[vector.highest], time);
        mostVesselWater.see(balance.vesselWater(y, modes.diaphragm), time);
    }

    /** Looks where something turned round inside a step. */
    private void seeTurningPoints(StepCurve step) {
        see(step, time -> step.rate(StateVector.PRESSURE, time));
        see(step, time -> step.rate(vector.highest, time));
        if (plant.hasGasState()) {
            see(step, time -> vesselRate(step, time));
        }
    }

    /** How fast (Pa/s) the pressure outruns what the gas would have by itself, which is how fast the vessel fills. */
    private double vesselRate(StepCurve step, double time) {
        step.at(time, inside);
        double gas = plant.vessel.gasPressure(inside[StateVector.PRESSURE]) / inside[StateVector.GAS];
        return step.rate(StateVector.PRESSURE, time) - gas * step.rate(StateVector.GAS, time);
    }

    private void see(StepCurve step, StepCurve.Rate rate) {
        if (step.turns(rate)) {
            double time = step.turningPoint(rate);
            step.at(time, inside);
            look(segmentStart + time, inside);
        }
    }
}
