package io.github.heatswell.water;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ValidityRangeTest {
    private final LiquidWater.ValidityRange range = new LiquidWater.ValidityRange(280, 360, 1e5, 1e6);

    /** Regression: limits belong to the range, NaN to none. */
    @ParameterizedTest
    @CsvSource({
        "280, 1e5, true",
        "360, 1e6, true",
        "300, 5e5, true",
        "279.99999999999994, 5e5, false",
        "360.00000000000006, 5e5, false",
        "300, 99999.99999999999, false",
        "300, 1000000.0000000001, false",
        "NaN, 5e5, false",
        "300, NaN, false",
        "-Infinity, 5e5, false",
        "300, Infinity, false"
    })
    void containsAndRequireContainsAgree(double temperature, double pressureAbsolute, boolean expected) {
        assertEquals(expected, range.contains(temperature, pressureAbsolute));
        if (expected) {
            assertDoesNotThrow(() -> range.requireContains(temperature, pressureAbsolute));
        } else {
            assertThrows(IllegalArgumentException.class, () -> range.requireContains(temperature, pressureAbsolute));
        }
    }

    /** Regression: the message tells name, value, limits and unit. */
    @Test
    void messageTellsWhatIsWrong() {
        String message = assertThrows(IllegalArgumentException.class, () -> range.requireContains(300, 2e6))
                .getMessage();
        assertEquals("absolute pressure is 2000000.0 Pa, allowed is 100000.0 to 1000000.0 Pa", message);
    }

    /** Regression: a range that contains nothing, or everything, is not a range. */
    @ParameterizedTest
    @CsvSource({
        "NaN, 360, 1e5, 1e6, temperature",
        "280, NaN, 1e5, 1e6, temperature",
        "280, Infinity, 1e5, 1e6, temperature",
        "280, 280, 1e5, 1e6, temperature",
        "360, 280, 1e5, 1e6, temperature",
        "-1, 280, 1e5, 1e6, temperature",
        "280, 360, NaN, 1e6, absolute pressure",
        "280, 360, 1e5, NaN, absolute pressure",
        "280, 360, 1e5, Infinity, absolute pressure",
        "280, 360, 1e6, 1e6, absolute pressure",
        "280, 360, -1e5, 1e6, absolute pressure"
    })
    void emptyAndUnboundedRangesAreRefused(double t1, double t2, double p1, double p2, String name) {
        String message = assertThrows(
                        IllegalArgumentException.class, () -> new LiquidWater.ValidityRange(t1, t2, p1, p2))
                .getMessage();
        assertTrue(message.startsWith("limits of " + name + " are "), message);
    }

    /** Nothing is the lowest that a temperature or an absolute pressure can be, and a range may begin there. */
    @Test
    void rangeMayBeginAtNothing() {
        assertTrue(new LiquidWater.ValidityRange(0, 360, 0, 1e6).contains(0, 0));
    }

    /** Regression: two ranges with the same limits are the same range. */
    @Test
    void rangesAreComparedByTheirLimits() {
        assertEquals(new LiquidWater.ValidityRange(280, 360, 1e5, 1e6), range);
        assertFalse(new LiquidWater.ValidityRange(280, 361, 1e5, 1e6).equals(range));
    }
}
