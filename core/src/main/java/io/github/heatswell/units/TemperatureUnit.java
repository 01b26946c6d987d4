package io.github.heatswell.units;

import java.util.List;

/**
 * Units of a temperature on a thermometer, with a zero point. For differences see {@link TemperatureDifferenceUnit}.
 */
public enum TemperatureUnit implements Unit {
    /** Thermodynamic temperature (K), the SI unit. */
    KELVIN(1.0, 0.0, "K", "kelvin"),

    /** Degree Celsius: zero at 273.15 K. */
    CELSIUS(1.0, 273.15, "degC", "°C", "C", "celsius", "degree C", "degrees C", "degrees celsius"),

    /** Degree Fahrenheit: zero at 459.67 Fahrenheit degrees above absolute zero, each 5/9 K. */
    FAHRENHEIT(1 / 1.8, 459.67 / 1.8, "degF", "°F", "F", "fahrenheit", "degree F", "degrees F", "degrees fahrenheit");

    private final double factor;
    private final double zero;
    private final List<String> spellings;

    TemperatureUnit(double factor, double zero, String... spellings) {
        this.factor = factor;
        this.zero = zero;
        this.spellings = List.of(spellings);
    }

    @Override
    public double factor() {
        return factor;
    }

    @Override
    public double zero() {
        return zero;
    }

    @Override
    public List<String> spellings() {
        return spellings;
    }
}
