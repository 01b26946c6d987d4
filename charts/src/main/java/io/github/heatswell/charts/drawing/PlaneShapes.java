package io.github.heatswell.charts.drawing;

import io.github.heatswell.charts.picture.Tint;
import io.github.heatswell.charts.picture.Trail;
import java.awt.Shape;
import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** Trails and patches of a plane in logical pixels, and hatching cut to them by computation. */
final class PlaneShapes {

    private PlaneShapes() {}

    static Path2D line(Trail trail, Frame frame) {
        Path2D path = new Path2D.Double(Path2D.WIND_EVEN_ODD);
        append(path, trail, frame);
        return path;
    }

    static Path2D patches(Tint tint, Frame frame) {
        Path2D path = new Path2D.Double(Path2D.WIND_EVEN_ODD);
        for (Trail rim : tint.rims()) {
            append(path, rim, frame);
            path.closePath();
        }
        return path;
    }

    private static void append(Path2D path, Trail trail, Frame frame) {
        path.moveTo(frame.x(trail.across(0)), frame.y(trail.up(0)));
        for (int i = 1; i < trail.count(); i++) {
            path.lineTo(frame.x(trail.across(i)), frame.y(trail.up(i)));
        }
    }

    /**
     * Slanting lines inside patches.
     *
     * @param tint the patches
     * @param frame where the plane lies
     * @param distance how far the lines are apart, measured across
     * @param slope 1 to rise to the right, -1 to fall
     */
    static Shape hatching(Tint tint, Frame frame, double distance, int slope) {
        Path2D lines = new Path2D.Double();
        Box area = frame.area();
        double first = area.x() - area.height();
        double last = area.right() + area.height();
        for (double start = first; start < last; start += distance) {
            addChords(lines, tint, frame, new Slant(start, area.bottom(), slope));
        }
        return lines;
    }

    private static void addChords(Path2D lines, Tint tint, Frame frame, Slant slant) {
        List<Double> crossings = new ArrayList<>();
        for (Trail rim : tint.rims()) {
            for (int i = 0; i < rim.count(); i++) {
                int next = (i + 1) % rim.count();
                double x = frame.x(rim.across(i));
                double y = frame.y(rim.up(i));
                slant.cross(x, y, frame.x(rim.across(next)), frame.y(rim.up(next)), crossings);
            }
        }
        Collections.sort(crossings);
        for (int i = 0; i + 1 < crossings.size(); i += 2) {
            lines.moveTo(crossings.get(i), slant.y(crossings.get(i)));
            lines.lineTo(crossings.get(i + 1), slant.y(crossings.get(i + 1)));
        }
    }

    /** A line under 45 degrees through a point of the foot. */
    private record Slant(double start, double foot, int slope) {

        double y(double x) {
            return foot - slope * (x - start);
        }

        void cross(double x0, double y0, double x1, double y1, List<Double> found) {
            double before = off(x0, y0);
            double after = off(x1, y1);
            if (before < 0 != after < 0) {
                found.add(x0 + (x1 - x0) * before / (before - after));
            }
        }

        private double off(double x, double y) {
            return y - y(x);
        }
    }
}
