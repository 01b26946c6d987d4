package io.github.heatswell.charts.drawing;

import io.github.heatswell.charts.picture.Plane;
import io.github.heatswell.charts.picture.PlaneLine;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** The words of upright lines, in rows above the plot so that none stands on another. */
final class UprightNames {

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
    record Named(PlaneLine line, TextBlock text, Box box, int row) {}

    /** Places the names over a plot of which only left and right edge need to be right. */
    static UprightNames of(Plane plane, Frame frame) {
        List<Named> names = new ArrayList<>();
        List<Double> ends = new ArrayList<>();
        List<PlaneLine> upright = plane.lines().stream()
                .filter(line -> line.trail().isUpright() && !line.label().isEmpty())
                .sorted(Comparator.comparingDouble(line -> line.trail().across(0)))
                .toList();
        for (PlaneLine line : upright) {
            TextBlock text = TextBlock.of(line.label(), Type.LABEL, frame.area().width());
            double x = Math.max(
                    frame.area().x(),
                    Math.min(
                            frame.x(line.trail().across(0)) - text.width() / 2,
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
            double x = frame.x(name.line().trail().across(0));
            g.setPaint(PlaneInk.color(name.line().role()));
            g.setStroke(PlaneInk.stroke(name.line().role()));
            g.draw(new Line2D.Double(x, name.box().bottom(), x, frame.area().y()));
        }
        for (Named name : names) {
            Paper.behind(g, name.box());
            name.text()
                    .draw(
                            g,
                            name.box().x(),
                            name.box().y(),
                            PlaneInk.color(name.line().role()));
        }
    }
}
