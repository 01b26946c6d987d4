package io.github.heatswell.scenarios.lesson;

import io.github.heatswell.finding.Measure.Kind;
import io.github.heatswell.finding.Statement;
import io.github.heatswell.result.Channel;
import io.github.heatswell.result.EventKind;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.units.TemperatureUnit;
import java.util.List;

/** What becomes of the water that heating adds: open, closed, and how the pressure climbs. */
final class ClosingLessons {

    private static final double STEP = 3;

    private ClosingLessons() {}

    static Lesson open() {
        return Lesson.builder("open-to-the-street", "A house open to the street")
                .question("Heated water needs more room. Where does it go in a house without any special valve?")
                .prediction(
                        "The tank is heated from cold, and no tap is open. What does the pressure do?",
                        List.of("It climbs until something gives.", "It stays where it was.", "It falls."),
                        run -> Look.opened(run.result(0)) ? 0 : rise(run.result(0)) > -1e4 ? 1 : 2)
                .compare(LessonCase.bundled("open to the street", "ferry-cottage"))
                .notice(run -> List.of(
                        Statement.of(
                                "The gauge starts at {} and never shows more than {}.",
                                Look.gauge(Look.supply(run.result(0))),
                                Look.gauge(Look.peak(run.result(0)))),
                        Statement.of(
                                "Heating to {} pushed {} back into the street pipe.",
                                Look.temperature(Look.setPoint(run.result(0))),
                                Look.volume(run.result(0).totals().returned()))))
                .why(
                        "Water grows a little when it is heated. The tank is already full, so the extra water has to"
                                + " leave it.",
                        "Here the way back to the street is open. The street main is so large that it does not notice a"
                                + " litre or two. So the pressure stays that of the street.",
                        "The relief valve is a safety valve that opens when the pressure gets too high. In this house it"
                                + " has nothing to do.")
                .formula(Formula.of(
                        "V_out = V (rho_cold / rho_hot - 1)",
                        Sources.WATER,
                        "V_out",
                        "water that leaves the tank, in litres of hot water",
                        "V",
                        "what the tank holds, in litres",
                        "rho_cold",
                        "weight of a litre of cold water, in kilograms",
                        "rho_hot",
                        "weight of a litre of hot water, in kilograms"))
                .tryIt(TryIt.of(
                        "ferry-cottage",
                        "A check valve lets water in, but not back. With one in the feed the relief valve opens.",
                        Look::opened,
                        "supply.arrangement=check-valve"))
                .check(
                        "Why does the relief valve of an open house stay dry?",
                        "The extra water flows back to the street, so the pressure does not climb.")
                .sources(Sources.WATER, Sources.HOUSES)
                .caution(Cautions.LOOK_ONLY)
                .expect("The pressure stays at that of the street.", run -> Math.abs(rise(run.result(0))) < 5e3)
                .expect("The relief valve stays shut.", run -> !Look.opened(run.result(0)))
                .expect(
                        "Water goes back to the street.",
                        run -> run.result(0).totals().returned() > 0)
                .reading("Highest pressure on the gauge", Kind.GAUGE_PRESSURE, run -> Look.peak(run.result(0)))
                .reading(
                        "Water returned to the street",
                        Kind.VOLUME,
                        run -> run.result(0).totals().returned())
                .build();
    }

    static Lesson closing() {
        return Lesson.builder("closing-the-system", "Closing the system")
                .question("A check valve lets water in, but not back. What happens now when the tank is heated?")
                .prediction(
                        "The same house with a check valve is heated from cold. Where does the extra water go?",
                        List.of("Nowhere: the tank has room.", "Back to the street.", "Out through the relief valve."),
                        run -> Look.opened(run.result(1))
                                ? 2
                                : run.result(1).totals().returned() > 0 ? 1 : 0)
                .compare(
                        LessonCase.bundled("open to the street", "ferry-cottage"),
                        LessonCase.bundled("with a check valve", "ferry-cottage", "supply.arrangement=check-valve"))
                .notice(run -> List.of(
                        Statement.of(
                                "Open, the gauge stays at {}. Closed, it climbs to {}.",
                                Look.gauge(Look.peak(run.result(0))),
                                Look.gauge(Look.peak(run.result(1)))),
                        Statement.of(
                                "The valve opened {} after the start, when the water had reached {}.",
                                Look.time(Look.time(run.result(1), EventKind.RELIEF_OPENED)),
                                Look.temperature(warmthAtOpening(run.result(1)))),
                        Statement.of(
                                "Open, {} went back to the street. Closed, {} ran out of the relief valve.",
                                Look.volume(run.result(0).totals().returned()),
                                Look.volume(Look.relieved(run.result(1))))))
                .why(
                        "A check valve is a flap that lets water pass one way only. It keeps water of the house out of"
                                + " the street. A house with such a flap and all taps shut is called closed.",
                        "The water still grows, but its way back is shut. It is squeezed, and the pressure climbs. The relief"
                                + " valve is made to open at a certain pressure, called its set pressure. There it opens and "
                                + "lets the rest out.",
                        "So the valve is not worn. It does what it is made for, on every heat-up.")
                .formula(Formula.of(
                        "p rises until V_growth = V_stretch + V_relief",
                        Sources.HOUSES,
                        "p",
                        "pressure in the house, in bar",
                        "V_growth",
                        "room the heated water wants, in litres",
                        "V_stretch",
                        "room won as tank and pipes stretch and the water is squeezed, in litres",
                        "V_relief",
                        "what the relief valve lets out, in litres"))
                .tryIt(TryIt.of(
                        "ferry-cottage",
                        "A backflow preventer is a check valve by another name: the relief valve opens just the same.",
                        Look::opened,
                        "supply.arrangement=backflow-preventer"))
                .check(
                        "A valve began to drip after a check valve was fitted. Is it faulty?",
                        "Probably not. The check valve closed the way back, and the relief valve lets the extra water"
                                + " out.")
                .sources(Sources.EXPANSION_CODE, Sources.NOT_BY_RELIEF, Sources.HOUSES)
                .caution(Cautions.NEVER_PLUG)
                .caution("Do not take out a check valve to stop a drip. It protects the drinking water of others.")
                .expect("The open house stays dry.", run -> !Look.opened(run.result(0)))
                .expect("The closed house reaches the set pressure.", run -> Look.opened(run.result(1)))
                .expect(
                        "Nothing goes back through the check valve.",
                        run -> run.result(1).totals().returned() == 0)
                .expect(
                        "Less runs out of the valve than went back to the street, because the tank stretches.",
                        run -> Look.relieved(run.result(1))
                                < run.result(0).totals().returned())
                .reading(
                        "Pressure at which the valve opened",
                        Kind.GAUGE_PRESSURE,
                        run -> Look.pressureAt(run.result(1), EventKind.RELIEF_OPENED))
                .reading("Water let out by the valve", Kind.VOLUME, run -> Look.relieved(run.result(1)))
                .build();
    }

    static Lesson steepening() {
        return Lesson.builder("slow-then-steep", "Why the rise starts slowly and steepens")
                .question("How much does the pressure climb for each degree?")
                .prediction(
                        "A closed tank is heated steadily from cold. How does its pressure climb?",
                        List.of(
                                "By the same for every degree.",
                                "Fast at first, then slower.",
                                "Slowly at first, then faster."),
                        run -> {
                            double ratio = lateSlope(run.result(0)) / earlySlope(run.result(0));
                            return ratio > 1.2 ? 2 : ratio < 0.8 ? 1 : 0;
                        })
                .compare(
                        LessonCase.bundled("cold fill", "quarry-row", "supply.water=10 degC", "run.sample=10 s"),
                        LessonCase.bundled(
                                "ice-cold fill, feed shut",
                                "quarry-row",
                                "supply.water=2 degC",
                                "supply.shut-off=[{ from: 0 s, to: 3 h }]",
                                "run.sample=10 s"))
                .notice(run -> steepeningNotice(run.result(0), run.result(1)))
                .why(
                        "Cold water hardly grows when it is warmed. Hot water grows several times as much for the same"
                                + " degree. So there is no single figure for the pressure per degree.",
                        "Water is heaviest just above freezing. Below that point it even shrinks when it is warmed. The"
                                + " steel of the tank grows all the time, so an ice-cold full tank first loses pressure.",
                        "This is why a valve may stay dry for some minutes of heating and then drip until the heater"
                                + " stops.")
                .formula(Formula.of(
                        "dp/dT = (beta - 3 alpha) / (kappa + C)",
                        Sources.WATER_TABLE,
                        "dp/dT",
                        "rise of the pressure per degree, in Pa/K",
                        "beta",
                        "growth of water per degree, in 1/K; it depends on the temperature",
                        "alpha",
                        "growth in length of the tank's steel, in 1/K",
                        "kappa",
                        "how far water can be squeezed, in 1/Pa",
                        "C",
                        "how far the tank stretches, in 1/Pa"))
                .tryIt(TryIt.of(
                        "quarry-row",
                        "Filled lukewarm instead of cold, the tank reaches the hazard within ten degrees of warming.",
                        run -> run.hazard().isPresent()
                                && run.extremes().highestTemperature().value() - Look.cold(run) < 10,
                        "supply.water=25 degC"))
                .check(
                        "Somebody tells you one figure for the pressure per degree. What is wrong with it?",
                        "It holds for one temperature and one tank only. Water grows more per degree the hotter it is.")
                .sources(Sources.WATER, Sources.WATER_TABLE, Sources.TANK_WALL, Sources.HOUSES)
                .caution("This invented house has no relief valve and is a danger. Never run a heater without one.")
                .caution(Cautions.NEVER_PLUG)
                .expect(
                        "The rise per degree at least doubles.",
                        run -> lateSlope(run.result(0)) > 2 * earlySlope(run.result(0)))
                .expect("Growth per degree at the end is more than five times that at the start.", run -> {
                    RunResult house = run.result(0);
                    return WaterFacts.expansivity(Look.setPoint(house)) > 5 * WaterFacts.expansivity(Look.cold(house));
                })
                .expect(
                        "The ice-cold tank first loses pressure.",
                        run -> lowest(run.result(1)) < Look.supply(run.result(1)) - 1e4)
                .expect(
                        "It loses pressure up to about six degrees Celsius.",
                        run -> Math.abs(TemperatureUnit.CELSIUS.fromSi(turn(run.result(1))) - 6.24) < 0.1)
                .expect(
                        "Without any relief the run ends in a hazard.",
                        run -> run.result(0).hazard().isPresent())
                .reading(
                        "Rise in the first three degrees",
                        Kind.PRESSURE_DIFFERENCE,
                        run -> STEP * earlySlope(run.result(0)))
                .reading(
                        "Rise in the last three degrees",
                        Kind.PRESSURE_DIFFERENCE,
                        run -> STEP * lateSlope(run.result(0)))
                .reading("Temperature of lowest pressure, ice-cold fill", Kind.TEMPERATURE, run -> turn(run.result(1)))
                .build();
    }

    private static List<Statement> steepeningNotice(RunResult cold, RunResult icy) {
        double first = WaterFacts.expansivity(Look.cold(cold));
        double last = WaterFacts.expansivity(Look.setPoint(cold));
        return List.of(
                Statement.of(
                        "The first {} raise the pressure by {}, the last {} by {}.",
                        Look.warming(STEP),
                        Look.difference(STEP * earlySlope(cold)),
                        Look.warming(STEP),
                        Look.difference(STEP * lateSlope(cold))),
                Statement.of(
                        "A kelvin (a degree Celsius) makes water grow by " + Look.fine(first * 1e3)
                                + " thousandths at {}, but by " + Look.fine(last * 1e3) + " thousandths at {}.",
                        Look.temperature(Look.cold(cold)),
                        Look.temperature(Look.setPoint(cold))),
                Statement.of(
                        "Filled at {}, the tank loses pressure at first: from {} to {}, reached at {}. Only then it"
                                + " climbs.",
                        Look.temperature(Look.cold(icy)),
                        Look.gauge(Look.supply(icy)),
                        Look.gauge(lowest(icy)),
                        Look.temperature(turn(icy))));
    }

    private static double earlySlope(RunResult run) {
        return slope(run, Look.cold(run));
    }

    private static double lateSlope(RunResult run) {
        double hottest = run.extremes().highestTemperature().value();
        return slope(run, hottest - STEP);
    }

    private static double slope(RunResult run, double from) {
        double low = Look.whenWarmed(run, Channel.PRESSURE_ABSOLUTE, from);
        return (Look.whenWarmed(run, Channel.PRESSURE_ABSOLUTE, from + STEP) - low) / STEP;
    }

    private static double turn(RunResult run) {
        return Look.at(run, Channel.WATER_MEAN, run.extremes().lowestPressure().time());
    }

    private static double warmthAtOpening(RunResult run) {
        return Look.at(run, Channel.WATER_MEAN, Look.time(run, EventKind.RELIEF_OPENED));
    }

    private static double lowest(RunResult run) {
        return run.gauge(run.extremes().lowestPressure().value());
    }

    private static double rise(RunResult run) {
        return Look.peak(run) - Look.supply(run);
    }
}
