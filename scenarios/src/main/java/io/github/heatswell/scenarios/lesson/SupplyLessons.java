package io.github.heatswell.scenarios.lesson;

import io.github.heatswell.assessment.Measure.Kind;
import io.github.heatswell.assessment.Statement;
import io.github.heatswell.result.Channel;
import io.github.heatswell.result.EventKind;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.scenarios.lesson.Prediction.Option;
import io.github.heatswell.system.ReducingValve;
import java.util.List;

/** What the pressure of the supply does, and a reducing valve. */
final class SupplyLessons {

    private static final String HIGH = "supply.pressure=6.4 bar";
    private static final String CHARGED = "vessel.precharge=6.4 bar";
    private static final String RESEATS = "relief[0].reseats=6.7 bar";
    private static final double HOUR = 3600;

    private SupplyLessons() {}

    static Lesson highSupply() {
        return Lesson.builder("high-supply-pressure", "A high supply pressure")
                .question(
                        "A vessel cured the drip in one house. Does it in the next, where the supply pressure is higher?")
                .prediction(
                        "The supply stands only a little below the set pressure of the relief valve. How much does the same"
                                + " vessel, charged to the supply, help?",
                        run -> {
                            double share = Look.relieved(run.result(1)) / bare(run);
                            return share == 0 ? 0 : share < 0.6 ? 2 : 1;
                        },
                        Option.wrong(
                                "As before: the valve stays shut.",
                                Claim.computed(
                                        run -> Statement.of(
                                                "It is charged rightly, but it may only take up water until the valve opens. That is"
                                                        + " {} of its size here, not {}.",
                                                Look.share(factor(run.result(1))),
                                                Look.share(factor(run.result(0)))),
                                        run -> Look.opened(run.result(1))
                                                && factor(run.result(1)) < factor(run.result(0)))),
                        Option.right("Little: most of the water still runs out."),
                        Option.wrong(
                                "Half: the valve releases half as much.",
                                Claim.computed(
                                        run -> Statement.of(
                                                "Less than that. Without a vessel {} would run out, with it {} does.",
                                                Look.volume(bare(run)),
                                                Look.volume(Look.relieved(run.result(1)))),
                                        run -> Look.relieved(run.result(1)) > 0.5 * bare(run)
                                                && Look.relieved(run.result(1)) < bare(run))))
                .compare(
                        LessonCase.bundled("usual supply", "orchard-lodge-vessel", RESEATS),
                        LessonCase.bundled("high supply", "orchard-lodge-vessel", HIGH, CHARGED, RESEATS),
                        LessonCase.bundled(
                                "high supply, large vessel",
                                "orchard-lodge-vessel",
                                HIGH,
                                CHARGED,
                                RESEATS,
                                "vessel.volume=50 L"))
                .notice(
                        Claim.computed(
                                run -> Statement.of(
                                        "With a supply of {} the gauge climbs to {}, with {} to {}.",
                                        Look.gauge(Look.supply(run.result(0))),
                                        Look.gauge(Look.peak(run.result(0))),
                                        Look.gauge(Look.supply(run.result(1))),
                                        Look.gauge(Look.peak(run.result(1)))),
                                run -> Look.peak(run.result(1)) > Look.peak(run.result(0))),
                        Claim.computed(
                                run -> Statement.of(
                                        "Up to the set pressure of {} the vessel may use {} of its size at the usual supply, but"
                                                + " {} at the high one.",
                                        Look.gauge(Look.reliefSet(run.result(0))),
                                        Look.share(factor(run.result(0))),
                                        Look.share(factor(run.result(1)))),
                                run -> factor(run.result(1)) < factor(run.result(0))),
                        Claim.computed(
                                run -> Statement.of(
                                        "At the high supply {} runs out, although the vessel is charged to the supply. A vessel of"
                                                + " {} keeps the valve shut.",
                                        Look.volume(Look.relieved(run.result(1))),
                                        Look.volume(Look.vessel(run.result(2)).volume())),
                                run -> Look.opened(run.result(1))
                                        && Math.abs(Look.precharge(run.result(1)) - Look.supply(run.result(1))) < 1e3
                                        && !Look.opened(run.result(2))),
                        Claim.computed(
                                run -> Statement.of(
                                        "In all these houses the relief valve shuts again at {}. One that reseats below the supply"
                                                + " pressure would never shut: the supply would run out through it.",
                                        Look.gauge(Look.reseat(run.result(1)))),
                                run -> Look.reseat(run.result(0)) == Look.reseat(run.result(1))
                                        && Look.reseat(run.result(1)) > Look.supply(run.result(1))
                                        && Look.relieved(Look.with(run, 1, "relief[0].reseats=5.6 bar"))
                                                > 10 * Look.relieved(run.result(1))))
                .why(
                        Claim.of(
                                "A vessel takes up water only as far as the pressure may climb. If the supply stands close to the"
                                        + " set pressure, there is little to climb.",
                                run -> Look.reliefSet(run.result(1)) - Look.supply(run.result(1))
                                        < 0.3 * (Look.reliefSet(run.result(0)) - Look.supply(run.result(0)))),
                        Claim.of(
                                "The formula below says which share of a vessel can be used. It shrinks to nothing as the supply"
                                        + " nears the set pressure.",
                                run -> factor(run.result(1)) < factor(run.result(0))),
                        Claim.of(
                                "The cure is a lower supply pressure, not a higher set pressure: the tank is not made for"
                                        + " more.",
                                run -> !Look.opened(run.result(0))))
                .formula(Formula.of(
                        "f = 1 - p_1 / p_2",
                        Sources.HANDBOOK,
                        "f",
                        "usable share of a vessel charged to the supply",
                        "p_1",
                        "supply pressure, counted from empty space",
                        "p_2",
                        "set pressure of the relief valve, counted from empty space"))
                .tryIt(TryIt.of(
                        1,
                        "A lower supply and a precharge to match leave far more room.",
                        run -> Look.peak(run) < 4.5e5 && !Look.opened(run),
                        "supply.pressure=3 bar",
                        "vessel.precharge=3 bar"))
                .check(
                        "Supply and set pressure are close together. Will a larger vessel help?",
                        Claim.computed(
                                run -> Statement.of(
                                        "Yes, but it must be " + Look.number(timesAsLarge(run))
                                                + " times as large here: {} in place of {}. Even that has no margin: the gauge"
                                                + " climbs to {}, and the valve opens at {}. Lowering the supply is the better"
                                                + " cure.",
                                        Look.volume(wholeLitres(run)),
                                        Look.volume(Look.vessel(run.result(1)).volume()),
                                        Look.gauge(Look.peak(withWholeLitres(run))),
                                        Look.gauge(Look.reliefSet(run.result(1)))),
                                run -> timesAsLarge(run) > 3
                                        && !Look.opened(withWholeLitres(run))
                                        && Look.reliefSet(run.result(1)) - Look.peak(withWholeLitres(run)) < 3e4
                                        && !Look.opened(run.result(0))))
                .sources(Sources.HANDBOOK, Sources.BOYLE, Sources.HOUSES)
                .caution(Cautions.LOOK_ONLY)
                .caution(Cautions.GAS_VALVE)
                .cautionAfter(
                        "Never raise the set pressure of a relief valve, and never fit one of a higher set pressure to stop"
                                + " a drip.")
                .slider(new LessonSlider(
                        1,
                        "Pressure of the supply; the precharge follows it",
                        List.of("supply.pressure", "vessel.precharge"),
                        List.of("3", "3.6", "4.2", "5", "5.8", "6.4"),
                        "bar"))
                .expect("At the usual supply the valve stays shut.", run -> !Look.opened(run.result(0)))
                .expect("At the high supply it opens.", run -> Look.opened(run.result(1)))
                .expect("The usable share falls to less than a tenth.", run -> factor(run.result(1)) < 0.1)
                .reading(
                        "Gauge after one hour, usual supply",
                        Kind.GAUGE_PRESSURE,
                        run -> Look.at(run.result(0), Channel.GAUGE_READING, HOUR))
                .reading(
                        "Time until the relief valve opens, high supply",
                        Kind.TIME,
                        run -> Look.time(run.result(1), EventKind.RELIEF_OPENED))
                .reading(
                        "Released after one hour, high supply",
                        Kind.VOLUME,
                        run -> Look.at(run.result(1), Channel.RELIEVED_TOTAL, HOUR))
                .build();
    }

    static Lesson reducingValve() {
        return Lesson.builder("the-reducing-valve", "A reducing valve, with and without a bypass")
                .question("A reducing valve lowers the pressure of the mains. Does it also keep the gauge low?")
                .prediction(
                        "A reducing valve without a bypass is fitted and the tank is heated. What does the gauge do?",
                        run -> Look.opened(run.result(0))
                                ? 0
                                : Look.peak(run.result(0)) > Look.supply(run.result(0)) + 1e4 ? 2 : 1,
                        Option.right("It climbs until the relief valve opens."),
                        Option.wrong(
                                "It stays at the reduced pressure.",
                                Claim.of(
                                        "The reducing valve only limits what comes in. What grows inside the house it keeps"
                                                + " in.",
                                        run -> run.result(0).totals().returned() == 0 && Look.opened(run.result(0)))),
                        Option.wrong(
                                "It climbs to the pressure of the mains.",
                                Claim.computed(
                                        run -> Statement.of(
                                                "That is what a bypass would do. Without one nothing opens at {}, the pressure of the"
                                                        + " mains.",
                                                Look.gauge(mains(run.result(0)))),
                                        run -> Look.peak(run.result(0)) > mains(run.result(0)) + 5e4
                                                && Math.abs(Look.peak(run.result(1)) - mains(run.result(1))) < 5e4)))
                .compare(
                        LessonCase.bundled("without a bypass", "tannery-yard"),
                        LessonCase.bundled("with a bypass", "tannery-yard-bypass"),
                        LessonCase.bundled("with a bypass, high mains pressure", "tannery-yard-bypass-high-street"))
                .notice(
                        Claim.computed(
                                run -> Statement.of(
                                        "The reducing valve is set to {}, yet the gauge starts at {}. The valve holds its setting"
                                                + " while water runs; to shut tight it needs {} more, called lock-up.",
                                        Look.gauge(reducing(run.result(0)).set().gauge(Look.atmosphere(run.result(0)))),
                                        Look.gauge(Look.supply(run.result(0))),
                                        Look.difference(reducing(run.result(0)).lockUpRise())),
                                run -> Math.abs(Look.supply(run.result(0))
                                                - reducing(run.result(0)).set().gauge(Look.atmosphere(run.result(0)))
                                                - reducing(run.result(0)).lockUpRise())
                                        < 1e3),
                        Claim.computed(
                                run -> Statement.of(
                                        "Without a bypass the gauge climbs to {}, where the relief valve is set. {} runs out of"
                                                + " it.",
                                        Look.gauge(Look.peak(run.result(0))),
                                        Look.volume(Look.relieved(run.result(0)))),
                                run -> Math.abs(Look.peak(run.result(0)) - Look.reliefSet(run.result(0))) < 1e3),
                        Claim.computed(
                                run -> Statement.of(
                                        "With a bypass the gauge stops at {}, because the mains stand at {}. {} goes back to the"
                                                + " mains.",
                                        Look.gauge(Look.peak(run.result(1))),
                                        Look.gauge(mains(run.result(1))),
                                        Look.volume(run.result(1).totals().returned())),
                                run -> Math.abs(Look.peak(run.result(1)) - mains(run.result(1))) < 5e4
                                        && !Look.opened(run.result(1))),
                        Claim.computed(
                                run -> Statement.of(
                                        "With the mains at {} and the relief valve set to {} the bypass never opens. {} runs out.",
                                        Look.gauge(mains(run.result(2))),
                                        Look.gauge(Look.reliefSet(run.result(2))),
                                        Look.volume(Look.relieved(run.result(2)))),
                                run -> run.result(2)
                                                .first(EventKind.BYPASS_OPENED)
                                                .isEmpty()
                                        && mains(run.result(2)) > Look.reliefSet(run.result(2))))
                .why(
                        Claim.of(
                                "A reducing valve lets in water until the house has the pressure it is set to, and a little"
                                        + " more. Then it shuts, and it works like a check valve.",
                                run -> Look.opened(run.result(0))
                                        && run.result(0).totals().returned() == 0),
                        Claim.of(
                                "A bypass is a second way around it, with a flap that opens towards the mains. It opens once the"
                                        + " house has a little more pressure than the mains.",
                                run -> run.result(1).totals().returned() > 0
                                        && Look.peak(run.result(1)) > mains(run.result(1))),
                        Claim.of(
                                "So a bypass holds the house at the pressure of the mains. If that is above the set pressure of"
                                        + " the relief valve, the relief valve opens first, and the bypass saves nothing.",
                                run -> Math.abs(Look.relieved(run.result(2)) / Look.relieved(run.result(0)) - 1)
                                        < 0.02))
                .formula(Formula.of(
                        "p_house <= p_mains + dp_bypass",
                        Sources.BYPASS_CODE,
                        "p_house",
                        "pressure in the house",
                        "p_mains",
                        "pressure of the mains",
                        "dp_bypass",
                        "the little more that opens the bypass"))
                .tryIt(TryIt.of(
                        1,
                        "With the mains raised above the set pressure of the relief valve, it drips in spite of the bypass.",
                        Look::opened,
                        "supply.pressure=6.5 bar"))
                .check(
                        "When does a bypass keep the relief valve dry?",
                        Claim.of(
                                "When the mains stand well below the set pressure of the relief valve, day and night.",
                                run -> !Look.opened(run.result(1))
                                        && Look.opened(run.result(2))
                                        && mains(run.result(1)) < Look.reliefSet(run.result(1))))
                .sources(Sources.BYPASS_CODE, Sources.EXPANSION_CODE, Sources.HOUSES)
                .caution(Cautions.LOOK_ONLY)
                .cautionAfter(Cautions.NEVER_PLUG)
                .expect("Without a bypass the relief valve opens.", run -> Look.opened(run.result(0)))
                .expect(
                        "With a bypass it stays shut, and water goes back.",
                        run -> !Look.opened(run.result(1))
                                && run.result(1).totals().returned() > 0)
                .expect(
                        "With high mains pressure the relief valve opens and the bypass does not.",
                        run -> Look.opened(run.result(2))
                                && run.result(2).first(EventKind.BYPASS_OPENED).isEmpty())
                .reading(
                        "Released after two hours, without a bypass",
                        Kind.VOLUME,
                        run -> Look.at(run.result(0), Channel.RELIEVED_TOTAL, 2 * HOUR))
                .reading(
                        "Gauge after four hours, with a bypass",
                        Kind.GAUGE_PRESSURE,
                        run -> Look.at(run.result(1), Channel.GAUGE_READING, 4 * HOUR))
                .build();
    }

    /** What the house of the second case releases without any vessel (m3). */
    private static double bare(LessonRun run) {
        return Look.relieved(Look.with(run, 1, "vessel=none"));
    }

    /** How many times the usual vessel it takes at the high supply. */
    private static double timesAsLarge(LessonRun run) {
        return wholeLitres(run) / Look.vessel(run.result(1)).volume();
    }

    /** The smallest vessel in whole litres that keeps the valve shut at the high supply (m3). */
    private static double wholeLitres(LessonRun run) {
        return Math.ceil(1e3 * Look.smallestDry(run, 1)) / 1e3;
    }

    private static RunResult withWholeLitres(LessonRun run) {
        return Look.with(run, 1, "vessel.volume=" + 1e3 * wholeLitres(run) + " L");
    }

    private static ReducingValve reducing(RunResult run) {
        return run.system().supply().reducingValve().orElseThrow();
    }

    private static double factor(RunResult run) {
        double atmosphere = Look.atmosphere(run);
        return 1 - (Look.supply(run) + atmosphere) / (Look.reliefSet(run) + atmosphere);
    }

    private static double mains(RunResult run) {
        return run.gauge(run.trace().value(Channel.MAINS_ABSOLUTE, 0));
    }
}
