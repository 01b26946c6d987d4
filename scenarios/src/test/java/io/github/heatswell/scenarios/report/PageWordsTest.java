package io.github.heatswell.scenarios.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.github.heatswell.units.QuantityFormat;
import io.github.heatswell.units.UnitSystem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PageWordsTest {

    @ParameterizedTest
    @CsvSource({
        "10 bar, 10_bar (145_psi)",
        "20 degC, 20_°C (68_°F)",
        "5 K, 5_K (9_°F)",
        "165 psi, 11.38_bar (165_psi)",
        "440 mm, 440_mm (17.3_in)",
        "0.045 in, 0.00114_m (0.045_in)",
        "20 m, 20_m (65.6_ft)",
        "0 m, 0_m (0_ft)",
        "4.5 gal, 17_L (4.5_gal)",
        "20 L/min, 20_L/min (5.28_gal/min)",
        "2 W/K, 2_W/K (3.79_Btu/h/°F)",
        "78 %, 78 %",
        "modulating, modulating",
        "[], none"
    })
    void assumedValuesAreShownInBothUnitSystems(String value, String shown) {
        assertEquals(
                shown,
                PageWords.inBoth(value, QuantityFormat.printed(UnitSystem.SI)).replace('\u00a0', '_'));
    }

    /** On a screen in its own units; what has none there stays as it is. */
    @ParameterizedTest
    @CsvSource({
        "20 degC, 68 degF",
        "430 mm, 16.9 in",
        "0 m, 0 ft",
        "20 m, 65.6 ft",
        "0.3 bar, 4.4 psi",
        "20 L/min, 5.28 gal/min",
        "2 W/K, 3.79 Btu/h/degF",
        "165 psi, 165 psi",
        "78 %, 78 %",
        "[], none"
    })
    void assumedValuesAreShownInTheUnitsOfTheScreen(String value, String shown) {
        assertEquals(shown, PageWords.inUnits(value, QuantityFormat.ascii(UnitSystem.US)));
    }

    @Test
    void theOwnersUnitsComeFirst() {
        assertEquals(
                "165\u00a0psi (11.38\u00a0bar)", PageWords.inBoth("165 psi", QuantityFormat.printed(UnitSystem.US)));
        assertEquals("145\u00a0psi (10\u00a0bar)", PageWords.inBoth("10 bar", QuantityFormat.printed(UnitSystem.US)));
    }
}
