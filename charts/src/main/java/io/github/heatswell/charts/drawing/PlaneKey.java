package io.github.heatswell.charts.drawing;

import io.github.heatswell.charts.picture.Axis;
import io.github.heatswell.charts.picture.Plane;
import io.github.heatswell.charts.picture.PlaneLine;
import io.github.heatswell.charts.picture.Tint;
import io.github.heatswell.charts.picture.Trail;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.util.ArrayList;
import java.util.List;

/** The key of a plane: its bands, the highest on top, then the other patches and the lines. */
final class PlaneKey {

    private static final double SWATCH = 34;
    private static final double SWATCH_HEIGHT = 18;
    private static final double GAP = 9;
    private static final double BETWEEN = 6;
    private static final double GROUPS = 10;

    private final List<Entry> bands = new ArrayList<>();
    private final List<Entry> others = new ArrayList<>();
    private final TextBlock heading;

    /** One row: a patch or a line, and its words. */
    private record Entry(Tint tint, PlaneLine line, TextBlock words) {

        double height() {
            return Math.max(SWATCH_HEIGHT, words.height());
        }
    }

    PlaneKey(Plane plane, double width) {
        double room = width - SWATCH - GAP;
        heading = TextBlock.of(plane.measured(), Type.HEADING, width);
        for (Tint tint : plane.tints()) {
            if (!tint.name().isEmpty()) {
                Entry entry = new Entry(tint, null, TextBlock.of(tint.name(), Type.LABEL, room));
                if (tint.role() == Tint.Role.BAND) {
                    bands.add(0, entry);
                } else {
                    others.add(entry);
                }
            }
        }
        for (PlaneLine line : plane.lines()) {
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
        if (entry.tint() != null) {
            drawPatch(g, entry.tint(), box);
        } else {
            g.setPaint(PlaneInk.color(entry.line().role()));
            g.setStroke(PlaneInk.stroke(entry.line().role()));
            double y = box.y() + SWATCH_HEIGHT / 2;
            g.draw(new Line2D.Double(box.x(), y, box.right(), y));
        }
        double words = entry.words().lineCount() == 1
                ? box.y() + (box.height() - entry.words().height()) / 2
                : box.y();
        entry.words().draw(g, box.right() + GAP, words, Ink.TEXT);
    }

    private static void drawPatch(Graphics2D g, Tint tint, Box room) {
        Box box = new Box(
                room.x(), room.y(), room.width(), tint.role() == Tint.Role.BAND ? room.height() : SWATCH_HEIGHT);
        Axis unit = new Axis("", 0, 1, 1);
        Trail rim = new Trail(new double[] {0, 1, 1, 0}, new double[] {0, 0, 1, 1});
        Tint whole = new Tint(tint.role(), tint.shade(), "", "", List.of(rim));
        if (tint.role() == Tint.Role.ENDED_EARLY) {
            g.setPaint(PlaneInk.band(1));
            g.fill(box.shape());
        }
        PlaneDrawing.fill(g, whole, new Frame(box, unit, unit));
        g.setPaint(Ink.FOOT);
        g.setStroke(Strokes.HAIR);
        g.draw(box.shape());
    }
}
