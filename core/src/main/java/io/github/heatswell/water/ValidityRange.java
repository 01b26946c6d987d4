package io.github.heatswell.water;

/**
 * The rectangle of temperature and absolute pressure in which a formulation of liquid water is stated to hold.
 *
 * <p>The rectangle says nothing about boiling: below the saturation pressure of its temperature, a point inside it is a
 * metastable liquid. All four limits belong to the range.
 *
 * @param lowestTemperature lowest temperature (K)
 * @param highestTemperature highest temperature (K)
 * @param lowestPressureAbsolute lowest absolute pressure (Pa)
 * @param highestPressureAbsolute highest absolute pressure (Pa)
 */
public record ValidityRange(
        double lowestTemperature,
        double highestTemperature,
        double lowestPressureAbsolute,
        double highestPressureAbsolute) {

    /**
     * Checks that both intervals have a positive length and that no limit is below zero.
     *
     * @param lowestTemperature lowest temperature (K), 0 or more
     * @param highestTemperature highest temperature (K), above the lowest and finite
     * @param lowestPressureAbsolute lowest absolute pressure (Pa), 0 or more
     * @param highestPressureAbsolute highest absolute pressure (Pa), above the lowest and finite
     * @throws IllegalArgumentException if a limit is negative or not a finite number, or if a lower limit is not below
     *     its upper limit
     */
    public ValidityRange {
        requireInterval("temperature", "K", lowestTemperature, highestTemperature);
        requireInterval("absolute pressure", "Pa", lowestPressureAbsolute, highestPressureAbsolute);
    }

    /**
     * Tells whether a point lies in the range, its limits included. A point with a NaN in it does not.
     *
     * @param temperature temperature (K)
     * @param pressureAbsolute absolute pressure (Pa)
     * @return true if both values lie within their limits
     */
    public boolean contains(double temperature, double pressureAbsolute) {
        return temperature >= lowestTemperature
                && temperature <= highestTemperature
                && pressureAbsolute >= lowestPressureAbsolute
                && pressureAbsolute <= highestPressureAbsolute;
    }

    /**
     * Refuses a point that is not in the range.
     *
     * @param temperature temperature (K)
     * @param pressureAbsolute absolute pressure (Pa)
     * @throws IllegalArgumentException if a value is NaN or outside its limits; the message names the quantity, the
     *     value and the limits, each with its unit
     */
    public void requireContains(double temperature, double pressureAbsolute) {
        requireBetween("temperature", "K", temperature, lowestTemperature, highestTemperature);
        requireBetween("absolute pressure", "Pa", pressureAbsolute, lowestPressureAbsolute, highestPressureAbsolute);
    }

    /** Refuses a value outside a closed interval; the comparison is written so that NaN is refused too. */
    static void requireBetween(String name, String unit, double value, double lowest, double highest) {
        if (!(value >= lowest && value <= highest)) {
            throw new IllegalArgumentException(
                    name + " is " + value + " " + unit + ", allowed is " + lowest + " to " + highest + " " + unit);
        }
    }

    private static void requireInterval(String name, String unit, double lowest, double highest) {
        if (!(lowest >= 0 && lowest < highest && highest < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("limits of " + name + " are " + lowest + " and " + highest + " " + unit
                    + ", allowed is 0 <= lowest < highest < infinity");
        }
    }
}
