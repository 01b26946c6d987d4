package io.github.heatswell.charts.drawing;

import io.github.heatswell.charts.picture.Area;
import io.github.heatswell.charts.picture.Axis;
import io.github.heatswell.charts.picture.Curve;
import io.github.heatswell.charts.picture.Panel;
import io.github.heatswell.charts.picture.Picture;
import io.github.heatswell.charts.picture.Picture.Bars;
import io.github.heatswell.charts.picture.Points;
import io.github.heatswell.units.Decimals;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The column beside a single panel: bars, if there are any, and the key, which lists the bands of the panel, the highest on
 * top, then its other patches and its lines.
 */
final class Key {

    private static final double SWATCH = 34;
    private static final double SWATCH_HEIGHT = 18;
    private static final double GAP = 9;
    private static final double BETWEEN = 6;
    private static final double GROUPS = 10;

    /** The room between the panel and the column. */
    static final double BESIDE_PANEL = 24;

    private static final double BELOW_BARS = 18;
    private static final double SHARE = 0.235;
    private static final double SHARE_WITH_BARS = 0.40;
    private static final double MIN_WIDTH = 190;

    private final double width;
    private final Optional<BarList> bars;
    private final List<Entry> bands = new ArrayList<>();
    private final List<Entry> others = new ArrayList<>();
    private final TextBlock heading;

    /** One row: a patch or a line, and its words. */
    private record Entry(Area area, Curve line, TextBlock words) {

        double height() {
            return Math.max(SWATCH_HEIGHT, words.height());
        }
    }

    /** The column of a picture of this width. */
    Key(Panel panel, Picture.Key key, double inner) {
        width = Math.max(MIN_WIDTH, (key.bars().isPresent() ? SHARE_WITH_BARS : SHARE) * inner);
        bars = key.bars().map(list -> new BarList(list, width));
        heading = TextBlock.of(key.measured(), Type.HEADING, width);
        double room = width - SWATCH - GAP;
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

    double width() {
        return width;
    }

    double height() {
        double tall = barsHeight();
        tall += bands.isEmpty() ? 0 : heading.height() + BETWEEN + GROUPS;
        for (Entry entry : bands) {
            tall += entry.height();
        }
        for (Entry entry : others) {
            tall += entry.height() + BETWEEN;
        }
        return tall;
    }

    private double barsHeight() {
        return bars.map(list -> list.height() + BELOW_BARS).orElse(0.0);
    }

    void draw(Graphics2D g, double x, double top) {
        bars.ifPresent(list -> list.draw(g, x, top));
        double y = top + barsHeight();
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
            g.setStroke(Ink.line(entry.line().role()));
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
        g.setStroke(Ink.HAIR);
        g.draw(box.shape());
    }

    /** Signed bars under each other: full to the right for plus, hatched to the left for minus, each with its number. */
    static final class BarList {

        private static final double NAMES = 0.4;
        private static final double NUMBER = 44;
        private static final double BAR = 12;
        private static final double BETWEEN = 7;
        private static final double BELOW_HEADING = 6;
        private static final double HATCH = 4;

        private final Bars bars;
        private final double width;
        private final TextBlock heading;
        private final TextBlock note;
        private final List<TextBlock> names;

        BarList(Bars bars, double width) {
            this.bars = bars;
            this.width = width;
            heading = TextBlock.of(bars.heading(), Type.HEADING, width);
            note = TextBlock.of(bars.note(), Type.LABEL, width);
            names = bars.bars().stream()
                    .map(bar ->
                            TextBlock.of(bar.name(), Type.LABEL, NAMES * width).inLines(2))
                    .toList();
        }

        double height() {
            double tall = heading.height() + BELOW_HEADING + note.height() + BETWEEN;
            for (TextBlock name : names) {
                tall += row(name);
            }
            return tall;
        }

        private static double row(TextBlock name) {
            return Math.max(name.height(), BAR) + BETWEEN;
        }

        void draw(Graphics2D g, double x, double top) {
            heading.draw(g, x, top, Ink.TEXT);
            double y = top + heading.height() + BELOW_HEADING;
            note.draw(g, x, y, Ink.QUIET_TEXT);
            y += note.height() + BETWEEN;
            double left = x + NAMES * width + BETWEEN;
            double middle = (left + x + width) / 2;
            double longest = x + width - NUMBER - middle;
            double foot = y;
            for (int i = 0; i < names.size(); i++) {
                TextBlock name = names.get(i);
                name.draw(g, x, y, Ink.TEXT);
                double centre = y + Math.max(name.height(), BAR) / 2;
                drawBar(g, bars.bars().get(i).value(), middle, centre, longest);
                y += row(name);
            }
            g.setPaint(Ink.FOOT);
            g.setStroke(Ink.RIM);
            g.draw(new Line2D.Double(middle, foot - 2, middle, y - BETWEEN + 2));
        }

        private static void drawBar(Graphics2D g, double value, double middle, double centre, double longest) {
            double length = Math.abs(value) * longest;
            double from = value < 0 ? middle - length : middle;
            Box bar = new Box(from, centre - BAR / 2, length, BAR);
            g.setPaint(value < 0 ? Ink.PRECHARGE : Ink.PRESSURE);
            g.setStroke(Ink.HAIR);
            if (value < 0) {
                g.draw(bar.hatching(HATCH));
                g.draw(bar.shape());
            } else {
                g.fill(bar.shape());
            }
            TextBlock number = TextBlock.of(signed(value), Type.LABEL, Double.MAX_VALUE);
            double x = value < 0 ? from - 4 - number.width() : from + length + 4;
            number.draw(g, x, centre - number.height() / 2, Ink.TEXT);
        }

        /** The number with its sign; a true minus, as long as the plus. */
        static String signed(double value) {
            String digits = Decimals.fixed(Math.abs(value), 2);
            return (digits.equals("0.00") ? "" : value < 0 ? "\u2212" : "+") + digits;
        }
    }
}
