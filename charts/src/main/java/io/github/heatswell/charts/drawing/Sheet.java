package io.github.heatswell.charts.drawing;

import io.github.heatswell.charts.picture.Panel;
import io.github.heatswell.charts.picture.Picture;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Rectangle2D;
import org.jfree.chart.ChartRenderingInfo;
import org.jfree.chart.plot.PlotRenderingInfo;

/** Draws a whole picture onto anything that takes drawing. */
final class Sheet {

    private final Picture picture;
    private final SheetLayout layout;

    Sheet(Picture picture) {
        this.picture = picture;
        this.layout = SheetLayout.of(picture);
    }

    double width() {
        return layout.width();
    }

    double height() {
        return layout.height();
    }

    void draw(Graphics2D g) {
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        g.setPaint(Ink.PAPER);
        g.fill(new Rectangle2D.Double(0, 0, layout.width(), layout.height()));
        layout.header().draw(g, SheetLayout.MARGIN, SheetLayout.MARGIN);
        ChartRenderingInfo info = new ChartRenderingInfo(null);
        ChartAssembly.of(picture, layout.gutterWidth()).draw(g, layout.panels().shape(), null, info);
        drawOver(g, picture.upper(), info.getPlotInfo().getSubplotInfo(0));
        drawOver(g, picture.lower(), info.getPlotInfo().getSubplotInfo(1));
    }

    private void drawOver(Graphics2D g, Panel panel, PlotRenderingInfo info) {
        Frame frame = new Frame(Box.of(info.getDataArea()), picture.time(), panel.axis());
        picture.end().ifPresent(time -> HazardEnd.draw(g, frame, time));
        Box beside = picture.end().stream()
                .mapToObj(time -> HazardEnd.roomBeside(frame, time))
                .findFirst()
                .orElse(frame.area());
        double lanes = BandBars.height(panel.bands());
        Box room = new Box(beside.x(), beside.y(), beside.width(), beside.height() - lanes);
        new PanelOverlay(panel, frame, room, layout.gutterWidth()).draw(g);
    }
}
