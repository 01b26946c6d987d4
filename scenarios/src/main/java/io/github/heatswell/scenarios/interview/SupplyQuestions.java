package io.github.heatswell.scenarios.interview;

import io.github.heatswell.scenarios.interview.Answers.Answer;
import io.github.heatswell.scenarios.interview.Question.Choice;
import io.github.heatswell.scenarios.interview.Question.Unknown;
import io.github.heatswell.scenarios.quantity.Kind;
import io.github.heatswell.scenarios.quantity.QuantityReader;
import io.github.heatswell.system.NamedValue;
import io.github.heatswell.units.PressureUnit;
import java.util.List;
import java.util.regex.Pattern;

/** What the house is called, and its cold feed. */
final class SupplyQuestions {

    static final String TITLE = "title";
    static final String ARRANGEMENT = NamedValue.ARRANGEMENT.field();
    static final String PRESSURE = NamedValue.SUPPLY.field();
    static final String NIGHT = "supply.night";
    static final String REDUCED = NamedValue.REDUCED.field();
    static final String BYPASS = NamedValue.BYPASS.field();
    static final String WATER = NamedValue.COLD.field();

    /** What the house is called if its owner does not say. */
    static final String USUAL_TITLE = "My house";

    /** A gauge for a hose errs by 2 % to 3 % of a dial that goes far beyond the mains: from memory. */
    static final Spread GAUGE = Spread.bar(0.3, "an ordinary gauge");

    private static final Pattern SAME = Pattern.compile(
            "(?:probably |about |it'?s |is )*(?:the )?same(?: (?:as|all|thing|again|pressure)\\b.*)?[.!]?",
            Pattern.CASE_INSENSITIVE);

    private static final Choice PRESSURE_EXAMPLE = new Choice("4.2 bar", "60 psi");

    private SupplyQuestions() {}

    static List<Question> list() {
        return List.of(title(), arrangement(), pressure(), night(), reduced(), bypass(), water());
    }

    private static Question title() {
        return Question.about(TITLE, "Name", new AnswerKind.Text(120, "a few words"))
                .asks("What title should the results have?")
                .find(
                        "just press Enter to call it " + USUAL_TITLE + ".",
                        "The title heads the report and the chart. Any plain words will do.")
                .ifUnknown(new Unknown(new Choice(USUAL_TITLE, USUAL_TITLE), "the usual title"))
                .build();
    }

    private static Question arrangement() {
        return Question.about(
                        ARRANGEMENT,
                        "Cold feed",
                        AnswerKind.Word.of("check-valve", "reducing-valve", "backflow-preventer", "nothing")
                                .also("check-valve", "check", "non-return valve", "nrv")
                                .also(
                                        "reducing-valve",
                                        "reducer",
                                        "pressure reducing valve",
                                        "regulator",
                                        "pressure regulator",
                                        "prv")
                                .also("backflow-preventer", "backflow", "dual check", "dual check valve")
                                // as they are called where rules are read in German
                                .also(
                                        "check-valve",
                                        "rückflussverhinderer",
                                        "rueckflussverhinderer",
                                        "rückschlagventil")
                                .also("reducing-valve", "druckminderer", "druckminderventil")
                                .also("backflow-preventer", "systemtrenner", "rohrtrenner")
                                .also("nothing", "none", "no", "direct"))
                .asks("What is in the cold pipe between the mains and the water heater?")
                .find(
                        "follow the cold pipe from the water meter to the heater.",
                        "A check valve is a short brass body with an arrow. A pressure reducing valve is"
                                + " bell-shaped, with an adjusting screw and often a small gauge. A backflow"
                                + " preventer is a longer body with test cocks. If there are several, name the"
                                + " reducing valve. With none of them, heated water can expand back into the mains.")
                .ifUnknown(Unknown.taken("check-valve", "assumed to be a check valve, behind which pressure can rise"))
                .build();
    }

    private static Question pressure() {
        return Question.about(PRESSURE, "Mains pressure", AnswerKind.Quantity.of(Kind.PRESSURE, PRESSURE_EXAMPLE))
                .asks("What is the mains pressure during the day, while no water runs?")
                .find(
                        "a gauge on a garden tap or drain tap upstream of any reducing valve, with the heater off.",
                        "Turn the heater off, run a hot tap until the water comes cold, close all taps and wait 10 min;"
                                + " otherwise a gauge behind a check valve also shows the pressure the heater"
                                + " added. Screw a pressure gauge onto a garden tap or a drain tap, open that, and make sure nobody"
                                + " draws water. Downstream of a reducing valve, it shows that valve's pressure, not the"
                                + " mains pressure. If there is no tap upstream of it, answer dk.")
                .offBy(GAUGE)
                .ifUnknown(SupplyQuestions::mains)
                .build();
    }

    /**
     * What the mains are taken to have. Behind a reducing valve that is more than it lets through, with the most that its setting may be
     * off: else the guess, and not the valve, would decide what the house has at rest.
     */
    private static Unknown mains(Answers answers) {
        if (!answers.say(ARRANGEMENT, "reducing-valve")) {
            return Unknown.range("3 bar to 5.5 bar", "45 psi to 80 psi");
        }
        double set = answers.to(Questions.named(REDUCED))
                .map(Answer::value)
                .filter(value -> !value.isEmpty())
                .map(value -> QuantityReader.pressure(value.replaceFirst("^.* to ", ""))
                        .value())
                .orElse(0.0);
        long bar = Math.max(6, (long) Math.ceil(PressureUnit.BAR.fromSi(set) + 1.5));
        long psi = Math.max(80, 5 * (long) Math.ceil((PressureUnit.PSI.fromSi(set) + 20) / 5));
        return new Unknown(
                new Choice(bar + " bar to " + (bar + 3) + " bar", psi + " psi to " + (psi + 40) + " psi"),
                "not known; assumed to be above the reducing valve's setting, so that the valve decides the resting pressure of the"
                        + " house: common practice, no source");
    }

    private static Question night() {
        return Question.about(NIGHT, "Pressure at night", AnswerKind.Quantity.of(Kind.PRESSURE, PRESSURE_EXAMPLE))
                .asks("What is the mains pressure at night?")
                .find(
                        "the same gauge, between midnight and 5 am.",
                        "Mains pressure is often higher when few people use water. A gauge with a maximum pointer"
                                + " (maximum hand) shows the night's highest reading; behind a check valve, only"
                                + " if the heater was off. Without such a reading, answer dk: the daytime pressure"
                                + " is then used around the clock.")
                .onlyIf(answers -> answers.know(PRESSURE))
                .offBy(GAUGE)
                .ifUnknown(Unknown.leftOut("the daytime pressure is used around the clock"))
                .build();
    }

    /** Whether somebody says that the mains are at the same pressure day and night. */
    static boolean isSame(Question question, String line) {
        return question.id().equals(NIGHT) && SAME.matcher(line).matches();
    }

    private static Question reduced() {
        return Question.about(
                        REDUCED,
                        "Reducing valve set to",
                        AnswerKind.Quantity.of(Kind.PRESSURE, new Choice("3.5 bar", "50 psi")))
                .asks("What pressure is the reducing valve set to?")
                .find(
                        "a gauge on the valve or on a tap downstream of it, while a little water runs.",
                        "Read the gauge on the valve, or one on a tap downstream of it, while a little water runs"
                                + " and the heater is off. Without a gauge, go by the valve's scale or label.")
                .onlyIf(answers -> answers.say(ARRANGEMENT, "reducing-valve"))
                .offBy(GAUGE)
                .ifUnknown(Unknown.range("2.5 bar to 4 bar", "40 psi to 60 psi"))
                .build();
    }

    private static Question bypass() {
        return Question.about(
                        BYPASS,
                        "Reducing valve's bypass opens",
                        AnswerKind.Quantity.of(Kind.PRESSURE, new Choice("0.2 bar", "3 psi"))
                                .orNone("if it has no bypass"))
                .asks("How far above mains pressure does the reducing valve's bypass open?")
                .find(
                        "the valve's marking or its manufacturer's data sheet. Many valves have no bypass.",
                        "A bypass lets heated water expand back into the mains once house pressure is a little above mains"
                                + " pressure. It can decide whether the relief valve opens at all. You cannot see it from outside:"
                                + " look up the model. If you can't, answer dk.")
                .onlyIf(answers -> answers.say(ARRANGEMENT, "reducing-valve"))
                .ifUnknown(Unknown.leftOut("none is assumed"))
                .build();
    }

    private static Question water() {
        return Question.about(
                        WATER, "Cold water", AnswerKind.Quantity.of(Kind.TEMPERATURE, new Choice("10 degC", "50 degF")))
                .asks("How cold is the cold water?")
                .find(
                        "a thermometer in the running cold tap, after a few minutes.",
                        "Let the cold tap nearest the meter run until it gets no colder, and hold a thermometer in"
                                + " the stream. The water is colder in winter than in summer; take the season when"
                                + " the valve drips most.")
                .offBy(Spread.kelvin(1, "a household thermometer"))
                .ifUnknown(Unknown.range("5 degC to 15 degC", "40 degF to 60 degF"))
                .build();
    }
}
