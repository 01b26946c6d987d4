package io.github.heatswell.simulation;

import io.github.heatswell.simulation.Contributions.Outlet;
import io.github.heatswell.simulation.Schedule.Conditions;

/** Holes in the cold branch. */
final class Leaks extends Device<Boolean> {

    private final double leakage;
    private final double atmosphere;

    /**
     * The leaks of a house.
     *
     * @param leakage volume flow of all at one pascal above the air (m3/s/Pa^0.5)
     * @param atmosphere the pressure of the air (Pa, absolute)
     */
    Leaks(StateVector.Slots slots, double leakage, double atmosphere) {
        super(slots);
        this.leakage = leakage;
        this.atmosphere = atmosphere;
    }

    @Override
    Boolean resting() {
        return true;
    }

    @Override
    boolean leaks() {
        return leakage > 0;
    }

    @Override
    boolean contributes(Modes modes, Conditions now) {
        return leakage > 0;
    }

    @Override
    void contribute(double[] y, Modes modes, Contributions to) {
        double excess = y[StateVector.PRESSURE] - atmosphere;
        if (excess > 0) {
            double flow = to.density(false) * leakage * Math.sqrt(excess);
            to.pass(Outlet.HOLE, false, StateVector.LEAKED, flow, flow / (2 * excess));
        }
    }
}
