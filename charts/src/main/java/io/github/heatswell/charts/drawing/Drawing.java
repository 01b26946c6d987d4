package io.github.heatswell.charts.drawing;

import io.github.heatswell.charts.picture.Picture;
import java.io.IOException;
import java.io.OutputStream;

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
        Fonts.require();
        new SvgWriter(picture).write(out);
    }
}
