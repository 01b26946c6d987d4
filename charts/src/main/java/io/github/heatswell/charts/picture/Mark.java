package io.github.heatswell.charts.picture;

import java.util.Objects;

/**
 * A moment marked on a curve.
 *
 * @param kind what happened, which determines the shape
 * @param across where it lies, or when, in the unit of the axis to the right
 * @param up where it lies, in the unit of the axis upwards
 * @param label what is said about it, or empty
 * @param device which of several devices of one kind it was, counted from 0; settles the shape too
 */
public record Mark(Kind kind, double across, double up, String label, int device) {

    /**
     * Makes the label printable.
     *
     * @param kind what happened, which determines the shape
     * @param across where it lies, or when, in the unit of the axis to the right
     * @param up where it lies, in the unit of the axis upwards
     * @param label what is said about it, or empty
     * @param device which of several devices of one kind it was, counted from 0; settles the shape too
     */
    public Mark {
        Objects.requireNonNull(kind, "kind");
        label = PlainText.of(Objects.requireNonNull(label, "label"));
    }

    /**
     * A mark of the only device of its kind, or of none.
     *
     * @param kind what happened, which determines the shape
     * @param across where it lies, or when, in the unit of the axis to the right
     * @param up where it lies, in the unit of the axis upwards
     * @param label what is said about it, or empty
     */
    public Mark(Kind kind, double across, double up, String label) {
        this(kind, across, up, label, 0);
    }

    /** What happened, the gravest first: where two marks would cover each other, the graver one is drawn on top. */
    public enum Kind {
        /** The run ended here. */
        HAZARD,
        /** The high-limit cut-out switched the heater off, until somebody resets it. */
        CUT_OUT_TRIPPED,
        /** The tank's working pressure was exceeded. */
        WORKING_PRESSURE_EXCEEDED,
        /** A relief valve opened because the water was too hot. */
        RELIEF_OPENED_HOT,
        /** A relief valve opened. */
        RELIEF_OPENED,
        /** A relief valve closed again. */
        RELIEF_RESEATED,
        /** The expansion vessel can take no more water. */
        VESSEL_FULL,
        /** The highest value. */
        HIGHEST,
        /** The installation as it stands, or the answer that was found. */
        CHIEF,
        /** One of several that are read off. */
        READING,
        /** One of several that do not do. */
        FAILING
    }
}
