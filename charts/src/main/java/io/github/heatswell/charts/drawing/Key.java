package io.github.heatswell.charts.drawing;

import io.github.heatswell.charts.picture.Area;
import io.github.heatswell.charts.picture.Axis;
import io.github.heatswell.charts.picture.Curve;
import io.github.heatswell.charts.picture.Panel;
import io.github.heatswell.charts.picture.Points;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.util.ArrayList;
import java.util.List;

/** The key of a single panel: its bands, the highest on top, then the other patches and the lines. */
final class Key {

    private static final double SWATCH = 34;
    private static final double SWATCH_HEIGHT = 18;
    private static final double GAP = 9;
    private static final double BETWEEN = 6;
    private static final double GROUPS = 10;

    private final List<Entry> bands = new ArrayList<>();
    private final List<Entry> others = new ArrayList<>();
    private final TextBlock heading;

    /** One row: a patch or a line, and its words. */
    private record Entry(Area area, Curve line, TextBlock words) {

        double height() {
            return Math.max(SWATCH_HEIGHT, words.height());
        }
    }

    Key(Panel panel, String measured, double width) {
        double room = width - SWATCH - GAP;
        heading = TextBlock.of(measured, Type.HEADING, width);
        for (Area area : panel.areas()) {
            if (!area.name().isEmpty()) {
                Entry entry = new Entry(area, null, TextBlock.of(area.name(), Type.LABEL, room));
                if (area.role() == Area.Role.BAND) {
                    bands.add(0, entry);
                } else {
                    others.add(entry);
                }
            }
        }
        for (Curve line : panel.curves()) {
            if (!line.name().isEmpty()) {
                others.add(new Entry(null, line, TextBlock.of(line.name(), Type.LABEL, room)));
            }
        }
    }

    double height() {
        double tall = bands.isEmpty() ? 0 : heading.height() + BETWEEN + GROUPS;
        for (Entry entry : bands) {
            tall += entry.height();
        }
        for (Entry entry : others) {
            tall += entry.height() + BETWEEN;
        }
        return tall;
    }

    void draw(Graphics2D g, double x, double top) {
        double y = top;
        if (!bands.isEmpty()) {
            heading.draw(g, x, y, Ink.TEXT);
            y += heading.height() + BETWEEN;
            for (Entry entry : bands) {
                draw(g, entry, new Box(x, y, SWATCH, entry.height()));
                y += entry.height();
            }
            y += GROUPS;
        }
        for (Entry entry : others) {
            draw(g, entry, new Box(x, y, SWATCH, entry.height()));
            y += entry.height() + BETWEEN;
        }
    }

    private static void draw(Graphics2D g, Entry entry, Box box) {
        if (entry.area() != null) {
            drawPatch(g, entry.area(), box);
        } else {
            g.setPaint(Ink.of(entry.line().role()));
            g.setStroke(Strokes.of(entry.line().role()));
            double y = box.y() + SWATCH_HEIGHT / 2;
            g.draw(new Line2D.Double(box.x(), y, box.right(), y));
        }
        double words = entry.words().lineCount() == 1
                ? box.y() + (box.height() - entry.words().height()) / 2
                : box.y();
        entry.words().draw(g, box.right() + GAP, words, Ink.TEXT);
    }

    private static void drawPatch(Graphics2D g, Area area, Box room) {
        Box box = new Box(
                room.x(), room.y(), room.width(), area.role() == Area.Role.BAND ? room.height() : SWATCH_HEIGHT);
        Axis unit = new Axis("", 0, 1, 1);
        Points rim = new Points(new double[] {0, 1, 1, 0}, new double[] {0, 0, 1, 1});
        Area whole = new Area(area.role(), area.shade(), "", "", List.of(rim));
        if (area.role() == Area.Role.ENDED_EARLY) {
            g.setPaint(Ink.band(1));
            g.fill(box.shape());
        }
        new Patches(whole, new Frame(box, unit, unit)).fill(g);
        g.setPaint(Ink.FOOT);
        g.setStroke(Strokes.HAIR);
        g.draw(box.shape());
    }
}
