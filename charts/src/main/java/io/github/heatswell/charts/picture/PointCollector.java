package io.github.heatswell.charts.picture;

import java.util.Arrays;

/**
 * Collects the corners of a line and keeps only as many as can be seen. The width is cut into columns; of each column
 * the first, the lowest, the highest and the last corner are kept, in their order, so that no peak is lost however long
 * the run was.
 */
public final class PointCollector {

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
