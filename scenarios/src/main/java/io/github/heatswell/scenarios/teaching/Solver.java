package io.github.heatswell.scenarios.teaching;

import io.github.heatswell.result.BalanceCount;
import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.units.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Runs everything a course shows, on all processors. */
final class Solver {

    private record Step(String lesson, String si, String us, Scenario scenario) {}

    private Solver() {}

    /** The lessons with their runs, in their order. */
    static List<SolvedLesson> solve(List<Lesson> lessons, BalanceCount count) {
        List<Step> steps =
                lessons.stream().flatMap(lesson -> steps(lesson).stream()).toList();
        Map<Step, SliderStep> sliders = steps.parallelStream()
                .collect(Collectors.toConcurrentMap(
                        Function.identity(),
                        step -> SliderStep.of(
                                step.si(),
                                step.us(),
                                count.add(step.scenario().simulation().run()))));
        return lessons.parallelStream()
                .map(lesson -> SolvedLesson.of(LessonRun.of(lesson), of(lesson, steps, sliders)))
                .toList();
    }

    private static List<SliderStep> of(Lesson lesson, List<Step> steps, Map<Step, SliderStep> solved) {
        List<SliderStep> found = new ArrayList<>();
        for (Step step : steps) {
            if (step.lesson().equals(lesson.id())) {
                found.add(solved.get(step));
            }
        }
        return found;
    }

    private static List<Step> steps(Lesson lesson) {
        return lesson.slider()
                .map(slider -> steps(lesson, SliderValues.refined(slider)))
                .orElse(List.of());
    }

    private static List<Step> steps(Lesson lesson, LessonSlider slider) {
        List<Scenario> scenarios = slider.scenarios();
        return IntStream.range(0, scenarios.size())
                .mapToObj(i -> new Step(
                        lesson.id(),
                        SliderValues.shown(slider, i, UnitSystem.SI),
                        SliderValues.shown(slider, i, UnitSystem.US),
                        scenarios.get(i)))
                .toList();
    }
}
