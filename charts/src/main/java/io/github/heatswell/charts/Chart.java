package io.github.heatswell.charts;

import io.github.heatswell.ageing.OutlookResult;
import io.github.heatswell.assessment.Doubts;
import io.github.heatswell.charts.drawing.Sheet;
import io.github.heatswell.charts.picture.Curve;
import io.github.heatswell.charts.picture.Picture;
import io.github.heatswell.charts.picture.Size;
import io.github.heatswell.narrative.Alarm;
import io.github.heatswell.narrative.NamedSummary;
import io.github.heatswell.narrative.Narrative;
import io.github.heatswell.narrative.SizeAdvice;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.result.RunSummary;
import io.github.heatswell.sizing.PeakMap;
import io.github.heatswell.sizing.SizingResult;
import io.github.heatswell.study.SampledPeaks;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.units.QuantityFormat;
import io.github.heatswell.units.UnitSystem;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.OutputStream;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;

/**
 * A chart of computed results, 1040 logical pixels wide unless {@linkplain #withSize another size} is set. Its title
 * states the finding; a hazard comes first. Pressures are gauge pressures. Immutable.
 *
 * <p>Drawing needs fonts but no screen; programs without one should set {@code java.awt.headless=true} before anything
 * of {@code java.awt} is touched.
 */
public final class Chart {

    /** Pixels of a PNG per logical pixel. */
    private static final double FINE = 2;

    private final Function<Size, Picture> composer;
    private final Size size;

    private Chart(int height, Function<Size, Picture> composer) {
        this(new Size(Size.USUAL_WIDTH, height), composer);
    }

    private Chart(Size size, Function<Size, Picture> composer) {
        this.composer = composer;
        this.size = size;
    }

    /**
     * The picture of one run: its pressure with all reference levels, and below it the water temperature and when
     * heater and taps were on. If a run of a day or so depends on the clock, its axis shows clock time. A run of more
     * than two weeks is drawn day by day, as by {@link #ofDays}.
     *
     * @param result the run
     * @param units the units to show it in
     * @return the picture
     */
    public static Chart of(RunResult result, UnitSystem units) {
        return of(result, Doubts.NONE, units);
    }

    /**
     * The same for a house with some values unknown.
     *
     * @param result the run
     * @param doubts what is unknown about the house: no hazard is shown that rests on it alone
     * @param units the units to show it in
     * @return the picture
     */
    public static Chart of(RunResult result, Doubts doubts, UnitSystem units) {
        Objects.requireNonNull(units, "units");
        Objects.requireNonNull(doubts, "doubts");
        if (Narrative.isByDay(Objects.requireNonNull(result, "result").summary())) {
            return ofDays(result.summary(), doubts, DailyFigures.of(result), units);
        }
        return new Chart(700, size -> new RunPicture(result, doubts, false, units, size).compose());
    }

    /**
     * The picture of one run with a third panel: what its relief valves discharged since the start, or, where they stayed shut, what went back to the mains. A run of more than two weeks
     * is drawn day by day.
     *
     * @param result the run
     * @param units the units to show it in
     * @return the picture
     */
    public static Chart discharging(RunResult result, UnitSystem units) {
        Objects.requireNonNull(units, "units");
        if (Narrative.isByDay(Objects.requireNonNull(result, "result").summary())) {
            return of(result, units);
        }
        return new Chart(900, size -> new RunPicture(result, Doubts.NONE, true, units, size).compose());
    }

    /**
     * The picture of a run over weeks to years: from the lowest to the highest pressure of each day, and below what each
     * day discharged. Months are named where the season at the start is known.
     *
     * @param summary the run
     * @param doubts what is unknown about the house: no hazard is shown that rests on it alone
     * @param figures its figures, day by day
     * @param units the units to show it in
     * @return the picture
     * @throws IllegalArgumentException if there are fewer or more days of figures than the run has
     */
    public static Chart ofDays(RunSummary summary, Doubts doubts, DailyFigures figures, UnitSystem units) {
        Objects.requireNonNull(doubts, "doubts");
        Objects.requireNonNull(units, "units");
        Objects.requireNonNull(figures, "figures");
        double days = Objects.requireNonNull(summary, "summary").end() / DailyFigures.DAY;
        int count = figures.days().size();
        if (count == 0 || Math.abs(count - days) > 1) {
            throw new IllegalArgumentException("figures: " + count + " days are not those of a run of "
                    + QuantityFormat.unicode(units).time(summary.end()));
        }
        return new Chart(700, size -> new DaysPicture(summary, doubts, figures, units, size).compose());
    }

    /**
     * The picture of several runs laid over each other: their pressures, and below what each discharged.
     *
     * @param runs the runs, 2 to 6, no two of the same name
     * @param units the units to show them in
     * @return the picture
     * @throws IllegalArgumentException if there are too few or too many runs, or if two have the same name
     */
    public static Chart comparing(List<NamedRun> runs, UnitSystem units) {
        Objects.requireNonNull(runs, "runs").forEach(run -> Objects.requireNonNull(run, "runs: one of them is null"));
        return comparing(runs, runs.stream().map(NamedRun::summary).toList(), units);
    }

    /**
     * The picture of some of many runs, which tells of all and says that it shows no more than these: the runs of the lowest and
     * the highest peak, and others evenly between by their peaks.
     *
     * @param shown the runs to show, 2 to 6, no two of the same name
     * @param all all runs, the shown ones among them
     * @param units the units to show them in
     * @return the picture
     * @throws IllegalArgumentException if there are too few or too many runs, or if two have the same name
     */
    public static Chart comparing(List<NamedRun> shown, List<NamedSummary> all, UnitSystem units) {
        Objects.requireNonNull(units, "units");
        if (Objects.requireNonNull(shown, "runs").size() < 2 || shown.size() > Curve.Role.MAX_RUNS) {
            throw new IllegalArgumentException("runs: " + shown.size() + " runs are outside the allowed range, 2 to "
                    + Curve.Role.MAX_RUNS + "; more curves cannot be told apart in print");
        }
        Set<String> names = new HashSet<>();
        for (NamedRun run : shown) {
            if (!names.add(run.name())) {
                throw new IllegalArgumentException("runs: two are called \"" + run.name() + "\"");
            }
        }
        List<NamedRun> runs = List.copyOf(shown);
        Narrative narrative = Narrative.comparing(all, runs.size());
        return new Chart(
                700, size -> new ComparisonPicture(runs, OptionalDouble.empty(), narrative, units, size).compose());
    }

    /**
     * The picture of a run before and after what a sizing proposes, with the limit that it keeps.
     *
     * @param runs the two runs, of different names
     * @param advice the sizing
     * @param units the units to show them in
     * @return the picture
     * @throws IllegalArgumentException if there are too few or too many runs, or if two have the same name
     */
    public static Chart comparing(List<NamedRun> runs, SizeAdvice advice, UnitSystem units) {
        comparing(runs, units); // refuses what cannot be drawn
        Narrative narrative =
                Narrative.comparing(runs.stream().map(NamedRun::summary).toList(), runs.size());
        OptionalDouble limit = OptionalDouble.of(advice.sizing().target().gauge());
        return new Chart(700, size -> new ComparisonPicture(runs, limit, narrative, units, size).compose());
    }

    /**
     * The picture of a sizing: the peak over the size of the vessel, what it must stay below, and the size to take.
     *
     * @param advice the sizing, and how sure it is
     * @param units the units to show it in
     * @return the picture
     * @throws IllegalArgumentException if no vessel can keep the target
     */
    public static Chart of(SizeAdvice advice, UnitSystem units) {
        Objects.requireNonNull(units, "units");
        SizingResult result = Objects.requireNonNull(advice, "advice").sizing();
        if (result.outcome() == SizingResult.Outcome.NO_VESSEL_CAN) {
            throw new IllegalArgumentException("result: there is no vessel to draw. "
                    + Narrative.of(advice).headline().text(units));
        }
        return new Chart(640, size -> new SizingPicture(advice, units).compose(size));
    }

    /**
     * The picture of a map: the peak over precharge and volume of the vessel.
     *
     * @param map the peaks
     * @param units the units to show them in
     * @return the picture
     */
    public static Chart of(PeakMap map, UnitSystem units) {
        Objects.requireNonNull(map, "map");
        Objects.requireNonNull(units, "units");
        return new Chart(720, size -> new MapPicture(map, units).compose(size));
    }

    /**
     * The picture of many samples of an uncertain house: the share of them that peaks up to each pressure, and the
     * inputs that move the peak most.
     *
     * @param sampled the peaks and what moves them
     * @param units the units to show them in
     * @return the picture
     */
    public static Chart of(SampledPeaks sampled, UnitSystem units) {
        Objects.requireNonNull(sampled, "sampled");
        Objects.requireNonNull(units, "units");
        return new Chart(640, size -> new SpreadPicture(sampled, units).compose(size));
    }

    /**
     * The picture of the years ahead: the highest pressure of the worst day of each month as the vessel loses precharge,
     * the precharge that is left, and below what the relief valves discharge in each year.
     *
     * @param result what the years will do
     * @param house the house as it is today
     * @param units the units to show it in
     * @return the picture
     */
    public static Chart of(OutlookResult result, HotWaterSystem house, UnitSystem units) {
        Objects.requireNonNull(result, "result");
        Objects.requireNonNull(house, "house");
        Objects.requireNonNull(units, "units");
        return new Chart(700, size -> new OutlookPicture(result, house, units, size).compose());
    }

    /**
     * The picture of readings and the runs that may explain them, with the residuals below.
     *
     * @param logged the readings and the runs
     * @param units the units to show them in
     * @return the picture
     */
    public static Chart of(LoggedRuns logged, UnitSystem units) {
        Objects.requireNonNull(logged, "logged");
        Objects.requireNonNull(units, "units");
        return new Chart(700, size -> new DiagnosisPicture(logged, units, size).compose());
    }

    /**
     * Puts a hazard of the house first in the title, unless the picture tells of one itself.
     *
     * @param alarms what is wrong with the house, the gravest first, possibly nothing
     * @param units the units to show it in
     * @return the picture with the first hazard among them
     */
    public Chart below(List<Alarm> alarms, UnitSystem units) {
        return Objects.requireNonNull(alarms, "alarms").stream()
                .filter(alarm -> alarm.level() == Alarm.Level.HAZARD)
                .findFirst()
                .map(alarm -> "Hazard: " + alarm.what().text(QuantityFormat.unicode(units)))
                .map(hazard -> new Chart(size, wanted -> composer.apply(wanted).below(hazard)))
                .orElse(this);
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
    public Chart withSize(int width, int height) {
        return new Chart(new Size(width, height), composer);
    }

    /**
     * What was found, in one sentence.
     *
     * @return the title of the picture
     */
    public String headline() {
        return picture().caption().title();
    }

    /**
     * Writes the picture as PNG with two pixels for each logical one. The stream stays open.
     *
     * @param out where to
     * @throws IOException if it cannot be written, or if this Java finds no fonts; the message then names what to install
     */
    public void writePng(OutputStream out) throws IOException {
        Sheet.of(picture()).writePng(FINE, out);
    }

    /**
     * Writes the picture as one SVG element, which stands alone in a file or inside a web page. It scales to the
     * available space, and its ids have a unique prefix, so that several fit in one page.
     *
     * @param out where to
     * @throws IOException if it cannot be written, or if this Java finds no fonts; the message then names what to
     *     install
     */
    public void writeSvg(Appendable out) throws IOException {
        Sheet.of(picture()).writeSvg(out);
    }

    /**
     * Draws the picture with two pixels for each logical one.
     *
     * @return the picture as an image
     * @throws IOException if this Java finds no fonts; the message then names what to install
     */
    public BufferedImage image() throws IOException {
        return Sheet.of(picture()).image(FINE);
    }

    /**
     * Draws the picture onto something else, such as a component or a printed page.
     *
     * @param g where to; its origin becomes the upper left corner, one unit a logical pixel
     * @throws IOException if this Java finds no fonts; the message then names what to install
     */
    public void draw(Graphics2D g) throws IOException {
        Sheet.of(picture()).draw(Objects.requireNonNull(g, "g"));
    }

    /** What is to be drawn. */
    Picture picture() {
        return composer.apply(size);
    }
}
