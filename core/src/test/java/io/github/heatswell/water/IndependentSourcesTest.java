package io.github.heatswell.water;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.function.DoubleUnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The formulations against sources that have nothing to do with IAPWS: a handbook table, a steam table in trade units,
 * and the correlation of G. S. Kell, "Density, thermal expansivity, and compressibility of liquid water from 0 to 150
 * C", J. Chem. Eng. Data 20 (1975) 97-105, doi:10.1021/je60064a005.
 */
class IndependentSourcesTest {
    private static final double ATMOSPHERE = 101_325;
    private static final double ZERO_CELSIUS = 273.15;
    private static final double MOLAR_MASS = 18.015268e-3; // kg/mol, as in IAPWS R6-95(2018)
    private static final LiquidWater POLYNOMIAL = GibbsPolynomialWater.instance();

    static Stream<Arguments> formulationsWithTheirOwnErrors() {
        // formulation, then its own error of rho, beta (1/K), kappa, cp, w, to be added to the tolerance of the source
        return Stream.of(
                Arguments.of(POLYNOMIAL, new double[] {2.3e-7, 2.0e-8, 2.6e-4, 2.6e-5, 1.5e-4}),
                Arguments.of(If97Region1.instance(), new double[] {1.6e-5, 5.6e-7, 3.6e-3, 8.2e-4, 2.0e-3}));
    }

    /** Validation: eleven temperatures of a handbook table at one atmosphere. */
    @ParameterizedTest
    @MethodSource("formulationsWithTheirOwnErrors")
    void handbookTableAtOneAtmosphereIsMet(LiquidWater water, double[] own) {
        ReferenceTable table = ReferenceTable.read(
                "handbook_1atm.csv", 11, "T_C", "rho_kg_m3", "kappa_1_GPa", "expansivity_1e-3_K", "w_m_s", "cp_J_molK");
        LiquidWater.State state = new LiquidWater.State();
        for (int row = 0; row < table.size(); row++) {
            // At 100 C one atmosphere is 93 Pa below the saturation pressure: metastable, as in the table.
            water.evaluate(table.number(row, "T_C") + ZERO_CELSIUS, ATMOSPHERE, state);
            double density = table.number(row, "rho_kg_m3");
            double kappa = table.number(row, "kappa_1_GPa") * 1e-9;
            double beta = table.number(row, "expansivity_1e-3_K") * 1e-3;
            double sound = table.number(row, "w_m_s");
            double cp = table.number(row, "cp_J_molK") / MOLAR_MASS;
            assertAll(
                    () -> assertEquals(density, state.density(), (1e-4 + own[0]) * density), // its 90 C entry is off
                    () -> assertEquals(beta, state.expansivity(), 0.7e-6 + own[1]), // its 90 C entry is 0.6e-6 off
                    () -> assertEquals(kappa, state.compressibility(), (3e-4 + own[2]) * kappa), // four printed digits
                    () -> assertEquals(cp, state.heatCapacity(), (2e-4 + own[3]) * cp), // four printed digits
                    () -> assertEquals(sound, Property.soundSpeed(state), (1e-3 + own[4]) * sound)); // older source
        }
    }

    /** Validation: specific volume of saturated liquid from a steam table in cubic feet per pound (from memory). */
    @ParameterizedTest
    @MethodSource("formulationsWithTheirOwnErrors")
    void steamTableInTradeUnitsIsMet(LiquidWater water, double[] own) {
        double cubicFootPerPound = 0.3048 * 0.3048 * 0.3048 / 0.45359237;
        ReferenceTable table = ReferenceTable.read("steam_table_vf.csv", 19, "T_F", "vf_ft3_lb");
        LiquidWater.State state = new LiquidWater.State();
        for (int row = 0; row < table.size(); row++) {
            double temperature = (table.number(row, "T_F") - 32) / 1.8 + ZERO_CELSIUS;
            water.evaluate(temperature, Saturation.pressureAbsolute(temperature), state);
            double expected = table.number(row, "vf_ft3_lb") * cubicFootPerPound;
            assertEquals(expected, 1 / state.density(), (5e-4 + own[0]) * expected); // one unit of the last digit
        }
    }

    /**
     * Validation of the transcription: densities and compressibilities that eq. 16 and 20 of Kell give; the one at 25
     * C, 997.0449, is also printed in the paper (recalled, not read).
     */
    @ParameterizedTest
    @CsvSource({
        "0, 999.83952, 50.88496",
        "10, 999.69963, 47.80861",
        "20, 998.20413, 45.89185",
        "25, 997.04490, 45.24721",
        "40, 992.21577, 44.23913",
        "60, 983.19888, 44.49643",
        "80, 971.79778, 46.14323",
        "100, 958.36366, 49.01876"
    })
    void kellIsTranscribedRightly(double t68, double density, double compressibility) {
        assertEquals(density, Kell.density(t68), 0.5e-5); // half of the last printed digit
        assertEquals(compressibility, Kell.compressibility(t68) * 1e11, 0.5e-5); // half of the last printed digit
    }

    /**
     * Validation: Kell's density at one atmosphere. He took the maximum to be 999.972 kg/m3 where 999.975 is taken
     * today, which alone is 3e-6; others find 4.8e-6 at most between his equation and IAPWS-95.
     */
    @Test
    void densityAgreesWithKell() {
        double known = 4.8e-6;
        double own = 2.3e-7;
        ErrorStatistics statistics = againstKell(t90 -> Kell.density(Kell.t68(t90)));
        statistics.assertWithin(known + own, 4.2e-6, "density against Kell");
        assertTrue(statistics.largest() > 3e-6, "the known offset of 3e-6 must show");
    }

    /** Validation: Kell's compressibility at one atmosphere, 0 to 98 C. */
    @Test
    void compressibilityAgreesWithKell() {
        for (double t90 = 0; t90 <= 98; t90 += 1) {
            double expected = Kell.compressibility(Kell.t68(t90));
            double actual = POLYNOMIAL.compressibility(t90 + ZERO_CELSIUS, ATMOSPHERE);
            assertEquals(expected, actual, (1.5e-4 + 2.6e-4) * expected); // Kell against IAPWS-95, and our own error
        }
    }

    /** Validation: Kell's expansivity, the derivative of his density: a separate look at beta. */
    @Test
    void expansivityAgreesWithKell() {
        for (double t90 = 1; t90 <= 97; t90 += 1) {
            double step = 0.1;
            double difference = Kell.density(Kell.t68(t90 + step)) - Kell.density(Kell.t68(t90 - step));
            double expected = -difference / (2 * step) / Kell.density(Kell.t68(t90));
            double actual = POLYNOMIAL.expansivity(t90 + ZERO_CELSIUS, ATMOSPHERE);
            assertEquals(expected, actual, 0.6e-6); // the two sources differ by 0.5e-6 1/K
        }
    }

    /**
     * Validation: two known mistakes lie outside the tolerance that the right equation keeps. One is the denominator
     * with two digits swapped, 16.897850e-3, which circulates in print; the other is today's temperature scale put into
     * an equation of 1975.
     */
    @Test
    void knownMistakesWithKellWouldBeNoticed() {
        double tolerance = 4.8e-6 + 2.3e-7;
        double swapped =
                againstKell(t90 -> Kell.density(Kell.t68(t90), 16.897850e-3)).largest();
        double wrongScale = againstKell(Kell::density).largest();
        assertEquals(1.8e-5 * 98 / (1 + 16.89785e-3 * 98), swapped, tolerance); // by hand at 98 C, where it is largest
        assertEquals(1.43e-5, wrongScale, 0.03e-5); // known size of the mistake, three digits
        assertTrue(swapped > 100 * tolerance && wrongScale > 2 * tolerance);
    }

    private static ErrorStatistics againstKell(DoubleUnaryOperator densityAtCelsius) {
        ErrorStatistics statistics = new ErrorStatistics();
        for (int i = 0; i <= 196; i++) {
            double t90 = i / 2.0;
            double own = POLYNOMIAL.density(t90 + ZERO_CELSIUS, ATMOSPHERE);
            statistics.add(densityAtCelsius.applyAsDouble(t90) / own - 1);
        }
        return statistics;
    }

    /** Kell (1975), eq. 16 (density at one atmosphere) and eq. 20 (compressibility); t in degrees of IPTS-68. */
    private static final class Kell {
        private Kell() {}

        /** From ITS-90 to IPTS-68: the factor is good to 1e-3 K between 0 and 100 C. */
        static double t68(double t90) {
            return 1.00024 * t90;
        }

        static double density(double t) {
            return density(t, 16.879850e-3);
        }

        static double density(double t, double denominator) {
            double numerator =
                    ((((-280.54253e-12 * t + 105.56302e-9) * t - 46.170461e-6) * t - 7.9870401e-3) * t + 16.945176) * t
                            + 999.83952;
            return numerator / (1 + denominator * t);
        }

        /** In 1/Pa; the paper's unit is 1e-6 per bar. */
        static double compressibility(double t) {
            double numerator =
                    ((((410.4110e-12 * t - 58.47727e-9) * t + 20.08438e-6) * t + 1.459187e-3) * t + 0.6163813) * t
                            + 50.88496;
            return numerator / (1 + 19.67348e-3 * t) * 1e-11;
        }
    }
}
