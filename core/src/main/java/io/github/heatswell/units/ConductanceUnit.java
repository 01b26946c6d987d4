package io.github.heatswell.units;

import java.util.List;

/**
 * Units of thermal conductance: the heat a tank loses for each degree above its surroundings.
 */
public enum ConductanceUnit implements Unit {
    /** The SI unit (W/K). */
    WATT_PER_KELVIN(1.0, "W/K", "W/degC", "W/°C"),

    /** International-Table British thermal unit an hour for each Fahrenheit degree. */
    BTU_PER_HOUR_FAHRENHEIT(
            1055.05585262 / 3600 * 1.8,
            "Btu/h/degF",
            "Btu/(h degF)",
            "Btu/h/F",
            "Btu/h/°F",
            "Btu/hr/degF",
            "Btu/(h °F)",
            "Btu/(hr degF)");

    private final double factor;
    private final List<String> spellings;

    ConductanceUnit(double factor, String... spellings) {
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
