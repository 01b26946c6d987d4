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
}
