package io.github.heatswell.charts.drawing;

import io.github.heatswell.charts.picture.Area;
import io.github.heatswell.charts.picture.Curve;
import io.github.heatswell.charts.picture.Mark;
import io.github.heatswell.charts.picture.Panel;
import io.github.heatswell.charts.picture.Points;
import java.awt.Font;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Finds room for the words on a single panel: those of points first, then of patches, then of lines. Words that find no free room
 * are left out where the key says the same; those of points always stand somewhere inside.
 */
final class WordsInside {

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

    private final Panel panel;
    private final Frame frame;
    private final List<Box> taken = new ArrayList<>();
    private final List<Placed> placed = new ArrayList<>();

    /**
     * Words and where they stand.
     *
     * @param text the words
     * @param box the room they take
     * @param mark the point they are about, or null
     */
    record Placed(TextBlock text, Box box, Optional<Mark> mark) {}

    private WordsInside(Panel panel, Frame frame) {
        this.panel = panel;
        this.frame = frame;
    }

    static List<Placed> of(Panel panel, Frame frame) {
        WordsInside words = new WordsInside(panel, frame);
        panel.marks().forEach(mark -> words.taken.add(words.room(mark)));
        panel.marks().stream().filter(mark -> !mark.label().isEmpty()).forEach(words::placeMark);
        panel.areas().stream().filter(area -> !area.label().isEmpty()).forEach(words::placeInside);
        panel.curves().stream()
                .filter(line -> !line.label().isEmpty() && !line.points().isUpright())
                .forEach(words::placeOnLine);
        return words.placed;
    }

    private Box room(Mark mark) {
        return new Box(frame.x(mark.across()) - 8, frame.y(mark.up()) - 8, 16, 16);
    }

    private void placeMark(Mark mark) {
        Font font = mark.kind() == Mark.Kind.CHIEF ? Type.LABEL_STRONG : Type.LABEL;
        Placed best = null;
        double least = Double.POSITIVE_INFINITY;
        for (double share : WIDTHS) {
            TextBlock text =
                    TextBlock.of(mark.label(), font, share * frame.area().width());
            for (double distance : DISTANCES) {
                for (double[] direction : DIRECTIONS) {
                    Box box = beside(mark, text, direction, distance);
                    double cost = cost(box) + leaderCost(mark, box) + 2 * distance + PER_ROW * text.lineCount();
                    if (cost < least) {
                        least = cost;
                        best = new Placed(text, box, Optional.of(mark));
                    }
                }
            }
        }
        take(best.text(), best.box(), best.mark());
    }

    private Box beside(Mark mark, TextBlock text, double[] direction, double distance) {
        double reach = distance / Math.hypot(direction[0], direction[1]);
        double x = frame.x(mark.across()) + direction[0] * reach + (direction[0] - 1) / 2 * text.width();
        double y = frame.y(mark.up()) + direction[1] * reach + (direction[1] - 1) / 2 * text.height();
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
        for (Curve line : panel.curves()) {
            if (isKeptClear(line)) {
                cost += crosses(line.points(), box.grownBy(LINE_BREATH).shape()) ? PER_LINE : 0;
            }
        }
        return cost;
    }

    /** A leader over a line would lead the words to the other side of it. */
    private double leaderCost(Mark mark, Box box) {
        Line2D leader = box.lineFrom(frame.x(mark.across()), frame.y(mark.up()));
        return PER_LINE
                * panel.curves().stream()
                        .filter(WordsInside::isKeptClear)
                        .filter(line -> frame.pieces(line.points()).stream().anyMatch(leader::intersectsLine))
                        .count();
    }

    private static boolean isKeptClear(Curve line) {
        return line.role() != Curve.Role.CONTOUR && line.role() != Curve.Role.GUIDE;
    }

    private boolean crosses(Points points, Rectangle2D box) {
        return frame.pieces(points).stream().anyMatch(piece -> piece.intersects(box));
    }

    /** As near to the middle of the patches as they hold the words. */
    private void placeInside(Area area) {
        TextBlock text = TextBlock.of(
                area.label(), Type.LABEL_STRONG, WIDTHS[0] * frame.area().width());
        Path2D patches = new Patches(area, frame).outline();
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
        take(text, best, Optional.empty());
    }

    /** As near to the middle of the line as there is room. */
    private void placeOnLine(Curve line) {
        double[] along = lengths(line.points());
        double whole = along[along.length - 1];
        if (whole < LEAST_LINE) {
            return;
        }
        TextBlock text = TextBlock.of(line.label(), Type.LABEL, Double.MAX_VALUE);
        Box best = null;
        double least = Double.POSITIVE_INFINITY;
        for (double at = STEP; at < whole; at += STEP) {
            double away = Math.abs(at - whole / 2);
            Box box = centred(line.points(), along, at, text);
            if (away < least && free(box) && frame.area().grownBy(-INSIDE).holds(box) && cost(box) < PER_LINE) {
                least = away;
                best = box;
            }
        }
        take(text, best, Optional.empty());
    }

    private double[] lengths(Points points) {
        double[] along = new double[points.count()];
        for (int i = 1; i < along.length; i++) {
            double dx = frame.x(points.across(i)) - frame.x(points.across(i - 1));
            double dy = frame.y(points.up(i)) - frame.y(points.up(i - 1));
            along[i] = along[i - 1] + Math.hypot(dx, dy);
        }
        return along;
    }

    private Box centred(Points points, double[] along, double at, TextBlock text) {
        int next = 1;
        while (along[next] < at) {
            next++;
        }
        double share = (at - along[next - 1]) / (along[next] - along[next - 1]);
        double x = frame.x(points.across(next - 1) + share * (points.across(next) - points.across(next - 1)));
        double y = frame.y(points.up(next - 1) + share * (points.up(next) - points.up(next - 1)));
        return new Box(x - text.width() / 2, y - text.height() / 2, text.width(), text.height());
    }

    private boolean free(Box box) {
        return taken.stream().noneMatch(box.grownBy(BREATH)::meets);
    }

    private void take(TextBlock text, Box box, Optional<Mark> mark) {
        if (box != null) {
            taken.add(box);
            placed.add(new Placed(text, box, mark));
        }
    }
}
