package io.github.heatswell.charts;

import io.github.heatswell.plant.HotWaterSystem;
import io.github.heatswell.plant.ReliefValve;
import io.github.heatswell.plant.Supply.Arrangement;
import io.github.heatswell.result.Audit;
import io.github.heatswell.result.Channel;
import io.github.heatswell.result.Event;
import io.github.heatswell.result.EventKind;
import io.github.heatswell.result.Extreme;
import io.github.heatswell.result.Extremes;
import io.github.heatswell.result.Numerics;
import io.github.heatswell.result.Regime;
import io.github.heatswell.result.ReliefTotal;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.result.TimeGrid;
import io.github.heatswell.result.Totals;
import io.github.heatswell.result.Trace;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A stand-in for the simulation: crude physics in steps of a few seconds, but results with the shape of real ones, so
 * that pictures and tables can be tested without the engine.
 */
public final class SyntheticRun {

    private static final double BASE_GROWTH = 0.09e-3;
    private static final double GROWTH_PER_KELVIN = 8.6e-6;
    private static final double COMPLIANCE = 1.3e-9;

    private final HotWaterSystem system;
    private final double end;
    private final double sample;
    private final double step;
    private final double atmosphere;

    private final List<Event> events = new ArrayList<>();
    private final Map<String, double[]> relief = new LinkedHashMap<>();
    private final Map<Channel, List<Double>> columns = new EnumMap<>(Channel.class);
    private final List<Regime> regimes = new ArrayList<>();

    private double time;
    private double temperature;
    private double pressure;
    private double vesselWater;
    private double inflow;
    private double flow;
    private double heat;
    private boolean on = true;
    private boolean full;
    private ReliefValve open;
    private Regime regime = Regime.SEALED;
    private Extreme highest;
    private Extreme lowest;
    private Extreme hottest;
    private Extreme fullest = new Extreme(0, 0);

    private SyntheticRun(HotWaterSystem system, double end, double sample) {
        this.system = system;
        this.end = end;
        this.sample = sample;
        this.step = Math.min(sample, 2);
        this.atmosphere = system.site().atmosphere();
        this.temperature = system.start().waterTemperature().orElse(system.supply().waterTemperature());
        this.pressure = supply();
        system.reliefValves().forEach(valve -> relief.put(valve.name(), new double[2]));
        for (Channel channel : Channel.values()) {
            columns.put(channel, new ArrayList<>());
        }
        highest = new Extreme(pressure, 0);
        lowest = highest;
        hottest = new Extreme(temperature, 0);
    }

    /** Runs for a time (s), sampled at an interval (s). */
    public static RunResult of(HotWaterSystem system, double end, double sample) {
        return new SyntheticRun(system, end, sample).run();
    }

    private RunResult run() {
        happened(EventKind.HEATER_ON, "");
        sampleNow();
        int perSample = (int) Math.round(sample / step);
        boolean hazard = false;
        for (long i = 1; i * step <= end + 1e-9 && !hazard; i++) {
            advance();
            time = i * step;
            hazard = settle();
            notice();
            if (hazard || i % perSample == 0) {
                sampleNow();
            }
        }
        return result();
    }

    private void advance() {
        double before = temperature;
        double loss = system.tank().standingLoss() * (temperature - system.site().roomTemperature());
        double power = on ? system.heater().output() : 0;
        temperature += (power - loss) / (system.tank().volume() * 4.15e6) * step;
        heat += on ? system.heater().input() * step : 0;
        if (on && temperature >= system.heater().setPoint()) {
            on = false;
            happened(EventKind.HEATER_OFF, "");
        } else if (!on && temperature <= system.heater().setPoint() - system.heater().differential()) {
            on = true;
            happened(EventKind.HEATER_ON, "");
        }
        double growth = BASE_GROWTH + GROWTH_PER_KELVIN * (temperature - 283.15);
        grow(system.tank().volume() * growth * (temperature - before));
    }

    private void grow(double volume) {
        flow = 0;
        if (system.supply().arrangement() == Arrangement.DIRECT) {
            regime = Regime.UNSEALED;
            return;
        }
        double softness = system.tank().volume() * COMPLIANCE;
        if (open != null) {
            double hold = open.reseats().absolute(atmosphere) + 0.03e5;
            double left = Math.max(0, volume + softness * (pressure - hold) * 0.5);
            pressure -= (pressure - hold) * 0.5;
            giveOff(open, left);
            regime = Regime.RELIEVING;
            if (volume <= 0) {
                pressure = open.reseats().absolute(atmosphere);
                happened(EventKind.RELIEF_RESEATED, open.name());
                open = null;
            }
            return;
        }
        if (vesselFloats() && !full) {
            double precharge = system.vessel().orElseThrow().precharge().absolute(atmosphere);
            softness += system.vessel().orElseThrow().volume() * precharge / (pressure * pressure);
        }
        pressure += volume / softness;
        regime = Regime.SEALED;
        if (pressure < supply()) {
            inflow += (supply() - pressure) * softness;
            pressure = supply();
            regime = Regime.FED;
        }
    }

    /** Lets valves, vessel and hazards answer to the pressure; true if the run ends. */
    private boolean settle() {
        system.vessel().ifPresent(vessel -> {
            double precharge = vessel.precharge().absolute(atmosphere);
            double water = pressure > precharge ? vessel.volume() * (1 - precharge / pressure) : 0;
            boolean nowFull = water >= vessel.acceptance() * vessel.volume();
            if (nowFull && !full) {
                happened(EventKind.VESSEL_BOTTOMED_OUT, "");
            }
            full = nowFull;
            vesselWater = Math.min(water, vessel.acceptance() * vessel.volume());
        });
        for (ReliefValve valve : system.reliefValves()) {
            double set = valve.opens().absolute(atmosphere);
            if (pressure >= set && open != valve) {
                pressure = set;
                happened(EventKind.RELIEF_OPENED, valve.name());
                relief.get(valve.name())[1]++;
                answer(valve);
            }
        }
        double working = system.tank().workingPressure().absolute(atmosphere);
        if (pressure > working && highest.value() <= working) {
            happened(EventKind.WORKING_PRESSURE_EXCEEDED, "");
        }
        double test = system.tank().testPressureAbsolute(atmosphere);
        if (pressure >= test) {
            pressure = test;
            happened(EventKind.TEST_PRESSURE_REACHED, "");
            return true;
        }
        return false;
    }

    private void answer(ReliefValve valve) {
        notice();
        if (valve.character() == ReliefValve.Character.MODULATING || vesselFloats()) {
            open = valve;
            return;
        }
        double reseat = valve.reseats().absolute(atmosphere);
        giveOff(valve, system.tank().volume() * COMPLIANCE * (pressure - reseat));
        pressure = reseat;
        happened(EventKind.RELIEF_RESEATED, valve.name());
    }

    private boolean vesselFloats() {
        return system.vessel()
                .map(vessel -> pressure > vessel.precharge().absolute(atmosphere))
                .orElse(false);
    }

    private void giveOff(ReliefValve valve, double volume) {
        relief.get(valve.name())[0] += volume;
        flow = volume / step;
    }

    private double supply() {
        return system.supply().pressure().absolute(atmosphere);
    }

    private void happened(EventKind kind, String device) {
        events.add(new Event(time, kind, device, pressure, temperature));
    }

    private void notice() {
        highest = pressure > highest.value() ? new Extreme(pressure, time) : highest;
        lowest = pressure < lowest.value() ? new Extreme(pressure, time) : lowest;
        hottest = temperature > hottest.value() ? new Extreme(temperature, time) : hottest;
        fullest = vesselWater > fullest.value() ? new Extreme(vesselWater, time) : fullest;
    }

    private void sampleNow() {
        columns.get(Channel.WATER_MEAN).add(temperature);
        columns.get(Channel.PRESSURE_ABSOLUTE).add(pressure);
        columns.get(Channel.VESSEL_WATER).add(vesselWater);
        columns.get(Channel.RELIEF_FLOW).add(flow);
        columns.get(Channel.RELIEVED_TOTAL)
                .add(relief.values().stream().mapToDouble(total -> total[0]).sum());
        columns.get(Channel.INFLOW_TOTAL).add(inflow);
        columns.get(Channel.HEATER_POWER).add(on ? system.heater().input() : 0);
        regimes.add(regime);
    }

    private RunResult result() {
        Map<Channel, double[]> values = new EnumMap<>(Channel.class);
        columns.forEach((channel, column) ->
                values.put(channel, column.stream().mapToDouble(Double::doubleValue).toArray()));
        List<ReliefTotal> totals = relief.entrySet().stream()
                .map(entry -> new ReliefTotal(
                        entry.getKey(), 1000 * entry.getValue()[0], entry.getValue()[0], (int) entry.getValue()[1]))
                .toList();
        return new RunResult(
                system,
                new Trace(new TimeGrid(sample, time), values, regimes),
                events,
                new Extremes(highest, lowest, hottest, fullest),
                new Totals(totals, inflow, 0, heat, heat * system.heater().recoveryEfficiency(), 0),
                new Audit(0, 1, 0, 1),
                new Numerics("synthetic", 1e-9, 1, 1, 1));
    }
}
