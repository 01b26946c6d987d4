package io.github.heatswell.charts.drawing;

import io.github.heatswell.charts.picture.Panel;
import io.github.heatswell.charts.picture.Picture;
import java.awt.Graphics2D;
import org.jfree.chart.ChartRenderingInfo;
import org.jfree.chart.plot.PlotRenderingInfo;

/** Draws a whole picture onto anything that takes drawing. */
final class Sheet implements Drawn {

    private final Picture picture;
    private final SheetLayout layout;

    Sheet(Picture picture) {
        this.picture = picture;
        this.layout = SheetLayout.of(picture);
    }

    @Override
    public double width() {
        return layout.width();
    }

    @Override
    public double height() {
        return layout.height();
    }

    @Override
    public String name() {
        return Description.name(picture.caption());
    }

    @Override
    public String description() {
        return Description.of(picture);
    }

    @Override
    public String fingerprint() {
        return Fingerprint.of(picture);
    }

    @Override
    public void draw(Graphics2D g) {
        Paper.prepare(g, layout.width(), layout.height());
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
