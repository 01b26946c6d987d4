package io.github.heatswell.simulation;

import io.github.heatswell.water.LiquidWater;

/**
 * Water and energy that a state holds, computed from its temperatures and pressure alone, and what a step of pressure
 * does to it at once.
 *
 * <p>Holds working memory: one instance for one run, not thread-safe.
 */
final class Inventory {

    private final CompiledSystem plant;
    private final StateVector vector;
    private final LiquidWater water;
    private final TankColumn column;
    private final ColdBranch branch;
    private final LiquidWater.State cold = new LiquidWater.State();
    private final double referenceEnthalpy;
    private final double[] probe;

    Inventory(CompiledSystem plant, StateVector vector, LiquidWater water) {
        this.plant = plant;
        this.vector = vector;
        this.water = water;
        column = new TankColumn(plant, water);
        branch = new ColdBranch(plant);
        probe = new double[vector.length];
        water.evaluate(plant.coldTemperature, plant.coldPressure, cold);
        referenceEnthalpy = cold.enthalpy();
    }

    /** All water in the system (kg). */
    double mass(double[] y, Modes modes) {
        prepare(y, modes);
        return column.mass() + cold.density() * branch.volume(y, modes.diaphragm);
    }

    private void prepare(double[] y, Modes modes) {
        column.prepare(y, vector, modes);
        water.evaluate(y[StateVector.COLD], y[StateVector.PRESSURE], cold);
    }

    /** Energy of the tank water, relative to the cold water of the start (J). */
    double tankEnergy(double[] y, Modes modes) {
        column.prepare(y, vector, modes);
        return column.energy(referenceEnthalpy);
    }

    /** Mass of the tank water at cold pressure (kg); it falls by the mass that warming displaces. */
    double relaxedTankMass(double[] y, Modes modes) {
        System.arraycopy(y, 0, probe, 0, y.length);
        probe[StateVector.PRESSURE] = plant.coldPressure;
        column.prepare(probe, vector, modes);
        return column.mass();
    }

    /**
     * Steps the pressure at once: water is pressed from the branch into the tank, or out of it, with its enthalpy. A
     * step may be some bars, over which work and enthalpy change: the midpoint rule follows them.
     *
     * @param y the state, with the pressure before; temperatures and carried energy are changed with the pressure
     * @param modes the modes
     * @param step pressure change (Pa)
     * @param overTop what leaves at the top of the tank meanwhile (kg)
     */
    void press(double[] y, Modes modes, double step, double overTop) {
        double[] halfway = y.clone();
        pressFrom(y, halfway, modes, step / 2, overTop / 2);
        pressFrom(halfway, y, modes, step, overTop);
    }

    /** Moves a state by a step (Pa) as it would move at another one. */
    private void pressFrom(double[] at, double[] y, Modes modes, double step, double overTop) {
        double p = at[StateVector.PRESSURE];
        prepare(at, modes);
        double in = column.press(step, overTop, cold.enthalpy(), probe, vector.lowest);
        double port = (in > 0 ? cold.enthalpy() : column.bottomEnthalpy()) - referenceEnthalpy;
        for (int i = vector.lowest; i <= vector.highest; i++) {
            y[i] += probe[i];
        }
        y[StateVector.CARRIED] +=
                in * port - overTop * (column.topEnthalpy() - referenceEnthalpy) - p * column.shellRate(step);
        y[StateVector.PRESSURE] += step;
    }
}
