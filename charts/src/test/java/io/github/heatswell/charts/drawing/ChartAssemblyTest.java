package io.github.heatswell.charts.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.charts.drawing.ChartAssembly.TickAxis;
import io.github.heatswell.charts.picture.Area;
import io.github.heatswell.charts.picture.Axis;
import io.github.heatswell.charts.picture.Axis.Tick;
import io.github.heatswell.charts.picture.Curve;
import io.github.heatswell.charts.picture.Panel;
import io.github.heatswell.charts.picture.Panel.Level;
import io.github.heatswell.charts.picture.Picture;
import io.github.heatswell.charts.picture.Picture.Caption;
import io.github.heatswell.charts.picture.Points;
import io.github.heatswell.charts.picture.Size;
import java.io.IOException;
import java.util.List;
import java.util.OptionalDouble;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTick;
import org.jfree.chart.plot.CombinedDomainXYPlot;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.Layer;
import org.jfree.chart.ui.RectangleEdge;
import org.junit.jupiter.api.Test;

class ChartAssemblyTest {

    private static final String AREA = "fill=\"rgb(233,207,180)\"";

    private static final Picture PICTURE = new Picture(
            new Size(1040, 700),
            new Caption("", "title", "subtitle"),
            new Axis("time (min)", 0, 60, 10),
            OptionalDouble.empty(),
            panel(new Axis("gauge pressure (bar)", 4, 8, 0.5), Curve.Role.PRESSURE),
            panel(new Axis("mean water temperature (°C)", 0, 70, 10), Curve.Role.TEMPERATURE));

    private final JFreeChart chart = ChartAssembly.of(PICTURE, SheetLayout.of(PICTURE));
    private final CombinedDomainXYPlot both = (CombinedDomainXYPlot) chart.getPlot();

    @Test
    void sharesTheTimeAxis() {
        NumberAxis time = (NumberAxis) both.getDomainAxis();
        assertEquals("time (min)", time.getLabel());
        assertEquals(0, time.getLowerBound());
        assertEquals(60, time.getUpperBound());
        assertEquals(List.of("0", "10", "20", "30", "40", "50", "60"), ticks(time, RectangleEdge.BOTTOM));
    }

    /** Contract: the upper panel is the larger one, but not where nothing happens in it. */
    @Test
    void aFlatUpperPanelIsNotTheLarger() {
        Picture flat = new Picture(
                PICTURE.size(),
                PICTURE.caption(),
                PICTURE.across(),
                OptionalDouble.empty(),
                level(PICTURE.upper()),
                PICTURE.lower());
        assertTrue(ChartAssembly.share(PICTURE, PICTURE.upper()) > ChartAssembly.share(PICTURE, PICTURE.lower()));
        assertEquals(ChartAssembly.share(flat, flat.lower()), ChartAssembly.share(flat, flat.upper()));
    }

    /** The same panel, with each line at the height at which it begins. */
    private static Panel level(Panel panel) {
        List<Curve> curves = panel.curves().stream()
                .map(curve -> new Curve(
                        curve.role(), curve.name(), curve.label(), new Points(new double[] {0, 60}, new double[] {6, 6
                        })))
                .toList();
        return new Panel(panel.axis(), curves, panel.levels(), panel.marks());
    }

    @Test
    void setsRangesAndTicks() {
        NumberAxis pressure = (NumberAxis) upper().getRangeAxis();
        assertEquals(4, pressure.getLowerBound());
        assertEquals(8, pressure.getUpperBound());
        assertEquals("4.5", ticks(pressure, RectangleEdge.LEFT).get(1));
    }

    @Test
    void namesTicksWhereTheyHaveNames() {
        List<Tick> ticks = List.of(new Tick(3, "06:00"), new Tick(6, "09:00"));
        TickAxis axis = axis(ticks);
        assertEquals(
                List.of("06:00", "09:00"),
                axis.refreshTicks(null, null, null, RectangleEdge.BOTTOM).stream()
                        .map(NumberTick::getText)
                        .toList());
        TickAxis same = axis(ticks);
        assertEquals(axis, same);
        assertEquals(axis.hashCode(), same.hashCode());
        assertNotEquals(axis, axis(ticks.subList(0, 1)));
    }

    @Test
    void drawsTheCurveAsGiven() {
        assertEquals(1, upper().getDataset().getSeriesCount());
        assertEquals(3, upper().getDataset().getItemCount(0));
        assertEquals(30, upper().getDataset().getXValue(0, 1));
        assertEquals(7, upper().getDataset().getYValue(0, 1));
    }

    @Test
    void drawsLevelsBehindTheCurve() {
        ValueMarker level = (ValueMarker)
                upper().getRangeMarkers(Layer.BACKGROUND).iterator().next();
        assertEquals(7, level.getValue());
        assertEquals(1, level.getAlpha());
        assertNull(level.getLabel(), "names stand beside the plot");
    }

    @Test
    void hasNoLegendAndNoTitleOfItsOwn() {
        assertNull(chart.getLegend());
        assertNull(chart.getTitle());
    }

    /** Such as the layers of a tank that is equally warm all over, and of a run that ends as it begins. */
    @Test
    void anAreaWithoutHeightOrWidthIsNoArea() throws IOException {
        assertTrue(svg(5, 5.5, 60).contains(AREA), "an area is drawn");
        String flat = svg(5, 5, 60);
        assertFalse(flat.contains(AREA) || flat.contains("NaN"));
        String narrow = svg(5, 5.5, 0);
        assertFalse(narrow.contains(AREA) || narrow.contains("NaN"));
    }

    private static String svg(double low, double high, double time) throws IOException {
        double[] times = {0, time};
        Area area = Area.between(
                Area.Role.LAYERS,
                "",
                Points.overTime(times, new double[] {low, low}),
                Points.overTime(times, new double[] {high, high}));
        Panel lower = PICTURE.lower();
        Picture picture = new Picture(
                PICTURE.size(),
                PICTURE.caption(),
                PICTURE.across(),
                PICTURE.end(),
                new Panel(PICTURE.upper().axis(), List.of(area), lower.curves(), List.of(), List.of(), List.of()),
                lower);
        StringBuilder svg = new StringBuilder();
        Sheet.of(picture).writeSvg(svg);
        return svg.toString();
    }

    private static List<String> ticks(NumberAxis axis, RectangleEdge edge) {
        return ((TickAxis) axis)
                .refreshTicks(null, null, null, edge).stream()
                        .map(NumberTick::getText)
                        .toList();
    }

    private static TickAxis axis(List<Tick> ticks) {
        return new TickAxis("time of day", new Axis("time of day", 0, 10, ticks));
    }

    private XYPlot upper() {
        return both.getSubplots().get(0);
    }

    private static Panel panel(Axis axis, Curve.Role role) {
        Points points = new Points(new double[] {0, 30, 60}, new double[] {5, 7, 6});
        return new Panel(
                axis,
                List.of(new Curve(role, "", "", points)),
                List.of(new Level(Level.Kind.RELIEF_SET, 7, "7.0 bar", "relief opens")),
                List.of());
    }
}
