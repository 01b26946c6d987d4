package io.github.heatswell.scenarios.file;

import io.github.heatswell.plant.ExpansionVessel;
import io.github.heatswell.plant.Heater;
import io.github.heatswell.plant.PipeRun;
import io.github.heatswell.plant.ReliefValve;
import io.github.heatswell.plant.Site;
import io.github.heatswell.plant.Start;
import io.github.heatswell.plant.Supply;
import io.github.heatswell.plant.Tank;
import io.github.heatswell.scenarios.quantity.Kind;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.Unit;
import java.util.List;
import java.util.Map;
import java.util.function.BiConsumer;
import java.util.stream.Stream;

/**
 * The format of a scenario file: every section and every key, in the order in which they are bound. A key whose typical
 * value depends on another stands behind it.
 */
final class Schema {

    private static final String WORKING_PRESSURE = "tank.working-pressure";

    static final Section<Header.Draft, Header> HEADER = new Section<>(
            "",
            Header.Draft::new,
            Header.Draft::end,
            List.of(
                    text("title", "heading of the results; the file's name if left out", 120, Header.Draft::title),
                    text("question", "what the run is to answer", 1000, Header.Draft::question),
                    text("expect", "what is expected to come out", 1000, Header.Draft::expectation)));

    static final Section<Site.Builder, Site> SITE = new Section<>(
            "site",
            Site::builder,
            Site.Builder::build,
            List.of(
                    amount(
                            "altitude",
                            "height above sea level, which fixes the air pressure",
                            "310 m",
                            Kind.LENGTH,
                            Site.Builder::altitude),
                    amount(
                            "room",
                            "temperature of the air around tank and vessel",
                            "17 degC",
                            Kind.TEMPERATURE,
                            Site.Builder::room)));

    static final Section<Supply.Builder, Supply> SUPPLY = new Section<>(
            "supply",
            Supply::builder,
            Supply.Builder::build,
            List.of(
                    word(
                            "arrangement",
                            "direct: water can go back to the street; check-valve: it cannot",
                            "check-valve",
                            Words.of(Supply.Arrangement.values()),
                            Supply.Builder::arrangement),
                    pressure("pressure", "static pressure of the cold feed", "4.2 bar", Supply.Builder::pressure)
                            .checkedAgainst(WORKING_PRESSURE),
                    amount(
                            "water",
                            "temperature of the cold feed",
                            "9 degC",
                            Kind.TEMPERATURE,
                            Supply.Builder::water)));

    static final Section<TankDraft, Tank> TANK = new Section<>(
            "tank",
            TankDraft::new,
            TankDraft::end,
            List.of(
                    amount("volume", "water it holds", "230 L", Kind.VOLUME, TankDraft::volume),
                    word(
                            "material",
                            "what the shell is made of; rigid: it never gives way",
                            "steel",
                            Words.shellMaterials(),
                            TankDraft::material),
                    amount(
                                    "diameter",
                                    "diameter of the shell; not with rigid",
                                    "480 mm",
                                    Kind.LENGTH,
                                    TankDraft::diameter)
                            .exceptWhere("material", "rigid", "has no place in a rigid tank; remove it"),
                    amount(
                                    "wall",
                                    "thickness of the shell, at most a tenth of the diameter; not with rigid",
                                    "2.2 mm",
                                    Kind.LENGTH,
                                    TankDraft::wall)
                            .exceptWhere("material", "rigid", "has no place in a rigid tank; remove it")
                            .checkedAgainst("diameter"),
                    amount(
                            "standing-loss",
                            "heat lost to the room for each degree",
                            "2.4 W/K",
                            Kind.CONDUCTANCE,
                            TankDraft::standingLoss),
                    pressure(
                            "working-pressure",
                            "highest pressure in use by the maker's plate; it is tested at twice" + " that",
                            "10 bar",
                            TankDraft::workingPressure)));

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
                            "what burner or element takes in while on",
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
                            .checkedAgainst("set-point")));

    static final Section<PipeRun.Builder, PipeRun> PIPE = new Section<>(
            "piping",
            PipeRun::builder,
            PipeRun.Builder::build,
            List.of(
                    word(
                            "material",
                            "what the pipe is made of",
                            "copper",
                            Words.materials(),
                            PipeRun.Builder::material),
                    amount(
                            "outside-diameter",
                            "outside diameter",
                            "22 mm",
                            Kind.LENGTH,
                            PipeRun.Builder::outsideDiameter),
                    amount(
                                    "wall",
                                    "thickness of the wall; must leave a bore",
                                    "0.9 mm",
                                    Kind.LENGTH,
                                    PipeRun.Builder::wall)
                            .checkedAgainst("outside-diameter"),
                    amount("length", "length", "14 m", Kind.LENGTH, PipeRun.Builder::length)));

    static final Section<ReliefValve.Builder, ReliefValve> RELIEF = new Section<>(
            "relief",
            ReliefValve::builder,
            ReliefValve.Builder::build,
            List.of(
                    new Field<>(
                            "name",
                            "what results call it, different for every valve",
                            "expansion valve",
                            Forms.text(60, ReliefValve.Builder::name)),
                    pressure("opens", "set pressure", "7 bar", ReliefValve.Builder::opens),
                    pressure(
                                    "full-lift",
                                    "pressure of full lift, not below opens",
                                    "7.7 bar",
                                    ReliefValve.Builder::fullLift)
                            .checkedAgainst("opens"),
                    pressure(
                                    "reseats",
                                    "pressure at which it closes again, below opens",
                                    "5.6 bar",
                                    ReliefValve.Builder::reseats)
                            .checkedAgainst("opens"),
                    amount("full-flow", "flow at full lift", "20 L/min", Kind.FLOW, ReliefValve.Builder::fullFlow),
                    word(
                            "character",
                            "modulating: lift grows with pressure; snap: full lift at once",
                            "modulating",
                            Words.of(ReliefValve.Character.values()),
                            ReliefValve.Builder::character)));

    static final Section<ExpansionVessel.Builder, ExpansionVessel> VESSEL = new Section<>(
            "vessel",
            ExpansionVessel::builder,
            ExpansionVessel.Builder::build,
            List.of(
                    amount("volume", "gas and water together", "12 L", Kind.VOLUME, ExpansionVessel.Builder::volume),
                    pressure(
                                    "precharge",
                                    "gas pressure with the water side empty, at room temperature; not above the"
                                            + " tank's working pressure",
                                    "4.2 bar",
                                    ExpansionVessel.Builder::precharge)
                            .checkedAgainst(WORKING_PRESSURE),
                    amount(
                            "acceptance",
                            "share of the volume that water may fill",
                            "60 %",
                            Kind.RATIO,
                            ExpansionVessel.Builder::acceptance),
                    amount(
                                    "gas-time-constant",
                                    "how slowly the gas returns to room temperature; if left out, it"
                                            + " never leaves it",
                                    "30 s",
                                    Kind.DURATION,
                                    ExpansionVessel.Builder::gasTimeConstant)
                            .leftOutFreely()));

    static final Section<Start.Builder, Start> START = new Section<>(
            "start",
            Start::builder,
            Start.Builder::build,
            List.of(
                    amount(
                                    "water",
                                    "temperature of the water in the tank; that of the supply if left out",
                                    "40 degC",
                                    Kind.TEMPERATURE,
                                    Start.Builder::water)
                            .leftOutFreely(),
                    pressure(
                                    "pressure",
                                    "pressure at the start; that of the supply if left out",
                                    "4.2 bar",
                                    Start.Builder::pressure)
                            .leftOutFreely()
                            .checkedAgainst("supply.pressure", "supply.arrangement", WORKING_PRESSURE)));

    static final Section<RunDraft, RunDraft.Run> RUN = new Section<>(
            "run",
            RunDraft::new,
            RunDraft::end,
            List.of(
                    amount("duration", "how long to simulate", "4 h", Kind.DURATION, RunDraft::duration),
                    amount(
                                    "sample",
                                    "distance of the samples of the trace; at most 20 million",
                                    "1 min",
                                    Kind.DURATION,
                                    RunDraft::sample)
                            .checkedAgainst("duration")));

    private static final List<Section<?, ?>> SECTIONS =
            List.of(SITE, SUPPLY, TANK, HEATER, PIPE, RELIEF, VESSEL, START, RUN);

    private Schema() {}

    /** All sections but the texts at the top. */
    static List<Section<?, ?>> sections() {
        return SECTIONS;
    }

    /** Every key at the top of a file. */
    static List<String> topKeys() {
        return Stream.concat(HEADER.keys().stream(), SECTIONS.stream().map(Section::name))
                .toList();
    }

    private static <B> Field<B> text(String key, String meaning, int longest, BiConsumer<B, String> setter) {
        return new Field<>(key, meaning, "My house", Forms.text(longest, setter)).leftOutFreely();
    }

    private static <B> Field<B> pressure(String key, String meaning, String example, BiConsumer<B, Pressure> setter) {
        return new Field<>(key, meaning, example, Forms.pressure(setter));
    }

    private static <B, U extends Unit> Field<B> amount(
            String key, String meaning, String example, Kind<U> kind, Forms.AmountSetter<B, U> setter) {
        return new Field<>(key, meaning, example, Forms.amount(kind, setter));
    }

    private static <B, V> Field<B> word(
            String key, String meaning, String example, Map<String, V> words, BiConsumer<B, V> setter) {
        return new Field<>(key, meaning, example, Forms.word(words, setter));
    }
}
