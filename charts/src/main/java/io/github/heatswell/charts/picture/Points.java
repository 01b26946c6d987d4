package io.github.heatswell.charts.picture;

import java.util.Arrays;

/**
 * The corners of a drawn line, in the order of time. Two corners may share a moment: the line then has a vertical edge.
 * Immutable.
 */
public final class Points {

    private final double[] times;
    private final double[] values;

    /**
     * Copies the corners.
     *
     * @param times the times, in the unit of the time axis, never falling
     * @param values the values, in the unit of the panel's axis
     * @throws IllegalArgumentException if there are more of one than of the other, none at all, or if time runs back
     */
    public Points(double[] times, double[] values) {
        if (times.length != values.length || times.length == 0) {
            throw new IllegalArgumentException(
                    "a line of " + times.length + " times and " + values.length + " values cannot be drawn");
        }
        for (int i = 1; i < times.length; i++) {
            if (!(times[i] >= times[i - 1])) {
                throw new IllegalArgumentException("time runs back from " + times[i - 1] + " to " + times[i]);
            }
        }
        this.times = times.clone();
        this.values = values.clone();
    }

    /**
     * The number of corners.
     *
     * @return the number, at least 1
     */
    public int count() {
        return times.length;
    }

    /**
     * The time of a corner.
     *
     * @param index the number of the corner
     * @return the time, in the unit of the time axis
     */
    public double time(int index) {
        return times[index];
    }

    /**
     * The value at a corner.
     *
     * @param index the number of the corner
     * @return the value, in the unit of the panel's axis
     */
    public double value(int index) {
        return values[index];
    }

    /**
     * The smallest value.
     *
     * @return the value, in the unit of the panel's axis
     */
    public double lowest() {
        return Arrays.stream(values).min().orElseThrow();
    }

    /**
     * The largest value.
     *
     * @return the value, in the unit of the panel's axis
     */
    public double highest() {
        return Arrays.stream(values).max().orElseThrow();
    }

    /**
     * All corners at once.
     *
     * @return a copy: the times first, then the values, each in the unit of its axis
     */
    public double[][] toArrays() {
        return new double[][] {times.clone(), values.clone()};
    }
}
