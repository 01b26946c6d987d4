package io.github.heatswell.units;

import java.util.List;

/**
 * Units of compliance: the volume by which something grows for each step of pressure.
 */
public enum ComplianceUnit implements Unit {
    /** The SI unit (m3/Pa). */
    CUBIC_METRE_PER_PASCAL(1.0, "m3/Pa", "m³/Pa"),

    /** Millilitre for each bar. */
    MILLILITRE_PER_BAR(1e-6 / 1e5, "mL/bar", "ml/bar"),

    /** Litre for each bar. */
    LITRE_PER_BAR(1e-3 / 1e5, "L/bar", "l/bar", "litre/bar", "liter/bar"),

    /** US fluid ounce, 1/128 of a gallon, for each pound-force per square inch. */
    US_FLUID_OUNCE_PER_PSI(
            VolumeUnit.US_GALLON.factor() / 128 / PressureUnit.PSI.factor(), "fl oz/psi", "floz/psi", "fl. oz/psi");

    private final double factor;
    private final List<String> spellings;

    ComplianceUnit(double factor, String... spellings) {
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
