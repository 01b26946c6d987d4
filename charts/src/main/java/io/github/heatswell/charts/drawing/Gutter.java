package io.github.heatswell.charts.drawing;

import io.github.heatswell.charts.drawing.TextBlock.Words;
import io.github.heatswell.charts.picture.Area;
import io.github.heatswell.charts.picture.Axis;
import io.github.heatswell.charts.picture.Curve;
import io.github.heatswell.charts.picture.Panel;
import io.github.heatswell.charts.picture.Panel.Bands;
import io.github.heatswell.charts.picture.Panel.Level;
import io.github.heatswell.charts.picture.Points;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** Collects the names of a panel's lines, each at the right end of its line. */
final class Gutter {

    /** How far from the edge of the plot the names begin. */
    static final double LEAD = 32;

    /** The room above and below the plot that names may use. */
    private static final double OVERHANG = 12;

    private static final double BETWEEN = 3;

    /** The most lines a name may take. */
    private static final int MAX_LINES = 5;

    private final Panel panel;
    private final Frame frame;
    private final double width;

    Gutter(Panel panel, Frame frame, double width) {
        this.panel = panel;
        this.frame = frame;
        this.width = width;
    }

    /** The names, with as many lines each as the room allows. */
    List<Callout> callouts() {
        List<Callout> whole = whole();
        for (int lines = MAX_LINES; lines > 1; lines--) {
            List<Callout> shortened = shortened(whole, lines);
            if (height(shortened) <= frame.area().height() + 2 * OVERHANG) {
                return shortened;
            }
        }
        return shortened(whole, 1);
    }

    /** The height a panel needs beside which every name can stand whole, or as whole as names ever do. */
    static double neededHeight(Panel panel, Axis time, double width) {
        Frame any = new Frame(new Box(0, 0, 1000, 100), time, panel.axis());
        return height(shortened(new Gutter(panel, any, width).whole(), MAX_LINES)) - 2 * OVERHANG;
    }

    /** Where the names stand: their upper edges, in the same order. */
    double[] tops(List<Callout> callouts) {
        double[] centres = callouts.stream().mapToDouble(this::wantedCentre).toArray();
        double[] heights = callouts.stream()
                .mapToDouble(callout -> callout.words().height() + BETWEEN)
                .toArray();
        double[] tops = Spread.tops(
                centres, heights, frame.area().y() - OVERHANG, frame.area().bottom() + OVERHANG);
        return Arrays.stream(tops).map(top -> top + BETWEEN / 2).toArray();
    }

    /** Where the middle of a name belongs so that its first line is level with the line it names. */
    private double wantedCentre(Callout callout) {
        double at =
                Math.max(frame.area().y(), Math.min(callout.at(), frame.area().bottom()));
        return at + (callout.words().height() - Type.lineHeight(Type.LABEL)) / 2;
    }

    private List<Callout> whole() {
        List<Callout> whole = new ArrayList<>();
        panel.areas().forEach(area -> addArea(whole, area));
        panel.curves().forEach(curve -> addCurve(whole, curve));
        panel.levels().forEach(level -> whole.add(of(level)));
        addBands(whole);
        whole.sort(Comparator.comparingDouble(Callout::at));
        return whole;
    }

    private void addCurve(List<Callout> callouts, Curve curve) {
        Points points = curve.points();
        boolean reachesEdge =
                frame.x(points.across(points.count() - 1)) > frame.area().right() - 2;
        if (curve.name().isEmpty() || !reachesEdge) {
            return;
        }
        double end = frame.y(points.up(points.count() - 1));
        callouts.add(new Callout(
                end, Callout.Side.WITHIN, words(curve), Optional.of(Ink.line(curve.role())), Ink.of(curve.role())));
    }

    private TextBlock words(Curve curve) {
        List<Words> words = new ArrayList<>(List.of(Words.strong(curve.name())));
        if (!curve.label().isEmpty()) {
            words.add(Words.plain(curve.label()).onNewLine());
        }
        return TextBlock.of(words, width - LEAD);
    }

    private Callout of(Level level) {
        double at = frame.y(level.value());
        Callout.Side side = frame.up().holds(level.value())
                ? Callout.Side.WITHIN
                : level.value() > frame.up().to() ? Callout.Side.ABOVE : Callout.Side.BELOW;
        String beyond = side == Callout.Side.WITHIN ? "" : ", off the scale";
        TextBlock words =
                TextBlock.of(List.of(Words.strong(level.amount()), Words.plain(level.name() + beyond)), width - LEAD);
        return new Callout(at, side, words, Optional.empty(), Ink.of(level.kind()));
    }

    private void addArea(List<Callout> callouts, Area area) {
        if (!area.name().isEmpty()) {
            double middle = frame.y(middleAtEnd(area));
            TextBlock words = TextBlock.of(area.name(), Type.LABEL, width - LEAD);
            callouts.add(new Callout(middle, Callout.Side.WITHIN, words, Optional.of(Ink.WASH), Ink.of(area)));
        }
    }

    /** Between the lowest and the highest corner at its right end. */
    private static double middleAtEnd(Area area) {
        Points rim = area.rims().get(0);
        double end =
                IntStream.range(0, rim.count()).mapToDouble(rim::across).max().orElseThrow();
        DoubleSummaryStatistics there = IntStream.range(0, rim.count())
                .filter(i -> rim.across(i) == end)
                .mapToDouble(rim::up)
                .summaryStatistics();
        return (there.getMin() + there.getMax()) / 2;
    }

    private void addBands(List<Callout> callouts) {
        for (int lane = 0; lane < panel.bands().size(); lane++) {
            Bands bands = panel.bands().get(lane);
            callouts.add(new Callout(
                    BandBars.middle(frame, lane),
                    Callout.Side.WITHIN,
                    TextBlock.of(bands.label(), Type.LABEL, width - LEAD),
                    Optional.empty(),
                    Ink.of(bands.kind())));
        }
    }

    private static double height(List<Callout> callouts) {
        return callouts.stream()
                .mapToDouble(callout -> callout.words().height() + BETWEEN)
                .sum();
    }

    private static List<Callout> shortened(List<Callout> callouts, int lines) {
        return callouts.stream()
                .map(callout -> new Callout(
                        callout.at(),
                        callout.side(),
                        callout.words().inLines(lines),
                        callout.sample(),
                        callout.color()))
                .toList();
    }

    /**
     * Stacks blocks without overlap, each as near as possible to its wanted place: overlapping blocks form a pile centred
     * on the average of their wanted places.
     */
    static final class Spread {

        private Spread() {}

        /**
         * The upper edges of the blocks, which stay in the order given, the first at the top.
         *
         * @param centres where the middle of each block is wanted
         * @param heights how tall each block is
         * @param top the upper end of the room
         * @param bottom the lower end of the room; overrun only if the blocks are taller together than the room
         */
        static double[] tops(double[] centres, double[] heights, double top, double bottom) {
            List<Pile> piles = new ArrayList<>();
            for (int index = 0; index < centres.length; index++) {
                Pile pile = new Pile(List.of(index), centres[index] - heights[index] / 2, heights[index])
                        .within(top, bottom);
                while (!piles.isEmpty() && piles.get(piles.size() - 1).bottom() > pile.top()) {
                    pile = piles.remove(piles.size() - 1)
                            .under(pile, centres, heights)
                            .within(top, bottom);
                }
                piles.add(pile);
            }
            double[] tops = new double[centres.length];
            for (Pile pile : piles) {
                double at = pile.top();
                for (int index : pile.members()) {
                    tops[index] = at;
                    at += heights[index];
                }
            }
            return tops;
        }

        /**
         * Blocks that lie on each other.
         *
         * @param members the blocks from above to below
         * @param top the upper edge of the first
         * @param height how tall they are together
         */
        private record Pile(List<Integer> members, double top, double height) {

            double bottom() {
                return top + height;
            }

            /** This pile with another under it, at the height that suits the members on average. */
            Pile under(Pile lower, double[] centres, double[] heights) {
                List<Integer> all = new ArrayList<>(members);
                all.addAll(lower.members);
                double above = 0;
                double wanted = 0;
                for (int index : all) {
                    wanted += centres[index] - heights[index] / 2 - above;
                    above += heights[index];
                }
                return new Pile(all, wanted / all.size(), above);
            }

            Pile within(double least, double most) {
                return new Pile(members, Math.max(least, Math.min(top, most - height)), height);
            }
        }
    }

    /**
     * A line's name beside the plot. A thin grey leader runs from a dot where the line ends to the name; an upright sample
     * of the line stands before the name of a curve. Nothing beside the plot continues in a curve's colour, width or
     * direction, so that no leader is mistaken for the curve.
     *
     * @param at the height (logical pixels) at which the line meets the edge of the plot
     * @param side whether the line lies on the scale or beyond one of its ends
     * @param words the name
     * @param sample how the line is drawn, for a sample before the name; none where the words alone tell which line it is
     * @param color the line's own colour
     */
    record Callout(double at, Side side, TextBlock words, Optional<BasicStroke> sample, Color color) {

        private static final double DOT = 3.4;
        private static final double FROM_EDGE = 5;
        /** The upright sample, before the words. */
        private static final double SAMPLE = 6;

        private static final double GAP = 4;

        /** Where a line lies. */
        enum Side {
            /** On the scale. */
            WITHIN,
            /** Above its upper end. */
            ABOVE,
            /** Below its lower end. */
            BELOW
        }

        /**
         * Draws it.
         *
         * @param g where to
         * @param plot the room of the lines
         * @param top where the words begin (logical pixels)
         */
        void draw(Graphics2D g, Box plot, double top) {
            double edge = plot.right();
            double textX = edge + Gutter.LEAD;
            double firstLine = top + Type.lineHeight(Type.LABEL) / 2;
            if (side == Side.WITHIN) {
                drawLeader(g, edge + FROM_EDGE, textX - SAMPLE - GAP, firstLine);
            } else {
                drawArrow(g, edge, firstLine);
            }
            sample.ifPresent(stroke -> drawSample(g, stroke, textX - SAMPLE, top));
            words.draw(g, textX, top, Ink.TEXT);
        }

        private void drawLeader(Graphics2D g, double from, double to, double firstLine) {
            g.setPaint(Ink.LEADER);
            g.setStroke(Ink.LEADER_LINE);
            g.draw(new Line2D.Double(from, at, to, firstLine));
            g.fill(new Ellipse2D.Double(from - DOT / 2, at - DOT / 2, DOT, DOT));
        }

        private void drawSample(Graphics2D g, BasicStroke stroke, double x, double top) {
            g.setPaint(color);
            g.setStroke(stroke);
            g.draw(new Line2D.Double(x, top + 1, x, top + words.height() - 1));
        }

        /** An arrow over the edge of the plot: the line lies out there. */
        private void drawArrow(Graphics2D g, double edge, double firstLine) {
            double direction = side == Side.ABOVE ? -1 : 1;
            double x = edge + Gutter.LEAD / 2 - 1;
            g.setPaint(color);
            g.setStroke(Ink.LEADER_LINE);
            g.draw(new Line2D.Double(x, firstLine - 6 * direction, x, firstLine));
            Path2D head = new Path2D.Double();
            head.moveTo(x, firstLine + 6 * direction);
            head.lineTo(x - 4, firstLine - direction);
            head.lineTo(x + 4, firstLine - direction);
            head.closePath();
            g.fill(head);
        }
    }
}
