package io.github.heatswell.scenarios.lesson;

import io.github.heatswell.scenarios.file.Change;
import io.github.heatswell.scenarios.file.Scenario;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A field of one case that the reader may move, in steps that can be run beforehand.
 *
 * @param caseIndex which case, counted from 0
 * @param label what is moved, in words
 * @param fields the fields that all take its value, such as {@code vessel.volume}; the first is the one to be moved
 * @param values its values without unit, as a file writes them, two or more, rising
 * @param unit their unit, such as {@code L}; empty if they have none
 */
public record LessonSlider(int caseIndex, String label, List<String> fields, List<String> values, String unit) {

    /**
     * Copies the values.
     *
     * @param caseIndex which case, counted from 0
     * @param label what is moved, in words
     * @param fields the fields that all take its value, such as {@code vessel.volume}; the first is the one to be moved
     * @param values its values without unit, as a file writes them, two or more, rising
     * @param unit their unit, such as {@code L}; empty if they have none
     * @throws IllegalArgumentException if label, field or a value is blank, or there are fewer than two values
     */
    public LessonSlider {
        Texts.require("the label of a slider", label);
        fields = List.copyOf(Texts.require("the fields of a slider", fields, 1, Integer.MAX_VALUE));
        values = List.copyOf(Texts.require("the values of a slider", values, 2, Integer.MAX_VALUE));
    }

    /**
     * A value as a file writes it.
     *
     * @param index which value, counted from 0
     * @return the value with its unit, such as {@code 12 L}
     * @throws IndexOutOfBoundsException if there is no such value
     */
    public String text(int index) {
        return (values.get(index) + " " + unit).strip();
    }

    /**
     * What is changed for a value.
     *
     * @param index which value, counted from 0
     * @return the changes of the case
     * @throws IndexOutOfBoundsException if there is no such value
     */
    public List<Change> changes(int index) {
        return fields.stream().map(field -> new Change(field, text(index))).toList();
    }

    /**
     * What the case becomes at every value.
     *
     * @param lesson the lesson the slider belongs to
     * @return a scenario for each value, in their order
     * @throws io.github.heatswell.scenarios.file.InvalidScenarioException if one of them makes no sense
     */
    public List<Scenario> scenarios(Lesson lesson) {
        Scenario base = lesson.cases().get(caseIndex).scenario();
        return IntStream.range(0, values.size())
                .mapToObj(index -> base.with(changes(index)))
                .toList();
    }
}
