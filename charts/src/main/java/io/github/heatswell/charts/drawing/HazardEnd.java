package io.github.heatswell.charts.drawing;

import java.awt.Graphics2D;
import java.awt.geom.Line2D;

/** Draws the end of a run that a hazard cut short: a heavy line, and hatching where nothing is known. */
final class HazardEnd {

    private static final double HATCH = 9;
    private static final double CLEAR = 8;

    private HazardEnd() {}

    static void draw(Graphics2D g, Frame frame, double time) {
        Box area = frame.area();
        double x = frame.x(time);
        Box beyond = new Box(x, area.y(), area.right() - x, area.height());
        g.setPaint(Ink.GRID.darker());
        g.setStroke(Strokes.HAIR);
        g.draw(Hatching.of(beyond, HATCH));
        g.setPaint(Ink.ALARM);
        g.setStroke(Strokes.END);
        g.draw(new Line2D.Double(x, area.y(), x, area.bottom()));
    }

    /** The larger part of a panel that the end line leaves for words. */
    static Box roomBeside(Frame frame, double time) {
        Box area = frame.area();
        double x = frame.x(time);
        double before = x - area.x();
        return before >= area.width() / 2
                ? new Box(area.x(), area.y(), before - CLEAR, area.height())
                : new Box(x + CLEAR, area.y(), area.width() - before - CLEAR, area.height());
    }
}
