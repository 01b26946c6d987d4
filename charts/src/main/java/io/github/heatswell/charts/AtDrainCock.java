package io.github.heatswell.charts;

import io.github.heatswell.plant.ExpansionVessel;
import io.github.heatswell.plant.HotWaterSystem;
import io.github.heatswell.plant.ReliefValve;
import io.github.heatswell.units.Pressure;

/**
 * Pressures of devices as they stand at the height of the tank's drain cock, where the pressure of a run is taken. A
 * device above it sees less, by the weight of the water between.
 */
final class AtDrainCock {

    private static final double GRAVITY = 9.80665;

    /** Density of cold water (kg/m3); between the coldest and the warmest supply it differs by less than a hundredth. */
    private static final double DENSITY = 999;

    private AtDrainCock() {}

    /** The gauge pressure (Pa) at the drain cock while the device sees the given one. */
    static double gauge(HotWaterSystem system, Pressure seen, double height) {
        return seen.gauge(system.site().atmosphere()) + column(height);
    }

    /** The gauge pressure (Pa) at the drain cock at which a valve opens. */
    static double opens(HotWaterSystem system, ReliefValve valve) {
        return gauge(system, valve.opens(), valve.height());
    }

    /** The gauge pressure (Pa) at the drain cock at which a valve closes again. */
    static double reseats(HotWaterSystem system, ReliefValve valve) {
        return gauge(system, valve.reseats(), valve.height());
    }

    /** The gauge pressure (Pa) at the drain cock that equals a vessel's precharge. */
    static double precharge(HotWaterSystem system, ExpansionVessel vessel) {
        return gauge(system, vessel.precharge(), vessel.height());
    }

    /** The pressure (Pa) of a column of water. */
    static double column(double height) {
        return DENSITY * GRAVITY * height;
    }
}
