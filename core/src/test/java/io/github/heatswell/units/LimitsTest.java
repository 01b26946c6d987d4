package io.github.heatswell.units;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The range a number may have, and the sentence that refuses it. */
class LimitsTest {

    private static final Limits SUPPLY = Limits.between("pressure", 0.5e5, 12.5e5);
    private static final Limits VOLUME = Limits.above("volume", 0, 1);

    private static void refuses(String message, Executable check) {
        assertEquals(
                message, assertThrows(IllegalArgumentException.class, check).getMessage());
    }

    /** A limit that misses itself by the rounding of its unit is that limit; a value beyond it by more is refused. */
    @Test
    void aValueIsConvertedAndHeldToItsRange() {
        assertEquals(4e5, SUPPLY.check(4, PressureUnit.BAR), 1e-9); // rounding
        assertEquals(0.5e5, SUPPLY.check(0.5 - 1e-10, PressureUnit.BAR));
        assertEquals(12.5e5, SUPPLY.check(12.5 + 1e-9, PressureUnit.BAR));
        assertEquals(0.5e5, SUPPLY.checkSi(0.5e5 - 1e-5, PressureUnit.BAR));
        assertEquals(12.5e5, SUPPLY.checkSi(12.5e5 + 1e-4, PressureUnit.BAR));
        assertEquals(7e5, SUPPLY.checkSi(7e5, PressureUnit.PSI));
        Pressure gauge = Pressure.gauge(12.5e5 + 1e-4, PressureUnit.PASCAL);
        assertEquals(Pressure.gauge(12.5e5, PressureUnit.PASCAL), SUPPLY.check(gauge));
        assertTrue(SUPPLY.contains(0.5e5) && SUPPLY.contains(12.5e5));
        assertFalse(SUPPLY.contains(0.5e5 - 1) || SUPPLY.contains(12.5e5 + 1) || SUPPLY.contains(Double.NaN));
    }

    @Test
    void theLowerEndOfARangeAboveItIsNoPartOfIt() {
        assertFalse(VOLUME.contains(0));
        assertTrue(VOLUME.contains(Double.MIN_VALUE) && VOLUME.contains(1));
        refuses(
                "volume: 0 L is outside the allowed range, above 0 L to 1000 L",
                () -> VOLUME.check(0, VolumeUnit.LITRE));
    }

    /** In the unit of the value, with the limits rounded inwards: 12.5 bar are 181.297 psi, 0.5 bar are 7.25189 psi. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "20 | BAR | 20 bar is outside the allowed range, 0.5 bar to 12.5 bar",
                "12.500001 | BAR | 12.500001 bar is outside the allowed range, 0.5 bar to 12.5 bar",
                "4000 | PSI | 4000 psi is outside the allowed range, 7.26 psi to 181 psi",
                "-1 | BAR | -1 bar is outside the allowed range, 0.5 bar to 12.5 bar",
                "NaN | BAR | NaN bar is outside the allowed range, 0.5 bar to 12.5 bar",
                "Infinity | BAR | Infinity bar is outside the allowed range, 0.5 bar to 12.5 bar"
            })
    void aRefusalNamesFieldValueUnitAndRange(double value, PressureUnit unit, String message) {
        refuses("pressure: " + message, () -> SUPPLY.check(value, unit));
        assertEquals(message, SUPPLY.complaint(value, unit));
    }

    @Test
    void valuesInTheSiUnitAndPressuresAreRefusedInReadableUnits() {
        refuses(
                "pressure: 20 bar is outside the allowed range, 0.5 bar to 12.5 bar",
                () -> SUPPLY.checkSi(20e5, PressureUnit.BAR));
        refuses(
                "pressure: 20 bar is outside the allowed range, 0.5 bar to 12.5 bar",
                () -> SUPPLY.check(Pressure.gauge(20, PressureUnit.BAR)));
        assertEquals(
                "pressure: its unit",
                assertThrows(NullPointerException.class, () -> SUPPLY.check(4, null))
                        .getMessage());
        assertEquals(
                "pressure: the unit it is told in",
                assertThrows(NullPointerException.class, () -> SUPPLY.checkSi(4, null))
                        .getMessage());
    }

    @Test
    void wholeNumbersIncludeBothEnds() {
        assertEquals(1, Limits.whole("layers", 1, 1, 100));
        assertEquals(100, Limits.whole("layers", 100, 1, 100));
        refuses("layers: 0 is outside the allowed range, 1 to 100", () -> Limits.whole("layers", 0, 1, 100));
        refuses("layers: 101 is outside the allowed range, 1 to 100", () -> Limits.whole("layers", 101, 1, 100));
    }

    @ParameterizedTest
    @CsvSource({
        "4.2, BAR, 4.2 bar",
        "0, BAR, 0 bar",
        "-0.0, PSI, 0 psi",
        "1234567.8, PASCAL, 1234570 Pa",
        "NaN, BAR, NaN bar"
    })
    void aQuantityHasSixDigitsAndItsUnit(double value, PressureUnit unit, String told) {
        assertEquals(told, Limits.quantity(value, unit));
    }

    @Test
    void aNumberWithoutUnitStandsAlone() {
        assertEquals("0.25", Limits.quantity(0.25, RatioUnit.ONE));
        assertEquals("NaN", Limits.quantity(Double.NaN, RatioUnit.ONE));
    }
}
