package io.github.heatswell.scenarios.teaching;

import io.github.heatswell.assessment.Measure;
import io.github.heatswell.assessment.Statement;
import io.github.heatswell.result.Balances;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.scenarios.file.Change;
import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.scenarios.teaching.Lesson.Option;
import io.github.heatswell.simulation.Workers;
import io.github.heatswell.units.UnitSystem;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * A lesson with the results of its houses. The other houses its expressions name are run when they are asked for, each once, and
 * so are houses that a figure changes.
 */
final class LessonRun {

    private final Lesson lesson;
    private final List<RunResult> results;
    private final Balances.Count count;
    private final Map<String, RunResult> others = new ConcurrentHashMap<>();
    private final Map<Variant, RunResult> variants = new ConcurrentHashMap<>();

    private LessonRun(Lesson lesson, List<RunResult> results, Balances.Count count) {
        this.lesson = lesson;
        this.results = List.copyOf(results);
        this.count = count;
    }

    /** A lesson with results from elsewhere, one for each house. */
    LessonRun(Lesson lesson, List<RunResult> results) {
        this(lesson, results, new Balances.Count());
    }

    /** Runs the houses of a lesson. */
    static LessonRun of(Lesson lesson) {
        Balances.Count count = new Balances.Count();
        return new LessonRun(
                lesson,
                Workers.of(Runtime.getRuntime().availableProcessors())
                        .map(
                                lesson.houses(),
                                house -> count.add(house.scenario().simulation().run())),
                count);
    }

    /** A house of the lesson with one value changed. */
    private record Variant(Scenario scenario, Change change) {}

    /**
     * A house and what its run shows.
     *
     * @param scenario the house
     * @param run its run
     * @param lesson keeps the runs of its variants
     */
    record House(Scenario scenario, RunResult run, LessonRun lesson) {

        /** The run of the same house, changed. */
        RunResult with(String field, String value) {
            return lesson.variants.computeIfAbsent(new Variant(scenario, new Change(field, value)), lesson::run);
        }
    }

    private RunResult run(Variant variant) {
        return count.add(
                variant.scenario().with(List.of(variant.change())).simulation().run());
    }

    Lesson lesson() {
        return lesson;
    }

    /** The results of the houses that are compared, in their order. */
    List<RunResult> results() {
        return results;
    }

    /** Counts these runs and those that expressions have asked for. */
    Balances.Count count() {
        return count;
    }

    /** A house by the name that expressions use. */
    House house(String name) {
        for (int i = 0; i < results.size(); i++) {
            if (lesson.houses().get(i).name().equals(name)) {
                return new House(lesson.houses().get(i).scenario(), results.get(i), this);
            }
        }
        Scenario scenario = lesson.others().get(name);
        return new House(
                scenario,
                others.computeIfAbsent(
                        name, any -> count.add(scenario.simulation().run())),
                this);
    }

    /** What to notice, with the numbers of these runs. */
    List<Statement> notice() {
        return lesson.notice().stream().map(claim -> claim.words().in(this)).toList();
    }

    /** Which of the options the runs show, counted from 0. */
    int outcome() {
        List<Option> options = lesson.prediction().options();
        int[] shown = IntStream.range(0, options.size())
                .filter(i -> options.get(i).when().map(when -> when.holds(this)).orElse(false))
                .toArray();
        int[] left = shown.length > 0
                ? shown
                : IntStream.range(0, options.size())
                        .filter(i -> options.get(i).when().isEmpty())
                        .toArray();
        if (left.length != 1) {
            throw new IllegalStateException(
                    "the run of lesson '" + lesson.id() + "' shows " + left.length + " of its options");
        }
        return left[0];
    }

    /** The option the runs show. */
    Option right() {
        return lesson.prediction().options().get(outcome());
    }

    /** The right readings, in the order of the worksheet. */
    List<Measure> answers() {
        return lesson.readings().stream()
                .map(reading -> reading.answer().measure(this))
                .toList();
    }

    /** What the lesson says or expects and the runs do not bear out. */
    List<String> refuted() {
        return Stream.of(
                        lesson.expected(),
                        lesson.claims(),
                        List.of(lesson.tryIt().shows()))
                .flatMap(List::stream)
                .filter(claim -> !claim.holds(this))
                .map(claim -> claim.words().in(this).text(UnitSystem.SI))
                .toList();
    }
}
