package io.github.heatswell.charts.drawing;

import java.awt.Color;
import java.util.List;

/**
 * Words about a point on a curve.
 *
 * @param x the point
 * @param y the point
 * @param clearance how far the words must stay away from it
 * @param shapes the words broken into lines in more than one way, any of which will do
 * @param color their colour
 */
record Note(double x, double y, double clearance, List<TextBlock> shapes, Color color) {

    /** Copies the shapes. */
    Note {
        shapes = List.copyOf(shapes);
    }
}
