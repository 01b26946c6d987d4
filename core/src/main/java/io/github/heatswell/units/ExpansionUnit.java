package io.github.heatswell.units;

import java.util.List;

/**
 * Units of linear thermal expansion: the fraction by which a length grows with each degree.
 */
public enum ExpansionUnit implements Unit {
    /** The SI unit (1/K). */
    PER_KELVIN(1.0, "1/K"),

    /** Millionths for each kelvin: a micrometre for each metre. */
    MILLIONTH_PER_KELVIN(1e-6, "ppm/K", "ppm/degC", "ppm/°C", "um/(m K)", "µm/(m K)"),

    /** Millimetre for each metre and kelvin. */
    MILLIMETRE_PER_METRE_KELVIN(1e-3, "mm/(m K)", "mm/(m*K)", "mm/mK"),

    /** Millionths for each degree Fahrenheit. */
    MILLIONTH_PER_FAHRENHEIT(1.8e-6, "ppm/degF", "ppm/°F", "uin/(in degF)");

    private final double factor;
    private final List<String> spellings;

    ExpansionUnit(double factor, String... spellings) {
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
