package io.github.heatswell.charts.drawing;

import io.github.heatswell.charts.picture.Panel.Mark;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Arc2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;

/** Shapes of marks: the shape tells what happened, even in a grey print. */
final class MarkShapes {

    private static final BasicStroke RIM = new BasicStroke(1.6f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND);
    private static final BasicStroke CROSS = new BasicStroke(2.6f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND);

    private MarkShapes() {}

    /** The room a mark takes. */
    static Box room(Mark.Kind kind, double x, double y) {
        double half = kind == Mark.Kind.HAZARD ? 11 : 7;
        return new Box(x - half, y - half, 2 * half, 2 * half);
    }

    /** Draws a mark where it lies. */
    static void draw(Graphics2D g, Mark mark, Frame frame) {
        draw(g, mark.kind(), mark.device(), frame.x(mark.across()), frame.y(mark.up()));
    }

    /** Draws a mark about a point. */
    static void draw(Graphics2D g, Mark.Kind kind, int device, double x, double y) {
        switch (kind) {
            case HAZARD -> {
                paint(g, polygon(x, y, 10.5, 8, Math.PI / 8), Ink.ALARM, Ink.PAPER);
                g.setPaint(Ink.PAPER);
                g.setStroke(CROSS);
                g.draw(cross(x, y, 3.8));
            }
            case CUT_OUT_TRIPPED -> {
                paint(g, new Ellipse2D.Double(x - 7, y - 7, 14, 14), Ink.TEXT, Ink.PAPER);
                g.setPaint(Ink.PAPER);
                g.fill(new Rectangle2D.Double(x - 4, y - 1.4, 8, 2.8));
            }
            case WORKING_PRESSURE_EXCEEDED -> paint(g, polygon(x, y, 7, 4, 0), Ink.TEXT, Ink.PAPER);
            case RELIEF_OPENED -> paint(g, device(device, x, y, -1), Ink.RELIEF, Ink.PAPER);
            case RELIEF_OPENED_HOT -> {
                paint(g, device(device, x, y, -1), Ink.RELIEF, Ink.PAPER);
                g.setPaint(Ink.RELIEF);
                g.setStroke(CROSS);
                g.draw(new Line2D.Double(x, y + 5, x, y + 10));
            }
            case RELIEF_RESEATED -> paint(g, device(device, x, y, 1), Ink.PAPER, Ink.RELIEF);
            case VESSEL_FULL -> paint(g, polygon(x, y, 7, 4, Math.PI / 4), Ink.PRECHARGE, Ink.PAPER);
            case CHIEF -> paint(g, polygon(x, y, 8.5, 4, 0), Ink.TEXT, Ink.PAPER);
            case READING -> paint(g, new Ellipse2D.Double(x - 5, y - 5, 10, 10), Ink.TEXT, Ink.PAPER);
            case FAILING -> paint(g, new Rectangle2D.Double(x - 4.5, y - 4.5, 9, 9), Ink.PAPER, Ink.RELIEF);
            case HIGHEST -> paint(g, new Ellipse2D.Double(x - 4, y - 4, 8, 8), Ink.PAPER, Ink.PRESSURE);
        }
    }

    /** The shape of a relief device: a triangle, a half disc, a pentagon or an arrow head, pointing up or down. */
    private static Shape device(int device, double x, double y, int up) {
        return switch (device % 4) {
            case 0 -> polygon(x, y, up < 0 ? 6.6 : 6.2, 3, up * Math.PI / 2);
            case 1 -> new Arc2D.Double(x - 6.6, y - 6.6 - up * 3, 13.2, 13.2, up < 0 ? 0 : 180, 180, Arc2D.CHORD);
            case 2 -> polygon(x, y, 6.4, 5, up * Math.PI / 2);
            default -> {
                Path2D head = new Path2D.Double();
                head.moveTo(x, y + up * 6.8);
                head.lineTo(x + 6.2, y - up * 5);
                head.lineTo(x, y - up * 1.2);
                head.lineTo(x - 6.2, y - up * 5);
                head.closePath();
                yield head;
            }
        };
    }

    static Color color(Mark.Kind kind) {
        return kind == Mark.Kind.HAZARD ? Ink.ALARM : Ink.TEXT;
    }

    private static void paint(Graphics2D g, Shape shape, Color fill, Color rim) {
        g.setPaint(fill);
        g.fill(shape);
        g.setPaint(rim);
        g.setStroke(RIM);
        g.draw(shape);
    }

    private static Shape polygon(double x, double y, double radius, int corners, double turn) {
        Path2D path = new Path2D.Double();
        for (int i = 0; i < corners; i++) {
            double angle = turn + 2 * Math.PI * i / corners;
            double px = x + radius * Math.cos(angle);
            double py = y + radius * Math.sin(angle);
            if (i == 0) {
                path.moveTo(px, py);
            } else {
                path.lineTo(px, py);
            }
        }
        path.closePath();
        return path;
    }

    private static Shape cross(double x, double y, double half) {
        Path2D path = new Path2D.Double();
        path.moveTo(x - half, y - half);
        path.lineTo(x + half, y + half);
        path.moveTo(x + half, y - half);
        path.lineTo(x - half, y + half);
        return path;
    }
}
