package io.github.heatswell.scenarios.variation;

import io.github.heatswell.scenarios.file.Change;
import io.github.heatswell.scenarios.wording.Printable;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;

/**
 * A field and the values it is to take, one after another.
 *
 * @param field the field as messages name it, such as {@code vessel.volume}
 * @param values the values as a file would write them, at least two, all different
 */
public record Variation(String field, List<String> values) {

    private static final int MIN = 2;
    private static final String OPENING = "[{";
    private static final String CLOSING = "]}";

    /**
     * Checks the values and copies them.
     *
     * @param field the field as messages name it, such as {@code vessel.volume}
     * @param values the values as a file would write them, at least two, all different
     * @throws IllegalArgumentException if there are fewer than two values, or one is empty or given twice
     */
    public Variation {
        Objects.requireNonNull(field, "field");
        values = List.copyOf(Objects.requireNonNull(values, "values"));
        if (values.size() < MIN) {
            throw new IllegalArgumentException(
                    field + ": one value is not a variation; write two or more, separated by commas");
        }
        Set<String> seen = new HashSet<>();
        for (String value : values) {
            if (value.isEmpty()) {
                throw new IllegalArgumentException(field + ": a value is missing before or after a comma");
            }
            if (!seen.add(value)) {
                throw new IllegalArgumentException(field + ": " + Printable.quote(value) + " appears twice");
            }
        }
    }

    /**
     * Reads a variation.
     *
     * @param text such as {@code vessel.volume=8L,12L,18L}; commas within brackets and braces belong to a value
     * @return the variation
     * @throws IllegalArgumentException if the text is none; the message says how to write it
     */
    public static Variation of(String text) {
        int equals = Objects.requireNonNull(text, "text").indexOf('=');
        if (equals < 0 || text.substring(0, equals).isBlank()) {
            throw new IllegalArgumentException(Printable.quote(text)
                    + " is not a variation; write a field, = and values separated by commas, such as"
                    + " vessel.volume=8L,12L,18L");
        }
        String field = text.substring(0, equals).strip();
        return new Variation(field, split(field, text.substring(equals + 1)));
    }

    private static List<String> split(String field, String text) {
        List<String> values = new ArrayList<>();
        int depth = 0;
        int begin = 0;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (OPENING.indexOf(c) >= 0) {
                depth++;
            } else if (CLOSING.indexOf(c) >= 0) {
                depth--;
            } else if (c == ',' && depth == 0) {
                values.add(text.substring(begin, i).strip());
                begin = i + 1;
            }
            if (depth < 0) {
                throw unpaired(field);
            }
        }
        if (depth > 0) {
            throw unpaired(field);
        }
        values.add(text.substring(begin).strip());
        return values;
    }

    private static IllegalArgumentException unpaired(String field) {
        return new IllegalArgumentException(field + ": the brackets in the values do not match");
    }

    /** The changes that the values make, in their order. */
    List<Change> changes() {
        return values.stream().map(value -> new Change(field, value)).toList();
    }
}
