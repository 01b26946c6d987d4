package io.github.heatswell.scenarios.file;

import io.github.heatswell.scenarios.document.Faults;
import io.github.heatswell.scenarios.document.Node;
import io.github.heatswell.scenarios.document.Node.Entry;
import io.github.heatswell.scenarios.document.Node.Mapping;
import io.github.heatswell.scenarios.document.Node.Scalar;
import io.github.heatswell.scenarios.fault.Location;
import io.github.heatswell.system.InvalidDescriptionException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * State of a file while it is being bound: where each field is, which fields are invalid, and what was assumed.
 */
final class BindingState {

    private final Faults faults;
    private final Mapping file;
    private final Map<String, Location> places = new HashMap<>();
    private final Set<String> unsound = new HashSet<>();
    private final List<Assumption> assumptions = new ArrayList<>();
    private final List<UncertainField> uncertain = new ArrayList<>();

    BindingState(Faults faults, Mapping file) {
        this.faults = faults;
        this.file = file;
    }

    /** What the file writes under a key of a section at its top, such as {@code heater.energy}; empty if no single value. */
    Optional<String> written(String field) {
        Optional<Node> node = Optional.of(file);
        for (String key : field.split("\\.")) {
            node = node.filter(Mapping.class::isInstance)
                    .flatMap(part -> ((Mapping) part)
                            .entries().stream()
                                    .filter(entry -> entry.key().text().equals(key))
                                    .map(Entry::value)
                                    .findFirst());
        }
        return node.filter(Scalar.class::isInstance).map(value -> ((Scalar) value).text());
    }

    /** Remembers where a field or section stands. */
    void stands(String path, Location at) {
        places.put(path, at);
    }

    /** Where a field stands, or else the section around it, or else the file. */
    Location place(String path) {
        for (String part = path; !part.isEmpty(); part = parent(part)) {
            Location at = places.get(part);
            if (at != null) {
                return at;
            }
        }
        return places.getOrDefault("", Location.first());
    }

    /** Notes one more fault of which nothing will be said. Whether there are so many, {@link #crowded} says. */
    void oneMore() {
        faults.add(Location.first(), "");
    }

    /** Whether there are so many faults that further ones are counted alone. */
    boolean crowded() {
        return faults.full();
    }

    /** Notes a fault of a field; what is found out about the field later on means nothing. */
    void wrong(String path, Location at, String message) {
        faults.add(at, path + ": " + message);
        unsound.add(path);
    }

    /** Notes that a field has no value worth checking, without saying it again. */
    void unsound(String path) {
        unsound.add(path);
    }

    /** Whether a field, or the whole section around it, is no good. */
    boolean isUnsound(String path) {
        for (String part = path; !part.isEmpty(); part = parent(part)) {
            if (unsound.contains(part)) {
                return true;
            }
        }
        return false;
    }

    /** Whether nothing was found wrong with a field or any part of it. */
    boolean isSoundWithin(String path) {
        return unsound.stream()
                .noneMatch(other ->
                        other.equals(path) || other.startsWith(path) && ".[".indexOf(other.charAt(path.length())) >= 0);
    }

    void assume(String path, String value, Typical typical) {
        assumptions.add(new Assumption(path, value, typical.basis(), typical.range()));
    }

    /** Notes a value that is known only so well, and returns its number among them, counted from 0. */
    int uncertain(UncertainField field) {
        uncertain.add(field);
        return uncertain.size() - 1;
    }

    /** Every value that is known only so well, in the order of the format. */
    List<UncertainField> uncertain() {
        return List.copyOf(uncertain);
    }

    /** Everything assumed, in the order of the format. */
    List<Assumption> assumptions() {
        return List.copyOf(assumptions);
    }

    /** Notes what a builder found, unless it follows from a fault noted before. */
    void note(InvalidDescriptionException.Problem problem) {
        boolean follows =
                Schema.related(problem.field()).stream().anyMatch(other -> isUnsound(other) || !isSoundWithin(other));
        if (!follows && !isUnsound(problem.field())) {
            wrong(problem.field(), place(problem.field()), problem.message() + assumed(problem.field()));
        }
    }

    private String assumed(String path) {
        return assumptions.stream()
                .filter(assumption -> assumption.field().equals(path))
                .map(assumption -> " (assumed, because the file does not give it)")
                .findFirst()
                .orElse("");
    }

    private static String parent(String path) {
        int dot = path.lastIndexOf('.');
        int bracket = path.lastIndexOf('[');
        return path.substring(0, Math.max(0, Math.max(dot, bracket)));
    }
}
