package io.github.heatswell.simulation;

import io.github.heatswell.simulation.Modes.Diaphragm;
import io.github.heatswell.water.LiquidWater;
import java.util.Arrays;

/**
 * Water in the cold branch: piping, trapped air and the vessel. Its mass changes by {@code S dp/dt + s}, with the mass
 * stiffness S and a source s due to temperature changes of gas or cold water.
 *
 * <p>Working memory of one run, not thread-safe.
 */
final class ColdBranch {

    private final CompiledSystem plant;
    private double volume;
    private double stiffness;
    private double source;
    private double gasRelaxation;

    ColdBranch(CompiledSystem plant) {
        this.plant = plant;
    }

    /**
     * Evaluates the branch for a state.
     *
     * @param y the state
     * @param diaphragm where the vessel's diaphragm is
     * @param cold the cold water at the state's pressure
     * @param coldRate how fast its temperature changes (K/s)
     */
    void prepare(double[] y, Diaphragm diaphragm, LiquidWater.State cold, double coldRate) {
        double p = y[StateVector.PRESSURE];
        volume = volume(y, diaphragm);
        double growth = plant.pipeGrowth + plant.airConstant / (p * p);
        double inflow = 0;
        gasRelaxation = 0;
        if (diaphragm != Diaphragm.ABSENT && plant.vessel.timeConstant > 0) {
            gasRelaxation = (plant.vessel.temperature - y[StateVector.GAS]) / plant.vessel.timeConstant;
        }
        if (diaphragm == Diaphragm.FLOATING) {
            GasCushion vessel = plant.vessel;
            double gas = vessel.gasVolume(p, y[StateVector.GAS]);
            growth += vessel.share() * gas / vessel.gasPressure(p);
            inflow = -vessel.share() * vessel.gasConstant / vessel.gasPressure(p) * gasRelaxation;
        }
        stiffness = cold.density() * (cold.compressibility() * volume + growth);
        source = cold.density() * (inflow - cold.expansivity() * volume * coldRate);
    }

    /** Volume of water (m3) in the branch. */
    double volume(double[] y, Diaphragm diaphragm) {
        double p = y[StateVector.PRESSURE];
        return plant.pipeVolume
                + plant.pipeGrowth * (p - plant.coldPressure)
                - plant.airConstant / p
                + vesselWater(p, y[StateVector.GAS], diaphragm);
    }

    /** Water (m3) in the vessel at a pressure (Pa, absolute) and gas temperature (K). */
    double vesselWater(double pressure, double gasTemperature, Diaphragm diaphragm) {
        return switch (diaphragm) {
            case ABSENT, SEATED -> 0;
            case FLOATING -> plant.vessel.freeWater(pressure, gasTemperature);
            case BOTTOMED_OUT -> plant.vessel.largestWater;
        };
    }

    /** The same for several pressures and gas temperatures. */
    void vesselWater(double[] pressures, double[] gasTemperatures, Diaphragm diaphragm, int count, double[] into) {
        if (diaphragm == Diaphragm.FLOATING) {
            plant.vessel.freeWater(pressures, gasTemperatures, count, into);
        } else {
            Arrays.fill(into, 0, count, vesselWater(pressures[0], gasTemperatures[0], diaphragm));
        }
    }

    /** Mass (kg) the branch takes up per pascal. */
    double stiffness() {
        return stiffness;
    }

    /** Mass (kg/s) the branch takes up at constant pressure. */
    double source() {
        return source;
    }

    /**
     * Rate of the gas temperature (K/s): compression warms it behind a floating diaphragm, and the room always cools
     * it.
     *
     * @param y the state
     * @param diaphragm where the diaphragm is
     * @param pressureRate rate of pressure (Pa/s)
     */
    double gasTemperatureRate(double[] y, Diaphragm diaphragm, double pressureRate) {
        if (!plant.hasGasState()) {
            return 0;
        }
        if (diaphragm != Diaphragm.FLOATING) {
            return gasRelaxation;
        }
        double compression =
                (1 - plant.vessel.share()) * y[StateVector.GAS] / plant.vessel.gasPressure(y[StateVector.PRESSURE]);
        return compression * pressureRate + plant.vessel.share() * gasRelaxation;
    }
}
