package io.github.heatswell.simulation;

import io.github.heatswell.water.LiquidWater;

/**
 * One fully mixed part of the tank: a run of neighbouring layers with one temperature, the water it holds, and the heat
 * that reaches it without any flow.
 *
 * <p>Working memory of one run, not thread-safe.
 */
final class Zone {

    private final CompiledSystem plant;

    /** The lowest layer. */
    int first;
    /** How many layers. */
    int count;
    /** Fraction (-) of the tank. */
    double share;
    /** Heat (W) from burners and elements. */
    double power;
    /** Properties of the water. */
    final LiquidWater.State state = new LiquidWater.State();
    /** Temperature (K). */
    double temperature;
    /** Mass (kg) of the water. */
    double mass;
    /** Volume (m3) of its part of the shell. */
    double volume;
    /** How much faster the shell grows with temperature than the water (1/K): {@code a - beta}. */
    double growth;
    /** How the shell gives and the water yields to pressure (1/Pa): {@code c + kappa}. */
    double give;
    /** Standing loss (W). */
    double loss;
    /** Heat (W) from burners, elements and neighbours by conduction, less the standing loss. */
    double heat;
    /** Heat (W) that flows carry past it upwards, unmixed. */
    double passing;

    Zone(CompiledSystem plant) {
        this.plant = plant;
    }

    /** Becomes the zone of one layer. */
    void beginAt(int layer) {
        first = layer;
        count = 1;
    }

    /** The layer above its highest one. */
    int end() {
        return first + count;
    }

    /** Evaluates it for a pressure (Pa, absolute) and a temperature (K). */
    void prepare(LiquidWater water, double p, double zoneTemperature) {
        water.evaluate(zoneTemperature, p, state);
        double size = shellSize(p, zoneTemperature);
        temperature = zoneTemperature;
        volume = plant.tankVolume * share * size;
        mass = state.density() * volume;
        double perSize = 1 / size;
        growth = plant.shellGrowth * perSize - state.expansivity();
        give = plant.shellCompliance * perSize + state.compressibility();
        loss = plant.standingLoss * share * (zoneTemperature - plant.roomTemperature);
        heat = power - loss;
    }

    private double shellSize(double p, double zoneTemperature) {
        return 1
                + plant.shellGrowth * (zoneTemperature - plant.coldTemperature)
                + plant.shellCompliance * (p - plant.coldPressure);
    }

    /** Conducts heat to or from the zone above. */
    void conduct(Zone above) {
        double conducted = plant.conductance * (above.temperature - temperature);
        above.heat -= conducted;
        heat += conducted;
    }

    /** Specific enthalpy (J/kg). */
    double enthalpy() {
        return state.enthalpy();
    }

    /** Energy (J), with enthalpies counted from that given (J/kg). */
    double energy(double reference) {
        return mass * (state.internalEnergy() - reference);
    }

    /** Heat capacity (J/K) of the water of one of its layers. */
    double layerCapacity() {
        return mass * state.heatCapacity() / count;
    }
}
