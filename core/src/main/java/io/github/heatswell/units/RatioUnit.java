package io.github.heatswell.units;

import java.util.List;

/**
 * Units of a pure ratio.
 */
public enum RatioUnit implements Unit {
    /** The ratio itself: 0.78. */
    ONE(1.0, ""),

    /** One part in a hundred: 78 %. */
    PERCENT(0.01, "%", "percent", "per cent");

    private final double factor;
    private final List<String> spellings;

    RatioUnit(double factor, String... spellings) {
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
