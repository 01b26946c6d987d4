package io.github.heatswell.units;

import java.util.List;

/**
 * Units of volume.
 */
public enum VolumeUnit implements Unit {
    /** The SI unit (m3). */
    CUBIC_METRE(1.0, "m3", "m³", "cubic metre", "cubic metres", "cubic meter", "cubic meters"),

    /** Litre, exactly one cubic decimetre. */
    LITRE(1e-3, "L", "l", "litre", "litres", "liter", "liters"),

    /** Millilitre, exactly one cubic centimetre. */
    MILLILITRE(1e-6, "mL", "ml", "millilitre", "millilitres", "milliliter", "milliliters"),

    /** US liquid gallon, exactly 231 cubic inches, 3.785411784 L. */
    US_GALLON(
            231 * 0.0254 * 0.0254 * 0.0254,
            "gal",
            "gallon",
            "gallons",
            "US gal",
            "US gallon",
            "US gallons",
            "gal (US)"),

    /** US liquid quart, a quarter of the gallon (NIST Handbook 44, appendix C; from memory). */
    US_QUART(US_GALLON.factor / 4, "qt", "quart", "quarts", "US qt", "US quart", "US quarts"),

    /** US liquid pint, an eighth of the gallon (NIST Handbook 44, appendix C; from memory). */
    US_PINT(US_GALLON.factor / 8, "pt", "pint", "pints", "US pt", "US pint", "US pints");

    private final double factor;
    private final List<String> spellings;

    VolumeUnit(double factor, String... spellings) {
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
