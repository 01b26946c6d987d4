package io.github.heatswell.scenarios.file;

import io.github.heatswell.scenarios.quantity.Kind;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The tables of the README that describe the format, made from the format itself. */
final class FormatReference {

    /** A value outside any range; what a builder says about it names the range. */
    private static final String FAR_OUT = "1000000000000";

    private static final String RANGE = "is outside the allowed range, ";

    private FormatReference() {}

    /** Every key with its meaning, form, range and what happens without it. */
    static String keys() {
        StringBuilder table = new StringBuilder("""
                | Key | Meaning | Written as | Range | If left out |
                | --- | --- | --- | --- | --- |
                """);
        Schema.HEADER.fields().forEach(field -> table.append(row("", field, Schema.HEADER)));
        for (Section<?, ?> section : Schema.sections()) {
            rows(section, table);
        }
        return table.toString();
    }

    /** Every typical value with its reason. */
    static String typicalValues() {
        return Schema.typical().entrySet().stream()
                .map(t -> "| `" + t.getKey() + "` | " + t.getValue().value() + " | "
                        + t.getValue().basis() + " |\n")
                .collect(Collectors.joining("", "| Field | Typical value | Why |\n| --- | --- | --- |\n", ""));
    }

    /** Every kind of quantity with its units. */
    static String units() {
        return Kind.all().stream()
                .map(kind -> "| " + kind.noun() + " | " + kind.symbols() + " |\n")
                .collect(Collectors.joining("", "| Kind | Units |\n| --- | --- |\n", ""));
    }

    private static String wholeList(Section<?, ?> section) {
        boolean pipes = section.name().equals("piping");
        return "| `" + section.name() + "` | " + (pipes ? "runs of pipe" : "relief valves") + " | list of up to "
                + (pipes ? TankSections.MAX_PIPES : ReliefSections.MAX_VALVES) + " with the keys below |  | "
                + Schema.typical().get(section.name()).value() + " |\n";
    }

    /** Whether a section at the top of a file is a list. */
    static boolean isList(Section<?, ?> section) {
        return List.of("piping", "relief").contains(section.name());
    }

    private static <B, T> void rows(Section<B, T> section, StringBuilder table) {
        boolean list = isList(section);
        if (list) {
            table.append(wholeList(section));
        }
        String prefix = section.name() + (list ? "[]." : section.name().isEmpty() ? "" : ".");
        rows(prefix, section, table);
    }

    private static <B, T> void rows(String prefix, Section<B, T> section, StringBuilder table) {
        for (Field<B> field : section.fields()) {
            table.append(row(prefix, field, section));
            field.nested()
                    .filter(nested -> !nested.section().name().equals("vessel")) // the keys of vessel stand above
                    .ifPresent(nested ->
                            rows(prefix + field.key() + (nested.list() ? "[]." : "."), nested.section(), table));
        }
    }

    private static <B, T> String row(String prefix, Field<B> field, Section<B, T> section) {
        return "| `" + prefix + field.key() + "` | " + field.meaning() + " | " + form(field) + " | "
                + range(field, section) + " | " + leftOut(field) + " |\n";
    }

    private static String form(Field<?> field) {
        return Stream.concat(
                        field.form().map(form -> single(field, form.words())).stream(),
                        field.nested().map(FormatReference::inner).stream())
                .collect(Collectors.joining(", or "));
    }

    private static String single(Field<?> field, String words) {
        return words.startsWith("one of") || words.startsWith("text")
                ? words
                : words.replaceFirst(" in .*", "") + ", `" + field.example() + "`";
    }

    private static String inner(Nested<?, ?> nested) {
        String keys = nested.section().name().equals("vessel") ? "the keys of `vessel`" : "the keys below";
        return nested.list() ? "list of up to " + nested.most() + " with " + keys : "keys below";
    }

    /** The range of a number as the table says it; nothing if it has none. */
    static <B, T> String range(Field<B> field, Section<B, T> section) {
        String unit = field.example().replaceFirst("^[0-9.:]+ ?", "");
        if (field.form().isEmpty()) {
            return "";
        }
        try {
            field.form().get().bind(section.start().get(), (FAR_OUT + " " + unit).strip());
        } catch (IllegalArgumentException e) {
            int at = e.getMessage().indexOf(RANGE);
            return at < 0 ? "" : e.getMessage().substring(at + RANGE.length());
        }
        return "";
    }

    private static String leftOut(Field<?> field) {
        return field.typical().map(Typical::value).orElse(field.otherwise());
    }
}
