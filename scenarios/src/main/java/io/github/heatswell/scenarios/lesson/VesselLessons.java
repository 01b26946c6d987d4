package io.github.heatswell.scenarios.lesson;

import io.github.heatswell.assessment.Measure.Kind;
import io.github.heatswell.assessment.Statement;
import io.github.heatswell.result.Channel;
import io.github.heatswell.result.EventKind;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.scenarios.lesson.Prediction.Option;
import java.util.List;

/** What an expansion vessel does, and what precharge it needs for that. */
final class VesselLessons {

    private static final double HOUR = 3600;

    private VesselLessons() {}

    static Lesson cushion() {
        return Lesson.builder("the-gas-cushion", "The gas cushion")
                .question("Where can the water go, if not to the mains and not out of the valve?")
                .prediction(
                        "A vessel with a cushion of gas is fitted. Does the relief valve still open?",
                        run -> !Look.opened(run.result(1))
                                ? 2
                                : opening(run.result(1)) > 2 * opening(run.result(0)) ? 1 : 0,
                        Option.wrong(
                                "Yes, as before.",
                                Claim.of(
                                        "Without a vessel the water can only squeeze itself and stretch steel. Gas gives way"
                                                + " far more, so the gauge never gets that far.",
                                        run -> !Look.opened(run.result(1)))),
                        Option.wrong(
                                "Yes, but later.",
                                Claim.computed(
                                        run -> Statement.of(
                                                "A vessel of a third of the size does just that. This one is enough to keep the"
                                                        + " valve shut here: the gauge stops {} below the set pressure. By the"
                                                        + " usual rules it is still too small, for they keep the peak below the"
                                                        + " reseat pressure of {}.",
                                                Look.difference(
                                                        Look.reliefSet(run.result(1)) - Look.peak(run.result(1))),
                                                Look.gauge(Look.reseat(run.result(1)))),
                                        run -> Look.peak(run.result(1)) < Look.reliefSet(run.result(1))
                                                && Look.peak(run.result(1)) > Look.reseat(run.result(1))
                                                && Look.near(
                                                        Look.vessel(run.result(1))
                                                                .volume(),
                                                        3 * 4e-3,
                                                        0.01)
                                                && Look.opened(Look.with(run, 1, "vessel.volume=4 L"))
                                                && opening(Look.with(run, 1, "vessel.volume=4 L"))
                                                        > opening(run.result(0)))),
                        Option.right("No."))
                .compare(
                        LessonCase.bundled("no vessel", "orchard-lodge"),
                        LessonCase.bundled("with a vessel", "orchard-lodge-vessel"))
                .notice(
                        Claim.computed(
                                run -> Statement.of(
                                        "Without a vessel the gauge climbs to {}, with one to {}. The valve is set to {}.",
                                        Look.gauge(Look.peak(run.result(0))),
                                        Look.gauge(Look.peak(run.result(1))),
                                        Look.gauge(Look.reliefSet(run.result(1)))),
                                run -> Look.peak(run.result(1)) < Look.peak(run.result(0))),
                        Claim.computed(
                                run -> Statement.of(
                                        "Without a vessel {} runs out. With one nothing runs out, and the vessel takes up {}.",
                                        Look.volume(Look.relieved(run.result(0))),
                                        Look.volume(most(run.result(1)))),
                                run -> Look.relieved(run.result(1)) == 0))
                .why(
                        Claim.of(
                                "An expansion vessel is a small tank with a sheet of rubber across it, the diaphragm. Gas is on"
                                        + " one side, water on the other."),
                        Claim.of(
                                "Gas is easy to squeeze. When the water grows it moves into the vessel and presses the gas"
                                        + " together. The pressure climbs far less than in a house that is shut.",
                                run -> Look.peak(run.result(1)) < Look.peak(run.result(0))),
                        Claim.of(
                                "When the water cools, the gas pushes it back. Nothing is wasted.",
                                run -> Look.relieved(run.result(1)) == 0
                                        && Look.at(
                                                        run.result(1),
                                                        Channel.VESSEL_WATER,
                                                        run.result(1).end())
                                                < most(run.result(1))))
                .formula(Formula.of(
                        "p V_gas = p_0 V_0",
                        Sources.BOYLE,
                        "p",
                        "pressure now, counted from empty space",
                        "V_gas",
                        "room the gas has now",
                        "p_0",
                        "pressure of the gas while the vessel is empty of water, counted from empty space",
                        "V_0",
                        "size of the vessel"))
                .tryIt(TryIt.of(
                        1,
                        "A vessel behind a closed valve is worth nothing: the relief valve opens.",
                        Look::opened,
                        "vessel.condition=isolated"))
                .check(
                        "Why does gas help where water does not?",
                        Claim.of(
                                "Gas gives way several thousand times more than water at these pressures. A little growth of the"
                                        + " water changes its pressure only a little.",
                                run -> gasOverWater(run.result(1)) > 2000 && gasOverWater(run.result(1)) < 10000))
                .sources(Sources.BOYLE, Sources.EXPANSION_CODE, Sources.HOUSES)
                .caution(Cautions.LOOK_ONLY)
                .cautionAfter(Cautions.GAS_VALVE)
                .cautionAfter(Cautions.NEVER_PLUG)
                .expect("Without a vessel the valve opens.", run -> Look.opened(run.result(0)))
                .expect("With the vessel it stays shut.", run -> !Look.opened(run.result(1)))
                .expect("The gas follows Boyle's law.", run -> Math.abs(boyle(run.result(1)) - 1) < 1e-3)
                .reading(
                        "Gauge after half an hour, with the vessel",
                        Kind.GAUGE_PRESSURE,
                        run -> Look.at(run.result(1), Channel.GAUGE_READING, HOUR / 2))
                .reading(
                        "Gauge after two hours, no vessel",
                        Kind.GAUGE_PRESSURE,
                        run -> Look.at(run.result(0), Channel.GAUGE_READING, 2 * HOUR))
                .build();
    }

    static Lesson precharge() {
        return Lesson.builder("the-precharge", "The precharge")
                .question("Does it matter how much gas is in the vessel?")
                .prediction(
                        "Three equal vessels hold gas at the supply pressure, far below it and far above it. With which"
                                + " is the peak of the gauge lowest?",
                        VesselLessons::lowestPeak,
                        Option.right("The one at the supply pressure."),
                        Option.wrong(
                                "The one far below.",
                                Claim.computed(
                                        run -> Statement.of(
                                                "Soft gas sounds good. But the supply alone fills {} of that vessel before the heater"
                                                        + " starts.",
                                                Look.share(Look.fullAtStart(run.result(1)))),
                                        run -> Look.fullAtStart(run.result(1)) > Look.fullAtStart(run.result(0)))),
                        Option.wrong(
                                "The one far above.",
                                Claim.computed(
                                        run -> Statement.of(
                                                "More gas is not more room. Until the gauge reaches {} no water gets in at all.",
                                                Look.gauge(Look.precharge(run.result(2)))),
                                        run -> Look.precharge(run.result(2)) > Look.supply(run.result(2))
                                                && Math.abs(lifted(run.result(2)) - Look.precharge(run.result(2)))
                                                        < 1e3)))
                .compare(
                        LessonCase.bundled("at the supply pressure", "orchard-lodge-vessel"),
                        LessonCase.bundled("far below", "orchard-lodge-vessel", "vessel.precharge=1.6 bar"),
                        LessonCase.bundled("far above", "orchard-lodge-vessel", "vessel.precharge=6 bar"))
                .notice(
                        Claim.computed(
                                run -> Statement.of(
                                        "With a precharge of {} the gauge climbs to {}, with {} to {}, with {} to {}.",
                                        Look.gauge(Look.precharge(run.result(0))),
                                        Look.gauge(Look.peak(run.result(0))),
                                        Look.gauge(Look.precharge(run.result(1))),
                                        Look.gauge(Look.peak(run.result(1))),
                                        Look.gauge(Look.precharge(run.result(2))),
                                        Look.gauge(Look.peak(run.result(2)))),
                                run -> lowestPeak(run) == 0),
                        Claim.computed(
                                run -> Statement.of(
                                        "With too little gas {} of the vessel is full of water before heating starts.",
                                        Look.share(Look.fullAtStart(run.result(1)))),
                                run -> Look.opened(run.result(1))),
                        Claim.computed(
                                run -> Statement.of(
                                        "With too much gas the vessel does nothing until the gauge has jumped from {} to {}.",
                                        Look.gauge(Look.supply(run.result(2))),
                                        Look.gauge(lifted(run.result(2)))),
                                run -> Look.opened(run.result(2))
                                        && Math.abs(lifted(run.result(2)) - Look.precharge(run.result(2))) < 1e3))
                .why(
                        Claim.of("The precharge is the pressure of the gas while no water is in the vessel."),
                        Claim.of(
                                "Too low, and the supply alone fills much of the vessel. Little room is left for the growth.",
                                run -> Look.fullAtStart(run.result(1)) > 0.3),
                        Claim.of(
                                "Too high, and the gas holds the diaphragm down. The water finds no way in until its pressure"
                                        + " has climbed to the precharge.",
                                run -> Look.fullAtStart(run.result(2)) == 0),
                        Claim.of(
                                "Right is close to the supply pressure: the vessel is empty when the heating starts, and gives"
                                        + " way at once.",
                                run -> Math.abs(Look.precharge(run.result(0)) - Look.supply(run.result(0))) < 2e4
                                        && Look.fullAtStart(run.result(0)) < 0.02
                                        && lowestPeak(run) == 0))
                .formula(Formula.of(
                        "full at start = 1 - p_0 / p_1",
                        Sources.BOYLE,
                        "p_0",
                        "precharge, counted from empty space",
                        "p_1",
                        "supply pressure, counted from empty space; if it is the lower one, the vessel is empty"))
                .tryIt(TryIt.of(
                        0,
                        "A precharge above the set pressure of the relief valve is no help at all: the valve opens.",
                        Look::opened,
                        "vessel.precharge=7.5 bar"))
                .check(
                        "A vessel was charged far above the supply pressure. What does the gauge show first?",
                        Claim.of(
                                "A quick climb to the precharge, as if there were no vessel. Only then does it give way.",
                                run -> Math.abs(lifted(run.result(2)) - Look.precharge(run.result(2))) < 1e3))
                .sources(Sources.BOYLE, Sources.DIN, Sources.HOUSES)
                .caution(Cautions.GAS_VALVE)
                .slider(new LessonSlider(
                        0,
                        "Precharge of the vessel",
                        List.of("vessel.precharge"),
                        List.of("1", "2", "3", "4.2", "5", "6", "7"),
                        "bar"))
                .expect("The one at the supply pressure stays lowest.", run -> lowestPeak(run) == 0)
                .expect(
                        "Far below, about half the vessel is full of water at the start.",
                        run -> Math.abs(Look.fullAtStart(run.result(1)) - 0.5) < 0.02)
                .reading(
                        "Gauge after half an hour, precharge far below",
                        Kind.GAUGE_PRESSURE,
                        run -> Look.at(run.result(1), Channel.GAUGE_READING, HOUR / 2))
                .reading(
                        "Time until the relief valve opens, precharge far above",
                        Kind.TIME,
                        run -> opening(run.result(2)))
                .reading(
                        "Time until the relief valve opens, precharge far below",
                        Kind.TIME,
                        run -> opening(run.result(1)))
                .build();
    }

    private static double opening(RunResult run) {
        return Look.time(run, EventKind.RELIEF_OPENED);
    }

    /** How many times more gas gives way than as much water, at the supply pressure. */
    private static double gasOverWater(RunResult run) {
        return 1 / (Look.supply(run) + Look.atmosphere(run)) / WaterFacts.compressibility(Look.cold(run));
    }

    private static double most(RunResult run) {
        return run.extremes().mostVesselWater().value();
    }

    private static double lifted(RunResult run) {
        return Look.pressureAt(run, EventKind.VESSEL_LIFTED);
    }

    private static int lowestPeak(LessonRun run) {
        int lowest = 0;
        for (int i = 1; i < run.results().size(); i++) {
            lowest = Look.peak(run.result(i)) < Look.peak(run.result(lowest)) ? i : lowest;
        }
        return lowest;
    }

    /** The product p V_gas over p_0 V_0 at the last sample; 1 by Boyle's law. */
    private static double boyle(RunResult run) {
        int last = run.trace().count() - 1;
        double volume = Look.vessel(run).volume();
        double gas = volume - run.trace().value(Channel.VESSEL_WATER, last);
        double precharge = Look.vessel(run).precharge().absolute(Look.atmosphere(run));
        return run.trace().value(Channel.PRESSURE_ABSOLUTE, last) * gas / (precharge * volume);
    }
}
