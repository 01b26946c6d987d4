package io.github.heatswell.charts.picture;

import java.util.List;
import java.util.Objects;

/**
 * A drawing over the axis that all panels of a picture share.
 *
 * @param axis the scale of the values
 * @param areas what is filled, behind everything else
 * @param curves the lines
 * @param levels the values that do not change
 * @param marks the points marked on the lines, in the order of time
 * @param bands the lanes of bars at the foot, the lowest first
 */
public record Panel(
        Axis axis, List<Area> areas, List<Curve> curves, List<Level> levels, List<Mark> marks, List<Bands> bands) {

    /**
     * Copies the lists.
     *
     * @param axis the scale of the values
     * @param areas what is filled, behind everything else
     * @param curves the lines
     * @param levels the values that do not change
     * @param marks the points marked on the lines, in the order of time
     * @param bands the lanes of bars at the foot, the lowest first
     */
    public Panel {
        Objects.requireNonNull(axis, "axis");
        areas = List.copyOf(Objects.requireNonNull(areas, "areas"));
        curves = List.copyOf(Objects.requireNonNull(curves, "curves"));
        levels = List.copyOf(Objects.requireNonNull(levels, "levels"));
        marks = List.copyOf(Objects.requireNonNull(marks, "marks"));
        bands = List.copyOf(Objects.requireNonNull(bands, "bands"));
    }

    /**
     * A panel of lines, without areas and lanes.
     *
     * @param axis the scale of the values
     * @param curves the lines
     * @param levels the values that do not change
     * @param marks the points marked on the lines, in the order of time
     */
    public Panel(Axis axis, List<Curve> curves, List<Level> levels, List<Mark> marks) {
        this(axis, List.of(), curves, levels, marks, List.of());
    }

    /**
     * Stretches of time in which something was on, drawn as bars in a lane of their own at the foot of a panel.
     *
     * @param kind what was on, which determines its look
     * @param label the same in words
     * @param spans the stretches, in the order of time
     */
    public record Bands(Kind kind, String label, List<Span> spans) {

        /**
         * Copies the stretches and makes the label printable.
         *
         * @param kind what was on, which determines its look
         * @param label the same in words
         * @param spans the stretches, in the order of time
         */
        public Bands {
            Objects.requireNonNull(kind, "kind");
            label = PlainText.of(Objects.requireNonNull(label, "label"));
            spans = List.copyOf(Objects.requireNonNull(spans, "spans"));
        }

        /** What was on. */
        public enum Kind {
            /** The burner or an element. */
            HEATER,
            /** A tap. */
            DRAWS,
            /** The bypass of the reducing valve. */
            BYPASS,
            /** A relief valve that runs on water from the supply. */
            RELIEF,
            /** The shut-off of the supply. */
            SUPPLY_OFF
        }

        /**
         * A stretch of time.
         *
         * @param from its start, in the unit of the time axis
         * @param to its end, in the same unit, not before its start
         */
        public record Span(double from, double to) {}
    }

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
            /** The highest pressure that the rules of the place allow in the building. */
            PLACE_LIMIT,
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
}
