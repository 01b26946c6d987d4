package io.github.heatswell.scenarios.file;

import io.github.heatswell.scenarios.fault.Location;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;

/**
 * A part of a scenario file that describes one thing. Its fields are made when they are first asked for: most files have few
 * of the parts there may be.
 *
 * @param <B> the builder
 * @param <T> the thing described
 */
final class Section<B, T> {

    private final String name;
    private final Supplier<B> start;
    private final Function<B, T> end;
    private Supplier<List<Field<B>>> fields;

    /**
     * Says what stands in the section.
     *
     * @param name the key the section stands under; for a list, of every item
     * @param start makes an empty builder
     * @param end ends a builder
     * @param fields makes the fields, in the order in which they are bound
     */
    Section(String name, Supplier<B> start, Function<B, T> end, Supplier<List<Field<B>>> fields) {
        this.name = name;
        this.start = start;
        this.end = end;
        this.fields = fields;
    }

    String name() {
        return name;
    }

    Supplier<B> start() {
        return start;
    }

    Function<B, T> end() {
        return end;
    }

    synchronized List<Field<B>> fields() {
        List<Field<B>> made = List.copyOf(fields.get());
        fields = () -> made;
        return made;
    }

    /** The field of a key; empty if there is none. */
    Optional<Field<?>> field(String key) {
        return fields().stream()
                .<Field<?>>map(field -> field)
                .filter(field -> field.key().equals(key))
                .findFirst();
    }

    /** The name of one of its keys with its own in front, as typical values are listed. */
    String of(String key) {
        return name.isEmpty() ? key : name + "." + key;
    }

    List<String> keys() {
        return fields().stream().map(Field::key).toList();
    }

    /** The sections of values that have keys of their own. */
    List<Section<?, ?>> inner() {
        List<Section<?, ?>> inner = new ArrayList<>();
        fields().forEach(field -> field.nested().ifPresent(nested -> inner.add(nested.section())));
        return inner;
    }

    /** A sound thing of this kind, with no more than it must have, to stand in for one that could not be built. */
    T example() {
        B builder = start.get();
        fields().stream().filter(Field::required).forEach(field -> field.bindExample(builder));
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
