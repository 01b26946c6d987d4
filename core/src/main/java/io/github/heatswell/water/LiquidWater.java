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
     * its arguments, throws nothing and allocates nothing beyond the first look with a state. Outside the range the formulation is extrapolated, smoothly
     * for a few kelvin and a few megapascal and without meaning farther out. A NaN argument gives NaN properties.
     *
     * @param temperature temperature (K)
     * @param pressureAbsolute absolute pressure (Pa)
     * @param into the object to fill; everything in it is overwritten (not null)
     */
    void evaluate(double temperature, double pressureAbsolute, State into);

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
    default State stateAt(double temperature, double pressureAbsolute) {
        validity().requireContains(temperature, pressureAbsolute);
        State state = new State();
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

    /**
     * The rectangle of temperature and absolute pressure in which a formulation of liquid water is stated to hold.
     *
     * <p>The rectangle says nothing about boiling: below the saturation pressure of its temperature, a point inside it is a
     * metastable liquid. All four limits belong to the range.
     *
     * @param lowestTemperature lowest temperature (K)
     * @param highestTemperature highest temperature (K)
     * @param lowestPressureAbsolute lowest absolute pressure (Pa)
     * @param highestPressureAbsolute highest absolute pressure (Pa)
     */
    public record ValidityRange(
            double lowestTemperature,
            double highestTemperature,
            double lowestPressureAbsolute,
            double highestPressureAbsolute) {

        /**
         * Checks that both intervals have a positive length and that no limit is below zero.
         *
         * @param lowestTemperature lowest temperature (K), 0 or more
         * @param highestTemperature highest temperature (K), above the lowest and finite
         * @param lowestPressureAbsolute lowest absolute pressure (Pa), 0 or more
         * @param highestPressureAbsolute highest absolute pressure (Pa), above the lowest and finite
         * @throws IllegalArgumentException if a limit is negative or not a finite number, or if a lower limit is not below
         *     its upper limit
         */
        public ValidityRange {
            requireInterval("temperature", "K", lowestTemperature, highestTemperature);
            requireInterval("absolute pressure", "Pa", lowestPressureAbsolute, highestPressureAbsolute);
        }

        /**
         * Tells whether a point lies in the range, its limits included. A point with a NaN in it does not.
         *
         * @param temperature temperature (K)
         * @param pressureAbsolute absolute pressure (Pa)
         * @return true if both values lie within their limits
         */
        public boolean contains(double temperature, double pressureAbsolute) {
            return temperature >= lowestTemperature
                    && temperature <= highestTemperature
                    && pressureAbsolute >= lowestPressureAbsolute
                    && pressureAbsolute <= highestPressureAbsolute;
        }

        /**
         * Refuses a point that is not in the range.
         *
         * @param temperature temperature (K)
         * @param pressureAbsolute absolute pressure (Pa)
         * @throws IllegalArgumentException if a value is NaN or outside its limits; the message names the quantity, the
         *     value and the limits, each with its unit
         */
        public void requireContains(double temperature, double pressureAbsolute) {
            requireBetween("temperature", "K", temperature, lowestTemperature, highestTemperature);
            requireBetween(
                    "absolute pressure", "Pa", pressureAbsolute, lowestPressureAbsolute, highestPressureAbsolute);
        }

        /** Refuses a value outside a closed interval; the comparison is written so that NaN is refused too. */
        static void requireBetween(String name, String unit, double value, double lowest, double highest) {
            if (!(value >= lowest && value <= highest)) {
                throw new IllegalArgumentException(
                        name + " is " + value + " " + unit + ", allowed is " + lowest + " to " + highest + " " + unit);
            }
        }

        private static void requireInterval(String name, String unit, double lowest, double highest) {
            if (!(lowest >= 0 && lowest < highest && highest < Double.POSITIVE_INFINITY)) {
                throw new IllegalArgumentException("limits of " + name + " are " + lowest + " and " + highest + " "
                        + unit + ", allowed is 0 <= lowest < highest < infinity");
            }
        }
    }

    /**
     * All properties of liquid water at one temperature and pressure: a reusable object that
     * {@link LiquidWater#evaluate LiquidWater.evaluate} fills.
     *
     * <p>This is deliberately the one mutable class of the package. A solver asks for properties millions of times; it
     * makes one {@code State} before it starts and lets each evaluation overwrite the last. The consequences: copy out
     * what must survive the next evaluation, never hand an instance to code that may keep it, and use one instance per
     * thread. The class is not thread-safe and has no {@code equals}.
     *
     * <p>Before the first evaluation every property is NaN, so forgetting the evaluation cannot pass for a result.
     */
    public static final class State {

        /** Working memory that {@link If97Region1} makes at its first evaluation; holds nothing between evaluations. */
        double[] workspace = {};
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
        public State() {}

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
}
