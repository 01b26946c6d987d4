package io.github.heatswell.units;

import java.util.List;

/**
 * Units of a temperature difference, such as a thermostat differential. Differences have no zero point, so they are a
 * family of their own: 6 K is 10.8 degF, never 42.8 degF.
 */
public enum TemperatureDifferenceUnit implements Unit {
    /** The SI unit (K); a difference in degrees Celsius has the same number. */
    KELVIN(1.0, "K", "kelvin", "degC", "°C", "C", "degree C", "degrees C", "degrees celsius"),

    /** A difference of one degree Fahrenheit, exactly 5/9 K. */
    FAHRENHEIT_DEGREE(1 / 1.8, "degF", "°F", "F", "degree F", "degrees F", "degrees fahrenheit");

    private final double factor;
    private final List<String> spellings;

    TemperatureDifferenceUnit(double factor, String... spellings) {
        this.factor = factor;
        this.spellings = List.of(spellings);
    }

    @Override
    public double factor() {
        return factor;
    }

    @Override
    public List<String> spellings() {
        return spellings;
    }
}
