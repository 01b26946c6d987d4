package io.github.heatswell.charts.drawing;

import io.github.heatswell.charts.picture.Bands;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import org.jfree.chart.annotations.AbstractXYAnnotation;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.PlotRenderingInfo;
import org.jfree.chart.plot.XYPlot;

/** Hatches the whole height of a panel, behind its lines, while the supply was shut off. */
final class ShutOffHatch extends AbstractXYAnnotation {

    private static final long serialVersionUID = 1L;
    private static final double DISTANCE = 11;

    private final double from;
    private final double to;

    ShutOffHatch(Bands.Span span) {
        this.from = span.from();
        this.to = span.to();
    }

    @Override
    public void draw(
            Graphics2D g,
            XYPlot plot,
            Rectangle2D area,
            ValueAxis time,
            ValueAxis values,
            int index,
            PlotRenderingInfo info) {
        double left = time.valueToJava2D(from, area, plot.getDomainAxisEdge());
        double right = time.valueToJava2D(to, area, plot.getDomainAxisEdge());
        Box box = new Box(left, area.getY(), Math.max(1, right - left), area.getHeight());
        g.setPaint(Ink.HATCH);
        g.setStroke(Strokes.HAIR);
        g.draw(Hatching.of(box, DISTANCE));
        g.draw(box.shape());
    }
}
