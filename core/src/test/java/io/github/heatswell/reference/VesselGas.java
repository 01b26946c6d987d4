package io.github.heatswell.reference;

import io.github.heatswell.system.ExpansionVessel;

/**
 * The gas behind the diaphragm: a fixed mass of ideal diatomic gas, {@code p V_g = N T_g}, fixed by the precharge at room
 * temperature with the water side empty. Around it is the room, or the tank's layer at its height.
 *
 * <p>With a time constant the state is the logarithm of the adiabat the gas lies on, {@code s = ln T_g + (R/c_v) ln V_g}.
 * It follows from {@code m c_v T_g' = -p V_g' + (m c_v/tau)(T_room - T_g)} by division by {@code m c_v T_g}:
 * {@code s' = (T_around - T_g)/(tau T_g)}, in which the rate of the volume no longer appears. Without a time constant the gas
 * stays at room temperature.
 *
 * <p>Seat and stop give way elastically by {@link #SOFTNESS} of the whole volume when the pressure difference across them
 * equals the gas pressure. Against the compliance of a tank (its own and that of its water, 3e-10 m3/Pa for 200 L) this is
 * less than 1e-5 for any vessel up to the size of the tank, so it shifts pressures by less than 1e-5; against a floating
 * diaphragm it is 1e-9.
 */
final class VesselGas {

    /** R/c_v of a diatomic gas (-). */
    private static final double GAS_RATIO = 0.4;

    private static final double SOFTNESS = 1e-9;

    private final double volume;
    private final double leastGas;
    private final double atFirst;
    private final double amount;
    private final double timeConstant;

    /**
     * A vessel in its place.
     *
     * @param vessel the vessel
     * @param atmosphere the pressure of the air (Pa, absolute)
     * @param room the temperature of the room (K), in which it was charged
     * @param atFirst the temperature around it (K), as at the start
     */
    VesselGas(ExpansionVessel vessel, double atmosphere, double room, double atFirst) {
        if (vessel.gasLaw().isPresent()) {
            throw new IllegalArgumentException("no law of a vessel's gas was written here but that of an ideal gas");
        }
        volume = vessel.volume();
        leastGas = volume * (1 - vessel.acceptance());
        this.atFirst = atFirst;
        amount = vessel.precharge().absolute(atmosphere)
                * volume
                / vessel.chargedAt().orElse(room);
        timeConstant = vessel.gasTimeConstant().orElse(0);
    }

    /** {@return whether the gas has a temperature of its own, so that s is a state} */
    boolean hasOwnTemperature() {
        return timeConstant > 0;
    }

    /** {@return the time (s) in which it takes the temperature around it} */
    double timeConstant() {
        return timeConstant;
    }

    /** {@return s of gas that has rested against water at an absolute pressure (Pa)} */
    double adiabatAtRest(double p) {
        double gas = Math.min(volume, Math.max(leastGas, amount * atFirst / p));
        return Math.log(atFirst) + GAS_RATIO * Math.log(gas);
    }

    private double temperature(double s, double gasVolume) {
        return hasOwnTemperature() ? Math.exp(s) * Math.pow(gasVolume, -GAS_RATIO) : atFirst;
    }

    /** {@return the gas pressure (Pa) in a given volume (m3)} */
    private double pressure(double s, double gasVolume) {
        return amount * temperature(s, gasVolume) / gasVolume;
    }

    /** {@return the pressure (Pa, absolute) above which the diaphragm leaves its seat} */
    double seatPressure(double s) {
        return pressure(s, volume);
    }

    /** {@return the pressure (Pa, absolute) at which the diaphragm meets its stop, infinite if there is none} */
    double stopPressure(double s) {
        return leastGas > 0 ? pressure(s, leastGas) : Double.POSITIVE_INFINITY;
    }

    private double floatingVolume(double p, double s) {
        return hasOwnTemperature() ? Math.pow(amount * Math.exp(s) / p, 1 / (1 + GAS_RATIO)) : amount * atFirst / p;
    }

    /**
     * The water in the vessel.
     *
     * @param p the pressure of the water (Pa, absolute)
     * @param s the adiabat of the gas
     * @param position where the diaphragm is
     * @return the volume of the water (m3); below zero by the give of the seat
     */
    double waterVolume(double p, double s, Mode.Diaphragm position) {
        return switch (position) {
            case SEATED -> SOFTNESS * volume * (p / seatPressure(s) - 1);
            case FLOATING -> volume - floatingVolume(p, s);
            case STOPPED -> volume - leastGas + SOFTNESS * volume * (p / stopPressure(s) - 1);
        };
    }

    /** {@return how fast that grows with pressure (m3/Pa)} */
    double waterVolumeByPressure(double p, double s, Mode.Diaphragm position) {
        return switch (position) {
            case SEATED -> SOFTNESS * volume / seatPressure(s);
            case FLOATING -> floatingVolume(p, s) / p / (hasOwnTemperature() ? 1 + GAS_RATIO : 1);
            case STOPPED -> SOFTNESS * volume / stopPressure(s);
        };
    }

    /** {@return the rate of s (1/s) at a pressure of the water (Pa, absolute) and a temperature around it (K)} */
    double adiabatRate(double p, double s, Mode.Diaphragm position, double around) {
        if (!hasOwnTemperature()) {
            return 0;
        }
        double gas = switch (position) {
            case SEATED -> volume;
            case FLOATING -> floatingVolume(p, s);
            case STOPPED -> leastGas;
        };
        return (around / temperature(s, gas) - 1) / timeConstant;
    }
}
