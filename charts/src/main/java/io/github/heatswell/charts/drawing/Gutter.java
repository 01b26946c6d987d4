package io.github.heatswell.charts.drawing;

import io.github.heatswell.charts.drawing.TextBlock.Words;
import io.github.heatswell.charts.picture.Area;
import io.github.heatswell.charts.picture.Axis;
import io.github.heatswell.charts.picture.Bands;
import io.github.heatswell.charts.picture.Curve;
import io.github.heatswell.charts.picture.Level;
import io.github.heatswell.charts.picture.Panel;
import io.github.heatswell.charts.picture.Points;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** Gathers the names of a panel's lines, which stand at the right end of each line. */
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
                end, Callout.Side.WITHIN, words(curve), Optional.of(Strokes.of(curve.role())), Ink.of(curve.role())));
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
            callouts.add(new Callout(middle, Callout.Side.WITHIN, words, Optional.of(Strokes.WASH), Ink.of(area)));
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
}
