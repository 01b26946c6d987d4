package io.github.heatswell.charts.drawing;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Rectangle2D;

/** The empty sheet, and how finely is drawn on it. */
final class Paper {

    private Paper() {}

    static void prepare(Graphics2D g, double width, double height) {
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        g.setPaint(Ink.PAPER);
        g.fill(new Rectangle2D.Double(0, 0, width, height));
    }

    /** Paper behind words, so that lines do not run through them. */
    static void behind(Graphics2D g, Box words) {
        g.setPaint(Ink.PAPER);
        g.fill(words.grownBy(2).shape());
    }
}
