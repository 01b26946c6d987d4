package io.github.heatswell.system;

import io.github.heatswell.units.Decimals;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.PressureUnit;

/**
 * Two pressures as a message shows them that says which is the higher: with as many digits as it takes to see that.
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
                && shown(one, digits).equals(shown(other, digits))) {
            digits++;
        }
        return new Compared(shown(one, digits), shown(other, digits));
    }

    private static String shown(Pressure pressure, int digits) {
        String bar = Decimals.significant(PressureUnit.BAR.fromSi(pressure.value()), digits) + " bar";
        return pressure.reference() == Pressure.Reference.GAUGE ? bar : bar + " abs";
    }
}
