package io.github.heatswell.scenarios.teaching;

import io.github.heatswell.result.Balances;
import io.github.heatswell.scenarios.report.ResultFile;
import io.github.heatswell.units.UnitSystem;
import java.util.HashSet;
import java.util.List;
import java.util.Map;

/** The lessons of the bundled course, read anew for each caller. */
final class Lessons {

    private Lessons() {}

    static List<Lesson> all() {
        return Course.bundled().lessons();
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
