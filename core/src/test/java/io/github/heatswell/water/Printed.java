package io.github.heatswell.water;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.math.MathContext;

/** Comparison with numbers as a standard prints them. */
final class Printed {
    private static final MathContext NINE_DIGITS = new MathContext(9);

    private Printed() {}

    /** Holds a value, rounded to nine significant digits, equal to a printed one: no tolerance beyond the rounding. */
    static void assertNineDigits(String printed, double value, String what) {
        assertEquals(
                0,
                new BigDecimal(printed).compareTo(new BigDecimal(value).round(NINE_DIGITS)),
                () -> what + ": printed " + printed + ", computed " + value);
    }
}
