package io.github.heatswell.scenarios.file;

import static io.github.heatswell.scenarios.file.Field.amount;
import static io.github.heatswell.scenarios.file.Field.pressure;
import static io.github.heatswell.scenarios.file.Field.word;

import io.github.heatswell.scenarios.quantity.Kind;
import io.github.heatswell.system.Element;
import io.github.heatswell.system.Heater;
import io.github.heatswell.system.Material;
import io.github.heatswell.system.NamedValue;
import io.github.heatswell.system.PipeRun;
import io.github.heatswell.system.Tank;
import io.github.heatswell.units.RatioUnit;
import io.github.heatswell.units.TemperatureUnit;
import java.util.List;
import java.util.Optional;

/** Tank, heater and piping. */
final class TankSections {

    /** As many runs of pipe as a file may describe. */
    static final int MAX_PIPES = 200;

    static final Section<Tank.Builder, Tank> TANK = new Section<>(
            "tank",
            Tank::builder,
            Tank.Builder::build,
            () -> List.of(
                    amount(NamedValue.TANK_VOLUME.key(), "water it holds", "230 L", Kind.VOLUME, Tank.Builder::volume),
                    word(
                            NamedValue.MATERIAL.key(),
                            "material of the shell; rigid: it never stretches",
                            "steel",
                            Words.shellMaterials(),
                            (Tank.Builder tank, Optional<Material> material) ->
                                    material.ifPresentOrElse(tank::material, tank::rigid)),
                    amount(
                                    "compliance",
                                    "how much the water space grows with pressure, measured or stated by the manufacturer; if left"
                                            + " out, it follows from diameter and wall",
                                    "28 mL/bar",
                                    Kind.COMPLIANCE,
                                    Tank.Builder::compliance)
                            .leftOutFreely()
                            .exceptWhere("material", "rigid", "does not apply to a rigid tank; remove it")
                            .checkedAgainst("working-pressure"),
                    amount(
                                    "diameter",
                                    "diameter of the shell; not with rigid or compliance",
                                    "480 mm",
                                    Kind.LENGTH,
                                    Tank.Builder::diameter)
                            .typically(Typical.of(
                                            "from the volume: height three times the diameter",
                                            "usual proportions of a storage tank")
                                    .from(Typical.Tank::diameter, "volume"))
                            .exceptWhere("material", "rigid", "does not apply to a rigid tank; remove it")
                            .exceptBeside("compliance", "does not apply to a tank of given compliance; remove it"),
                    amount(
                                    "wall",
                                    "wall thickness of the shell, at most a tenth of the diameter;"
                                            + " not with rigid or compliance",
                                    "2.2 mm",
                                    Kind.LENGTH,
                                    Tank.Builder::wall)
                            .typically(Typical.of(
                                            "diameter over 200 (steel), 350 (stainless-steel) or 250 (copper)",
                                            "usual sheet thickness for 6 to 10 bar; no usual value for other materials")
                                    .from(Typical.Tank::wall, "diameter", "material"))
                            .exceptWhere("material", "rigid", "does not apply to a rigid tank; remove it")
                            .exceptBeside("compliance", "does not apply to a tank of given compliance; remove it")
                            .checkedAgainst("diameter"),
                    new Field<>(
                                    "heads",
                                    "shape of both ends: flat, torispherical, ellipsoidal or hemispherical; or the depth of one as a"
                                            + " share of the tank's radius; a plain cylinder if left out; not with rigid or"
                                            + " compliance",
                                    "50 %",
                                    Form.<Tank.Builder, RatioUnit>amount(Kind.RATIO, Tank.Builder::heads)
                                            .or(Words.of(Tank.Heads.values()), Tank.Builder::heads))
                            .leftOutFreely()
                            .exceptWhere("material", "rigid", "does not apply to a rigid tank; remove it")
                            .exceptBeside("compliance", "does not apply to a tank of given compliance; remove it")
                            .checkedAgainst("volume", "diameter"),
                    amount(
                                    "flue",
                                    "diameter of a gas heater's flue through the tank, at most half of the tank's; none if left"
                                            + " out; not with rigid or compliance",
                                    "90 mm",
                                    Kind.LENGTH,
                                    Tank.Builder::flue)
                            .leftOutFreely()
                            .exceptWhere("material", "rigid", "does not apply to a rigid tank; remove it")
                            .exceptBeside("compliance", "does not apply to a tank of given compliance; remove it")
                            .checkedAgainst("diameter", NamedValue.ENERGY.field()),
                    amount(
                                    "expansion",
                                    "linear expansion of the shell with heat; that of the material if left out: 12 ppm/K for"
                                            + " steel, 17 ppm/K for stainless steel and copper",
                                    "12 ppm/K",
                                    Kind.EXPANSION,
                                    Tank.Builder::expansion)
                            .leftOutFreely()
                            .exceptWhere("material", "rigid", "does not apply to a rigid tank; remove it"),
                    amount(
                                    "standing-loss",
                                    "heat loss to the room, and up the flue of a gas heater, per degree above the room",
                                    "2.4 W/K",
                                    Kind.CONDUCTANCE,
                                    Tank.Builder::standingLoss)
                            .typically(Typical.of(
                                            "6.5 W/K (gas), 2 W/K (electric) at 200 L, proportional to the surface",
                                            "gas: a flue through the tank; electric: foamed insulation")
                                    .from(Typical.Tank::standingLoss, "volume", Typical.Tank.ENERGY)),
                    pressure(
                                    NamedValue.WORKING_PRESSURE.key(),
                                    "maximum working pressure on the rating plate; the test pressure is twice that",
                                    "10 bar",
                                    Tank.Builder::workingPressure)
                            .typically(Typical.of(
                                            "10 bar; 150 psi where the volume is in gallons",
                                            "a common marking of the country; read the plate")
                                    .from(Typical.Tank::workingPressure, "volume"))
                            .whenAssumed(Form.pressure(Tank.Builder::assumedWorkingPressure)),
                    amount(
                                    "air",
                                    "air under the top of the tank at the cold fill, at the supply's pressure and temperature; none if"
                                            + " left out",
                                    "0.2 L",
                                    Kind.VOLUME,
                                    Tank.Builder::air)
                            .leftOutFreely()
                            .checkedAgainst("volume", "layers", "supply.pressure"),
                    word(
                                    "never-fails",
                                    "yes: a textbook tank, which no pressure harms, so that a run goes on beyond the test"
                                            + " pressure; no real heater survives that; no if left out",
                                    "no",
                                    Words.yesOrNo(),
                                    Tank.Builder::neverFails)
                            .leftOutFreely(),
                    new Field<>(
                                    "layers",
                                    "number of water layers, of at least half a litre and 0.05 L per kilowatt of heat; one (fully mixed)"
                                            + " if left out",
                                    "12",
                                    Form.whole(Tank.Builder::layers))
                            .leftOutFreely(),
                    amount(
                                    "height",
                                    "height of the water, which sets the heat exchange between layers",
                                    "1300 mm",
                                    Kind.LENGTH,
                                    Tank.Builder::height)
                            .typically(Typical.of(
                                            "volume divided by cross-section; only with layers",
                                            "water fills the shell; no usual value for a rigid tank or beside compliance")
                                    .from(Typical.Tank::height, "volume", "diameter", "layers"))
                            .needed("with layers", Typical.Tank::layered),
                    amount(
                                    "inlet-mixing",
                                    "share of the tank, from the bottom up, into which the jet of cold water spreads; more than one"
                                            + " of its layers; only the lowest layer if left out",
                                    "20 %",
                                    Kind.RATIO,
                                    Tank.Builder::inletMixing)
                            .leftOutFreely()
                            .checkedAgainst("layers")));

    static final Section<PipeRun.Builder, PipeRun> PIPE = new Section<>(
            "piping",
            PipeRun::builder,
            PipeRun.Builder::build,
            () -> List.of(
                    word("material", "material of the pipe", "copper", Words.materials(), PipeRun.Builder::material),
                    amount(
                            "outside-diameter",
                            "outside diameter",
                            "22 mm",
                            Kind.LENGTH,
                            PipeRun.Builder::outsideDiameter),
                    amount("wall", "wall thickness; must leave a bore", "0.9 mm", Kind.LENGTH, PipeRun.Builder::wall)
                            .checkedAgainst("outside-diameter"),
                    amount("length", "length", "14 m", Kind.LENGTH, PipeRun.Builder::length),
                    word(
                                    "carries",
                                    "cold: the water of the cold feed, which keeps its temperature; hot: a hot branch, filled from the"
                                            + " tank by each draw, which cools to the room; all hot runs together are the way to the"
                                            + " open tap; loop: flow and return of the circulation; cold if left out",
                                    "hot",
                                    Words.of(PipeRun.Carries.values()),
                                    PipeRun.Builder::carries)
                            .leftOutFreely(),
                    amount(
                                    "insulation",
                                    "thickness of the insulation around a hot branch or a loop, which sets its heat loss; bare if left"
                                            + " out; not for cold pipe",
                                    "13 mm",
                                    Kind.LENGTH,
                                    PipeRun.Builder::insulation)
                            .leftOutFreely()
                            .checkedAgainst("carries"),
                    amount(
                                    "stiffness-at",
                                    "temperature at which the stiffness of plastic counts, such as 60 degC for hot pipe; 23 degC if"
                                            + " left out; not for metal",
                                    "60 degC",
                                    Kind.TEMPERATURE,
                                    PipeRun.Builder::stiffnessAt)
                            .leftOutFreely()
                            .checkedAgainst("material"),
                    amount(
                                    "loaded-for",
                                    "how long a rise of pressure loads plastic, which creeps meanwhile; as long as a short test, 10 s,"
                                            + " if left out; not for metal",
                                    "1 h",
                                    Kind.DURATION,
                                    PipeRun.Builder::loadedFor)
                            .leftOutFreely()
                            .checkedAgainst("material")));

    private static final Section<Element.Builder, Element> UPPER = new Section<>(
            "heater.upper",
            Element::builder,
            Element.Builder::build,
            () -> List.of(
                    amount("input", "power while on", "2 kW", Kind.POWER, Element.Builder::input),
                    amount(
                            "height",
                            "height of element and thermostat, as a share of the tank's height; above the lower one",
                            "70 %",
                            Kind.RATIO,
                            Element.Builder::height),
                    amount(
                            NamedValue.UPPER_SET_POINT.key(),
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
                            .typically("5 K", "a thermostat on the tank")
                            .checkedAgainst("set-point")));

    static final Section<Heater.Builder, Heater> HEATER = new Section<>(
            "heater",
            Heater::builder,
            Heater.Builder::build,
            () -> List.of(
                    word(
                            NamedValue.ENERGY.key(),
                            "where the heat comes from; electric also for a coil that a boiler feeds, with the coil's power as input",
                            "gas",
                            Words.of(Heater.Energy.values()),
                            Heater.Builder::energy),
                    amount(
                            NamedValue.HEATER_INPUT.key(),
                            "power input of burner or element while on",
                            "11.2 kW",
                            Kind.POWER,
                            Heater.Builder::input),
                    amount(
                                    NamedValue.RECOVERY_EFFICIENCY.key(),
                                    "share of the input that reaches the water",
                                    "78 %",
                                    Kind.RATIO,
                                    Heater.Builder::recoveryEfficiency)
                            .typically(Typical.of(
                                            "78 % (gas), 98 % (electric)",
                                            "gas: a burner under the tank; electric: an immersed element")
                                    .from(
                                            given -> Optional.of(
                                                    given.get("energy").equalsIgnoreCase("gas") ? "78 %" : "98 %"),
                                            "energy")),
                    amount(
                            NamedValue.SET_POINT.key(),
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
                            .typically("5 K", "a thermostat on the tank")
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
                    new Field<>(
                                    NamedValue.CUT_OUT.key(),
                                    "temperature of the hottest water at which the cut-out switches everything off"
                                            + " until somebody resets it; none if somebody looked and there is none; if"
                                            + " left out, the run has none",
                                    "85 degC",
                                    Form.<Heater.Builder, TemperatureUnit>amount(
                                                    Kind.TEMPERATURE, Heater.Builder::cutOut)
                                            .orNone(Heater.Builder::withoutCutOut))
                            .leftOutFreely()
                            .checkedAgainst("set-point", "upper"),
                    amount(
                                    NamedValue.MIXED_TO.key(),
                                    "temperature that a mixing valve after the tank delivers to the taps; if left"
                                            + " out, there is none",
                                    "48 degC",
                                    Kind.TEMPERATURE,
                                    Heater.Builder::mixedTo)
                            .leftOutFreely()));

    private TankSections() {}
}
