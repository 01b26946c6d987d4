package io.github.heatswell.charts.drawing;

import io.github.heatswell.charts.picture.Plane;
import io.github.heatswell.charts.picture.PlaneLine;
import io.github.heatswell.charts.picture.Spot;
import io.github.heatswell.charts.picture.Tint;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.List;

/** Draws what lies on a plane. */
final class PlaneDrawing {

    private static final double HATCH = 14;

    private final Plane plane;
    private final Frame frame;

    PlaneDrawing(Plane plane, Frame frame) {
        this.plane = plane;
        this.frame = frame;
    }

    void draw(Graphics2D g) {
        PlaneAxes axes = new PlaneAxes(frame);
        if (plane.tints().isEmpty()) {
            axes.drawGrid(g);
        }
        plane.tints().forEach(tint -> fill(g, tint, frame));
        plane.lines().forEach(line -> drawLine(g, line));
        axes.drawScales(g);
        List<PlaneWords.Placed> words = PlaneWords.of(plane, frame);
        for (PlaneWords.Placed placed : words) {
            drawLeader(g, placed);
            Paper.behind(g, placed.box());
            placed.text().draw(g, placed.box().x(), placed.box().y(), Ink.TEXT);
        }
        for (int i = plane.spots().size() - 1; i >= 0; i--) {
            drawSpot(g, plane.spots().get(i));
        }
    }

    /** Fills patches as their role asks. */
    static void fill(Graphics2D g, Tint tint, Frame frame) {
        if (tint.role() == Tint.Role.BAND) {
            g.setPaint(PlaneInk.band(tint.shade()));
            g.fill(PlaneShapes.patches(tint, frame));
            return;
        }
        boolean drips = tint.role() == Tint.Role.DRIPS;
        Shape lines = PlaneShapes.hatching(tint, frame, HATCH, drips ? 1 : -1);
        g.setPaint(Ink.PAPER);
        g.setStroke(drips ? PlaneInk.HALO : PlaneInk.HATCH);
        g.draw(lines);
        if (drips) {
            g.setPaint(Ink.RELIEF);
            g.setStroke(PlaneInk.HATCH);
            g.draw(lines);
        }
    }

    private void drawLine(Graphics2D g, PlaneLine line) {
        Path2D path = PlaneShapes.line(line.trail(), frame);
        if (!plane.tints().isEmpty()) {
            g.setPaint(Ink.PAPER);
            g.setStroke(PlaneInk.halo(line.role()));
            g.draw(path);
        }
        g.setPaint(PlaneInk.color(line.role()));
        g.setStroke(PlaneInk.stroke(line.role()));
        g.draw(path);
    }

    private void drawLeader(Graphics2D g, PlaneWords.Placed placed) {
        if (placed.spot() == null) {
            return;
        }
        double px = frame.x(placed.spot().across());
        double py = frame.y(placed.spot().up());
        if (placed.box().distanceTo(px, py) > 20) {
            double x = Math.max(placed.box().x(), Math.min(px, placed.box().right()));
            double y = Math.max(placed.box().y(), Math.min(py, placed.box().bottom()));
            Line2D leader = new Line2D.Double(px, py, x, y);
            g.setPaint(Ink.PAPER);
            g.setStroke(PlaneInk.HALO);
            g.draw(leader);
            g.setPaint(Ink.LEADER);
            g.setStroke(Strokes.LEADER);
            g.draw(leader);
        }
    }

    private void drawSpot(Graphics2D g, Spot spot) {
        double x = frame.x(spot.across());
        double y = frame.y(spot.up());
        switch (spot.role()) {
            case CHIEF -> paint(g, diamond(x, y, 8.5), true);
            case READING -> paint(g, new Ellipse2D.Double(x - 5, y - 5, 10, 10), true);
            case FAILING -> paint(g, new Rectangle2D.Double(x - 4.5, y - 4.5, 9, 9), false);
        }
    }

    private static void paint(Graphics2D g, Shape shape, boolean full) {
        g.setPaint(full ? Ink.TEXT : Ink.PAPER);
        g.fill(shape);
        g.setPaint(full ? Ink.PAPER : Ink.RELIEF);
        g.setStroke(Strokes.RIM);
        g.draw(shape);
    }

    private static Shape diamond(double x, double y, double half) {
        Path2D path = new Path2D.Double();
        path.moveTo(x, y - half);
        path.lineTo(x + half, y);
        path.lineTo(x, y + half);
        path.lineTo(x - half, y);
        path.closePath();
        return path;
    }
}
