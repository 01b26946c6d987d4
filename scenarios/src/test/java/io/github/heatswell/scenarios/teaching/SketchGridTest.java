package io.github.heatswell.scenarios.teaching;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.assessment.Moments;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.scenarios.report.Html;
import io.github.heatswell.units.UnitSystem;
import java.util.HashSet;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** An empty graph has ticks that can be told apart, and does not end where the answer does. */
class SketchGridTest {

    private static final Pattern TICK = Pattern.compile("text-anchor=\"(end|middle)\"[^>]*>([0-9.:]+)<");

    @ParameterizedTest
    @CsvSource({"3.4, 3.4", "3.4, 3.4004", "4.2, 7", "0, 375", "49.3, 101.5", "2.85, 11.2", "0, 0.0003", "288, 372"})
    void everyTickCanBeToldApartAndTheEndsAreFree(double low, double high) {
        SketchGrid.Scale scale = SketchGrid.Scale.around(low, high);
        List<String> labels =
                IntStream.rangeClosed(0, scale.lines()).mapToObj(scale::label).toList();
        assertEquals(labels.size(), new HashSet<>(labels).size(), labels.toString());
        assertTrue(scale.lines() >= 3 && scale.lines() <= 10, labels.toString());
        for (int i = 0; i < labels.size(); i++) {
            double printed = Double.parseDouble(labels.get(i));
            assertEquals(
                    scale.from() + i * scale.step(), printed, 1e-6 * scale.step(), "what is printed is not rounded");
        }
        double last = scale.from() + scale.lines() * scale.step();
        double free = 0.1 * Math.max(high - low, 1e-12);
        assertTrue(last - high >= free, high + " at the end of " + labels);
        assertTrue(low == 0 || low - scale.from() >= free, low + " at the end of " + labels);
    }

    /** The grids of the course, as they are drawn. */
    @ParameterizedTest
    @EnumSource
    void noGridOfTheCourseRepeatsATick(UnitSystem units) {
        Lessons.all().forEach(lesson -> {
            String svg = drawn(lesson, units);
            for (String axis : List.of("end", "middle")) {
                List<String> ticks = TICK.matcher(svg)
                        .results()
                        .filter(tick -> tick.group(1).equals(axis))
                        .map(tick -> tick.group(2))
                        .toList();
                assertTrue(ticks.size() >= 4, lesson.id() + ": " + ticks);
                assertEquals(ticks.size(), new HashSet<>(ticks).size(), lesson.id() + ": " + ticks);
            }
        });
    }

    private static String drawn(Lesson lesson, UnitSystem units) {
        return new Html().picture(SketchGrid.of(Lessons.run(lesson), units)).end();
    }

    /** Regression: a grid ended at 2 h beside a picture of 4 h, and counted hours beside a picture with the time of day. */
    @Test
    void theTimesAreThoseOfThePicture() {
        for (Lesson lesson : Lessons.all()) {
            RunResult first = Lessons.run(lesson).results().get(0);
            boolean clock = !first.system().draws().draws().isEmpty();
            String svg = drawn(lesson, UnitSystem.SI);
            assertEquals(clock, svg.contains(">time of day<"), lesson.id());
            assertEquals(!clock, svg.contains(">time since the start ("), lesson.id());
            long whole = 60 * (long) Math.ceil(first.system().start().timeOfDay() / 3600);
            assertTrue(
                    !clock
                            || svg.contains(">"
                                    + Moments.of(first.system(), first.end()).clock(whole) + "<"),
                    lesson.id() + " has other times of day than its picture");
            List<String> ticks = TICK.matcher(svg)
                    .results()
                    .filter(tick -> tick.group(1).equals("middle"))
                    .map(tick -> tick.group(2))
                    .toList();
            if (!clock) {
                double unit = svg.contains("(h)") ? 3600 : 60;
                double end = IntStream.range(0, lesson.houses().size())
                        .filter(house -> SketchGrid.isShown(lesson, house))
                        .mapToObj(Lessons.run(lesson).results()::get)
                        .mapToDouble(RunResult::end)
                        .max()
                        .orElseThrow();
                double last = unit * Double.parseDouble(ticks.get(ticks.size() - 1));
                assertTrue(last >= end - 1 && last < 1.3 * end, lesson.id() + ": " + ticks + " " + end); // whole ticks
            }
        }
    }
}
