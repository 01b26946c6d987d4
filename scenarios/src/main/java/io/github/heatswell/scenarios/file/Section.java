package io.github.heatswell.scenarios.file;

import io.github.heatswell.scenarios.fault.Location;
import java.util.ArrayList;
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

    /** The name of one of its keys with its own in front, as typical values are listed. */
    String of(String key) {
        return name.isEmpty() ? key : name + "." + key;
    }

    List<String> keys() {
        return fields.stream().map(Field::key).toList();
    }

    /** The sections of values that have keys of their own. */
    List<Section<?, ?>> inner() {
        List<Section<?, ?>> inner = new ArrayList<>();
        fields.forEach(field -> field.nested().ifPresent(nested -> inner.add(nested.section())));
        return inner;
    }

    /** A sound thing of this kind, with no more than it must have, to stand in for one that could not be built. */
    T example() {
        B builder = start.get();
        fields.stream().filter(Field::required).forEach(field -> field.bindExample(builder));
        return end.apply(builder);
    }

    /**
     * Where a section stands.
     *
     * @param path the section as messages name it, such as {@code relief[0]}; empty for the top of the file
     * @param at where to point if something is missing in it
     */
    record Place(String path, Location at) {

        /** The path of one of its keys. */
        String of(String key) {
            return path.isEmpty() ? key : path + "." + key;
        }
    }
}
