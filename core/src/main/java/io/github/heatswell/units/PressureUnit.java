package io.github.heatswell.units;

import java.util.List;

/**
 * Units of pressure and of pressure differences. A unit says nothing about the reference: whether a value is gauge or
 * absolute is said by {@link Pressure} or by the name of the method that takes it.
 */
public enum PressureUnit implements Unit {
    /** The SI unit (Pa). */
    PASCAL(1.0, "Pa", "pascal"),

    /** Kilopascal (kPa). */
    KILOPASCAL(1e3, "kPa", "kilopascal"),

    /** Megapascal (MPa). */
    MEGAPASCAL(1e6, "MPa", "megapascal"),

    /** Bar, exactly 100 kPa. */
    BAR(1e5, "bar", "bars"),

    /** Pound-force per square inch: exact pound, standard gravity and inch, 6894.757 Pa. */
    PSI(0.45359237 * Unit.STANDARD_GRAVITY / (0.0254 * 0.0254), "psi", "lbf/in2", "lbf/in²");

    private final double factor;
    private final List<String> spellings;

    PressureUnit(double factor, String... spellings) {
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
