package io.github.heatswell.scenarios.file;

import static io.github.heatswell.scenarios.file.Field.amount;
import static io.github.heatswell.scenarios.file.Field.pressure;
import static io.github.heatswell.scenarios.file.Field.text;
import static io.github.heatswell.scenarios.file.Field.word;

import io.github.heatswell.scenarios.quantity.Kind;
import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.system.NamedValue;
import java.util.List;

/** Expansion vessel: gas, water and plate data. */
final class VesselSections {

    static final Section<ExpansionVessel.Builder, ExpansionVessel> VESSEL = new Section<>(
            "vessel",
            ExpansionVessel::builder,
            ExpansionVessel.Builder::build,
            () -> List.of(
                    text(
                            "name",
                            "what results call it where there are several; its number if left out",
                            "in the tank",
                            60,
                            ExpansionVessel.Builder::name),
                    amount(
                            NamedValue.VESSEL_VOLUME.key(),
                            "total volume, gas and water together",
                            "12 L",
                            Kind.VOLUME,
                            ExpansionVessel.Builder::volume),
                    pressure(
                                    NamedValue.PRECHARGE.key(),
                                    "gas pressure with the water side empty, at room temperature; not"
                                            + " above the tank's working pressure",
                                    "4.2 bar",
                                    ExpansionVessel.Builder::precharge)
                            .checkedAgainst("tank.working-pressure"),
                    amount(
                                    NamedValue.ACCEPTANCE.key(),
                                    "share of the volume that water may fill",
                                    "60 %",
                                    Kind.RATIO,
                                    ExpansionVessel.Builder::acceptance)
                            .typically(Typical.of("60 %", "a diaphragm in a small vessel")
                                    .between("40 %", "90 %")),
                    amount(
                                    "gas-time-constant",
                                    "time constant with which the gas follows the temperature around it; isothermal if"
                                            + " left out, 30 s in a tank",
                                    "30 s",
                                    Kind.DURATION,
                                    ExpansionVessel.Builder::gasTimeConstant)
                            .leftOutFreely(),
                    amount(
                                    "charged-at",
                                    "gas temperature during charging; room temperature if left out",
                                    "5 degC",
                                    Kind.TEMPERATURE,
                                    ExpansionVessel.Builder::chargedAt)
                            .leftOutFreely(),
                    amount(
                                    "temperature",
                                    "air temperature around the vessel; room temperature if left out",
                                    "30 degC",
                                    Kind.TEMPERATURE,
                                    ExpansionVessel.Builder::temperature)
                            .leftOutFreely(),
                    amount(
                                    "height",
                                    "height above the tank's drain cock; none if left out",
                                    "1.8 m",
                                    Kind.LENGTH,
                                    ExpansionVessel.Builder::height)
                            .leftOutFreely(),
                    word(
                                    "location",
                                    "in-tank: built into the tank, so that its gas and the water in it are as warm as the"
                                            + " tank's water at its height; branch if left out",
                                    "in-tank",
                                    Words.of(ExpansionVessel.Location.values()),
                                    ExpansionVessel.Builder::location)
                            .leftOutFreely(),
                    word(
                                    "condition",
                                    "isolated: behind a closed isolating valve; waterlogged: the diaphragm has"
                                            + " failed; upstream-of-check: on the mains side of the supply valve;"
                                            + " no fault if left out",
                                    "sound",
                                    Words.of(ExpansionVessel.Condition.values()),
                                    ExpansionVessel.Builder::condition)
                            .leftOutFreely(),
                    pressure(
                                    NamedValue.VESSEL_RATING.key(),
                                    "maximum working pressure on its plate; unknown if left out",
                                    "10 bar",
                                    ExpansionVessel.Builder::rating)
                            .leftOutFreely(),
                    word(
                                    "mounting",
                                    "how it is mounted; horizontal: carried only by its pipe connection; unknown if"
                                            + " left out",
                                    "upright",
                                    Words.of(ExpansionVessel.Mounting.values()),
                                    ExpansionVessel.Builder::mounting)
                            .leftOutFreely(),
                    amount(
                                    "empty-mass",
                                    "empty mass; unknown if left out",
                                    "4.5 kg",
                                    Kind.MASS,
                                    ExpansionVessel.Builder::emptyMass)
                            .leftOutFreely(),
                    amount(
                                    "length",
                                    "length from the connection to the far end; unknown if left out",
                                    "380 mm",
                                    Kind.LENGTH,
                                    ExpansionVessel.Builder::length)
                            .leftOutFreely()));

    private VesselSections() {}
}
