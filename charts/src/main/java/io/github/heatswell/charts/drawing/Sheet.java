package io.github.heatswell.charts.drawing;

import io.github.heatswell.charts.drawing.Key.BarList;
import io.github.heatswell.charts.picture.Area;
import io.github.heatswell.charts.picture.Curve;
import io.github.heatswell.charts.picture.Panel;
import io.github.heatswell.charts.picture.Panel.Bands;
import io.github.heatswell.charts.picture.Panel.Level;
import io.github.heatswell.charts.picture.Panel.Mark;
import io.github.heatswell.charts.picture.Picture;
import io.github.heatswell.charts.picture.Picture.Bars;
import io.github.heatswell.charts.picture.Picture.Caption;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import org.jfree.chart.ChartRenderingInfo;

/**
 * A picture laid out on a sheet, to be drawn onto anything. The only entry point of this package; callers use
 * {@link io.github.heatswell.charts.Chart}.
 */
public final class Sheet {

    private final Picture picture;
    private final SheetLayout layout;

    private Sheet(Picture picture) {
        this.picture = picture;
        this.layout = SheetLayout.of(picture);
    }

    /**
     * Lays a picture out.
     *
     * @param picture what to draw
     * @return the sheet
     * @throws IOException if this Java finds no fonts; the message then names what to install
     */
    public static Sheet of(Picture picture) throws IOException {
        Type.requireFonts();
        return new Sheet(picture);
    }

    /** The width in logical pixels. */
    double width() {
        return layout.width();
    }

    /** The height in logical pixels. */
    double height() {
        return layout.height();
    }

    /** What the picture is called: the hazard, if there is one, and the finding. */
    String name() {
        Caption caption = picture.caption();
        return caption.hazard().isEmpty() ? caption.title() : caption.hazard() + " " + caption.title();
    }

    /** What the picture shows. */
    String description() {
        return Description.of(picture);
    }

    /**
     * Draws everything, paper included.
     *
     * @param g where to, the origin at the upper left corner
     */
    public void draw(Graphics2D g) {
        prepare(g, width(), height());
        layout.header().draw(g, SheetLayout.MARGIN, SheetLayout.MARGIN);
        ChartRenderingInfo info = new ChartRenderingInfo(null);
        ChartAssembly.of(picture, layout).draw(g, layout.panels().shape(), null, info);
        for (int i = 0; i < picture.panels().size(); i++) {
            Panel panel = picture.panels().get(i);
            Box area = Box.of(info.getPlotInfo().getSubplotInfo(i).getDataArea());
            Frame frame = new Frame(area, picture.across(), panel.axis());
            layout.column()
                    .map(column -> new PanelOverlay(panel, frame, column))
                    .orElseGet(() -> new PanelOverlay(panel, frame, picture.end(), layout.rightOfPanels()))
                    .draw(g);
        }
    }

    /** The empty sheet, and how finely is drawn on it. */
    static void prepare(Graphics2D g, double width, double height) {
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        g.setPaint(Ink.PAPER);
        g.fill(new Box(0, 0, width, height).shape());
    }

    /**
     * Draws everything into an image.
     *
     * @param scale how many of its pixels stand for a logical one (-), above 0
     * @return the image
     */
    public BufferedImage image(double scale) {
        int wide = (int) Math.ceil(scale * width());
        int high = (int) Math.ceil(scale * height());
        BufferedImage image = new BufferedImage(wide, high, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.scale(scale, scale);
        draw(g);
        g.dispose();
        return image;
    }

    /**
     * Writes an image as PNG. The stream stays open.
     *
     * @param scale how many of its pixels stand for a logical one (-), above 0
     * @param out where to
     * @throws IOException if it cannot be written
     */
    public void writePng(double scale, OutputStream out) throws IOException {
        Objects.requireNonNull(out, "out");
        PngWriter.write(image(scale), out);
    }

    /**
     * Writes one SVG element that can stand alone or inside a page, next to others.
     *
     * @param out where to
     * @throws IOException if it cannot be written
     */
    public void writeSvg(Appendable out) throws IOException {
        new SvgWriter(this).write(Objects.requireNonNull(out, "out"));
    }

    /** Where everything stands. */
    SheetLayout layout() {
        return layout;
    }

    /** A text description of a picture, for screen readers. */
    private static final class Description {

        private Description() {}

        /** What the picture shows. */
        static String of(Picture picture) {
            String shown = picture.key()
                    .map(key -> withKey(picture, key))
                    .orElseGet(() -> (picture.panels().size() == 2 ? " Two" : " Three") + " charts over the "
                            + picture.across().label() + "."
                            + picture.panels().stream().map(Description::named).collect(Collectors.joining()));
            return (picture.caption().subtitle() + shown).strip();
        }

        private static String named(Panel panel) {
            List<String> parts = new ArrayList<>();
            for (Curve curve : panel.curves()) {
                if (!curve.name().isEmpty()) {
                    parts.add(curve.name() + (curve.label().isEmpty() ? "" : ", " + curve.label()));
                }
            }
            panel.areas().stream().map(Area::name).forEach(parts::add);
            for (Level level : panel.levels()) {
                parts.add(level.name() + " " + level.amount());
            }
            panel.marks().stream().map(Mark::label).forEach(parts::add);
            panel.bands().stream().map(Bands::label).forEach(parts::add);
            parts.removeIf(String::isEmpty);
            return " The " + panel.axis().label() + (parts.isEmpty() ? "." : ": " + String.join("; ", parts) + ".");
        }

        private static String withKey(Picture picture, Picture.Key key) {
            Panel panel = picture.upper();
            List<String> parts = new ArrayList<>();
            List<String> bands = panel.areas().stream()
                    .filter(area ->
                            area.role() == Area.Role.BAND && !area.name().isEmpty())
                    .map(Area::name)
                    .toList();
            if (!bands.isEmpty()) {
                parts.add("bands of " + key.measured() + ": " + String.join(", ", bands));
            }
            panel.areas().stream()
                    .filter(area -> area.role() != Area.Role.BAND)
                    .map(Area::name)
                    .forEach(parts::add);
            panel.curves().stream()
                    .filter(line -> line.role() != Curve.Role.CONTOUR)
                    .map(line -> line.name().isEmpty() ? line.label() : line.name())
                    .forEach(parts::add);
            panel.marks().stream().map(Mark::label).forEach(parts::add);
            parts.removeIf(String::isEmpty);
            return " A chart of the " + panel.axis().label() + " over the "
                    + picture.across().label() + "."
                    + (parts.isEmpty() ? "" : " " + String.join("; ", parts) + ".")
                    + key.bars().map(Description::listed).orElse("");
        }

        private static String listed(Bars bars) {
            List<String> parts = bars.bars().stream()
                    .map(bar -> bar.name() + " " + BarList.signed(bar.value()))
                    .toList();
            return " " + bars.heading() + ": " + String.join("; ", parts) + ". " + bars.note();
        }
    }
}
