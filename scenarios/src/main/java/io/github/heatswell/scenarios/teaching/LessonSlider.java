package io.github.heatswell.scenarios.teaching;

import io.github.heatswell.scenarios.file.Change;
import io.github.heatswell.scenarios.file.Scenario;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Fields of a house that the reader may move together.
 *
 * @param house the house
 * @param label what is moved
 * @param fields their keys in a scenario file, such as {@code vessel.precharge}; all get the same value
 * @param values the values without unit, from low to high
 * @param unit their unit, such as {@code bar}
 */
record LessonSlider(LessonHouse house, String label, List<String> fields, List<String> values, String unit) {

    /** A value with its unit. */
    String text(int index) {
        return (values.get(index) + " " + unit).strip();
    }

    /** The house at each value. */
    List<Scenario> scenarios() {
        return IntStream.range(0, values.size())
                .mapToObj(index -> house.scenario()
                        .with(fields.stream()
                                .map(field -> new Change(field, text(index)))
                                .toList()))
                .toList();
    }
}
