package io.github.heatswell.charts;

import io.github.heatswell.charts.drawing.Drawing;
import io.github.heatswell.charts.picture.PlanePicture;
import io.github.heatswell.charts.picture.Size;
import io.github.heatswell.sizing.SizingResult;
import io.github.heatswell.units.QuantityFormat;
import io.github.heatswell.units.UnitSystem;
import java.io.IOException;
import java.io.OutputStream;
import java.util.Objects;

/**
 * The picture of a sizing: the peak over the size of the vessel, what it must stay below, and the size that is enough. Its
 * title says what was found. Pressures are gauge readings. Immutable.
 */
public final class SizingChart {

    private static final Size USUAL = new Size(1040, 640);

    private final SizingResult result;
    private final SizeAdvice advice;
    private final UnitSystem units;
    private final Size size;

    private SizingChart(SizingResult result, SizeAdvice advice, UnitSystem units, Size size) {
        this.result = result;
        this.advice = advice;
        this.units = units;
        this.size = size;
    }

    /**
     * The picture of a sizing.
     *
     * @param result the sizing
     * @param units the units to show them in
     * @return the picture, 1040 logical pixels wide and at least 640 high
     * @throws IllegalArgumentException if no vessel can keep the target
     */
    public static SizingChart of(SizingResult result, UnitSystem units) {
        if (Objects.requireNonNull(result, "result").outcome() == SizingResult.Outcome.NO_VESSEL_CAN) {
            throw new IllegalArgumentException("result: there is no vessel to draw. " + result.reason());
        }
        return new SizingChart(result, SizeAdvice.of(result), Objects.requireNonNull(units, "units"), USUAL);
    }

    /**
     * The same picture with another size to take than the smallest that is enough by the numbers given.
     *
     * @param other which to take, and why
     * @return the picture that marks and names that size
     */
    public SizingChart advising(SizeAdvice other) {
        return new SizingChart(result, Objects.requireNonNull(other, "advice"), units, size);
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
    public SizingChart withSize(int width, int height) {
        return new SizingChart(result, advice, units, new Size(width, height));
    }

    /**
     * What was found, in one sentence.
     *
     * @return the title of the picture
     */
    public String headline() {
        return new SizingWords(result, advice, QuantityFormat.unicode(units)).sentence();
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
        return new SizingPicture(result, advice, units).compose(size);
    }
}
