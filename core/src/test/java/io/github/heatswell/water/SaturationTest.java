package io.github.heatswell.water;

import static io.github.heatswell.water.Printed.assertNineDigits;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The boiling line against the verification tables of IAPWS-IF97 and against IAPWS-95. */
class SaturationTest {
    /** Validation: IAPWS R7-97(2012), Table 35, every printed digit. */
    @Test
    void table35IsReproducedToItsLastDigit() {
        ReferenceTable table = ReferenceTable.read("if97_table35.csv", 3, "T_K", "psat_abs_MPa");
        for (int row = 0; row < table.size(); row++) {
            double pressure = Saturation.pressureAbsolute(table.number(row, "T_K"));
            assertNineDigits(table.text(row, "psat_abs_MPa"), pressure / 1e6, "saturation pressure");
        }
    }

    /** Validation: IAPWS R7-97(2012), Table 36, every printed digit. */
    @Test
    void table36IsReproducedToItsLastDigit() {
        ReferenceTable table = ReferenceTable.read("if97_table36.csv", 3, "p_abs_MPa", "Tsat_K");
        for (int row = 0; row < table.size(); row++) {
            double temperature = Saturation.temperature(table.number(row, "p_abs_MPa") * 1e6);
            assertNineDigits(table.text(row, "Tsat_K"), temperature, "saturation temperature");
        }
    }

    /** Validation: eq. 30 as another program evaluates it, and its known deviation from IAPWS-95. */
    @Test
    void pressureFollowsTheTableFrom0To150Celsius() {
        ReferenceTable table = saturationTable();
        ErrorStatistics againstIapws95 = new ErrorStatistics();
        for (int row = 0; row < table.size(); row++) {
            double pressure = Saturation.pressureAbsolute(table.number(row, "T_C") + 273.15) / 1e5;
            double sameEquation = table.number(row, "psat_IF97_bar");
            assertEquals(sameEquation, pressure, 1e-8 * sameEquation); // nine printed digits
            againstIapws95.add(pressure / table.number(row, "psat_IAPWS95_bar") - 1);
        }
        againstIapws95.assertWithin(1.34e-4, 1e-4, "saturation pressure"); // known largest deviation: 1.33e-4
    }

    /**
     * Validation: saturated liquid densities of IAPWS-95 belong to the same line, so the three parts of this package
     * fit together.
     */
    @Test
    void liquidOnTheLineHasTheTabulatedDensity() {
        ReferenceTable table = saturationTable();
        for (int row = 0; row < table.size(); row++) {
            double temperature = table.number(row, "T_C") + 273.15;
            double pressure = Saturation.pressureAbsolute(temperature);
            double expected = table.number(row, "rho_liq_sat_kg_m3");
            double actual = GibbsPolynomialWater.instance().density(temperature, pressure);
            assertEquals(expected, actual, 2.5e-7 * expected); // stated accuracy 2.1e-7, and the pressure's error
        }
    }

    /** Validation: water boils at 99.974 C under one atmosphere (ITS-90), and 99 C belongs to 0.98 bar. */
    @Test
    void landmarksAreMet() {
        assertEquals(99.974, Saturation.temperature(101_325) - 273.15, 0.001); // last printed digit
        assertEquals(0.979e5, Saturation.pressureAbsolute(372.15), 0.0005e5); // half of the last printed digit
        assertEquals(1.014180e5, Saturation.pressureAbsolute(373.15), 1.34e-4 * 1.014180e5); // deviation of eq. 30
    }

    /** Regression: the two directions invert each other, and the line rises. */
    @Test
    void directionsInvertEachOther() {
        double last = 0;
        for (double t = 273.15; t <= 647; t += 0.5) {
            double pressure = Saturation.pressureAbsolute(t);
            assertTrue(pressure > last);
            last = pressure;
            assertEquals(t, Saturation.temperature(pressure), 1e-9); // rounding, enlarged where the roots are close
        }
    }

    /** Regression: temperatures off the line are refused, NaN too. */
    @ParameterizedTest
    @ValueSource(
            doubles = {
                Double.NaN,
                Double.NEGATIVE_INFINITY,
                Double.POSITIVE_INFINITY,
                -1,
                0,
                20,
                273.1499999999999,
                647.0960000000001
            })
    void temperaturesOffTheLineAreRefused(double temperature) {
        String message = assertThrows(IllegalArgumentException.class, () -> Saturation.pressureAbsolute(temperature))
                .getMessage();
        assertEquals("temperature is " + temperature + " K, allowed is 273.15 to 647.096 K", message);
    }

    /** Regression: pressures off the line are refused, NaN too. */
    @ParameterizedTest
    @ValueSource(
            doubles = {
                Double.NaN,
                Double.NEGATIVE_INFINITY,
                Double.POSITIVE_INFINITY,
                -1,
                0,
                1,
                611.2119999999999,
                2.2064000000000004e7
            })
    void pressuresOffTheLineAreRefused(double pressureAbsolute) {
        String message = assertThrows(IllegalArgumentException.class, () -> Saturation.temperature(pressureAbsolute))
                .getMessage();
        assertEquals("absolute pressure is " + pressureAbsolute + " Pa, allowed is 611.212 to 2.2064E7 Pa", message);
    }

    /** Regression: the ends of the line belong to it. */
    @Test
    void endsOfTheLineAreAnswered() {
        assertEquals(611.213, Saturation.pressureAbsolute(273.15), 0.001); // last printed digit
        assertEquals(273.15, Saturation.temperature(611.212), 1e-4); // that digit as a temperature
        assertEquals(22.064e6, Saturation.pressureAbsolute(647.096), 1e3); // last printed digit
        assertEquals(647.096, Saturation.temperature(22.064e6), 1e-3); // last printed digit
    }

    private static ReferenceTable saturationTable() {
        return ReferenceTable.read(
                "psat_check.csv",
                31,
                "T_C",
                "psat_IAPWS95_bar",
                "psat_IF97_bar",
                "rel_dev_IF97",
                "rho_liq_sat_kg_m3",
                "v_liq_sat_m3_kg",
                "rho_vap_sat_kg_m3",
                "hfg_J_kg");
    }
}
