package io.github.heatswell.charts.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Finds room for words near a point of a panel: away from curves, marks, levels and other words, and else as near as can
 * be. The same panel always gives the same places.
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

    /** How far words may reach over the edge of the room. */
    private static final double TOLERANCE = 3;

    private static final double PER_WORDS = 1e6;
    private static final double PER_MARK = 4_000;
    private static final double PER_CURVE_COLUMN = 60;
    private static final double PER_LEVEL = 90;
    private static final double PER_STRAY = 160;
    private static final double PER_PIXEL = 1.5;
    private static final double PER_LINE = 12;
    private static final double OUTSIDE = 1e9;

    private final Box room;
    private final List<Skyline> curves;
    private final List<Double> levels;
    private final List<Box> marks;
    private final List<Box> taken = new ArrayList<>();
    private double spent;

    FreeSpots(Box room, List<Skyline> curves, List<Double> levels, List<Box> marks) {
        this.room = room;
        this.curves = curves;
        this.levels = levels;
        this.marks = marks;
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
        List<Placed> best = null;
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
        double cost = room.grownBy(TOLERANCE).holds(box) ? 0 : OUTSIDE;
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
}
