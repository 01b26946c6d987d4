package io.github.heatswell.scenarios.teaching;

import io.github.heatswell.assessment.Measure;
import io.github.heatswell.scenarios.file.Change;
import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.units.Decimals;
import io.github.heatswell.units.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.IntStream;

/**
 * Fields of a house that the reader may move together.
 *
 * @param house the house
 * @param label what is moved
 * @param with the words before a value in a sentence, such as {@code a precharge of}
 * @param fields their keys in a scenario file, such as {@code vessel.precharge}; all get the same value
 * @param values the values, from low to high
 * @param unit their unit, such as {@code bar}; nothing if each value has its own or none
 */
record LessonSlider(
        Lesson.House house, String label, String with, List<String> fields, List<String> values, String unit) {

    /** With fewer runs than this the steps between them are coarse. */
    private static final int MIN = 15;

    private static final int DECIMALS = 2;

    /**
     * Numbers to stop at in the US, where those of a lesson are in another unit.
     *
     * @param unit their unit
     * @param step from one to the next
     */
    private record Stops(String unit, double step) {}

    private static final Map<String, Stops> STOPS =
            Map.of("L", new Stops("gal", 0.5), "bar", new Stops("psi", 5), "degC", new Stops("degF", 5));

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
        String[] parts = text(index).split(" ");
        try {
            double value = Double.parseDouble(parts[0]);
            return KnownUnit.of(parts[parts.length - 1])
                    .map(known -> new Measure(known.kind(), known.toSi(value)).text(units))
                    .orElse(text(index));
        } catch (NumberFormatException e) {
            return text(index);
        }
    }

    /** The slider with small steps: of numbers that people in the US can set and buy, where their units come first. */
    LessonSlider refined(UnitSystem first) {
        return Optional.ofNullable(STOPS.get(unit))
                .filter(stops -> first == UnitSystem.US)
                .map(this::at)
                .orElseGet(this::refined);
    }

    /** Between the same ends, at whole multiples of a step, and at the value of the house itself. */
    private LessonSlider at(Stops stops) {
        Map<Double, String> all = new TreeMap<>();
        KnownUnit own = KnownUnit.of(unit).orElseThrow();
        KnownUnit other = KnownUnit.of(stops.unit()).orElseThrow();
        double low = other.unit().fromSi(own.toSi(Double.parseDouble(values.get(0))));
        double high = other.unit().fromSi(own.toSi(Double.parseDouble(values.get(values.size() - 1))));
        for (long i = Math.max(1, Math.round(low / stops.step())); i * stops.step() <= high; i++) {
            double value = i * stops.step();
            all.put(other.toSi(value), Decimals.atMost(value, 1) + " " + stops.unit());
        }
        String unchanged = words(house.scenario());
        for (int i = 0; i < values.size(); i++) {
            if (words(scenarios().get(i)).equals(unchanged)) {
                all.put(own.toSi(Double.parseDouble(values.get(i))), text(i));
            }
        }
        return new LessonSlider(house, label, with, fields, List.copyOf(all.values()), "");
    }

    private static String words(Scenario scenario) {
        return scenario.with(List.of(new Change("title", "any"))).changedText();
    }

    /** The slider with as many values between its own as make the steps small, or itself if its values are no numbers. */
    LessonSlider refined() {
        int parts = 1;
        while ((values.size() - 1) * parts + 1 < MIN) {
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
