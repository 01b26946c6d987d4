package io.github.heatswell.water;

/**
 * The boiling line of water: saturation pressure as a function of temperature and the reverse, by region 4 of
 * IAPWS-IF97.
 *
 * <p>Source: IAPWS R7-97(2012), "Revised Release on the IAPWS Industrial Formulation 1997 for the Thermodynamic
 * Properties of Water and Steam", section 8: the quadratic eq. 28 with its two exact solutions, eq. 30 for the pressure
 * and eq. 31 for the temperature, coefficients of Table 34. With &beta; = (p/1 MPa)<sup>1/4</sup> and &theta; = T/1 K +
 * n<sub>9</sub>/(T/1 K &minus; n<sub>10</sub>), the line is
 *
 * <p>&beta;&sup2;&theta;&sup2; + n<sub>1</sub>&beta;&sup2;&theta; + n<sub>2</sub>&beta;&sup2; +
 * n<sub>3</sub>&beta;&theta;&sup2; + n<sub>4</sub>&beta;&theta; + n<sub>5</sub>&beta; + n<sub>6</sub>&theta;&sup2; +
 * n<sub>7</sub>&theta; + n<sub>8</sub> = 0.
 *
 * <p>Range: 273.15 K to 647.096 K, 611.212 Pa to 22.064 MPa; outside it both methods throw. The two are solutions of
 * the same equation, so each inverts the other to rounding. Between 0.01 and 150 &deg;C the pressure lies within 1.4e-4
 * (relative) of IAPWS-95.
 *
 * <p>Two values to remember: 99 &deg;C belongs to 0.98 bar, and one atmosphere to 99.97 &deg;C.
 */
public final class Saturation {

    /** Lowest temperature of eq. 30 (K): 0 &deg;C. */
    private static final double MIN_TEMPERATURE = 273.15;
    /** Temperature of the critical point (K), eq. 2 of the release. */
    private static final double CRITICAL_TEMPERATURE = 647.096;
    /**
     * Lowest pressure of eq. 31 (Pa). The release says 611.213, which is rounded up from what eq. 30 gives at 273.15 K;
     * rounding down lets that result be turned back.
     */
    private static final double MIN_PRESSURE = 611.212;
    /** Pressure of the critical point (Pa), eq. 3 of the release. */
    private static final double CRITICAL_PRESSURE = 22.064e6;

    /** Reducing pressure p* (Pa) of eq. 29a. */
    private static final double P_STAR = 1e6;

    private static final double N1 = 0.11670521452767e4; // Table 34
    private static final double N2 = -0.72421316703206e6; // Table 34
    private static final double N3 = -0.17073846940092e2; // Table 34
    private static final double N4 = 0.12020824702470e5; // Table 34
    private static final double N5 = -0.32325550322333e7; // Table 34
    private static final double N6 = 0.14915108613530e2; // Table 34
    private static final double N7 = -0.48232657361591e4; // Table 34
    private static final double N8 = 0.40511340542057e6; // Table 34
    private static final double N9 = -0.23855557567849; // Table 34
    private static final double N10 = 0.65017534844798e3; // Table 34

    private Saturation() {}

    /**
     * The pressure at which water of a temperature boils, eq. 30.
     *
     * @param temperature temperature (K), 273.15 to 647.096
     * @return saturation pressure, absolute (Pa)
     * @throws IllegalArgumentException if the temperature is NaN or outside its range
     */
    public static double pressureAbsolute(double temperature) {
        LiquidWater.ValidityRange.requireBetween(
                "temperature", "K", temperature, MIN_TEMPERATURE, CRITICAL_TEMPERATURE);
        double theta = temperature + N9 / (temperature - N10);
        double a = (theta + N1) * theta + N2;
        double b = (N3 * theta + N4) * theta + N5;
        double c = (N6 * theta + N7) * theta + N8;
        double beta = 2 * c / (-b + Math.sqrt(b * b - 4 * a * c));
        double square = beta * beta;
        return P_STAR * square * square;
    }

    /**
     * The temperature at which water under a pressure boils, eq. 31.
     *
     * @param pressureAbsolute absolute pressure (Pa), 611.212 to 22.064e6
     * @return saturation temperature (K)
     * @throws IllegalArgumentException if the pressure is NaN or outside its range
     */
    public static double temperature(double pressureAbsolute) {
        LiquidWater.ValidityRange.requireBetween(
                "absolute pressure", "Pa", pressureAbsolute, MIN_PRESSURE, CRITICAL_PRESSURE);
        double beta = Math.sqrt(Math.sqrt(pressureAbsolute / P_STAR));
        double e = (beta + N3) * beta + N6;
        double f = (N1 * beta + N4) * beta + N7;
        double g = (N2 * beta + N5) * beta + N8;
        double d = 2 * g / (-f - Math.sqrt(f * f - 4 * e * g));
        double sum = N10 + d;
        return (sum - Math.sqrt(sum * sum - 4 * (N9 + N10 * d))) / 2;
    }
}
