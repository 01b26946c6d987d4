package io.github.heatswell.charts;

import io.github.heatswell.charts.drawing.Drawing;
import io.github.heatswell.charts.picture.Curve;
import io.github.heatswell.charts.picture.Picture;
import io.github.heatswell.charts.picture.Size;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.result.RunSummary;
import io.github.heatswell.units.QuantityFormat;
import io.github.heatswell.units.UnitSystem;
import java.io.IOException;
import java.io.OutputStream;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.function.Function;

/**
 * The picture of one run, or of several held against each other. Its title says what was found; a hazard stands before
 * everything else. Pressures are gauge readings. Immutable.
 *
 * <p>Drawing needs fonts but no screen; programs without one should set {@code java.awt.headless=true} before anything of
 * {@code java.awt} is touched.
 */
public final class RunChart {

    /** A run of more days than this (s) is drawn day by day. */
    private static final double MANY_DAYS = 14.5 * DailyFigures.DAY;

    private final Function<Size, Picture> composer;
    private final Size size;

    private RunChart(Function<Size, Picture> composer, Size size) {
        this.composer = composer;
        this.size = size;
    }

    /**
     * The picture of one run: its pressure with everything it is read against, and below it the water temperature and
     * when heater and taps were on. Where a run of a day or so goes by the clock, so does the picture. A run of more than
     * two weeks is drawn day by day, as by {@link #ofDays}.
     *
     * @param result the run
     * @param units the units to show it in
     * @return the picture, 1040 logical pixels wide and at least 700 high
     */
    public static RunChart of(RunResult result, UnitSystem units) {
        Objects.requireNonNull(units, "units");
        if (Objects.requireNonNull(result, "result").end() > MANY_DAYS) {
            return ofDays(result.summary(), DailyFigures.of(result), units);
        }
        return new RunChart(size -> new RunPicture(result, units, size).compose(), Size.USUAL);
    }

    /**
     * The picture of a run over weeks to years: from the lowest to the highest pressure of each day, and below what each
     * day discharged. Months are named where the season at the start is known.
     *
     * @param summary the run
     * @param figures its figures, day by day
     * @param units the units to show it in
     * @return the picture, 1040 logical pixels wide and at least 700 high
     * @throws IllegalArgumentException if there are fewer or more days of figures than the run has
     */
    public static RunChart ofDays(RunSummary summary, DailyFigures figures, UnitSystem units) {
        Objects.requireNonNull(units, "units");
        Objects.requireNonNull(figures, "figures");
        double days = Objects.requireNonNull(summary, "summary").end() / DailyFigures.DAY;
        int count = figures.days().size();
        if (count == 0 || Math.abs(count - days) > 1) {
            throw new IllegalArgumentException("figures: " + count + " days are not those of a run of "
                    + QuantityFormat.unicode(units).time(summary.end()));
        }
        return new RunChart(size -> new DaysPicture(summary, figures, units, size).compose(), Size.USUAL);
    }

    /**
     * The picture of several runs laid over each other: their pressures, and below what each discharged.
     *
     * @param runs the runs, 2 to 6, no two of the same name
     * @param units the units to show them in
     * @return the picture, 1040 logical pixels wide and at least 700 high
     * @throws IllegalArgumentException if there are too few or too many runs, or if two have the same name
     */
    public static RunChart comparing(List<NamedRun> runs, UnitSystem units) {
        return comparing(runs, Objects.requireNonNull(runs, "runs").size(), units);
    }

    /**
     * The picture of some of many runs, which says that it shows no more than these: the runs of the lowest and the
     * highest peak, and others evenly between by their peaks.
     *
     * @param runs the runs to show, 2 to 6, no two of the same name
     * @param among how many runs they were taken from
     * @param units the units to show them in
     * @return the picture, 1040 logical pixels wide and at least 700 high
     * @throws IllegalArgumentException if there are too few or too many runs, or if two have the same name
     */
    public static RunChart comparing(List<NamedRun> runs, int among, UnitSystem units) {
        Objects.requireNonNull(units, "units");
        if (Objects.requireNonNull(runs, "runs").size() < 2 || runs.size() > Curve.Role.MAX_RUNS) {
            throw new IllegalArgumentException("runs: " + runs.size()
                    + " runs are outside the allowed range, 2 to " + Curve.Role.MAX_RUNS
                    + "; more curves than that cannot be told apart in print");
        }
        Set<String> names = new HashSet<>();
        for (NamedRun run : runs) {
            if (!names.add(run.name())) {
                throw new IllegalArgumentException("runs: two are called \"" + run.name() + "\"");
            }
        }
        List<NamedRun> all = List.copyOf(runs);
        return new RunChart(size -> new ComparisonPicture(all, among, units, size).compose(), Size.USUAL);
    }

    /**
     * The same picture in another size. A picture whose words need more lines than usual grows taller, so that nothing
     * is clipped.
     *
     * @param width the width in logical pixels, 720 to 2400
     * @param height the least height in logical pixels, 520 to 2400
     * @return the picture in that size
     * @throws IllegalArgumentException if the width or the height is outside its range
     */
    public RunChart withSize(int width, int height) {
        return new RunChart(composer, new Size(width, height));
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
     * Writes the picture as one SVG element, which stands alone in a file or inside a web page. It scales to the room it
     * is given, and its ids begin with a prefix of their own, so that several may stand in one page.
     *
     * @param out where to
     * @throws IOException if it cannot be written, or if this Java finds no fonts; the message then names what to install
     */
    public void writeSvg(Appendable out) throws IOException {
        Drawing.svg(picture(), out);
    }

    /** What is to be drawn. */
    Picture picture() {
        return composer.apply(size);
    }
}
