package io.github.heatswell.simulation;

import static io.github.heatswell.simulation.StateVector.GAS;
import static io.github.heatswell.simulation.StateVector.PRESSURE;
import static io.github.heatswell.simulation.StateVector.TANK;

import io.github.heatswell.result.EventKind;
import io.github.heatswell.simulation.Modes.Diaphragm;
import io.github.heatswell.simulation.Modes.PressureRule;
import io.github.heatswell.water.Saturation;
import java.util.ArrayList;
import java.util.List;

/**
 * Draws up what can end a segment with given modes.
 *
 * <p>What opens and closes has two thresholds. Where the physics has one only (the check valve, the diaphragm's seat and
 * limit), the two are set a hair apart, so that a change that was just made cannot at once be taken back by rounding.
 */
final class Watches {

    /** Half the gap (Pa) between the two thresholds of a check valve or a diaphragm. */
    private static final double PRESSURE_GAP = 1e-4;
    /**
     * A modulating valve this close (Pa) to its reseat pressure passes a drop in an hour and counts as closed; without
     * expansion it would approach the reseat pressure for ever.
     */
    private static final double RESEAT_GAP = 1e-2;
    /** Half the gap (kg/s) between the two thresholds of a flow: a drop every few hours. */
    private static final double FLOW_GAP = 1e-9;
    /** A pressure this close (Pa) to the equilibrium with an open valve counts as settled, */
    private static final double SETTLED_WITHIN = 1;
    /** provided it is also this close (-) compared with how far the equilibrium lifts the valve. */
    private static final double SETTLED_WITHIN_LIFT = 0.05;
    /** An equilibrium reached faster than this (s) is worth treating as settled; a slower one is simply integrated. */
    private static final double FAST = 5;
    /** The lowest and highest water temperature (K) the water properties hold for. */
    private static final double LOWEST_TEMPERATURE = 273.15;

    private static final double HIGHEST_TEMPERATURE = 423.15;

    private final Plant plant;
    private final Balance balance;

    Watches(Plant plant, Balance balance) {
        this.plant = plant;
        this.balance = balance;
    }

    /**
     * Everything that can end a segment.
     *
     * @param modes the modes of the segment
     * @param pressure the pressure (Pa, absolute) it starts from
     */
    List<Watch> during(Modes modes, double pressure) {
        List<Watch> watches = new ArrayList<>();
        addThermostat(watches, modes);
        addPressureRule(watches, modes);
        addValves(watches, modes);
        addDiaphragm(watches, modes);
        addLimits(watches, modes, pressure);
        return watches;
    }

    private void addThermostat(List<Watch> watches, Modes modes) {
        if (modes.heaterOn) {
            watches.add(Watch.of(EventKind.HEATER_OFF, modes.withHeater(false), y -> plant.setPoint - y[TANK]));
        } else {
            watches.add(Watch.of(EventKind.HEATER_ON, modes.withHeater(true), y -> y[TANK] - plant.switchOn));
        }
    }

    private void addPressureRule(List<Watch> watches, Modes modes) {
        Modes free = modes.withRule(PressureRule.FREE);
        if (modes.rule == PressureRule.HELD) {
            if (plant.checked) {
                watches.add(Watch.silent(free, y -> balance.supplyFlow() + FLOW_GAP));
            }
            return;
        }
        if (plant.checked) {
            watches.add(Watch.silent(free, y -> y[PRESSURE] - plant.supplyPressure + PRESSURE_GAP));
        }
        if (modes.rule == PressureRule.SETTLED) {
            watches.add(Watch.silent(free, y -> balance.reliefFlow() + FLOW_GAP));
        } else if (modes.anyValveOpen()) {
            watches.add(Watch.silent(modes.withRule(PressureRule.SETTLED), y -> distanceFromSettled()));
        }
    }

    /** How far (Pa) the pressure still is from counting as settled; a constant if there is nothing to settle at. */
    private double distanceFromSettled() {
        double lift = balance.equilibriumLift();
        if (!(lift > 0 && balance.settlingTime() < FAST)) {
            return SETTLED_WITHIN;
        }
        return Math.abs(balance.distanceFromEquilibrium()) - Math.min(SETTLED_WITHIN, SETTLED_WITHIN_LIFT * lift);
    }

    private void addValves(List<Watch> watches, Modes modes) {
        for (int i = 0; i < plant.valves.size(); i++) {
            Plant.Valve valve = plant.valves.get(i);
            if (modes.valveOpen(i)) {
                watches.add(Watch.of(
                        EventKind.RELIEF_RESEATED,
                        valve.name,
                        modes.withValve(i, false),
                        y -> y[PRESSURE] - valve.reseats - RESEAT_GAP));
            } else {
                watches.add(Watch.of(
                        EventKind.RELIEF_OPENED, valve.name, modes.withValve(i, true), y -> valve.opens - y[PRESSURE]));
            }
        }
    }

    private void addDiaphragm(List<Watch> watches, Modes modes) {
        Plant.GasCushion vessel = plant.vessel;
        Modes floating = modes.withDiaphragm(Diaphragm.FLOATING);
        switch (modes.diaphragm) {
            case ABSENT -> {
                // nothing to watch
            }
            case SEATED ->
                watches.add(Watch.of(
                        EventKind.VESSEL_LIFTED,
                        floating,
                        y -> vessel.gasPressure(0, y[GAS]) - y[PRESSURE] + PRESSURE_GAP));
            case FLOATING -> {
                watches.add(Watch.of(
                        EventKind.VESSEL_SEATED,
                        modes.withDiaphragm(Diaphragm.SEATED),
                        y -> y[PRESSURE] - vessel.gasPressure(0, y[GAS]) + PRESSURE_GAP));
                if (vessel.largestWater < vessel.volume) {
                    watches.add(Watch.of(
                            EventKind.VESSEL_BOTTOMED_OUT,
                            modes.withDiaphragm(Diaphragm.BOTTOMED_OUT),
                            y -> vessel.gasPressure(vessel.largestWater, y[GAS]) - y[PRESSURE] + PRESSURE_GAP));
                }
            }
            case BOTTOMED_OUT ->
                watches.add(Watch.of(
                        EventKind.VESSEL_FREED,
                        floating,
                        y -> y[PRESSURE] - vessel.gasPressure(vessel.largestWater, y[GAS]) + PRESSURE_GAP));
        }
    }

    private void addLimits(List<Watch> watches, Modes modes, double pressure) {
        if (pressure < plant.workingPressure) {
            watches.add(Watch.of(EventKind.WORKING_PRESSURE_EXCEEDED, modes, y -> plant.workingPressure - y[PRESSURE]));
        }
        watches.add(Watch.of(EventKind.TEST_PRESSURE_REACHED, modes, y -> plant.testPressure - y[PRESSURE]));
        watches.add(Watch.of(EventKind.ATMOSPHERE_REACHED, modes, y -> y[PRESSURE] - plant.atmosphere));
        watches.add(Watch.of(
                EventKind.VAPOUR_FORMS, modes, y -> y[PRESSURE] - Saturation.pressureAbsolute(withinRange(y[TANK]))));
        watches.add(Watch.of(
                EventKind.WATER_OUT_OF_RANGE,
                modes,
                y -> Math.min(y[TANK] - LOWEST_TEMPERATURE, HIGHEST_TEMPERATURE - y[TANK])));
    }

    /** A trial state of the solver may lie beyond the temperature at which the run will have ended. */
    private static double withinRange(double temperature) {
        return Math.min(HIGHEST_TEMPERATURE, Math.max(LOWEST_TEMPERATURE, temperature));
    }
}
