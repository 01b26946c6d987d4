package io.github.heatswell.charts.table;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FixedDecimalsTest {

    @ParameterizedTest
    @CsvSource({
        "0, 2, 0.00",
        "-0.0, 2, 0.00",
        "-0.004, 2, 0.00",
        "-0.006, 2, -0.01",
        "0.00001, 5, 0.00001",
        "1e-9, 5, 0.00000",
        "0.30000000000000004, 5, 0.30000",
        "1234567.891, 2, 1234567.89",
        "-12.5, 0, -13",
        "12.05, 4, 12.0500",
        "1e20, 2, 100000000000000000000.00",
        "NaN, 2, ''",
        "Infinity, 2, ''",
        "-Infinity, 2, ''"
    })
    void writesPlainNumbers(double value, int decimals, String text) {
        assertEquals(text, FixedDecimals.of(value, decimals));
    }

    @ParameterizedTest
    @CsvSource({"60, 60", "61.5, 61.5", "0.0004, 0", "1301.8181, 1301.818", "100, 100", "NaN, ''", "-0.0, 0"})
    void trimsZeros(double value, String text) {
        assertEquals(text, FixedDecimals.trimmed(value, 3));
    }

    /** Random values, and values at and right beside halves of the last decimal, where rounding is decided. */
    @Test
    void roundsAsExactArithmeticDoes() {
        Random random = new Random(20_261_125);
        for (int i = 0; i < 200_000; i++) {
            int decimals = random.nextInt(7);
            double value = (random.nextDouble() - 0.5) * Math.pow(10, random.nextInt(14));
            double half = (random.nextInt(2_000_000) - 1_000_000 + 0.5) / Math.pow(10, decimals);
            assertExact(value, decimals);
            assertExact(half, decimals);
            assertExact(Math.nextUp(half), decimals);
            assertExact(Math.nextDown(half), decimals);
        }
    }

    @Test
    void roundsLargeNumbersAsExactArithmeticDoes() {
        Random random = new Random(20_261_125);
        for (int i = 0; i < 20_000; i++) {
            assertExact((random.nextDouble() - 0.5) * Math.pow(10, 8 + random.nextInt(12)), random.nextInt(7));
        }
    }

    private static void assertExact(double value, int decimals) {
        BigDecimal exact = new BigDecimal(value).setScale(decimals, RoundingMode.HALF_UP);
        String text = FixedDecimals.of(value, decimals);
        assertEquals(exact.toPlainString(), text, () -> value + " with " + decimals + " decimals, seed 20261125");
    }
}
