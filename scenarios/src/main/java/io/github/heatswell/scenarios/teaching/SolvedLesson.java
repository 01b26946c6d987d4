package io.github.heatswell.scenarios.teaching;

import io.github.heatswell.result.Balances;
import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.units.UnitSystem;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * A lesson with everything computed that its pages show.
 *
 * @param run the runs of its houses
 * @param pictures the pictures of these runs in each system of units
 * @param grid the runs of its slider, if it has one
 */
record SolvedLesson(LessonRun run, Map<UnitSystem, List<LessonPicture>> pictures, Optional<SliderGrid> grid) {

    private record Step(String lesson, String si, String us, Scenario scenario) {}

    /** Runs everything a course shows, on all processors; the lessons keep their order. */
    static List<SolvedLesson> solve(List<Lesson> lessons, Balances.Count count, UnitSystem first) {
        List<Step> steps = lessons.stream()
                .flatMap(lesson -> steps(lesson, first).stream())
                .toList();
        Map<Step, SliderGrid.Step> solved = steps.parallelStream()
                .collect(Collectors.toConcurrentMap(
                        Function.identity(),
                        step -> SliderGrid.Step.of(
                                step.si(),
                                step.us(),
                                count.add(step.scenario().simulation().run()))));
        return lessons.parallelStream()
                .map(lesson -> of(
                        LessonRun.of(lesson),
                        steps.stream()
                                .filter(step -> step.lesson().equals(lesson.id()))
                                .map(solved::get)
                                .toList()))
                .toList();
    }

    private static List<Step> steps(Lesson lesson, UnitSystem first) {
        return lesson.slider()
                .map(slider -> slider.refined(first))
                .map(slider -> IntStream.range(0, slider.values().size())
                        .mapToObj(i -> new Step(
                                lesson.id(),
                                slider.shown(i, UnitSystem.SI),
                                slider.shown(i, UnitSystem.US),
                                slider.scenarios().get(i)))
                        .toList())
                .orElse(List.of());
    }

    private static SolvedLesson of(LessonRun run, List<SliderGrid.Step> steps) {
        return new SolvedLesson(
                run,
                Stream.of(UnitSystem.SI, UnitSystem.US)
                        .collect(Collectors.toMap(Function.identity(), units -> LessonPicture.all(run, units))),
                run.lesson()
                        .slider()
                        .map(slider -> SliderGrid.of(
                                steps, run.house(slider.house().name()).run())));
    }

    Lesson lesson() {
        return run.lesson();
    }
}
