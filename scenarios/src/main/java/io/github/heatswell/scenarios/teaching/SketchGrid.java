package io.github.heatswell.scenarios.teaching;

import io.github.heatswell.assessment.Measure;
import io.github.heatswell.assessment.Moments;
import io.github.heatswell.assessment.Statement;
import io.github.heatswell.result.Channel;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.scenarios.report.Svg;
import io.github.heatswell.units.Decimals;
import io.github.heatswell.units.Unit;
import io.github.heatswell.units.UnitSystem;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.UnaryOperator;

/** An empty graph to sketch curves into, with axes on which those of the lesson's runs have room and the minutes that matter are wide. */
final class SketchGrid {

    private static final int WIDTH = 720;
    private static final int HEIGHT = 250;
    private static final int LEFT = 60;
    private static final int RIGHT = 26;
    private static final int TOP = 26;
    private static final int BOTTOM = 38;

    /** Up to here pictures have minutes (s). */
    private static final double MAX_IN_MINUTES = 3 * 3600;

    private static final double HOUR = 3600;
    private static final double MINUTE = 60;

    private final StringBuilder svg = new StringBuilder();
    private final List<RunResult> shown = new ArrayList<>();
    private final Channel channel;
    private final UnitSystem units;

    private SketchGrid(LessonRun run, UnitSystem units) {
        this.channel = run.lesson().houses().get(0).channel();
        for (int i = 0; i < run.results().size(); i++) {
            if (isShown(run.lesson(), i)) {
                shown.add(run.results().get(i));
            }
        }
        this.units = units;
    }

    /** What a sketch begins with, and the set pressure of the relief valve that a pressure may reach. */
    static Statement start(Channel channel, RunResult run, UnaryOperator<String> words) {
        if (LessonPicture.HEAT.contains(channel)) {
            return Statement.of(
                    words.apply("sheet-starts-warm"),
                    Measure.temperature(run.trace().value(channel, 0)));
        }
        Measure gauge = Measure.gauge(run.gauge(run.trace().value(Channel.PRESSURE_ABSOLUTE, 0)));
        return run.system().reliefValves().stream()
                .map(valve ->
                        Measure.gauge(valve.setPressure(), run.system().site().atmosphere()))
                .min(Comparator.comparingDouble(Measure::value))
                .map(set -> Statement.of(words.apply("sheet-starts"), gauge, set))
                .orElseGet(() -> Statement.of(words.apply("sheet-starts-bare"), gauge));
    }

    /** Whether a case is sketched: those that follow the same quantity for as long as the first. */
    static boolean isShown(Lesson lesson, int index) {
        Lesson.House first = lesson.houses().get(0);
        Lesson.House one = lesson.houses().get(index);
        return one.channel() == first.channel()
                && one.scenario().duration().equals(first.scenario().duration());
    }

    static Svg of(LessonRun run, UnitSystem units) {
        return new SketchGrid(run, units).draw();
    }

    private Svg draw() {
        double end = end();
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (RunResult result : shown) {
            for (int i = 0; i < result.trace().count() && result.trace().grid().time(i) <= end; i++) {
                low = Math.min(low, value(result, i));
                high = Math.max(high, value(result, i));
            }
        }
        if (unit() == units.pressure()) {
            high = Math.max(high, reliefSet());
        }
        svg.append("<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 " + WIDTH + " " + HEIGHT + "\">");
        upright(Scale.around(low, high));
        across(end);
        String name = name();
        text(4, 14, "start", name);
        svg.append("</svg>");
        return Svg.of(svg.toString(), "Empty graph: " + name + " over time.", "sketch-" + Page.mark(units) + "-");
    }

    /** Where a relief valve would open: who expects that must have room to draw it. */
    private double reliefSet() {
        double set = 0;
        for (RunResult result : shown) {
            double atmosphere = result.system().site().atmosphere();
            set = result.system().reliefValves().stream()
                    .mapToDouble(valve -> unit().fromSi(valve.setPressure().gauge(atmosphere)))
                    .reduce(set, Math::max);
        }
        return set;
    }

    /** As far as the picture goes with which the sketch is compared. */
    private double end() {
        double unit = timeUnit();
        double longest = shown.stream().mapToDouble(RunResult::end).max().orElseThrow();
        double step = Scale.step(longest / unit);
        return Math.ceil(longest / unit / step - 1e-9) * step * unit;
    }

    /** Whether a picture of runs has hours or the time of day, or else minutes. */
    static boolean inHours(List<RunResult> runs) {
        return byClock(runs.get(0)) || runs.stream().anyMatch(run -> run.end() > MAX_IN_MINUTES);
    }

    private static boolean byClock(RunResult run) {
        return !run.system().draws().draws().isEmpty();
    }

    private double timeUnit() {
        return inHours(shown) ? HOUR : MINUTE;
    }

    private void upright(Scale scale) {
        for (int i = 0; i <= scale.lines(); i++) {
            double y = HEIGHT - BOTTOM - (HEIGHT - TOP - BOTTOM) * (double) i / scale.lines();
            line(LEFT, y, WIDTH - RIGHT, y);
            text(LEFT - 8, y + 4, "end", scale.label(i));
        }
    }

    private void across(double end) {
        double unit = timeUnit();
        double step = Scale.step(end / unit);
        Scale scale = new Scale(0, step, (int) Math.round(end / unit / step));
        boolean byClock = byClock(shown.get(0));
        double begins = byClock ? shown.get(0).system().start().timeOfDay() / unit : 0;
        double first = Math.ceil(begins / step - 1e-9) * step - begins; // round times of day, as in the picture
        for (int i = 0; first + i * step <= end / unit + 1e-9; i++) {
            double time = first + i * step;
            double x = LEFT + (WIDTH - LEFT - RIGHT) * time * unit / end;
            line(x, TOP, x, HEIGHT - BOTTOM);
            text(x, HEIGHT - BOTTOM + 18, "middle", byClock ? clock(time * unit) : scale.label(i));
        }
        line(LEFT, TOP, LEFT, HEIGHT - BOTTOM);
        line(WIDTH - RIGHT, TOP, WIDTH - RIGHT, HEIGHT - BOTTOM);
        text(
                (LEFT + WIDTH - RIGHT) / 2.0,
                HEIGHT - 4,
                "middle",
                byClock ? "time of day" : "time since the start (" + (unit == HOUR ? "h" : "min") + ")");
    }

    /** The time of day at a time (s) of the run, on the clock of the picture. */
    private String clock(double time) {
        RunResult first = shown.get(0);
        long minutes = Math.round((first.system().start().timeOfDay() + time) / MINUTE) % (24 * 60);
        return Moments.of(first.system(), first.end()).clock(minutes);
    }

    private double value(RunResult result, int index) {
        double si = result.trace().value(channel, index);
        return unit().fromSi(
                        channel == Channel.PRESSURE_ABSOLUTE || channel == Channel.MAINS_ABSOLUTE
                                ? result.gauge(si)
                                : si);
    }

    private Unit unit() {
        return switch (channel) {
            case WATER_MEAN, WATER_TOP, WATER_BOTTOM -> units.temperature();
            case RELIEVED_TOTAL, VESSEL_WATER, INFLOW_TOTAL, DRAWN_TOTAL, RETURNED_TOTAL -> units.volume();
            case RELIEF_FLOW, DRAW_FLOW -> units.flow();
            case HEATER_POWER -> units.power();
            default -> units.pressure();
        };
    }

    private String name() {
        String symbol = unit().symbol().replace("deg", "\u00b0");
        boolean pressure = unit() == units.pressure();
        String quantity =
                channel == Channel.RELIEVED_TOTAL ? "water discharged since the start" : channel.description();
        return (pressure ? "gauge pressure" : quantity) + " (" + symbol + ")";
    }

    private void line(double x1, double y1, double x2, double y2) {
        svg.append("<line x1=\"" + at(x1) + "\" y1=\"" + at(y1) + "\" x2=\"" + at(x2) + "\" y2=\"" + at(y2)
                + "\" stroke=\"#9aa7ad\" stroke-width=\"1\"/>");
    }

    private void text(double x, double y, String anchor, String words) {
        svg.append("<text x=\"" + at(x) + "\" y=\"" + at(y) + "\" text-anchor=\"" + anchor
                + "\" font-size=\"13\" font-family=\"sans-serif\">" + words + "</text>");
    }

    private static String at(double place) {
        return Decimals.atMost(place, 1);
    }

    /**
     * A scale for a sketch that gives nothing away: round steps that can be told apart, and room above and below what the runs
     * show, so that the ends of the scale are not the answer.
     *
     * @param from where it begins
     * @param step from line to line, 1, 2 or 5 times a power of ten
     * @param lines how many steps it has
     */
    record Scale(double from, double step, int lines) {

        /** As many lines as this, or somewhat fewer, are easy to read. */
        private static final int MAX_LINES = 8;

        /** The least that is left free at an end, as a share of what is shown. */
        private static final double FREE = 0.12;

        /** A curve that hardly moves gets a scale of this share of its value, not one that shows its rounding. */
        private static final double NARROW = 0.5;

        /**
         * A scale around values.
         *
         * @param low the lowest value
         * @param high the highest value
         */
        static Scale around(double low, double high) {
            double span = Math.max(high - low, NARROW * Math.max(Math.abs(high), Math.abs(low)));
            double missing = span - (high - low);
            double bottom = low - missing / 2 - FREE * span;
            double top = high + missing / 2 + FREE * span;
            if (low >= 0 && bottom < 0) {
                bottom = 0;
            }
            double step = step(top - bottom);
            double first = Math.floor(bottom / step + 1e-9) * step;
            double last = Math.ceil(top / step - 1e-9) * step;
            return new Scale(first, step, (int) Math.round((last - first) / step));
        }

        /** What a line is labelled with. */
        String label(int line) {
            int decimals = Math.max(0, -(int) Math.floor(Math.log10(step) + 1e-9));
            double value = from + line * step;
            return value == 0 ? "0" : Decimals.fixed(value, decimals);
        }

        /** A distance of 1, 2 or 5 times a power of ten, at most eight of which make a span. */
        static double step(double span) {
            double power = Math.pow(10, Math.floor(Math.log10(span / MAX_LINES)));
            double part = span / MAX_LINES / power;
            return power * (part <= 1 ? 1 : part <= 2 ? 2 : part <= 5 ? 5 : 10);
        }
    }
}
