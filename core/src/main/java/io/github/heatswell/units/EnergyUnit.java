package io.github.heatswell.units;

import java.util.List;

/**
 * Units of heat and other energy.
 */
public enum EnergyUnit implements Unit {
    /** The SI unit (J). */
    JOULE(1.0, "J", "joule", "joules"),

    /** Megajoule (MJ). */
    MEGAJOULE(1e6, "MJ", "megajoule", "megajoules"),

    /** Kilowatt hour, exactly 3.6 MJ. */
    KILOWATT_HOUR(3.6e6, "kWh", "kW h", "kilowatt hour", "kilowatt hours"),

    /** International-Table British thermal unit, 1055.05585262 J. */
    BTU(1055.05585262, "Btu");

    private final double factor;
    private final List<String> spellings;

    EnergyUnit(double factor, String... spellings) {
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
