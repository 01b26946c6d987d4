package io.github.heatswell.scenarios.file;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A key of a section, and how its value is written.
 *
 * @param <B> the builder that takes the value
 */
final class Field<B> {

    private final String key;
    private final String meaning;
    private final String example;
    private final Form<B> form;
    private final boolean optional;
    private final List<String> related;
    private final Exclusion exclusion;

    /**
     * A key that must be given, unless there is a typical value for it.
     *
     * @param key the key
     * @param meaning what it says, for the description of the format
     * @param example a sound value; it also stands in for a missing or wrong one while the rest of a file is checked
     * @param form how the value is written
     */
    Field(String key, String meaning, String example, Form<B> form) {
        this.key = key;
        this.meaning = meaning;
        this.example = example;
        this.form = form;
        this.optional = false;
        this.related = List.of();
        this.exclusion = null;
    }

    private Field(Field<B> from, boolean optional, List<String> related, Exclusion exclusion) {
        this.key = from.key;
        this.meaning = from.meaning;
        this.example = from.example;
        this.form = from.form;
        this.optional = optional;
        this.related = related;
        this.exclusion = exclusion;
    }

    /** When a key has no place: where another key of the section has this value. */
    private record Exclusion(String otherKey, String otherValue, String message) {}

    /** The same key, which may be left out without anything taking its place. */
    Field<B> leftOutFreely() {
        return new Field<>(this, true, related, exclusion);
    }

    /**
     * The same key, checked against other values later. What is said about it then means nothing if one of those values
     * was wrong itself.
     *
     * @param fields keys of this section, or of others with the section in front
     */
    Field<B> checkedAgainst(String... fields) {
        return new Field<>(this, optional, List.of(fields), exclusion);
    }

    /** The same key, which has no place where another key has a certain value. */
    Field<B> exceptWhere(String otherKey, String otherValue, String message) {
        return new Field<>(this, optional, related, new Exclusion(otherKey, otherValue, message));
    }

    String key() {
        return key;
    }

    String meaning() {
        return meaning;
    }

    String example() {
        return example;
    }

    Form<B> form() {
        return form;
    }

    boolean optional() {
        return optional;
    }

    List<String> related() {
        return related;
    }

    /** Why this key has no place among the given values; empty if it has. */
    Optional<String> excludedBy(Map<String, String> given) {
        return Optional.ofNullable(exclusion)
                .filter(e -> e.otherValue().equalsIgnoreCase(given.get(e.otherKey())))
                .map(Exclusion::message);
    }
}
