package io.github.heatswell.scenarios.file;

import io.github.heatswell.scenarios.document.Node;
import io.github.heatswell.scenarios.document.Node.Items;
import io.github.heatswell.scenarios.document.Node.Mapping;
import io.github.heatswell.scenarios.file.Section.Place;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiConsumer;

/**
 * A value with keys of its own, or a list of such values.
 *
 * @param section its keys
 * @param most how many there may be in a list; 0 if the value is no list
 * @param part whether it is a section at the top of a file, which is handed over even where something in it is wrong, so that it is
 *     checked against the others
 * @param setter hands over what was described
 * @param <B> the builder that takes the value
 * @param <T> the thing described
 */
record Nested<B, T>(Section<?, T> section, int most, boolean part, BiConsumer<B, List<T>> setter) {

    /** A value with keys of its own. */
    static <B, T> Nested<B, T> one(Section<?, T> section, BiConsumer<B, T> setter) {
        return new Nested<>(section, 0, false, (target, values) -> setter.accept(target, values.get(0)));
    }

    /** A list of values with keys of their own, up to so many. */
    static <B, T> Nested<B, T> list(Section<?, T> section, int most, BiConsumer<B, List<T>> setter) {
        return new Nested<>(section, most, false, setter);
    }

    /** The same at the top of a file. */
    Nested<B, T> atTop() {
        return new Nested<>(section, most, true, setter);
    }

    /** Whether the value is a list. */
    boolean list() {
        return most > 0;
    }

    /** Whether a part of the file has the right shape; at the top of a file, what has another is explained as it is bound. */
    boolean fits(Node node) {
        return part || (list() ? node instanceof Items : node instanceof Mapping);
    }

    /** Binds what stands there; nothing is handed over if anything in it is wrong, unless it is at the top of a file. */
    Optional<List<BoundSection<?, T>>> bind(B target, Optional<Node> node, Place place, BindingState findings) {
        List<BoundSection<?, T>> parts = parts(node, place, findings);
        if (!part && !findings.isSoundWithin(place.path())) {
            findings.unsound(place.path());
            return Optional.empty();
        }
        setter.accept(target, parts.stream().<T>map(BoundSection::value).toList());
        return Optional.of(parts);
    }

    private List<BoundSection<?, T>> parts(Optional<Node> node, Place place, BindingState findings) {
        if (node.isEmpty()) {
            return List.of(new SectionBinder<>(section, place, Map.of(), findings).bind());
        }
        if (!list()) {
            return List.of(
                    SectionBinder.of(section, place, node.get(), findings).bind());
        }
        if (node.get() instanceof Items items) {
            return SectionBinder.list(section, most, place, items, findings);
        }
        findings.wrong(place.path(), place.at(), noList(place.path(), node.get()));
        return List.of();
    }

    private static String noList(String path, Node node) {
        return itemNamed(path, node)
                .orElseGet(() -> "needs a list, not " + node.kind()
                        + (node.at().inText()
                                ? "; start every item with '- ', or write [] for none"
                                : "; write its items in brackets, [{ ... }], or none"));
    }

    /** How a change names the item of a list that it means; empty if what stands there is from a file, or names no key. */
    static Optional<String> itemNamed(String path, Node node) {
        return !node.at().inText()
                        && node instanceof Mapping mapping
                        && !mapping.entries().isEmpty()
                ? Optional.of("is a list, and its items are counted from 0; write, for example, " + path + "[0]."
                        + mapping.entries().get(0).key().text())
                : Optional.empty();
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
