package io.github.heatswell.charts.drawing;

import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;

/** Draws a line's name beside the plot and leads the line to it. */
final class CalloutDrawing {

    private static final double STUB = 5;
    private static final double GAP = 5;

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
            drawLead(g, edge, textX - GAP);
        } else {
            drawArrow(g, edge);
        }
        callout.words().draw(g, textX, top, Ink.TEXT);
    }

    private double firstLine() {
        return top + Type.lineHeight(Type.LABEL) / 2;
    }

    private void drawLead(Graphics2D g, double from, double to) {
        g.setPaint(callout.color());
        double at = callout.at();
        g.setStroke(callout.look());
        Path2D lead = new Path2D.Double();
        lead.moveTo(from, at);
        lead.lineTo(from + STUB, at);
        lead.lineTo(to - STUB, firstLine());
        lead.lineTo(to, firstLine());
        g.draw(lead);
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
