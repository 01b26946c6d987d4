package io.github.heatswell.scenarios.interview;

import io.github.heatswell.scenarios.quantity.Kind;
import java.util.List;

/** What the house is called, and its cold feed. */
final class SupplyQuestions {

    static final String TITLE = "title";
    static final String ARRANGEMENT = "supply.arrangement";
    static final String PRESSURE = "supply.pressure";
    static final String NIGHT = "supply.night";
    static final String REDUCED = "supply.reducing-valve.set";
    static final String WATER = "supply.water";

    /** What the house is called if its owner does not say. */
    static final String USUAL_TITLE = "My house";

    private static final Spread GAUGE = Spread.bar(0.2, "an ordinary gauge");
    private static final Choice PRESSURE_EXAMPLE = new Choice("4.2 bar", "60 psi");

    private SupplyQuestions() {}

    static List<Question> list() {
        return List.of(title(), arrangement(), pressure(), night(), reduced(), water());
    }

    private static Question title() {
        return Question.about(TITLE, "Name", new TextAnswer(120))
                .asks("What shall the results be called?")
                .find(
                        "just press Enter for: " + USUAL_TITLE + ".",
                        "The name stands above the report and the picture. Any plain words will do.")
                .ifUnknown(new Unknown(new Choice(USUAL_TITLE, USUAL_TITLE), "the usual title"))
                .build();
    }

    private static Question arrangement() {
        return Question.about(
                        ARRANGEMENT,
                        "Cold feed",
                        WordAnswer.of("check-valve", "reducing-valve", "backflow-preventer", "nothing")
                                .also("check-valve", "check", "non-return valve", "nrv")
                                .also("reducing-valve", "reducer", "pressure reducing valve", "regulator", "prv")
                                .also("backflow-preventer", "backflow")
                                .also("nothing", "none", "no", "direct"))
                .asks("What sits in the cold pipe between the mains and the water heater?")
                .find(
                        "follow the cold pipe from the water meter to the heater.",
                        "A check valve is a short brass body with an arrow. A reducing valve is a bell or a dome"
                                + " with an adjusting screw, often with a small gauge. A backflow preventer is a"
                                + " longer body with test cocks. If there are several, name the reducing valve."
                                + " With nothing, heated water can expand back into the mains.")
                .ifUnknown(Unknown.taken("check-valve", "taken as a check valve, with which the pressure can rise"))
                .build();
    }

    private static Question pressure() {
        return Question.about(PRESSURE, "Mains pressure", AmountAnswer.of(Kind.PRESSURE, PRESSURE_EXAMPLE))
                .asks("What is the mains pressure by day, while no water runs?")
                .find(
                        "a gauge on a garden or drain tap ahead of any reducing valve, heater off.",
                        "Screw a pressure gauge onto a garden tap or a drain tap, open the tap, and see that nobody"
                                + " draws water. Turn the heater off first and draw some hot water: behind a check"
                                + " valve the gauge otherwise shows what the heater added as well. Behind a"
                                + " reducing valve it shows that valve's pressure and not that of the mains; if there is"
                                + " no tap ahead of it, answer dk.")
                .offBy(GAUGE)
                .ifUnknown(Unknown.range("3 bar to 5.5 bar", "45 psi to 80 psi"))
                .build();
    }

    private static Question night() {
        return Question.about(NIGHT, "Pressure at night", AmountAnswer.of(Kind.PRESSURE, PRESSURE_EXAMPLE))
                .asks("What is the mains pressure at night?")
                .find(
                        "the same gauge, between midnight and five in the morning.",
                        "When few people use water, mains pressure is often higher. A gauge with a drag pointer shows"
                                + " the highest reading of a night; behind a check valve, only if the heater was"
                                + " off. If you have no such reading, answer dk: the pressure of the day then holds"
                                + " around the clock.")
                .onlyIf(answers -> answers.know(PRESSURE))
                .offBy(GAUGE)
                .ifUnknown(Unknown.leftOut("the pressure by day holds around the clock"))
                .build();
    }

    private static Question reduced() {
        return Question.about(
                        REDUCED,
                        "Reducing valve set to",
                        AmountAnswer.of(Kind.PRESSURE, new Choice("3.5 bar", "50 psi")))
                .asks("What pressure is the reducing valve set to?")
                .find(
                        "a gauge at the valve or at a tap behind it.",
                        "Read the gauge on the valve, or one on a tap behind it, while a little water runs and the"
                                + " heater is off. Without a gauge: the scale or the label of the valve.")
                .onlyIf(answers -> answers.say(ARRANGEMENT, "reducing-valve"))
                .offBy(GAUGE)
                .ifUnknown(Unknown.range("2.5 bar to 4 bar", "40 psi to 60 psi"))
                .build();
    }

    private static Question water() {
        return Question.about(WATER, "Cold water", AmountAnswer.of(Kind.TEMPERATURE, new Choice("10 degC", "50 degF")))
                .asks("How cold is the cold water?")
                .find(
                        "a thermometer in the running cold tap, after some minutes.",
                        "Let the cold tap nearest the meter run until it gets no colder, and hold a thermometer into"
                                + " the stream. In winter it is colder than in summer; take what it is when the valve"
                                + " drips most.")
                .offBy(Spread.kelvin(1, "a household thermometer"))
                .ifUnknown(Unknown.range("5 degC to 15 degC", "40 degF to 60 degF"))
                .build();
    }
}
