package io.github.heatswell.charts.drawing;

import java.awt.Shape;
import java.awt.geom.Path2D;

/** Slanting lines that fill a box, cut to it by computation, so that no clip is needed. */
final class Hatching {

    private Hatching() {}

    static Shape of(Box box, double distance) {
        Path2D lines = new Path2D.Double();
        for (double start = box.x() - box.height(); start < box.right(); start += distance) {
            double from = Math.max(start, box.x());
            double to = Math.min(start + box.height(), box.right());
            if (from < to) {
                lines.moveTo(from, box.bottom() - (from - start));
                lines.lineTo(to, box.bottom() - (to - start));
            }
        }
        return lines;
    }
}
