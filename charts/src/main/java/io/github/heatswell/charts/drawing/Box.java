package io.github.heatswell.charts.drawing;

import java.awt.Shape;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;

/**
 * A rectangle on the sheet, in logical pixels.
 *
 * @param x its left edge
 * @param y its upper edge
 * @param width its width
 * @param height its height
 */
record Box(double x, double y, double width, double height) {

    static Box of(Rectangle2D area) {
        return new Box(area.getX(), area.getY(), area.getWidth(), area.getHeight());
    }

    double right() {
        return x + width;
    }

    double bottom() {
        return y + height;
    }

    double centreX() {
        return x + width / 2;
    }

    double centreY() {
        return y + height / 2;
    }

    Box grownBy(double margin) {
        return new Box(x - margin, y - margin, width + 2 * margin, height + 2 * margin);
    }

    boolean meets(Box other) {
        return x < other.right() && other.x < right() && y < other.bottom() && other.y < bottom();
    }

    boolean holds(Box other) {
        return other.x >= x && other.y >= y && other.right() <= right() && other.bottom() <= bottom();
    }

    /** How far a point lies outside, 0 if it lies within. */
    double distanceTo(double px, double py) {
        double dx = Math.max(0, Math.max(x - px, px - right()));
        double dy = Math.max(0, Math.max(y - py, py - bottom()));
        return Math.hypot(dx, dy);
    }

    /** The straight line from a point to the nearest place of the rim. */
    Line2D lineFrom(double px, double py) {
        return new Line2D.Double(px, py, Math.max(x, Math.min(px, right())), Math.max(y, Math.min(py, bottom())));
    }

    /** Rising lines that fill it, cut to it by computation, so that no clip is needed. */
    Shape hatching(double distance) {
        Path2D lines = new Path2D.Double();
        for (double start = x - height; start < right(); start += distance) {
            double from = Math.max(start, x);
            double to = Math.min(start + height, right());
            if (from < to) {
                lines.moveTo(from, bottom() - (from - start));
                lines.lineTo(to, bottom() - (to - start));
            }
        }
        return lines;
    }

    Rectangle2D shape() {
        return new Rectangle2D.Double(x, y, width, height);
    }
}
