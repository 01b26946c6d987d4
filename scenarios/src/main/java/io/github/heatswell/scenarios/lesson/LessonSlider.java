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
 * @param field the field, such as {@code vessel.volume}
 * @param values its values without unit, as a file writes them, two or more, rising
 * @param unit their unit, such as {@code L}; empty if they have none
 */
public record LessonSlider(int caseIndex, String label, String field, List<String> values, String unit) {

    /**
     * Copies the values.
     *
     * @param caseIndex which case, counted from 0
     * @param label what is moved, in words
     * @param field the field, such as {@code vessel.volume}
     * @param values its values without unit, as a file writes them, two or more, rising
     * @param unit their unit, such as {@code L}; empty if they have none
     * @throws IllegalArgumentException if label, field or a value is blank, or there are fewer than two values
     */
    public LessonSlider {
        Texts.require("the label of a slider", label);
        Texts.require("the field of a slider", field);
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
     * What the case becomes at every value.
     *
     * @param lesson the lesson the slider belongs to
     * @return a scenario for each value, in their order
     * @throws io.github.heatswell.scenarios.file.InvalidScenarioException if one of them makes no sense
     */
    public List<Scenario> scenarios(Lesson lesson) {
        Scenario base = lesson.cases().get(caseIndex).scenario();
        return IntStream.range(0, values.size())
                .mapToObj(index -> base.with(List.of(new Change(field, text(index)))))
                .toList();
    }
}
