package io.github.heatswell.scenarios.teaching;

import io.github.heatswell.water.GibbsPolynomialWater;
import io.github.heatswell.water.If97Region1;
import io.github.heatswell.water.LiquidWater;

/** What follows from the properties of water alone. SI units, pressures absolute. */
final class WaterFacts {

    private static final LiquidWater WATER = GibbsPolynomialWater.instance();
    private static final LiquidWater HIGH_PRESSURE = If97Region1.instance();
    /** The water of a house is close to this pressure; growth hardly depends on it. */
    private static final double USUAL = 5e5;

    private static final int HALVINGS = 60;

    private WaterFacts() {}

    /** How much water grows for each kelvin, as a share (1/K). */
    static double expansivity(double temperature) {
        return WATER.expansivity(temperature, USUAL);
    }

    /** How far water can be squeezed, as a share for each pascal (1/Pa). */
    static double compressibility(double temperature) {
        return WATER.compressibility(temperature, USUAL);
    }

    /** How much water grows from one temperature to another, as a share of its cold volume. */
    static double growth(double cold, double hot) {
        return WATER.density(cold, USUAL) / WATER.density(hot, USUAL) - 1;
    }

    /** What of a full vessel of cold water has no room once it is hot, counted as cold water: a share of its volume. */
    static double excess(double cold, double hot) {
        return 1 - WATER.density(hot, USUAL) / WATER.density(cold, USUAL);
    }

    /** How fast heated water grows, beta Q/(rho c) (m3/s). */
    static double growthFlow(double heat, double temperature) {
        LiquidWater.State state = WATER.stateAt(temperature, USUAL);
        return state.expansivity() * heat / (state.density() * state.heatCapacity());
    }

    /** The pressure that keeps water at the volume it had, after it was warmed (Pa absolute, up to 1000 bar). */
    static double rigidAbsolute(double cold, double coldAbsolute, double hot) {
        double density = HIGH_PRESSURE.density(cold, coldAbsolute);
        double low = coldAbsolute;
        double high = HIGH_PRESSURE.validity().highestPressureAbsolute();
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            if (HIGH_PRESSURE.density(hot, middle) < density) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }
}
