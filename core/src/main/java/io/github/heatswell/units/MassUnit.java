package io.github.heatswell.units;

import java.util.List;

/**
 * Units of mass.
 */
public enum MassUnit implements Unit {
    /** The SI unit (kg). */
    KILOGRAM(1.0, "kg", "kilogram", "kilograms"),

    /** International avoirdupois pound, exactly 0.45359237 kg (lb). */
    POUND(0.45359237, "lb", "lbs", "pound", "pounds");

    private final double factor;
    private final List<String> spellings;

    MassUnit(double factor, String... spellings) {
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
