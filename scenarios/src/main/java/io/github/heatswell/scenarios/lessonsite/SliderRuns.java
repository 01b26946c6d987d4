package io.github.heatswell.scenarios.lessonsite;

import io.github.heatswell.finding.Measure;
import io.github.heatswell.finding.Measure.Kind;
import io.github.heatswell.finding.Statement;
import io.github.heatswell.result.Channel;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.scenarios.file.Change;
import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.scenarios.lesson.Lesson;
import io.github.heatswell.scenarios.lesson.LessonSlider;
import io.github.heatswell.scenarios.wording.Digits;
import io.github.heatswell.units.PressureUnit;
import io.github.heatswell.units.Unit;
import io.github.heatswell.units.UnitSystem;
import io.github.heatswell.units.VolumeUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.DoubleStream;

/**
 * The runs a slider moves through, every one of them computed.
 *
 * @param label what is moved
 * @param runs the runs, in the order of the slider
 * @param first the run shown before anything is moved
 */
record SliderRuns(String label, List<SliderRun> runs, int first) {

    /** Between two values of a lesson so many more are computed. */
    private static final int BETWEEN = 3;

    private static final int MOST_POINTS = 200;

    private static final Map<String, Unit> UNITS =
            Map.of(PressureUnit.BAR.symbol(), PressureUnit.BAR, VolumeUnit.LITRE.symbol(), VolumeUnit.LITRE);

    /**
     * One run.
     *
     * @param statement what it shows, in words
     * @param step the distance of the points (s)
     * @param end the end of the run (s)
     * @param gauge the readings of the gauge (Pa), evenly spaced but for the last
     * @param relief the lowest relief set pressure (Pa, gauge), or NaN
     */
    record SliderRun(Statement statement, double step, double end, double[] gauge, double relief) {

        String text(UnitSystem units) {
            return statement.text(units);
        }
    }

    static SliderRuns of(Lesson lesson, LessonSlider slider) {
        List<Double> values = values(slider);
        Scenario base = lesson.cases().get(slider.caseIndex()).scenario();
        List<SliderRun> runs =
                values.parallelStream().map(value -> run(base, slider, value)).toList();
        return new SliderRuns(slider.label(), runs, first(values, slider, base));
    }

    /** The values of the lesson and some between them. */
    private static List<Double> values(LessonSlider slider) {
        List<Double> values = new ArrayList<>();
        double last = Double.NaN;
        for (String text : slider.values()) {
            double next = Double.parseDouble(text);
            for (int i = 1; i <= BETWEEN && !Double.isNaN(last); i++) {
                values.add(rounded(last + (next - last) * i / (BETWEEN + 1)));
            }
            values.add(next);
            last = next;
        }
        return values.stream().distinct().toList();
    }

    private static double rounded(double value) {
        return Double.parseDouble(Digits.significant(value, 3));
    }

    private static String text(LessonSlider slider, double value) {
        return (Digits.significant(value, 6) + " " + slider.unit()).strip();
    }

    /** The run in the middle, unless the house of the lesson itself is among them. */
    private static int first(List<Double> values, LessonSlider slider, Scenario base) {
        String described = base.changedText();
        for (int i = 0; i < values.size(); i++) {
            if (base.with(List.of(new Change(slider.field(), text(slider, values.get(i)))))
                    .changedText()
                    .equals(described)) {
                return i;
            }
        }
        return values.size() / 2;
    }

    private static SliderRun run(Scenario base, LessonSlider slider, double value) {
        Scenario scenario = base.with(List.of(new Change(slider.field(), text(slider, value))));
        RunResult result = scenario.simulation().run();
        int count = result.trace().count();
        int stride = Math.max(1, (count - 1 + MOST_POINTS - 1) / MOST_POINTS);
        List<Double> gauge = new ArrayList<>();
        for (int i = 0; i < count; i += stride) {
            gauge.add(result.trace().value(Channel.GAUGE_READING, i));
        }
        double air = scenario.system().site().atmosphere();
        double relief = scenario.system().reliefValves().stream()
                .map(valve -> valve.opens().gauge(air))
                .min(Double::compare)
                .orElse(Double.NaN);
        return new SliderRun(
                statement(slider, value, result),
                stride * scenario.sample().toNanos() * 1e-9,
                result.end(),
                gauge.stream().flatMapToDouble(DoubleStream::of).toArray(),
                relief);
    }

    private static Statement statement(LessonSlider slider, double value, RunResult result) {
        Measure peak = new Measure(
                Kind.GAUGE_PRESSURE,
                result.gauge(result.extremes().highestPressure().value()));
        Measure relieved = new Measure(Kind.VOLUME, result.totals().relieved());
        String end = result.hazard().isPresent() ? " The run ends in a hazard." : "";
        Unit unit = UNITS.get(slider.unit());
        if (unit == null) {
            return Statement.of(
                    "Computed run: " + text(slider, value) + ". The peak is {}, the relief valve gives off {}." + end,
                    peak,
                    relieved);
        }
        Kind kind = unit instanceof PressureUnit ? Kind.GAUGE_PRESSURE : Kind.VOLUME;
        return Statement.of(
                "Computed run: {}. The peak is {}, the relief valve gives off {}." + end,
                new Measure(kind, unit.toSi(value)),
                peak,
                relieved);
    }
}
