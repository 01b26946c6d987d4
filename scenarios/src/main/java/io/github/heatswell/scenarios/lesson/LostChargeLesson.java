package io.github.heatswell.scenarios.lesson;

import io.github.heatswell.ageing.PrechargeLoss;
import io.github.heatswell.assessment.Measure.Kind;
import io.github.heatswell.assessment.Statement;
import io.github.heatswell.result.Channel;
import io.github.heatswell.result.EventKind;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.scenarios.lesson.Prediction.Option;
import java.util.List;

/** What the years do to the charge of a vessel. */
final class LostChargeLesson {

    private static final double HOUR = 3600;

    private LostChargeLesson() {}

    static Lesson lostCharge() {
        return Lesson.builder("the-vessel-over-the-years", "The vessel over the years")
                .question("Does a vessel last for ever?")
                .prediction(
                        "A sound vessel stopped the drip. Nobody touches it again. When does the valve drip again?",
                        run -> Look.opened(run.result(0)) ? 2 : Look.opened(run.result(2)) ? 0 : 1,
                        Option.right("After some years, though nothing broke."),
                        Option.wrong(
                                "Never, as long as the rubber is whole.",
                                Claim.computed(
                                        run -> Statement.of("Whole rubber still lets a little gas through. After about "
                                                + Look.number(years(run, 1)) + " years the valve opens."),
                                        run -> Look.opened(run.result(1)))),
                        Option.wrong(
                                "In the first weeks.",
                                Claim.computed(
                                        run -> Statement.of(
                                                "The loss is far slower: about {} in a year.",
                                                Look.difference(lostInAYear(run))),
                                        run -> !Look.opened(run.result(0)) && years(run, 1) > 1)))
                .compare(
                        LessonCase.bundled("newly charged", "orchard-lodge-vessel"),
                        LessonCase.bundled("some gas lost", "orchard-lodge-vessel", "vessel.precharge=2.8 bar"),
                        LessonCase.bundled("most gas lost", "orchard-lodge-lost-charge"))
                .notice(
                        Claim.computed(
                                run -> Statement.of(
                                        "Newly charged, the gauge climbs to {}. With a precharge of {} left it climbs to {}, with {}"
                                                + " left to {}.",
                                        Look.gauge(Look.peak(run.result(0))),
                                        Look.gauge(Look.precharge(run.result(1))),
                                        Look.gauge(Look.peak(run.result(1))),
                                        Look.gauge(Look.precharge(run.result(2))),
                                        Look.gauge(Look.peak(run.result(2)))),
                                run -> Look.peak(run.result(0)) < Look.peak(run.result(1))),
                        Claim.computed(
                                run -> Statement.of(
                                        "A vessel like this loses about {} of precharge a year. That is "
                                                + Look.number(years(run, 1)) + " years to the second case and "
                                                + Look.number(years(run, 2))
                                                + " to the third. The estimate is good to a factor of three.",
                                        Look.difference(lostInAYear(run))),
                                run -> years(run, 1) < years(run, 2) && PrechargeLoss.HIGH / PrechargeLoss.USUAL < 3.1),
                        Claim.computed(
                                run -> Statement.of(
                                        "At the start {}, {} and {} of the vessel are full of water. In the end {} runs out.",
                                        Look.share(Look.fullAtStart(run.result(0))),
                                        Look.share(Look.fullAtStart(run.result(1))),
                                        Look.share(Look.fullAtStart(run.result(2))),
                                        Look.volume(Look.relieved(run.result(2)))),
                                run -> Look.opened(run.result(2))))
                .why(
                        Claim.of(
                                "Rubber is not quite tight. A little gas goes through it into the water, year after year."),
                        Claim.of(
                                "As the gas goes, the supply pushes more water in. So the gas that is left always stands at the"
                                        + " supply pressure, goes through at the same pace, and the precharge falls evenly.",
                                run -> Look.near(
                                        years(run, 2) / years(run, 1),
                                        (Look.precharge(run.result(0)) - Look.precharge(run.result(2)))
                                                / (Look.precharge(run.result(0)) - Look.precharge(run.result(1))),
                                        0.01)),
                        Claim.of(
                                "In the end the vessel is as full as its diaphragm allows, and takes nothing more. The valve then"
                                        + " opens as if there were no vessel.",
                                run -> Math.abs(Look.fullAtStart(run.result(2))
                                                        - Look.vessel(run.result(2))
                                                                .acceptance())
                                                < 1e-3
                                        && Look.near(Look.relieved(run.result(2)), bare(run), 0.03)),
                        Claim.of("The vessel is not broken: it must be checked and charged again, with the heater off"
                                + " and cold, the vessel isolated and its water side drained."))
                .formula(Formula.of(
                        "p_n = p_0 - k p_s n",
                        Sources.PERMEABILITY,
                        "p_n",
                        "precharge after n years, on the gauge",
                        "p_0",
                        "precharge when new, on the gauge; at most the supply pressure",
                        "k",
                        "share lost in a year; here " + Look.plain(PrechargeLoss.USUAL),
                        "p_s",
                        "supply pressure at the vessel, on the gauge",
                        "n",
                        "number of years"))
                .tryIt(TryIt.of(
                        0,
                        "With little gas left the relief valve opens again.",
                        Look::opened,
                        "vessel.precharge=1 bar"))
                .check(
                        "How can a sound vessel be useless?",
                        Claim.of(
                                "Its gas is gone. Water fills it as far as the diaphragm allows before the heating starts.",
                                run -> Math.abs(Look.fullAtStart(run.result(2))
                                                - Look.vessel(run.result(2)).acceptance())
                                        < 1e-3))
                .sources(Sources.PERMEABILITY, Sources.BOYLE, Sources.HOUSES)
                .caution(Cautions.GAS_VALVE)
                .caution(Cautions.NEVER_PLUG)
                .slider(new LessonSlider(
                        0,
                        "Precharge left in the vessel",
                        List.of("vessel.precharge"),
                        List.of("0.6", "1", "1.5", "2", "2.8", "3.5", "4.2"),
                        "bar"))
                .expect("New, the valve stays shut.", run -> !Look.opened(run.result(0)))
                .expect("In the end the valve opens.", run -> Look.opened(run.result(2)))
                .reading(
                        "Gauge after one hour, some gas lost",
                        Kind.GAUGE_PRESSURE,
                        run -> Look.at(run.result(1), Channel.GAUGE_READING, HOUR))
                .reading("Time until the relief valve opens, some gas lost", Kind.TIME, run -> opening(run.result(1)))
                .reading("Time until the relief valve opens, most gas lost", Kind.TIME, run -> opening(run.result(2)))
                .build();
    }

    private static double opening(RunResult run) {
        return Look.time(run, EventKind.RELIEF_OPENED);
    }

    /** What the house of the second case releases without any vessel (m3). */
    private static double bare(LessonRun run) {
        return Look.relieved(Look.with(run, 1, "vessel=none"));
    }

    /** The precharge that goes in the first year (Pa, difference), by the law of the outlook. */
    private static double lostInAYear(LessonRun run) {
        double now = Look.precharge(run.result(0));
        return now - new PrechargeLoss(PrechargeLoss.USUAL).left(now, Look.supply(run.result(0)), 1);
    }

    /** How long the charge of the first case takes to fall to that of another (years), by the law of the outlook. */
    private static double years(LessonRun run, int index) {
        return new PrechargeLoss(PrechargeLoss.USUAL)
                .yearsUntil(
                        Look.precharge(run.result(0)), Look.precharge(run.result(index)), Look.supply(run.result(0)));
    }
}
