package io.github.heatswell.charts.picture;

import java.util.Arrays;

/**
 * The corners of a drawn line; closed, it is the rim of a patch. Two corners may stand over each other: the line then has a
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
}
