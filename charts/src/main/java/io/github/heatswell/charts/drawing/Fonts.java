package io.github.heatswell.charts.drawing;

import java.io.IOException;

/** Makes sure there is type to set words with. A server's Java often comes without, and says so in riddles. */
final class Fonts {

    private Fonts() {}

    /**
     * Measures one letter.
     *
     * @throws IOException naming what to install if there are no fonts
     */
    static void require() throws IOException {
        require(() -> Type.width("x", Type.LABEL));
    }

    static void require(Runnable measuring) throws IOException {
        try {
            measuring.run();
        } catch (RuntimeException | LinkageError | InternalError noFonts) {
            throw new IOException(
                    "this Java finds no fonts to draw with; install fontconfig and a font (on Debian and Ubuntu the"
                            + " packages libfontconfig1 and fonts-dejavu-core)",
                    noFonts);
        }
    }
}
