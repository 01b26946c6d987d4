package io.github.heatswell.system;

import io.github.heatswell.units.Pressure;

/**
 * Two pressures formatted for comparison in a message, with enough digits to show which is higher.
 *
 * @param one the first, in bar with its reference
 * @param other the second
 */
record Compared(String one, String other) {

    private static final int MIN_DIGITS = 4;
    private static final int MAX_DIGITS = 12;

    static Compared of(Pressure one, Pressure other) {
        int digits = MIN_DIGITS;
        while (digits < MAX_DIGITS
                && one.value() != other.value()
                && one.text(digits).equals(other.text(digits))) {
            digits++;
        }
        return new Compared(one.text(digits), other.text(digits));
    }
}
