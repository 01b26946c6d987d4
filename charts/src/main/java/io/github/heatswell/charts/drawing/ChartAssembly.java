package io.github.heatswell.charts.drawing;

import io.github.heatswell.charts.picture.Area;
import io.github.heatswell.charts.picture.Axis;
import io.github.heatswell.charts.picture.Bands;
import io.github.heatswell.charts.picture.Curve;
import io.github.heatswell.charts.picture.Level;
import io.github.heatswell.charts.picture.Panel;
import io.github.heatswell.charts.picture.Picture;
import java.awt.Shape;
import java.awt.geom.Path2D;
import java.math.BigDecimal;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.Locale;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.annotations.XYShapeAnnotation;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTickUnit;
import org.jfree.chart.plot.CombinedDomainXYPlot;
import org.jfree.chart.plot.SeriesRenderingOrder;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.ui.Layer;
import org.jfree.chart.ui.RectangleInsets;
import org.jfree.data.xy.DefaultXYDataset;

/**
 * Builds scales, grids, curves and levels of a picture. Everything visible is set here, so that no theme set elsewhere
 * in the same program changes the result.
 */
final class ChartAssembly {

    /** How much of the height the upper panel gets. */
    static final int UPPER_SHARE = 8;

    /** How much of the height the lower panel gets. */
    static final int LOWER_SHARE = 5;

    private ChartAssembly() {}

    /** The chart without any words but the numbers at the ticks; the names at the right take the given room. */
    static JFreeChart of(Picture picture, double gutterWidth) {
        CombinedDomainXYPlot both =
                new CombinedDomainXYPlot(axis(picture.time(), picture.time().label()));
        both.setGap(SheetLayout.BETWEEN_PANELS);
        both.setInsets(new RectangleInsets(SheetLayout.ABOVE_PANELS, 0, 0, gutterWidth));
        both.setBackgroundPaint(null);
        both.setOutlineVisible(false);
        both.add(plot(picture.upper()), UPPER_SHARE);
        both.add(plot(picture.lower()), LOWER_SHARE);
        JFreeChart chart = new JFreeChart(null, JFreeChart.DEFAULT_TITLE_FONT, both, false);
        chart.setBackgroundPaint(null);
        chart.setBorderVisible(false);
        chart.setPadding(RectangleInsets.ZERO_INSETS);
        return chart;
    }

    private static XYPlot plot(Panel panel) {
        XYPlot plot = new XYPlot(null, null, axis(panel.axis(), null), null);
        plot.setInsets(RectangleInsets.ZERO_INSETS);
        plot.setAxisOffset(RectangleInsets.ZERO_INSETS);
        plot.setBackgroundPaint(null);
        plot.setOutlineVisible(false);
        plot.setDomainGridlinePaint(Ink.GRID);
        plot.setDomainGridlineStroke(Strokes.HAIR);
        plot.setRangeGridlinePaint(Ink.GRID);
        plot.setRangeGridlineStroke(Strokes.HAIR);
        plot.setDomainZeroBaselineVisible(false);
        plot.setRangeZeroBaselineVisible(false);
        for (Level level : panel.levels()) {
            addLevel(plot, level);
        }
        addCurves(plot, panel);
        panel.areas().forEach(area -> addArea(plot, area));
        panel.bands().stream()
                .filter(bands -> bands.kind() == Bands.Kind.SUPPLY_OFF)
                .flatMap(bands -> bands.spans().stream())
                .forEach(span -> plot.getRenderer().addAnnotation(new ShutOffHatch(span), Layer.BACKGROUND));
        return plot;
    }

    private static void addLevel(XYPlot plot, Level level) {
        ValueMarker line = new ValueMarker(level.value());
        line.setPaint(Strokes.color(level.kind()));
        line.setStroke(Strokes.of(level.kind()));
        line.setAlpha(1);
        plot.addRangeMarker(line, Layer.BACKGROUND);
    }

    /** As an annotation of the renderer, which lies behind its curves; an area without width or height cannot be scaled. */
    private static void addArea(XYPlot plot, Area area) {
        Shape outline = outline(area);
        if (outline.getBounds2D().isEmpty()) {
            return;
        }
        XYShapeAnnotation filled = new XYShapeAnnotation(outline, Strokes.HAIR, null, Strokes.color(area.role()));
        plot.getRenderer().addAnnotation(filled, Layer.BACKGROUND);
    }

    private static Shape outline(Area area) {
        Path2D path = new Path2D.Double();
        path.moveTo(area.low().time(0), area.low().value(0));
        for (int i = 0; i < area.high().count(); i++) {
            path.lineTo(area.high().time(i), area.high().value(i));
        }
        for (int i = area.low().count() - 1; i > 0; i--) {
            path.lineTo(area.low().time(i), area.low().value(i));
        }
        path.closePath();
        return path;
    }

    private static void addCurves(XYPlot plot, Panel panel) {
        DefaultXYDataset lines = new DefaultXYDataset();
        XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(true, false);
        renderer.setDrawSeriesLineAsPath(true);
        for (int i = 0; i < panel.curves().size(); i++) {
            Curve curve = panel.curves().get(i);
            lines.addSeries(curve.role(), curve.points().toArrays());
            renderer.setSeriesPaint(i, Strokes.color(curve.role()));
            renderer.setSeriesStroke(i, Strokes.of(curve.role()));
        }
        // The widest line lies lowest, so that the others show on top of it.
        plot.setSeriesRenderingOrder(SeriesRenderingOrder.FORWARD);
        plot.setDataset(lines);
        plot.setRenderer(renderer);
    }

    private static NumberAxis axis(Axis axis, String label) {
        NumberAxis scale = axis.named().isEmpty() ? new NumberAxis(label) : new NamedTickAxis(label, axis.named());
        scale.setAutoRange(false);
        scale.setRange(axis.from(), axis.to());
        scale.setTickUnit(new NumberTickUnit(axis.tick(), format(axis.tick())));
        scale.setLabelFont(Type.HEADING);
        scale.setLabelPaint(Ink.TEXT);
        scale.setLabelInsets(new RectangleInsets(6, 0, 2, 0));
        scale.setTickLabelFont(Type.TICK);
        scale.setTickLabelPaint(Ink.QUIET_TEXT);
        scale.setTickLabelInsets(new RectangleInsets(3, 4, 2, 7));
        scale.setTickMarksVisible(false);
        scale.setMinorTickMarksVisible(false);
        scale.setAxisLinePaint(Ink.FOOT);
        scale.setAxisLineStroke(Strokes.HAIR);
        scale.setAxisLineVisible(label != null);
        return scale;
    }

    private static DecimalFormat format(double tick) {
        int decimals = Math.max(0, BigDecimal.valueOf(tick).stripTrailingZeros().scale());
        String pattern = decimals == 0 ? "0" : "0." + "0".repeat(decimals);
        return new DecimalFormat(pattern, DecimalFormatSymbols.getInstance(Locale.ROOT));
    }
}
