package io.github.heatswell.charts;

import io.github.heatswell.charts.drawing.Drawing;
import io.github.heatswell.charts.picture.Picture;
import io.github.heatswell.charts.picture.Size;
import io.github.heatswell.units.UnitSystem;
import java.io.IOException;
import java.io.OutputStream;
import java.util.Objects;

/**
 * The picture of readings and of the runs that are to explain them, with what each leaves unexplained below. Pressures are
 * gauge readings. Immutable.
 */
public final class DiagnosisChart {

    private static final Size USUAL = new Size(1040, 700);

    private final LoggedRuns logged;
    private final UnitSystem units;
    private final Size size;

    private DiagnosisChart(LoggedRuns logged, UnitSystem units, Size size) {
        this.logged = logged;
        this.units = units;
        this.size = size;
    }

    /**
     * The picture of readings.
     *
     * @param logged the readings and the runs
     * @param units the units to show them in
     * @return the picture, 1040 logical pixels wide and at least 700 high
     */
    public static DiagnosisChart of(LoggedRuns logged, UnitSystem units) {
        return new DiagnosisChart(
                Objects.requireNonNull(logged, "logged"), Objects.requireNonNull(units, "units"), USUAL);
    }

    /**
     * The same picture in another size.
     *
     * @param width the width in logical pixels, 720 to 2400
     * @param height the least height in logical pixels, 520 to 2400
     * @return the picture in that size
     * @throws IllegalArgumentException if the width or the height is outside its range
     */
    public DiagnosisChart withSize(int width, int height) {
        return new DiagnosisChart(logged, units, new Size(width, height));
    }

    /**
     * Writes the picture as PNG with two pixels for each logical one. The stream stays open.
     *
     * @param out where to
     * @throws IOException if it cannot be written, or if this Java finds no fonts; the message then names what to install
     */
    public void writePng(OutputStream out) throws IOException {
        Drawing.png(picture(), out);
    }

    /**
     * Writes the picture as one SVG element, as {@link RunChart#writeSvg} does.
     *
     * @param out where to
     * @throws IOException if it cannot be written, or if this Java finds no fonts; the message then names what to install
     */
    public void writeSvg(Appendable out) throws IOException {
        Drawing.svg(picture(), out);
    }

    /** What is to be drawn. */
    Picture picture() {
        return new DiagnosisPicture(logged, units, size).compose();
    }
}
