package io.github.heatswell.verification;

import io.github.heatswell.units.PressureUnit;

/**
 * How well a gauge shows the pressure.
 *
 * @param span the largest reading of its dial (Pa, gauge), 0.1 bar to 100 bar
 * @param accuracyClass the class of EN 837-1: the largest error (% of the span), above 0 to 10
 */
public record PressureGauge(double span, double accuracyClass) {

    /**
     * Checks the numbers.
     *
     * @param span the largest reading of its dial (Pa, gauge), 0.1 bar to 100 bar
     * @param accuracyClass the class of EN 837-1: the largest error (% of the span), above 0 to 10
     * @throws IllegalArgumentException if a number is outside its range
     */
    public PressureGauge {
        if (!(span >= 0.1e5 && span <= 100e5)) {
            throw new IllegalArgumentException(
                    "span: " + PressureUnit.BAR.fromSi(span) + " bar is outside the allowed range, 0.1 bar to 100 bar");
        }
        if (!(accuracyClass > 0 && accuracyClass <= 10)) {
            throw new IllegalArgumentException(
                    "class: " + accuracyClass + " is outside the allowed range, above 0 to 10");
        }
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
     * The largest error of a sound gauge at room temperature.
     *
     * @return the error (Pa, difference)
     */
    public double error() {
        return span * accuracyClass / 100;
    }
}
