package io.github.heatswell.charts;

import io.github.heatswell.assessment.Doubts;
import io.github.heatswell.assessment.Moments;
import io.github.heatswell.charts.DailyFigures.Day;
import io.github.heatswell.charts.ValueScale.PressureScale;
import io.github.heatswell.charts.picture.Area;
import io.github.heatswell.charts.picture.Axis;
import io.github.heatswell.charts.picture.Curve;
import io.github.heatswell.charts.picture.Panel;
import io.github.heatswell.charts.picture.Panel.Level;
import io.github.heatswell.charts.picture.Panel.Mark;
import io.github.heatswell.charts.picture.Picture;
import io.github.heatswell.charts.picture.Picture.Caption;
import io.github.heatswell.charts.picture.Points;
import io.github.heatswell.charts.picture.Size;
import io.github.heatswell.narrative.Limit;
import io.github.heatswell.narrative.Narrative;
import io.github.heatswell.result.Event;
import io.github.heatswell.result.RunSummary;
import io.github.heatswell.units.QuantityFormat;
import io.github.heatswell.units.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;

/** Composes the picture of a run over weeks to years: the range of each day's pressure, and what each day discharged. */
final class DaysPicture {

    private static final double BEYOND_HAZARD = 1.12;

    private final RunSummary summary;
    private final Doubts doubts;
    private final DailyFigures figures;
    private final QuantityFormat amounts;
    private final Size size;
    private final Moments moments;
    private final DayBins bins;
    private final Axis time;

    DaysPicture(RunSummary summary, Doubts doubts, DailyFigures figures, UnitSystem units, Size size) {
        this.summary = summary;
        this.doubts = doubts;
        this.figures = figures.completedBy(summary);
        this.amounts = QuantityFormat.unicode(units);
        this.size = size;
        this.moments = Moments.of(summary.system(), summary.end());
        double days = summary.end() / DailyFigures.DAY;
        this.bins = new DayBins(this.figures.days(), days, amounts);
        this.time = TimeScale.days(moments, summary.hazard().isPresent() ? BEYOND_HAZARD * days : days, size);
    }

    Picture compose() {
        Optional<Event> hazard = summary.hazard();
        Caption caption = Caption.of(Narrative.ofDays(summary, doubts, figures.relieved()), amounts);
        OptionalDouble end =
                hazard.stream().mapToDouble(event -> day(event.time())).findFirst();
        return new Picture(size, caption, time, end, pressurePanel(), relievedPanel());
    }

    private Panel pressurePanel() {
        List<Level> levels = new Levels(summary, amounts).all();
        ValueScale.Range range = new ValueScale.Range(
                gauge(summary.extremes().lowestPressure().value()),
                gauge(summary.extremes().highestPressure().value()));
        Axis axis = PressureScale.around(range, levels, 0, amounts);
        List<Curve> edges = List.of(
                new Curve(Curve.Role.DAY_EDGE, "", "", bins.lowest()),
                new Curve(Curve.Role.DAY_EDGE, "", "", bins.highest()));
        return new Panel(axis, List.of(bins.pressureRange()), edges, levels, marks(), List.of());
    }

    private Panel relievedPanel() {
        double most = bins.most(Day::relieved);
        String unit = " " + bins.each() + " (" + amounts.symbol(amounts.units().volume()) + ")";
        if (most > 0) {
            Axis axis = ValueScale.fromZero("water discharged" + unit, most);
            return bars(axis, bins.bars(Area.Role.GIVEN_OFF, Day::relieved));
        }
        double drawn = bins.most(Day::drawn);
        Axis axis = ValueScale.fromZero("no water discharged; hot water drawn" + unit, drawn > 0 ? drawn : 1);
        return bars(axis, bins.bars(Area.Role.DRAWN, Day::drawn));
    }

    private static Panel bars(Axis axis, Area bars) {
        return new Panel(axis, List.of(bars), List.of(), List.of(), List.of(), List.of());
    }

    private List<Mark> marks() {
        List<Mark> marks = new ArrayList<>();
        summary.hazard()
                .ifPresent(event -> marks.add(mark(
                        Mark.Kind.HAZARD,
                        event,
                        event.kind().description() + " " + on(event.time()) + ": the run ends")));
        add(marks, Event.Kind.CUT_OUT_TRIPPED, Mark.Kind.CUT_OUT_TRIPPED, "cut-out trips ");
        add(
                marks,
                Event.Kind.WORKING_PRESSURE_EXCEEDED,
                Mark.Kind.WORKING_PRESSURE_EXCEEDED,
                Limit.workingPressureExceeded(summary.system()) + " ");
        add(
                marks,
                Event.Kind.VESSEL_BOTTOMED_OUT,
                Mark.Kind.VESSEL_FULL,
                amounts.units().spelled("vessel first full "));
        RunSummary.Extreme highest = summary.extremes().highestPressure();
        boolean said =
                marks.stream().anyMatch(mark -> Math.abs(mark.up() - gauge(highest.value())) <= 0.005 * mark.up());
        if (!said) {
            String label = "highest: " + amounts.pressure(summary.gauge(highest.value())) + " " + on(highest.time());
            marks.add(new Mark(Mark.Kind.HIGHEST, day(highest.time()), gauge(highest.value()), label));
        }
        return marks;
    }

    private void add(List<Mark> marks, Event.Kind event, Mark.Kind kind, String what) {
        summary.first(event).ifPresent(first -> marks.add(mark(kind, first, what + on(first.time()))));
    }

    private Mark mark(Mark.Kind kind, Event event, String label) {
        return new Mark(kind, day(event.time()), gauge(event.pressureAbsolute()), label);
    }

    private String on(double seconds) {
        return "on " + moments.day((int) day(seconds));
    }

    private double gauge(double absolute) {
        return amounts.units().pressure().fromSi(summary.gauge(absolute));
    }

    private static double day(double seconds) {
        return seconds / DailyFigures.DAY;
    }

    /**
     * The figures of days as lines and bars. A picture has room for some hundred days side by side; of a longer run, as many
     * days as need be share one step: the lowest and highest pressure of them all, and what they discharged together.
     */
    static final class DayBins {

        private static final int MAX = 740;
        private static final int[] WIDTHS = {1, 7, 28, 91, 365};
        private static final String[] NAMES = {"per day", "per week", "per 4 weeks", "per quarter", "per year"};

        /** With more bars than this there is no room for gaps between them. */
        private static final int MAX_WITH_GAPS = 120;

        private static final double GAP = 0.12;

        private final List<Day> bins = new ArrayList<>();
        private final QuantityFormat amounts;
        private final double days;
        private final int width;
        private final String each;

        DayBins(List<Day> figures, double days, QuantityFormat amounts) {
            this.amounts = amounts;
            this.days = days;
            int chosen = 0;
            while (chosen < WIDTHS.length - 1 && figures.size() > MAX * WIDTHS[chosen]) {
                chosen++;
            }
            width = WIDTHS[chosen];
            each = NAMES[chosen];
            for (int from = 0; from < figures.size(); from += width) {
                bins.add(together(figures.subList(from, Math.min(from + width, figures.size()))));
            }
        }

        /** What a bar stands for: {@code per day}. */
        String each() {
            return each;
        }

        Points lowest() {
            return steps(false);
        }

        Points highest() {
            return steps(true);
        }

        Area pressureRange() {
            String of = width == 1 ? "of each day" : "of each step";
            return Area.between(Area.Role.PRESSURE_RANGE, "lowest to highest " + of, lowest(), highest());
        }

        /** The most that one bar shows, in the unit shown. */
        double most(ToDoubleFunction<Day> volume) {
            return bins.stream()
                    .mapToDouble(bin -> amounts.units().volume().fromSi(volume.applyAsDouble(bin)))
                    .max()
                    .orElse(0);
        }

        /** Bars of a volume (m3) from zero up. */
        Area bars(Area.Role role, ToDoubleFunction<Day> volume) {
            double gap = bins.size() > MAX_WITH_GAPS ? 0 : GAP * width;
            List<double[]> corners = new ArrayList<>();
            for (int bin = 0; bin < bins.size(); bin++) {
                double value = amounts.units().volume().fromSi(volume.applyAsDouble(bins.get(bin)));
                double from = Math.min(start(bin) + gap, days);
                double to = Math.max(from, start(bin + 1) - gap);
                corners.add(new double[] {from, 0});
                corners.add(new double[] {from, value});
                corners.add(new double[] {to, value});
                corners.add(new double[] {to, 0});
            }
            Points foot = Points.overTime(new double[] {0, days}, new double[] {0, 0});
            return Area.between(role, "", foot, points(corners));
        }

        private Points steps(boolean high) {
            List<double[]> corners = new ArrayList<>();
            for (int bin = 0; bin < bins.size(); bin++) {
                Day day = bins.get(bin);
                double gauge = high ? day.highestPressure() : day.lowestPressure();
                double value = amounts.units().pressure().fromSi(gauge);
                corners.add(new double[] {start(bin), value});
                corners.add(new double[] {start(bin + 1), value});
            }
            return points(corners);
        }

        private double start(int bin) {
            return Math.min((double) bin * width, days);
        }

        private static Points points(List<double[]> corners) {
            return Points.overTime(
                    corners.stream().mapToDouble(corner -> corner[0]).toArray(),
                    corners.stream().mapToDouble(corner -> corner[1]).toArray());
        }

        private static Day together(List<Day> days) {
            return new Day(
                    days.stream().mapToDouble(Day::lowestPressure).min().orElseThrow(),
                    days.stream().mapToDouble(Day::highestPressure).max().orElseThrow(),
                    days.stream().mapToDouble(Day::relieved).sum(),
                    days.stream().mapToDouble(Day::drawn).sum(),
                    days.stream().mapToDouble(Day::highestTemperature).max().orElseThrow());
        }
    }
}
