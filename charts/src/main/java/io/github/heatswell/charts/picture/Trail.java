package io.github.heatswell.charts.picture;

import java.util.Arrays;

/**
 * The corners of a line that may run in any direction over a plane; closed, it is the rim of a patch. Immutable.
 */
public final class Trail {

    private final double[] across;
    private final double[] up;

    /**
     * Copies the corners.
     *
     * @param across the places along the axis to the right, in its unit
     * @param up the places along the axis upwards, in its unit
     * @throws IllegalArgumentException if there are more of one than of the other, or none at all
     */
    public Trail(double[] across, double[] up) {
        if (across.length != up.length || across.length == 0) {
            throw new IllegalArgumentException(
                    "a line of " + across.length + " places across and " + up.length + " up cannot be drawn");
        }
        this.across = across.clone();
        this.up = up.clone();
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
    public static Trail straight(double fromAcross, double fromUp, double toAcross, double toUp) {
        return new Trail(new double[] {fromAcross, toAcross}, new double[] {fromUp, toUp});
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
     * The place of a corner along the axis to the right.
     *
     * @param index the number of the corner
     * @return the place, in the unit of the axis
     */
    public double across(int index) {
        return across[index];
    }

    /**
     * The place of a corner along the axis upwards.
     *
     * @param index the number of the corner
     * @return the place, in the unit of the axis
     */
    public double up(int index) {
        return up[index];
    }

    /**
     * Whether the line runs straight up.
     *
     * @return true if it has at least two corners, all at the same place across
     */
    public boolean isUpright() {
        return across.length > 1 && Arrays.stream(across).allMatch(x -> x == across[0]);
    }

    /** {@return every corner, so that pictures can be told apart by their words} */
    @Override
    public String toString() {
        return Arrays.toString(across) + Arrays.toString(up);
    }
}
