package io.github.heatswell.charts.picture;

import java.util.Objects;

/**
 * A value that does not change during the run and is drawn as a line across the panel, with its name on it. A level off
 * the scale is named at the edge it lies beyond.
 *
 * @param kind what it is, which determines its look
 * @param value where it lies, in the unit of the panel's axis
 * @param amount the value with its unit, such as {@code 7.0 bar}
 * @param name what it is called
 */
public record Level(Kind kind, double value, String amount, String name) {

    /**
     * Makes the words printable.
     *
     * @param kind what it is, which determines its look
     * @param value where it lies, in the unit of the panel's axis
     * @param amount the value with its unit, such as {@code 7.0 bar}
     * @param name what it is called
     */
    public Level {
        Objects.requireNonNull(kind, "kind");
        amount = PlainText.of(Objects.requireNonNull(amount, "amount"));
        name = PlainText.of(Objects.requireNonNull(name, "name"));
    }

    /** What a level is. */
    public enum Kind {
        /** The pressure the tank was tested at. */
        TEST_PRESSURE,
        /** The highest pressure allowed in use. */
        WORKING_PRESSURE,
        /** The pressure at which a relief valve opens. */
        RELIEF_SET,
        /** The pressure at which a relief valve closes again. */
        RELIEF_RESEAT,
        /** The static pressure of the cold feed. */
        SUPPLY,
        /** The pressure of the mains, before a reducing valve. */
        MAINS,
        /** The gas pressure of the empty expansion vessel. */
        PRECHARGE,
        /** The temperature at which the thermostat switches off. */
        SET_POINT,
        /** The temperature at which a relief valve opens. */
        RELIEF_TEMPERATURE,
        /** The temperature at which the high-limit cut-out trips. */
        CUT_OUT
    }
}
