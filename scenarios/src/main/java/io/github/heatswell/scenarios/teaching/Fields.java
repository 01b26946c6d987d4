package io.github.heatswell.scenarios.teaching;

import io.github.heatswell.scenarios.document.Faults;
import io.github.heatswell.scenarios.document.Node;
import io.github.heatswell.scenarios.document.Node.Entry;
import io.github.heatswell.scenarios.document.Node.Items;
import io.github.heatswell.scenarios.document.Node.Mapping;
import io.github.heatswell.scenarios.document.Node.Scalar;
import io.github.heatswell.scenarios.document.YamlTree;
import io.github.heatswell.scenarios.fault.Fault;
import io.github.heatswell.scenarios.fault.Location;
import io.github.heatswell.scenarios.wording.Nearest;
import io.github.heatswell.scenarios.wording.Printable;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/** Keys and values of a part of a lesson. Every key must be asked for before {@link #done()}. */
final class Fields {

    private final Mapping mapping;
    private final Set<String> asked = new LinkedHashSet<>();

    private Fields(Mapping mapping) {
        this.mapping = mapping;
    }

    /** What is wrong with a lesson, and where. */
    static final class Wrong extends IllegalArgumentException {
        private static final long serialVersionUID = 1L;

        Wrong(Location at, String message) {
            super(at + ": " + message);
        }
    }

    static Fields of(String text) {
        Faults faults = new Faults();
        Optional<Mapping> tree = YamlTree.of(text, "it should hold a lesson", "title: A lesson", faults);
        for (Fault fault : faults.inOrder()) {
            throw new Wrong(fault.at(), fault.message());
        }
        return new Fields(tree.orElseThrow());
    }

    static Fields of(Node node, String what) {
        if (node instanceof Mapping keys) {
            return new Fields(keys);
        }
        throw new Wrong(node.at(), what + ": must be keys and values, not " + node.kind());
    }

    Location at() {
        return mapping.at();
    }

    Optional<Node> value(String key) {
        asked.add(key);
        return mapping.entries().stream()
                .filter(entry -> entry.key().text().equals(key))
                .map(Entry::value)
                .findFirst();
    }

    Node need(String key) {
        return value(key).orElseThrow(() -> new Wrong(mapping.at(), key + " is missing"));
    }

    String text(String key) {
        return text(need(key), key);
    }

    static String text(Node node, String what) {
        if (node instanceof Scalar scalar && !scalar.text().isEmpty()) {
            return scalar.text();
        }
        throw new Wrong(node.at(), what + ": write some words, not " + node.kind());
    }

    /** What is read from a text; what is wrong with the text is reported with its place. */
    <T> T read(String key, Function<String, T> reader) {
        return read(need(key), key, reader);
    }

    static <T> T read(Node node, String what, Function<String, T> reader) {
        String text = text(node, what);
        try {
            return reader.apply(text);
        } catch (IllegalArgumentException e) {
            throw new Wrong(node.at(), what + ": " + e.getMessage());
        }
    }

    /** A constant by its name in small letters, with hyphens. */
    static <E extends Enum<E>> E constant(Class<E> type, String name) {
        List<String> names = Arrays.stream(type.getEnumConstants())
                .map(one -> one.name().toLowerCase(Locale.ROOT).replace('_', '-'))
                .toList();
        if (!names.contains(name)) {
            throw new IllegalArgumentException(Printable.quote(name) + " is not known here; there are "
                    + String.join(", ", names) + Nearest.hint(name, names));
        }
        return type.getEnumConstants()[names.indexOf(name)];
    }

    /** The items of a list of so many; none where the key is missing and none need be there. */
    <T> List<T> list(String key, int least, int most, Function<Node, T> reader) {
        Node node = least > 0 ? need(key) : value(key).orElse(new Items(List.of(), mapping.at()));
        if (!(node instanceof Items items)) {
            throw new Wrong(node.at(), key + ": must be a list, not " + node.kind());
        }
        int count = items.items().size();
        if (count < least || count > most) {
            throw new Wrong(
                    node.at(),
                    key + ": must be " + (most == Integer.MAX_VALUE ? "at least " + least : least + " to " + most)
                            + ", not " + count);
        }
        return items.items().stream().map(reader).toList();
    }

    List<String> texts(String key, int least) {
        return list(key, least, Integer.MAX_VALUE, node -> text(node, key));
    }

    /** Values by their keys, in order; none where the key itself is missing. */
    Map<String, Node> named(String key) {
        Map<String, Node> named = new LinkedHashMap<>();
        value(key)
                .ifPresent(node -> of(node, key)
                        .mapping
                        .entries()
                        .forEach(entry -> named.put(entry.key().text(), entry.value())));
        return named;
    }

    Fields inside(String key) {
        return of(need(key), key);
    }

    void done() {
        for (Entry entry : mapping.entries()) {
            String key = entry.key().text();
            if (!asked.contains(key)) {
                throw new Wrong(
                        entry.key().at(),
                        Printable.quote(key) + " is no key here; the keys are " + String.join(", ", asked)
                                + Nearest.hint(key, asked));
            }
        }
    }
}
