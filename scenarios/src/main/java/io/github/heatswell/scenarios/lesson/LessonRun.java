package io.github.heatswell.scenarios.lesson;

import io.github.heatswell.assessment.Measure;
import io.github.heatswell.assessment.Statement;
import io.github.heatswell.result.BalanceCount;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.simulation.Workers;
import io.github.heatswell.units.UnitSystem;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;

/**
 * A lesson with the results of its cases.
 *
 * @param lesson the lesson
 * @param results one result for each case, in their order
 * @param count counts these runs and those that its claims make
 */
public record LessonRun(Lesson lesson, List<RunResult> results, BalanceCount count) {

    /**
     * Checks that there is a result for every case.
     *
     * @param lesson the lesson
     * @param results one result for each case, in their order
     * @param count counts these runs and those that its claims make
     * @throws IllegalArgumentException if there are more or fewer results than cases
     */
    public LessonRun {
        Objects.requireNonNull(lesson, "lesson");
        results = List.copyOf(results);
        int cases = lesson.cases().size();
        if (results.size() != cases) {
            throw new IllegalArgumentException(
                    lesson.id() + " has " + cases + " cases and needs as many results, not " + results.size());
        }
    }

    /**
     * A lesson whose runs were counted elsewhere, if at all.
     *
     * @param lesson the lesson
     * @param results one result for each case, in their order
     * @throws IllegalArgumentException if there are more or fewer results than cases
     */
    public LessonRun(Lesson lesson, List<RunResult> results) {
        this(lesson, results, new BalanceCount());
    }

    /**
     * Runs all cases of a lesson, one after the other if it has only one, else on several threads.
     *
     * @param lesson the lesson
     * @return the lesson with its results
     * @throws io.github.heatswell.simulation.SimulationException if a case cannot be simulated
     */
    public static LessonRun of(Lesson lesson) {
        BalanceCount count = new BalanceCount();
        return new LessonRun(
                lesson,
                Workers.of(Runtime.getRuntime().availableProcessors())
                        .map(
                                lesson.cases(),
                                one -> count.add(one.scenario().simulation().run())),
                count);
    }

    /**
     * The result of a case.
     *
     * @param index which case, counted from 0
     * @return its result
     * @throws IndexOutOfBoundsException if there is no such case
     */
    public RunResult result(int index) {
        return results.get(index);
    }

    /**
     * What to notice, in the numbers of this run.
     *
     * @return one or more statements
     */
    public List<Statement> notice() {
        return lesson.notice().stream().map(claim -> claim.in(this)).toList();
    }

    /**
     * The option of the prediction that this run shows.
     *
     * @return its number, counted from 0
     * @throws IllegalStateException if the lesson names an option that is not there
     */
    public int outcome() {
        int outcome = lesson.prediction().outcome().applyAsInt(this);
        if (outcome < 0 || outcome >= lesson.prediction().options().size()) {
            throw new IllegalStateException(lesson.id() + " has no option " + outcome);
        }
        return outcome;
    }

    /**
     * The answer key of the worksheet.
     *
     * @return an answer for each reading, in their order
     */
    public List<WorksheetRow.Answer> answers() {
        return lesson.worksheet().stream()
                .map(row -> new WorksheetRow.Answer(
                        row.label(), new Measure(row.kind(), row.answer().applyAsDouble(this))))
                .toList();
    }

    /**
     * Whether the run shows what the lesson relies on, and bears out every sentence that compares.
     *
     * @return every expectation, then every sentence with a check, in their order
     */
    public List<Expectation.Checked> checked() {
        Stream<Expectation.Checked> expected = lesson.expected().stream()
                .map(one ->
                        new Expectation.Checked(one.description(), one.holds().test(this)));
        Stream<Expectation.Checked> claimed = lesson.claims().stream()
                .filter(claim -> claim.check().isPresent())
                .map(claim -> new Expectation.Checked(claim.in(this).text(UnitSystem.SI), claim.holds(this)));
        return Stream.concat(expected, claimed).toList();
    }
}
