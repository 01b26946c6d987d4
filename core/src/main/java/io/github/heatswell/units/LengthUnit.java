package io.github.heatswell.units;

import java.util.List;

/**
 * Units of length.
 */
public enum LengthUnit implements Unit {
    /** The SI unit (m). */
    METRE(1.0, "m", "metre", "metres", "meter", "meters"),

    /** Millimetre (mm). */
    MILLIMETRE(1e-3, "mm", "millimetre", "millimetres", "millimeter", "millimeters"),

    /** Inch, exactly 25.4 mm. */
    INCH(0.0254, "in", "inch", "inches", "\""),

    /** Foot, exactly 12 inches. */
    FOOT(12 * 0.0254, "ft", "foot", "feet", "'");

    private final double factor;
    private final List<String> spellings;

    LengthUnit(double factor, String... spellings) {
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
