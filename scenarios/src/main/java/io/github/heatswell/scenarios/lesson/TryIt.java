package io.github.heatswell.scenarios.lesson;

import io.github.heatswell.result.RunResult;
import io.github.heatswell.scenarios.file.Change;
import io.github.heatswell.scenarios.file.Scenario;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/**
 * Something to try oneself, with one of the houses of the lesson.
 *
 * @param caseIndex the case of the lesson whose house is changed, counted from 0
 * @param changes what to change in it, at least one field
 * @param shows what will be seen, in one or two sentences
 * @param claim the same as a test of the run
 */
public record TryIt(int caseIndex, List<Change> changes, String shows, Predicate<RunResult> claim) {

    /**
     * Copies the changes.
     *
     * @param caseIndex the case of the lesson whose house is changed, counted from 0
     * @param changes what to change in it, at least one field
     * @param shows what will be seen, in one or two sentences
     * @param claim the same as a test of the run
     * @throws IllegalArgumentException if nothing is changed
     */
    public TryIt {
        changes = List.copyOf(changes);
        Texts.requireCount("the changes to try", changes.size(), 1, Integer.MAX_VALUE);
        Texts.require("what the trial shows", shows);
        Objects.requireNonNull(claim, "claim");
    }

    /**
     * A trial by its changes as they are typed.
     *
     * @param caseIndex the case of the lesson whose house is changed, counted from 0
     * @param shows what will be seen, in one or two sentences
     * @param claim the same as a test of the run
     * @param changes what to change in it, each such as {@code tank.volume=150 L}
     * @return the trial
     * @throws IllegalArgumentException if nothing is changed or a change is none
     */
    public static TryIt of(int caseIndex, String shows, Predicate<RunResult> claim, String... changes) {
        return new TryIt(caseIndex, List.of(changes).stream().map(Change::of).toList(), shows, claim);
    }

    /**
     * The house before anything is changed: one of those the page shows.
     *
     * @param lesson the lesson
     * @return the case
     */
    public LessonCase house(Lesson lesson) {
        return lesson.cases().get(caseIndex);
    }

    /**
     * The command to type.
     *
     * @param lesson the lesson
     * @return the command with one {@code --set} for each change, those that make the house of the page first
     */
    public String command(Lesson lesson) {
        List<String> tried = changes.stream().map(Change::field).toList();
        List<Change> all = house(lesson).scenario().changes().stream()
                .filter(change -> !tried.contains(change.field()))
                .collect(Collectors.toCollection(ArrayList::new));
        all.addAll(changes);
        return Commands.run(house(lesson).scenario().name(), all);
    }

    /**
     * What the command runs.
     *
     * @param lesson the lesson
     * @return the changed scenario
     * @throws io.github.heatswell.scenarios.file.InvalidScenarioException if it makes no sense with the changes
     */
    public Scenario changed(Lesson lesson) {
        return house(lesson).scenario().with(changes);
    }

    /**
     * The house as a file, before anything is changed: it runs as it does on the page, and is named after its case.
     *
     * @param lesson the lesson
     * @return the text of a scenario file
     */
    public String file(Lesson lesson) {
        LessonCase house = house(lesson);
        Scenario named = house.scenario()
                .with(List.of(
                        Change.of("title=" + shown(lesson.title() + ": " + house.label())),
                        Change.of("question=" + shown(lesson.question())),
                        Change.of("expect=none")));
        return "# An invented house, as the page of the lesson shows it; its numbers are ordinary ones.\n"
                + named.changedText();
    }

    /** A scenario file holds no characters that do not show. */
    private static String shown(String text) {
        return text.replaceAll("\\p{C}", " ").strip();
    }
}
