package io.github.heatswell.units;

import java.util.List;

/**
 * Units of a bending moment.
 */
enum MomentUnit implements Unit {
    /** The SI unit (N m). */
    NEWTON_METRE(1.0, "N m", "Nm"),

    /** Pound-force foot: 0.45359237 kg x standard gravity x 0.3048 m. */
    POUND_FORCE_FOOT(0.45359237 * Unit.STANDARD_GRAVITY * 0.3048, "lbf ft", "ft lbf");

    private final double factor;
    private final List<String> spellings;

    MomentUnit(double factor, String... spellings) {
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
