package io.github.heatswell.reference;

import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.PipeRun;
import io.github.heatswell.system.Site;
import io.github.heatswell.water.LiquidWater;
import java.util.Optional;

/**
 * The cold water outside the tank, in pipes and vessel, at the temperature of the supply. Its pressure follows from its
 * mass: {@code rho(T_s, p) [sum V_i (1 + C_i (p - p_ref)) + V_w(p - rho g z) - V_air p_0/p] = m}. Trapped air is
 * isothermal; a vessel above the drain cock stands under a column of cold water less. A vessel full of water is so much more
 * of rigid pipe, and one that is cut off is none.
 *
 * <p>A rigid fitting of a millionth of the tank's volume stands in for the branch where there is neither pipe nor vessel;
 * it takes part in everything, at an effect of 1e-6.
 */
final class BranchWater {

    private static final double FITTING = 1e-6;
    private static final int MAX_ITERATIONS = 60;
    /** Standard acceleration of free fall (m/s2), ISO 80000-3. */
    private static final double GRAVITY = 9.80665;
    /** A correction (relative) after which a further one would be lost in rounding. */
    private static final double SMALL = 1e-11;

    /** Ten times the highest pressure the properties are made for (Pa). */
    private static final double MAX_PRESSURE = 25e6;

    private final LiquidWater water;
    private final double temperature;
    private final double referencePressure;
    private final double volume;
    private final double give;
    private final Optional<VesselGas> gas;
    private final double vesselOffset;
    private final double airVolume;
    private final double airPressure;
    private final LiquidWater.State state = new LiquidWater.State();
    private double pressure;

    /**
     * The branch of a system at its cold fill.
     *
     * @param system the system
     * @param water the properties of the water
     */
    BranchWater(HotWaterSystem system, LiquidWater water) {
        Site site = system.site();
        this.water = water;
        temperature = system.coldAtStart();
        referencePressure = system.supplyAtStart().absolute(site.atmosphere());
        double pipes = 0;
        double compliance = 0;
        for (PipeRun pipe : system.piping()) {
            pipes += pipe.volume();
            compliance += pipe.volume() * pipe.compliance();
        }
        volume = pipes + FITTING * system.tank().volume() + volumeIf(system, ExpansionVessel.Condition.WATERLOGGED);
        give = compliance;
        gas = system.vessel()
                .filter(v -> v.condition() == ExpansionVessel.Condition.SOUND)
                .map(v -> new VesselGas(v, site.atmosphere(), site.roomTemperature()));
        vesselOffset =
                system.vessel().map(v -> column(v.height(), site.atmosphere())).orElse(0.0);
        airVolume = system.trappedAir().orElse(0);
        airPressure = system.start()
                .pressure()
                .map(q -> q.absolute(site.atmosphere()))
                .orElse(referencePressure);
        pressure = referencePressure;
    }

    private static double volumeIf(HotWaterSystem system, ExpansionVessel.Condition condition) {
        return system.vessel()
                .filter(v -> v.condition() == condition)
                .map(ExpansionVessel::volume)
                .orElse(0.0);
    }

    /** {@return what a column of cold water weighs (Pa), taken at the pressure of the air (Pa)} */
    double column(double height, double air) {
        return density(air) * GRAVITY * height;
    }

    /** {@return s of gas that has rested while the branch stood at an absolute pressure (Pa)} */
    double adiabatAtRest(double p) {
        return gas.isEmpty() ? 0 : gas.get().adiabatAtRest(p - vesselOffset);
    }

    /** {@return the rate of s (1/s) at a pressure of the branch (Pa, absolute)} */
    double adiabatRate(double p, double s, Mode.Diaphragm position) {
        return gas.isEmpty() ? 0 : gas.get().adiabatRate(p - vesselOffset, s, position);
    }

    /** {@return where the diaphragm lies at a pressure of the branch (Pa, absolute)} */
    Mode.Diaphragm diaphragmAt(double p, double s) {
        if (gas.isEmpty() || p - vesselOffset <= gas.get().seatPressure(s)) {
            return Mode.Diaphragm.SEATED;
        }
        return p - vesselOffset < gas.get().stopPressure(s) ? Mode.Diaphragm.FLOATING : Mode.Diaphragm.STOPPED;
    }

    /** {@return the gas of the vessel, if there is one} */
    Optional<VesselGas> gas() {
        return gas;
    }

    /** {@return the water in the vessel (m3)} */
    double vesselWater(double p, double s, Mode.Diaphragm position) {
        return gas.isEmpty() ? 0 : gas.get().waterVolume(p - vesselOffset, s, position);
    }

    private double volumeAt(double p, double s, Mode.Diaphragm position) {
        return volume + give * (p - referencePressure) - airVolume * airPressure / p + vesselWater(p, s, position);
    }

    /** {@return the density (kg/m3) at an absolute pressure (Pa)} */
    double density(double p) {
        water.evaluate(temperature, p, state);
        return state.density();
    }

    /** {@return the enthalpy (J/kg) at an absolute pressure (Pa)} */
    double enthalpy(double p) {
        water.evaluate(temperature, p, state);
        return state.enthalpy();
    }

    /** {@return the mass (kg) in the branch} */
    double massAt(double p, double s, Mode.Diaphragm position) {
        return density(p) * volumeAt(p, s, position);
    }

    /** {@return by how much more water (-) the branch holds than at the moment the diaphragm leaves its seat} */
    double fillAboveSeat(double mass, double s) {
        return fillAbove(mass, massAt(gas.orElseThrow().seatPressure(s) + vesselOffset, s, Mode.Diaphragm.SEATED));
    }

    /** {@return by how much more water (-) the branch holds than at the moment the diaphragm meets its stop, if any} */
    double fillAboveStop(double mass, double s) {
        double p = gas.orElseThrow().stopPressure(s) + vesselOffset;
        return p < MAX_PRESSURE ? fillAbove(mass, massAt(p, s, Mode.Diaphragm.STOPPED)) : -1;
    }

    /** Where trapped air at the pressure of the seat would fill more than the pipes, the mass there is below zero. */
    private static double fillAbove(double mass, double there) {
        return (mass - there) / Math.max(Math.abs(mass), Math.abs(there));
    }

    /**
     * Finds the pressure by Newton's method, begun at the last solution.
     *
     * @param mass the mass (kg)
     * @param s the adiabat of the gas
     * @param position where the diaphragm is
     * @return the pressure (Pa, absolute)
     */
    double settle(double mass, double s, Mode.Diaphragm position) {
        if (!settleFrom(pressure, mass, s, position) && !settleFrom(referencePressure, mass, s, position)) {
            throw new ArithmeticException("no pressure holds " + mass + " kg in the branch");
        }
        return pressure;
    }

    private boolean settleFrom(double first, double mass, double s, Mode.Diaphragm position) {
        double p = first;
        boolean settled = false;
        for (int i = 0; i < MAX_ITERATIONS && !settled; i++) {
            double v = volumeAt(p, s, position);
            double density = density(p);
            double growth = give
                    + airVolume * airPressure / (p * p)
                    + (gas.isEmpty() ? 0 : gas.get().waterVolumeByPressure(p - vesselOffset, s, position));
            double correction = (mass / density - v) / (v * state.compressibility() + growth);
            // Far from the solution the gas curve may send Newton's method below vacuum.
            double reached = Math.max(p + correction, p / 4);
            settled = Math.abs(reached - p) <= SMALL * p && reached < MAX_PRESSURE;
            p = reached;
        }
        pressure = settled ? p : pressure;
        return settled;
    }
}
