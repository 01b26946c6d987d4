package io.github.heatswell.units;

import java.util.List;

/**
 * Units of volume flow.
 */
public enum FlowUnit implements Unit {
    /** The SI unit (m3/s). */
    CUBIC_METRE_PER_SECOND(1.0, "m3/s", "m³/s"),

    /** Litre a minute. */
    LITRE_PER_MINUTE(1e-3 / 60, "L/min", "litre/min", "litres/min", "l/min", "liter/min", "liters/min", "lpm"),

    /** Litre an hour. */
    LITRE_PER_HOUR(1e-3 / 3600, "L/h", "litre/h", "litres/h", "l/h", "L/hour"),

    /** Millilitre a minute: drips. */
    MILLILITRE_PER_MINUTE(1e-6 / 60, "mL/min", "ml/min"),

    /** US liquid gallon a minute. */
    US_GALLON_PER_MINUTE(231 * 0.0254 * 0.0254 * 0.0254 / 60, "gal/min", "gpm", "US gal/min", "gal (US)/min");

    private final double factor;
    private final List<String> spellings;

    FlowUnit(double factor, String... spellings) {
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
