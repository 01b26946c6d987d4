package io.github.heatswell.charts.picture;

import java.util.List;
import java.util.Objects;

/**
 * What is drawn over two axes: patches below, lines over them, points on top.
 *
 * @param across the axis to the right
 * @param up the axis upwards
 * @param measured what the bands of the key say, with its reference, or empty without bands
 * @param tints the patches, the lowest first
 * @param lines the lines, the lowest first
 * @param spots the points, the most important first
 */
public record Plane(Axis across, Axis up, String measured, List<Tint> tints, List<PlaneLine> lines, List<Spot> spots) {

    /**
     * Copies the lists.
     *
     * @param across the axis to the right
     * @param up the axis upwards
     * @param measured what the bands of the key say, with its reference, or empty without bands
     * @param tints the patches, the lowest first
     * @param lines the lines, the lowest first
     * @param spots the points, the most important first
     */
    public Plane {
        Objects.requireNonNull(across, "across");
        Objects.requireNonNull(up, "up");
        measured = PlainText.of(Objects.requireNonNull(measured, "measured"));
        tints = List.copyOf(Objects.requireNonNull(tints, "tints"));
        lines = List.copyOf(Objects.requireNonNull(lines, "lines"));
        spots = List.copyOf(Objects.requireNonNull(spots, "spots"));
    }
}
