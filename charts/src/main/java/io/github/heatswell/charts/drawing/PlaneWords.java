package io.github.heatswell.charts.drawing;

import io.github.heatswell.charts.picture.Plane;
import io.github.heatswell.charts.picture.PlaneLine;
import io.github.heatswell.charts.picture.Spot;
import io.github.heatswell.charts.picture.Tint;
import io.github.heatswell.charts.picture.Trail;
import java.awt.Font;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

/**
 * Finds room for the words on a plane: those of points first, then of patches, then of lines. Words that find no free room
 * are left out where the key says the same; those of points always stand somewhere inside.
 */
final class PlaneWords {

    private static final double[] DISTANCES = {12, 22, 36, 54, 80, 115, 160};
    private static final double[][] DIRECTIONS = {
        {1, -1}, {1, 1}, {-1, -1}, {-1, 1}, {1, 0}, {-1, 0}, {0, -1}, {0, 1}, {0.5, -1}, {-0.5, -1}, {0.5, 1}, {-0.5, 1}
    };
    private static final double BREATH = 5;
    private static final double LINE_BREATH = 2;
    private static final double INSIDE = 3;
    private static final double[] WIDTHS = {0.4, 0.22, 0.16};
    private static final double PER_ROW = 12;
    private static final double LEAST_LINE = 70;
    private static final double STEP = 8;
    private static final double PER_LINE = 130;
    private static final double PER_WORDS = 1e6;

    private final Plane plane;
    private final Frame frame;
    private final List<Box> taken = new ArrayList<>();
    private final List<Placed> placed = new ArrayList<>();

    /**
     * Words and where they stand.
     *
     * @param text the words
     * @param box the room they take
     * @param spot the point they are about, or null
     */
    record Placed(TextBlock text, Box box, Spot spot) {}

    private PlaneWords(Plane plane, Frame frame) {
        this.plane = plane;
        this.frame = frame;
    }

    static List<Placed> of(Plane plane, Frame frame) {
        PlaneWords words = new PlaneWords(plane, frame);
        plane.spots().forEach(spot -> words.taken.add(words.room(spot)));
        plane.spots().stream().filter(spot -> !spot.label().isEmpty()).forEach(words::placeSpot);
        plane.tints().stream().filter(tint -> !tint.label().isEmpty()).forEach(words::placeInside);
        plane.lines().stream()
                .filter(line -> !line.label().isEmpty() && !line.trail().isUpright())
                .forEach(words::placeOnLine);
        return words.placed;
    }

    private Box room(Spot spot) {
        return new Box(frame.x(spot.across()) - 8, frame.y(spot.up()) - 8, 16, 16);
    }

    private void placeSpot(Spot spot) {
        Font font = spot.role() == Spot.Role.CHIEF ? Type.LABEL_STRONG : Type.LABEL;
        Placed best = null;
        double least = Double.POSITIVE_INFINITY;
        for (double share : WIDTHS) {
            TextBlock text =
                    TextBlock.of(spot.label(), font, share * frame.area().width());
            for (double distance : DISTANCES) {
                for (double[] direction : DIRECTIONS) {
                    Box box = beside(spot, text, direction, distance);
                    double cost = cost(box) + leaderCost(spot, box) + 2 * distance + PER_ROW * text.lineCount();
                    if (cost < least) {
                        least = cost;
                        best = new Placed(text, box, spot);
                    }
                }
            }
        }
        take(best.text(), best.box(), spot);
    }

    private Box beside(Spot spot, TextBlock text, double[] direction, double distance) {
        double reach = distance / Math.hypot(direction[0], direction[1]);
        double x = frame.x(spot.across()) + direction[0] * reach + (direction[0] - 1) / 2 * text.width();
        double y = frame.y(spot.up()) + direction[1] * reach + (direction[1] - 1) / 2 * text.height();
        Box area = frame.area().grownBy(-INSIDE - 2);
        return new Box(
                Math.max(area.x(), Math.min(x, area.right() - text.width())),
                Math.max(area.y(), Math.min(y, area.bottom() - text.height())),
                text.width(),
                text.height());
    }

    private double cost(Box box) {
        Box wide = box.grownBy(BREATH);
        double cost = PER_WORDS * taken.stream().filter(wide::meets).count();
        for (PlaneLine line : plane.lines()) {
            if (isKeptClear(line)) {
                cost += crosses(line.trail(), box.grownBy(LINE_BREATH).shape()) ? PER_LINE : 0;
            }
        }
        return cost;
    }

    /** A leader over a line would lead the words to the other side of it. */
    private double leaderCost(Spot spot, Box box) {
        double x = frame.x(spot.across());
        double y = frame.y(spot.up());
        double toX = Math.max(box.x(), Math.min(x, box.right()));
        double toY = Math.max(box.y(), Math.min(y, box.bottom()));
        Line2D leader = new Line2D.Double(x, y, toX, toY);
        return PER_LINE
                * plane.lines().stream()
                        .filter(PlaneWords::isKeptClear)
                        .filter(line -> pieces(line.trail()).stream().anyMatch(leader::intersectsLine))
                        .count();
    }

    private static boolean isKeptClear(PlaneLine line) {
        return line.role() != PlaneLine.Role.CONTOUR && line.role() != PlaneLine.Role.GUIDE;
    }

    private boolean crosses(Trail trail, Rectangle2D box) {
        return pieces(trail).stream().anyMatch(piece -> piece.intersects(box));
    }

    private List<Line2D> pieces(Trail trail) {
        List<Line2D> pieces = new ArrayList<>();
        for (int i = 1; i < trail.count(); i++) {
            pieces.add(new Line2D.Double(
                    frame.x(trail.across(i - 1)),
                    frame.y(trail.up(i - 1)),
                    frame.x(trail.across(i)),
                    frame.y(trail.up(i))));
        }
        return pieces;
    }

    /** As near to the middle of the patches as they hold the words. */
    private void placeInside(Tint tint) {
        TextBlock text = TextBlock.of(
                tint.label(), Type.LABEL_STRONG, WIDTHS[0] * frame.area().width());
        Path2D patches = PlaneShapes.patches(tint, frame);
        Box bounds = Box.of(patches.getBounds2D());
        Box best = null;
        double least = Double.POSITIVE_INFINITY;
        for (double x = bounds.x(); x + text.width() <= bounds.right(); x += STEP) {
            for (double y = bounds.y(); y + text.height() <= bounds.bottom(); y += STEP) {
                Box box = new Box(x, y, text.width(), text.height());
                double away = Math.hypot(box.centreX() - bounds.centreX(), 2 * (box.centreY() - bounds.centreY()))
                        + cost(box);
                if (away < least
                        && free(box)
                        && patches.contains(box.grownBy(BREATH).shape())) {
                    least = away;
                    best = box;
                }
            }
        }
        take(text, best, null);
    }

    /** As near to the middle of the line as there is room. */
    private void placeOnLine(PlaneLine line) {
        double[] along = lengths(line.trail());
        double whole = along[along.length - 1];
        if (whole < LEAST_LINE) {
            return;
        }
        TextBlock text = TextBlock.of(line.label(), Type.LABEL, Double.MAX_VALUE);
        Box best = null;
        double least = Double.POSITIVE_INFINITY;
        for (double at = STEP; at < whole; at += STEP) {
            double away = Math.abs(at - whole / 2);
            Box box = centred(line.trail(), along, at, text);
            if (away < least && free(box) && frame.area().grownBy(-INSIDE).holds(box) && cost(box) < PER_LINE) {
                least = away;
                best = box;
            }
        }
        take(text, best, null);
    }

    private double[] lengths(Trail trail) {
        double[] along = new double[trail.count()];
        for (int i = 1; i < along.length; i++) {
            double dx = frame.x(trail.across(i)) - frame.x(trail.across(i - 1));
            double dy = frame.y(trail.up(i)) - frame.y(trail.up(i - 1));
            along[i] = along[i - 1] + Math.hypot(dx, dy);
        }
        return along;
    }

    private Box centred(Trail trail, double[] along, double at, TextBlock text) {
        int next = 1;
        while (along[next] < at) {
            next++;
        }
        double share = (at - along[next - 1]) / (along[next] - along[next - 1]);
        double x = frame.x(trail.across(next - 1) + share * (trail.across(next) - trail.across(next - 1)));
        double y = frame.y(trail.up(next - 1) + share * (trail.up(next) - trail.up(next - 1)));
        return new Box(x - text.width() / 2, y - text.height() / 2, text.width(), text.height());
    }

    private boolean free(Box box) {
        return taken.stream().noneMatch(box.grownBy(BREATH)::meets);
    }

    private void take(TextBlock text, Box box, Spot spot) {
        if (box != null) {
            taken.add(box);
            placed.add(new Placed(text, box, spot));
        }
    }
}
