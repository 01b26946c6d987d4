package io.github.heatswell.scenarios.file;

import io.github.heatswell.scenarios.document.Node;
import io.github.heatswell.scenarios.document.Node.Items;
import io.github.heatswell.scenarios.document.Node.Mapping;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;

/**
 * A value with keys of its own, or a list of such values.
 *
 * @param section its keys
 * @param most how many there may be in a list; 0 if the value is no list
 * @param setter hands over what was described
 * @param <B> the builder that takes the value
 * @param <T> the thing described
 */
record Nested<B, T>(Section<?, T> section, int most, BiConsumer<B, List<T>> setter) {

    /** A value with keys of its own. */
    static <B, T> Nested<B, T> one(Section<?, T> section, BiConsumer<B, T> setter) {
        return new Nested<>(section, 0, (target, values) -> setter.accept(target, values.get(0)));
    }

    /** A list of values with keys of their own, up to so many. */
    static <B, T> Nested<B, T> list(Section<?, T> section, int most, BiConsumer<B, List<T>> setter) {
        return new Nested<>(section, most, setter);
    }

    /** Whether the value is a list. */
    boolean list() {
        return most > 0;
    }

    /** Whether a part of the file has the right shape. */
    boolean fits(Node node) {
        return list() ? node instanceof Items : node instanceof Mapping;
    }

    /** Binds a part of the right shape; nothing is handed over if anything in it is wrong. */
    Optional<List<BoundSection<?, T>>> bind(B target, Node node, Place place, Findings findings) {
        List<BoundSection<?, T>> parts = list()
                ? Parts.list(section, most, place, (Items) node, findings)
                : List.of(Parts.one(section, place, node, findings));
        if (!findings.isSoundWithin(place.path())) {
            findings.unsound(place.path());
            return Optional.empty();
        }
        List<T> values = new ArrayList<>();
        parts.forEach(part -> values.add(part.value()));
        setter.accept(target, values);
        return Optional.of(parts);
    }

    /** Hands over an example in place of what is wrong or missing. */
    void bindExample(B target) {
        setter.accept(target, List.of(section.example()));
    }

    /** What is expected, for messages. */
    String kind() {
        return list() ? "a list" : "keys and values";
    }
}
