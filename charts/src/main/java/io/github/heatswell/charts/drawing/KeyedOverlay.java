package io.github.heatswell.charts.drawing;

import io.github.heatswell.charts.picture.Mark;
import io.github.heatswell.charts.picture.Panel;
import java.awt.Graphics2D;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** Draws what stands on and beside a single panel: words, marks and the column with the key. */
final class KeyedOverlay {

    /** Words nearer to their point than this need no line to it. */
    private static final double NEAR = 20;

    private final Panel panel;
    private final Frame frame;
    private final KeyColumn column;

    KeyedOverlay(Panel panel, Frame frame, KeyColumn column) {
        this.panel = panel;
        this.frame = frame;
        this.column = column;
    }

    void draw(Graphics2D g) {
        UprightNames names = UprightNames.of(panel, frame);
        double heading = frame.area().y() - names.height() - UprightNames.HEADING;
        TextBlock.of(panel.axis().label(), Type.HEADING, frame.area().width())
                .draw(g, SheetLayout.MARGIN, heading, Ink.TEXT);
        for (WordsInside.Placed placed : WordsInside.of(panel, frame)) {
            placed.mark().ifPresent(mark -> drawLeader(g, mark, placed.box()));
            placed.text().drawOnPaper(g, placed.box(), Ink.TEXT);
        }
        List<Mark> marks = new ArrayList<>(panel.marks());
        Collections.reverse(marks);
        marks.forEach(mark -> MarkShapes.draw(g, mark, frame));
        names.draw(g, frame);
        column.draw(
                g, frame.area().right() + KeyColumn.BESIDE_PANEL, frame.area().y() - names.height());
    }

    private void drawLeader(Graphics2D g, Mark mark, Box words) {
        double x = frame.x(mark.across());
        double y = frame.y(mark.up());
        if (words.distanceTo(x, y) > NEAR) {
            g.setPaint(Ink.PAPER);
            g.setStroke(Strokes.HALO);
            g.draw(words.lineFrom(x, y));
            g.setPaint(Ink.LEADER);
            g.setStroke(Strokes.LEADER);
            g.draw(words.lineFrom(x, y));
        }
    }
}
