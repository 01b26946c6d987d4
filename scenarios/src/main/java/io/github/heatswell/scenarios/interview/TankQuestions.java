package io.github.heatswell.scenarios.interview;

import io.github.heatswell.scenarios.quantity.Kind;
import java.util.List;

/** The tank and what heats it. */
final class TankQuestions {

    static final String VOLUME = "tank.volume";
    static final String MATERIAL = "tank.material";
    static final String WORKING_PRESSURE = "tank.working-pressure";
    static final String ENERGY = "heater.energy";
    static final String INPUT = "heater.input";
    static final String SET_POINT = "heater.set-point";

    private TankQuestions() {}

    static List<Question> list() {
        return List.of(volume(), material(), workingPressure(), energy(), input(), setPoint());
    }

    private static Question volume() {
        return Question.about(VOLUME, "Volume of the tank", AmountAnswer.of(Kind.VOLUME, new Choice("200 L", "50 gal")))
                .asks("How much water does the tank hold?")
                .find(
                        "the plate on the tank.",
                        "The maker's plate gives the volume, often as the second half of a type number too. Gallons"
                                + " are US gallons. Without a plate: height times diameter squared, times 0.5 for the"
                                + " insulation around it, all in decimetres, gives about the litres.")
                .offBy(Spread.share(0.03, "plates give round numbers"))
                .ifUnknown(Unknown.range("120 L to 300 L", "40 gal to 80 gal"))
                .build();
    }

    private static Question material() {
        return Question.about(
                        MATERIAL,
                        "Material of the tank",
                        WordAnswer.of("steel", "stainless-steel", "copper")
                                .also("steel", "enamelled steel", "enameled steel", "glass lined", "glass", "enamel")
                                .also("stainless-steel", "stainless", "inox"))
                .asks("What is the tank made of?")
                .find(
                        "the plate; enamelled and glass-lined tanks are steel.",
                        "A magnet holds on steel and not, or hardly, on stainless steel and copper; try it at an"
                                + " uncovered flange. A tank with a magnesium anode is nearly always enamelled steel.")
                .ifUnknown(Unknown.taken("steel", "taken as steel, the most common"))
                .build();
    }

    private static Question workingPressure() {
        return Question.about(
                        WORKING_PRESSURE,
                        "Working pressure of the tank",
                        AmountAnswer.of(Kind.PRESSURE, new Choice("10 bar", "150 psi")))
                .asks("What is the highest working pressure of the tank?")
                .find(
                        "the plate: working pressure, PN, PS or W.P.",
                        "Take the working pressure of the water side and not the test pressure, which is higher. It is"
                                + " a limit and not a reading, so it is taken as exact.")
                .ifUnknown(Unknown.leftOut("the typical value of the format holds"))
                .build();
    }

    private static Question energy() {
        return Question.about(
                        ENERGY,
                        "Heated by",
                        WordAnswer.of("gas", "electric")
                                .also("gas", "natural gas", "propane", "burner", "lpg", "oil")
                                .also("electric", "electricity", "element"))
                .asks("What heats the water?")
                .find(
                        "a burner under the tank is gas, an element in the water is electric.",
                        "A tank heated through a coil by a boiler is nearest to electric: no flue goes through it. Then"
                                + " give the power of the coil as input.")
                .ifUnknown(Unknown.taken("electric", "taken as electric"))
                .build();
    }

    private static Question input() {
        return Question.about(INPUT, "Heat input", AmountAnswer.of(Kind.POWER, new Choice("3 kW", "40000 Btu/h")))
                .asks("What is the heat input?")
                .find(
                        "the plate of the heater, in kW, W or Btu/h.",
                        "For gas take the input and not the output. With two elements of which one heats at a time, the"
                                + " larger one.")
                .offBy(Spread.share(0.05, "burners and elements differ from their plates"))
                .ifUnknown(answers -> answers.say(ENERGY, "gas")
                        ? Unknown.range("7 kW to 14 kW", "30000 Btu/h to 50000 Btu/h")
                        : Unknown.range("2 kW to 6 kW", "7000 Btu/h to 19000 Btu/h"))
                .build();
    }

    private static Question setPoint() {
        return Question.about(
                        SET_POINT,
                        "Water is heated to",
                        AmountAnswer.of(Kind.TEMPERATURE, new Choice("60 degC", "125 degF")))
                .asks("How hot does the heater make the water?")
                .find(
                        "a thermometer in the hot tap nearest the heater, right after it has heated. Mind: it scalds.",
                        "Water above 60 degC (140 degF) scalds within seconds: let it run gently into a bucket with the"
                                + " thermometer in it, and keep hands and children away. Take a tap without a mixing"
                                + " valve, just after the heater has switched off. The knob of the thermostat is only"
                                + " a rough guide.")
                .offBy(Spread.kelvin(3, "a thermometer at the nearest tap"))
                .ifUnknown(Unknown.range("50 degC to 65 degC", "120 degF to 150 degF"))
                .build();
    }
}
