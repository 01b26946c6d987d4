package io.github.heatswell.charts.drawing;

import io.github.heatswell.charts.drawing.FreeSpots.Note;
import io.github.heatswell.charts.drawing.FreeSpots.Placed;
import io.github.heatswell.charts.drawing.Gutter.Callout;
import io.github.heatswell.charts.drawing.SheetLayout.UprightNames;
import io.github.heatswell.charts.drawing.TextBlock.Words;
import io.github.heatswell.charts.picture.Curve;
import io.github.heatswell.charts.picture.Panel;
import io.github.heatswell.charts.picture.Panel.Mark;
import io.github.heatswell.charts.picture.Points;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Draws what is on and beside the lines of a panel: bars, marks, words, and names beside the plot or a key. */
final class PanelOverlay {

    /** How wide words may be, as shares of the plot; the narrower the higher. */
    private static final double[] NOTE_WIDTHS = {0.45, 0.28};

    /** A panel as low as this has hardly room for two lines beside its curves, but for one. */
    private static final double LOW = 130;

    private static final double[] LOW_WIDTHS = {0.75, 0.45, 0.28};

    /** The same beside a key, where patches and lines have words too. */
    private static final double[] KEYED_WIDTHS = {0.4, 0.22, 0.16};

    /** How far before a name the upright sample of its curve stands. */
    private static final double SAMPLE = 5;

    private static final double END_HATCH = 9;
    private static final double BESIDE_END = 8;

    private final Panel panel;
    private final Frame frame;
    private final OptionalDouble end;
    private final double gutterWidth;
    private final Optional<Key> column;

    /**
     * Prepares the overlay.
     *
     * @param panel what to draw over
     * @param frame where the data lie
     * @param end where a hazard ended the run, in the unit of the axis across, or empty
     * @param gutterWidth the room for names beside the plot
     */
    PanelOverlay(Panel panel, Frame frame, OptionalDouble end, double gutterWidth) {
        this(panel, frame, end, gutterWidth, Optional.empty());
    }

    /**
     * Prepares the overlay of a panel with a key.
     *
     * @param panel what to draw over
     * @param frame where the data lie
     * @param column the key
     */
    PanelOverlay(Panel panel, Frame frame, Key column) {
        this(panel, frame, OptionalDouble.empty(), 0, Optional.of(column));
    }

    private PanelOverlay(Panel panel, Frame frame, OptionalDouble end, double gutterWidth, Optional<Key> column) {
        this.column = column;
        this.panel = panel;
        this.frame = frame;
        this.end = end;
        this.gutterWidth = gutterWidth;
    }

    void draw(Graphics2D g) {
        end.ifPresent(time -> drawEnd(g, frame.x(time)));
        BandBars.draw(g, panel.bands(), frame);
        column.ifPresentOrElse(key -> drawKey(g, key), () -> drawNames(g));
        List<Placed> words = places(notes());
        g.setPaint(Ink.PAPER);
        words.forEach(placed -> g.fill(placed.box().grownBy(2).shape()));
        words.forEach(placed -> drawLeader(g, placed.note(), placed.box()));
        drawMarks(g);
        for (Placed placed : words) {
            placed.note().named().ifPresent(role -> drawSample(g, role, placed.box()));
            placed.words()
                    .draw(g, placed.box().x(), placed.box().y(), placed.note().color());
        }
    }

    /** The names of the lines, level with where they end. */
    private void drawNames(Graphics2D g) {
        heading().draw(g, frame.area().x(), frame.area().y() - heading().height() - 5, Ink.TEXT);
        Gutter gutter = new Gutter(panel, frame, gutterWidth);
        List<Callout> callouts = gutter.callouts();
        double[] tops = gutter.tops(callouts);
        for (int i = 0; i < callouts.size(); i++) {
            callouts.get(i).draw(g, frame.area(), tops[i]);
        }
    }

    private void drawKey(Graphics2D g, Key key) {
        UprightNames names = UprightNames.of(panel, frame);
        double top = frame.area().y() - names.height();
        heading().draw(g, SheetLayout.MARGIN, top - UprightNames.HEADING, Ink.TEXT);
        names.draw(g, frame);
        key.draw(g, frame.area().right() + Key.BESIDE_PANEL, top);
    }

    private TextBlock heading() {
        return TextBlock.of(panel.axis().label(), Type.HEADING, frame.area().width());
    }

    /** Words about marks, and the names of curves that end before the edge. */
    List<Note> notes() {
        List<Note> notes = new ArrayList<>();
        for (Mark mark : panel.marks()) {
            if (!mark.label().isEmpty()) {
                boolean grave = mark.kind() == Mark.Kind.HAZARD;
                boolean strong = grave || mark.kind() == Mark.Kind.CHIEF;
                Words words = strong ? Words.strong(mark.label()) : Words.plain(mark.label());
                notes.add(new Note(
                        frame.x(mark.across()),
                        frame.y(mark.up()),
                        grave ? 12 : 7,
                        shapes(List.of(words)),
                        MarkShapes.color(mark.kind()),
                        Optional.empty()));
            }
        }
        for (Curve curve : panel.curves()) {
            if (isNamedAtEnd(curve)) {
                double x = end(curve).centreX();
                double y = end(curve).centreY();
                List<Words> words = List.of(
                        Words.strong(curve.name()), Words.plain(curve.label()).onNewLine());
                notes.add(new Note(x, y, 4, shapes(words), Ink.TEXT, Optional.of(curve.role())));
            }
        }
        return notes;
    }

    /** The end of a run that a hazard cut short: a heavy line, and hatching where nothing is known. */
    private void drawEnd(Graphics2D g, double x) {
        Box area = frame.area();
        g.setPaint(Ink.GRID.darker());
        g.setStroke(Ink.HAIR);
        g.draw(new Box(x, area.y(), area.right() - x, area.height()).hatching(END_HATCH));
        g.setPaint(Ink.ALARM);
        g.setStroke(Ink.END);
        g.draw(new Line2D.Double(x, area.y(), x, area.bottom()));
    }

    /** Where words may stand: above the lanes, and on the larger part of the panel that the end of the run leaves. */
    Box room() {
        Box area = frame.area();
        double height = area.height() - BandBars.height(panel.bands());
        if (end.isEmpty()) {
            return new Box(area.x(), area.y(), area.width(), height);
        }
        double before = frame.x(end.getAsDouble()) - area.x();
        return before >= area.width() / 2
                ? new Box(area.x(), area.y(), before - BESIDE_END, height)
                : new Box(area.x() + before + BESIDE_END, area.y(), area.width() - before - BESIDE_END, height);
    }

    /** Whether a curve ends before the edge, where its name would stand beside the plot. */
    private boolean isNamedAtEnd(Curve curve) {
        return column.isEmpty()
                && !curve.name().isEmpty()
                && end(curve).centreX() <= frame.area().right() - 2;
    }

    private Box end(Curve curve) {
        Points points = curve.points();
        int last = points.count() - 1;
        return new Box(frame.x(points.across(last)) - 4, frame.y(points.up(last)) - 4, 8, 8);
    }

    /** Where the words stand. */
    List<Placed> places(List<Note> notes) {
        List<Box> marks = new ArrayList<>();
        panel.marks()
                .forEach(mark -> marks.add(MarkShapes.room(mark.kind(), frame.x(mark.across()), frame.y(mark.up()))));
        // The end of a curve is a point of its own: no other name may stand on it, or nearer to it than to its own.
        panel.curves().stream().filter(this::isNamedAtEnd).map(this::end).forEach(marks::add);
        FreeSpots spots = new FreeSpots(panel, frame, room(), marks, column.isPresent());
        List<Placed> places = new ArrayList<>(spots.takeAll(notes));
        if (column.isPresent()) {
            // Words of patches and lines that find no free room are left to the key, which says the same.
            double width = KEYED_WIDTHS[0] * frame.area().width();
            panel.areas().stream()
                    .filter(area -> !area.label().isEmpty())
                    .forEach(area -> spots.takeInside(area, width).ifPresent(places::add));
            panel.curves().stream()
                    .filter(line -> !line.label().isEmpty() && !line.points().isUpright())
                    .forEach(line -> spots.takeOn(line).ifPresent(places::add));
        }
        return places;
    }

    private List<TextBlock> shapes(List<Words> words) {
        double[] alone = frame.area().height() < LOW ? LOW_WIDTHS : NOTE_WIDTHS;
        return Arrays.stream(column.isPresent() ? KEYED_WIDTHS : alone)
                .mapToObj(share -> TextBlock.of(words, share * frame.area().width()))
                .toList();
    }

    /** A thin grey line from words to just before their point, unless they stand so near that it says nothing. */
    private void drawLeader(Graphics2D g, Note note, Box place) {
        double distance = place.distanceTo(note.x(), note.y());
        if (distance > note.clearance() + 9) {
            double share = note.clearance() / distance;
            Line2D whole = place.lineFrom(note.x(), note.y());
            Line2D leader = new Line2D.Double(
                    note.x() + share * (whole.getX2() - note.x()),
                    note.y() + share * (whole.getY2() - note.y()),
                    whole.getX2(),
                    whole.getY2());
            if (column.isPresent()) {
                // Patches may be as dark as the leader.
                g.setPaint(Ink.PAPER);
                g.setStroke(Ink.HALO);
                g.draw(leader);
            }
            g.setPaint(Ink.LEADER);
            g.setStroke(Ink.LEADER_LINE);
            g.draw(leader);
        }
    }

    /** An upright sample of a curve before its name, as beside the plot. */
    private static void drawSample(Graphics2D g, Curve.Role role, Box place) {
        g.setPaint(Ink.of(role));
        g.setStroke(Ink.line(role));
        double x = place.x() - SAMPLE;
        g.draw(new Line2D.Double(x, place.y() + 1, x, place.bottom() - 1));
    }

    private void drawMarks(Graphics2D g) {
        panel.marks().stream()
                .sorted(Comparator.comparing(Mark::kind).reversed())
                .forEach(mark -> MarkShapes.draw(g, mark, frame));
    }
}
