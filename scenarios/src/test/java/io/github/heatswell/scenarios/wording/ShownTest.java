package io.github.heatswell.scenarios.wording;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.github.heatswell.units.UnitSystem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ShownTest {

    @ParameterizedTest
    @CsvSource({
        "0, 0 s",
        "12.4, 12 s",
        "59.6, 1 min",
        "616, 10 min 16 s",
        "3599.6, 1 h",
        "5391, 1 h 30 min",
        "14400, 4 h",
        "172799, 2 d",
        "90000, 25 h",
        "8640000, 100 d"
    })
    void timesAreShownAsPeopleSayThem(double seconds, String text) {
        assertEquals(text, Shown.time(seconds));
    }

    @Test
    void quantitiesAreShownInEitherUnitSystem() {
        Shown si = new Shown(UnitSystem.SI);
        assertEquals("7.00 bar", si.pressure(7e5));
        assertEquals("58.0 degC", si.temperature(331.15));
        assertEquals("3.14 L", si.volume(0.00314));
        Shown us = new Shown(UnitSystem.US);
        assertEquals("101.5 psi", us.pressure(7e5));
        assertEquals("136.4 degF", us.temperature(331.15));
        assertEquals("0.83 gal", us.volume(0.00314));
    }

    @Test
    void onPaperTheOtherUnitSystemFollowsInBrackets() {
        Shown si = Shown.inBoth(UnitSystem.SI);
        assertEquals("7.00\u00a0bar (101.5\u00a0psi)", si.pressure(7e5));
        assertEquals("58.0\u00a0\u00b0C (136.4\u00a0\u00b0F)", si.temperature(331.15));
        assertEquals("3.14\u00a0L (0.83\u00a0gal)", si.volume(0.00314));
        assertEquals("18.0\u00a0L (4.76\u00a0gal)", si.volume(0.018));
        assertEquals("4.04 to 4.36\u00a0bar (58.6 to 63.2\u00a0psi)", si.pressures(4.04e5, 4.36e5));
        assertEquals(
                "101.5\u00a0psi (7.00\u00a0bar)", Shown.inBoth(UnitSystem.US).pressure(7e5));
    }

    @Test
    void onPaperLargeNumbersHaveFewerDigitsAndGroups() {
        Shown si = Shown.inBoth(UnitSystem.SI);
        assertEquals("836\u00a0L (221\u00a0gal)", si.volume(0.83587));
        assertEquals("1920\u00a0kWh (6\u00a0550\u00a0049\u00a0Btu)", si.energy(1919.63e3 * 3600));
        assertEquals("-12\u00a0346\u00a0L (-3261\u00a0gal)", si.volume(-12.3456));
    }
}
