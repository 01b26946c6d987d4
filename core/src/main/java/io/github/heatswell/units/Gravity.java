package io.github.heatswell.units;

/**
 * Standard gravity, by which the pound-force, the weight of a vessel and the pressure of a column of water are defined here.
 */
public final class Gravity {

    /** Standard acceleration of gravity (m/s2), exact by definition (General Conference on Weights and Measures, 1901). */
    public static final double STANDARD = 9.80665;

    private Gravity() {}
}
