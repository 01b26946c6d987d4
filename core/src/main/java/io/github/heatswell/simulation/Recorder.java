package io.github.heatswell.simulation;

import io.github.heatswell.result.Channel;
import io.github.heatswell.result.Event;
import io.github.heatswell.result.RunSummary;
import io.github.heatswell.result.Trace;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * Records a run: samples on the grid, events at their located times, extremes of the continuous solution.
 *
 * <p>A sample that falls on an event shows the state after it. Samples inside a step are taken from the step's
 * continuous solution; the solver does not stop for them.
 */
final class Recorder {

    private static final int CHANNELS = Channel.values().length;
    private static final Set<Channel> TEMPERATURES = EnumSet.of(
            Channel.WATER_TOP, Channel.WATER_MEAN, Channel.WATER_BOTTOM, Channel.WATER_IN_LOOP, Channel.WATER_AT_TAP);
    private static final Set<Channel> TOTALS =
            EnumSet.of(Channel.RELIEVED_TOTAL, Channel.INFLOW_TOTAL, Channel.DRAWN_TOTAL, Channel.RETURNED_TOTAL);
    private static final Set<Channel> FLOWS = EnumSet.of(Channel.RELIEF_FLOW, Channel.DRAW_FLOW);
    /** Maximum number of samples computed together. */
    private static final int BATCH = 64;

    private final CompiledSystem plant;
    private final StateVector vector;
    private final Balance balance;
    private final double interval;
    private final double specificVolume;
    private final SampleSink sink;
    private final boolean temperatures;
    private final boolean totalled;
    private final boolean flows;
    private final boolean heat;
    private final boolean vessels;
    private final double[] times = new double[BATCH];
    private final double[] parts = new double[BATCH];
    private final double[] gas = new double[BATCH];
    /** The channels, and behind them water and gas of each vessel where there are several: {@link #many} values or {@link #hold one}. */
    private final double[][] channels;

    private final double[][] held;
    private final double[][] rooms;

    private final double[] totals = new double[CHANNELS];
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
    private Trace.Regime regime;

    Recorder(CompiledSystem plant, Balance balance, double interval, SampleSink sink) {
        this.plant = plant;
        vector = plant.vector;
        this.balance = balance;
        this.interval = interval;
        this.sink = sink;
        temperatures = sink.wantsAny(TEMPERATURES);
        totalled = sink.wantsAny(TOTALS);
        flows = sink.wantsAny(FLOWS);
        heat = sink.wantsAny(EnumSet.of(Channel.HEATER_POWER));
        vessels = sink.wantsAny(EnumSet.of(Channel.VESSEL_WATER));
        specificVolume = 1 / plant.coldDensity;
        channels = new double[Trace.columns(plant.describedVessels)][];
        rooms = new double[channels.length][];
        held = new double[channels.length][1];
        for (int i = 0; i < channels.length; i++) {
            hold(i, Double.NaN); // a vessel that takes no part has no values
        }
        this.rates = new double[vector.length];
        this.inside = new double[vector.length];
    }

    /** A running maximum (or minimum, with sign -1) and when it was first reached. */
    private static final class Peak {
        /** A value that exceeds the last by less than this (-) counts as the same value. */
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

        RunSummary.Extreme extreme() {
            return new RunSummary.Extreme(value, time);
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
        power = plant.heat.input(modes, y);
        regime = regime(y);
        look(time, y);
    }

    /** A step of the segment is finished. */
    void step(DenseOutput step) {
        double end = segmentStart + step.to();
        double last = end - Trace.Grid.SAME_INSTANT * interval;
        for (int due = gather(last); due > 0; due = gather(last)) {
            step.putParts(times, segmentStart, due, parts);
            sample(step, due);
        }
        look(end, step.last());
        seeTurningPoints(step);
    }

    /** The run is over; the last instant is a sample whether or not it lies on the grid. */
    void end(double time, double[] y) {
        times[0] = time;
        parts[0] = 0;
        sample(DenseOutput.standingAt(y), 1);
    }

    /** Records an event. */
    void event(double time, Event.Kind kind, String device, double[] y) {
        events.add(new Event(time, kind, device, y[StateVector.PRESSURE], vector.mean(y)));
    }

    /** Records the event of a detector. */
    void event(double time, EventDetector due, double[] y) {
        events.add(new Event(time, due.kind(), due.device(), y[StateVector.PRESSURE], vector.mean(y), due.cause()));
    }

    List<Event> events() {
        return events;
    }

    RunSummary.Extremes extremes() {
        return new RunSummary.Extremes(
                highestPressure.extreme(),
                lowestPressure.extreme(),
                highestTemperature.extreme(),
                mostVesselWater.extreme());
    }

    /** Collects the times (s) of the next samples before a time; returns their number. */
    private int gather(double before) {
        int count = (int) Math.min(BATCH, Math.ceil(before / interval) - sampled);
        double first = sampled;
        for (int i = 0; i < count; i++) {
            times[i] = (first + i) * interval;
        }
        return count;
    }

    /** Takes the samples for the times gathered, channel by channel. */
    private void sample(DenseOutput step, int count) {
        if (temperatures) {
            putTemperatures(step, count);
        }
        double[] pressure = many(Channel.PRESSURE_ABSOLUTE);
        step.fill(StateVector.PRESSURE, StateVector.PRESSURE, 1, parts, count, pressure);
        put(step, count, Channel.MAINS_ABSOLUTE, StateVector.MAINS);
        if (totalled) {
            putTotals(step, count);
        }
        if (heat) {
            putPower(step, count);
        }
        if (flows) {
            putFlows(step, count);
        }
        if (vessels) {
            putVessels(step, count, pressure);
        }
        double[] reading = many(Channel.GAUGE_READING);
        double zero = plant.atmosphere + plant.gaugeOffset;
        for (int i = 0; i < count; i++) {
            reading[i] = pressure[i] - zero;
        }
        sampled += count;
        sink.take(count, times, channels, regime);
    }

    private void putTemperatures(DenseOutput step, int count) {
        put(step, count, Channel.WATER_TOP, vector.highest);
        if (plant.layers > 1) {
            putMean(step, count, many(Channel.WATER_MEAN));
        } else {
            put(step, count, Channel.WATER_MEAN, vector.lowest);
        }
        put(step, count, Channel.WATER_BOTTOM, vector.lowest);
        put(step, count, Channel.WATER_IN_LOOP, plant.inLoop());
        put(step, count, Channel.WATER_AT_TAP, plant.atTap());
    }

    private void putTotals(DenseOutput step, int count) {
        int valves = plant.valves.length;
        int first = valves == 0 ? 0 : plant.valves[0].relieved;
        putTotal(step, count, Channel.RELIEVED_TOTAL, first, first + valves - 1);
        putTotal(step, count, Channel.INFLOW_TOTAL, StateVector.LET_IN, StateVector.LET_IN);
        putTotal(step, count, Channel.DRAWN_TOTAL, StateVector.DRAWN, StateVector.DRAWN);
        putTotal(step, count, Channel.RETURNED_TOTAL, StateVector.RETURNED, StateVector.RETURNED);
    }

    private void putVessels(DenseOutput step, int count, double[] pressure) {
        if (plant.vessels.length == 0) {
            hold(Channel.VESSEL_WATER.ordinal(), 0);
            return;
        }
        double[] all = many(Channel.VESSEL_WATER);
        Arrays.fill(all, 0, count, 0);
        for (GasCushion vessel : plant.vessels) {
            step.fill(vessel.gas, vessel.gas, 1, parts, count, gas);
            vessel.addWater(modes.of(vessel), pressure, gas, count, all);
            if (channels.length > CHANNELS) {
                int several = (channels.length - CHANNELS) / 2;
                double[] water = many(Trace.vesselWater(vessel.index, several));
                Arrays.fill(water, 0, count, 0);
                vessel.addWater(modes.of(vessel), pressure, gas, count, water);
                vessel.putGasPressure(water, gas, count, many(Trace.vesselGas(vessel.index, several)));
            }
        }
    }

    private void putMean(DenseOutput step, int count, double[] mean) {
        step.fill(vector.lowest, vector.highest, 1.0 / plant.layers, parts, count, mean);
        // the lowest and the highest layer may be thicker or thinner than the others
        double[] phase = new double[count];
        double[] top = new double[count];
        double[] bottom = new double[count];
        step.fill(vector.phase, vector.phase, 1, parts, count, phase);
        step.fill(vector.highest, vector.highest, 1, parts, count, top);
        step.fill(vector.lowest, vector.lowest, 1, parts, count, bottom);
        for (int i = 0; i < count; i++) {
            mean[i] += (phase[i] - 1) * (bottom[i] - top[i]) / plant.layers;
        }
    }

    /** What stands in a place of the state; the temperature in a place that is the top of the tank is that channel's. */
    private void put(DenseOutput step, int count, Channel channel, int place) {
        double standing = step.standing(place, place);
        if (place == vector.highest && channel != Channel.WATER_TOP) {
            channels[channel.ordinal()] = channels[Channel.WATER_TOP.ordinal()];
        } else if (Double.isNaN(standing)) {
            step.fill(place, place, 1, parts, count, many(channel));
        } else {
            hold(channel.ordinal(), standing);
        }
    }

    /**
     * A volume counted since the start never falls, but within the solver's error the polynomial of a step may. Then
     * the sample keeps the earlier value.
     */
    private void putTotal(DenseOutput step, int count, Channel channel, int first, int last) {
        double reached = totals[channel.ordinal()];
        double standing = step.standing(first, last);
        if (Double.isNaN(standing)) {
            double[] total = many(channel);
            step.fill(first, last, specificVolume, parts, count, total);
            for (int i = 0; i < count; i++) {
                reached = Math.max(reached, total[i]);
                total[i] = reached;
            }
        } else {
            // most totals are constant most of the time
            reached = Math.max(reached, specificVolume * standing);
            hold(channel.ordinal(), reached);
        }
        totals[channel.ordinal()] = reached;
    }

    /** What the heater takes changes within a segment only if a source has a curve of its own. */
    private void putPower(DenseOutput step, int count) {
        if (!plant.heat.varies()) {
            hold(Channel.HEATER_POWER.ordinal(), power);
            return;
        }
        double[] taken = many(Channel.HEATER_POWER);
        for (int i = 0; i < count; i++) {
            step.atPart(parts[i], inside);
            taken[i] = plant.heat.input(modes, inside);
        }
    }

    /** Flows are computed for each sample, where anything may flow. */
    private void putFlows(DenseOutput step, int count) {
        hold(Channel.RELIEF_FLOW.ordinal(), 0);
        hold(Channel.DRAW_FLOW.ordinal(), 0);
        boolean givesOff = plant.anySeatLeaks || modes.anyValveOpen();
        if (!givesOff && !drawing) {
            return;
        }
        double[] draw = many(Channel.DRAW_FLOW);
        double[] relief = givesOff ? many(Channel.RELIEF_FLOW) : draw;
        for (int i = 0; i < count; i++) {
            step.atPart(parts[i], inside);
            draw[i] = balance.drawFlow(inside) * specificVolume;
            if (givesOff) {
                balance.evaluate(inside, modes, rates);
                relief[i] = Math.max(0, balance.discharged()) * specificVolume;
            }
        }
    }

    /** Room for a channel with another value at each sample. */
    private double[] many(Channel channel) {
        return many(channel.ordinal());
    }

    private double[] many(int channel) {
        if (rooms[channel] == null) {
            rooms[channel] = new double[BATCH];
        }
        channels[channel] = rooms[channel];
        return rooms[channel];
    }

    /** Gives all samples of a channel one value. */
    private void hold(int channel, double value) {
        held[channel][0] = value;
        channels[channel] = held[channel];
    }

    private Trace.Regime regime(double[] y) {
        boolean down = plant.feed.returns(y[StateVector.PRESSURE], y[StateVector.MAINS]);
        return modes.rule.reported(plant.feed, down, modes.anyValveOpen());
    }

    private void look(double time, double[] y) {
        highestPressure.see(y[StateVector.PRESSURE], time);
        lowestPressure.see(y[StateVector.PRESSURE], time);
        highestTemperature.see(y[vector.highest], time);
        double held = 0;
        for (GasCushion vessel : plant.vessels) {
            held += vessel.volume(y, modes);
        }
        mostVesselWater.see(held, time);
    }

    /** Finds turning points inside a step. */
    private void seeTurningPoints(DenseOutput step) {
        see(step, time -> step.rate(StateVector.PRESSURE, time));
        see(step, time -> step.rate(vector.highest, time));
        for (GasCushion vessel : plant.vessels) {
            if (vessel.hasTemperature()) {
                see(step, time -> vesselRate(vessel, step, time));
            }
        }
    }

    /** Rate (Pa/s) of the pressure relative to the gas's own, which governs how fast the vessel fills. */
    private double vesselRate(GasCushion vessel, DenseOutput step, double time) {
        step.at(time, inside);
        return step.rate(StateVector.PRESSURE, time) - vessel.perKelvin(inside) * step.rate(vessel.gas, time);
    }

    private void see(DenseOutput step, DenseOutput.Rate rate) {
        if (step.turns(rate)) {
            double time = step.turningPoint(rate);
            step.at(time, inside);
            look(segmentStart + time, inside);
        }
    }

    /** Receives the samples of a run in batches, one per solver step. */
    @FunctionalInterface
    interface SampleSink {

        /**
         * Receives samples. The arrays are reused and must not be kept.
         *
         * @param count how many there are, at least 1
         * @param times since the start of the run (s)
         * @param channels for each channel, by its {@code ordinal()}, its values, or the one that all of them have
         * @param regime the pressure regime of all of them
         */
        void take(int count, double[] times, double[][] channels, Trace.Regime regime);

        /** Whether any of these channels is looked at; the pressures always are. */
        default boolean wantsAny(Set<Channel> channels) {
            return true;
        }

        private static double at(double[] column, int sample) {
            return column[column.length == 1 ? 0 : sample];
        }

        /** A sink that hands on samples one by one. */
        static SampleSink to(Simulation.SampleListener listener, int channels) {
            double[] values = new double[channels];
            return (count, times, columns, regime) -> {
                for (int i = 0; i < count; i++) {
                    for (int channel = 0; channel < channels; channel++) {
                        values[channel] = at(columns[channel], i);
                    }
                    listener.sample(times[i], values, regime);
                }
            };
        }

        /** A sink that hands on these channels alone, one sample after the other. */
        static SampleSink to(Simulation.SampleListener listener, Set<Channel> wanted) {
            double[] values = new double[CHANNELS];
            Arrays.fill(values, Double.NaN);
            int[] places = wanted.stream().mapToInt(Channel::ordinal).toArray();
            return new SampleSink() {
                @Override
                public void take(int count, double[] times, double[][] columns, Trace.Regime regime) {
                    for (int i = 0; i < count; i++) {
                        for (int channel : places) {
                            values[channel] = at(columns[channel], i);
                        }
                        listener.sample(times[i], values, regime);
                    }
                }

                @Override
                public boolean wantsAny(Set<Channel> channels) {
                    return !Collections.disjoint(wanted, channels);
                }
            };
        }
    }
}
