package io.github.heatswell.charts.drawing;

import io.github.heatswell.charts.picture.Area;
import io.github.heatswell.charts.picture.Curve;
import io.github.heatswell.charts.picture.Panel;
import io.github.heatswell.charts.picture.Points;
import java.awt.Color;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Finds room for the words inside a panel: near the point, in the patch or on the line they are about, away from curves,
 * marks, levels and other words, and else as near as can be. The same panel always gives the same places.
 */
final class FreeSpots {

    private static final double[] DISTANCES = {6, 16, 30, 48, 72, 100, 135};
    private static final double[][] DIRECTIONS = {
        {1, -1}, {1, 1}, {-1, -1}, {-1, 1}, {0, -1}, {0, 1}, {1, 0}, {-1, 0}, {0.5, -1}, {-0.5, -1}, {0.5, 1}, {-0.5, 1}
    };
    private static final double BREATH = 4;

    /** Of so many words every order is tried; of four there are 24. */
    private static final int MAX_ORDERED = 4;

    /** Two marks this near each other say something about one point. */
    private static final double SAME_POINT = 14;

    /** How far words stay away from the edge of the room: their ground is wider than they are, and would wipe out an axis. */
    private static final double EDGE = 2;

    private static final double PER_WORDS = 1e6;
    private static final double PER_MARK = 4_000;
    private static final double PER_CURVE_COLUMN = 60;
    private static final double PER_LEVEL = 90;
    private static final double PER_STRAY = 160;
    private static final double PER_CROSSING = 130;
    private static final double PER_PIXEL = 1.5;
    private static final double PER_LINE = 12;
    private static final double OUTSIDE = 1e9;

    /** How finely places in a patch and along a line are tried. */
    private static final double STEP = 8;

    /** A line shorter than this bears no words. */
    private static final double MIN_LINE = 70;

    private final Frame frame;
    private final Box room;
    private final List<Skyline> curves;
    private final List<List<Line2D>> dividers;
    private final List<Double> levels;
    private final List<Box> marks;
    private final List<Box> taken = new ArrayList<>();
    private double spent;

    /**
     * The room in a panel.
     *
     * @param panel the panel
     * @param frame where its data lie
     * @param room where words may stand
     * @param marks the room that marks take
     * @param divided whether words stay on the side of each curve on which their point lies
     */
    FreeSpots(Panel panel, Frame frame, Box room, List<Box> marks, boolean divided) {
        this.frame = frame;
        this.room = room;
        this.marks = marks;
        List<Points> lines = panel.curves().stream()
                .filter(line -> line.role() != Curve.Role.CONTOUR && line.role() != Curve.Role.GUIDE)
                .map(Curve::points)
                .toList();
        curves = lines.stream().map(line -> new Skyline(line, frame)).toList();
        dividers = divided ? lines.stream().map(frame::pieces).toList() : List.of();
        levels = panel.levels().stream().map(level -> frame.y(level.value())).toList();
    }

    /**
     * Words about a point.
     *
     * @param x the point
     * @param y the point
     * @param clearance how far the words must stay away from it
     * @param shapes the words broken into lines in more than one way, any of which will do
     * @param color their colour
     * @param named the curve whose name they are, or empty
     */
    record Note(double x, double y, double clearance, List<TextBlock> shapes, Color color, Optional<Curve.Role> named) {

        /** Copies the shapes. */
        Note {
            shapes = List.copyOf(shapes);
        }
    }

    /**
     * Words and where they stand.
     *
     * @param note what they are about
     * @param words the words in the shape that was chosen
     * @param box the room they take
     */
    record Placed(Note note, TextBlock words, Box box) {}

    /**
     * The places for several words. Who comes first leaves less room for the others, so of few words every order is tried.
     *
     * @param notes what to place
     * @return the places, in the order of the notes
     */
    List<Placed> takeAll(List<Note> notes) {
        List<Placed> best = List.of();
        double least = Double.POSITIVE_INFINITY;
        for (List<Integer> order : notes.size() <= MAX_ORDERED ? orders(notes.size()) : List.of(inTurn(notes.size()))) {
            taken.clear();
            spent = 0;
            Placed[] placed = new Placed[notes.size()];
            order.forEach(at -> placed[at] = take(notes.get(at)));
            if (spent < least) {
                least = spent;
                best = List.of(placed);
            }
        }
        taken.clear();
        best.forEach(placed -> taken.add(placed.box()));
        return best;
    }

    private static List<Integer> inTurn(int count) {
        return IntStream.range(0, count).boxed().toList();
    }

    /** All orders of so many things, that in which they came first. */
    private static List<List<Integer>> orders(int count) {
        List<List<Integer>> orders = List.of(List.of());
        for (int size = 1; size <= count; size++) {
            List<List<Integer>> longer = new ArrayList<>();
            for (int back = 0; back < size; back++) {
                for (List<Integer> order : orders) {
                    List<Integer> more = new ArrayList<>(order);
                    more.add(order.size() - back, size - 1);
                    longer.add(more);
                }
            }
            orders = longer;
        }
        return orders;
    }

    /** The place for words, which is theirs from then on. */
    private Placed take(Note note) {
        Placed best = null;
        double least = Double.POSITIVE_INFINITY;
        for (TextBlock words : note.shapes()) {
            for (double distance : DISTANCES) {
                for (double[] direction : DIRECTIONS) {
                    Box box = beside(note, words, direction, note.clearance() + distance);
                    double cost = cost(box) + (astray(box, note) ? PER_STRAY : 0);
                    double price = cost + PER_PIXEL * distance + PER_LINE * words.lineCount();
                    price += price < least ? crossings(note, box) : 0;
                    if (price < least) {
                        least = price;
                        best = new Placed(note, words, box);
                    }
                }
            }
        }
        taken.add(best.box());
        spent += least;
        return best;
    }

    /** The box whose near edge or corner lies in a direction from the point; pushed sideways into the room. */
    private Box beside(Note note, TextBlock words, double[] direction, double distance) {
        double width = words.width();
        double height = words.height();
        double reach = distance / Math.hypot(direction[0], direction[1]);
        double x = note.x() + direction[0] * reach + (direction[0] - 1) / 2 * width;
        double y = note.y() + direction[1] * reach + (direction[1] - 1) / 2 * height;
        double inside = Math.max(room.x() + BREATH, Math.min(x, room.right() - BREATH - width));
        return new Box(inside, y, width, height);
    }

    /** Whether words would stand nearer to some other mark than to their own point. */
    private boolean astray(Box box, Note note) {
        double own = box.distanceTo(note.x(), note.y());
        return marks.stream()
                .filter(mark -> Math.hypot(mark.centreX() - note.x(), mark.centreY() - note.y()) > SAME_POINT)
                .anyMatch(mark -> box.distanceTo(mark.centreX(), mark.centreY()) < own);
    }

    private double cost(Box box) {
        Box wide = box.grownBy(BREATH);
        double cost = room.grownBy(-EDGE).holds(box) ? 0 : OUTSIDE;
        cost += PER_WORDS * taken.stream().filter(wide::meets).count();
        cost += PER_MARK * marks.stream().filter(wide::meets).count();
        for (Skyline curve : curves) {
            cost += PER_CURVE_COLUMN * curve.columnsThrough(wide);
        }
        for (double level : levels) {
            cost += level > wide.y() && level < wide.bottom() ? PER_LEVEL : 0;
        }
        return cost;
    }

    /** A leader over a dividing line would lead the words to the other side of it. */
    private double crossings(Note note, Box box) {
        Line2D leader = box.lineFrom(note.x(), note.y());
        return PER_CROSSING
                * dividers.stream()
                        .filter(line -> line.stream().anyMatch(leader::intersectsLine))
                        .count();
    }

    /** The words of a patch, as near to its middle as it holds them; none if they find no free room. */
    Optional<Placed> takeInside(Area area, double width) {
        TextBlock words = TextBlock.of(area.label(), Type.LABEL_STRONG, width);
        Path2D patches = new Patches(area, frame).outline();
        Box bounds = Box.of(patches.getBounds2D());
        Box best = null;
        double least = Double.POSITIVE_INFINITY;
        for (double x = bounds.x(); x + words.width() <= bounds.right(); x += STEP) {
            for (double y = bounds.y(); y + words.height() <= bounds.bottom(); y += STEP) {
                Box box = new Box(x, y, words.width(), words.height());
                double away = Math.hypot(box.centreX() - bounds.centreX(), 2 * (box.centreY() - bounds.centreY()))
                        + cost(box);
                if (away < least
                        && isFree(box)
                        && patches.contains(box.grownBy(BREATH).shape())) {
                    least = away;
                    best = box;
                }
            }
        }
        return taken(words, best);
    }

    /** The words of a line, as near to its middle as there is room; none if there is none. */
    Optional<Placed> takeOn(Curve line) {
        List<Line2D> pieces = frame.pieces(line.points());
        double whole = pieces.stream().mapToDouble(FreeSpots::length).sum();
        TextBlock words = TextBlock.of(line.label(), Type.LABEL, Double.MAX_VALUE);
        Box best = null;
        double least = Double.POSITIVE_INFINITY;
        double before = 0;
        double at = whole < MIN_LINE ? whole : STEP;
        for (Line2D piece : pieces) {
            for (; at < Math.min(whole, before + length(piece)); at += STEP) {
                double share = (at - before) / length(piece);
                double x = piece.getX1() + share * (piece.getX2() - piece.getX1());
                double y = piece.getY1() + share * (piece.getY2() - piece.getY1());
                Box box = new Box(x - words.width() / 2, y - words.height() / 2, words.width(), words.height());
                double away = Math.abs(at - whole / 2);
                if (away < least && isFree(box) && cost(box) == 0) {
                    least = away;
                    best = box;
                }
            }
            before += length(piece);
        }
        return taken(words, best);
    }

    private static double length(Line2D piece) {
        return Math.hypot(piece.getX2() - piece.getX1(), piece.getY2() - piece.getY1());
    }

    private boolean isFree(Box box) {
        return room.grownBy(-BREATH).holds(box)
                && Stream.concat(taken.stream(), marks.stream()).noneMatch(box.grownBy(BREATH)::meets);
    }

    private Optional<Placed> taken(TextBlock words, Box box) {
        if (box == null) {
            return Optional.empty();
        }
        taken.add(box);
        Note own = new Note(box.centreX(), box.centreY(), 0, List.of(words), Ink.TEXT, Optional.empty());
        return Optional.of(new Placed(own, words, box));
    }

    /** Where a curve runs, pixel column by pixel column: what words must keep clear of. */
    static final class Skyline {

        private final double left;
        private final double[] top;
        private final double[] bottom;

        Skyline(Points points, Frame frame) {
            left = frame.area().x();
            int columns = (int) Math.ceil(frame.area().width()) + 1;
            top = new double[columns];
            bottom = new double[columns];
            Arrays.fill(top, Double.POSITIVE_INFINITY);
            Arrays.fill(bottom, Double.NEGATIVE_INFINITY);
            add(points, frame);
        }

        /** How many pixel columns of a box the curve runs through. */
        int columnsThrough(Box box) {
            int first = column(box.x());
            int last = column(box.right());
            int through = 0;
            for (int i = first; i <= last; i++) {
                if (top[i] <= box.bottom() && bottom[i] >= box.y()) {
                    through++;
                }
            }
            return through;
        }

        private void add(Points points, Frame frame) {
            for (int i = 0; i < points.count(); i++) {
                int before = Math.max(i - 1, 0);
                boolean onwards = points.across(before) <= points.across(i);
                int from = onwards ? before : i;
                int to = onwards ? i : before;
                double x0 = frame.x(points.across(from));
                double y0 = frame.y(points.up(from));
                double x1 = frame.x(points.across(to));
                double y1 = frame.y(points.up(to));
                int first = column(x0);
                int last = column(x1);
                for (int at = first; at <= last; at++) {
                    see(at, heightAt(left + at, x0, y0, x1, y1));
                    see(at, heightAt(left + at + 1, x0, y0, x1, y1));
                }
            }
        }

        private static double heightAt(double x, double x0, double y0, double x1, double y1) {
            if (x1 - x0 < 1e-9) {
                return y1;
            }
            double share = Math.min(1, Math.max(0, (x - x0) / (x1 - x0)));
            return y0 + share * (y1 - y0);
        }

        private void see(int at, double y) {
            top[at] = Math.min(top[at], y);
            bottom[at] = Math.max(bottom[at], y);
        }

        private int column(double x) {
            return Math.min(top.length - 1, Math.max(0, (int) Math.floor(x - left)));
        }
    }
}
