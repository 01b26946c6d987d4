package io.github.heatswell.scenarios.file;

import io.github.heatswell.scenarios.document.Node;
import io.github.heatswell.scenarios.document.Node.Items;
import io.github.heatswell.scenarios.document.Node.Mapping;
import java.util.List;
import java.util.function.BiConsumer;

/**
 * A value with keys of its own, or a list of such values.
 *
 * @param section its keys
 * @param list whether there may be several
 * @param setter hands over what was described
 * @param <B> the builder that takes the value
 * @param <T> the thing described
 */
record Nested<B, T>(Section<?, T> section, boolean list, BiConsumer<B, List<T>> setter) {

    /** A value with keys of its own. */
    static <B, T> Nested<B, T> one(Section<?, T> section, BiConsumer<B, T> setter) {
        return new Nested<>(section, false, (target, values) -> setter.accept(target, values.get(0)));
    }

    /** A list of values with keys of their own. */
    static <B, T> Nested<B, T> list(Section<?, T> section, BiConsumer<B, List<T>> setter) {
        return new Nested<>(section, true, setter);
    }

    /** Whether a part of the file has the right shape. */
    boolean fits(Node node) {
        return list ? node instanceof Items : node instanceof Mapping;
    }

    /** Binds a part of the right shape; nothing is handed over if anything in it is wrong. */
    void bind(B target, Node node, Place place, Findings findings) {
        List<T> values = list
                ? Parts.list(section, place, (Items) node, findings)
                : List.of(Parts.one(section, place, node, findings));
        if (findings.isSoundWithin(place.path())) {
            setter.accept(target, values);
        } else {
            findings.unsound(place.path());
        }
    }

    /** Hands over an example in place of what is wrong or missing. */
    void bindExample(B target) {
        setter.accept(target, List.of(section.example()));
    }

    /** What is expected, for messages. */
    String kind() {
        return list ? "a list" : "keys and values";
    }
}
