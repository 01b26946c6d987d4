package io.github.heatswell.charts.drawing;

import io.github.heatswell.charts.picture.Axis;
import io.github.heatswell.charts.picture.Points;
import java.awt.geom.Line2D;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Where a panel's lines lie on the sheet.
 *
 * @param area the room of the lines, in logical pixels
 * @param across the axis to the right
 * @param up the axis upwards
 */
record Frame(Box area, Axis across, Axis up) {

    double x(double at) {
        return area.x() + (at - across.from()) / (across.to() - across.from()) * area.width();
    }

    double y(double value) {
        return area.bottom() - (value - up.from()) / (up.to() - up.from()) * area.height();
    }

    /** A line cut at its corners. */
    List<Line2D> pieces(Points points) {
        return IntStream.range(1, points.count())
                .mapToObj(i -> (Line2D) new Line2D.Double(
                        x(points.across(i - 1)), y(points.up(i - 1)), x(points.across(i)), y(points.up(i))))
                .toList();
    }
}
