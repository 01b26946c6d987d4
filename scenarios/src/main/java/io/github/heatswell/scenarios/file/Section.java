package io.github.heatswell.scenarios.file;

import java.util.List;
import java.util.function.Function;
import java.util.function.Supplier;

/**
 * A part of a scenario file that describes one thing.
 *
 * @param name the key the section stands under; for a list, of every item
 * @param start makes an empty builder
 * @param end ends a builder
 * @param fields the keys, in the order in which they are bound
 * @param <B> the builder
 * @param <T> the thing described
 */
record Section<B, T>(String name, Supplier<B> start, Function<B, T> end, List<Field<B>> fields) {

    Section {
        fields = List.copyOf(fields);
    }

    List<String> keys() {
        return fields.stream().map(Field::key).toList();
    }

    /** A sound thing of this kind, to stand in for one that could not be built. */
    T example() {
        B builder = start.get();
        fields.forEach(field -> field.form().bind(builder, field.example()));
        return end.apply(builder);
    }
}
