package io.github.heatswell.scenarios.file;

import io.github.heatswell.scenarios.quantity.Kind;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.Unit;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A key of a section, and how its value is written.
 *
 * @param <B> the builder that takes the value
 */
final class Field<B> {

    private final String key;
    private final String meaning;
    private final String example;
    private final Shape<B> shape;
    private final Presence presence;
    private final List<String> related;
    private final Typical typical;

    /**
     * A key that must be given, unless there is a typical value for it.
     *
     * @param key the key
     * @param meaning what it says, for the description of the format
     * @param example a sound value; it also stands in for a missing or wrong one while the rest of a file is checked
     * @param form how the value is written
     */
    Field(String key, String meaning, String example, Form<B> form) {
        this(key, meaning, example, new Shape<>(form, form, null), Presence.REQUIRED, List.of(), null);
    }

    private Field(
            String key,
            String meaning,
            String example,
            Shape<B> shape,
            Presence presence,
            List<String> related,
            Typical typical) {
        this.key = key;
        this.meaning = meaning;
        this.example = example;
        this.shape = shape;
        this.presence = presence;
        this.related = related;
        this.typical = typical;
    }

    /** A key whose value has keys of its own; the example is in braces or brackets. */
    static <B> Field<B> of(String key, String meaning, String example, Nested<B, ?> nested) {
        return new Field<>(key, meaning, example, new Shape<>(null, null, nested), Presence.REQUIRED, List.of(), null);
    }

    /** A section at the top of a file; unless it may be left out, its keys are asked for even where it is missing. */
    static <B> Field<B> part(Nested<B, ?> nested) {
        return of(nested.section().name(), "", "", nested);
    }

    /** A text that may be left out. */
    static <B> Field<B> text(String key, String meaning, String example, int longest, BiConsumer<B, String> setter) {
        return new Field<>(key, meaning, example, Form.text(longest, setter)).leftOutFreely();
    }

    /** A pressure, gauge unless it says otherwise. */
    static <B> Field<B> pressure(String key, String meaning, String example, BiConsumer<B, Pressure> setter) {
        return new Field<>(key, meaning, example, Form.pressure(setter));
    }

    /** A number with a unit. */
    static <B, U extends Unit> Field<B> amount(
            String key, String meaning, String example, Kind<U> kind, Form.AmountSetter<B, U> setter) {
        return new Field<>(key, meaning, example, Form.amount(kind, setter));
    }

    /** One of a few words. */
    static <B, V> Field<B> word(
            String key, String meaning, String example, Map<String, V> words, BiConsumer<B, V> setter) {
        return new Field<>(key, meaning, example, Form.word(words, setter));
    }

    /** A single value, also where it is assumed, or a value with keys of its own, or either. */
    private record Shape<B>(Form<B> form, Form<B> assumed, Nested<B, ?> nested) {}

    /** When a key is needed, and when it has no place. */
    private record Presence(Predicate<Map<String, String>> needed, String otherwise, List<Exclusion> exclusions) {
        static final Presence REQUIRED = new Presence(given -> true, "must be given", List.of());
    }

    /** When a key has no place beside others. */
    private record Exclusion(String otherKey, Predicate<Map<String, String>> where, String message) {}

    /** The same key, whose value may also have keys of its own. */
    Field<B> or(Nested<B, ?> nested) {
        return new Field<>(
                key, meaning, example, new Shape<>(shape.form(), shape.assumed(), nested), presence, related, typical);
    }

    /** The same key, whose typical value is handed over as one that is only assumed. */
    Field<B> whenAssumed(Form<B> form) {
        return new Field<>(key, meaning, example, new Shape<>(shape.form(), form, null), presence, related, typical);
    }

    /** The same key, which may be left out since this value is typical. */
    Field<B> typically(String value, String basis) {
        return typically(Typical.of(value, basis));
    }

    /** The same key, which may be left out where there is a typical value. */
    Field<B> typically(Typical other) {
        return new Field<>(key, meaning, example, shape, presence, related, other);
    }

    /** The same key, which may be left out without anything taking its place. */
    Field<B> leftOutFreely() {
        return with(new Presence(given -> false, "allowed", presence.exclusions()));
    }

    /** The same key, which may be left out without anything taking its place unless what else is given asks for it. */
    Field<B> needed(String when, Predicate<Map<String, String>> needed) {
        return with(new Presence(needed, "must be given " + when, presence.exclusions()));
    }

    /**
     * The same key, checked against other values later. What is said about it then means nothing if one of those values
     * was wrong itself.
     *
     * @param fields keys of this section, or of others with the section in front, or of the section around with {@code ../} in front
     */
    Field<B> checkedAgainst(String... fields) {
        return new Field<>(key, meaning, example, shape, presence, List.of(fields), typical);
    }

    /** The same key, which has no place where another key has a certain value. */
    Field<B> exceptWhere(String otherKey, String otherValue, String message) {
        return except(new Exclusion(otherKey, given -> otherValue.equalsIgnoreCase(given.get(otherKey)), message));
    }

    /** The same key, which has no place where another key is given, whatever its value. */
    Field<B> exceptBeside(String otherKey, String message) {
        return except(new Exclusion(otherKey, given -> given.containsKey(otherKey), message));
    }

    private Field<B> except(Exclusion another) {
        List<Exclusion> all = Stream.concat(presence.exclusions().stream(), Stream.of(another))
                .toList();
        return with(new Presence(presence.needed(), presence.otherwise(), all));
    }

    private Field<B> with(Presence other) {
        return new Field<>(key, meaning, example, shape, other, related, typical);
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

    /** How a single value is written; empty if the value always has keys of its own. */
    Optional<Form<B>> form() {
        return Optional.ofNullable(shape.form());
    }

    /** How a typical value is handed over; empty if the value is a list. */
    Optional<Form<B>> assumed() {
        return Optional.ofNullable(shape.assumed());
    }

    /** Whether it is a section at the top of a file. */
    boolean isPart() {
        return shape.nested() != null && shape.nested().part();
    }

    /** How a value with keys of its own is written; empty if the value is always a single one. */
    Optional<Nested<B, ?>> nested() {
        return Optional.ofNullable(shape.nested());
    }

    /** What takes its place where it is left out. */
    Optional<Typical> typical() {
        return Optional.ofNullable(typical);
    }

    /** What the value may be, for messages. */
    String shapes() {
        return Stream.concat(form().map(form -> "a single value").stream(), nested().map(Nested::kind).stream())
                .collect(Collectors.joining(" or "));
    }

    /** Hands the example to a builder. */
    void bindExample(B target) {
        if (shape.form() == null) {
            shape.nested().bindExample(target);
        } else {
            shape.form().bind(target, example);
        }
    }

    /** What is to be said of leaving the key out if there is no typical value. */
    String otherwise() {
        return presence.otherwise();
    }

    /** Whether the key may always be left out without anything taking its place. */
    boolean optional() {
        return presence.otherwise().equals("allowed");
    }

    /** Whether nothing can be described without this key. */
    boolean required() {
        return neededBeside(Map.of());
    }

    /** Whether the key may not be left out without anything taking its place, given the rest of the section. */
    boolean neededBeside(Map<String, String> given) {
        return presence.needed().test(given);
    }

    /** Whether this key has no place beside another, or beside some value of it. */
    boolean givesWayTo(String otherKey) {
        return presence.exclusions().stream()
                .anyMatch(exclusion -> exclusion.otherKey().equals(otherKey));
    }

    List<String> related() {
        return related;
    }

    /** Why this key has no place beside what the section says; empty if it has. */
    Optional<String> excludedBy(Map<String, String> present) {
        return presence.exclusions().stream()
                .filter(exclusion -> exclusion.where().test(present))
                .map(Exclusion::message)
                .findFirst();
    }
}
