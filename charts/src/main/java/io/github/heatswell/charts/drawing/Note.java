package io.github.heatswell.charts.drawing;

import io.github.heatswell.charts.picture.Curve;
import java.awt.Color;
import java.util.List;
import java.util.Optional;

/**
 * Words about a point on a curve.
 *
 * @param x the point
 * @param y the point
 * @param clearance how far the words must stay away from it
 * @param shapes the words broken into lines in more than one way, any of which will do
 * @param color their colour
 * @param named the curve whose name they are; none if they are about a mark
 */
record Note(double x, double y, double clearance, List<TextBlock> shapes, Color color, Optional<Curve.Role> named) {

    /** Copies the shapes. */
    Note {
        shapes = List.copyOf(shapes);
    }
}
