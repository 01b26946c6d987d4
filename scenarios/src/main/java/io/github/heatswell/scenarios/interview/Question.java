package io.github.heatswell.scenarios.interview;

import io.github.heatswell.units.PressureUnit;
import io.github.heatswell.units.QuantityFormat;
import io.github.heatswell.units.UnitSystem;
import java.util.Objects;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.regex.Pattern;

/** One question, with all that is needed to ask it and to write its answer down. Immutable. */
final class Question {

    private final String id;
    private final String label;
    private final AnswerKind kind;
    private final Function<Answers, String> text;
    private final String hint;
    private final String help;
    private final Spread spread;
    private final Function<Answers, Unknown> unknown;
    private final Predicate<Answers> condition;
    private final Predicate<Answers> elsewhere;
    private final AnswerKind otherKind;

    private Question(Builder from) {
        id = from.id;
        label = from.label;
        kind = from.kind;
        text = Objects.requireNonNull(from.text, "text");
        hint = from.hint;
        help = Objects.requireNonNull(from.help, "help");
        spread = from.spread;
        unknown = Objects.requireNonNull(from.unknown, "unknown");
        condition = from.condition;
        elsewhere = from.elsewhere;
        otherKind = from.otherKind;
    }

    /**
     * Starts a question; text, help and what takes the place of an unknown answer must be set.
     *
     * @param id the field of the file that it fills, or another name if it fills none
     * @param label what it is about, in a few words
     * @param kind what an answer must look like
     */
    static Builder about(String id, String label, AnswerKind kind) {
        return new Builder(id, label, kind);
    }

    String id() {
        return id;
    }

    String label() {
        return label;
    }

    AnswerKind kind() {
        return kind;
    }

    /** The same with the example, and so the unit of a bare number, that goes with the answers before it. */
    AnswerKind kind(Answers answers) {
        return elsewhere.test(answers) ? otherKind : kind;
    }

    /** The question itself, given the answers before it. */
    String text(Answers answers) {
        return text.apply(answers);
    }

    /** How to find out, in one short sentence. */
    String hint() {
        return hint;
    }

    /** How to find out, with everything to mind. */
    String help() {
        return help;
    }

    /** How far a reading may be off. */
    Spread spread() {
        return spread;
    }

    /** What takes the place of an unknown answer, given the answers before it. */
    Unknown unknown(Answers answers) {
        return unknown.apply(answers);
    }

    /** Whether the question makes sense after these answers. */
    boolean appliesAfter(Answers answers) {
        return condition.test(answers);
    }

    /** Puts a question together. */
    static final class Builder {
        private final String id;
        private final String label;
        private final AnswerKind kind;
        private Function<Answers, String> text;
        private String hint = "";
        private String help;
        private Spread spread = Spread.none();
        private Function<Answers, Unknown> unknown;
        private Predicate<Answers> condition = answers -> true;
        private Predicate<Answers> elsewhere = answers -> false;
        private AnswerKind otherKind;

        private Builder(String id, String label, AnswerKind kind) {
            this.id = id;
            this.label = label;
            this.kind = kind;
            this.otherKind = kind;
        }

        /** Another example after some answers. */
        Builder after(Predicate<Answers> answers, AnswerKind value) {
            elsewhere = answers;
            otherKind = value;
            return this;
        }

        Builder asks(String value) {
            return asks(answers -> value);
        }

        Builder asks(Function<Answers, String> value) {
            text = value;
            return this;
        }

        /** How to find out: in short with the question, and the rest on demand. */
        Builder find(String inShort, String more) {
            hint = inShort;
            help = more;
            return this;
        }

        Builder offBy(Spread value) {
            spread = value;
            return this;
        }

        Builder ifUnknown(Unknown value) {
            return ifUnknown(answers -> value);
        }

        Builder ifUnknown(Function<Answers, Unknown> value) {
            unknown = value;
            return this;
        }

        Builder onlyIf(Predicate<Answers> value) {
            condition = value;
            return this;
        }

        Question build() {
            return new Question(this);
        }
    }

    /**
     * Substitute for an unknown answer.
     *
     * @param value what the file gives instead, empty if it leaves the field out
     * @param reason why, as a comment of the file
     */
    record Unknown(Choice value, String reason) {

        private static final String LEFT_OUT = "not known and left out; ";

        /** A range in which every value is equally likely. */
        static Unknown range(String si, String us) {
            return new Unknown(new Choice(si, us), "not known; typical range, common practice, no source");
        }

        /** A choice that is made for the owner. */
        static Unknown taken(String word, String reason) {
            return new Unknown(new Choice(word, word), "not known; " + reason);
        }

        /** Nothing: the format has a typical value, or goes without. */
        static Unknown leftOut(String reason) {
            return new Unknown(new Choice("", ""), LEFT_OUT + reason);
        }

        /** What follows from leaving it out. */
        String instead() {
            return reason.startsWith(LEFT_OUT) ? reason.substring(LEFT_OUT.length()) : reason;
        }

        String in(UnitSystem units) {
            return value.in(units);
        }
    }

    /** A pressure within what is said in bar. */
    private static final Pattern BAR = Pattern.compile("(\\d+(?:\\.\\d+)?) bar\\b");

    /**
     * The same thing said in both systems of units; kilopascals come from the metric one.
     *
     * @param si with bar, degrees Celsius, litres and kilowatts
     * @param us with psi, degrees Fahrenheit, gallons and Btu an hour
     */
    record Choice(String si, String us) {

        String in(UnitSystem units) {
            QuantityFormat shown = QuantityFormat.ascii(units);
            return units.isMetric()
                    ? BAR.matcher(si)
                            .replaceAll(
                                    found -> shown.pressure(PressureUnit.BAR.toSi(Double.parseDouble(found.group(1)))))
                    : us;
        }
    }
}
