package io.github.heatswell.charts.drawing;

import io.github.heatswell.charts.picture.Curve;
import io.github.heatswell.charts.picture.Panel;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** The words of upright lines, in rows above the plot so that none stands on another. */
final class UprightNames {

    /** The room above them for the name of the axis upwards. */
    static final double HEADING = 23;

    private static final double ROW = 18;
    private static final double BETWEEN = 10;

    private final List<Named> names;

    private UprightNames(List<Named> names) {
        this.names = names;
    }

    /**
     * The words of one line.
     *
     * @param line the line
     * @param text its words
     * @param box the room they take
     * @param row the number of the row, counted from the plot upwards
     */
    record Named(Curve line, TextBlock text, Box box, int row) {}

    /** Places the names over a plot of which only left and right edge need to be right. */
    static UprightNames of(Panel panel, Frame frame) {
        List<Named> names = new ArrayList<>();
        List<Double> ends = new ArrayList<>();
        List<Curve> upright = panel.curves().stream()
                .filter(line -> line.points().isUpright() && !line.label().isEmpty())
                .sorted(Comparator.comparingDouble(line -> line.points().across(0)))
                .toList();
        for (Curve line : upright) {
            TextBlock text = TextBlock.of(line.label(), Type.LABEL, frame.area().width());
            double x = Math.max(
                    frame.area().x(),
                    Math.min(
                            frame.x(line.points().across(0)) - text.width() / 2,
                            frame.area().right() - text.width()));
            int row = 0;
            while (row < ends.size() && ends.get(row) > x - BETWEEN) {
                row++;
            }
            if (row == ends.size()) {
                ends.add(0.0);
            }
            ends.set(row, x + text.width());
            double y = frame.area().y() - ROW * (row + 1);
            names.add(new Named(line, text, new Box(x, y, text.width(), text.height()), row));
        }
        return new UprightNames(names);
    }

    List<Named> names() {
        return names;
    }

    double height() {
        return ROW * names.stream().mapToInt(name -> name.row() + 1).max().orElse(0);
    }

    void draw(Graphics2D g, Frame frame) {
        for (Named name : names) {
            double x = frame.x(name.line().points().across(0));
            g.setPaint(Ink.of(name.line().role()));
            g.setStroke(Strokes.of(name.line().role()));
            g.draw(new Line2D.Double(x, name.box().bottom(), x, frame.area().y()));
        }
        for (Named name : names) {
            name.text().drawOnPaper(g, name.box(), Ink.of(name.line().role()));
        }
    }
}
