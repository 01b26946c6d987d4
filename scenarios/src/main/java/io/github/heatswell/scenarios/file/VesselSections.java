package io.github.heatswell.scenarios.file;

import static io.github.heatswell.scenarios.file.Fields.amount;
import static io.github.heatswell.scenarios.file.Fields.pressure;
import static io.github.heatswell.scenarios.file.Fields.word;

import io.github.heatswell.scenarios.quantity.Kind;
import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.system.VesselBody;
import java.util.List;

/** The expansion vessel: its gas and water, and what stands on its plate. */
final class VesselSections {

    static final Section<VesselDraft, ExpansionVessel> VESSEL = new Section<>(
            "vessel",
            VesselDraft::new,
            VesselDraft::end,
            List.of(
                    amount("volume", "gas and water together", "12 L", Kind.VOLUME, VesselDraft::volume),
                    pressure(
                                    "precharge",
                                    "gas pressure with the water side empty, at room temperature; not above the"
                                            + " tank's working pressure",
                                    "4.2 bar",
                                    VesselDraft::precharge)
                            .checkedAgainst("tank.working-pressure"),
                    amount(
                            "acceptance",
                            "share of the volume that water may fill",
                            "60 %",
                            Kind.RATIO,
                            VesselDraft::acceptance),
                    amount(
                                    "gas-time-constant",
                                    "how slowly the gas returns to room temperature; if left out, it"
                                            + " never leaves it",
                                    "30 s",
                                    Kind.DURATION,
                                    VesselDraft::gasTimeConstant)
                            .leftOutFreely(),
                    amount(
                                    "charged-at",
                                    "temperature of the gas when it was charged; that of the room if left out",
                                    "5 degC",
                                    Kind.TEMPERATURE,
                                    VesselDraft::chargedAt)
                            .leftOutFreely(),
                    amount(
                                    "temperature",
                                    "temperature of the air around it; that of the room if left out",
                                    "30 degC",
                                    Kind.TEMPERATURE,
                                    VesselDraft::temperature)
                            .leftOutFreely(),
                    amount(
                                    "height",
                                    "height above the tank's drain cock; none if left out",
                                    "1.8 m",
                                    Kind.LENGTH,
                                    VesselDraft::height)
                            .leftOutFreely(),
                    word(
                                    "condition",
                                    "isolated: cut off by a closed valve; waterlogged: the diaphragm has failed;"
                                            + " upstream-of-check: on the street's side of the supply valve; sound if"
                                            + " left out",
                                    "sound",
                                    Words.of(ExpansionVessel.Condition.values()),
                                    VesselDraft::condition)
                            .leftOutFreely(),
                    pressure(
                                    "rating",
                                    "highest pressure in use by its plate; unknown if left out",
                                    "10 bar",
                                    VesselDraft::rating)
                            .leftOutFreely(),
                    word(
                                    "mounting",
                                    "how it sits on its pipe; horizontal: it lies on its connection alone; unknown if"
                                            + " left out",
                                    "upright",
                                    Words.of(VesselBody.Mounting.values()),
                                    VesselDraft::mounting)
                            .leftOutFreely(),
                    amount(
                                    "empty-mass",
                                    "mass without water; unknown if left out",
                                    "4.5 kg",
                                    Kind.MASS,
                                    VesselDraft::emptyMass)
                            .leftOutFreely(),
                    amount(
                                    "length",
                                    "length from the connection to the far end; unknown if left out",
                                    "380 mm",
                                    Kind.LENGTH,
                                    VesselDraft::length)
                            .leftOutFreely()));

    private VesselSections() {}
}
