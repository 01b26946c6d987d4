package io.github.heatswell.water;

/**
 * Liquid water by region 1 of IAPWS-IF97, the standard of the steam-power industry.
 *
 * <p>Source: IAPWS R7-97(2012), "Revised Release on the IAPWS Industrial Formulation 1997 for the Thermodynamic
 * Properties of Water and Steam", section 5.1. The dimensionless Gibbs energy is eq. 7,
 *
 * <p>g/(R T) = &gamma;(&pi;, &tau;) = &Sigma; n<sub>i</sub> (7.1 &minus; &pi;)<sup>I<sub>i</sub></sup> (&tau; &minus;
 * 1.222)<sup>J<sub>i</sub></sup>, with &pi; = p/(16.53 MPa) and &tau; = (1386 K)/T,
 *
 * <p>with the 34 coefficients of Table 2. The properties are the derivatives listed in Table 3 of the release, and for
 * &beta; and &kappa; those that follow from its v:
 *
 * <ul>
 *   <li>v = (R T/p*) &gamma;<sub>&pi;</sub>
 *   <li>&beta; = (1 &minus; &tau; &gamma;<sub>&pi;&tau;</sub>/&gamma;<sub>&pi;</sub>)/T
 *   <li>&kappa; = &minus;&gamma;<sub>&pi;&pi;</sub>/(&gamma;<sub>&pi;</sub> p*)
 *   <li>h = R T* &gamma;<sub>&tau;</sub>
 *   <li>c<sub>p</sub> = &minus;R &tau;&sup2; &gamma;<sub>&tau;&tau;</sub>
 * </ul>
 *
 * <p>Range: 273.15 K to 623.15 K and 611 Pa to 100 MPa; the release states it for pressures from saturation upward
 * and calls metastable states close to the saturation line reasonable. Accuracy, as measured against IAPWS-95 over 0.01
 * to 150 &deg;C and 1 to 16 bar: &rho; within 1.6e-5, &beta; within 5.5e-7 1/K (0.29 % above 10 &deg;C), &kappa; within
 * 0.36 %, c<sub>p</sub> within 0.09 %, h within 75 J/kg.
 *
 * <p>For simulation {@link GibbsPolynomialWater} is both closer to IAPWS-95 and faster; this class is the published
 * reference beside it, and the one to use beyond 150 &deg;C or 2.5 MPa.
 */
public final class If97Region1 implements LiquidWater {

    /** Specific gas constant (J/(kg K)), eq. 1. */
    private static final double R = 461.526;
    /** Reducing pressure p* (Pa) of eq. 7. */
    private static final double P_STAR = 16.53e6;
    /** Reducing temperature T* (K) of eq. 7. */
    private static final double T_STAR = 1386;
    /** Constant that &pi; is subtracted from in eq. 7 (-). */
    private static final double PI_SHIFT = 7.1;
    /** Constant that is subtracted from &tau; in eq. 7 (-). */
    private static final double TAU_SHIFT = 1.222;

    /** Exponents I of Table 2, in the order i = 1 to 34. */
    private static final int[] I = {
        0, 0, 0, 0, 0, 0, 0, 0, 1, 1, 1, 1, 1, 1, 2, 2, 2, 2, 2, 3, 3, 3, 4, 4, 4, 5, 8, 8, 21, 23, 29, 30, 31, 32
    };

    /** Exponents J of Table 2, in the order i = 1 to 34. */
    private static final int[] J = {
        -2, -1, 0, 1, 2, 3, 4, 5, -9, -7, -1, 0, 1, 3, -3, 0, 1, 3, 17, -4, 0, 6, -5, -2, 10, -8, -11, -6, -29, -31,
        -38, -39, -40, -41
    };

    /** Coefficients n of Table 2, in the order i = 1 to 34, with the digits of the release. */
    private static final double[] N = {
        0.14632971213167,
        -0.84548187169114,
        -0.37563603672040e1,
        0.33855169168385e1,
        -0.95791963387872,
        0.15772038513228,
        -0.16616417199501e-1,
        0.81214629983568e-3,
        0.28319080123804e-3,
        -0.60706301565874e-3,
        -0.18990068218419e-1,
        -0.32529748770505e-1,
        -0.21841717175414e-1,
        -0.52838357969930e-4,
        -0.47184321073267e-3,
        -0.30001780793026e-3,
        0.47661393906987e-4,
        -0.44141845330846e-5,
        -0.72694996297594e-15,
        -0.31679644845054e-4,
        -0.28270797985312e-5,
        -0.85205128120103e-9,
        -0.22425281908000e-5,
        -0.65171222895601e-6,
        -0.14341729937924e-12,
        -0.40516996860117e-6,
        -0.12734301741641e-8,
        -0.17424871230634e-9,
        -0.68762131295531e-18,
        0.14478307828521e-19,
        0.26335781662795e-22,
        -0.11947622640071e-22,
        0.18228094581404e-23,
        -0.93537087292458e-25
    };

    private static final int MAX_I = 32;
    private static final int MIN_J = -41;
    private static final int MAX_J = 17;

    /** Where the power 0 of &tau; &minus; 1.222 stands in the workspace: behind the powers of 7.1 &minus; &pi;. */
    private static final int TAU_POWER_ZERO = MAX_I + 1 - MIN_J;

    /** Length of the working memory that an evaluation needs. */
    private static final int WORKSPACE_LENGTH = TAU_POWER_ZERO + MAX_J + 1;

    private static final LiquidWater.ValidityRange VALIDITY = new LiquidWater.ValidityRange(273.15, 623.15, 611, 100e6);
    private static final If97Region1 INSTANCE = new If97Region1();

    private If97Region1() {}

    /**
     * The formulation. It has no options and no state, so there is one instance.
     *
     * @return the instance
     */
    public static If97Region1 instance() {
        return INSTANCE;
    }

    @Override
    public LiquidWater.ValidityRange validity() {
        return VALIDITY;
    }

    @Override
    public void evaluate(double temperature, double pressureAbsolute, LiquidWater.State into) {
        double tau = T_STAR / temperature;
        double piBase = PI_SHIFT - pressureAbsolute / P_STAR;
        double tauBase = tau - TAU_SHIFT;
        if (into.workspace.length == 0) {
            into.workspace = new double[WORKSPACE_LENGTH];
        }
        double[] powers = into.workspace;
        fillPowers(piBase, tauBase, powers);

        double sumI = 0;
        double sumII = 0;
        double sumJ = 0;
        double sumJJ = 0;
        double sumIJ = 0;
        for (int k = 0; k < N.length; k++) {
            double term = N[k] * powers[I[k]] * powers[TAU_POWER_ZERO + J[k]];
            double termI = I[k] * term;
            double termJ = J[k] * term;
            sumI += termI;
            sumII += (I[k] - 1) * termI;
            sumJ += termJ;
            sumJJ += (J[k] - 1) * termJ;
            sumIJ += I[k] * termJ;
        }
        // Every derivative of a power lowers its exponent by one: the division is by the base, once per derivative.
        double gammaPi = -sumI / piBase;
        double gammaPiPi = sumII / (piBase * piBase);
        double gammaTau = sumJ / tauBase;
        double gammaTauTau = sumJJ / (tauBase * tauBase);
        double gammaPiTau = -sumIJ / (piBase * tauBase);

        into.set(
                temperature,
                pressureAbsolute,
                P_STAR / (R * temperature * gammaPi),
                (1 - tau * gammaPiTau / gammaPi) / temperature,
                -gammaPiPi / (gammaPi * P_STAR),
                -R * tau * tau * gammaTauTau,
                R * T_STAR * gammaTau);
    }

    /** Powers 0 to 32 of the one base and -41 to 17 of the other; one multiplication each is what makes this fast. */
    private static void fillPowers(double piBase, double tauBase, double[] powers) {
        powers[0] = 1;
        for (int i = 1; i <= MAX_I; i++) {
            powers[i] = powers[i - 1] * piBase;
        }
        powers[TAU_POWER_ZERO] = 1;
        for (int j = 1; j <= MAX_J; j++) {
            powers[TAU_POWER_ZERO + j] = powers[TAU_POWER_ZERO + j - 1] * tauBase;
        }
        double inverse = 1 / tauBase;
        for (int j = -1; j >= MIN_J; j--) {
            powers[TAU_POWER_ZERO + j] = powers[TAU_POWER_ZERO + j + 1] * inverse;
        }
    }
}
