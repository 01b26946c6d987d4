package io.github.heatswell.charts.drawing;

import java.awt.Font;
import java.awt.font.FontRenderContext;
import java.io.IOException;

/** Typefaces: one sans-serif family in a few sizes, and its metrics. */
final class Type {

    static final Font TITLE = new Font(Font.SANS_SERIF, Font.BOLD, 20);
    static final Font LONG_TITLE = new Font(Font.SANS_SERIF, Font.BOLD, 16);
    static final Font SUBTITLE = new Font(Font.SANS_SERIF, Font.PLAIN, 13);
    static final Font WARNING = new Font(Font.SANS_SERIF, Font.BOLD, 14);
    static final Font HEADING = new Font(Font.SANS_SERIF, Font.BOLD, 12);
    static final Font LABEL = new Font(Font.SANS_SERIF, Font.PLAIN, 12);
    static final Font LABEL_STRONG = new Font(Font.SANS_SERIF, Font.BOLD, 12);
    static final Font TICK = new Font(Font.SANS_SERIF, Font.PLAIN, 12);

    /** Measures without regard to any device, so that PNG and SVG have the same layout. */
    private static final FontRenderContext MEASURE = new FontRenderContext(null, true, true);

    private Type() {}

    /**
     * Makes sure there is type to set words with: headless Java may come without fonts and fail obscurely. Pictures may be
     * drawn on several threads; the first of them alone looks for the fonts.
     *
     * @throws IOException naming what to install if there are none
     */
    static synchronized void requireFonts() throws IOException {
        requireFonts(() -> width("x", LABEL));
    }

    static void requireFonts(Runnable measuring) throws IOException {
        try {
            measuring.run();
        } catch (RuntimeException | LinkageError | InternalError noFonts) {
            throw new IOException(
                    "this Java finds no fonts to draw with; install your system's packages for fontconfig and a font",
                    noFonts);
        }
    }

    static double width(String text, Font font) {
        return font.getStringBounds(text, MEASURE).getWidth();
    }

    static double ascent(Font font) {
        return font.getLineMetrics("Ag", MEASURE).getAscent();
    }

    /** The distance of two lines, a little closer than the family asks for. */
    static double lineHeight(Font font) {
        return 1.24 * font.getSize2D();
    }
}
