package io.github.heatswell.charts.drawing;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;

/**
 * Draws a line's name beside the plot. A thin grey leader runs from a dot where the line ends to the name; an upright sample
 * of the line stands before the name of a curve. Nothing beside the plot goes on in a curve's colour, width or direction, so
 * that nobody takes a leader for the curve.
 */
final class CalloutDrawing {

    private static final double DOT = 3.4;
    private static final double FROM_EDGE = 5;
    /** The upright sample, before the words. */
    private static final double SAMPLE = 6;

    private static final double GAP = 4;

    private final Frame frame;
    private final Callout callout;
    private final double top;

    CalloutDrawing(Frame frame, Callout callout, double top) {
        this.frame = frame;
        this.callout = callout;
        this.top = top;
    }

    void draw(Graphics2D g) {
        double edge = frame.area().right();
        double textX = edge + Gutter.LEAD;
        if (callout.side() == Callout.Side.WITHIN) {
            drawLeader(g, edge + FROM_EDGE, textX - SAMPLE - GAP);
        } else {
            drawArrow(g, edge);
        }
        callout.sample().ifPresent(stroke -> drawSample(g, stroke, textX - SAMPLE));
        callout.words().draw(g, textX, top, Ink.TEXT);
    }

    private double firstLine() {
        return top + Type.lineHeight(Type.LABEL) / 2;
    }

    private void drawLeader(Graphics2D g, double from, double to) {
        double at = callout.at();
        g.setPaint(Ink.LEADER);
        g.setStroke(Strokes.LEADER);
        g.draw(new Line2D.Double(from, at, to, firstLine()));
        g.fill(new Ellipse2D.Double(from - DOT / 2, at - DOT / 2, DOT, DOT));
    }

    private void drawSample(Graphics2D g, BasicStroke stroke, double x) {
        g.setPaint(callout.color());
        g.setStroke(stroke);
        g.draw(new Line2D.Double(x, top + 1, x, top + callout.words().height() - 1));
    }

    /** An arrow over the edge of the plot: the line lies out there. */
    private void drawArrow(Graphics2D g, double edge) {
        double direction = callout.side() == Callout.Side.ABOVE ? -1 : 1;
        double x = edge + Gutter.LEAD / 2 - 1;
        double middle = firstLine();
        g.setPaint(callout.color());
        g.setStroke(Strokes.LEADER);
        g.draw(new Line2D.Double(x, middle - 6 * direction, x, middle));
        Path2D head = new Path2D.Double();
        head.moveTo(x, middle + 6 * direction);
        head.lineTo(x - 4, middle - direction);
        head.lineTo(x + 4, middle - direction);
        head.closePath();
        g.fill(head);
    }
}
