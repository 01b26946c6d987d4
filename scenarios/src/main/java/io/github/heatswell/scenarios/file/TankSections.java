package io.github.heatswell.scenarios.file;

import static io.github.heatswell.scenarios.file.Field.amount;
import static io.github.heatswell.scenarios.file.Field.pressure;
import static io.github.heatswell.scenarios.file.Field.word;

import io.github.heatswell.scenarios.quantity.Kind;
import io.github.heatswell.system.Material;
import io.github.heatswell.system.PipeRun;
import io.github.heatswell.system.Tank;
import java.util.List;
import java.util.Optional;

/** Tank and piping. */
final class TankSections {

    /** As many runs of pipe as a file may describe. */
    static final int MAX_PIPES = 200;

    static final Section<Tank.Builder, Tank> TANK = new Section<>(
            "tank",
            Tank::builder,
            Tank.Builder::build,
            List.of(
                    amount("volume", "water it holds", "230 L", Kind.VOLUME, Tank.Builder::volume),
                    word(
                            "material",
                            "material of the shell; rigid: it never stretches",
                            "steel",
                            Words.shellMaterials(),
                            (Tank.Builder tank, Optional<Material> material) ->
                                    material.ifPresentOrElse(tank::material, tank::rigid)),
                    amount(
                                    "diameter",
                                    "diameter of the shell; not with rigid",
                                    "480 mm",
                                    Kind.LENGTH,
                                    Tank.Builder::diameter)
                            .exceptWhere("material", "rigid", "does not apply to a rigid tank; remove it"),
                    amount(
                                    "wall",
                                    "wall thickness of the shell, at most a tenth of the diameter;" + " not with rigid",
                                    "2.2 mm",
                                    Kind.LENGTH,
                                    Tank.Builder::wall)
                            .exceptWhere("material", "rigid", "does not apply to a rigid tank; remove it")
                            .checkedAgainst("diameter"),
                    amount(
                            "standing-loss",
                            "heat loss to the room per degree of temperature difference",
                            "2.4 W/K",
                            Kind.CONDUCTANCE,
                            Tank.Builder::standingLoss),
                    pressure(
                                    "working-pressure",
                                    "maximum working pressure on the maker's plate; the test pressure is twice that",
                                    "10 bar",
                                    Tank.Builder::workingPressure)
                            .whenAssumed(Form.pressure(Tank.Builder::assumedWorkingPressure)),
                    new Field<>(
                                    "layers",
                                    "number of water layers, at most one per half litre; one (fully mixed) if left out",
                                    "12",
                                    Form.whole(Tank.Builder::layers))
                            .leftOutFreely(),
                    amount(
                                    "height",
                                    "height of the water, which sets the heat exchange between layers",
                                    "1300 mm",
                                    Kind.LENGTH,
                                    Tank.Builder::height)
                            .needed("with layers", Typical.Tank::layered)));

    static final Section<PipeRun.Builder, PipeRun> PIPE = new Section<>(
            "piping",
            PipeRun::builder,
            PipeRun.Builder::build,
            List.of(
                    word("material", "material of the pipe", "copper", Words.materials(), PipeRun.Builder::material),
                    amount(
                            "outside-diameter",
                            "outside diameter",
                            "22 mm",
                            Kind.LENGTH,
                            PipeRun.Builder::outsideDiameter),
                    amount("wall", "wall thickness; must leave a bore", "0.9 mm", Kind.LENGTH, PipeRun.Builder::wall)
                            .checkedAgainst("outside-diameter"),
                    amount("length", "length", "14 m", Kind.LENGTH, PipeRun.Builder::length)));

    private TankSections() {}
}
