package io.github.heatswell.checksheet;

import io.github.heatswell.units.Limits;
import io.github.heatswell.units.PressureUnit;
import io.github.heatswell.units.RatioUnit;

/**
 * Accuracy of a pressure gauge.
 *
 * @param span the largest reading of its dial (Pa, gauge), 0.1 bar to 100 bar
 * @param accuracyClass the class of EN 837-1: the largest error (% of the span), above 0 to 10
 */
public record PressureGauge(double span, double accuracyClass) {

    private static final Limits SPAN = Limits.between("span", 0.1e5, 100e5);
    private static final Limits CLASS = Limits.above("class", 0, 10);

    /**
     * Checks the numbers.
     *
     * @param span the largest reading of its dial (Pa, gauge), 0.1 bar to 100 bar
     * @param accuracyClass the class of EN 837-1: the largest error (% of the span), above 0 to 10
     * @throws IllegalArgumentException if a number is outside its range
     */
    public PressureGauge {
        span = SPAN.checkSi(span, PressureUnit.BAR);
        accuracyClass = CLASS.checkSi(accuracyClass, RatioUnit.ONE);
    }

    /**
     * The usual dial gauge: 0 to 10 bar, class 1.6 of EN 837-1 (from memory).
     *
     * @return the gauge, accurate within 0.16 bar
     */
    public static PressureGauge dial() {
        return new PressureGauge(PressureUnit.BAR.toSi(10), 1.6);
    }

    /**
     * The largest error of an undamaged gauge at room temperature.
     *
     * @return the error (Pa, difference)
     */
    public double error() {
        return span * accuracyClass / 100;
    }
}
