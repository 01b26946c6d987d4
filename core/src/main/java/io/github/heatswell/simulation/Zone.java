package io.github.heatswell.simulation;

import io.github.heatswell.water.LiquidWater;

/**
 * One fully mixed part of the tank: a run of neighbouring layers with one temperature, the water it holds, and the heat
 * that reaches it without any flow. The highest one leaves room for air.
 *
 * <p>Working memory of one run, not thread-safe.
 */
final class Zone {

    private final CompiledSystem plant;
    private final AirPocket air;

    /** The lowest layer. */
    int first;
    /** How many layers. */
    int count;
    /** How thick it is, in even layers (-). */
    double thickness;
    /** Its shell, of its size at the cold fill (-). */
    double size;
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
    /** Volume (m3) of the water: its part of the shell, less the air under the top. */
    double volume;
    /** How much faster the shell grows with temperature than the water (1/K): {@code a - beta}. */
    double growth;
    /** How the shell gives and the water yields to pressure (1/Pa): {@code c + kappa}. */
    double give;
    /** Standing loss (W). */
    double loss;
    /** Heat (W) from burners, elements and neighbours by conduction, less the standing loss. */
    double heat;
    /** What part (-) of the water that flows into the tank the jet carries into it. */
    double inletShare;
    /** Heat (W) that flows carry past it upwards, unmixed. */
    double passing;

    Zone(CompiledSystem plant, AirPocket air) {
        this.plant = plant;
        this.air = air;
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
        size = shellSize(p, zoneTemperature);
        temperature = zoneTemperature;
        volume = plant.tankVolume * share * size;
        double perSize = 1 / size;
        growth = plant.shellGrowth * perSize - state.expansivity();
        give = plant.shellCompliance * perSize + state.compressibility();
        if (hasAir()) {
            leaveRoom(p, zoneTemperature);
        }
        mass = state.density() * volume;
        loss = plant.standingLoss * share * (zoneTemperature - plant.roomTemperature);
        heat = power - loss;
    }

    /** Whether there is air above it. */
    boolean hasAir() {
        return !air.isEmpty() && end() == plant.layers;
    }

    /** The air takes up room, more of it as it warms and less of it under pressure. */
    private void leaveRoom(double p, double zoneTemperature) {
        air.evaluate(p, zoneTemperature);
        double shell = plant.tankVolume * share;
        volume -= air.volume;
        growth = (shell * plant.shellGrowth - air.byTemperature) / volume - state.expansivity();
        give = (shell * plant.shellCompliance - air.byPressure) / volume + state.compressibility();
    }

    private double shellSize(double p, double zoneTemperature) {
        return 1
                + plant.shellGrowth * (zoneTemperature - plant.coldTemperature)
                + plant.shellCompliance * (p - plant.coldPressure);
    }

    /** Conducts heat to or from the zone above; a thin one no faster than an even layer would. */
    void conduct(Zone above) {
        double conducted = plant.conductance * Math.min(1, thickness) * (above.temperature - temperature);
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

    /** Heat capacity (J/K) of the water of an even layer in it. */
    double layerCapacity() {
        return mass * state.heatCapacity() / thickness;
    }
}
