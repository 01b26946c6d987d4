package io.github.heatswell.water;

/**
 * All properties of liquid water at one temperature and pressure: a reusable object that
 * {@link LiquidWater#evaluate LiquidWater.evaluate} fills.
 *
 * <p>This is deliberately the one mutable class of the package. A solver asks for properties millions of times; it
 * makes one {@code WaterState} before it starts and lets each evaluation overwrite the last. The consequences: copy out
 * what must survive the next evaluation, never hand an instance to code that may keep it, and use one instance per
 * thread. The class is not thread-safe and has no {@code equals}.
 *
 * <p>Before the first evaluation every property is NaN, so forgetting the evaluation cannot pass for a result.
 */
public final class WaterState {

    /** Working memory that spares {@link If97Region1} an allocation; holds nothing between evaluations. */
    final double[] workspace = new double[If97Region1.WORKSPACE_LENGTH];
    /** What the last temperature gave {@link GibbsPolynomialWater}, which at that temperature then has less to work out. */
    final GibbsPolynomialWater.Isotherm isotherm = new GibbsPolynomialWater.Isotherm();

    private double temperature = Double.NaN;
    private double pressureAbsolute = Double.NaN;
    private double density = Double.NaN;
    private double expansivity = Double.NaN;
    private double compressibility = Double.NaN;
    private double heatCapacity = Double.NaN;
    private double enthalpy = Double.NaN;

    /** Creates a state in which every property is NaN until it is filled. */
    public WaterState() {}

    /**
     * Overwrites the point and all its properties. This is for the formulations of this package alone; the values are
     * taken as they come, since a check here would be paid for in every solver step.
     *
     * @param temperature temperature (K)
     * @param pressureAbsolute absolute pressure (Pa)
     * @param density density (kg/m&sup3;)
     * @param expansivity isobaric expansivity (1/K)
     * @param compressibility isothermal compressibility (1/Pa)
     * @param heatCapacity isobaric heat capacity (J/(kg K))
     * @param enthalpy specific enthalpy (J/kg)
     */
    void set(
            double temperature,
            double pressureAbsolute,
            double density,
            double expansivity,
            double compressibility,
            double heatCapacity,
            double enthalpy) {
        this.temperature = temperature;
        this.pressureAbsolute = pressureAbsolute;
        this.density = density;
        this.expansivity = expansivity;
        this.compressibility = compressibility;
        this.heatCapacity = heatCapacity;
        this.enthalpy = enthalpy;
    }

    /**
     * The temperature the properties belong to.
     *
     * @return temperature (K)
     */
    public double temperature() {
        return temperature;
    }

    /**
     * The absolute pressure the properties belong to.
     *
     * @return absolute pressure (Pa)
     */
    public double pressureAbsolute() {
        return pressureAbsolute;
    }

    /**
     * Mass per volume, &rho;.
     *
     * @return density (kg/m&sup3;)
     */
    public double density() {
        return density;
    }

    /**
     * Relative growth of volume per kelvin at constant pressure, &beta;; negative below the density maximum near 4
     * &deg;C.
     *
     * @return isobaric expansivity (1/K)
     */
    public double expansivity() {
        return expansivity;
    }

    /**
     * Relative loss of volume per pascal at constant temperature, &kappa;.
     *
     * @return isothermal compressibility (1/Pa)
     */
    public double compressibility() {
        return compressibility;
    }

    /**
     * Heat taken up per kilogram and kelvin at constant pressure, c<sub>p</sub>.
     *
     * @return isobaric heat capacity (J/(kg K))
     */
    public double heatCapacity() {
        return heatCapacity;
    }

    /**
     * Specific enthalpy h, with the zero of the IAPWS formulations.
     *
     * @return specific enthalpy (J/kg)
     */
    public double enthalpy() {
        return enthalpy;
    }

    /**
     * Specific internal energy u = h &minus; p/&rho;, zero for the saturated liquid at the triple point.
     *
     * @return specific internal energy (J/kg)
     */
    public double internalEnergy() {
        return enthalpy - pressureAbsolute / density;
    }
}
