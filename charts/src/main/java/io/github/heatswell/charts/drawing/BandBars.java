package io.github.heatswell.charts.drawing;

import io.github.heatswell.charts.picture.Panel.Bands;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

/**
 * Draws time spans as bars in lanes along the bottom of a panel. The lane's name and the style of its bars (solid,
 * ticks on a line, hollow, split or hatched) tell what was on.
 */
final class BandBars {

    private static final double HEIGHT = 7;
    private static final double LANE = 14;
    private static final double ABOVE_FOOT = 4;
    private static final double HATCH = 3.5;
    private static final double SHUT_OFF_HATCH = 11;

    /** A bar narrower than this would not be seen. */
    private static final double NARROWEST = 1.6;

    private BandBars() {}

    /** The height that the lanes of a panel take at its foot. */
    static double height(List<Bands> lanes) {
        return lanes.isEmpty() ? 0 : ABOVE_FOOT + LANE * lanes.size();
    }

    /** The height on the sheet at which the bars of a lane stand. */
    static double middle(Frame frame, int lane) {
        return frame.area().bottom() - ABOVE_FOOT - HEIGHT / 2 - lane * LANE;
    }

    static void draw(Graphics2D g, List<Bands> lanes, Frame frame) {
        for (int lane = 0; lane < lanes.size(); lane++) {
            Bands bands = lanes.get(lane);
            double middle = middle(frame, lane);
            g.setPaint(Ink.of(bands.kind()));
            g.setStroke(Ink.HAIR);
            if (bands.kind() == Bands.Kind.DRAWS) {
                g.draw(new Line2D.Double(frame.area().x(), middle, frame.area().right(), middle));
            }
            for (Box bar : bars(bands, frame, middle)) {
                drawBar(g, bands.kind(), bar);
            }
        }
    }

    /** The bars of a lane; those that would touch each other are one. */
    private static List<Box> bars(Bands bands, Frame frame, double middle) {
        List<Box> bars = new ArrayList<>();
        double start = Double.NaN;
        double end = Double.NEGATIVE_INFINITY;
        for (Bands.Span span : bands.spans()) {
            double from = frame.x(span.from());
            double to = Math.max(frame.x(span.to()), from + NARROWEST);
            if (from > end + NARROWEST) {
                add(bars, start, end, middle);
                start = from;
            }
            end = Math.max(end, to);
        }
        add(bars, start, end, middle);
        return bars;
    }

    private static void add(List<Box> bars, double from, double to, double middle) {
        if (from < to) {
            bars.add(new Box(from, middle - HEIGHT / 2, to - from, HEIGHT));
        }
    }

    /** Hatches the whole height of a panel while the supply was shut off. */
    static void drawShutOff(Graphics2D g, Bands.Span span, Frame frame) {
        double left = frame.x(span.from());
        double width = Math.max(1, frame.x(span.to()) - left);
        Box box = new Box(left, frame.area().y(), width, frame.area().height());
        g.setPaint(Ink.HATCH);
        g.setStroke(Ink.HAIR);
        g.draw(box.hatching(SHUT_OFF_HATCH));
        g.draw(box.shape());
    }

    private static void drawBar(Graphics2D g, Bands.Kind kind, Box bar) {
        switch (kind) {
            case HEATER, DRAWS -> g.fill(bar.shape());
            case BYPASS -> {
                g.setStroke(Ink.RIM);
                g.draw(bar.grownBy(-0.7).shape());
            }
            case RELIEF -> {
                double third = bar.height() / 3;
                g.fill(new Rectangle2D.Double(bar.x(), bar.y(), bar.width(), third));
                g.fill(new Rectangle2D.Double(bar.x(), bar.bottom() - third, bar.width(), third));
            }
            case SUPPLY_OFF -> {
                g.draw(bar.shape());
                g.draw(bar.hatching(HATCH));
            }
        }
    }
}
