package io.github.heatswell.charts;

import io.github.heatswell.charts.drawing.Drawing;
import io.github.heatswell.charts.picture.PlanePicture;
import io.github.heatswell.charts.picture.Size;
import io.github.heatswell.units.QuantityFormat;
import io.github.heatswell.units.UnitSystem;
import java.io.IOException;
import java.io.OutputStream;
import java.util.Objects;

/**
 * The picture of many samples of a house of which not everything is known: the share of them that peaks up to each
 * pressure, and the inputs that move the peak most. Its title says in how many of them the valve drips. Pressures are gauge
 * readings. Immutable.
 */
public final class SpreadChart {

    private static final Size USUAL = new Size(1040, 640);

    private final SampledPeaks sampled;
    private final UnitSystem units;
    private final Size size;

    private SpreadChart(SampledPeaks sampled, UnitSystem units, Size size) {
        this.sampled = sampled;
        this.units = units;
        this.size = size;
    }

    /**
     * The picture of samples.
     *
     * @param sampled the peaks and what moves them
     * @param units the units to show them in
     * @return the picture, 1040 logical pixels wide and at least 640 high
     */
    public static SpreadChart of(SampledPeaks sampled, UnitSystem units) {
        return new SpreadChart(
                Objects.requireNonNull(sampled, "sampled"), Objects.requireNonNull(units, "units"), USUAL);
    }

    /**
     * The same picture in another size. A picture whose words need more lines than usual grows taller, so that nothing is
     * clipped.
     *
     * @param width the width in logical pixels, 720 to 2400
     * @param height the least height in logical pixels, 520 to 2400
     * @return the picture in that size
     * @throws IllegalArgumentException if the width or the height is outside its range
     */
    public SpreadChart withSize(int width, int height) {
        return new SpreadChart(sampled, units, new Size(width, height));
    }

    /**
     * What was found, in one sentence.
     *
     * @return the title of the picture
     */
    public String headline() {
        return new SpreadWords(sampled, QuantityFormat.unicode(units)).sentence();
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
    PlanePicture picture() {
        return new SpreadPicture(sampled, units).compose(size);
    }
}
