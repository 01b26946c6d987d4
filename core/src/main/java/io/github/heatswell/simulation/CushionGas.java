package io.github.heatswell.simulation;

import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.system.GasLaw;
import java.util.function.DoubleSupplier;

/**
 * The gas of a vessel, charged with the water side empty: its pressure {@code p} (Pa, absolute, at the vessel) against its
 * volume {@code V} (m3) and temperature {@code T} (K), and what follows for a vessel whose gas exchanges heat with its surroundings.
 * With {@code C} its heat capacity at constant volume and {@code r} (K/s) the rate at which the surroundings alone warm it,
 *
 * <pre>
 *   dT = -(T p_T / C) dV + r dt,   dp = p_V dV + p_T dT
 * </pre>
 *
 * in which {@code p_V} and {@code p_T} are the derivatives of the law.
 */
abstract class CushionGas {

    /** Ratio of heat capacities cv/cp of a diatomic gas (-). */
    private static final double CV_OVER_CP = 2.5 / 3.5;
    /** The heat capacity cv of a diatomic gas in gas constants (-). */
    private static final double CV = 2.5;

    /** Volume (m3) of the vessel. */
    final double volume;
    /** Whether the gas has a temperature of its own. */
    final boolean warms;

    private CushionGas(double volume, boolean warms) {
        this.volume = volume;
        this.warms = warms;
    }

    /**
     * The gas of a vessel.
     *
     * @param vessel the vessel
     * @param name what a message calls it
     * @param charge the precharge (Pa, absolute)
     * @param chargedAt the temperature (K) at which it was measured
     */
    static CushionGas of(ExpansionVessel vessel, String name, double charge, double chargedAt) {
        boolean warms = vessel.gasTimeConstant().isPresent();
        return vessel.gasLaw()
                .<CushionGas>map(law -> new Lawful(vessel, law, name, charge, chargedAt, warms))
                .orElseGet(() -> new Ideal(vessel.volume(), charge * vessel.volume() / chargedAt, warms));
    }

    /** Pressure (Pa) in a volume (m3) at a temperature (K). */
    abstract double pressure(double gasVolume, double temperature);

    /** Volume (m3) at a pressure (Pa) and a temperature (K). */
    abstract double volume(double pressure, double temperature);

    /** How it yields to pressure (m3/Pa), compression heat included. */
    abstract double give(double pressure, double gasVolume, double temperature);

    /** How it expands at constant pressure (m3/K) per kelvin by which the surroundings alone would warm it. */
    abstract double growth(double pressure, double gasVolume, double temperature);

    /** How it warms with pressure (K/Pa) by compression. */
    abstract double warming(double pressure, double gasVolume, double temperature);

    /** The part (-) of what its surroundings alone would warm it that it warms at constant pressure. */
    abstract double share(double gasVolume, double temperature);

    /** How its pressure rises with temperature in a volume (Pa/K). */
    abstract double perKelvin(double pressure, double temperature);

    /** How its pressure rises (Pa/m3) as water first enters the vessel. */
    abstract double stiffnessAtSeat(double temperature);

    /** Roughly how far (m3/Pa) it gives to pressure (Pa), at its softest. */
    abstract double softest(double pressure);

    /** A fixed mass of ideal gas, {@code p V = N T}, with the amount {@code N} (J/K). */
    private static final class Ideal extends CushionGas {

        private final double amount;
        /** Instantaneous share (-) of the isothermal compliance; the rest follows as the gas returns to ambient temperature. */
        private final double share;

        private Ideal(double volume, double amount, boolean warms) {
            super(volume, warms);
            this.amount = amount;
            share = warms ? CV_OVER_CP : 1;
        }

        @Override
        double pressure(double gasVolume, double temperature) {
            return amount * temperature / gasVolume;
        }

        @Override
        double volume(double pressure, double temperature) {
            return amount * temperature / pressure;
        }

        @Override
        double give(double pressure, double gasVolume, double temperature) {
            return share / pressure * gasVolume;
        }

        @Override
        double growth(double pressure, double gasVolume, double temperature) {
            return share / pressure * amount;
        }

        @Override
        double warming(double pressure, double gasVolume, double temperature) {
            return (1 - share) * temperature / pressure;
        }

        @Override
        double share(double gasVolume, double temperature) {
            return share;
        }

        @Override
        double perKelvin(double pressure, double temperature) {
            return pressure / temperature;
        }

        @Override
        double stiffnessAtSeat(double temperature) {
            return amount * temperature / volume / volume;
        }

        @Override
        double softest(double pressure) {
            return volume / pressure;
        }
    }

    /** Gas by a law from outside. Its heat capacity is that of the charge as a diatomic gas. */
    private static final class Lawful extends CushionGas {

        private final ExpansionVessel vessel;
        private final GasLaw law;
        private final String name;
        private final double charge;
        private final double chargedAt;
        private final double least;
        private final double heatCapacity;

        private Lawful(
                ExpansionVessel vessel, GasLaw law, String name, double charge, double chargedAt, boolean warms) {
            super(vessel.volume(), warms);
            this.vessel = vessel;
            this.law = law;
            this.name = name.isEmpty() ? "the vessel" : "'" + name + "'";
            this.charge = charge;
            this.chargedAt = chargedAt;
            least = vessel.gasShareAtLimit();
            heatCapacity = CV * charge * volume / chargedAt;
        }

        /** What the law says; a trial state of the solver may be no number (NaN), and then nothing is asked. */
        private double asked(DoubleSupplier value, String of, double at, double temperature) {
            if (Double.isNaN(at) || Double.isNaN(temperature)) {
                return Double.NaN;
            }
            return UndefinedCurveException.defined(
                    value, () -> "the gas law of " + name + " at the " + of + " " + at + " and " + temperature + " K");
        }

        private double within(double gasVolume) {
            return Math.max(least, Math.min(1, gasVolume / volume));
        }

        private double byVolume(double gasVolume, double temperature) {
            return slope(law::byShare, gasVolume, temperature) / volume;
        }

        private double byTemperature(double gasVolume, double temperature) {
            return slope(law::byWarmth, gasVolume, temperature) / chargedAt;
        }

        private double slope(Slope law, double gasVolume, double temperature) {
            double share = within(gasVolume);
            return asked(
                    () -> law.at(charge, share, temperature / chargedAt), "share of the volume", share, temperature);
        }

        /** One of the two slopes of a gas law. */
        private interface Slope {
            double at(double charge, double share, double warmth);
        }

        @Override
        double pressure(double gasVolume, double temperature) {
            double share = gasVolume / volume;
            return asked(
                    () -> vessel.gasPressure(charge, share, temperature / chargedAt),
                    "share of the volume",
                    share,
                    temperature);
        }

        @Override
        double volume(double pressure, double temperature) {
            return volume
                    * asked(
                            () -> vessel.gasShare(charge, pressure, temperature / chargedAt),
                            "absolute pressure of (Pa)",
                            pressure,
                            temperature);
        }

        /** How pressure falls with volume (Pa/m3), with the cooling by expansion. */
        private double steepness(double gasVolume, double temperature) {
            double isothermal = byVolume(gasVolume, temperature);
            if (!warms) {
                return isothermal;
            }
            double perKelvin = byTemperature(gasVolume, temperature);
            return isothermal - temperature * perKelvin * perKelvin / heatCapacity;
        }

        @Override
        double give(double pressure, double gasVolume, double temperature) {
            return -1 / steepness(gasVolume, temperature);
        }

        @Override
        double growth(double pressure, double gasVolume, double temperature) {
            return -byTemperature(gasVolume, temperature) / steepness(gasVolume, temperature);
        }

        @Override
        double warming(double pressure, double gasVolume, double temperature) {
            return -temperature
                    * byTemperature(gasVolume, temperature)
                    / heatCapacity
                    / steepness(gasVolume, temperature);
        }

        @Override
        double share(double gasVolume, double temperature) {
            return byVolume(gasVolume, temperature) / steepness(gasVolume, temperature);
        }

        @Override
        double perKelvin(double pressure, double temperature) {
            return byTemperature(volume(pressure, temperature), temperature);
        }

        @Override
        double stiffnessAtSeat(double temperature) {
            return -byVolume(volume, temperature);
        }

        @Override
        double softest(double pressure) {
            return -1 / Math.max(byVolume(volume, chargedAt), byVolume((least + 1) / 2 * volume, chargedAt));
        }
    }
}
