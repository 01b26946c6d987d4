package io.github.heatswell.charts;

import io.github.heatswell.ageing.OutlookResult;
import io.github.heatswell.charts.drawing.Drawing;
import io.github.heatswell.charts.picture.Picture;
import io.github.heatswell.charts.picture.Size;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.units.QuantityFormat;
import io.github.heatswell.units.UnitSystem;
import java.io.IOException;
import java.io.OutputStream;
import java.util.Objects;

/**
 * The picture of the years: the highest pressure of the worst day of each month as the charge of the vessel fades, the
 * charge that is left, and below what the relief valves discharge in each year. Its title says when they begin to drip.
 * Pressures are gauge readings. Immutable.
 */
public final class OutlookChart {

    private static final Size USUAL = new Size(1040, 700);

    private final OutlookResult result;
    private final HotWaterSystem house;
    private final UnitSystem units;
    private final Size size;

    private OutlookChart(OutlookResult result, HotWaterSystem house, UnitSystem units, Size size) {
        this.result = result;
        this.house = house;
        this.units = units;
        this.size = size;
    }

    /**
     * The picture of an outlook.
     *
     * @param result what the years will do
     * @param house the house as it is today
     * @param units the units to show it in
     * @return the picture, 1040 logical pixels wide and at least 700 high
     */
    public static OutlookChart of(OutlookResult result, HotWaterSystem house, UnitSystem units) {
        return new OutlookChart(
                Objects.requireNonNull(result, "result"),
                Objects.requireNonNull(house, "house"),
                Objects.requireNonNull(units, "units"),
                USUAL);
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
    public OutlookChart withSize(int width, int height) {
        return new OutlookChart(result, house, units, new Size(width, height));
    }

    /**
     * What was found, in one sentence.
     *
     * @return the title of the picture
     */
    public String headline() {
        return new OutlookHeadline(result, QuantityFormat.unicode(units)).sentence();
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
        return new OutlookPicture(result, house, units, size).compose();
    }
}
