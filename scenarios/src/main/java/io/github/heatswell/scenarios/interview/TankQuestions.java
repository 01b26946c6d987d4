package io.github.heatswell.scenarios.interview;

import io.github.heatswell.scenarios.interview.Question.Choice;
import io.github.heatswell.scenarios.interview.Question.Unknown;
import io.github.heatswell.scenarios.quantity.Kind;
import io.github.heatswell.system.NamedValue;
import java.util.List;

/** The tank and what heats it. */
final class TankQuestions {

    static final String VOLUME = NamedValue.TANK_VOLUME.field();
    static final String MATERIAL = NamedValue.MATERIAL.field();
    static final String WORKING_PRESSURE = NamedValue.WORKING_PRESSURE.field();
    static final String ENERGY = NamedValue.ENERGY.field();
    static final String INPUT = NamedValue.HEATER_INPUT.field();
    static final String SET_POINT = NamedValue.SET_POINT.field();

    private TankQuestions() {}

    static List<Question> list() {
        return List.of(volume(), material(), workingPressure(), energy(), input(), setPoint());
    }

    private static Question volume() {
        return Question.about(
                        VOLUME,
                        "Volume of the tank",
                        AnswerKind.Quantity.of(Kind.VOLUME, new Choice("200 L", "50 gal")))
                .asks("How much water does the tank hold?")
                .find(
                        "the plate on the tank.",
                        "The rating plate gives the volume; the model number often contains it too. Gallons are US"
                                + " gallons. Without a plate, measure outside: height times diameter squared, both"
                                + " in metres, times 500, gives roughly the litres; both in feet, times 3.7, the gallons."
                                + " That allows for the insulation.")
                .offBy(Spread.share(0.03, "plates give round numbers"))
                .ifUnknown(Unknown.range("120 L to 300 L", "40 gal to 80 gal"))
                .build();
    }

    private static Question material() {
        return Question.about(
                        MATERIAL,
                        "Material of the tank",
                        AnswerKind.Word.of("steel", "stainless-steel", "copper")
                                .also("steel", "enamelled steel", "enameled steel", "glass lined", "glass", "enamel")
                                .also("stainless-steel", "stainless", "inox", "edelstahl", "chromstahl")
                                .also("steel", "stahl", "emailliert", "stahl emailliert", "emaillierter stahl")
                                .also("copper", "kupfer"))
                .asks("What is the tank made of?")
                .find(
                        "the rating plate; enamelled and glass-lined tanks are steel.",
                        "A magnet sticks to steel but hardly or not at all to stainless steel or copper; try it on"
                                + " an uncovered flange. A tank with a magnesium anode is nearly always enamelled"
                                + " steel.")
                .ifUnknown(Unknown.taken("steel", "assumed to be steel, the most common"))
                .build();
    }

    private static Question workingPressure() {
        return Question.about(
                        WORKING_PRESSURE,
                        "Working pressure of the tank",
                        AnswerKind.Quantity.of(Kind.PRESSURE, new Choice("10 bar", "150 psi")))
                .asks("What is the maximum working pressure of the tank?")
                .find(
                        "the rating plate: working pressure, PN, PS or W.P.",
                        "Take the working pressure of the water side, not the higher test pressure. It is a limit,"
                                + " not a reading, so it counts as exact.")
                .ifUnknown(Unknown.leftOut("a typical value is assumed"))
                .build();
    }

    private static Question energy() {
        return Question.about(
                        ENERGY,
                        "Heated by",
                        AnswerKind.Word.of("gas", "electric")
                                .also("gas", "natural gas", "propane", "burner", "lpg", "oil", "erdgas", "öl")
                                .also(
                                        "electric",
                                        "electricity",
                                        "element",
                                        "immersion",
                                        "immersion heater",
                                        "electric immersion",
                                        "electric immersion heater",
                                        "indirect",
                                        "coil",
                                        "boiler",
                                        "boiler coil",
                                        "indirect coil",
                                        "indirect cylinder",
                                        "strom",
                                        "elektrisch"))
                .asks("What heats the water?")
                .find(
                        "a burner under the tank means gas; an element in the water means electric, and so does a boiler's coil.",
                        "A tank heated by a boiler through a coil (indirect) counts as electric, since no flue passes through it: give"
                                + " the coil's power as the input. A flue also loses heat between burns: a gas tank is assumed to"
                                + " lose three times as much as an electric one.")
                .ifUnknown(Unknown.taken("electric", "assumed to be electric"))
                .build();
    }

    private static Question input() {
        return Question.about(
                        INPUT, "Heat input", AnswerKind.Quantity.of(Kind.POWER, new Choice("3 kW", "40000 Btu/h")))
                .after(
                        answers -> answers.say(ENERGY, "electric"),
                        AnswerKind.Quantity.of(Kind.POWER, new Choice("2 kW", "4500 W")))
                .asks("What is the heat input?")
                .find(
                        "the heater's rating plate, in kW, W or Btu/h.",
                        "For gas, take the input, not the output. If two elements take turns, give the larger.")
                .offBy(Spread.share(0.05, "burners and elements deviate from their ratings"))
                .ifUnknown(answers -> answers.say(ENERGY, "gas")
                        ? Unknown.range("7 kW to 14 kW", "30000 Btu/h to 50000 Btu/h")
                        : Unknown.range("2 kW to 6 kW", "7000 Btu/h to 19000 Btu/h"))
                .build();
    }

    private static Question setPoint() {
        return Question.about(
                        SET_POINT,
                        "Hot-water temperature",
                        AnswerKind.Quantity.of(Kind.TEMPERATURE, new Choice("60 degC", "125 degF")))
                .asks("How hot does the heater make the water?")
                .find(
                        "a thermometer at the hot tap nearest the heater, right after it has heated. Careful: it"
                                + " scalds.",
                        "Water above 60 degC (140 degF) scalds within seconds: let it run gently into a bucket with"
                                + " the thermometer in it, and keep hands and children away. Use a tap without a"
                                + " mixing valve, just after the heater has switched off. The thermostat knob is"
                                + " only a rough guide. After many short draws, the water at the top may be hotter than the"
                                + " thermostat setting (stacking): read again after a long draw.")
                .offBy(Spread.kelvin(3, "a thermometer at the nearest tap"))
                .ifUnknown(Unknown.range("50 degC to 65 degC", "120 degF to 150 degF"))
                .build();
    }
}
