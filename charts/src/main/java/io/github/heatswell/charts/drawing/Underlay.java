package io.github.heatswell.charts.drawing;

import io.github.heatswell.charts.picture.Axis;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.function.BiConsumer;
import org.jfree.chart.annotations.AbstractXYAnnotation;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.PlotRenderingInfo;
import org.jfree.chart.plot.XYPlot;

/** What is painted behind the lines of a panel. Never written as an object, though its ancestors could be. */
final class Underlay extends AbstractXYAnnotation {

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
