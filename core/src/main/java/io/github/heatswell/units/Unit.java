package io.github.heatswell.units;

import java.util.List;

/**
 * A unit of measurement at the edge of the library. Inside, every quantity is a {@code double} in its SI unit; a unit
 * converts on the way in and on the way out, with factors that are exact by definition.
 *
 * <p>Each kind of quantity has its own enum, so that a volume given in bar does not compile.
 */
public sealed interface Unit
        permits ComplianceUnit,
                ConductanceUnit,
                DurationUnit,
                EnergyUnit,
                ExpansionUnit,
                FlowUnit,
                LengthUnit,
                MassUnit,
                MomentUnit,
                PowerUnit,
                PressureUnit,
                RatioUnit,
                TemperatureDifferenceUnit,
                TemperatureUnit,
                VolumeUnit {

    /**
     * Standard acceleration of gravity (m/s2), exact by definition (General Conference on Weights and Measures, 1901). By it
     * the pound-force, the weight of a vessel and the pressure of a column of water are defined here.
     */
    double STANDARD_GRAVITY = 9.80665;

    /**
     * The size of the unit.
     *
     * @return how many SI units one of this unit is (-), such as 1e5 for the bar
     */
    double factor();

    /**
     * The zero point of the unit; other than zero only for temperatures on a thermometer.
     *
     * @return the value in the SI unit at which this unit reads zero
     */
    default double zero() {
        return 0.0;
    }

    /**
     * Converts into the SI unit of the quantity.
     *
     * @param value the quantity in this unit
     * @return the quantity in its SI unit
     */
    default double toSi(double value) {
        return value * factor() + zero();
    }

    /**
     * Converts out of the SI unit of the quantity.
     *
     * @param si the quantity in its SI unit
     * @return the quantity in this unit
     */
    default double fromSi(double si) {
        return (si - zero()) / factor();
    }

    /**
     * The ways this unit is commonly written, the preferred one first. Readers compare them without regard to case,
     * except where two units of one kind differ only by case.
     *
     * @return at least one spelling, never changed
     */
    List<String> spellings();

    /**
     * The preferred written form, such as {@code bar} or {@code L/min}.
     *
     * @return the first of {@link #spellings()}
     */
    default String symbol() {
        return spellings().get(0);
    }
}
