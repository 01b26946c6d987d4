package io.github.heatswell.scenarios.teaching;

import io.github.heatswell.assessment.Measure;
import io.github.heatswell.scenarios.file.Change;
import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.units.Decimals;
import io.github.heatswell.units.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Fields of a house that the reader may move together.
 *
 * @param house the house
 * @param label what is moved
 * @param with the words before a value in a sentence, such as {@code a precharge of}
 * @param fields their keys in a scenario file, such as {@code vessel.precharge}; all get the same value
 * @param values the values without unit, from low to high
 * @param unit their unit, such as {@code bar}
 */
record LessonSlider(
        Lesson.House house, String label, String with, List<String> fields, List<String> values, String unit) {

    /** With fewer runs than this the steps between them are coarse. */
    private static final int FEWEST = 15;

    private static final int DECIMALS = 2;

    /** The house at each value. */
    List<Scenario> scenarios() {
        return IntStream.range(0, values.size())
                .mapToObj(index -> house.scenario()
                        .with(fields.stream()
                                .map(field -> new Change(field, text(index)))
                                .toList()))
                .toList();
    }

    /** A value with its unit. */
    private String text(int index) {
        return (values.get(index) + " " + unit).strip();
    }

    /** A value in a system of units; as it is written if its unit has no counterpart. */
    String shown(int index, UnitSystem units) {
        try {
            double value = Double.parseDouble(values.get(index));
            return KnownUnit.of(unit)
                    .map(known -> new Measure(known.kind(), known.toSi(value)).text(units))
                    .orElse(text(index));
        } catch (NumberFormatException e) {
            return text(index);
        }
    }

    /** The slider with as many values between its own as make the steps small, or itself if its values are no numbers. */
    LessonSlider refined() {
        int parts = 1;
        while ((values.size() - 1) * parts + 1 < FEWEST) {
            parts *= 2;
        }
        try {
            return new LessonSlider(house, label, with, fields, between(parts), unit);
        } catch (NumberFormatException e) {
            return this;
        }
    }

    private List<String> between(int parts) {
        List<String> refined = new ArrayList<>();
        for (int i = 0; i + 1 < values.size(); i++) {
            double low = Double.parseDouble(values.get(i));
            double step = Double.parseDouble(values.get(i + 1)) - low;
            refined.add(values.get(i));
            for (int part = 1; part < parts; part++) {
                String value = Decimals.atMost(low + step * part / parts, DECIMALS);
                if (!refined.contains(value) && !values.contains(value)) {
                    refined.add(value);
                }
            }
        }
        refined.add(values.get(values.size() - 1));
        return refined;
    }
}
