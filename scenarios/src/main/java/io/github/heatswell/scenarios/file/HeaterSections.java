package io.github.heatswell.scenarios.file;

import static io.github.heatswell.scenarios.file.Field.amount;
import static io.github.heatswell.scenarios.file.Field.word;

import io.github.heatswell.scenarios.quantity.Kind;
import io.github.heatswell.system.Element;
import io.github.heatswell.system.Heater;
import java.util.List;

/** Heater: its keys, and those of a second element. */
final class HeaterSections {

    private static final Section<Element.Builder, Element> UPPER = new Section<>(
            "heater.upper",
            Element::builder,
            Element.Builder::build,
            List.of(
                    amount("input", "power while on", "2 kW", Kind.POWER, Element.Builder::input),
                    amount(
                            "height",
                            "height of element and thermostat, as a share of the tank's height; above the lower one",
                            "70 %",
                            Kind.RATIO,
                            Element.Builder::height),
                    amount(
                            "set-point",
                            "water temperature there at which it switches off",
                            "60 degC",
                            Kind.TEMPERATURE,
                            Element.Builder::setPoint),
                    amount(
                                    "differential",
                                    "how far the water there cools before it switches on again",
                                    "6 K",
                                    Kind.TEMPERATURE_DIFFERENCE,
                                    Element.Builder::differential)
                            .checkedAgainst("set-point")));

    static final Section<Heater.Builder, Heater> HEATER = new Section<>(
            "heater",
            Heater::builder,
            Heater.Builder::build,
            List.of(
                    word(
                            "energy",
                            "where the heat comes from",
                            "gas",
                            Words.of(Heater.Energy.values()),
                            Heater.Builder::energy),
                    amount(
                            "input",
                            "power input of burner or element while on",
                            "11.2 kW",
                            Kind.POWER,
                            Heater.Builder::input),
                    amount(
                            "recovery-efficiency",
                            "share of the input that reaches the water",
                            "78 %",
                            Kind.RATIO,
                            Heater.Builder::recoveryEfficiency),
                    amount(
                            "set-point",
                            "water temperature at which the thermostat switches off",
                            "58 degC",
                            Kind.TEMPERATURE,
                            Heater.Builder::setPoint),
                    amount(
                                    "differential",
                                    "how far the water cools before it switches on again",
                                    "6 K",
                                    Kind.TEMPERATURE_DIFFERENCE,
                                    Heater.Builder::differential)
                            .checkedAgainst("set-point"),
                    amount(
                                    "height",
                                    "height of element and thermostat, as a share of the tank's height; at the"
                                            + " bottom if left out",
                                    "10 %",
                                    Kind.RATIO,
                                    Heater.Builder::height)
                            .leftOutFreely(),
                    Field.of(
                                    "upper",
                                    "a second electric element above the first",
                                    "{ input: 2 kW, height: 70 %, set-point: 60 degC }",
                                    Nested.one(UPPER, Heater.Builder::upper))
                            .leftOutFreely()
                            .checkedAgainst("energy", "height"),
                    word(
                                    "simultaneous",
                                    "whether both elements may heat at once; if not, the upper one goes first; no if"
                                            + " left out",
                                    "no",
                                    Words.yesOrNo(),
                                    Heater.Builder::simultaneous)
                            .leftOutFreely()
                            .checkedAgainst("upper"),
                    word(
                                    "thermostat",
                                    "stuck: the thermostat of the burner or lower element never switches off;"
                                            + " working if left out",
                                    "working",
                                    Words.stuckOrWorking(),
                                    Heater.Builder::thermostatStuck)
                            .leftOutFreely(),
                    amount(
                                    "cut-out",
                                    "temperature of the hottest water at which the cut-out switches everything off"
                                            + " until somebody resets it; if left out, there is no cut-out",
                                    "85 degC",
                                    Kind.TEMPERATURE,
                                    Heater.Builder::cutOut)
                            .leftOutFreely()
                            .checkedAgainst("set-point", "upper"),
                    amount(
                                    "mixed-to",
                                    "temperature that a mixing valve after the tank delivers to the taps; if left"
                                            + " out, there is none",
                                    "48 degC",
                                    Kind.TEMPERATURE,
                                    Heater.Builder::mixedTo)
                            .leftOutFreely()));

    private HeaterSections() {}
}
