package io.github.heatswell.sizing;

import io.github.heatswell.plant.HotWaterSystem;
import io.github.heatswell.water.GibbsPolynomialWater;

/** Pressure at other heights than that of the drain cock. */
final class Heights {

    /** Standard gravity (m/s2). */
    private static final double GRAVITY = 9.80665;

    private Heights() {}

    /** How much less pressure (Pa) there is at a height (m), under a column of the water of a cold fill. */
    static double offset(HotWaterSystem system, double height) {
        double density = GibbsPolynomialWater.instance()
                .density(system.coldAtStart(), system.site().atmosphere());
        return density * GRAVITY * height;
    }
}
