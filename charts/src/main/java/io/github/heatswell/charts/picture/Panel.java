package io.github.heatswell.charts.picture;

import java.util.List;
import java.util.Objects;

/**
 * One of the two drawings that share a time axis.
 *
 * @param axis the scale of the values
 * @param curves the lines
 * @param levels the values that do not change
 * @param marks the moments marked on the lines, in the order of time
 * @param bands the bars along the foot
 */
public record Panel(Axis axis, List<Curve> curves, List<Level> levels, List<Mark> marks, Bands bands) {

    /**
     * Copies the lists.
     *
     * @param axis the scale of the values
     * @param curves the lines
     * @param levels the values that do not change
     * @param marks the moments marked on the lines, in the order of time
     * @param bands the bars along the foot
     */
    public Panel {
        Objects.requireNonNull(axis, "axis");
        Objects.requireNonNull(bands, "bands");
        curves = List.copyOf(curves);
        levels = List.copyOf(levels);
        marks = List.copyOf(marks);
    }
}
