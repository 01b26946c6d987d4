package io.github.heatswell.scenarios.lesson;

import io.github.heatswell.finding.Measure.Kind;
import io.github.heatswell.finding.Statement;
import io.github.heatswell.result.EventKind;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.scenarios.catalogue.Catalogue;
import io.github.heatswell.units.TemperatureUnit;
import java.util.ArrayList;
import java.util.List;

/** What the walls of tank and pipes do, and how the water is used. */
final class HouseLessons {

    private static final double WARM = TemperatureUnit.CELSIUS.toSi(30);

    private HouseLessons() {}

    static Lesson walls() {
        return Lesson.builder("steel-copper-plastic", "Steel, copper and plastic: nothing is rigid")
                .question("Water can hardly be squeezed. Why does the pressure not shoot up at once?")
                .prediction(
                        "A steel tank is compared with one that never gives way. How does its rise compare?",
                        List.of("The same: steel is rigid.", "About a quarter.", "Next to nothing."),
                        run -> {
                            double part = rise(run.result(1)) / rise(run.result(0));
                            return part > 0.7 ? 0 : part > 0.1 ? 1 : 2;
                        })
                .compare(
                        warmed(
                                "a tank that never gives way",
                                "tank.diameter=none",
                                "tank.wall=none",
                                "tank.material=rigid"),
                        warmed("a steel tank"),
                        LessonCase.bundled("a house with copper pipes", "orchard-lodge"),
                        LessonCase.bundled("the house with plastic pipes", "orchard-lodge-pex"))
                .notice(run -> wallsNotice(run))
                .why(
                        "A steel tank looks stiff, but it is wide and thin. Pressure stretches it, and it then holds more"
                                + " than twice as much extra water as squeezing alone would make room for.",
                        "Warmth makes the steel grow as well. Stretching alone leaves about a third of the rise of a rigid"
                                + " tank, both together about a quarter. Rigid means that the walls never give way.",
                        "Copper pipes are small and stiff and hardly matter. Plastic pipes give way far more. They slow"
                                + " the rise, but cannot take up the growth of a whole tank.",
                        "A figure for the pressure of trapped water from a table of pure water is therefore far too high"
                                + " for a real house.")
                .formula(Formula.of(
                        "C = D / (E e) (5/4 - nu)",
                        Sources.TANK_WALL,
                        "C",
                        "share by which the tank grows per unit of pressure, in 1/Pa",
                        "D",
                        "diameter of the tank, in m",
                        "E",
                        "stiffness of the metal, in Pa",
                        "e",
                        "thickness of the wall, in m",
                        "nu",
                        "how much the metal narrows when it is pulled; 0.3 for steel"))
                .tryIt(TryIt.of(
                        "orchard-lodge-pex",
                        "Even with twice the length of plastic pipe the relief valve opens in the end.",
                        Look::opened,
                        "piping[0].length=80 m"))
                .check(
                        "Why is the rise in a steel tank smaller than in a rigid one?",
                        "The pressure stretches the steel, and warmth makes it grow. Both give the water room.")
                .sources(Sources.WATER, Sources.TANK_WALL, Sources.PIPE_WALL, Sources.HOUSES)
                .caution(
                        "The first two tanks have no relief valve, to show the bare rise. Never run a heater without one.")
                .caution(Cautions.NEVER_PLUG)
                .expect("The rigid tank climbs as the properties of water say.", run -> {
                    double exact = WaterFacts.rigidAbsolute(
                            Look.cold(run.result(0)), absoluteSupply(run.result(0)), Look.setPoint(run.result(0)));
                    return Math.abs(warmAbsolute(run.result(0)) / exact - 1) < 2e-3;
                })
                .expect("The steel tank's rise is a fifth to two fifths of that.", run -> {
                    double part = rise(run.result(1)) / rise(run.result(0));
                    return part > 0.2 && part < 0.4;
                })
                .expect(
                        "With plastic pipes the valve opens later.",
                        run -> opening(run.result(3)) > opening(run.result(2)))
                .expect(
                        "Plastic gives way more than fifty times as much as copper.",
                        run -> softness(run.result(3)) > 50 * softness(run.result(2)))
                .reading("Rise in the rigid tank", Kind.PRESSURE_DIFFERENCE, run -> rise(run.result(0)))
                .reading("Rise in the steel tank", Kind.PRESSURE_DIFFERENCE, run -> rise(run.result(1)))
                .reading("Time until the valve opens, copper", Kind.TIME, run -> opening(run.result(2)))
                .reading("Time until the valve opens, plastic", Kind.TIME, run -> opening(run.result(3)))
                .build();
    }

    static Lesson partialDraws() {
        return Lesson.builder("part-of-a-tank", "When only part of the tank is drawn")
                .question("Does a shower bring as much drip as a heat-up from cold?")
                .prediction(
                        "Hot water is drawn and the heater makes it good. Which tank grows more: one with cold water"
                                + " lying below hot, or one where both have mixed?",
                        List.of("Cold below hot.", "The mixed one.", "Both the same, it is the same heat."),
                        run -> {
                            double ratio = Look.relieved(run.result(1)) / Look.relieved(run.result(0));
                            return ratio < 0.95 ? 0 : ratio > 1.05 ? 1 : 2;
                        })
                .compare(drawn("cold below hot", "weir-house-layers"), drawn("all mixed", "weir-house-mixed"))
                .notice(run -> List.of(
                        Statement.of(
                                "{} of {} were drawn. The cold part grows by {} as it is heated from {} to {}.",
                                Look.volume(run.result(0).totals().drawn()),
                                Look.volume(tank(run.result(0))),
                                Look.volume(coldGrowth(run.result(0))),
                                Look.temperature(Look.cold(run.result(0))),
                                Look.temperature(Look.setPoint(run.result(0)))),
                        Statement.of(
                                "Mixed, the whole tank stands at {} and grows by {} up to the same temperature.",
                                Look.temperature(mixed(run.result(1))),
                                Look.volume(mixedGrowth(run.result(1)))),
                        Statement.of(
                                "The valve lets out {} of the layered tank and {} of the mixed one.",
                                Look.volume(Look.relieved(run.result(0))),
                                Look.volume(Look.relieved(run.result(1))))))
                .why(
                        "Cold water comes in at the bottom of a tank and, being heavier, stays there. The tank is then"
                                + " layered: hot above, cold below.",
                        "The heat is nearly the same in both tanks. But lukewarm water grows more for the same heat than"
                                + " cold water does.",
                        "Real tanks lie between the two. So a drip after a shower is smaller than after a cold start, and"
                                + " depends on how well the tank keeps its layers.")
                .formula(Formula.of(
                        "V_growth = V (rho_before / rho_hot - 1)",
                        Sources.WATER,
                        "V_growth",
                        "room the heated water wants, in litres",
                        "V",
                        "water that is heated: the cold part, or the whole mixed tank",
                        "rho_before",
                        "density before the heating, in kg/m3",
                        "rho_hot",
                        "density when hot, in kg/m3"))
                .tryIt(TryIt.of(
                        "weir-house-layers",
                        "A draw of a third of the size lets out less than half as much.",
                        run -> Look.opened(run)
                                && Look.relieved(run)
                                        < 0.5
                                                * Look.relieved(Catalogue.read("weir-house-layers")
                                                        .simulation()
                                                        .run()),
                        "draws=[{ at: 07:00, volume: 20 L, flow: 8 L/min }]"))
                .check(
                        "Why does the mixed tank grow more for the same heat?",
                        "Its water starts lukewarm, and lukewarm water grows more per degree than cold water.")
                .sources(Sources.WATER, Sources.HOUSES)
                .caution("The water drawn scalds. Do not try this without a mixing tap.")
                .caution(Cautions.NEVER_PLUG)
                .expect(
                        "The mixed tank grows more.",
                        run -> mixedGrowth(run.result(1)) > 1.2 * coldGrowth(run.result(0)))
                .expect(
                        "More is let out of the mixed tank.",
                        run -> Look.relieved(run.result(1)) > Look.relieved(run.result(0)))
                .expect(
                        "Less is let out than the water grows.",
                        run -> Look.relieved(run.result(0)) < coldGrowth(run.result(0)))
                .reading("Growth of the cold part", Kind.VOLUME, run -> coldGrowth(run.result(0)))
                .reading("Growth of the mixed tank", Kind.VOLUME, run -> mixedGrowth(run.result(1)))
                .reading("Let out, layered", Kind.VOLUME, run -> Look.relieved(run.result(0)))
                .reading("Let out, mixed", Kind.VOLUME, run -> Look.relieved(run.result(1)))
                .build();
    }

    private static List<Statement> wallsNotice(LessonRun run) {
        RunResult rigid = run.result(0);
        double start = absoluteSupply(rigid);
        return List.of(
                Statement.of(
                        "Warmed from {} to {}, the rigid tank climbs by {}, the steel tank by {}.",
                        Look.temperature(Look.cold(rigid)),
                        Look.temperature(Look.setPoint(rigid)),
                        Look.difference(rise(rigid)),
                        Look.difference(rise(run.result(1)))),
                Statement.of(
                        "Stretching alone would leave the steel tank {} of the rise. As warm steel grows too, it is {}.",
                        Look.share(stretchedPart(run.result(1))),
                        Look.share(rise(run.result(1)) / rise(rigid))),
                Statement.of(
                        "Counted from empty space, a rigid tank would go from {} to {}, and at {} to {}.",
                        Look.difference(start),
                        Look.difference(warmAbsolute(rigid)),
                        Look.temperature(WARM),
                        Look.difference(WaterFacts.rigidAbsolute(Look.cold(rigid), start, WARM))),
                Statement.of(
                        "With copper pipes the valve opens after {}, with plastic ones after {}.",
                        Look.time(opening(run.result(2))),
                        Look.time(opening(run.result(3)))),
                Statement.of("Litre for litre the plastic pipe gives way "
                        + Look.number(softness(run.result(3)) / softness(run.result(2)))
                        + " times as much as the copper."));
    }

    private static LessonCase warmed(String label, String... shell) {
        List<String> changes = new ArrayList<>(List.of(shell));
        changes.addAll(List.of(
                "piping=[]",
                "supply.water=10 degC",
                "supply.pressure=4.5 bar abs",
                "tank.working-pressure=12.5 bar",
                "heater.set-point=15 degC",
                "heater.differential=2 K",
                "run.duration=15 min",
                "run.sample=10 s"));
        return LessonCase.bundled(label, "quarry-row", changes.toArray(String[]::new));
    }

    private static LessonCase drawn(String label, String name) {
        return LessonCase.bundled(
                label,
                name,
                "tank.volume=190 L",
                "supply.water=12 degC",
                "start.water=60 degC",
                "heater.differential=5 K");
    }

    private static double absoluteSupply(RunResult run) {
        return run.system().supplyAtStart().absolute(Look.atmosphere(run));
    }

    /** The pressure when the heater first stops (Pa absolute). */
    private static double warmAbsolute(RunResult run) {
        return Look.pressureAt(run, EventKind.HEATER_OFF) + Look.atmosphere(run);
    }

    private static double rise(RunResult run) {
        return warmAbsolute(run) - absoluteSupply(run);
    }

    /** The part of a rigid tank's rise that stretching alone leaves, kappa / (kappa + C). */
    private static double stretchedPart(RunResult run) {
        double water = WaterFacts.compressibility(Look.cold(run));
        return water / (water + run.system().tank().shell().compliance());
    }

    private static double opening(RunResult run) {
        return Look.time(run, EventKind.RELIEF_OPENED);
    }

    private static double softness(RunResult run) {
        return run.system().piping().get(0).compliance();
    }

    private static double tank(RunResult run) {
        return run.system().tank().volume();
    }

    private static double coldGrowth(RunResult run) {
        return run.totals().drawn() * WaterFacts.growth(Look.cold(run), Look.setPoint(run));
    }

    private static double mixed(RunResult run) {
        double part = run.totals().drawn() / tank(run);
        return part * Look.cold(run) + (1 - part) * Look.setPoint(run);
    }

    private static double mixedGrowth(RunResult run) {
        return tank(run) * WaterFacts.growth(mixed(run), Look.setPoint(run));
    }
}
