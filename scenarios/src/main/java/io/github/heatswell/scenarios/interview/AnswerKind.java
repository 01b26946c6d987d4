package io.github.heatswell.scenarios.interview;

import io.github.heatswell.scenarios.interview.Question.Choice;
import io.github.heatswell.scenarios.interview.ScenarioText.Reach;
import io.github.heatswell.scenarios.quantity.Kind;
import io.github.heatswell.scenarios.quantity.QuantityReader;
import io.github.heatswell.scenarios.quantity.QuantityReader.Amount;
import io.github.heatswell.scenarios.quantity.Uncertain;
import io.github.heatswell.scenarios.wording.Nearest;
import io.github.heatswell.scenarios.wording.Printable;
import io.github.heatswell.scenarios.wording.Spoken;
import io.github.heatswell.units.Decimals;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.Unit;
import io.github.heatswell.units.UnitSystem;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** What an answer must look like. */
interface AnswerKind {

    /**
     * Puts an answer into the form in which a file gives it.
     *
     * @param line what was typed, not blank
     * @return the value as a file writes it, without any uncertainty
     * @throws IllegalArgumentException if this is no such answer; the message says what to write instead
     */
    String understand(String line);

    /** The same, where what people say means something else in other units; keeps what {@link #understand(String)} gives. */
    default String understand(String line, UnitSystem units) {
        return understand(line);
    }

    /** A value as a file writes it, or the one value out of its spread. */
    default String reaching(String value, Reach reach) {
        return value;
    }

    /** What may be typed, to stand behind "Type": {@code a pressure with its unit, such as 4.2 bar}. */
    String offer(UnitSystem units);

    /** A line of plain text. */
    static final class Text implements AnswerKind {

        private final int longest;
        private final String offer;

        Text(int longest, String offer) {
            this.longest = longest;
            this.offer = offer;
        }

        @Override
        public String understand(String line) {
            String text = line.strip().replaceAll("\\s+", " ");
            if (!Printable.shows(text)) {
                throw new IllegalArgumentException("this contains invisible characters; write plain text");
            }
            if (text.length() > longest) {
                throw new IllegalArgumentException(
                        "this has " + text.length() + " characters; up to " + longest + " are allowed");
            }
            return text;
        }

        @Override
        public String offer(UnitSystem units) {
            return offer;
        }
    }

    /** One of a few words. Case, blanks and hyphens do not matter. */
    static final class Word implements AnswerKind {

        private static final Pattern YES_OR_NO =
                Pattern.compile("^(yes|yeah|yep|no|nope)[\\s,;:.]+(.+)", Pattern.CASE_INSENSITIVE);

        /** What is shown, and the word of the file it stands for. */
        private final Map<String, String> shown;
        /** Other ways to say it. */
        private final Map<String, String> others;
        /** Those that count at the end of a longer answer too, as a state does behind its city. */
        private final List<String> endings;
        /** What to do if nobody knows the word, after the words there are. */
        private final String otherwise;

        private Word(Map<String, String> shown, Map<String, String> others, List<String> endings, String otherwise) {
            this.shown = shown;
            this.others = others;
            this.endings = endings;
            this.otherwise = otherwise;
        }

        /** Words that are the same in the file. */
        static Word of(String... words) {
            return of(Arrays.asList(words));
        }

        /** Words that are the same in the file. */
        static Word of(List<String> words) {
            Map<String, String> shown = new LinkedHashMap<>();
            words.forEach(word -> shown.put(word, word));
            return new Word(Collections.unmodifiableMap(shown), Map.of(), List.of(), "");
        }

        /** The same, where other words are understood as well. */
        Word also(String word, String... spellings) {
            Map<String, String> more = new LinkedHashMap<>(others);
            for (String spelling : spellings) {
                more.put(folded(spelling), word);
            }
            return new Word(shown, Collections.unmodifiableMap(more), endings, otherwise);
        }

        /** The same, where these other ways to say it are understood behind other words too: {@code St. Louis, Missouri}. */
        Word endingWith(String... spellings) {
            List<String> more = new ArrayList<>(endings);
            Arrays.stream(spellings).map(Word::folded).forEach(more::add);
            // the longest first: West Virginia before Virginia
            more.sort(Comparator.comparingInt(String::length).reversed());
            return new Word(shown, others, List.copyOf(more), otherwise);
        }

        /** The same, where more is said of a word that is not understood. */
        Word otherwise(String said) {
            return new Word(shown, others, endings, said);
        }

        @Override
        public String understand(String line) {
            String plain = Spoken.of(line).plain();
            Matcher agreed = YES_OR_NO.matcher(plain);
            // more words around the one that counts: the bell thing, a pressure regulator
            Stream<String> parts = Stream.of(agreed.replaceFirst("$2").split("[,;]"));
            // yes or no alone answers what can only be answered by that; what follows it answers anything else
            Stream<String> alone = Stream.of(agreed.replaceFirst("$1")).filter(word -> shown.containsKey("yes"));
            return Stream.concat(
                            Stream.of(line, plain),
                            Stream.of(Stream.of(agreed.replaceFirst("$2"), Spoken.withoutPlace(plain)), parts, alone)
                                    .flatMap(some -> some)
                                    .map(part -> Spoken.of(part).plain()))
                    .map(part -> folded(part))
                    .filter(part -> !isDenied(part, folded(line)))
                    .map(this::known)
                    .flatMap(Optional::stream)
                    .findFirst()
                    .orElseThrow(() -> new IllegalArgumentException(Printable.quote(line) + " is not one of "
                            + String.join(", ", shown.keySet()) + Nearest.hint(plain, shown.keySet()) + otherwise));
        }

        /** Whether the whole answer says that there is no such thing: what is right it leaves open. */
        private static boolean isDenied(String part, String whole) {
            return Pattern.compile("(^|-)(no|not|without)-(an?-|any-)?" + Pattern.quote(part) + "(-|$)")
                    .matcher(whole)
                    .find();
        }

        private Optional<String> known(String word) {
            return Optional.ofNullable(shown.getOrDefault(word, others.get(word)))
                    .or(() -> endings.stream()
                            .filter(known -> word.endsWith("-" + known))
                            .findFirst()
                            .map(others::get));
        }

        @Override
        public String offer(UnitSystem units) {
            return "one of: " + String.join(", ", shown.keySet());
        }

        private static String folded(String text) {
            return text.replaceAll("[.!?]+$", "")
                    .strip()
                    .toLowerCase(Locale.ROOT)
                    .replaceAll("[\\s_-]+", "-");
        }
    }

    /** A number with a unit, or, where a question allows it, the word "none". */
    static final class Quantity implements AnswerKind {

        /** The answer that there is no such thing. */
        static final String NONE = "none";

        /** More digits than any label or gauge has. */
        private static final int DIGITS = 9;

        private static final String RANGE_SIGN = " to ";

        private static final Pattern DECIMAL_COMMA = Pattern.compile("(?<![\\d,.])(\\d+),(\\d{1,2})(?![\\d,.])");
        private static final Pattern BARE =
                Pattern.compile("\\d[\\d.,]*( ?(-|\u2013|\\bto\\b|\\band\\b) ?\\d[\\d.,]*)?", Pattern.CASE_INSENSITIVE);
        private static final Pattern DEGREES =
                Pattern.compile("(?<=\\d) ?(?:degrees?|deg\\.?|\u00b0)$", Pattern.CASE_INSENSITIVE);
        /** How people say the unit of a heater's plate; a quantity of heat is not asked for. */
        private static final Pattern BTU =
                Pattern.compile("(?<=[\\d ])btus?(?: ?(?:per|an|a|/) ?(?:hour|hr|h))?$", Pattern.CASE_INSENSITIVE);
        /** The temperature on the same tag as a pressure, of which the next question asks. */
        private static final Pattern TAG = Pattern.compile(
                "(?<=[a-zA-Z])[ ,;/&]+(?:and )?\\d{2,3} ?(?:\u00b0|deg(?:rees?)? ?)?[FC]$", Pattern.CASE_INSENSITIVE);

        private static final Pattern THOUSAND = Pattern.compile("(?<=^\\d{1,4}) ?k ?(?=btu)", Pattern.CASE_INSENSITIVE);
        /** Where a pressure is as somebody left it: 40 psi like it came. */
        private static final Pattern LIKE =
                Pattern.compile("(?<=[a-zA-Z\\d])[ ,;]+(?:like|as) (?:it|they|is|was)\\b.*$", Pattern.CASE_INSENSITIVE);

        private static final Pattern NOMINAL = Pattern.compile("(?i)pn ?(\\d{1,2})");
        private static final Pattern RANGE = Pattern.compile(
                "(\\d+(?:\\.\\d+)?)( ?[a-zA-Z/\u00b0]*) ?(?:-|\u2013|\u2014|\\bto\\b|\\band\\b) ?(\\d+(?:\\.\\d+)?.*)",
                Pattern.CASE_INSENSITIVE);

        /** That there is none, also by name: no bypass; what nobody has at hand says nothing of the house. */
        private static final Pattern NONE_SPELLINGS = Pattern.compile(
                NONE + "|no|nothing|no (?!.*\\b(?:idea|clue|gauge|thermometer|label|plate|sticker|tag)\\b)[a-z &-]+");

        private final Kind<?> kind;
        private final Choice example;
        private final String none;
        private final boolean grave;

        private Quantity(Kind<?> kind, Choice example, String none, boolean grave) {
            this.kind = kind;
            this.example = example;
            this.none = none;
            this.grave = grave;
        }

        /**
         * An amount.
         *
         * @param kind its kind; pressures are gauge readings
         * @param example a sound answer in both unit systems
         */
        static Quantity of(Kind<?> kind, Choice example) {
            return new Quantity(kind, example, "", false);
        }

        /** The same, where "none" is an answer too; the words say when. */
        Quantity orNone(String when) {
            return new Quantity(kind, example, when, false);
        }

        /** The same, where so much follows from "none" that nothing else is taken for it. */
        Quantity orNoneInSoManyWords(String when) {
            return new Quantity(kind, example, when, true);
        }

        /** Whether an answer is a number, or two, without a unit, or with degrees that may be of either scale. */
        boolean isBare(String line) {
            return BARE.matcher(number(line)).matches();
        }

        /** The answer without a word for degrees that does not say which. */
        private String number(String line) {
            String said = Spoken.of(line).plain();
            return kind == Kind.TEMPERATURE ? DEGREES.matcher(said).replaceFirst("") : said;
        }

        /** A number without a unit has that of the example. */
        @Override
        public String understand(String line, UnitSystem units) {
            return understand(isBare(line) ? number(line) + unit(units) : line);
        }

        /** The unit of the example, with the blank before it: {@code " psi"}. */
        String unit(UnitSystem units) {
            return example.in(units).replaceFirst("^[\\d.]+", "");
        }

        @Override
        public String understand(String line) {
            String word = Spoken.of(line).plain().toLowerCase(Locale.ROOT);
            if (!none.isEmpty() && NONE_SPELLINGS.matcher(word).matches()) {
                if (grave && !word.equals(NONE)) {
                    throw new IllegalArgumentException(
                            "this may mean that you don't know: type dk for that, or none " + none);
                }
                return NONE;
            }
            String said = bare(line);
            Matcher range = RANGE.matcher(said);
            return range.matches() ? range(range.group(1), range.group(2), range.group(3)) : text(read(said));
        }

        /** The quantity without what people say around it, and with a decimal point. */
        private String bare(String line) {
            String said = DECIMAL_COMMA.matcher(Spoken.of(line).plain()).replaceAll("$1.$2");
            if (kind == Kind.POWER) {
                return BTU.matcher(THOUSAND.matcher(said).replaceFirst("000 ")).replaceFirst("Btu/h");
            }
            if (kind == Kind.PRESSURE) {
                said = TAG.matcher(LIKE.matcher(said).replaceFirst("")).replaceFirst("");
            }
            Matcher nominal = NOMINAL.matcher(said);
            return kind == Kind.PRESSURE && nominal.matches() ? nominal.group(1) + " bar" : said;
        }

        /** As a file writes a range. */
        private String range(String low, String lowUnit, String high) {
            Amount<? extends Unit> upper = read(high);
            Amount<? extends Unit> lower =
                    read(lowUnit.isBlank() ? low + " " + upper.unit().symbol() : low + lowUnit);
            double first = lower.unit() == upper.unit()
                    ? lower.value()
                    : upper.unit().fromSi(lower.unit().toSi(lower.value()));
            if (first == upper.value()) {
                return text(upper);
            }
            String text = text(new Amount<>(first, upper.unit())) + RANGE_SIGN + text(upper);
            Uncertain.read(text, kind);
            return text;
        }

        /** Whether a value says itself between which limits it lies. */
        static boolean isRange(String value) {
            return value.contains(RANGE_SIGN);
        }

        @Override
        public String reaching(String value, Reach reach) {
            return value.isEmpty() || value.equals(NONE) ? value : reach.of(value, kind);
        }

        private Amount<? extends Unit> read(String line) {
            if (kind != Kind.PRESSURE) {
                return QuantityReader.read(line, kind);
            }
            if (QuantityReader.pressure(line).reference() == Pressure.Reference.ABSOLUTE) {
                throw new IllegalArgumentException("give the pressure as the gauge shows it, without 'abs'");
            }
            String bare = line.strip().replaceFirst("(?i)( ?gauge| ?\\(gauge\\)| ?\\(g\\)|(?<=bar|psi)g)$", "");
            return QuantityReader.read(bare, kind);
        }

        private static String text(Amount<? extends Unit> amount) {
            return Decimals.significant(amount.value(), DIGITS) + " "
                    + amount.unit().symbol();
        }

        @Override
        public String offer(UnitSystem units) {
            String article = kind.noun().startsWith("e") ? "an " : "a ";
            return article + kind.noun() + " with its unit, such as " + example.in(units)
                    + (none.isEmpty() ? "" : "; none " + none);
        }
    }
}
