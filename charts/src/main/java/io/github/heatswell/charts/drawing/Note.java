package io.github.heatswell.charts.drawing;

import java.awt.Color;

/**
 * Words about a point on a curve.
 *
 * @param x the point
 * @param y the point
 * @param clearance how far the words must stay away from it
 * @param words the words
 * @param color their colour
 */
record Note(double x, double y, double clearance, TextBlock words, Color color) {}
