package io.github.heatswell.simulation;

import io.github.heatswell.simulation.Modes.Diaphragm;
import io.github.heatswell.simulation.Modes.PressureRule;
import io.github.heatswell.water.LiquidWater;
import io.github.heatswell.water.WaterState;
import java.util.Arrays;

/**
 * The balances of mass and energy: the rate of change of the state for given modes.
 *
 * <p>With tank mass {@code m = rho V}, shell {@code V = V_n [1 + g (T - T_ref) + C (p - p_ref)]}, {@code a = g V_n/V} and
 * {@code c = C V_n/V}, the tank obeys
 *
 * <pre>
 *   dm/dt       = m (a - beta) dT/dt + m (c + kappa) dp/dt = j
 *   m cp dT/dt  = Q + V T beta dp/dt + max(j, 0) (h_cold - h)
 * </pre>
 *
 * where j (kg/s) flows in from the cold branch and Q (W) is the heater's output less the standing loss. Water that leaves
 * the tank carries its own enthalpy and cools to branch temperature on the way. The branch, piping and vessel together,
 * obeys {@code S_b dp/dt + s_b = supply - relief - j} with its mass stiffness S_b and a source s_b from gas that changes
 * its temperature. Temperature and j are eliminated, so that everything is linear in dp/dt; the {@link PressureRule} then
 * says which unknown the last equation is solved for.
 *
 * <p>Holds working memory: one instance for one run, not thread-safe.
 */
final class Balance {

    /** Temperature step (K) of the difference quotient for how the expansion flow changes along the heating. */
    private static final double PROBE = 1e-3;
    /**
     * Time (s) in which a settled pressure is drawn back to its equilibrium. It only has to correct the small terms left
     * out of the equilibrium's own drift, and must not limit the solver's steps.
     */
    private static final double RETURN_TIME = 60;

    private final Plant plant;
    private final LiquidWater water;
    private final WaterState tank = new WaterState();
    private final WaterState cold = new WaterState();
    private final double coldEnthalpy;

    private double heat;
    private double lost;
    /** Tank inflow is {@code (tankSource + tankStiffness dp/dt) / mixing}. */
    private double tankSource;

    private double tankStiffness;
    private double mixing;
    /** Temperature rate at constant pressure without inflow (K/s), and its change with dp/dt (K/Pa). */
    private double heatingRate;

    private double compressionRate;
    private double branchSource;
    private double branchStiffness;
    private double gasRelaxation;

    private double pressureRate;
    private double temperatureRate;
    private double tankInflow;
    private double supplyFlow;
    private double reliefFlow;
    private double reliefSlope;

    Balance(Plant plant, LiquidWater water) {
        this.plant = plant;
        this.water = water;
        water.evaluate(plant.coldTemperature, plant.coldPressure, cold);
        coldEnthalpy = cold.enthalpy();
    }

    /**
     * Computes the rates.
     *
     * @param y the state, see {@link StateVector}
     * @param modes the modes
     * @param rates the rates of change of the state, overwritten
     */
    void evaluate(double[] y, Modes modes, double[] rates) {
        double p = y[StateVector.PRESSURE];
        prepareTank(p, y[StateVector.TANK], modes.heaterOn);
        prepareBranch(p, y[StateVector.GAS], modes.diaphragm);
        prepareRelief(p, modes);
        switch (modes.rule) {
            case HELD -> solveHeld();
            case FREE -> solveFree();
            case SETTLED -> solveSettled(p, y[StateVector.TANK], modes.heaterOn);
        }
        temperatureRate = heatingRate
                + compressionRate * pressureRate
                + Math.max(tankInflow, 0) * (cold.enthalpy() - tank.enthalpy()) / (tankMass() * tank.heatCapacity());
        fill(p, y[StateVector.GAS], modes, rates);
    }

    private void prepareTank(double p, double temperature, boolean heaterOn) {
        water.evaluate(temperature, p, tank);
        water.evaluate(plant.coldTemperature, p, cold);
        double size = shellSize(p, temperature);
        double volume = plant.tankVolume * size;
        double mass = tank.density() * volume;
        heat = heaterOn ? plant.heaterOutput : 0;
        lost = plant.standingLoss * (temperature - plant.roomTemperature);
        heatingRate = (heat - lost) / (mass * tank.heatCapacity());
        compressionRate = volume * temperature * tank.expansivity() / (mass * tank.heatCapacity());
        double growth = mass * (plant.shellGrowth / size - tank.expansivity());
        tankSource = growth * heatingRate;
        tankStiffness = growth * compressionRate + mass * (plant.shellCompliance / size + tank.compressibility());
        mixing = 1 - growth * (cold.enthalpy() - tank.enthalpy()) / (mass * tank.heatCapacity());
    }

    private void prepareBranch(double p, double gasTemperature, Diaphragm diaphragm) {
        double volume = plant.pipeVolume + plant.pipeGrowth * (p - plant.coldPressure);
        double growth = plant.pipeGrowth;
        branchSource = 0;
        gasRelaxation = 0;
        if (diaphragm != Diaphragm.ABSENT) {
            Plant.GasCushion vessel = plant.vessel;
            if (vessel.timeConstant > 0) {
                gasRelaxation = (plant.roomTemperature - gasTemperature) / vessel.timeConstant;
            }
            switch (diaphragm) {
                case FLOATING -> {
                    double gasVolume = vessel.gasConstant * gasTemperature / p;
                    volume += vessel.volume - gasVolume;
                    double ratio = vessel.timeConstant > 0 ? 1 - 1 / Plant.GasCushion.CP_OVER_R : 1;
                    growth += ratio * gasVolume / p;
                    branchSource = -cold.density() * vessel.gasConstant / p * gasRelaxation * ratio;
                }
                case BOTTOMED_OUT -> volume += vessel.largestWater;
                default -> {
                    // a seated diaphragm holds no water
                }
            }
        }
        branchStiffness = cold.density() * (cold.compressibility() * volume + growth);
    }

    private void prepareRelief(double p, Modes modes) {
        reliefFlow = 0;
        reliefSlope = 0;
        for (int i = 0; i < plant.valves.size(); i++) {
            if (modes.valveOpen(i)) {
                reliefFlow += cold.density() * plant.valves.get(i).flow(p);
                reliefSlope += cold.density() * plant.valves.get(i).flowSlope(p);
            }
        }
    }

    /** Pressure stands still; the supply makes up the difference. */
    private void solveHeld() {
        pressureRate = 0;
        tankInflow = inflow(0);
        supplyFlow = branchSource + reliefFlow + tankInflow;
    }

    /** Nothing comes from the supply; pressure takes up the difference. */
    private void solveFree() {
        supplyFlow = 0;
        pressureRate = -(reliefFlow + branchSource + tankSource) / (branchStiffness + tankStiffness);
        if (tankSource + tankStiffness * pressureRate > 0) {
            pressureRate =
                    -(reliefFlow + branchSource + tankSource / mixing) / (branchStiffness + tankStiffness / mixing);
        }
        tankInflow = inflow(pressureRate);
    }

    /**
     * The valve's flow curve equals the expansion flow at every moment, so pressure drifts as the expansion flow does:
     * {@code dp/dt = (d/dt expansion) / (d flow/dp)}. What the valve passes is then taken from the balance and not from
     * its curve, which closes the books exactly.
     */
    private void solveSettled(double p, double temperature, boolean heaterOn) {
        supplyFlow = 0;
        double expansion = expansion();
        double rate = heatingRate;
        prepareTank(p, temperature + PROBE, heaterOn);
        double drift = (expansion() - expansion) / PROBE * rate;
        prepareTank(p, temperature, heaterOn);
        pressureRate = (drift + (expansion - reliefFlow) / RETURN_TIME) / reliefSlope;
        tankInflow = inflow(pressureRate);
        reliefFlow = -(branchStiffness * pressureRate + branchSource + tankInflow);
    }

    /** Mass flow (kg/s) the growing water would push out at constant pressure. */
    private double expansion() {
        return -(branchSource + (tankSource > 0 ? tankSource / mixing : tankSource));
    }

    private double inflow(double rate) {
        double linear = tankSource + tankStiffness * rate;
        return linear > 0 ? linear / mixing : linear;
    }

    private void fill(double p, double gasTemperature, Modes modes, double[] rates) {
        rates[StateVector.PRESSURE] = pressureRate;
        rates[StateVector.TANK] = temperatureRate;
        rates[StateVector.GAS] = gasTemperatureRate(p, gasTemperature, modes.diaphragm);
        // behind a check valve the flow ends in an event, and is left smooth across it for the solver's sake
        rates[StateVector.LET_IN] = plant.checked ? supplyFlow : Math.max(supplyFlow, 0);
        rates[StateVector.RETURNED] = plant.checked ? 0 : Math.max(-supplyFlow, 0);
        rates[StateVector.HEAT_LOST] = lost;
        double carriedBy = (tankInflow > 0 ? cold.enthalpy() : tank.enthalpy()) - coldEnthalpy;
        double shellRate =
                plant.tankVolume * (plant.shellGrowth * temperatureRate + plant.shellCompliance * pressureRate);
        rates[StateVector.CARRIED] = tankInflow * carriedBy - p * shellRate;
        fillRelief(p, modes, rates);
    }

    private double gasTemperatureRate(double p, double gasTemperature, Diaphragm diaphragm) {
        if (!plant.hasGasState()) {
            return 0;
        }
        if (diaphragm != Diaphragm.FLOATING) {
            return gasRelaxation;
        }
        double ratio = 1 - 1 / Plant.GasCushion.CP_OVER_R;
        return gasTemperature / p / Plant.GasCushion.CP_OVER_R * pressureRate + ratio * gasRelaxation;
    }

    /** Shares the relief flow among the open valves in the proportion of their curves. */
    private void fillRelief(double p, Modes modes, double[] rates) {
        Arrays.fill(rates, StateVector.RELIEVED, StateVector.length(plant.valves.size()), 0);
        double byCurves = 0;
        for (int i = 0; i < plant.valves.size(); i++) {
            if (modes.valveOpen(i)) {
                double flow = plant.valves.get(i).flow(p);
                rates[StateVector.RELIEVED + i] = flow;
                byCurves += flow;
            }
        }
        if (byCurves > 0) {
            for (int i = 0; i < plant.valves.size(); i++) {
                rates[StateVector.RELIEVED + i] *= reliefFlow / byCurves;
            }
        }
    }

    private double shellSize(double p, double temperature) {
        return 1
                + plant.shellGrowth * (temperature - plant.coldTemperature)
                + plant.shellCompliance * (p - plant.coldPressure);
    }

    private double tankMass() {
        return tank.density() * plant.tankVolume * shellSize(tank.pressureAbsolute(), tank.temperature());
    }

    /** Mass flow (kg/s) from the supply as last evaluated; negative if water goes back. */
    double supplyFlow() {
        return supplyFlow;
    }

    /** Mass flow (kg/s) through all relief valves as last evaluated. */
    double reliefFlow() {
        return reliefFlow;
    }

    /** How far (Pa) the pressure is above the equilibrium with the open valves, to first order, as last evaluated. */
    double distanceFromEquilibrium() {
        return -pressureRate * settlingTime();
    }

    /**
     * How far (Pa) that equilibrium is above the pressure at which the valves would pass nothing, to first order; negative
     * if the water shrinks, so that they will close.
     */
    double equilibriumLift() {
        return reliefFlow / reliefSlope - distanceFromEquilibrium();
    }

    /** Time constant (s) with which the pressure approaches that equilibrium; infinite with closed valves. */
    double settlingTime() {
        return (branchStiffness + tankStiffness) / reliefSlope;
    }

    /**
     * Water in the vessel.
     *
     * @param y the state
     * @param diaphragm where the diaphragm is
     * @return the volume (m3)
     */
    double vesselWater(double[] y, Diaphragm diaphragm) {
        return switch (diaphragm) {
            case ABSENT, SEATED -> 0;
            case FLOATING -> plant.vessel.freeWater(y[StateVector.PRESSURE], y[StateVector.GAS]);
            case BOTTOMED_OUT -> plant.vessel.largestWater;
        };
    }

    /**
     * All water in the system.
     *
     * @param y the state
     * @param diaphragm where the diaphragm is
     * @return the mass (kg)
     */
    double inventory(double[] y, Diaphragm diaphragm) {
        double p = y[StateVector.PRESSURE];
        water.evaluate(y[StateVector.TANK], p, tank);
        water.evaluate(plant.coldTemperature, p, cold);
        double branch = plant.pipeVolume + plant.pipeGrowth * (p - plant.coldPressure) + vesselWater(y, diaphragm);
        return tankMass() + cold.density() * branch;
    }

    /**
     * Energy of the tank water, relative to cold water.
     *
     * @param y the state
     * @return the energy (J)
     */
    double tankEnergy(double[] y) {
        water.evaluate(y[StateVector.TANK], y[StateVector.PRESSURE], tank);
        return tankMass() * (tank.internalEnergy() - coldEnthalpy);
    }

    /**
     * Mass the tank would hold at cold pressure.
     *
     * @param temperature water temperature (K)
     * @return the mass (kg)
     */
    double tankMassAt(double temperature) {
        water.evaluate(temperature, plant.coldPressure, tank);
        return tankMass();
    }
}
