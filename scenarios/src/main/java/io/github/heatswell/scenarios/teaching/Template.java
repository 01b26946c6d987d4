package io.github.heatswell.scenarios.teaching;

import io.github.heatswell.assessment.Measure;
import io.github.heatswell.assessment.Statement;
import io.github.heatswell.units.Decimals;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A sentence with expressions in braces. <code>{peak(closed)}</code> shows a measure in the reader's units;
 * <code>{share: a / b}</code> says which kind of measure an expression is, where it does not follow; <code>{1: a / b}</code> is a
 * bare number with so many decimals.
 *
 * @param parts the words between the expressions
 * @param places the expressions, one fewer than the parts
 */
record Template(List<String> parts, List<Place> places) {

    private static final Pattern PLACE = Pattern.compile("\\{(?:([a-z0-9-]+):\\s)?([^{}]*)}");

    /**
     * An expression in the sentence.
     *
     * @param decimals how many decimals a bare number has; below 0 for a measure
     * @param value the expression
     */
    record Place(int decimals, Expression value) {}

    static Template of(String text, Expression.Names names) {
        List<String> parts = new ArrayList<>();
        List<Place> places = new ArrayList<>();
        Matcher place = PLACE.matcher(text);
        int from = 0;
        while (place.find()) {
            parts.add(text.substring(from, place.start()));
            places.add(place(place.group(1), Expression.of(place.group(2), names), place.group()));
            from = place.end();
        }
        parts.add(text.substring(from));
        if (parts.stream().anyMatch(part -> part.contains("{") || part.contains("}"))) {
            throw new IllegalArgumentException("a brace has no counterpart in '" + text + "'");
        }
        return new Template(List.copyOf(parts), List.copyOf(places));
    }

    private static Place place(String shown, Expression value, String text) {
        if (shown != null && shown.matches("\\d")) {
            return new Place(Integer.parseInt(shown), value);
        }
        Expression known = shown == null ? value : value.as(Fields.constant(Measure.Kind.class, shown));
        if (known.kind().isEmpty()) {
            throw new IllegalArgumentException("say what " + text
                    + " measures, as in {share: ...}, or with how many decimals it" + " is written, as in {1: ...}");
        }
        return new Place(-1, known);
    }

    /** The sentence with the numbers of a run. */
    Statement in(LessonRun run) {
        List<String> words = new ArrayList<>();
        List<Measure> measures = new ArrayList<>();
        StringBuilder part = new StringBuilder(parts.get(0));
        for (int i = 0; i < places.size(); i++) {
            Place place = places.get(i);
            if (place.decimals() < 0) {
                words.add(part.toString());
                part.setLength(0);
                measures.add(place.value().measure(run));
            } else {
                part.append(Decimals.fixed(place.value().in(run), place.decimals()));
            }
            part.append(parts.get(i + 1));
        }
        words.add(part.toString());
        return new Statement(words, measures);
    }
}
