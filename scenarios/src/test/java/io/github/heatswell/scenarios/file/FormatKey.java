package io.github.heatswell.scenarios.file;

import io.github.heatswell.scenarios.quantity.Kind;
import io.github.heatswell.units.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A key of scenario files as the format itself defines it, for tests that go through all of them.
 *
 * @param path the key as the table of keys names it, such as {@code relief[].opens}
 * @param name the key alone, such as {@code opens}
 * @param single how a single value is written; empty if the value always has keys of its own
 * @param inner the keys of its value, if the value may have some
 * @param list whether these stand in every item of a list
 * @param needed whether a file or section without it is refused, whatever else it says
 */
public record FormatKey(
        String path, String name, Optional<Single> single, List<FormatKey> inner, boolean list, boolean needed) {

    /**
     * How a single value is written.
     *
     * @param words the form in words, such as {@code one of gas, electric}
     * @param example a sound value
     * @param kind the kind of quantity, if it is one
     * @param range what a number may be, if the table of keys says so
     * @param trial reads a value, and refuses it with its reason
     */
    public record Single(
            String words, String example, Optional<Kind<?>> kind, Optional<FormatRange> range, Trial trial) {

        /** Why a value is refused by itself; empty if it is not. */
        public Optional<String> refusal(String text) {
            try {
                trial.read(text);
                return Optional.empty();
            } catch (IllegalArgumentException e) {
                return Optional.of(e.getMessage());
            }
        }
    }

    /** Reads a value by itself. */
    @FunctionalInterface
    public interface Trial {
        void read(String text);
    }

    /** The keys at the top of a file, with all keys below them. */
    public static List<FormatKey> top() {
        List<FormatKey> keys = new ArrayList<>(fields("", Schema.HEADER));
        for (Section<?, ?> section : Schema.sections()) {
            if (section.name().isEmpty()) {
                keys.addAll(fields("", section));
            } else {
                boolean list = FormatReference.isList(section);
                String path = section.name() + (list ? "[]" : "");
                boolean needed = List.of("supply", "tank", "heater").contains(section.name());
                keys.add(new FormatKey(
                        path, section.name(), Optional.empty(), fields(path + ".", section), list, needed));
            }
        }
        return keys;
    }

    /** Every key of the table of keys. */
    public static List<FormatKey> all() {
        return top().stream().flatMap(FormatKey::withInner).toList();
    }

    private Stream<FormatKey> withInner() {
        return Stream.concat(Stream.of(this), inner.stream().flatMap(FormatKey::withInner));
    }

    private static <B, T> List<FormatKey> fields(String prefix, Section<B, T> section) {
        return section.fields().stream()
                .map(field -> key(prefix, field, section))
                .toList();
    }

    private static <B, T> FormatKey key(String prefix, Field<B> field, Section<B, T> section) {
        String path = prefix + field.key();
        Optional<Single> single = field.form().map(form -> single(field, form, section));
        boolean needed = field.required() && field.typical().isEmpty();
        if (field.nested().isEmpty()) {
            return new FormatKey(path, field.key(), single, List.of(), false, needed);
        }
        Nested<B, ?> nested = field.nested().get();
        List<FormatKey> inner = fields(path + (nested.list() ? "[]." : "."), nested.section());
        return new FormatKey(path, field.key(), single, inner, nested.list(), needed);
    }

    private static <B, T> Single single(Field<B> field, Form<B> form, Section<B, T> section) {
        Optional<FormatRange> range = FormatRange.of(FormatReference.range(field, section), form.kind());
        return new Single(
                form.words(),
                field.example(),
                form.kind(),
                range,
                text -> form.bind(section.start().get(), text));
    }

    /** The units a quantity may be written in. */
    public static List<? extends Unit> units(Kind<?> kind) {
        return kind.units();
    }
}
