package io.github.heatswell.charts;

import io.github.heatswell.charts.drawing.Drawing;
import io.github.heatswell.charts.picture.PlanePicture;
import io.github.heatswell.charts.picture.Size;
import io.github.heatswell.sizing.PeakMap;
import io.github.heatswell.units.QuantityFormat;
import io.github.heatswell.units.UnitSystem;
import java.io.IOException;
import java.io.OutputStream;
import java.util.Objects;

/**
 * The picture of a map of peaks: precharge to the right, vessel volume upwards, bands of peak pressure that grow darker,
 * and the line below which the relief valve drips. Its title says what was found. Pressures are gauge readings. Immutable.
 */
public final class MapChart {

    private static final Size USUAL = new Size(1040, 720);

    private final PeakMap map;
    private final UnitSystem units;
    private final Size size;

    private MapChart(PeakMap map, UnitSystem units, Size size) {
        this.map = map;
        this.units = units;
        this.size = size;
    }

    /**
     * The picture of a map.
     *
     * @param map the peaks
     * @param units the units to show them in
     * @return the picture, 1040 logical pixels wide and at least 720 high
     */
    public static MapChart of(PeakMap map, UnitSystem units) {
        return new MapChart(Objects.requireNonNull(map, "map"), Objects.requireNonNull(units, "units"), USUAL);
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
    public MapChart withSize(int width, int height) {
        return new MapChart(map, units, new Size(width, height));
    }

    /**
     * What was found, in one sentence.
     *
     * @return the title of the picture
     */
    public String headline() {
        return new MapHeadline(map, QuantityFormat.unicode(units)).sentence();
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
        return new MapPicture(map, units).compose(size);
    }
}
