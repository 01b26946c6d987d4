package io.github.heatswell.water;

/**
 * Properties of liquid water as functions of temperature and absolute pressure.
 *
 * <p>There are two formulations, {@link GibbsPolynomialWater} and {@link If97Region1}. Each is immutable, safe for use
 * by any number of threads, and derives all its properties exactly from one thermodynamic potential (see the package
 * description for what that means and why it matters). Within its {@linkplain #validity() stated range} it describes the
 * stable liquid and, below the saturation pressure, its smooth metastable continuation; it never looks for vapour.
 *
 * <p>There are two ways in. {@link #evaluate evaluate} is the way for a solver: all properties at once, no check, no
 * exception, no allocation. The other methods are the way for everybody else: they check the range first. Both give the
 * same numbers.
 */
public sealed interface LiquidWater permits GibbsPolynomialWater, If97Region1 {

    /**
     * Computes all properties at one point into an object that the caller provides and keeps.
     *
     * <p>This is the method for a solver's hot loop, whose trial steps may stray outside the range: it does not check
     * its arguments, throws nothing and allocates nothing. Outside the range the formulation is extrapolated, smoothly
     * for a few kelvin and a few megapascal and without meaning farther out. A NaN argument gives NaN properties.
     *
     * @param temperature temperature (K)
     * @param pressureAbsolute absolute pressure (Pa)
     * @param into the object to fill; everything in it is overwritten (not null)
     */
    void evaluate(double temperature, double pressureAbsolute, WaterState into);

    /**
     * The range in which the stated accuracy holds and in which the checking methods answer. It covers at least 273.15
     * K to 423.15 K (0 &deg;C to 150 &deg;C) and 611 Pa to 2.5 MPa, which includes the saturation line up to there.
     *
     * @return the range, limits included
     */
    ValidityRange validity();

    /**
     * All properties at one point, in a new object, after a check of the range.
     *
     * @param temperature temperature (K), within {@link #validity()}
     * @param pressureAbsolute absolute pressure (Pa), within {@link #validity()}
     * @return a new state that is the caller's own
     * @throws IllegalArgumentException if an argument is NaN or outside {@link #validity()}
     */
    default WaterState stateAt(double temperature, double pressureAbsolute) {
        validity().requireContains(temperature, pressureAbsolute);
        WaterState state = new WaterState();
        evaluate(temperature, pressureAbsolute, state);
        return state;
    }

    /**
     * Density &rho;: 917 to 1001 kg/m&sup3; between 0 and 150 &deg;C.
     *
     * @param temperature temperature (K), within {@link #validity()}
     * @param pressureAbsolute absolute pressure (Pa), within {@link #validity()}
     * @return density (kg/m&sup3;)
     * @throws IllegalArgumentException if an argument is NaN or outside {@link #validity()}
     */
    default double density(double temperature, double pressureAbsolute) {
        return stateAt(temperature, pressureAbsolute).density();
    }

    /**
     * Isobaric expansivity &beta; = &minus;(1/&rho;) (&part;&rho;/&part;T)<sub>p</sub>: &minus;0.07e-3 1/K at 0
     * &deg;C, zero near 4 &deg;C, 0.52e-3 1/K at 60 &deg;C.
     *
     * @param temperature temperature (K), within {@link #validity()}
     * @param pressureAbsolute absolute pressure (Pa), within {@link #validity()}
     * @return isobaric expansivity (1/K), negative below the density maximum
     * @throws IllegalArgumentException if an argument is NaN or outside {@link #validity()}
     */
    default double expansivity(double temperature, double pressureAbsolute) {
        return stateAt(temperature, pressureAbsolute).expansivity();
    }

    /**
     * Isothermal compressibility &kappa; = (1/&rho;) (&part;&rho;/&part;p)<sub>T</sub>: 4.4e-10 to 6.2e-10 1/Pa, least
     * near 46 &deg;C.
     *
     * @param temperature temperature (K), within {@link #validity()}
     * @param pressureAbsolute absolute pressure (Pa), within {@link #validity()}
     * @return isothermal compressibility (1/Pa)
     * @throws IllegalArgumentException if an argument is NaN or outside {@link #validity()}
     */
    default double compressibility(double temperature, double pressureAbsolute) {
        return stateAt(temperature, pressureAbsolute).compressibility();
    }

    /**
     * Isobaric heat capacity c<sub>p</sub> = (&part;h/&part;T)<sub>p</sub>: 4173 to 4309 J/(kg K) between 0 and 150
     * &deg;C.
     *
     * @param temperature temperature (K), within {@link #validity()}
     * @param pressureAbsolute absolute pressure (Pa), within {@link #validity()}
     * @return isobaric heat capacity (J/(kg K))
     * @throws IllegalArgumentException if an argument is NaN or outside {@link #validity()}
     */
    default double heatCapacity(double temperature, double pressureAbsolute) {
        return stateAt(temperature, pressureAbsolute).heatCapacity();
    }

    /**
     * Specific enthalpy h, with (&part;h/&part;p)<sub>T</sub> = v (1 &minus; T &beta;). Its zero is that of the IAPWS
     * formulations; only differences have a meaning.
     *
     * @param temperature temperature (K), within {@link #validity()}
     * @param pressureAbsolute absolute pressure (Pa), within {@link #validity()}
     * @return specific enthalpy (J/kg)
     * @throws IllegalArgumentException if an argument is NaN or outside {@link #validity()}
     */
    default double enthalpy(double temperature, double pressureAbsolute) {
        return stateAt(temperature, pressureAbsolute).enthalpy();
    }

    /**
     * Specific internal energy u = h &minus; p/&rho;, the energy that water standing in a container holds. It is zero
     * for the saturated liquid at the triple point; only differences have a meaning.
     *
     * @param temperature temperature (K), within {@link #validity()}
     * @param pressureAbsolute absolute pressure (Pa), within {@link #validity()}
     * @return specific internal energy (J/kg)
     * @throws IllegalArgumentException if an argument is NaN or outside {@link #validity()}
     */
    default double internalEnergy(double temperature, double pressureAbsolute) {
        return stateAt(temperature, pressureAbsolute).internalEnergy();
    }
}
