package io.github.heatswell.scenarios.output;

import static org.junit.jupiter.api.Assertions.assertEquals;

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
        "165 psi, 11.4_bar (165_psi)",
        "440 mm, 440_mm (17.3_in)",
        "20 L/min, 20_L/min (5.28_gal/min)",
        "2 W/K, 2 W/K",
        "78 %, 78 %",
        "modulating, modulating",
        "[], none"
    })
    void assumedValuesAreShownInBothUnitSystems(String value, String shown) {
        assertEquals(shown, PageWords.inBoth(value, UnitSystem.SI).replace('\u00a0', '_'));
    }

    @Test
    void theOwnersUnitsComeFirst() {
        assertEquals("165\u00a0psi (11.4\u00a0bar)", PageWords.inBoth("165 psi", UnitSystem.US));
        assertEquals("145\u00a0psi (10\u00a0bar)", PageWords.inBoth("10 bar", UnitSystem.US));
    }

    @Test
    void numbersStayWithTheirUnits() {
        assertEquals(
                "opens after 10_min at 7.0_bar (101_psi), 58_\u00b0C; 2 draws take 3 buckets",
                PageWords.glued("opens after 10 min at 7.0 bar (101 psi), 58 \u00b0C; 2 draws take 3 buckets")
                        .replace('\u00a0', '_'));
    }
}
