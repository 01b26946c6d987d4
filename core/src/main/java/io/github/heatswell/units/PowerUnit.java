package io.github.heatswell.units;

import java.util.List;

/**
 * Units of heating power.
 */
public enum PowerUnit implements Unit {
    /** The SI unit (W). */
    WATT(1.0, "W", "watt", "watts"),

    /** Kilowatt (kW). */
    KILOWATT(1e3, "kW", "kilowatt", "kilowatts"),

    /** International-Table British thermal unit (1055.05585262 J) an hour. */
    BTU_PER_HOUR(1055.05585262 / 3600, "Btu/h", "Btuh", "Btu/hr");

    private final double factor;
    private final List<String> spellings;

    PowerUnit(double factor, String... spellings) {
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
