package io.github.heatswell.charts.drawing;

import io.github.heatswell.charts.picture.Area;
import io.github.heatswell.charts.picture.Points;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** The patches of an area in logical pixels, filled or hatched by lines that are cut to them by computation. */
final class Patches {

    private static final double HATCH = 14;

    private final Area area;
    private final Frame frame;

    Patches(Area area, Frame frame) {
        this.area = area;
        this.frame = frame;
    }

    /** Fills them as their role asks; without width or height there is nothing to fill. */
    void fill(Graphics2D g) {
        if (outline().getBounds2D().isEmpty()) {
            return;
        }
        switch (area.role()) {
            case DRIPS, ENDED_EARLY -> {
                boolean drips = area.role() == Area.Role.DRIPS;
                Shape lines = hatching(HATCH, drips ? 1 : -1);
                g.setPaint(Ink.PAPER);
                g.setStroke(drips ? Ink.HALO : Ink.HATCH_LINE);
                g.draw(lines);
                if (drips) {
                    g.setPaint(Ink.RELIEF);
                    g.setStroke(Ink.HATCH_LINE);
                    g.draw(lines);
                }
            }
            default -> {
                g.setPaint(Ink.of(area));
                g.fill(outline());
            }
        }
    }

    Path2D outline() {
        Path2D path = new Path2D.Double(Path2D.WIND_EVEN_ODD);
        for (Points rim : area.rims()) {
            path.moveTo(frame.x(rim.across(0)), frame.y(rim.up(0)));
            for (int i = 1; i < rim.count(); i++) {
                path.lineTo(frame.x(rim.across(i)), frame.y(rim.up(i)));
            }
            path.closePath();
        }
        return path;
    }

    /**
     * Lines under 45 degrees.
     *
     * @param distance how far apart, measured along the foot
     * @param slope 1 if they rise to the right, -1 if they fall
     */
    Shape hatching(double distance, int slope) {
        Path2D lines = new Path2D.Double();
        Box room = frame.area();
        double last = room.right() + room.height();
        for (double start = room.x() - room.height(); start < last; start += distance) {
            addChords(lines, new Slant(start, room.bottom(), slope));
        }
        return lines;
    }

    private void addChords(Path2D lines, Slant slant) {
        List<Double> crossings = new ArrayList<>();
        for (Points rim : area.rims()) {
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
            double before = y0 - y(x0);
            double after = y1 - y(x1);
            if (before < 0 != after < 0) {
                found.add(x0 + (x1 - x0) * before / (before - after));
            }
        }
    }
}
