package io.github.heatswell.scenarios.interview;

import io.github.heatswell.scenarios.interview.Question.Choice;
import io.github.heatswell.scenarios.interview.Question.Unknown;
import io.github.heatswell.scenarios.quantity.Kind;
import io.github.heatswell.system.NamedValue;
import java.util.List;

/** What keeps the pressure down: relief valve and expansion vessel. */
final class ReliefQuestions {

    static final String OPENS = NamedValue.SET_PRESSURE.field();
    static final String OPENS_AT = NamedValue.SET_TEMPERATURE.field();
    static final String PRESENT = "vessel.present";
    static final String VOLUME = NamedValue.VESSEL_VOLUME.field();
    static final String PRECHARGE = NamedValue.PRECHARGE.field();

    private ReliefQuestions() {}

    static List<Question> list() {
        return List.of(setPressure(), opensAt(), present(), volume(), precharge());
    }

    private static Question setPressure() {
        return Question.about(
                        OPENS,
                        "Relief valve opens at",
                        AnswerKind.Quantity.of(Kind.PRESSURE, new Choice("7 bar", "150 psi"))
                                .orNoneInSoManyWords("if there is no relief valve at all"))
                .asks("At what pressure does the relief valve open?")
                .find(
                        "the tag or the cap of the valve. Just read it.",
                        "The set pressure is stamped on the cap or printed on a tag. Just read it: an old valve may"
                                + " not close again once lifted, and its discharge can scald. Never plug, cap or"
                                + " downsize it. A heater without a relief valve can explode: turn it off and call"
                                + " a licensed professional.")
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
