package io.github.heatswell.water;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** What anybody who heats shut-in water will find, asked of both formulations. */
class PhysicalFactsTest {
    private static final double ZERO_CELSIUS = 273.15;
    private static final double ATMOSPHERE = 101_325;
    private static final LiquidWater POLYNOMIAL = GibbsPolynomialWater.instance();
    private static final LiquidWater IF97 = If97Region1.instance();

    static Stream<Arguments> densityMaximumTolerances() {
        return Stream.of(
                Arguments.of(POLYNOMIAL, 0.01), // last printed digit
                Arguments.of(IF97, 0.04)); // its error of 5.6e-7 1/K over the slope of beta, 1.6e-5 1/K2
    }

    /** Validation: the density maximum lies at 3.90 C under 5 bar and at 3.98 C under one atmosphere. */
    @ParameterizedTest
    @MethodSource("densityMaximumTolerances")
    void waterIsDensestNear4Celsius(LiquidWater water, double tolerance) {
        assertEquals(3.90, densityMaximum(water, 5e5) - ZERO_CELSIUS, tolerance);
        assertEquals(3.98, densityMaximum(water, ATMOSPHERE) - ZERO_CELSIUS, tolerance);
    }

    /** Regression: below the maximum the expansivity is negative; nothing is clamped at zero. */
    @Test
    void coldWaterShrinksWhenWarmed() {
        assertTrue(POLYNOMIAL.expansivity(274.15, 5e5) < -4e-5);
        assertTrue(IF97.expansivity(274.15, 5e5) < -4e-5);
    }

    static Stream<Arguments> expansionTolerances() {
        return Stream.of(
                Arguments.of(POLYNOMIAL, 1e-4), // last printed digit
                Arguments.of(IF97, 2 * 1.6e-3)); // twice its density error of 1.6e-5, in percent
    }

    /** Validation: growth of volume from 10 C, among it 1.6795 % to 60 C and 2.8726 % to 80 C. */
    @ParameterizedTest
    @MethodSource("expansionTolerances")
    void waterExpandsAsTabulated(LiquidWater water, double tolerance) {
        ReferenceTable table = ReferenceTable.read("expansion_from_10C.csv", 14, "T_C", "expansion_percent");
        double cold = water.density(10 + ZERO_CELSIUS, 3e5);
        for (int row = 0; row < table.size(); row++) {
            double hot = water.density(table.number(row, "T_C") + ZERO_CELSIUS, 3e5);
            assertEquals(table.number(row, "expansion_percent"), 100 * (cold / hot - 1), tolerance);
        }
    }

    static Stream<Arguments> pressureRiseTolerances() {
        // formulation, relative, and absolute (bar/K): its own error of beta over kappa, which counts where beta is
        // small
        return Stream.of(
                Arguments.of(POLYNOMIAL, 1e-3, 0.0005), // tolerance of the table; 2.0e-8/4.4e-10 Pa/K
                Arguments.of(IF97, 4e-3, 0.0130)); // its known 0.36 %; 5.6e-7/4.4e-10 Pa/K
    }

    /** Validation: pressure rise of shut-in water per kelvin, rigid, in a growing wall, and in an elastic tank. */
    @ParameterizedTest
    @MethodSource("pressureRiseTolerances")
    void shutInWaterRaisesItsPressureAsTabulated(LiquidWater water, double relative, double absolute) {
        ReferenceTable table = ReferenceTable.read(
                "dpdt_check.csv",
                80,
                "T_C",
                "p_abs_bar",
                "beta_1_K",
                "kappa_1_Pa",
                "dpdT_rigid_bar_K",
                "dpdT_rigid_psi_F",
                "dpdT_steelwall_thermal_only_bar_K",
                "dpdT_steel_tank_D450_t2.2_bar_K");
        double wallGrowth = 3 * 12e-6; // volume expansivity of steel, 1/K
        double wallCompliance = 0.450 / (200e9 * 0.0022) * (5.0 / 4 - 0.30); // (D/(E e)) (5/4 - nu), 1/Pa
        assertEquals(9.716e-10, wallCompliance, 0.001e-10); // last printed digit of the table's source
        for (int row = 0; row < table.size(); row++) {
            LiquidWater.State state =
                    water.stateAt(table.number(row, "T_C") + ZERO_CELSIUS, table.number(row, "p_abs_bar") * 1e5);
            double beta = state.expansivity();
            double kappa = state.compressibility();
            double rigid = table.number(row, "dpdT_rigid_bar_K");
            double growing = table.number(row, "dpdT_steelwall_thermal_only_bar_K");
            double elastic = table.number(row, "dpdT_steel_tank_D450_t2.2_bar_K");
            assertAll(
                    () -> assertEquals(rigid, beta / kappa / 1e5, absolute + relative * Math.abs(rigid)),
                    () -> assertEquals(
                            growing, (beta - wallGrowth) / kappa / 1e5, absolute + relative * Math.abs(growing)),
                    () -> assertEquals(
                            elastic,
                            (beta - wallGrowth) / (kappa + wallCompliance) / 1e5,
                            absolute + relative * Math.abs(elastic)));
        }
    }

    /** Validation: a rigid container filled at 10 C and 4.5 bar is at 6.51 bar at 11 C and 17.46 bar at 15 C. */
    @ParameterizedTest
    @CsvSource({"11, 6.5077", "15, 17.457"})
    void rigidContainerFollowsTheIsochore(double celsius, double expectedBar) {
        double density = POLYNOMIAL.density(10 + ZERO_CELSIUS, 4.5e5);
        double pressure = 4.5e5;
        LiquidWater.State state = new LiquidWater.State();
        for (int i = 0; i < 20; i++) { // Newton's method on rho(T, p) = constant
            POLYNOMIAL.evaluate(celsius + ZERO_CELSIUS, pressure, state);
            pressure += (density / state.density() - 1) / state.compressibility();
        }
        assertEquals(expectedBar, pressure / 1e5, 0.010); // two density errors of 2.1e-7 over kappa
    }

    /** Validation: a steel wall (12e-6 1/K) grows as fast as the water at 6.24 C, a copper wall (17e-6) at 7.27 C. */
    @ParameterizedTest
    @CsvSource({"11.7e-6, 6.18", "12e-6, 6.24", "17e-6, 7.27"})
    void wallsOutgrowColdWater(double linearExpansivity, double celsius) {
        double temperature = temperatureOfExpansivity(POLYNOMIAL, 5e5, 3 * linearExpansivity);
        assertEquals(celsius, temperature - ZERO_CELSIUS, 0.01); // last printed digit
    }

    /** Validation: c_p spans 4175.4 to 4243.5 over 0 to 120 C and 1 to 16 bar; at 1 atm its least is 4179.2. */
    @Test
    void heatCapacityIsNearlyConstant() {
        double lowest = Double.POSITIVE_INFINITY;
        double highest = 0;
        double lowestAtOneAtmosphere = Double.POSITIVE_INFINITY;
        for (double celsius = 0; celsius <= 120; celsius += 0.25) {
            double t = celsius + ZERO_CELSIUS;
            for (double p = 1e5; p <= 16e5; p += 1e5) {
                if (p >= Saturation.pressureAbsolute(t)) {
                    double cp = POLYNOMIAL.heatCapacity(t, p);
                    lowest = Math.min(lowest, cp);
                    highest = Math.max(highest, cp);
                }
            }
            if (Saturation.pressureAbsolute(t) < ATMOSPHERE) {
                lowestAtOneAtmosphere = Math.min(lowestAtOneAtmosphere, POLYNOMIAL.heatCapacity(t, ATMOSPHERE));
            }
        }
        double tolerance = 0.05 + 2.6e-5 * 4200; // half of the last printed digit, and the formulation's own error
        assertEquals(4175.4, lowest, tolerance);
        assertEquals(4243.5, highest, tolerance);
        assertEquals(4179.2, lowestAtOneAtmosphere, tolerance);
    }

    private static double densityMaximum(LiquidWater water, double pressureAbsolute) {
        return temperatureOfExpansivity(water, pressureAbsolute, 0);
    }

    /** Bisection between 1 and 20 C, where the expansivity rises steadily. */
    private static double temperatureOfExpansivity(LiquidWater water, double pressureAbsolute, double expansivity) {
        double low = 274.15;
        double high = 293.15;
        for (int i = 0; i < 60; i++) {
            double middle = (low + high) / 2;
            if (water.expansivity(middle, pressureAbsolute) < expansivity) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }
}
