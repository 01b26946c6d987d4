package io.github.heatswell.charts.drawing;

import io.github.heatswell.charts.picture.Bars;
import io.github.heatswell.units.Decimals;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.util.List;

/** Signed bars under each other: full to the right for plus, hatched to the left for minus, each with its number. */
final class BarList {

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
                .map(bar -> TextBlock.of(bar.name(), Type.LABEL, NAMES * width).inLines(2))
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
        g.setStroke(Strokes.RIM);
        g.draw(new Line2D.Double(middle, foot - 2, middle, y - BETWEEN + 2));
    }

    private static void drawBar(Graphics2D g, double value, double middle, double centre, double longest) {
        double length = Math.abs(value) * longest;
        double from = value < 0 ? middle - length : middle;
        Box bar = new Box(from, centre - BAR / 2, length, BAR);
        g.setPaint(value < 0 ? Ink.PRECHARGE : Ink.PRESSURE);
        g.setStroke(Strokes.HAIR);
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
