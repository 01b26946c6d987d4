package io.github.heatswell.charts.picture;

import java.util.Objects;

/**
 * A drawn line and the label at its end.
 *
 * @param role what the line is, which determines its look
 * @param name what it is called, or empty if the axis says it
 * @param label what is said of it after its name or on the line, or empty
 * @param points where it runs
 */
public record Curve(Role role, String name, String label, Points points) {

    /**
     * Makes the words printable.
     *
     * @param role what the line is, which determines its look
     * @param name what it is called, or empty if the axis says it
     * @param label what is said of it after its name or on the line, or empty
     * @param points where it runs
     */
    public Curve {
        Objects.requireNonNull(role, "role");
        Objects.requireNonNull(points, "points");
        name = PlainText.of(Objects.requireNonNull(name, "name"));
        label = PlainText.of(Objects.requireNonNull(label, "label"));
    }

    /** What a line is. */
    public enum Role {
        /** The pressure of the only run. */
        PRESSURE,
        /** The water temperature of the only run. */
        TEMPERATURE,
        /** The temperature of the water in a hot branch. */
        HOT_BRANCH,
        /** The temperature of the water in a circulation loop. */
        LOOP,
        /** The pressure of the mains where it changes over the day. */
        MAINS,
        /** The lower or upper edge of each day's pressure. */
        DAY_EDGE,
        /** Result at the slowest precharge loss. */
        SLOW_FADING,
        /** Result at the fastest precharge loss. */
        FAST_FADING,
        /** Where a value is the same. */
        CONTOUR,
        /** Where a relief valve begins to drip. */
        DRIP,
        /** What the peak should stay below. */
        TARGET,
        /** The static pressure of the supply. */
        STATIC,
        /** The set pressure of a relief valve. */
        RELIEF_SET,
        /** The working pressure of the tank. */
        WORKING_PRESSURE,
        /** A share of houses, or a peak, over something else than time. */
        CURVE,
        /** A dropped perpendicular that leads the eye. */
        GUIDE,
        /** The first of several runs. */
        RUN_1,
        /** The second of several runs. */
        RUN_2,
        /** The third of several runs. */
        RUN_3,
        /** The fourth of several runs. */
        RUN_4,
        /** The fifth of several runs. */
        RUN_5,
        /** The sixth of several runs. */
        RUN_6;

        /** The largest number of runs that one picture can hold apart. */
        public static final int MAX_RUNS = 6;

        /**
         * The role of one of several runs.
         *
         * @param index the number of the run, counted from 0, below {@link #MAX_RUNS}
         * @return its role
         */
        public static Role ofRun(int index) {
            return values()[RUN_1.ordinal() + index];
        }
    }
}
