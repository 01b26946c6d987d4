package io.github.heatswell.scenarios.lesson;

import io.github.heatswell.assessment.Measure.Kind;
import io.github.heatswell.assessment.Statement;
import io.github.heatswell.citation.Citation.Standing;
import io.github.heatswell.result.Channel;
import io.github.heatswell.result.EventKind;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.scenarios.lesson.Prediction.Option;
import io.github.heatswell.units.TemperatureUnit;

/** How fast heated water drips, and how much in all. */
final class DripLesson {

    private static final double HOUR = 3600;
    /** A drop from the end of a pipe (m3); our assumption. */
    private static final double DROP = 0.25e-6;

    private static final double VERY_HOT = TemperatureUnit.CELSIUS.toSi(80);

    private DripLesson() {}

    static Lesson dropByDrop() {
        return Lesson.builder("drop-by-drop", "How fast it drips, and how much in all")
                .question("Can so much water come from heating alone?")
                .prediction(
                        "An element heats a tank from cold. By how much does the water grow once it is nearly hot?",
                        run -> {
                            double drops = dropsASecond(run.result(0));
                            return drops < 0.5 ? 0 : drops < 10 ? 1 : 2;
                        },
                        Option.wrong(
                                "By a drop a minute.",
                                Claim.computed(
                                        run -> Statement.of(
                                                "That would be {} in an hour. In the fullest hour of the run {} came out.",
                                                Look.volume(60 * DROP),
                                                Look.volume(fullestHour(run.result(0)))),
                                        run -> fullestHour(run.result(0)) > 60 * DROP)),
                        Option.right("By a few drops a second."),
                        Option.wrong(
                                "By a running stream.",
                                Claim.computed(
                                        run -> Statement.of(
                                                "A stream would need far more heat. Even {} pushes out only {} in the fullest"
                                                        + " hour.",
                                                Look.power(run.result(0)
                                                        .system()
                                                        .heater()
                                                        .output()),
                                                Look.volume(fullestHour(run.result(0)))),
                                        run -> Look.lastFlow(run.result(0)) < 10 * DROP)))
                .compare(element())
                .notice(
                        Claim.computed(
                                run -> Statement.of(
                                        "At {} a heat of {} makes the water grow at a rate of {} an hour. Of that the warming tank"
                                                + " takes {}, and {} an hour drips at that moment: "
                                                + Look.number(Look.lastFlow(run.result(0)) / DROP) + " drops a second.",
                                        Look.temperature(Look.setPoint(run.result(0))),
                                        Look.power(heat(run.result(0))),
                                        Look.volume(HOUR * flow(run.result(0))),
                                        Look.volume(HOUR * (flow(run.result(0)) - netFlow(run.result(0)))),
                                        Look.volume(HOUR * netFlow(run.result(0)))),
                                run -> Look.near(netFlow(run.result(0)), Look.lastFlow(run.result(0)), 0.03)),
                        Claim.computed(run -> Statement.of(
                                "From {} to {} water grows by " + Look.number(100 * growth(run.result(0)))
                                        + " %, up to {} by "
                                        + Look.number(100 * WaterFacts.growth(Look.cold(run.result(0)), VERY_HOT))
                                        + " %.",
                                Look.temperature(Look.cold(run.result(0))),
                                Look.temperature(Look.setPoint(run.result(0))),
                                Look.temperature(VERY_HOT))),
                        Claim.computed(
                                run -> Statement.of(
                                        "Counted as cold water, the {} in the tank need room for {} more, and {} came out of"
                                                + " the valve. Of the rest the warm metal took {}; stretching took nearly all"
                                                + " that is left.",
                                        Look.volume(
                                                run.result(0).system().tank().volume()),
                                        Look.volume(new HeatUp(run.result(0)).growth()),
                                        Look.volume(Look.relieved(run.result(0))),
                                        Look.share(metalShare(run.result(0)))),
                                run -> Look.near(
                                                new HeatUp(run.result(0)).released(),
                                                Look.relieved(run.result(0)),
                                                0.02)
                                        && metalShare(run.result(0)) > 0.5))
                .why(
                        Claim.of(
                                "How fast water grows depends on the heat that goes in, not on the size of the tank. More"
                                        + " heat, more drops.",
                                run -> Look.near(
                                                Look.lastFlow(
                                                        Look.with(run, 0, "tank.volume=320 L", "run.duration=12 h")),
                                                Look.lastFlow(run.result(0)),
                                                0.05)
                                        && Look.lastFlow(run.result(0))
                                                > Look.lastFlow(Look.with(run, 0, "heater.input=3 kW"))),
                        Claim.of(
                                "A few drops a second look like a leaking valve. They are the growth of the water, and they"
                                        + " stop when the heater stops.",
                                run -> Look.at(
                                                run.result(0),
                                                Channel.RELIEF_FLOW,
                                                run.result(0).end())
                                        == 0),
                        Claim.of(
                                "Much larger shares are passed around for the growth of heated water. For liquid water in"
                                        + " this range they are wrong.",
                                run -> growth(run.result(0)) < 0.02))
                .formula(Formula.of(
                        "q = (beta - 3 alpha) Q / (rho c)",
                        Sources.GROWTH_FLOW,
                        "q",
                        "what a closed, heated tank must release in time, in m3/s",
                        "beta",
                        "growth of water per degree, in 1/K",
                        "alpha",
                        "growth in length of the tank's metal, in 1/K",
                        "Q",
                        "heat that reaches the water, in W",
                        "rho",
                        "density of water, in kg/m3",
                        "c",
                        "heat a kilogram takes up per degree, in J/(kg K)"))
                .tryIt(TryIt.of(
                        0,
                        "With a third of the heat nearly the same water comes, only more slowly.",
                        run -> {
                            RunResult strong = element().scenario().simulation().run();
                            return Look.near(Look.relieved(run), Look.relieved(strong), 0.03)
                                    && Look.lastFlow(run) < Look.lastFlow(strong);
                        },
                        "heater.input=1.5 kW",
                        "run.duration=12 h"))
                .check(
                        "Two tanks, one twice as large, have the same heater. Which drips faster while heating?",
                        Claim.of(
                                "Near the same temperature both drip at the same speed. The larger one drips for longer.",
                                run -> {
                                    RunResult larger = Look.with(run, 0, "tank.volume=320 L", "run.duration=12 h");
                                    return Look.near(Look.lastFlow(larger), Look.lastFlow(run.result(0)), 0.05)
                                            && Look.time(larger, EventKind.RELIEF_RESEATED)
                                                            - Look.time(larger, EventKind.RELIEF_OPENED)
                                                    > Look.time(run.result(0), EventKind.RELIEF_RESEATED)
                                                            - Look.time(run.result(0), EventKind.RELIEF_OPENED);
                                }))
                .sources(Sources.WATER, Sources.GROWTH_FLOW, Sources.TANK_WALL, Sources.HOUSES)
                .source("A drop from a pipe's end as a quarter of a millilitre: our assumption", Standing.GIVEN)
                .caution(Cautions.NEVER_PLUG)
                .caution("Do not catch the drops by hand: they may scald.")
                .expect(
                        "The growth near the end is a few drops a second.",
                        run -> dropsASecond(run.result(0)) > 2 && dropsASecond(run.result(0)) < 3)
                .expect("The growth in all is less than one part in fifty.", run -> growth(run.result(0)) < 0.02)
                .reading(
                        "Water temperature after one hour",
                        Kind.TEMPERATURE,
                        run -> Look.at(run.result(0), Channel.WATER_MEAN, HOUR))
                .reading(
                        "Gauge after three hours",
                        Kind.GAUGE_PRESSURE,
                        run -> Look.at(run.result(0), Channel.GAUGE_READING, 3 * HOUR))
                .build();
    }

    private static LessonCase element() {
        return LessonCase.bundled(
                "one strong element",
                "ferry-cottage",
                "supply.arrangement=check-valve",
                "supply.water=10 degC",
                "heater.input=4.5 kW",
                "heater.recovery-efficiency=100 %",
                "heater.set-point=60 degC");
    }

    /** What of the growth that the valve does not release the warm metal takes. */
    private static double metalShare(RunResult run) {
        HeatUp heatUp = new HeatUp(run);
        return heatUp.metal() / (heatUp.growth() - Look.relieved(run));
    }

    /** How fast heated water outgrows its warming tank, as cold water (m3/s). */
    private static double netFlow(RunResult run) {
        double metal = run.system().tank().shell().thermalGrowth();
        double beta = WaterFacts.expansivity(Look.setPoint(run));
        return flow(run) * (1 - metal / beta);
    }

    /** What the hot water keeps of the heater's output (W). */
    private static double heat(RunResult run) {
        double lost = run.system().tank().standingLoss()
                * (Look.setPoint(run) - run.system().site().roomTemperature());
        return run.system().heater().output() - lost;
    }

    /** How fast the water of the hot tank grows, as cold water (m3/s). */
    private static double flow(RunResult run) {
        double asCold = 1 - WaterFacts.excess(Look.cold(run), Look.setPoint(run));
        return asCold * WaterFacts.growthFlow(heat(run), Look.setPoint(run));
    }

    private static double dropsASecond(RunResult run) {
        return flow(run) / DROP;
    }

    /** The most that comes out in any hour (m3). */
    private static double fullestHour(RunResult run) {
        double most = 0;
        for (double from = 0;
                from + HOUR <= run.end();
                from += run.trace().grid().step()) {
            double out = Look.at(run, Channel.RELIEVED_TOTAL, from + HOUR) - Look.at(run, Channel.RELIEVED_TOTAL, from);
            most = Math.max(most, out);
        }
        return most;
    }

    private static double growth(RunResult run) {
        return WaterFacts.growth(Look.cold(run), Look.setPoint(run));
    }
}
