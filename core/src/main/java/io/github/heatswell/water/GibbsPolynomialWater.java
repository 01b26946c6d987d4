package io.github.heatswell.water;

/**
 * Liquid water by a polynomial in temperature and pressure, fitted to IAPWS-95 for the range of domestic hot water: the
 * formulation to simulate with.
 *
 * <h2>Formula</h2>
 *
 * With the scaled variables x = (T &minus; 348.15 K)/(75 K) and q = (p &minus; p<sub>m</sub>)/p<sub>m</sub>,
 * p<sub>m</sub> = 1.25 MPa, the specific volume everywhere and the enthalpy on the isobar p<sub>m</sub> are
 *
 * <ul>
 *   <li>v(T, p) = 10<sup>&minus;3</sup> m&sup3;/kg [A(x) + q B(x) + q&sup2; C(x)],
 *   <li>h(T, p<sub>m</sub>) = 10&sup3; J/kg H(x),
 * </ul>
 *
 * <p>where A, B, C and H are polynomials of degree 11, 7, 2 and 8. That fixes a Gibbs function up to a constant
 * entropy, and with it everything else, in closed form. With W = &int; v dp, taken from p<sub>m</sub> to p, which is
 * again a polynomial in x and q,
 *
 * <ul>
 *   <li>&beta; = (1/v) &part;v/&part;T and &kappa; = &minus;(1/v) &part;v/&part;p,
 *   <li>h = h(T, p<sub>m</sub>) + W &minus; T &part;W/&part;T,
 *   <li>c<sub>p</sub> = dh(T, p<sub>m</sub>)/dT &minus; T &part;&sup2;W/&part;T&sup2;.
 * </ul>
 *
 * <h2>Where the coefficients come from</h2>
 *
 * They are this project's own, not published elsewhere. Reference: the IAPWS Formulation 1995 (IAPWS R6-95(2018),
 * "Revised Release on the IAPWS Formulation 1995 for the Thermodynamic Properties of Ordinary Water Substance for
 * General and Scientific Use"; W. Wagner and A. Pru&szlig;, J. Phys. Chem. Ref. Data 31 (2002) 387,
 * doi:10.1063/1.1461829), programmed anew and checked against every digit of the liquid states in Table 7 of the
 * release. Values of v, &part;v/&part;T, &part;v/&part;p, h and c<sub>p</sub> at 151 temperatures times 13 pressures
 * (Chebyshev nodes) were fitted together by weighted linear least squares, the weights iterated toward the least
 * maximum error. The window of the fit was 272.16 K to 424.15 K and 0 to 2.55 MPa; below the saturation pressure the
 * reference there is the metastable liquid of IAPWS-95. The program is {@code gibbs_polynomial_fit.py} beside the tests
 * of this package.
 *
 * <h2>Errors</h2>
 *
 * Largest and root-mean-square differences from IAPWS-95 at 601 temperatures times 41 pressures (Chebyshev nodes) over
 * 273.15 K to 423.15 K (0 &deg;C to 150 &deg;C) and from the saturation pressure to 2.5 MPa:
 *
 * <table>
 *   <caption>Differences from IAPWS-95</caption>
 *   <tr><th>property</th><th>largest</th><th>root mean square</th></tr>
 *   <tr><td>&rho;, relative</td><td>2.1e-7</td><td>1.1e-7</td></tr>
 *   <tr><td>&beta;, absolute</td><td>2.0e-8 1/K</td><td>1.2e-8 1/K</td></tr>
 *   <tr><td>&beta; above 10 &deg;C, relative</td><td>0.014 %</td><td>0.0025 %</td></tr>
 *   <tr><td>&kappa;, relative</td><td>0.026 %</td><td>0.015 %</td></tr>
 *   <tr><td>dp/dT = &beta;/&kappa; above 10 &deg;C, relative</td><td>0.036 %</td><td>0.015 %</td></tr>
 *   <tr><td>c<sub>p</sub>, relative</td><td>0.0026 %</td><td>0.0013 %</td></tr>
 *   <tr><td>h, absolute</td><td>0.51 J/kg</td><td>0.35 J/kg</td></tr>
 * </table>
 *
 * <p>The metastable liquid from zero pressure to saturation is met as well (&rho; within 2.3e-7, the others as above).
 *
 * <h2>Range</h2>
 *
 * 273.15 K to 423.15 K (0 &deg;C to 150 &deg;C) and 611 Pa (just under the saturation pressure at 0 &deg;C, so that
 * liquid on the saturation line is always in range) to 2.5 MPa.
 * {@link #evaluate evaluate} goes on smoothly outside: 5 K beyond the temperature limits &rho; is still within 6e-7 and
 * &beta; within 3e-7 1/K of IAPWS-95, at 10 MPa &rho; within 6e-6 and &kappa; within 0.3 %, and density,
 * compressibility and heat capacity stay positive at least from 233 K to 473 K and &minus;1 MPa to 50 MPa.
 */
public final class GibbsPolynomialWater implements LiquidWater {

    /** Temperature at x = 0 (K): 75 &deg;C. */
    private static final double MIDDLE_TEMPERATURE = 348.15;
    /** Temperature difference that x counts (K). */
    private static final double TEMPERATURE_SCALE = 75;
    /** Pressure at q = 0, the isobar of H, and the pressure difference that q counts (Pa). */
    private static final double MIDDLE_PRESSURE = 1.25e6;
    /** What A, B and C count (m&sup3;/kg). */
    private static final double VOLUME_SCALE = 1e-3;
    /** What H counts (J/kg). */
    private static final double ENTHALPY_SCALE = 1e3;
    /** What W counts (J/kg). */
    private static final double WORK_SCALE = VOLUME_SCALE * MIDDLE_PRESSURE;

    private static final double X_PER_KELVIN = 1 / TEMPERATURE_SCALE;
    private static final double Q_PER_PASCAL = 1 / MIDDLE_PRESSURE;
    private static final double THIRD = 1.0 / 3.0;

    /** Volume at the middle pressure: coefficients of x to the powers 0 to 11 (-); the last of B is a zero beside that of H. */
    private static final double[] A = {
        1.025269873904,
        0.047050380938,
        0.017522363133,
        -0.001155592518,
        0.001522458786,
        -0.000425230990,
        0.000411523456,
        -0.000283100761,
        -0.000054173188,
        0.000097677570,
        0.000105161048,
        -0.000080336315
    };

    /** Part of the volume linear in q: coefficients of x to the powers 0 to 7 (-). */
    private static final double[] B = {
        -0.000582630580,
        -0.000120778973,
        -0.000125552014,
        0.000009860022,
        -0.000016174761,
        -0.000003736341,
        -0.000013697346,
        0.000010363187,
        0
    };

    /** Part of the volume quadratic in q: coefficients of x to the powers 0 to 2 (-). */
    private static final double C0 = 0.000001215273;

    private static final double C1 = 0.000000749458;
    private static final double C2 = 0.000000846477;

    /** Enthalpy at the middle pressure: coefficients of x to the powers 0 to 8 (-). */
    private static final double[] H = {
        315.007049040447,
        314.299818823152,
        1.887639746275,
        1.163669632210,
        0.212472100657,
        0.053816924457,
        -0.042958736442,
        0.196521893440,
        -0.120425138868
    };

    private static final LiquidWater.ValidityRange VALIDITY = new LiquidWater.ValidityRange(273.15, 423.15, 611, 2.5e6);
    private static final GibbsPolynomialWater INSTANCE = new GibbsPolynomialWater();

    private GibbsPolynomialWater() {}

    /**
     * The formulation. It has no options and no state, so there is one instance.
     *
     * @return the instance
     */
    public static GibbsPolynomialWater instance() {
        return INSTANCE;
    }

    @Override
    public LiquidWater.ValidityRange validity() {
        return VALIDITY;
    }

    @Override
    public void evaluate(double temperature, double pressureAbsolute, LiquidWater.State into) {
        Isotherm isotherm = into.isotherm;
        if (isotherm.temperature != temperature) {
            isotherm.moveTo(temperature);
        }
        isotherm.evaluate(pressureAbsolute, into);
    }

    /**
     * What of the polynomials depends on temperature alone, kept with a state for the next look at the same temperature. X and
     * XX mark the first and half the second derivative with respect to x.
     */
    static final class Isotherm {

        private double temperature = Double.NaN;
        private double a;
        private double aX;
        private double aXX;
        private double b;
        private double bX;
        private double bXX;
        private double c;
        private double cX;
        private double h;
        private double hX;

        void moveTo(double newTemperature) {
            temperature = newTemperature;
            double x = (newTemperature - MIDDLE_TEMPERATURE) * X_PER_KELVIN;
            // Horner's rule with derivatives; the sums of the three polynomials do not wait for each other
            double sumA = 0;
            double sumAX = 0;
            double sumAXX = 0;
            double sumB = 0;
            double sumBX = 0;
            double sumBXX = 0;
            double sumH = 0;
            double sumHX = 0;
            for (int i = A.length - 1; i >= H.length; i--) {
                sumAXX = sumAXX * x + sumAX;
                sumAX = sumAX * x + sumA;
                sumA = sumA * x + A[i];
            }
            for (int i = H.length - 1; i >= 0; i--) {
                sumAXX = sumAXX * x + sumAX;
                sumAX = sumAX * x + sumA;
                sumA = sumA * x + A[i];
                sumBXX = sumBXX * x + sumBX;
                sumBX = sumBX * x + sumB;
                sumB = sumB * x + B[i];
                sumHX = sumHX * x + sumH;
                sumH = sumH * x + H[i];
            }
            a = sumA;
            aX = sumAX;
            aXX = sumAXX;
            b = sumB;
            bX = sumBX;
            bXX = sumBXX;
            h = sumH;
            hX = sumHX;
            c = (C2 * x + C1) * x + C0;
            cX = 2 * C2 * x + C1;
        }

        void evaluate(double pressureAbsolute, LiquidWater.State into) {
            double q = (pressureAbsolute - MIDDLE_PRESSURE) * Q_PER_PASCAL;
            double volume = a + q * (b + q * c);
            double volumeX = aX + q * (bX + q * cX);
            double volumeQ = b + 2 * q * c;
            double work = q * (a + q * (b / 2 + q * c * THIRD));
            double workX = q * (aX + q * (bX / 2 + q * cX * THIRD));
            double workXX = 2 * q * (aXX + q * (bXX / 2 + q * C2 * THIRD));
            double perVolume = 1 / volume;
            double temperatureX = temperature * X_PER_KELVIN;

            into.set(
                    temperature,
                    pressureAbsolute,
                    perVolume / VOLUME_SCALE,
                    volumeX * perVolume * X_PER_KELVIN,
                    -volumeQ * perVolume * Q_PER_PASCAL,
                    (ENTHALPY_SCALE * hX - WORK_SCALE * temperatureX * workXX) * X_PER_KELVIN,
                    ENTHALPY_SCALE * h + WORK_SCALE * (work - temperatureX * workX));
        }
    }
}
