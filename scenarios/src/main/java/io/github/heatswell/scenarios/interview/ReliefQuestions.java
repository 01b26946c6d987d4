package io.github.heatswell.scenarios.interview;

import io.github.heatswell.scenarios.interview.Question.Choice;
import io.github.heatswell.scenarios.interview.Question.Unknown;
import io.github.heatswell.scenarios.quantity.Kind;
import io.github.heatswell.system.NamedValue;
import java.util.List;
import java.util.regex.Pattern;

/** What keeps the pressure down: relief valves and expansion vessel. */
final class ReliefQuestions {

    static final String OPENS = NamedValue.SET_PRESSURE.field();
    static final String OPENS_AT = NamedValue.SET_TEMPERATURE.field();
    /** The section of the answers on a second relief valve, which the file lists behind the first. */
    static final String OTHER = "other-relief";

    static final String OTHER_OPENS = OTHER + "." + NamedValue.SET_PRESSURE.key();
    static final String OTHER_OPENS_AT = OTHER + "." + NamedValue.SET_TEMPERATURE.key();
    static final String PRESENT = "vessel.present";
    static final String VOLUME = NamedValue.VESSEL_VOLUME.field();
    static final String PRECHARGE = NamedValue.PRECHARGE.field();

    private static final String WHICH = "the one that drips, or else the one set lower";

    /** Says that there are two, before anything else. */
    private static final Pattern TWO = Pattern.compile(
            "^(?:yes|there(?: a|')re|(?:we|i)(?:'ve)?(?: have)?(?: got)?|[, ])*(?:two|both|2)"
                    + "(?=[ .!]*$|[,:;]|(?: of them| relief| safety)*(?: valves)?[ .!]*$|(?: of them| relief| safety)* valves)"
                    + "(?: of them| relief| safety)*(?: valves)?[ ,:;.!]*",
            Pattern.CASE_INSENSITIVE);
    /** Names a valve that is there beside another. */
    private static final Pattern COLD = Pattern.compile(
            "(?:the |an? |my )?(?:expansion|cold(?:[ -](?:side|feed|inlet|pipe|water))?)(?:[ -]relief)? valves?"
                    + "(?: is| at| opens at|[,:])*",
            Pattern.CASE_INSENSITIVE);

    private static final Pattern ANOTHER = Pattern.compile(
            "\\b(?:another|second|other) (?:one|valve)\\b|\\bcold (?:side|feed|inlet|pipe)\\b",
            Pattern.CASE_INSENSITIVE);
    /** Two pressures that are no range: 6 bar and 7 bar. */
    private static final Pattern BOTH = Pattern.compile(
            "^(?!.*\\bbetween\\b)(?:.*\\d ?(bar|psi|kpa)g?\\b(?! ?(?:to\\b|-|\u2013|\u2014)).*\\D\\d[\\d.]* ?\\1.*"
                    + "|.*\\d ?(?:and|&) ?\\d[\\d.]* ?(?:bar|psi|kpa).*)",
            Pattern.CASE_INSENSITIVE);

    private ReliefQuestions() {}

    static List<Question> list() {
        return List.of(setPressure(), opensAt(), otherOpens(), otherOpensAt(), present(), volume(), precharge());
    }

    /** Whether an answer to how a relief valve opens says that there are two. */
    static boolean namesTwo(Question question, String line) {
        return question.id().equals(OPENS)
                && (TWO.matcher(line).find()
                        || COLD.matcher(line).find()
                        || ANOTHER.matcher(line).find()
                        || BOTH.matcher(line).matches());
    }

    /**
     * What is left of such an answer for the one valve that is asked about.
     *
     * @throws IllegalArgumentException if that is nothing, or the pressures of both
     */
    static String ofOne(String line) {
        String rest = COLD.matcher(TWO.matcher(line).replaceFirst(""))
                .replaceFirst("")
                .strip();
        if (rest.isEmpty() || BOTH.matcher(rest).matches()) {
            throw new IllegalArgumentException(
                    "one valve at a time: type the pressure of " + WHICH + "; the other comes next");
        }
        return rest;
    }

    /** Whether the place leaves open that there are two; in the US, one T&P is usual, and somebody has to say that there are two. */
    private static boolean mayBeTwo(Answers answers) {
        return answers.to(PlaceQuestion.question())
                .filter(place -> !PlaceQuestion.hasCodes(place.value()))
                .isPresent();
    }

    private static Question setPressure() {
        return Question.about(
                        OPENS,
                        "Relief valve opens at",
                        AnswerKind.Quantity.of(Kind.PRESSURE, new Choice("7 bar", "150 psi"))
                                .orNoneInSoManyWords("if there is no relief valve at all"))
                .asks(answers -> "At what pressure does the relief valve open?"
                        + (mayBeTwo(answers) ? " If there are two, take " + WHICH + "." : ""))
                .find(
                        "the tag or the cap of the valve. Just read it.",
                        "The set pressure is stamped on the cap or printed on a tag. Just read it: an old valve may"
                                + " not close again once lifted, and its discharge can scald. Never plug, cap or"
                                + " downsize it. A heater without a relief valve can explode: turn it off and call"
                                + " a licensed professional. If there are two, say so: two, and the pressure of "
                                + WHICH + ".")
                .offBy(Spread.share(0.03, "valves open within a few percent of their set pressure"))
                .ifUnknown(Unknown.range("6 bar to 10 bar", "90 psi to 150 psi"))
                .build();
    }

    private static Question opensAt() {
        return Question.about(
                        OPENS_AT,
                        "Relief valve's temperature",
                        AnswerKind.Quantity.of(Kind.TEMPERATURE, new Choice("99 degC", "210 degF"))
                                .orNone("if the tag gives no temperature"))
                .asks("Does the relief valve's tag also give a temperature?")
                .find(
                        "the same tag. A temperature and pressure relief valve is marked T&P.",
                        "A T&P valve has a probe in the hottest water and opens on either temperature or pressure."
                                + " Its tag gives both, such as 150 psi and 210 degF.")
                .onlyIf(answers -> !answers.say(OPENS, AnswerKind.Quantity.NONE))
                .ifUnknown(Unknown.leftOut("the valve is assumed to respond to pressure only"))
                .build();
    }

    private static Question otherOpens() {
        return Question.about(
                        OTHER_OPENS,
                        "The other relief valve",
                        AnswerKind.Quantity.of(Kind.PRESSURE, new Choice("7 bar", "150 psi"))
                                .orNone("if there is only one"))
                .asks("Is there another relief valve, and at what pressure does it open?")
                .find(
                        "one on top or near the top of the tank, and one on the cold pipe: is there a tag on each?",
                        "Many tanks have an expansion valve on the cold pipe, which responds to pressure only, and a T&P"
                                + " valve near the top of the tank, set higher. Just read the tags: a discharge can"
                                + " scald.")
                .onlyIf(answers ->
                        !answers.say(OPENS, AnswerKind.Quantity.NONE) && (mayBeTwo(answers) || answers.nameTwo(OPENS)))
                .offBy(Spread.share(0.03, "valves open within a few percent of their set pressure"))
                .ifUnknown(Unknown.leftOut("assumed to be none"))
                .build();
    }

    private static Question otherOpensAt() {
        return Question.about(
                        OTHER_OPENS_AT,
                        "The other's temperature",
                        AnswerKind.Quantity.of(Kind.TEMPERATURE, new Choice("90 degC", "210 degF"))
                                .orNone("if the tag gives no temperature"))
                .asks("Does the other valve's tag also give a temperature?")
                .find(
                        "the tag of that valve. A temperature and pressure relief valve is marked T&P.",
                        "A T&P valve has a probe in the hottest water and opens on either temperature or pressure."
                                + " An expansion valve on the cold pipe has no temperature on its tag.")
                .onlyIf(answers -> answers.know(OTHER_OPENS))
                .ifUnknown(Unknown.leftOut("the valve is assumed to respond to pressure only"))
                .build();
    }

    private static Question present() {
        return Question.about(
                        PRESENT,
                        "Expansion vessel",
                        AnswerKind.Word.of("yes", "no")
                                .also("yes", "there is", "one", "1")
                                .also("no", "none", "nothing"))
                .asks("Is there an expansion vessel on the cold pipe of the water heater?")
                .find(
                        "a small closed tank with an air valve like a car tyre's.",
                        "It is usually about the size of a bucket and sits on the cold pipe between the check valve and the water"
                                + " heater. The vessel of a"
                                + " central-heating system is a different one and does not count.")
                .ifUnknown(Unknown.taken("no", "assumed to be none"))
                .build();
    }

    private static Question volume() {
        return Question.about(
                        VOLUME,
                        "Volume of the vessel",
                        AnswerKind.Quantity.of(Kind.VOLUME, new Choice("12 L", "2 gal")))
                .asks("What is the volume of the vessel?")
                .find("its label.", "The label gives the total volume, gas and water together.")
                .onlyIf(answers -> answers.say(PRESENT, "yes"))
                .offBy(Spread.share(0.03, "labels give round numbers"))
                .ifUnknown(Unknown.range("8 L to 25 L", "2 gal to 6 gal"))
                .build();
    }

    private static Question precharge() {
        return Question.about(
                        PRECHARGE,
                        "Precharge of the vessel",
                        AnswerKind.Quantity.of(Kind.PRESSURE, new Choice("3.5 bar", "50 psi")))
                .asks("What is the precharge of the vessel, measured with its water side empty?")
                .find(
                        "a tyre gauge on its air valve, with the heater off and cool, the supply shut and a tap open.",
                        "Turn the heater off and let it cool. Shut the supply, open a hot tap until nothing runs,"
                                + " and leave it open: only then is the water side empty. A tyre gauge on the air"
                                + " valve now shows the precharge; with water in the vessel it would show the water's pressure. If"
                                + " any of this is new to you, leave it to a licensed professional"
                                + " and answer dk.")
                .onlyIf(answers -> answers.say(PRESENT, "yes"))
                .offBy(Spread.bar(0.2, "a tyre gauge"))
                .ifUnknown(Unknown.range("1 bar to 4 bar", "15 psi to 60 psi"))
                .build();
    }
}
