package io.github.heatswell.scenarios.teaching;

import io.github.heatswell.assessment.Measure;
import io.github.heatswell.assessment.Statement;
import io.github.heatswell.citation.Citation;
import io.github.heatswell.result.Channel;
import io.github.heatswell.scenarios.file.Change;
import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.units.Decimals;
import io.github.heatswell.units.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * One idea, shown by runs.
 *
 * @param id a short name in small letters, digits and hyphens
 * @param title its heading
 * @param aim what the class can do afterwards, for the teacher; empty if that is not said
 * @param question what the reader wonders
 * @param cautions what not to touch, and who decides: shown before anything else
 * @param cautionsAfter cautions that would tell the outcome, and so are shown with it
 * @param houses the houses that are compared, one to four
 * @param others further houses that expressions name, among them {@link #TRIED}
 * @param prediction what to predict before looking
 * @param notice what to notice in the runs
 * @param why why it is so, paragraph by paragraph
 * @param formula the formula that matters
 * @param tryIt what to try oneself
 * @param checkQuestion a question to see whether it was understood
 * @param checkAnswer its answer
 * @param sources where the facts come from, and how far that was checked
 * @param expected what else the runs must show
 * @param slider a field to move
 * @param readings what to read off for the worksheet
 */
record Lesson(
        String id,
        String title,
        String aim,
        String question,
        List<String> cautions,
        List<String> cautionsAfter,
        List<House> houses,
        Map<String, Scenario> others,
        Prediction prediction,
        List<Claim> notice,
        List<Claim> why,
        Formula formula,
        TryIt tryIt,
        String checkQuestion,
        Claim checkAnswer,
        List<Citation> sources,
        List<Claim> expected,
        Optional<LessonSlider> slider,
        List<Reading> readings) {

    /** How expressions call the house that was changed as the reader is told to. */
    static final String TRIED = "tried";

    /**
     * A bundled house, changed as the lesson needs it.
     *
     * @param name how expressions call it
     * @param label how readers are told of it
     * @param scenario the house
     * @param channel what its picture is about
     */
    record House(String name, String label, Scenario scenario, Channel channel) {

        /** The command that runs it in a system of units, with further changes in place of its own to the same fields. */
        String command(List<Change> further, UnitSystem units) {
            List<String> fields = further.stream().map(Change::field).toList();
            return Stream.concat(
                            scenario.changes().stream().filter(change -> !fields.contains(change.field())),
                            further.stream())
                    .map(change -> " --set \"" + FileUnits.in(units, change.toString()) + '"')
                    .collect(Collectors.joining(
                            "", "heatswell run " + scenario.name(), units == UnitSystem.SI ? "" : " -u us"));
        }
    }

    /**
     * A sentence about the runs.
     *
     * @param words the sentence, with places for numbers
     * @param check what must hold for it to be true, where it compares or counts
     */
    record Claim(Template words, Optional<Expression> check) {

        /** Whether the runs bear it out, as far as that is checked. */
        boolean holds(LessonRun run) {
            return check.isEmpty() || check.get().holds(run);
        }
    }

    /** What to predict: a question, and three or four answers to choose from. */
    record Prediction(String question, List<Option> options) {}

    /**
     * An answer to choose.
     *
     * @param text the answer
     * @param when when the runs show it; without that, when they show none of the others
     * @param reply what to tell whoever chose it, unless it is right
     */
    record Option(String text, Optional<Expression> when, Optional<Claim> reply) {}

    /**
     * A formula in plain text.
     *
     * @param text the formula
     * @param symbols what its letters mean, with their units, in order
     * @param source where it comes from
     */
    record Formula(String text, Map<String, Template> symbols, Citation source) {}

    /**
     * A change to a house that the reader makes himself.
     *
     * @param house the house before it is changed
     * @param changes what to change
     * @param shows what the changed house shows; expressions call it {@link #TRIED}
     */
    record TryIt(House house, List<Change> changes, Claim shows) {

        /** The command to type. */
        String command(UnitSystem units) {
            return house.command(changes, units);
        }
    }

    /**
     * A value to read off a picture.
     *
     * @param label what to read off
     * @param house the house in whose picture it is
     * @param answer the right value
     */
    record Reading(String label, House house, Expression answer) {}

    /** The house to try as a file in a system of units, before anything is changed, named after the lesson and the house. */
    String file(UnitSystem units) {
        Scenario named = tryIt.house()
                .scenario()
                .with(List.of(
                        Change.of("title="
                                + shown(units.spelled(
                                        title + " (" + tryIt.house().label() + ")"))),
                        Change.of("question=" + shown(units.spelled(question))),
                        Change.of("expect=none")));
        return "# An invented house, as the page of the lesson shows it; its numbers are ordinary ones.\n"
                + FileUnits.in(units, named.changedText());
    }

    /** A scenario file holds no characters that do not show. */
    private static String shown(String text) {
        return text.replaceAll("\\p{C}", " ").strip();
    }

    /** Everything the lesson says of its runs, in the order of the page. */
    List<Claim> claims() {
        return Stream.of(
                        prediction.options().stream().flatMap(option -> option.reply().stream()),
                        notice.stream(),
                        why.stream(),
                        Stream.of(checkAnswer))
                .flatMap(claims -> claims)
                .toList();
    }

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
                throw new IllegalArgumentException(
                        "say what " + text + " measures, as in {share: ...}, or with how many decimals it"
                                + " is written, as in {1: ...}");
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
}
