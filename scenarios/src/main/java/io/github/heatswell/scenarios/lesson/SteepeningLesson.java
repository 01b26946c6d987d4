package io.github.heatswell.scenarios.lesson;

import io.github.heatswell.assessment.Measure.Kind;
import io.github.heatswell.assessment.Statement;
import io.github.heatswell.result.Channel;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.scenarios.lesson.Prediction.Option;
import io.github.heatswell.units.TemperatureUnit;

/** How the pressure of a closed tank climbs. */
final class SteepeningLesson {

    private static final double STEP = 3;
    private static final double SIX_BAR = 6e5;

    private SteepeningLesson() {}

    static Lesson steepening() {
        return Lesson.builder("pressure-per-degree", "How much pressure per degree?")
                .question("How much does the pressure climb for each degree?")
                .prediction(
                        "A closed tank is heated steadily from cold. How does its pressure climb?",
                        run -> {
                            double ratio = lateSlope(run.result(0)) / earlySlope(run.result(0));
                            return ratio > 1.2 ? 0 : ratio < 0.8 ? 2 : 1;
                        },
                        Option.right("Slowly at first, then faster."),
                        Option.wrong(
                                "By the same for every degree.",
                                Claim.of(
                                        "That would need water that grows evenly. Cold water hardly grows, hot water"
                                                + " grows several times as much.",
                                        run -> growsFiveTimes(run.result(0)))),
                        Option.wrong(
                                "Fast at first, then slower.",
                                Claim.of(
                                        "A balloon is hard to start and then gives way. Steel does not: it gives way by the"
                                                + " same for every bar, while the water grows more and more.",
                                        run -> lateSlope(run.result(0)) > earlySlope(run.result(0)))))
                .compare(
                        LessonCase.bundled("cold fill", "quarry-row", "supply.water=10 degC", "run.sample=10 s"),
                        LessonCase.bundled(
                                "ice-cold fill, feed shut",
                                "quarry-row",
                                "supply.water=2 degC",
                                "supply.shut-off=[{ from: 0 s, to: 3 h }]",
                                "run.sample=10 s"))
                .notice(
                        Claim.computed(
                                run -> Statement.of(
                                        "The first {} raise the pressure by {}, the last {} by {}.",
                                        Look.warming(STEP),
                                        Look.difference(STEP * earlySlope(run.result(0))),
                                        Look.warming(STEP),
                                        Look.difference(STEP * lateSlope(run.result(0)))),
                                run -> lateSlope(run.result(0)) > 2 * earlySlope(run.result(0))),
                        Claim.computed(
                                run -> Statement.of(
                                        "A kelvin (a degree Celsius) makes water grow by "
                                                + Look.fine(expansivityCold(run.result(0)) * 1e3)
                                                + " thousandths at {}, but by "
                                                + Look.fine(expansivityHot(run.result(0)) * 1e3)
                                                + " thousandths at {}.",
                                        Look.temperature(Look.cold(run.result(0))),
                                        Look.temperature(Look.setPoint(run.result(0)))),
                                run -> expansivityHot(run.result(0)) > 2 * expansivityCold(run.result(0))),
                        Claim.computed(
                                run -> Statement.of(
                                        "Filled at {}, the tank loses pressure at first: from {} to {}, reached at {}. Only"
                                                + " then does it climb.",
                                        Look.temperature(Look.cold(run.result(1))),
                                        Look.gauge(Look.supply(run.result(1))),
                                        Look.gauge(lowest(run.result(1))),
                                        Look.temperature(turn(run.result(1)))),
                                run -> lowest(run.result(1)) < Look.supply(run.result(1)) - 1e4
                                        && Look.peak(run.result(1)) > Look.supply(run.result(1))))
                .why(
                        Claim.of(
                                "Cold water hardly grows when it is warmed. Hot water grows several times as much for the"
                                        + " same degree. So there is no single figure for the pressure per degree.",
                                run -> growsFiveTimes(run.result(0))),
                        Claim.of(
                                "Water is heaviest just above freezing. Below that point it even shrinks when it is warmed."
                                        + " The steel of the tank grows all the time, so an ice-cold full tank first loses"
                                        + " pressure.",
                                run -> WaterFacts.expansivity(Look.cold(run.result(1))) < 0
                                        && WaterFacts.expansivity(turn(run.result(1))) > 0
                                        && run.result(1).system().tank().shell().thermalGrowth() > 0))
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
                        0,
                        "Filled lukewarm, not cold, the tank reaches the hazard within ten degrees of warming.",
                        run -> run.hazard().isPresent()
                                && run.extremes().highestTemperature().value() - Look.cold(run) < 10,
                        "supply.water=25 degC"))
                .check(
                        "Somebody tells you one figure for the pressure per degree. What is wrong with it?",
                        Claim.of(
                                "It holds for one temperature and one tank only. Water grows more per degree the hotter it"
                                        + " is.",
                                run -> expansivityHot(run.result(0)) > 2 * expansivityCold(run.result(0))))
                .sources(Sources.WATER, Sources.WATER_TABLE, Sources.TANK_WALL, Sources.HOUSES)
                .caution("This invented house has no relief valve and is a danger. Never run a heater without one.")
                .caution(Cautions.NEVER_PLUG)
                .expect(
                        "The rise per degree at least doubles.",
                        run -> lateSlope(run.result(0)) > 2 * earlySlope(run.result(0)))
                .expect(
                        "Growth per degree at the end is more than five times that at the start.",
                        run -> growsFiveTimes(run.result(0)))
                .expect(
                        "It loses pressure up to about six degrees Celsius.",
                        run -> Math.abs(TemperatureUnit.CELSIUS.fromSi(turn(run.result(1))) - 6.24) < 0.1)
                .expect(
                        "Without any relief the run ends in a hazard.",
                        run -> run.result(0).hazard().isPresent())
                .reading(
                        "Time until the gauge passes 6 bar (87 psi), cold fill",
                        Kind.TIME,
                        run -> passing(run.result(0), SIX_BAR))
                .reading(
                        "Time until the gauge passes 6 bar (87 psi), ice-cold fill",
                        Kind.TIME,
                        run -> passing(run.result(1), SIX_BAR))
                .build();
    }

    private static double passing(RunResult run, double gauge) {
        return Look.timeWhen(run, Channel.GAUGE_READING, gauge);
    }

    private static double expansivityCold(RunResult run) {
        return WaterFacts.expansivity(Look.cold(run));
    }

    private static double expansivityHot(RunResult run) {
        return WaterFacts.expansivity(Look.setPoint(run));
    }

    private static boolean growsFiveTimes(RunResult run) {
        return expansivityHot(run) > 5 * expansivityCold(run);
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

    private static double lowest(RunResult run) {
        return run.gauge(run.extremes().lowestPressure().value());
    }
}
