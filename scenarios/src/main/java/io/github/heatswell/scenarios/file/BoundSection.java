package io.github.heatswell.scenarios.file;

import io.github.heatswell.scenarios.fault.Fault;
import io.github.heatswell.scenarios.fault.Location;
import io.github.heatswell.scenarios.file.Section.Place;
import io.github.heatswell.system.InvalidDescriptionException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;

/**
 * A section of a file as it was bound: what it describes, and how it is described again with other values for what is
 * uncertain, without the text. For any number of threads.
 *
 * @param section the section
 * @param place where it stands
 * @param value what it describes, with the best estimates
 * @param given the values it was described with, by key, as a file writes them
 * @param steps what its builder was handed, in order
 * @param <B> the builder
 * @param <T> the thing described
 */
record BoundSection<B, T>(Section<B, T> section, Place place, T value, Map<String, String> given, List<Step<B>> steps) {

    BoundSection {
        given = Map.copyOf(given);
        steps = List.copyOf(steps);
    }

    /** Hands something to a builder. */
    @FunctionalInterface
    interface Setting<B> {

        /**
         * Sets one key.
         *
         * @param target the builder
         * @param given the values of the keys set before, as a file writes them; takes up that of this key if it varies
         * @param values one for every uncertain field of the file, in its unit
         */
        void of(B target, Map<String, String> given, double... values);
    }

    /**
     * Something handed to a builder.
     *
     * @param key the key it stands under
     * @param varies whether it depends on what is uncertain
     * @param setting hands it over
     */
    record Step<B>(String key, boolean varies, Setting<B> setting) {

        /** A value that is always the same. */
        static <B> Step<B> fixed(String key, Consumer<B> setter) {
            return new Step<>(key, false, (target, given, values) -> setter.accept(target));
        }

        /** An uncertain value; the index is its number among those of the file. */
        static <B> Step<B> uncertain(String key, Form<B> form, UncertainField field, int index) {
            return new Step<>(key, true, (target, given, values) -> {
                given.put(key, field.at(values[index]));
                form.bind(target, given.get(key));
            });
        }

        /** A typical value that follows from an uncertain one. */
        static <B> Step<B> derived(String key, Form<B> form, Typical typical) {
            return new Step<>(key, true, (target, given, values) -> {
                given.put(key, typical.text(given).orElseThrow());
                form.bind(target, given.get(key));
            });
        }

        /** A value with keys of its own, or a list of such. */
        static <B, T> Step<B> inner(String key, Nested<B, T> nested, List<BoundSection<?, T>> parts) {
            boolean varies = parts.stream().anyMatch(BoundSection::varies);
            return new Step<>(key, varies, (target, given, values) -> {
                List<T> now = new ArrayList<>();
                parts.forEach(part -> now.add(part.with(values)));
                nested.setter().accept(target, now);
            });
        }
    }

    /** Whether anything in it is uncertain. */
    boolean varies() {
        return steps.stream().anyMatch(Step::varies);
    }

    /**
     * What it describes with certain values.
     *
     * @param values one for every uncertain field of the file, in its unit
     * @throws InvalidScenarioException if these values do not go together; its faults name the fields
     */
    T with(double... values) {
        if (!varies()) {
            return value;
        }
        B target = section.start().get();
        Map<String, String> now = new HashMap<>(given);
        steps.forEach(step -> take(step, target, now, values));
        try {
            return section.end().apply(target);
        } catch (InvalidDescriptionException e) {
            throw refused(e.problems());
        }
    }

    private void take(Step<B> step, B target, Map<String, String> now, double... values) {
        try {
            step.setting().of(target, now, values);
        } catch (InvalidScenarioException e) {
            throw e;
        } catch (IllegalArgumentException e) {
            throw refused(
                    List.of(new InvalidDescriptionException.Problem(step.key(), SectionBinder.bare(e.getMessage()))));
        }
    }

    private InvalidScenarioException refused(List<InvalidDescriptionException.Problem> problems) {
        return new InvalidScenarioException(
                "some values",
                problems.stream()
                        .map(problem ->
                                new Fault(Location.outside(1), place.of(problem.field() + ": " + problem.message())))
                        .toList());
    }
}
