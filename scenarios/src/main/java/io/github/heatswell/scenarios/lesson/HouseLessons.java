package io.github.heatswell.scenarios.lesson;

import io.github.heatswell.assessment.Measure.Kind;
import io.github.heatswell.assessment.Statement;
import io.github.heatswell.result.Channel;
import io.github.heatswell.result.Event;
import io.github.heatswell.result.EventKind;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.scenarios.lesson.Prediction.Option;
import io.github.heatswell.units.TemperatureUnit;
import java.util.ArrayList;
import java.util.List;

/** What the walls of tank and pipes do, and how the water is used. */
final class HouseLessons {

    private static final double HOUR = 3600;
    private static final double TEN_BAR = 10e5;
    private static final double WARM = TemperatureUnit.CELSIUS.toSi(30);

    private HouseLessons() {}

    static Lesson walls() {
        return Lesson.builder("steel-copper-plastic", "Steel, copper and plastic")
                .question("Water can hardly be squeezed. How fast does the pressure climb in a real tank?")
                .prediction(
                        "A steel tank is compared with one that never gives way. How does its rise compare?",
                        run -> {
                            double part = rise(run.result(1)) / rise(run.result(0));
                            return part > 0.7 ? 0 : part > 0.1 ? 2 : 1;
                        },
                        Option.wrong(
                                "The same: steel is rigid.",
                                Claim.of(
                                        "Steel looks rigid, but the wall of a tank is thin and wide. Litre for litre it gives way"
                                                + " more than the water does.",
                                        run -> stretchedPart(run.result(1)) < 0.5)),
                        Option.wrong(
                                "Next to nothing.",
                                Claim.of(
                                        "That would take something as soft as plastic or gas. Steel gives way, but not so far.",
                                        run -> rise(run.result(1)) > 0.1 * rise(run.result(0)))),
                        Option.right("About a quarter."))
                .compare(
                        warmed(
                                "a tank that never gives way",
                                "tank.diameter=none",
                                "tank.wall=none",
                                "tank.material=rigid"),
                        warmed("a steel tank"),
                        LessonCase.bundled("a house with copper pipes", "orchard-lodge"),
                        LessonCase.bundled("the house with plastic pipes", "orchard-lodge-pex"))
                .notice(
                        Claim.computed(
                                run -> Statement.of(
                                        "Warmed from {} to {}, the rigid tank climbs by {}, the steel tank by {}.",
                                        Look.temperature(Look.cold(run.result(0))),
                                        Look.temperature(Look.setPoint(run.result(0))),
                                        Look.difference(rise(run.result(0))),
                                        Look.difference(rise(run.result(1)))),
                                run -> rise(run.result(1)) < rise(run.result(0))),
                        Claim.computed(
                                run -> Statement.of(
                                        "Stretching alone would leave the steel tank {} of the rise. As warm steel grows too, it"
                                                + " is {}.",
                                        Look.share(stretchedPart(run.result(1))),
                                        Look.share(rise(run.result(1)) / rise(run.result(0)))),
                                run -> rise(run.result(1)) / rise(run.result(0)) < stretchedPart(run.result(1))),
                        Claim.computed(
                                run -> Statement.of(
                                        "Counted from empty space, a rigid tank would go from {} to {}, and at {} to {}.",
                                        Look.difference(absoluteSupply(run.result(0))),
                                        Look.difference(warmAbsolute(run.result(0))),
                                        Look.temperature(WARM),
                                        Look.difference(WaterFacts.rigidAbsolute(
                                                Look.cold(run.result(0)), absoluteSupply(run.result(0)), WARM))),
                                run -> warmAbsolute(run.result(0)) > absoluteSupply(run.result(0))),
                        Claim.computed(
                                run -> Statement.of(
                                        "With copper pipes the valve opens after {}, with plastic ones after {}.",
                                        Look.time(opening(run.result(2))),
                                        Look.time(opening(run.result(3)))),
                                run -> opening(run.result(3)) > opening(run.result(2))),
                        Claim.computed(
                                run -> Statement.of("Litre for litre the plastic pipe gives way "
                                        + Look.whole(softness(run.result(3)) / softness(run.result(2)))
                                        + " times as much as the copper."),
                                run -> softness(run.result(3)) > 2 * softness(run.result(2))))
                .why(
                        Claim.of(
                                "A steel tank looks stiff, but it is wide and thin. Pressure stretches it, and it then holds twice"
                                        + " as much extra water as squeezing alone would make room for.",
                                run -> Math.abs(1 / stretchedPart(run.result(1)) - 1 - 2) < 0.15),
                        Claim.of(
                                "Warmth makes the steel grow as well. Stretching alone leaves about a third of the rise of a rigid"
                                        + " tank, both together about a quarter. Rigid means that the walls never give way.",
                                run -> Math.abs(stretchedPart(run.result(1)) - 1.0 / 3) < 0.04
                                        && Math.abs(rise(run.result(1)) / rise(run.result(0)) - 0.25) < 0.04),
                        Claim.of(
                                "Copper pipes are small and stiff and hardly matter. Plastic pipes give way far more. They slow"
                                        + " the rise, but cannot take up the growth of a whole tank.",
                                run -> Math.abs(opening(Look.with(run, 2, "piping=[]")) / opening(run.result(2)) - 1)
                                                < 0.02
                                        && opening(run.result(3)) > 1.05 * opening(run.result(2))
                                        && Look.opened(run.result(3))),
                        Claim.of(
                                "A figure for the pressure of trapped water from a table of pure water is therefore far too high"
                                        + " for a real house.",
                                run -> rise(run.result(0)) > 3 * rise(run.result(1))))
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
                        3,
                        "Even with twice the length of plastic pipe the relief valve opens in the end.",
                        Look::opened,
                        "piping[0].length=80 m"))
                .check(
                        "Why is the rise in a steel tank smaller than in a rigid one?",
                        Claim.of(
                                "The pressure stretches the steel, and warmth makes it grow. Both give the water room.",
                                run -> stretchedPart(run.result(1)) < 1
                                        && rise(run.result(1)) / rise(run.result(0)) < stretchedPart(run.result(1))))
                .sources(Sources.WATER, Sources.TANK_WALL, Sources.PIPE_WALL, Sources.HOUSES)
                .caution(
                        "The first two tanks have no relief valve, to show the bare rise. Never run a heater without one.")
                .caution(Cautions.NEVER_PLUG)
                .expect("The rigid tank climbs as the properties of water say.", run -> {
                    double exact = WaterFacts.rigidAbsolute(
                            Look.cold(run.result(0)), absoluteSupply(run.result(0)), Look.setPoint(run.result(0)));
                    return Math.abs(warmAbsolute(run.result(0)) / exact - 1) < 2e-3;
                })
                .expect(
                        "Plastic gives way more than fifty times as much as copper.",
                        run -> softness(run.result(3)) > 50 * softness(run.result(2)))
                .reading(
                        "Time until the gauge passes 10 bar (145 psi), the tank that never gives way",
                        Kind.TIME,
                        run -> Look.timeWhen(run.result(0), Channel.GAUGE_READING, TEN_BAR))
                .reading(
                        "Gauge after five minutes, the steel tank",
                        Kind.GAUGE_PRESSURE,
                        run -> Look.at(run.result(1), Channel.GAUGE_READING, 300))
                .reading(
                        "Gauge after two hours, copper pipes",
                        Kind.GAUGE_PRESSURE,
                        run -> Look.at(run.result(2), Channel.GAUGE_READING, 2 * HOUR))
                .build();
    }

    static Lesson partialDraws() {
        return Lesson.builder("part-of-a-tank", "When only part of the tank is drawn")
                .question("Does a shower bring as much drip as a heat-up from cold?")
                .prediction(
                        "Hot water is drawn, and the heater heats the tank again. Which tank releases more: one with cold water"
                                + " lying below hot, or one where both mix as they meet?",
                        run -> {
                            double ratio = Look.relieved(run.result(1)) / Look.relieved(run.result(0));
                            return ratio < 0.98 ? 0 : ratio > 1.02 ? 2 : 1;
                        },
                        Option.wrong(
                                "Cold below hot.",
                                Claim.of(
                                        "Its cold water has the longest way to go, but cold water hardly grows on the first part"
                                                + " of it.",
                                        run -> WaterFacts.expansivity(Look.cold(run.result(0)))
                                                < 0.4 * WaterFacts.expansivity(afterDraw(run.result(1))))),
                        Option.wrong(
                                "Both the same: as much was drawn.",
                                Claim.computed(
                                        run -> Statement.of(
                                                "As much was drawn, but more went in. Water that mixes takes less room than its parts:"
                                                        + " the mixed tank let in {} more than was drawn, the other {}.",
                                                Look.volume(surplus(run.result(1))),
                                                Look.volume(surplus(run.result(0)))),
                                        run -> surplus(run.result(1)) > surplus(run.result(0))
                                                && Math.abs(drawn(run.result(1)) / drawn(run.result(0)) - 1) < 0.02)),
                        Option.right("The mixed one."))
                .compare(drawn("cold below hot", "weir-house-layers"), drawn("all mixed", "weir-house-mixed"))
                .notice(
                        Claim.computed(
                                run -> Statement.of(
                                        "From each tank of {} about {} were drawn. The layered tank releases {}, the mixed one {}: "
                                                + Look.whole(100 * (releasedRatio(run) - 1)) + " % more.",
                                        Look.volume(tank(run.result(0))),
                                        Look.volume(drawn(run.result(0))),
                                        Look.volume(Look.relieved(run.result(0))),
                                        Look.volume(Look.relieved(run.result(1)))),
                                run -> releasedRatio(run) > 1),
                        Claim.computed(
                                run -> Statement.of(
                                        "While the tap ran, the layered tank let in {} more than was drawn, the mixed one {}. That"
                                                + " surplus comes out again; {} of it finds room.",
                                        Look.volume(surplus(run.result(0))),
                                        Look.volume(surplus(run.result(1))),
                                        Look.volume(surplus(run.result(1)) - Look.relieved(run.result(1)))),
                                run -> surplus(run.result(1)) > surplus(run.result(0))
                                        && Math.abs(Look.relieved(run.result(0)) / surplus(run.result(0)) - 1) < 0.06
                                        && Math.abs(Look.relieved(run.result(1)) / surplus(run.result(1)) - 1) < 0.06),
                        Claim.computed(
                                run -> Statement.of(
                                        "The heater ran {} for the layered tank but only {} for the mixed one. For the same time"
                                                + " of heating the mixed tank releases "
                                                + Look.whole(100 * (perHeatRatio(run) - 1)) + " % more.",
                                        Look.time(heating(run.result(0))),
                                        Look.time(heating(run.result(1)))),
                                run -> heating(run.result(1)) < heating(run.result(0))
                                        && perHeatRatio(run) > releasedRatio(run)))
                .why(
                        Claim.of(
                                "Cold water comes in at the bottom of a tank and, being heavier, stays there. The tank is then"
                                        + " layered: hot above, cold below.",
                                run -> Look.at(run.result(0), Channel.WATER_TOP, drawEnd(run.result(0)))
                                        > Look.at(run.result(0), Channel.WATER_BOTTOM, drawEnd(run.result(0))) + 20),
                        Claim.of(
                                "Lukewarm water grows more for the same heat than cold water does. So for the same heat the mixed"
                                        + " tank releases more.",
                                run -> perHeatRatio(run) > 1
                                        && WaterFacts.growthFlow(1, afterDraw(run.result(1)))
                                                > WaterFacts.growthFlow(1, Look.cold(run.result(0)))),
                        Claim.of(
                                "But a tank that mixes needs less heat to be hot again: its tap soon runs lukewarm and carries less heat"
                                        + " away. That is why the two releases differ less than the growth for the same heat"
                                        + " does.",
                                run -> heating(run.result(1)) < heating(run.result(0))
                                        && afterDraw(run.result(1)) > afterDraw(run.result(0))
                                        && releasedRatio(run) < perHeatRatio(run)),
                        Claim.of(
                                "Real tanks lie between the two. So a drip after a shower is smaller than after a cold start, and"
                                        + " depends on how well the tank keeps its layers.",
                                run -> Look.relieved(run.result(1))
                                        < Look.relieved(Look.with(run, 1, "start.water=12 degC", "draws=[]"))))
                .formula(Formula.of(
                        "V_relief = V_in - V_drawn - V_room",
                        Sources.HOUSES,
                        "V_relief",
                        "what the relief valve releases, in litres; all are counted as cold water",
                        "V_in",
                        "what the supply let in until the tap was shut",
                        "V_drawn",
                        "what the tap took",
                        "V_room",
                        "room won by stretching and squeezing up to the reseat pressure"))
                .tryIt(TryIt.of(
                        0,
                        "A draw of a third of the size releases less than half as much.",
                        run -> Look.opened(run)
                                && Look.relieved(run)
                                        < 0.5
                                                * Look.relieved(drawn("all of it", "weir-house-layers")
                                                        .scenario()
                                                        .simulation()
                                                        .run()),
                        "draws=[{ at: 07:00, volume: 20 L, flow: 8 L/min }]"))
                .check(
                        "Why does the mixed tank release more for the same heat?",
                        Claim.of(
                                "Its water starts lukewarm, and lukewarm water grows more per degree than cold water.",
                                run -> WaterFacts.expansivity(afterDraw(run.result(1)))
                                                > WaterFacts.expansivity(Look.cold(run.result(0)))
                                        && perHeatRatio(run) > 1))
                .sources(Sources.WATER, Sources.HOUSES)
                .caution("The water drawn scalds. Do not try this without a mixing tap.")
                .caution(Cautions.NEVER_PLUG)
                .expect(
                        "More is released by the mixed tank.",
                        run -> Look.relieved(run.result(1)) > Look.relieved(run.result(0)))
                .reading(
                        "Released by half past seven (07:30), cold below hot",
                        Kind.VOLUME,
                        run -> Look.at(run.result(0), Channel.RELIEVED_TOTAL, HOUR))
                .reading(
                        "Gauge at nine o'clock (09:00), all mixed",
                        Kind.GAUGE_PRESSURE,
                        run -> Look.at(run.result(1), Channel.GAUGE_READING, 2.5 * HOUR))
                .reading(
                        "Released by half past seven (07:30), all mixed",
                        Kind.VOLUME,
                        run -> Look.at(run.result(1), Channel.RELIEVED_TOTAL, HOUR))
                .build();
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

    private static double drawn(RunResult run) {
        return run.totals().drawn();
    }

    private static double drawEnd(RunResult run) {
        return Look.time(run, EventKind.DRAW_ENDED);
    }

    /** The mean temperature when the tap is shut (K). */
    private static double afterDraw(RunResult run) {
        return run.first(EventKind.DRAW_ENDED).map(Event::waterTemperature).orElse(Look.setPoint(run));
    }

    /** What the supply let in by the time it shut, beyond what was drawn (m3). */
    private static double surplus(RunResult run) {
        double shut =
                Look.time(run, EventKind.SUPPLY_CLOSED) + run.trace().grid().step();
        double start = Look.time(run, EventKind.DRAW_STARTED);
        return Look.at(run, Channel.INFLOW_TOTAL, shut) - Look.at(run, Channel.INFLOW_TOTAL, start) - drawn(run);
    }

    /** How long the heater ran until it first stopped (s). */
    private static double heating(RunResult run) {
        return Look.time(run, EventKind.HEATER_OFF) - Look.time(run, EventKind.HEATER_ON);
    }

    private static double releasedRatio(LessonRun run) {
        return Look.relieved(run.result(1)) / Look.relieved(run.result(0));
    }

    private static double perHeatRatio(LessonRun run) {
        return releasedRatio(run) * heating(run.result(0)) / heating(run.result(1));
    }
}
