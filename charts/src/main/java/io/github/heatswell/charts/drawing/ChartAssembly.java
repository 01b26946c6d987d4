package io.github.heatswell.charts.drawing;

import io.github.heatswell.charts.picture.Area;
import io.github.heatswell.charts.picture.Axis;
import io.github.heatswell.charts.picture.Axis.Tick;
import io.github.heatswell.charts.picture.Curve;
import io.github.heatswell.charts.picture.Panel;
import io.github.heatswell.charts.picture.Panel.Bands;
import io.github.heatswell.charts.picture.Panel.Level;
import io.github.heatswell.charts.picture.Picture;
import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.Paint;
import java.awt.geom.Rectangle2D;
import java.util.Arrays;
import java.util.List;
import java.util.function.BiConsumer;
import java.util.stream.IntStream;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.annotations.AbstractXYAnnotation;
import org.jfree.chart.axis.AxisSpace;
import org.jfree.chart.axis.AxisState;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTick;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.CombinedDomainXYPlot;
import org.jfree.chart.plot.PlotRenderingInfo;
import org.jfree.chart.plot.SeriesRenderingOrder;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.ui.Layer;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.chart.ui.RectangleInsets;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.xy.DefaultXYDataset;

/**
 * Builds scales, grids, patches, curves and levels of a picture. Everything visible is set here, so that no theme set
 * elsewhere in the program changes the result.
 */
final class ChartAssembly {

    /** How much of the height the upper panel gets while its lines move, */
    private static final int LARGE = 8;
    /** and any other. */
    private static final int SMALL = 5;
    /** Lines that vary by less than this part of their axis are flat. */
    private static final double FLAT = 0.01;

    private static final float TICK_MARK = 5;

    private final Picture picture;
    private final SheetLayout layout;
    private final boolean single;

    private ChartAssembly(Picture picture, SheetLayout layout) {
        this.picture = picture;
        this.layout = layout;
        this.single = layout.column().isPresent();
    }

    /** The chart without any words but the numbers at the ticks and the name of the axis across. */
    static JFreeChart of(Picture picture, SheetLayout layout) {
        JFreeChart chart =
                new JFreeChart(null, JFreeChart.DEFAULT_TITLE_FONT, new ChartAssembly(picture, layout).panels(), false);
        chart.setBackgroundPaint(null);
        chart.setBorderVisible(false);
        chart.setPadding(RectangleInsets.ZERO_INSETS);
        return chart;
    }

    /** What a panel gets of the height: the upper one most, or as much as the lower if its own lines are flat. */
    static int share(Picture picture, Panel panel) {
        return panel == picture.upper() && !isFlat(panel) ? LARGE : SMALL;
    }

    private static boolean isFlat(Panel panel) {
        double least = FLAT * (panel.axis().to() - panel.axis().from());
        return panel.areas().isEmpty()
                && panel.curves().stream()
                        .map(Curve::points)
                        .allMatch(points -> points.highest() - points.lowest() < least);
    }

    private CombinedDomainXYPlot panels() {
        Axis across = picture.across();
        CombinedDomainXYPlot all = new CombinedDomainXYPlot(axis(across, across.label()));
        all.setGap(SheetLayout.BETWEEN_PANELS);
        all.setInsets(new RectangleInsets(
                single ? SheetLayout.ABOVE_SINGLE : SheetLayout.ABOVE_PANELS, 0, 0, layout.rightOfPanels()));
        all.setBackgroundPaint(null);
        all.setOutlineVisible(false);
        if (single) {
            AxisSpace below = new AxisSpace();
            below.setBottom(SheetLayout.BELOW_SINGLE);
            all.setFixedDomainAxisSpace(below);
        }
        for (Panel panel : picture.panels()) {
            all.add(plot(panel), share(picture, panel));
        }
        return all;
    }

    private XYPlot plot(Panel panel) {
        XYPlot plot = new XYPlot(null, null, axis(panel.axis(), null), null);
        plot.setInsets(RectangleInsets.ZERO_INSETS);
        plot.setAxisOffset(RectangleInsets.ZERO_INSETS);
        plot.setBackgroundPaint(null);
        plot.setOutlineVisible(single);
        plot.setOutlinePaint(Ink.FOOT);
        plot.setOutlineStroke(Ink.HAIR);
        boolean grid = !(single && isFilled(panel));
        plot.setDomainGridlinesVisible(grid);
        plot.setDomainGridlinePaint(Ink.GRID);
        plot.setDomainGridlineStroke(Ink.HAIR);
        plot.setRangeGridlinesVisible(grid);
        plot.setRangeGridlinePaint(Ink.GRID);
        plot.setRangeGridlineStroke(Ink.HAIR);
        plot.setDomainZeroBaselineVisible(false);
        plot.setRangeZeroBaselineVisible(false);
        if (single) {
            AxisSpace left = new AxisSpace();
            left.setLeft(SheetLayout.leftOf(panel.axis()));
            plot.setFixedRangeAxisSpace(left);
        }
        panel.levels().forEach(level -> addLevel(plot, level));
        addCurves(plot, panel);
        addUnderlays(plot, panel);
        return plot;
    }

    private static boolean isFilled(Panel panel) {
        return !panel.areas().isEmpty();
    }

    private static void addLevel(XYPlot plot, Level level) {
        ValueMarker line = new ValueMarker(level.value());
        line.setPaint(Ink.of(level.kind()));
        line.setStroke(Ink.line(level.kind()));
        line.setAlpha(1);
        plot.addRangeMarker(line, Layer.BACKGROUND);
    }

    /** As annotations of the renderer, which lie behind its curves. */
    private void addUnderlays(XYPlot plot, Panel panel) {
        for (Area area : panel.areas()) {
            addUnderlay(
                    plot, new Underlay(picture.across(), panel.axis(), (g, frame) -> new Patches(area, frame).fill(g)));
        }
        panel.bands().stream()
                .filter(bands -> bands.kind() == Bands.Kind.SUPPLY_OFF)
                .flatMap(bands -> bands.spans().stream())
                .forEach(span -> addUnderlay(
                        plot,
                        new Underlay(
                                picture.across(), panel.axis(), (g, frame) -> BandBars.drawShutOff(g, span, frame))));
    }

    private static void addUnderlay(XYPlot plot, Underlay underlay) {
        plot.getRenderer().addAnnotation(underlay, Layer.BACKGROUND);
    }

    private void addCurves(XYPlot plot, Panel panel) {
        DefaultXYDataset lines = new DefaultXYDataset();
        XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(true, false);
        renderer.setDrawSeriesLineAsPath(true);
        for (Curve curve : panel.curves()) {
            if (single && isFilled(panel)) {
                // Paper under a line shows it on dark and light patches alike.
                add(lines, renderer, curve, Ink.PAPER, Ink.halo(curve.role()));
            }
            add(lines, renderer, curve, Ink.of(curve.role()), Ink.line(curve.role()));
        }
        // The widest line lies lowest, so that the others show on top of it.
        plot.setSeriesRenderingOrder(SeriesRenderingOrder.FORWARD);
        plot.setDataset(lines);
        plot.setRenderer(renderer);
    }

    private static void add(
            DefaultXYDataset lines, XYLineAndShapeRenderer renderer, Curve curve, Paint paint, BasicStroke stroke) {
        int series = lines.getSeriesCount();
        lines.addSeries(series, curve.points().toArrays());
        renderer.setSeriesPaint(series, paint);
        renderer.setSeriesStroke(series, stroke);
    }

    private NumberAxis axis(Axis axis, String label) {
        NumberAxis scale = new TickAxis(label, axis);
        scale.setLabelFont(Type.HEADING);
        scale.setLabelPaint(Ink.TEXT);
        scale.setLabelInsets(new RectangleInsets(6, 0, 2, 0));
        scale.setTickLabelFont(Type.TICK);
        scale.setTickLabelPaint(Ink.QUIET_TEXT);
        scale.setTickLabelInsets(single ? new RectangleInsets(8, 9, 2, 2) : new RectangleInsets(3, 4, 2, 7));
        scale.setTickMarksVisible(single);
        scale.setTickMarkOutsideLength(TICK_MARK);
        scale.setTickMarkPaint(Ink.FOOT);
        scale.setTickMarkStroke(Ink.HAIR);
        scale.setMinorTickMarksVisible(false);
        scale.setAxisLinePaint(Ink.FOOT);
        scale.setAxisLineStroke(Ink.HAIR);
        scale.setAxisLineVisible(label != null && !single);
        return scale;
    }

    /** What is painted behind the lines of a panel. Never written as an object, though its ancestors could be. */
    private static final class Underlay extends AbstractXYAnnotation {

        private static final long serialVersionUID = 1L;

        private final transient Axis across;
        private final transient Axis up;
        private final transient BiConsumer<Graphics2D, Frame> painter;

        Underlay(Axis across, Axis up, BiConsumer<Graphics2D, Frame> painter) {
            this.across = across;
            this.up = up;
            this.painter = painter;
        }

        @Override
        public void draw(
                Graphics2D g,
                XYPlot plot,
                Rectangle2D area,
                ValueAxis domain,
                ValueAxis range,
                int index,
                PlotRenderingInfo info) {
            painter.accept(g, new Frame(Box.of(area), across, up));
        }
    }

    /** A scale whose ticks stand where its picture puts them: clock times and months are no multiples of anything. */
    static final class TickAxis extends NumberAxis {

        private static final long serialVersionUID = 1L;

        private final double[] places;
        private final String[] names;

        TickAxis(String label, Axis axis) {
            super(label);
            places = axis.ticks().stream().mapToDouble(Tick::at).toArray();
            names = axis.ticks().stream().map(Tick::name).toArray(String[]::new);
            setAutoRange(false);
            setRange(axis.from(), axis.to());
        }

        @Override
        public List<NumberTick> refreshTicks(Graphics2D g, AxisState state, Rectangle2D area, RectangleEdge edge) {
            TextAnchor anchor = edge == RectangleEdge.LEFT ? TextAnchor.CENTER_RIGHT : TextAnchor.TOP_CENTER;
            return IntStream.range(0, names.length)
                    .mapToObj(i -> new NumberTick(places[i], names[i], anchor, TextAnchor.CENTER, 0))
                    .toList();
        }

        @Override
        public boolean equals(Object other) {
            return other instanceof TickAxis axis
                    && super.equals(other)
                    && Arrays.equals(places, axis.places)
                    && Arrays.equals(names, axis.names);
        }

        @Override
        public int hashCode() {
            return 31 * super.hashCode() + Arrays.hashCode(names);
        }
    }
}
