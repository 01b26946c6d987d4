package io.github.heatswell.sizing;

import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.PressureUnit;
import java.util.Objects;

/**
 * Rule for the precharge, from the static supply pressure at the height of the vessel.
 */
public enum PrechargeRule {
    /** The static pressure itself: the rule of the trade in the United States; from memory. */
    STATIC(0),
    /**
     * The static pressure minus 0.2 bar, so that the vessel holds a little water at the cold fill: DIN 4807-5 as quoted
     * by a trade page, second-hand.
     */
    STATIC_LESS_FIFTH_BAR(0.2e5);

    /** Precharge below the static pressure (Pa, difference). */
    private final double below;

    PrechargeRule(double below) {
        this.below = below;
    }

    /**
     * The precharge for a static pressure.
     *
     * @param staticPressure the static pressure of the supply at the height of the vessel
     * @return the precharge, against the same reference
     */
    public Pressure at(Pressure staticPressure) {
        Objects.requireNonNull(staticPressure, "static pressure");
        return new Pressure(staticPressure.value() - below, staticPressure.reference());
    }

    /** The precharge (Pa, gauge) for a static pressure (Pa, gauge). */
    Pressure atGauge(double staticGauge) {
        return at(Pressure.gauge(staticGauge, PressureUnit.PASCAL));
    }
}
