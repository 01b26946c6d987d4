package io.github.heatswell.scenarios.lesson;

import io.github.heatswell.finding.Measure.Kind;
import io.github.heatswell.finding.Statement;
import io.github.heatswell.result.Channel;
import io.github.heatswell.result.EventKind;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.source.Source.Standing;
import io.github.heatswell.units.TemperatureUnit;
import io.github.heatswell.water.Saturation;
import java.util.List;

/** What relief valves give off: on every heat-up, drop by drop, and when a heater runs away. */
final class ReliefLessons {

    private static final double DAY = 86400;
    private static final double HOUR = 3600;
    /** A drop from the end of a pipe (m3); our assumption. */
    private static final double DROP = 0.25e-6;

    private static final double VERY_HOT = TemperatureUnit.CELSIUS.toSi(80);

    private ReliefLessons() {}

    static Lesson everyHeatUp() {
        return Lesson.builder("what-the-valve-gives-off", "What the relief valve gives off")
                .question("Would a larger relief valve, or a new one, stop the drip?")
                .prediction(
                        "A relief valve with three times the flow is fitted. How much water does it let out in a heat-up?",
                        List.of("Three times as much.", "A third.", "The same."),
                        run -> {
                            double ratio = Look.relieved(run.result(1)) / Look.relieved(run.result(0));
                            return ratio > 1.5 ? 0 : ratio < 0.67 ? 1 : 2;
                        })
                .compare(
                        LessonCase.bundled("usual valve, one heat-up", "orchard-lodge"),
                        LessonCase.bundled(
                                "three times the flow, one heat-up", "orchard-lodge", "relief[0].full-flow=60 L/min"),
                        LessonCase.bundled("a house in use, three days", "mill-cottage")
                                .showing(Channel.RELIEVED_TOTAL))
                .notice(run -> List.of(
                        Statement.of(
                                "The usual valve lets out {}, the larger one {}.",
                                Look.volume(Look.relieved(run.result(0))),
                                Look.volume(Look.relieved(run.result(1)))),
                        Statement.of(
                                "Nothing comes below the set pressure of {}, which the water reaches at {}.",
                                Look.gauge(Look.reliefSet(run.result(0))),
                                Look.temperature(warmthAtOpening(run.result(0)))),
                        Statement.of(
                                "In the house in use the valve opened " + openings(run.result(2))
                                        + " times and let out {} a day.",
                                Look.volume(daily(run.result(2))))))
                .why(
                        "A relief valve is held shut by a spring. It opens when the water pushes harder than the spring, at the set pressure.",
                        "What comes out is the water that has no room: the growth beyond the set pressure. It is the same"
                                + " for a small and for a large valve.",
                        "It comes back on every heat-up, because cold water flows in when the tank cools or a tap is"
                                + " opened. A new valve drips like the old one.")
                .formula(Formula.of(
                        "V_relief = V_growth - V_stretch(p_set)",
                        Sources.HOUSES,
                        "V_relief",
                        "what the valve lets out, in litres",
                        "V_growth",
                        "room the heated water wants, in litres",
                        "V_stretch",
                        "room won by stretching and squeezing up to the set pressure, in litres",
                        "p_set",
                        "set pressure of the valve, in bar"))
                .tryIt(TryIt.of(
                        "orchard-lodge",
                        "A valve of half the flow still drips: it lets out between three and three and a half litres.",
                        run -> Look.relieved(run) > 3e-3 && Look.relieved(run) < 3.5e-3,
                        "relief[0].full-flow=10 L/min"))
                .check(
                        "The valve drips only while the heater is on. Worn seat or growing water?",
                        "Growing water. A worn seat, the ring the valve closes on, also drips when nothing is heated.")
                .sources(Sources.NOT_BY_RELIEF, Sources.WATER, Sources.HOUSES)
                .caution(Cautions.NEVER_PLUG)
                .expect(
                        "Both valves let out the same to one part in fifty.",
                        run -> Math.abs(Look.relieved(run.result(1)) / Look.relieved(run.result(0)) - 1) < 0.02)
                .expect(
                        "The valve of the house in use opens at least once a day.",
                        run -> openings(run.result(2)) >= run.result(2).end() / DAY)
                .reading("Let out by the usual valve", Kind.VOLUME, run -> Look.relieved(run.result(0)))
                .reading("Let out by the larger valve", Kind.VOLUME, run -> Look.relieved(run.result(1)))
                .reading("Let out a day by the house in use", Kind.VOLUME, run -> daily(run.result(2)))
                .build();
    }

    static Lesson dropByDrop() {
        return Lesson.builder("drop-by-drop", "How fast it drips, and how much in all")
                .question("Can so much water come from heating alone?")
                .prediction(
                        "An element heats a tank that is already hot. How fast does the water grow?",
                        List.of("By a drop a minute.", "By a few drops a second.", "By a running stream."),
                        run -> {
                            double drops = dropsASecond(run.result(0));
                            return drops < 0.5 ? 0 : drops < 10 ? 1 : 2;
                        })
                .compare(LessonCase.bundled(
                                "one strong element",
                                "ferry-cottage",
                                "supply.arrangement=check-valve",
                                "supply.water=10 degC",
                                "heater.input=4.5 kW",
                                "heater.recovery-efficiency=100 %",
                                "heater.set-point=60 degC")
                        .showing(Channel.RELIEF_FLOW))
                .notice(run -> dripNotice(run.result(0)))
                .why(
                        "How fast water grows depends on the heat that goes in, not on the size of the tank. More heat,"
                                + " more drops.",
                        "A few drops a second look like a leaking valve. They are the growth of the water, and they stop"
                                + " when the heater stops.",
                        "Much larger shares are passed around for the growth of heated water. For liquid water in this"
                                + " range they are wrong.")
                .formula(Formula.of(
                        "q = beta Q / (rho c)",
                        Sources.GROWTH_FLOW,
                        "q",
                        "growth of the water in time, in m3/s",
                        "beta",
                        "growth of water per degree, in 1/K",
                        "Q",
                        "heat that reaches the water, in W",
                        "rho",
                        "density of water, in kg/m3",
                        "c",
                        "heat a kilogram takes up per degree, in J/(kg K)"))
                .tryIt(TryIt.of(
                        "ferry-cottage",
                        "With a third of the heat the same water comes, only more slowly.",
                        run -> Look.opened(run) && Look.relieved(run) > 1e-3,
                        "supply.arrangement=check-valve",
                        "heater.input=1.5 kW",
                        "run.duration=12 h"))
                .check(
                        "Two tanks, one twice as large, have the same heater. Which drips faster while heating?",
                        "Near the same temperature both drip at the same speed. The larger one drips for longer.")
                .sources(Sources.WATER, Sources.GROWTH_FLOW, Sources.HOUSES)
                .source("A drop from a pipe's end as a quarter of a millilitre: our assumption", Standing.GIVEN)
                .caution(Cautions.NEVER_PLUG)
                .caution("Do not catch the drops by hand: they may scald.")
                .expect(
                        "The growth near the end is a few drops a second.",
                        run -> dropsASecond(run.result(0)) > 2 && dropsASecond(run.result(0)) < 3)
                .expect("The growth in all is less than one part in fifty.", run -> growth(run.result(0)) < 0.02)
                .expect(
                        "The run lets out less than the water grows.",
                        run -> Look.relieved(run.result(0)) < tankGrowth(run.result(0)))
                .expect("The valve's flow near the end is nearly that growth.", run -> {
                    double share = lastFlow(run.result(0)) / flow(run.result(0));
                    return share > 0.85 && share < 1;
                })
                .reading("Growth in an hour, at the set point", Kind.VOLUME, run -> HOUR * flow(run.result(0)))
                .reading("Growth of the water in the tank", Kind.VOLUME, run -> tankGrowth(run.result(0)))
                .build();
    }

    static Lesson runaway() {
        return Lesson.builder("the-runaway-heater", "The heater that does not stop")
                .question("What if the thermostat, which switches the heater off, fails?")
                .prediction(
                        "The heater never stops. What keeps the tank from boiling?",
                        List.of("Nothing.", "A valve that lets hot water out and cold in.", "The pressure alone."),
                        run -> run.result(0).hazard().isPresent() ? 0 : Look.opened(run.result(0)) ? 1 : 2)
                .compare(
                        LessonCase.bundled("thermostat stuck", "kiln-house-runaway")
                                .showing(Channel.WATER_TOP),
                        LessonCase.bundled("with a cut-out", "kiln-house-cut-out")
                                .showing(Channel.WATER_TOP))
                .notice(run -> List.of(
                        Statement.of(
                                "The valve opens when the hottest water has reached {}. It never gets hotter than {}.",
                                Look.temperature(opensAt(run.result(0))),
                                Look.temperature(run.result(0)
                                        .extremes()
                                        .highestTemperature()
                                        .value())),
                        Statement.of(
                                "Water of {} boils at a pressure of {}, counted from empty space. The air presses with {}.",
                                Look.temperature(opensAt(run.result(0))),
                                Look.difference(Saturation.pressureAbsolute(opensAt(run.result(0)))),
                                Look.difference(Look.atmosphere(run.result(0)))),
                        Statement.of(
                                "In {} the valve lets out {}, all of it scalding.",
                                Look.time(run.result(0).end()),
                                Look.volume(Look.relieved(run.result(0)))),
                        Statement.of(
                                "With a cut-out the water stops at {}, and {} comes out.",
                                Look.temperature(run.result(1)
                                        .extremes()
                                        .highestTemperature()
                                        .value()),
                                Look.volume(Look.relieved(run.result(1))))))
                .why(
                        "A T&P valve is a relief valve that minds temperature as well as pressure. T stands for"
                                + " temperature, P for pressure.",
                        "Under pressure water can be hotter than its usual boiling point and still be liquid. Let out,"
                                + " part of it turns to steam at once. Steam needs far more room than water: that is how"
                                + " tanks burst.",
                        "At sea level the T&P valve opens just below that point. What it lets out just fails to turn to"
                                + " steam. Cold water flows in behind it and cools the tank.",
                        "A cut-out is a switch that turns the heater off for good when it is far too hot. It acts before"
                                + " the valve has to.")
                .formula(Formula.of(
                        "no steam as long as p_sat(T) < p_air",
                        Sources.BOILING,
                        "p_sat",
                        "pressure at which water of that temperature boils, in bar from empty space",
                        "T",
                        "temperature of the water let out",
                        "p_air",
                        "pressure of the air, in bar from empty space"))
                .tryIt(TryIt.of(
                        "kiln-house-runaway",
                        "With a cut-out the T&P valve stays shut.",
                        run -> run.first(EventKind.CUT_OUT_TRIPPED).isPresent() && !Look.opened(run),
                        "heater.cut-out=85 degC"))
                .check(
                        "Why does a T&P valve open just below the boiling point at sea level?",
                        "Water let out below that point stays water. Hotter water would partly turn to steam.")
                .sources(Sources.BOILING, Sources.TP_CODE, Sources.HOUSES)
                .caution(Cautions.TP_VALVE)
                .caution(Cautions.NEVER_PLUG)
                .expect(
                        "The T&P valve opens and the run ends without a hazard.",
                        run -> Look.opened(run.result(0))
                                && run.result(0).hazard().isEmpty())
                .expect(
                        "Water let out at the opening temperature does not turn to steam.",
                        run -> Saturation.pressureAbsolute(opensAt(run.result(0))) < Look.atmosphere(run.result(0)))
                .expect(
                        "A few degrees more and it would.",
                        run -> Saturation.pressureAbsolute(opensAt(run.result(0)) + 2) > Look.atmosphere(run.result(0)))
                .expect("The cut-out keeps the valve shut.", run -> !Look.opened(run.result(1)))
                .reading(
                        "Hottest water, thermostat stuck",
                        Kind.TEMPERATURE,
                        run -> run.result(0).extremes().highestTemperature().value())
                .reading("Scalding water let out", Kind.VOLUME, run -> Look.relieved(run.result(0)))
                .build();
    }

    private static List<Statement> dripNotice(RunResult run) {
        double hot = Look.setPoint(run);
        return List.of(
                Statement.of(
                        "At {} a heat of {} makes the water grow by {} in an hour. That is "
                                + Look.number(dropsASecond(run)) + " drops a second.",
                        Look.temperature(hot),
                        Look.power(run.system().heater().output()),
                        Look.volume(HOUR * flow(run))),
                Statement.of(
                        "From {} to {} water grows by " + Look.number(100 * growth(run)) + " %, up to {} by "
                                + Look.number(100 * WaterFacts.growth(Look.cold(run), VERY_HOT)) + " %.",
                        Look.temperature(Look.cold(run)),
                        Look.temperature(hot),
                        Look.temperature(VERY_HOT)),
                Statement.of(
                        "The {} in the tank grew by {}, and {} came out of the valve. The rest found room as the tank stretched.",
                        Look.volume(run.system().tank().volume()),
                        Look.volume(tankGrowth(run)),
                        Look.volume(Look.relieved(run))));
    }

    private static double flow(RunResult run) {
        return WaterFacts.growthFlow(run.system().heater().output(), Look.setPoint(run));
    }

    private static double dropsASecond(RunResult run) {
        return flow(run) / DROP;
    }

    private static double tankGrowth(RunResult run) {
        return growth(run) * run.system().tank().volume();
    }

    private static double growth(RunResult run) {
        return WaterFacts.growth(Look.cold(run), Look.setPoint(run));
    }

    /** The flow of the valve a little before the heater first stops (m3/s). */
    private static double lastFlow(RunResult run) {
        return Look.at(
                run,
                Channel.RELIEF_FLOW,
                Look.time(run, EventKind.HEATER_OFF) - 2 * run.trace().grid().step());
    }

    private static double warmthAtOpening(RunResult run) {
        return Look.at(run, Channel.WATER_MEAN, Look.time(run, EventKind.RELIEF_OPENED));
    }

    private static int openings(RunResult run) {
        return run.totals().relief().get(0).openings();
    }

    private static double daily(RunResult run) {
        return Look.relieved(run) / run.end() * DAY;
    }

    private static double opensAt(RunResult run) {
        return run.system().reliefValves().get(0).opensAtTemperature().orElseThrow();
    }
}
