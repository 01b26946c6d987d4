package io.github.heatswell.plant;

import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.PressureUnit;
import io.github.heatswell.units.Unit;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Objects;

/**
 * The range a number may have, checked once where the number enters. The comparison is written so that NaN fails it.
 *
 * @param field the field as scenario files write it
 * @param low the lowest value, in the SI unit
 * @param lowAllowed whether the lowest value itself is allowed
 * @param high the highest value, in the SI unit, allowed
 */
record Limits(String field, double low, boolean lowAllowed, double high) {

    /** A range that includes both ends. */
    static Limits between(String field, double low, double high) {
        return new Limits(field, low, true, high);
    }

    /** A range above, but not including, {@code low}. */
    static Limits above(String field, double low, double high) {
        return new Limits(field, low, false, high);
    }

    /**
     * Converts and checks.
     *
     * @param value the value as given
     * @param unit the unit it was given in
     * @return the value in the SI unit
     * @throws IllegalArgumentException naming the field, the value with its unit and the range in that unit
     */
    double check(double value, Unit unit) {
        Objects.requireNonNull(unit, () -> field + ": its unit");
        double si = unit.toSi(value);
        if (contains(si)) {
            return si;
        }
        throw new IllegalArgumentException(field + ": " + complaint(value, unit));
    }

    /**
     * Checks the number of a pressure, whatever its reference.
     *
     * @param value the pressure
     * @return the same pressure
     * @throws IllegalArgumentException naming the field, the value and the range, in bar
     */
    Pressure check(Pressure value) {
        Objects.requireNonNull(value, field);
        check(PressureUnit.BAR.fromSi(value.value()), PressureUnit.BAR);
        return value;
    }

    /**
     * Tells whether a value lies in the range.
     *
     * @param si the value, in the SI unit
     */
    boolean contains(double si) {
        return (lowAllowed ? si >= low : si > low) && si <= high;
    }

    /** The sentence for a value outside the range, without the field. */
    String complaint(double value, Unit unit) {
        return quantity(value, unit) + " is outside the allowed range, " + (lowAllowed ? "" : "above ")
                + quantity(unit.fromSi(low), unit) + " to " + quantity(unit.fromSi(high), unit);
    }

    /** A number and its unit, in at most six digits. */
    static String quantity(double value, Unit unit) {
        String number = Math.abs(value) < Double.POSITIVE_INFINITY ? plain(value) : Double.toString(value);
        return unit.symbol().isEmpty() ? number : number + " " + unit.symbol();
    }

    private static String plain(double value) {
        BigDecimal rounded = new BigDecimal(value).round(new MathContext(6, RoundingMode.HALF_EVEN));
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }
}
