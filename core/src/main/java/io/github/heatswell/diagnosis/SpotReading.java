package io.github.heatswell.diagnosis;

/**
 * One number read on site.
 *
 * @param value the reading, in the SI unit of its {@link SiteCheck}; pressures are gauge
 * @param uncertainty its standard uncertainty, in the same unit, above 0
 */
public record SpotReading(double value, double uncertainty) {

    /**
     * Checks both numbers.
     *
     * @param value the reading, in the SI unit of its {@link SiteCheck}; pressures are gauge
     * @param uncertainty its standard uncertainty, in the same unit, above 0
     * @throws IllegalArgumentException if the value is no finite number or the uncertainty not above 0
     */
    public SpotReading {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("a reading must be a finite number, not " + value);
        }
        if (!(uncertainty > 0 && uncertainty < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("the uncertainty of a reading must be above 0, not " + uncertainty);
        }
    }
}
