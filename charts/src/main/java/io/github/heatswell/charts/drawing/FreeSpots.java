package io.github.heatswell.charts.drawing;

import java.util.ArrayList;
import java.util.List;

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

    /** How far words may reach over the edge of the room. */
    private static final double TOLERANCE = 3;

    private static final double PER_WORDS = 1e6;
    private static final double PER_MARK = 4_000;
    private static final double PER_CURVE_COLUMN = 60;
    private static final double PER_LEVEL = 90;
    private static final double OUTSIDE = 1e9;

    private final Box room;
    private final List<Skyline> curves;
    private final List<Double> levels;
    private final List<Box> marks;
    private final List<Box> taken = new ArrayList<>();

    FreeSpots(Box room, List<Skyline> curves, List<Double> levels, List<Box> marks) {
        this.room = room;
        this.curves = curves;
        this.levels = levels;
        this.marks = marks;
    }

    /** The place for words, which is theirs from then on. */
    Box take(Note note) {
        Box best = null;
        double least = Double.POSITIVE_INFINITY;
        for (double distance : DISTANCES) {
            for (double[] direction : DIRECTIONS) {
                Box box = beside(note, direction, note.clearance() + distance);
                double cost = cost(box) + 1.5 * distance;
                if (cost < least) {
                    least = cost;
                    best = box;
                }
            }
        }
        taken.add(best);
        return best;
    }

    /** The box whose near edge or corner lies in a direction from the point; pushed sideways into the room. */
    private Box beside(Note note, double[] direction, double distance) {
        double width = note.words().width();
        double height = note.words().height();
        double reach = distance / Math.hypot(direction[0], direction[1]);
        double x = note.x() + direction[0] * reach + (direction[0] - 1) / 2 * width;
        double y = note.y() + direction[1] * reach + (direction[1] - 1) / 2 * height;
        double inside = Math.max(room.x() + BREATH, Math.min(x, room.right() - BREATH - width));
        return new Box(inside, y, width, height);
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
