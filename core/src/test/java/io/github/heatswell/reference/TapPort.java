package io.github.heatswell.reference;

import io.github.heatswell.system.Draw;
import io.github.heatswell.water.LiquidWater;

/** How much hot water an open tap takes. */
final class TapPort {

    private final LiquidWater water;
    private final double coldTemperature;
    private final double coldPressure;

    /**
     * The taps of a house.
     *
     * @param water the properties of the water
     * @param coldTemperature of the cold water (K)
     * @param coldPressure of the cold fill (Pa, absolute)
     */
    TapPort(LiquidWater water, double coldTemperature, double coldPressure) {
        this.water = water;
        this.coldTemperature = coldTemperature;
        this.coldPressure = coldPressure;
    }

    /**
     * The mass flow (kg/s) out of the tank. Mixed water takes as much of it as the balance of heat asks for, at a constant
     * heat capacity.
     *
     * @param draw the draw
     * @param mixing whether the water is hotter than wanted
     * @param top the hot water at the tap
     * @return the flow
     */
    double flow(Draw draw, boolean mixing, TankWater top) {
        if (!mixing) {
            return draw.flow() * top.density();
        }
        double wanted = draw.mixedTemperature().orElseThrow();
        // cold water that is warmer than wanted is drawn alone
        double share = Math.max(0, wanted - coldTemperature) / (top.temperature() - coldTemperature);
        return draw.flow() * water.density(wanted, coldPressure) * share;
    }
}
