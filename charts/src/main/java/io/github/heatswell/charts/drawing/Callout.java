package io.github.heatswell.charts.drawing;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.util.Optional;

/**
 * A line's name beside the plot. A thin grey leader runs from a dot where the line ends to the name; an upright sample
 * of the line stands before the name of a curve. Nothing beside the plot continues in a curve's colour, width or
 * direction, so that no leader is mistaken for the curve.
 *
 * @param at the height (logical pixels) at which the line meets the edge of the plot
 * @param side whether the line lies on the scale or beyond one of its ends
 * @param words the name
 * @param sample how the line is drawn, for a sample before the name; none where the words alone tell which line it is
 * @param color the line's own colour
 */
record Callout(double at, Side side, TextBlock words, Optional<BasicStroke> sample, Color color) {

    private static final double DOT = 3.4;
    private static final double FROM_EDGE = 5;
    /** The upright sample, before the words. */
    private static final double SAMPLE = 6;

    private static final double GAP = 4;

    /** Where a line lies. */
    enum Side {
        /** On the scale. */
        WITHIN,
        /** Above its upper end. */
        ABOVE,
        /** Below its lower end. */
        BELOW
    }

    /**
     * Draws it.
     *
     * @param g where to
     * @param plot the room of the lines
     * @param top where the words begin (logical pixels)
     */
    void draw(Graphics2D g, Box plot, double top) {
        double edge = plot.right();
        double textX = edge + Gutter.LEAD;
        double firstLine = top + Type.lineHeight(Type.LABEL) / 2;
        if (side == Side.WITHIN) {
            drawLeader(g, edge + FROM_EDGE, textX - SAMPLE - GAP, firstLine);
        } else {
            drawArrow(g, edge, firstLine);
        }
        sample.ifPresent(stroke -> drawSample(g, stroke, textX - SAMPLE, top));
        words.draw(g, textX, top, Ink.TEXT);
    }

    private void drawLeader(Graphics2D g, double from, double to, double firstLine) {
        g.setPaint(Ink.LEADER);
        g.setStroke(Strokes.LEADER);
        g.draw(new Line2D.Double(from, at, to, firstLine));
        g.fill(new Ellipse2D.Double(from - DOT / 2, at - DOT / 2, DOT, DOT));
    }

    private void drawSample(Graphics2D g, BasicStroke stroke, double x, double top) {
        g.setPaint(color);
        g.setStroke(stroke);
        g.draw(new Line2D.Double(x, top + 1, x, top + words.height() - 1));
    }

    /** An arrow over the edge of the plot: the line lies out there. */
    private void drawArrow(Graphics2D g, double edge, double firstLine) {
        double direction = side == Side.ABOVE ? -1 : 1;
        double x = edge + Gutter.LEAD / 2 - 1;
        g.setPaint(color);
        g.setStroke(Strokes.LEADER);
        g.draw(new Line2D.Double(x, firstLine - 6 * direction, x, firstLine));
        Path2D head = new Path2D.Double();
        head.moveTo(x, firstLine + 6 * direction);
        head.lineTo(x - 4, firstLine - direction);
        head.lineTo(x + 4, firstLine - direction);
        head.closePath();
        g.fill(head);
    }
}
