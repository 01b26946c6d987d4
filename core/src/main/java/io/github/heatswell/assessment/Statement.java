package io.github.heatswell.assessment;

import io.github.heatswell.units.QuantityFormat;
import io.github.heatswell.units.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.Collectors;

/**
 * Text with measures in it, which become words only once the units are chosen.
 *
 * @param parts the text before, between and behind the measures, one more than there are measures
 * @param measures the measures, in the order of the text
 */
public record Statement(List<String> parts, List<Measure> measures) {

    private static final String PLACE = "{}";

    /** Stands for a place in a text that is none; no name may have this character. */
    private static final String NO_PLACE = "\uE000";

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

    /** A text such as a name as part of a pattern, in which braces are no places. */
    static String literal(String text) {
        return text.replace(PLACE, NO_PLACE);
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
            parts.add(pattern.substring(from, at).replace(NO_PLACE, PLACE));
            from = at + PLACE.length();
        }
        parts.add(pattern.substring(from).replace(NO_PLACE, PLACE));
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
        StringBuilder text = new StringBuilder(format.units().spelled(parts.get(0)));
        boolean alike = hasPressuresAlike(format);
        for (int i = 0; i < measures.size(); i++) {
            Measure measure = measures.get(i);
            text.append(alike && isPressure(measure) ? format.pressureInTenths(measure.value()) : measure.text(format))
                    .append(format.units().spelled(parts.get(i + 1)));
        }
        return text.toString();
    }

    private static boolean isPressure(Measure measure) {
        return measure.kind() == Measure.Kind.GAUGE_PRESSURE;
    }

    /** Two pressures that differ would be written the same, so that one would seem to exceed itself. */
    private boolean hasPressuresAlike(QuantityFormat format) {
        List<Measure> pressures =
                measures.stream().filter(Statement::isPressure).toList();
        return pressures.stream()
                        .map(one -> one.text(format))
                        .collect(Collectors.toSet())
                        .size()
                < pressures.stream()
                        .map(one -> format.pressureInTenths(one.value()))
                        .collect(Collectors.toSet())
                        .size();
    }

    /**
     * A statement without measures.
     *
     * @param text the text, in which braces are no places
     * @return the statement
     */
    public static Statement plain(String text) {
        return new Statement(List.of(text), List.of());
    }

    /** {@return the text in SI units, in ASCII} */
    @Override
    public String toString() {
        return text(QuantityFormat.ascii(UnitSystem.SI));
    }

    /** {@return whether it says nothing} */
    public boolean isEmpty() {
        return measures.isEmpty() && parts.get(0).isEmpty();
    }

    /**
     * Several statements in a row.
     *
     * @param separator what stands between them
     * @param statements the statements, possibly none
     * @return the statement
     */
    public static Statement joined(String separator, List<Statement> statements) {
        Statement all = plain("");
        for (int i = 0; i < statements.size(); i++) {
            all = (i == 0 ? all : all.then(separator)).then(statements.get(i));
        }
        return all;
    }

    /**
     * The same with more text behind it.
     *
     * @param more the text, in which braces are no places
     * @return the longer statement
     */
    public Statement then(String more) {
        return then(plain(more));
    }

    /**
     * The same with a measure behind it.
     *
     * @param measure the measure
     * @return the longer statement
     */
    public Statement then(Measure measure) {
        return then(new Statement(List.of("", ""), List.of(measure)));
    }

    /**
     * The same with another statement behind it.
     *
     * @param more the other statement
     * @return the longer statement
     */
    public Statement then(Statement more) {
        List<String> longer = new ArrayList<>(parts);
        int last = longer.size() - 1;
        longer.set(last, longer.get(last) + more.parts.get(0));
        longer.addAll(more.parts.subList(1, more.parts.size()));
        List<Measure> all = new ArrayList<>(measures);
        all.addAll(more.measures);
        return new Statement(longer, all);
    }

    /**
     * The same as the beginning of a sentence.
     *
     * @return the statement with its first letter in upper case; one that begins with a measure stays as it is
     */
    public Statement capitalised() {
        String first = parts.get(0);
        if (first.isEmpty()) {
            return this;
        }
        List<String> same = new ArrayList<>(parts);
        same.set(0, first.substring(0, 1).toUpperCase(Locale.ROOT) + first.substring(1));
        return new Statement(same, measures);
    }

    /** The same with more text before it. */
    Statement after(String before) {
        List<String> longer = new ArrayList<>(parts);
        longer.set(0, before + parts.get(0));
        return new Statement(longer, measures);
    }
}
