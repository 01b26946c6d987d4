package io.github.heatswell.charts.drawing;

import io.github.heatswell.charts.picture.Bands;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;

/** Draws stretches of time as bars along the foot of a panel. */
final class BandBars {

    private static final double HEIGHT = 7;
    private static final double ABOVE_FOOT = 4;

    /** A bar narrower than this would not be seen. */
    private static final double NARROWEST = 1.6;

    private BandBars() {}

    /** The height on the sheet at which the bars stand. */
    static double middle(Frame frame) {
        return frame.area().bottom() - ABOVE_FOOT - HEIGHT / 2;
    }

    static void draw(Graphics2D g, Bands bands, Frame frame) {
        g.setPaint(Ink.TEMPERATURE);
        double top = middle(frame) - HEIGHT / 2;
        double start = Double.NaN;
        double end = Double.NEGATIVE_INFINITY;
        for (Bands.Span span : bands.spans()) {
            double from = frame.x(span.from());
            double to = Math.max(frame.x(span.to()), from + NARROWEST);
            if (from > end + NARROWEST) {
                fill(g, start, end, top);
                start = from;
            }
            end = to;
        }
        fill(g, start, end, top);
    }

    private static void fill(Graphics2D g, double from, double to, double top) {
        if (from < to) {
            g.fill(new Rectangle2D.Double(from, top, to - from, HEIGHT));
        }
    }
}
