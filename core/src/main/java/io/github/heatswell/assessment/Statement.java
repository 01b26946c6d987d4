package io.github.heatswell.assessment;

import io.github.heatswell.units.QuantityFormat;
import io.github.heatswell.units.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * Text with measures in it, which become words only once somebody says in which units.
 *
 * @param parts the text before, between and behind the measures, one more than there are measures
 * @param measures the measures, in the order of the text
 */
public record Statement(List<String> parts, List<Measure> measures) {

    private static final String PLACE = "{}";

    /**
     * Checks that parts and measures fit together.
     *
     * @param parts the text before, between and behind the measures, one more than there are measures
     * @param measures the measures, in the order of the text
     * @throws IllegalArgumentException if there is not one part more than there are measures
     */
    public Statement {
        parts = List.copyOf(Objects.requireNonNull(parts, "parts"));
        measures = List.copyOf(Objects.requireNonNull(measures, "measures"));
        if (parts.size() != measures.size() + 1) {
            throw new IllegalArgumentException(
                    parts.size() + " parts of text have no room for " + measures.size() + " measures");
        }
    }

    /**
     * A statement from a pattern.
     *
     * @param pattern the text, with <code>{}</code> where a measure stands
     * @param measures as many measures, in that order
     * @return the statement
     * @throws IllegalArgumentException if there are more places or more measures
     */
    public static Statement of(String pattern, Measure... measures) {
        Objects.requireNonNull(pattern, "pattern");
        List<String> parts = new ArrayList<>();
        int from = 0;
        for (int at = pattern.indexOf(PLACE); at >= 0; at = pattern.indexOf(PLACE, from)) {
            parts.add(pattern.substring(from, at));
            from = at + PLACE.length();
        }
        parts.add(pattern.substring(from));
        return new Statement(parts, List.of(Objects.requireNonNull(measures, "measures")));
    }

    /**
     * The text in a system of units.
     *
     * @param units the system of units
     * @return the text with its measures written out
     */
    public String text(UnitSystem units) {
        return text(QuantityFormat.unicode(Objects.requireNonNull(units, "units")));
    }

    /**
     * The text with its measures written out.
     *
     * @param format the units and their characters
     * @return the text
     */
    public String text(QuantityFormat format) {
        Objects.requireNonNull(format, "format");
        StringBuilder text = new StringBuilder(parts.get(0));
        for (int i = 0; i < measures.size(); i++) {
            text.append(measures.get(i).text(format)).append(parts.get(i + 1));
        }
        return text.toString();
    }

    /** The same with more text behind it. */
    Statement then(String more) {
        List<String> longer = new ArrayList<>(parts);
        longer.set(parts.size() - 1, parts.get(parts.size() - 1) + more);
        return new Statement(longer, measures);
    }

    /** The same with more text before it. */
    Statement after(String before) {
        List<String> longer = new ArrayList<>(parts);
        longer.set(0, before + parts.get(0));
        return new Statement(longer, measures);
    }
}
