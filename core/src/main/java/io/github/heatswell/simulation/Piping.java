package io.github.heatswell.simulation;

import io.github.heatswell.simulation.Schedule.Conditions;

/** The pipes of the cold branch, what else is full of cold water, and the air trapped there. It has one mode. */
final class Piping extends Device<Boolean> {

    private final double volume;
    private final double growth;
    private final double airConstant;
    private final double coldPressure;

    /**
     * The branch of a house.
     *
     * @param volume of pipes and waterlogged vessels at the pressure of the cold fill (m3)
     * @param growth of this volume with pressure (m3/Pa)
     * @param airConstant trapped air: pressure times volume (J)
     * @param coldPressure the pressure of the cold fill (Pa, absolute)
     */
    Piping(StateVector.Slots slots, double volume, double growth, double airConstant, double coldPressure) {
        super(slots);
        this.volume = volume;
        this.growth = growth;
        this.airConstant = airConstant;
        this.coldPressure = coldPressure;
    }

    @Override
    Boolean resting() {
        return true;
    }

    @Override
    boolean contributes(Modes modes, Conditions now) {
        return true;
    }

    @Override
    void contribute(double[] y, Modes modes, Contributions to) {
        double p = y[StateVector.PRESSURE];
        to.store(volume(y, modes), compliance(p), 0);
    }

    @Override
    double volume(double[] y, Modes modes) {
        double p = y[StateVector.PRESSURE];
        return volume + growth * (p - coldPressure) - airConstant / p;
    }

    @Override
    double compliance(double pressure) {
        return growth + airConstant / (pressure * pressure);
    }
}
