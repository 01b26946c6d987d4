package io.github.heatswell.scenarios.lesson;

import io.github.heatswell.assessment.Measure.Kind;
import io.github.heatswell.assessment.Statement;
import io.github.heatswell.result.Channel;
import io.github.heatswell.result.EventKind;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.scenarios.lesson.Prediction.Option;
import io.github.heatswell.units.TemperatureUnit;
import io.github.heatswell.water.Saturation;

/** What relief valves release on every heat-up, and when a heater runs away. */
final class ReliefLessons {

    private static final String WORN = "relief[0].fault={ leaks-from: 2 bar, leakage: 12 mL/min }";
    private static final double DAY = 86400;
    private static final double HOUR = 3600;
    /** The air at sea level by ISO 2533 (Pa). */
    private static final double SEA_LEVEL = 101325;

    private static final double VERY_HOT = TemperatureUnit.CELSIUS.toSi(80);

    private ReliefLessons() {}

    static Lesson everyHeatUp() {
        return Lesson.builder("what-the-valve-releases", "What the relief valve releases")
                .question("Would a larger relief valve, or a new one, stop the drip?")
                .prediction(
                        "A relief valve with three times the flow is fitted. How much water does it release in a heat-up?",
                        run -> {
                            double ratio = Look.relieved(run.result(1)) / Look.relieved(run.result(0));
                            return ratio > 1.5 ? 0 : ratio < 0.67 ? 1 : 2;
                        },
                        Option.wrong(
                                "Three times as much.",
                                Claim.of(
                                        "It could. But it drips only as fast as the water grows, and that is far below what"
                                                + " either valve can pass.",
                                        run -> fastest(run.result(1)) < 0.1 * fullFlow(run.result(0)))),
                        Option.wrong(
                                "A third.",
                                Claim.of(
                                        "A larger valve does not shut sooner: both reseat at the same pressure, and the"
                                                + " growth up to there decides.",
                                        run -> Look.reseat(run.result(0)) == Look.reseat(run.result(1))
                                                && sameRelease(run))),
                        Option.right("The same."))
                .compare(
                        LessonCase.bundled("usual valve, one heat-up", "orchard-lodge"),
                        LessonCase.bundled(
                                "three times the flow, one heat-up", "orchard-lodge", "relief[0].full-flow=60 L/min"),
                        LessonCase.bundled("a house in use, three days", "mill-cottage")
                                .showing(Channel.RELIEVED_TOTAL))
                .notice(
                        Claim.computed(
                                run -> Statement.of(
                                        "The usual valve releases {}, the larger one {}.",
                                        Look.volume(Look.relieved(run.result(0))),
                                        Look.volume(Look.relieved(run.result(1)))),
                                run -> fullFlow(run.result(1)) > fullFlow(run.result(0))),
                        Claim.computed(
                                run -> Statement.of(
                                        "The first drop comes at the set pressure of {}, which the water reaches at {}. The"
                                                + " drip then goes on at little more than the reseat pressure of {}.",
                                        Look.gauge(Look.reliefSet(run.result(0))),
                                        Look.temperature(warmthAtOpening(run.result(0))),
                                        Look.gauge(Look.reseat(run.result(0)))),
                                run -> drySoFar(run.result(0)) && dripsAboveReseat(run.result(0))),
                        Claim.computed(
                                run -> Statement.of(
                                        "By the formula below: {} of growth, less {} for the warm metal, less {} for stretching"
                                                + " up to the reseat pressure, leaves {}.",
                                        Look.volume(new HeatUp(run.result(0)).growth()),
                                        Look.volume(new HeatUp(run.result(0)).metal()),
                                        Look.volume(new HeatUp(run.result(0)).stretch(Look.reseat(run.result(0)))),
                                        Look.volume(new HeatUp(run.result(0)).released())),
                                run -> Look.near(
                                        new HeatUp(run.result(0)).released(), Look.relieved(run.result(0)), 0.02)),
                        Claim.computed(
                                run -> Statement.of(
                                        "In the house in use the valve opened " + openings(run.result(2))
                                                + " times and released {} a day.",
                                        Look.volume(daily(run.result(2)))),
                                run -> openings(run.result(2)) >= run.result(2).end() / DAY))
                .why(
                        Claim.of(
                                "A relief valve is held shut by a spring. It opens when the water pushes harder than the"
                                        + " spring, at the set pressure.",
                                run -> Look.opened(run.result(0))),
                        Claim.of(
                                "What comes out is the water that has no room up to the reseat pressure, where the valve"
                                        + " shuts again. It is the same for a small and for a large valve.",
                                ReliefLessons::sameRelease),
                        Claim.of(
                                "It comes back on every heat-up, because cold water flows in when the tank cools or a tap is"
                                        + " opened. A new valve drips like the old one.",
                                run -> openings(run.result(2)) > 1 && sameRelease(run)))
                .formula(Formula.of(
                        "V_relief = V_growth - V_metal - V_stretch(p_reseat)",
                        Sources.HOUSES,
                        "V_relief",
                        "what the valve releases, counted as cold water, in litres",
                        "V_growth",
                        "room the heated water wants, in litres",
                        "V_metal",
                        "room won as the warm metal grows, in litres",
                        "V_stretch",
                        "room won by stretching and squeezing up to a pressure, in litres",
                        "p_reseat",
                        "reseat pressure of the valve, in bar"))
                .tryIt(TryIt.of(
                        0,
                        "A valve of half the flow still drips: it releases between three and three and a half litres.",
                        run -> Look.relieved(run) > 3e-3 && Look.relieved(run) < 3.5e-3,
                        "relief[0].full-flow=10 L/min"))
                .check(
                        "The valve drips only while the heater is on. Worn seat or growing water?",
                        Claim.of(
                                "Growing water. A worn seat, the ring the valve closes on, also drips when nothing is"
                                        + " heated.",
                                run -> !dripsUnheated(run.result(0))
                                        && Look.opened(run.result(0))
                                        && dripsUnheated(Look.with(run, 0, WORN))))
                .sources(Sources.NOT_BY_RELIEF, Sources.WATER, Sources.TANK_WALL, Sources.HOUSES)
                .caution(Cautions.NEVER_PLUG)
                .expect("Both valves release the same to one part in fifty.", ReliefLessons::sameRelease)
                .expect(
                        "The valve of the house in use opens at least once a day.",
                        run -> openings(run.result(2)) >= run.result(2).end() / DAY)
                .reading(
                        "Released by the usual valve after half an hour",
                        Kind.VOLUME,
                        run -> Look.at(run.result(0), Channel.RELIEVED_TOTAL, HOUR / 2))
                .reading(
                        "Released by the usual valve after one hour",
                        Kind.VOLUME,
                        run -> Look.at(run.result(0), Channel.RELIEVED_TOTAL, HOUR))
                .reading(
                        "Gauge after two hours, usual valve",
                        Kind.GAUGE_PRESSURE,
                        run -> Look.at(run.result(0), Channel.GAUGE_READING, 2 * HOUR))
                .build();
    }

    static Lesson runaway() {
        return Lesson.builder("the-runaway-heater", "The heater that does not stop")
                .question("What if the thermostat, which switches the heater off, fails?")
                .prediction(
                        "The heater never stops. What keeps the tank from boiling?",
                        run -> run.result(0).hazard().isPresent() ? 0 : Look.opened(run.result(0)) ? 1 : 2,
                        Option.wrong(
                                "Nothing.",
                                Claim.computed(
                                        run -> Statement.of(
                                                "Without working relief that is so: the same water boils at {}, with the gauge"
                                                        + " at {}, {} below the tank's working pressure. If such a tank gives"
                                                        + " way, it explodes. This one has a valve that acts in time.",
                                                Look.temperature(hottest(unrelieved(run))),
                                                Look.gauge(boiling(run)),
                                                Look.difference(workingPressure(run) - boiling(run))),
                                        run -> unrelieved(run)
                                                        .first(EventKind.VAPOUR_FORMS)
                                                        .isPresent()
                                                && boiling(run) < workingPressure(run)
                                                && run.result(0).hazard().isEmpty()
                                                && Look.opened(run.result(0)))),
                        Option.right("A valve that lets hot water out and cold in."),
                        Option.wrong(
                                "The pressure alone.",
                                Claim.of(
                                        "Pressure does keep hot water liquid, but the heater would go on. In the tank the"
                                                + " water is then hot enough to flash to steam as soon as it gets out.",
                                        run -> Saturation.pressureAbsolute(opensAt(run.result(0)) + 2)
                                                > Look.atmosphere(run.result(0)))))
                .compare(
                        LessonCase.bundled("thermostat stuck", "kiln-house-runaway")
                                .showing(Channel.WATER_MEAN),
                        LessonCase.bundled("with a cut-out", "kiln-house-cut-out")
                                .showing(Channel.WATER_MEAN))
                .notice(
                        Claim.computed(
                                run -> Statement.of(
                                        "The valve opens when the hottest water has reached {}. It never gets hotter than {}.",
                                        Look.temperature(opensAt(run.result(0))),
                                        Look.temperature(hottest(run.result(0)))),
                                run -> hottest(run.result(0)) >= opensAt(run.result(0))),
                        Claim.computed(
                                run -> Statement.of(
                                        "Water of {} boils at a pressure of {}, counted from empty space. The air presses with"
                                                + " {}.",
                                        Look.temperature(opensAt(run.result(0))),
                                        Look.difference(Saturation.pressureAbsolute(opensAt(run.result(0)))),
                                        Look.difference(Look.atmosphere(run.result(0)))),
                                run -> Saturation.pressureAbsolute(opensAt(run.result(0)))
                                        < Look.atmosphere(run.result(0))),
                        Claim.computed(
                                run -> Statement.of(
                                        "In {} the valve releases {}, all of it scalding.",
                                        Look.time(run.result(0).end()),
                                        Look.volume(Look.relieved(run.result(0)))),
                                run -> Look.at(
                                                run.result(0),
                                                Channel.WATER_TOP,
                                                Look.time(run.result(0), EventKind.RELIEF_OPENED))
                                        > VERY_HOT),
                        Claim.computed(
                                run -> Statement.of(
                                        "With a cut-out the water stops at {}, and the valve stays shut.",
                                        Look.temperature(hottest(run.result(1)))),
                                run -> !Look.opened(run.result(1)) && hottest(run.result(1)) < hottest(run.result(0))))
                .why(
                        Claim.of(
                                "A T&P valve is a relief valve that opens by temperature as well as by pressure. T stands for"
                                        + " temperature, P for pressure."),
                        Claim.of(
                                "Under pressure water can be hotter than its usual boiling point and still be liquid. Let out,"
                                        + " part of it turns to steam at once. Steam needs far more room than water: that is"
                                        + " why a tank that gives way explodes.",
                                run -> Saturation.pressureAbsolute(opensAt(run.result(0)) + 10)
                                                > Look.atmosphere(run.result(0))
                                        && Saturation.pressureAbsolute(opensAt(run.result(0)) + 10)
                                                < Look.supply(run.result(0)) + Look.atmosphere(run.result(0))),
                        Claim.of(
                                "At sea level the T&P valve opens just below that point. The water it lets out"
                                        + " stays water. Cold water flows in behind it and cools the tank.",
                                run -> Saturation.pressureAbsolute(opensAt(run.result(0))) < SEA_LEVEL
                                        && Saturation.pressureAbsolute(opensAt(run.result(0)) + 2) > SEA_LEVEL),
                        Claim.of(
                                "A cut-out is a switch that turns the heater off for good when it is far too hot. It acts before"
                                        + " the valve has to.",
                                run -> !Look.opened(run.result(1))
                                        && run.result(1)
                                                .first(EventKind.CUT_OUT_TRIPPED)
                                                .isPresent()))
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
                        0,
                        "With a cut-out the T&P valve stays shut.",
                        run -> run.first(EventKind.CUT_OUT_TRIPPED).isPresent() && !Look.opened(run),
                        "heater.cut-out=85 degC"))
                .check(
                        "Why does a T&P valve open just below the boiling point at sea level?",
                        Claim.of(
                                "Water let out below that point stays water. Hotter water would partly turn to steam.",
                                run -> Saturation.pressureAbsolute(opensAt(run.result(0))) < SEA_LEVEL
                                        && Saturation.pressureAbsolute(opensAt(run.result(0)) + 2) > SEA_LEVEL))
                .sources(Sources.BOILING, Sources.TP_CODE, Sources.HOUSES)
                .caution(Cautions.OVERHEATED)
                .cautionAfter(Cautions.TP_VALVE)
                .cautionAfter(Cautions.NEVER_PLUG)
                .expect(
                        "The T&P valve opens and the run ends without a hazard.",
                        run -> Look.opened(run.result(0))
                                && run.result(0).hazard().isEmpty())
                .expect("The cut-out keeps the valve shut.", run -> !Look.opened(run.result(1)))
                .reading(
                        "Time until the water reaches 80 °C (176 °F), thermostat stuck",
                        Kind.TIME,
                        run -> Look.timeWhen(run.result(0), Channel.WATER_MEAN, VERY_HOT))
                .reading(
                        "Water temperature after two hours, with a cut-out",
                        Kind.TEMPERATURE,
                        run -> Look.at(run.result(1), Channel.WATER_MEAN, 2 * HOUR))
                .build();
    }

    private static boolean sameRelease(LessonRun run) {
        return Look.near(Look.relieved(run.result(1)), Look.relieved(run.result(0)), 0.02);
    }

    private static double fullFlow(RunResult run) {
        return run.system().reliefValves().get(0).fullFlow();
    }

    /** The fastest drip over a whole sample (m3/s). */
    private static double fastest(RunResult run) {
        double fastest = 0;
        double step = run.trace().grid().step();
        for (int i = 3; i + 1 < run.trace().count(); i++) {
            double before = run.trace().grid().time(i - 1);
            if (before > Look.time(run, EventKind.RELIEF_OPENED)) {
                fastest = Math.max(
                        fastest,
                        (run.trace().value(Channel.RELIEVED_TOTAL, i)
                                        - run.trace().value(Channel.RELIEVED_TOTAL, i - 1))
                                / step);
            }
        }
        return fastest;
    }

    private static boolean drySoFar(RunResult run) {
        double opened = Look.time(run, EventKind.RELIEF_OPENED);
        int before = (int) (opened / run.trace().grid().step());
        return Look.opened(run) && run.trace().value(Channel.RELIEVED_TOTAL, before) == 0;
    }

    private static boolean dripsAboveReseat(RunResult run) {
        double before =
                Look.time(run, EventKind.HEATER_OFF) - 2 * run.trace().grid().step();
        double above = Look.at(run, Channel.GAUGE_READING, before) - Look.reseat(run);
        return above > 0 && above < 5e3 && Look.lastFlow(run) > 0;
    }

    private static boolean dripsUnheated(RunResult run) {
        for (int i = 0; i < run.trace().count(); i++) {
            if (run.trace().value(Channel.HEATER_POWER, i) == 0 && run.trace().value(Channel.RELIEF_FLOW, i) > 0) {
                return true;
            }
        }
        return false;
    }

    private static double hottest(RunResult run) {
        return run.extremes().highestTemperature().value();
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

    /** The first house without its relief valves. */
    private static RunResult unrelieved(LessonRun run) {
        return Look.with(run, 0, "relief=[]");
    }

    /** The pressure at which water boils in the house without relief (Pa gauge). */
    private static double boiling(LessonRun run) {
        return Look.pressureAt(unrelieved(run), EventKind.VAPOUR_FORMS);
    }

    /** The working pressure of the tank (Pa gauge). */
    private static double workingPressure(LessonRun run) {
        return run.result(0).system().tank().workingPressure().gauge(Look.atmosphere(run.result(0)));
    }

    private static double opensAt(RunResult run) {
        return run.system().reliefValves().get(0).setTemperature().orElseThrow();
    }
}
