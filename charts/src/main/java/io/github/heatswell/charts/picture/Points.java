package io.github.heatswell.charts.picture;

import java.util.Arrays;

/**
 * The corners of a drawn line; closed, it is the rim of a patch. Two corners may be one above the other: the line then has a
 * vertical edge. Immutable.
 */
public final class Points {

    private final double[] across;
    private final double[] up;

    /**
     * Copies the corners.
     *
     * @param across the places along the axis to the right, in its unit
     * @param up the places along the axis upwards, in its unit
     * @throws IllegalArgumentException if there are more of one than of the other, or none at all
     */
    public Points(double[] across, double[] up) {
        if (across.length != up.length || across.length == 0) {
            throw new IllegalArgumentException(
                    "a line of " + across.length + " places across and " + up.length + " up cannot be drawn");
        }
        this.across = across.clone();
        this.up = up.clone();
    }

    /**
     * A line over time.
     *
     * @param times the times, in the unit of the time axis, never falling
     * @param values the values, in the unit of the axis upwards
     * @return the line
     * @throws IllegalArgumentException if there are more of one than of the other, none at all, or if time runs back
     */
    public static Points overTime(double[] times, double[] values) {
        for (int i = 1; i < times.length; i++) {
            if (!(times[i] >= times[i - 1])) {
                throw new IllegalArgumentException("time runs back from " + times[i - 1] + " to " + times[i]);
            }
        }
        return new Points(times, values);
    }

    /**
     * A straight line.
     *
     * @param fromAcross where it starts along the axis to the right, in its unit
     * @param fromUp where it starts along the axis upwards, in its unit
     * @param toAcross where it ends along the axis to the right, in its unit
     * @param toUp where it ends along the axis upwards, in its unit
     * @return the line
     */
    public static Points straight(double fromAcross, double fromUp, double toAcross, double toUp) {
        return new Points(new double[] {fromAcross, toAcross}, new double[] {fromUp, toUp});
    }

    /**
     * The number of corners.
     *
     * @return the number, at least 1
     */
    public int count() {
        return across.length;
    }

    /**
     * The place of a corner along the axis to the right: of a line over time, the time.
     *
     * @param index the number of the corner
     * @return the place, in the unit of the axis
     */
    public double across(int index) {
        return across[index];
    }

    /**
     * The place of a corner along the axis upwards: of a line over time, the value.
     *
     * @param index the number of the corner
     * @return the place, in the unit of the axis
     */
    public double up(int index) {
        return up[index];
    }

    /**
     * The lowest place along the axis upwards.
     *
     * @return the place, in the unit of the axis
     */
    public double lowest() {
        return Arrays.stream(up).min().orElseThrow();
    }

    /**
     * The highest place along the axis upwards.
     *
     * @return the place, in the unit of the axis
     */
    public double highest() {
        return Arrays.stream(up).max().orElseThrow();
    }

    /**
     * Whether the line runs straight up.
     *
     * @return true if it has at least two corners, all at the same place across
     */
    public boolean isUpright() {
        return across.length > 1 && Arrays.stream(across).allMatch(x -> x == across[0]);
    }

    /**
     * All corners at once.
     *
     * @return a copy: the places across first, then those upwards, each in the unit of its axis
     */
    public double[][] toArrays() {
        return new double[][] {across.clone(), up.clone()};
    }

    /**
     * Collects the corners of a line and keeps only as many as can be seen. The width is cut into columns; of each column
     * the first, the lowest, the highest and the last corner are kept, in their order, so that no peak is lost however long
     * the run was.
     */
    public static final class PointCollector {

        private static final int KEPT = 4;

        private final double from;
        private final double columnsPerTime;
        private double[] times = new double[256];
        private double[] values = new double[256];
        private int count;

        private final double[] seenTimes = new double[KEPT];
        private final double[] seenValues = new double[KEPT];
        private final long[] seenOrder = new long[KEPT];
        private long order;
        private long column = Long.MIN_VALUE;

        /**
         * Starts with no corners.
         *
         * @param from the time at the left edge, in the unit of the time axis
         * @param to the time at the right edge, in the same unit, above {@code from}
         * @param columns the number of columns between them, at least 1
         * @throws IllegalArgumentException if there is nothing between the edges
         */
        public PointCollector(double from, double to, int columns) {
            if (!(from < to && columns > 0)) {
                throw new IllegalArgumentException(columns + " columns from " + from + " to " + to + " hold nothing");
            }
            this.from = from;
            this.columnsPerTime = columns / (to - from);
        }

        /**
         * Adds a corner.
         *
         * @param time its time, in the unit of the time axis, not before that of the corner added last
         * @param value its value, in the unit of the panel's axis
         */
        public void add(double time, double value) {
            long at = (long) Math.floor((time - from) * columnsPerTime);
            if (at != column) {
                endColumn();
                column = at;
                for (int slot = 0; slot < KEPT; slot++) {
                    see(slot, time, value);
                }
            }
            if (value < seenValues[1]) {
                see(1, time, value);
            }
            if (value > seenValues[2]) {
                see(2, time, value);
            }
            see(3, time, value);
            order++;
        }

        /**
         * The corners that are kept.
         *
         * @return the line
         * @throws IllegalArgumentException if none was added
         */
        public Points points() {
            endColumn();
            column = Long.MIN_VALUE;
            return Points.overTime(Arrays.copyOf(times, count), Arrays.copyOf(values, count));
        }

        private void see(int slot, double time, double value) {
            seenTimes[slot] = time;
            seenValues[slot] = value;
            seenOrder[slot] = order;
        }

        private void endColumn() {
            if (column == Long.MIN_VALUE) {
                return;
            }
            boolean fallsFirst = seenOrder[1] < seenOrder[2];
            int[] slots = {0, fallsFirst ? 1 : 2, fallsFirst ? 2 : 1, 3};
            long kept = -1;
            for (int slot : slots) {
                if (seenOrder[slot] > kept) {
                    keep(seenTimes[slot], seenValues[slot]);
                    kept = seenOrder[slot];
                }
            }
        }

        private void keep(double time, double value) {
            if (count == times.length) {
                times = Arrays.copyOf(times, 2 * count);
                values = Arrays.copyOf(values, 2 * count);
            }
            times[count] = time;
            values[count] = value;
            count++;
        }
    }
}
