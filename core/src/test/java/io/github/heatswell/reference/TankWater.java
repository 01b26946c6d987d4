package io.github.heatswell.reference;

import io.github.heatswell.system.Tank;
import io.github.heatswell.water.LiquidWater;
import io.github.heatswell.water.Saturation;

/**
 * The water in the tank, or in one layer of it, as a closed function of its conserved quantities: given mass m and internal energy U, temperature
 * and pressure follow from {@code rho(T,p) V(T,p) = m} and {@code u(T,p) = U/m} with
 * {@code V = V_n [1 + g (T - T_ref) + C (p - p_ref)]}, g being three times the linear expansion of the shell.
 *
 * <p>Under the top of the highest layer there may be air: what is left of it after the vapour pressure of the water is the pressure
 * of a fixed amount of ideal gas, {@code (p - p_s(T)) V_air = n R T}, and it leaves that much less room for water.
 *
 * <p>Solved by Newton's method in two unknowns, begun at the last solution, and only anew for other conserved quantities: a
 * difference quotient moves one layer and leaves the others. Not safe for concurrent use.
 */
final class TankWater {

    private static final int MAX_ITERATIONS = 40;
    /** Iterations for a temperature alone, which converge at once: heat capacity hardly changes. */
    private static final int ENOUGH = 10;
    /** Corrections (Pa, K) after which a further one would be lost in rounding, convergence being quadratic. */
    private static final double SMALL_PRESSURE = 1e-5;

    private static final double SMALL_TEMPERATURE = 1e-11;

    /** A step that is cut down further than this has nowhere to go. */
    private static final double SMALLEST_PART = 1e-6;

    /** Ten times the highest pressure the properties are made for (Pa). */
    private static final double MAX_PRESSURE = 25e6;

    private final LiquidWater water;
    private double volume;
    private final double even;
    private double settledVolume;
    private final double thermalGrowth;
    private final double compliance;
    private final double referenceTemperature;
    private final double referencePressure;
    /** Amount of air times gas constant (J/K). */
    private double air;

    private final LiquidWater.State state = new LiquidWater.State();
    private double firstTemperature;
    private double firstPressure;
    private double temperature;
    private double pressure;
    /** What was settled last; not a number once the state has been evaluated elsewhere. */
    private double settledMass = Double.NaN;

    private double settledEnergy = Double.NaN;
    /** Derivatives of the mass that fits in, and of the specific internal energy, at the solution. */
    private double massByTemperature;

    private double massByPressure;
    private double energyByTemperature;
    private double energyByPressure;

    /**
     * A tank at its cold fill, or one of its layers of equal volume.
     *
     * @param tank the tank
     * @param water the properties of the water
     * @param temperature of the cold fill (K)
     * @param pressure of the cold fill (Pa, absolute)
     */
    TankWater(Tank tank, LiquidWater water, double temperature, double pressure) {
        this.water = water;
        volume = tank.volume() / tank.layers();
        even = volume;
        thermalGrowth = tank.shell().thermalGrowth();
        compliance = tank.shell().compliance();
        referenceTemperature = temperature;
        referencePressure = pressure;
        this.temperature = temperature;
        this.pressure = pressure;
        expect(temperature, pressure);
    }

    /** Water in pipes: a volume (m3) at a cold fill, how it grows with temperature (1/K, linear) and pressure (1/Pa), and that fill. */
    TankWater(
            double volume,
            double thermalGrowth,
            double compliance,
            LiquidWater water,
            double temperature,
            double pressure) {
        this.water = water;
        this.volume = volume;
        even = volume;
        this.thermalGrowth = thermalGrowth;
        this.compliance = compliance;
        referenceTemperature = temperature;
        referencePressure = pressure;
        this.temperature = temperature;
        this.pressure = pressure;
        expect(temperature, pressure);
    }

    /** Puts air (m3 at the cold fill) under its top. */
    void holdAir(double filled) {
        air = filled * (referencePressure - Saturation.pressureAbsolute(referenceTemperature)) / referenceTemperature;
    }

    /** Sets how thick it is, in even layers (-). */
    void thick(double thickness) {
        volume = even * thickness;
    }

    /** {@return how thick it becomes, in even layers (1/s), by a flow (kg/s) of its water that its boundaries follow} */
    double thicknessOf(double flow) {
        return flow / (state.density() * even * sizeAt(temperature, pressure));
    }

    private double sizeAt(double t, double p) {
        return 1 + thermalGrowth * (t - referenceTemperature) + compliance * (p - referencePressure);
    }

    private double airAt(double t, double p) {
        return air == 0 ? 0 : air * t / (p - vapour(t));
    }

    /** Iterations may leave the temperatures of vapour. */
    private static double vapour(double t) {
        return Saturation.pressureAbsolute(Math.max(t, 273.15));
    }

    /**
     * What is left (-) at the state found last until it boils, or until steam takes over the air: makes up nine tenths of its pressure,
     * fills nine tenths of this layer with it, or makes as much room, as it condenses on water that comes in, as that water takes.
     *
     * @param below the enthalpy of that water (J/kg)
     */
    double untilSteam(double below) {
        double steam = vapour(temperature) / pressure;
        if (air == 0) {
            return 1 - steam;
        }
        double mass = state.density() * volumeAt(temperature, pressure);
        double cooling = (below - state.enthalpy()) / (mass * state.heatCapacity());
        double filled = airAt(temperature, pressure) / volume;
        return Math.min(Math.min(0.9 - steam, 0.9 - filled), 1 - massByTemperature * cooling);
    }

    /** By a difference quotient, of the room (m3) by temperature (K). */
    private double roomByTemperature(double t, double p) {
        double dt = 1e-3;
        return volume * thermalGrowth - (airAt(t + dt, p) - airAt(t - dt, p)) / (2 * dt);
    }

    /** By a difference quotient, of the room (m3) by pressure (Pa). */
    private double roomByPressure(double t, double p) {
        double dp = 10;
        return volume * compliance - (airAt(t, p + dp) - airAt(t, p - dp)) / (2 * dp);
    }

    /** {@return the room for water (m3) at a temperature (K) and an absolute pressure (Pa)} */
    double volumeAt(double t, double p) {
        return volume * sizeAt(t, p) - airAt(t, p);
    }

    /** {@return the mass (kg) that fills the tank at a temperature (K) and an absolute pressure (Pa)} */
    double massAt(double t, double p) {
        settledMass = Double.NaN;
        water.evaluate(t, p, state);
        return state.density() * volumeAt(t, p);
    }

    /** {@return the temperature (K) of a specific internal energy (J/kg) at an absolute pressure (Pa)} */
    double temperatureAt(double specific, double p) {
        settledMass = Double.NaN;
        double t = firstTemperature;
        for (int i = 0; i < ENOUGH; i++) {
            water.evaluate(t, p, state);
            t += (specific - state.internalEnergy()) / state.heatCapacity();
        }
        return t;
    }

    /** {@return the specific internal energy (J/kg) of the state evaluated last} */
    double internalEnergy() {
        return state.internalEnergy();
    }

    /** Says where to look for solutions at first, and again when the last one was too far away. */
    void expect(double likelyTemperature, double likelyPressure) {
        firstTemperature = likelyTemperature;
        firstPressure = likelyPressure;
    }

    /**
     * Finds temperature and pressure.
     *
     * @param mass the mass (kg)
     * @param energy the internal energy (J)
     */
    void settle(double mass, double energy) {
        if (mass == settledMass && energy == settledEnergy && volume == settledVolume) {
            return;
        }
        if (!settleFrom(temperature, pressure, mass, energy / mass)
                && !settleFrom(firstTemperature, firstPressure, mass, energy / mass)
                && !settleFrom(temperatureAt(energy / mass, firstPressure), firstPressure, mass, energy / mass)) {
            throw new ArithmeticException("no liquid state holds " + mass + " kg and " + energy + " J");
        }
        water.evaluate(temperature, pressure, state);
        differentiate(temperature, pressure);
        settledMass = mass;
        settledEnergy = energy;
        settledVolume = volume;
    }

    private boolean settleFrom(double guessedTemperature, double guessedPressure, double mass, double specific) {
        double t = guessedTemperature;
        double p = guessedPressure;
        boolean settled = false;
        for (int i = 0; i < MAX_ITERATIONS && !settled && conceivable(t, p); i++) {
            double excess = massAt(t, p) - mass;
            double surplus = state.internalEnergy() - specific;
            differentiate(t, p);
            double determinant = massByTemperature * energyByPressure - massByPressure * energyByTemperature;
            double dt = -(excess * energyByPressure - surplus * massByPressure) / determinant;
            double dp = -(surplus * massByTemperature - excess * energyByTemperature) / determinant;
            double part = 1;
            while (air > 0 && part > SMALLEST_PART && !conceivable(t + part * dt, p + part * dp)) {
                part /= 2;
            }
            t += part * dt;
            p += part * dp;
            settled = Math.abs(dp) <= SMALL_PRESSURE && Math.abs(dt) <= SMALL_TEMPERATURE && conceivable(t, p);
        }
        temperature = settled ? t : temperature;
        pressure = settled ? p : pressure;
        return settled;
    }

    /** Iterations may leave the range of the properties, but not so far that these turn into nonsense; air stays air. */
    private boolean conceivable(double t, double p) {
        return t > 230 && t < 500 && Math.abs(p) < MAX_PRESSURE && (air == 0 || p > vapour(t) && airAt(t, p) < volume);
    }

    /** Of the state last evaluated, which must be that of t and p. */
    private void differentiate(double t, double p) {
        double density = state.density();
        double beta = state.expansivity();
        double kappa = state.compressibility();
        double v = volumeAt(t, p);
        massByTemperature = density * (roomByTemperature(t, p) - beta * v);
        massByPressure = density * (roomByPressure(t, p) + kappa * v);
        // From du = dh - d(p v) with dh = c_p dT + v (1 - T beta) dp.
        energyByTemperature = state.heatCapacity() - p * beta / density;
        energyByPressure = (p * kappa - t * beta) / density;
    }

    /** {@return the temperature (K) found last} */
    double temperature() {
        return temperature;
    }

    /** {@return the absolute pressure (Pa) found last} */
    double pressure() {
        return pressure;
    }

    /** {@return the density (kg/m3) at the state found last} */
    double density() {
        return state.density();
    }

    /** {@return the specific enthalpy (J/kg) at the state found last} */
    double enthalpy() {
        return state.enthalpy();
    }

    /**
     * The power that the water spends on pushing the shell outwards, {@code p dV/dt}, at the state found last.
     *
     * <p>The work changes the energy, and the energy the volume, so the rates of T and p follow from both balances at once:
     * {@code M_T T' + M_p p' = m'} and {@code m (u_T T' + u_p p') + p (V_T T' + V_p p') = E - u m'}.
     *
     * @param mass the mass (kg)
     * @param massRate its rate (kg/s)
     * @param energyRate what heat and flows add to the energy, work left out (W)
     * @param thickening how fast it becomes thicker, in even layers (1/s)
     * @return the power (W)
     */
    double work(double mass, double massRate, double energyRate, double thickening) {
        double grows = thickening * even * sizeAt(temperature, pressure);
        double byTemperature = roomByTemperature(temperature, pressure);
        double byPressure = roomByPressure(temperature, pressure);
        double a = mass * energyByTemperature + pressure * byTemperature;
        double b = mass * energyByPressure + pressure * byPressure;
        double e = energyRate - state.internalEnergy() * massRate - pressure * grows;
        double beyond = massRate - state.density() * grows;
        double determinant = massByTemperature * b - massByPressure * a;
        double temperatureRate = (beyond * b - massByPressure * e) / determinant;
        double pressureRate = (massByTemperature * e - beyond * a) / determinant;
        return pressure * (byTemperature * temperatureRate + byPressure * pressureRate + grows);
    }
}
