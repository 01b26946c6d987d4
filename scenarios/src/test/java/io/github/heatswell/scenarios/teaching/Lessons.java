package io.github.heatswell.scenarios.teaching;

import io.github.heatswell.result.Balances;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.scenarios.report.ResultFile;
import io.github.heatswell.units.UnitSystem;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** The lessons of the bundled course, their runs and their site, each made once for all tests. */
final class Lessons {

    private static final Map<Lesson, LessonRun> RUNS = new ConcurrentHashMap<>();
    private static final Map<LessonSlider, Map<String, RunResult>> MOVED = new ConcurrentHashMap<>();

    private static final class Bundled {
        static final List<Lesson> LESSONS = Course.bundled().lessons();
    }

    private static final class Site {
        static final List<ResultFile> FILES = pages(all(), UnitSystem.SI);
    }

    private Lessons() {}

    static List<Lesson> all() {
        return Bundled.LESSONS;
    }

    /** The runs of a lesson. */
    static LessonRun run(Lesson lesson) {
        return RUNS.computeIfAbsent(lesson, LessonRun::of);
    }

    /** The runs of a slider with all its steps, by the value without its unit. */
    static Map<String, RunResult> moved(LessonSlider slider) {
        return MOVED.computeIfAbsent(slider, own -> {
            LessonSlider refined = own.refined();
            return IntStream.range(0, refined.values().size())
                    .boxed()
                    .collect(Collectors.toMap(
                            refined.values()::get,
                            i -> refined.scenarios().get(i).simulation().run()));
        });
    }

    /** The files of the site of all lessons, SI units first. */
    static List<ResultFile> site() {
        return Site.FILES;
    }

    static Lesson named(String id) {
        return all().stream().filter(one -> one.id().equals(id)).findFirst().orElseThrow();
    }

    static List<ResultFile> pages(List<Lesson> lessons, UnitSystem first) {
        return Course.of(lessons).pages(new Balances.Count(), first);
    }

    /** The value of an expression of a lesson (SI units). */
    static double value(LessonRun run, String expression) {
        return Expression.of(
                        expression,
                        new Expression.Names(
                                new HashSet<>(run.lesson().houses().stream()
                                        .map(Lesson.House::name)
                                        .toList()),
                                Map.of()))
                .in(run);
    }
}
