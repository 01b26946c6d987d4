package io.github.heatswell.charts.drawing;

import io.github.heatswell.charts.picture.Picture;
import io.github.heatswell.charts.picture.PlanePicture;
import java.io.IOException;
import java.io.OutputStream;
import java.util.Objects;

/**
 * Makes pictures visible. The only entrance to this package; callers use {@link io.github.heatswell.charts.RunChart}.
 */
public final class Drawing {

    private Drawing() {}

    /**
     * Draws a picture as PNG, two pixels for each logical one.
     *
     * @param picture what to draw
     * @param out where to; stays open
     * @throws IOException if it cannot be written, or if this Java finds no fonts
     */
    public static void png(Picture picture, OutputStream out) throws IOException {
        Objects.requireNonNull(out, "out");
        Fonts.require();
        PngWriter.write(new Sheet(picture), out);
    }

    /**
     * Draws a picture as one SVG element.
     *
     * @param picture what to draw
     * @param out where to
     * @throws IOException if it cannot be written, or if this Java finds no fonts
     */
    public static void svg(Picture picture, Appendable out) throws IOException {
        Objects.requireNonNull(out, "out");
        Fonts.require();
        new SvgWriter(new Sheet(picture)).write(out);
    }

    /**
     * Draws a picture of a plane as PNG, two pixels for each logical one.
     *
     * @param picture what to draw
     * @param out where to; stays open
     * @throws IOException if it cannot be written, or if this Java finds no fonts
     */
    public static void png(PlanePicture picture, OutputStream out) throws IOException {
        Objects.requireNonNull(out, "out");
        Fonts.require();
        PngWriter.write(new PlaneSheet(picture), out);
    }

    /**
     * Draws a picture of a plane as one SVG element.
     *
     * @param picture what to draw
     * @param out where to
     * @throws IOException if it cannot be written, or if this Java finds no fonts
     */
    public static void svg(PlanePicture picture, Appendable out) throws IOException {
        Objects.requireNonNull(out, "out");
        Fonts.require();
        new SvgWriter(new PlaneSheet(picture)).write(out);
    }
}
