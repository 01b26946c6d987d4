package io.github.heatswell.scenarios.lesson;

import io.github.heatswell.finding.Measure.Kind;
import io.github.heatswell.finding.Statement;
import io.github.heatswell.result.Channel;
import io.github.heatswell.result.EventKind;
import io.github.heatswell.result.RunResult;
import java.util.List;

/** What an expansion vessel does, and what it needs for that. */
final class VesselLessons {

    /** Share of its gas that a vessel loses in a year, estimated from the permeability of butyl rubber. */
    private static final double LOST_A_YEAR = 0.06;

    private VesselLessons() {}

    static Lesson cushion() {
        return Lesson.builder("the-gas-cushion", "The gas cushion")
                .question("Where can the water go, if not to the street and not out of the valve?")
                .prediction(
                        "A vessel with a cushion of gas is fitted. Does the relief valve still open?",
                        List.of("Yes, but later.", "No."),
                        run -> Look.opened(run.result(1)) ? 0 : 1)
                .compare(
                        LessonCase.bundled("no vessel", "orchard-lodge"),
                        LessonCase.bundled("with a vessel", "orchard-lodge-vessel"))
                .notice(run -> List.of(
                        Statement.of(
                                "Without a vessel the gauge climbs to {}, with one to {}. The valve is set to {}.",
                                Look.gauge(Look.peak(run.result(0))),
                                Look.gauge(Look.peak(run.result(1))),
                                Look.gauge(Look.reliefSet(run.result(1)))),
                        Statement.of(
                                "Without a vessel {} runs out. With one {} runs out, and the vessel takes up {}.",
                                Look.volume(Look.relieved(run.result(0))),
                                Look.volume(Look.relieved(run.result(1))),
                                Look.volume(most(run.result(1))))))
                .why(
                        "An expansion vessel is a small tank with a sheet of rubber across it, the diaphragm. Gas is on"
                                + " one side, water on the other.",
                        "Gas is easy to squeeze. When the water grows it moves into the vessel and presses the gas"
                                + " together. The pressure climbs only a little.",
                        "When the water cools, the gas pushes it back. Nothing is wasted.")
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
                        "orchard-lodge-vessel",
                        "A vessel cut off by a closed valve is worth nothing: the relief valve opens.",
                        Look::opened,
                        "vessel.condition=isolated"))
                .check(
                        "Why does gas help where water does not?",
                        "Gas gives way many thousand times more than water at these pressures. A little growth of the"
                                + " water changes its pressure only a little.")
                .sources(Sources.BOYLE, Sources.EXPANSION_CODE, Sources.HOUSES)
                .caution(Cautions.GAS_VALVE)
                .caution(Cautions.NEVER_PLUG)
                .expect("Without a vessel the valve opens.", run -> Look.opened(run.result(0)))
                .expect("With the vessel it stays shut.", run -> !Look.opened(run.result(1)))
                .expect("The gas follows Boyle's law.", run -> Math.abs(boyle(run.result(1)) - 1) < 1e-3)
                .reading("Highest pressure with the vessel", Kind.GAUGE_PRESSURE, run -> Look.peak(run.result(1)))
                .reading("Most water in the vessel", Kind.VOLUME, run -> most(run.result(1)))
                .build();
    }

    static Lesson precharge() {
        return Lesson.builder("the-precharge", "Precharge: right, low and high")
                .question("Does it matter how much gas is in the vessel?")
                .prediction(
                        "Three equal vessels hold gas at the supply pressure, far below it and far above it. Which keeps"
                                + " the pressure lowest?",
                        List.of("The one at the supply pressure.", "The one far below.", "The one far above."),
                        VesselLessons::lowestPeak)
                .compare(
                        LessonCase.bundled("at the supply pressure", "orchard-lodge-vessel"),
                        LessonCase.bundled("far below", "orchard-lodge-vessel", "vessel.precharge=1.6 bar"),
                        LessonCase.bundled("far above", "orchard-lodge-vessel", "vessel.precharge=6 bar"))
                .notice(run -> List.of(
                        Statement.of(
                                "With a precharge of {} the gauge climbs to {}, with {} to {}, with {} to {}.",
                                Look.gauge(Look.precharge(run.result(0))),
                                Look.gauge(Look.peak(run.result(0))),
                                Look.gauge(Look.precharge(run.result(1))),
                                Look.gauge(Look.peak(run.result(1))),
                                Look.gauge(Look.precharge(run.result(2))),
                                Look.gauge(Look.peak(run.result(2)))),
                        Statement.of(
                                "With too little gas {} of the vessel is full of water before heating starts.",
                                Look.share(Look.fullAtStart(run.result(1)))),
                        Statement.of(
                                "With too much gas the vessel does nothing until the gauge has jumped from {} to {}.",
                                Look.gauge(Look.supply(run.result(2))),
                                Look.gauge(lifted(run.result(2))))))
                .why(
                        "The precharge is the pressure of the gas while no water is in the vessel.",
                        "Too low, and the supply alone fills much of the vessel. Little room is left for the growth.",
                        "Too high, and the gas holds the diaphragm down. The water finds no way in until its pressure"
                                + " has climbed to the precharge.",
                        "Right is close to the supply pressure: the vessel is empty when the heating starts, and gives"
                                + " way at once.")
                .formula(Formula.of(
                        "full at start = 1 - p_0 / p_1",
                        Sources.BOYLE,
                        "p_0",
                        "precharge, counted from empty space",
                        "p_1",
                        "supply pressure, counted from empty space; if it is the lower one, the vessel is empty"))
                .tryIt(TryIt.of(
                        "orchard-lodge-vessel",
                        "A precharge above the set pressure is no help at all: the valve opens.",
                        Look::opened,
                        "vessel.precharge=7.5 bar"))
                .check(
                        "A vessel was charged far above the supply pressure. What does the gauge show first?",
                        "A quick climb to the precharge, as if there were no vessel. Only then does it give way.")
                .sources(Sources.BOYLE, Sources.DIN, Sources.HOUSES)
                .caution(Cautions.GAS_VALVE)
                .slider(new LessonSlider(
                        0,
                        "Precharge of the vessel",
                        "vessel.precharge",
                        List.of("1", "2", "3", "4.2", "5", "6", "7"),
                        "bar"))
                .expect("The one at the supply pressure stays lowest.", run -> lowestPeak(run) == 0)
                .expect(
                        "Far below, about half the vessel is full of water at the start.",
                        run -> Math.abs(Look.fullAtStart(run.result(1)) - 0.5) < 0.02)
                .expect(
                        "Far above, it lifts only at the precharge.",
                        run -> Math.abs(lifted(run.result(2)) - Look.precharge(run.result(2))) < 1e3)
                .expect("Far above, it is empty at the start.", run -> Look.fullAtStart(run.result(2)) == 0)
                .reading("Highest pressure, right precharge", Kind.GAUGE_PRESSURE, run -> Look.peak(run.result(0)))
                .reading("Highest pressure, low precharge", Kind.GAUGE_PRESSURE, run -> Look.peak(run.result(1)))
                .reading("Highest pressure, high precharge", Kind.GAUGE_PRESSURE, run -> Look.peak(run.result(2)))
                .reading(
                        "Share full of water at the start, low precharge",
                        Kind.SHARE,
                        run -> Look.fullAtStart(run.result(1)))
                .build();
    }

    static Lesson size() {
        return Lesson.builder("the-size", "How large is large enough?")
                .question("Will the smallest vessel do?")
                .prediction(
                        "A vessel of a third of the size is fitted. Does the relief valve stay shut?",
                        List.of("Yes.", "No."),
                        run -> Look.opened(run.result(0)) ? 1 : 0)
                .compare(
                        LessonCase.bundled("small", "orchard-lodge-vessel", "vessel.volume=4 L"),
                        LessonCase.bundled("middling", "orchard-lodge-vessel"),
                        LessonCase.bundled("large", "orchard-lodge-vessel", "vessel.volume=24 L"))
                .notice(run -> List.of(
                        Statement.of(
                                "With {} of vessel the gauge climbs to {}, with {} to {}, with {} to {}.",
                                Look.volume(Look.vessel(run.result(0)).volume()),
                                Look.gauge(Look.peak(run.result(0))),
                                Look.volume(Look.vessel(run.result(1)).volume()),
                                Look.gauge(Look.peak(run.result(1))),
                                Look.volume(Look.vessel(run.result(2)).volume()),
                                Look.gauge(Look.peak(run.result(2)))),
                        Statement.of(
                                "The small one lets {} run out of the relief valve, the large one {}.",
                                Look.volume(Look.relieved(run.result(0))),
                                Look.volume(Look.relieved(run.result(2))))))
                .why(
                        "The smaller the cushion, the more the same water squeezes it, and the higher the pressure.",
                        "Size also has a diminishing return. From small to middling saves more than from middling to"
                                + " large.",
                        "The formula below leaves out that tank and pipes stretch, so it asks for a little too much. The"
                                + " command heatswell size shows both answers.")
                .formula(Formula.of(
                        "V_t = V_s (v_2/v_1 - 1 - 3 alpha dT) / (1 - p_1/p_2)",
                        Sources.HANDBOOK,
                        "V_t",
                        "size of the vessel",
                        "V_s",
                        "size of the hot tank",
                        "v_2",
                        "room a kilogram of hot water takes",
                        "v_1",
                        "room a kilogram of cold water takes",
                        "alpha",
                        "growth in length of the tank's metal, in 1/K",
                        "dT",
                        "degrees of warming, in K",
                        "p_1",
                        "supply pressure, counted from empty space",
                        "p_2",
                        "highest pressure allowed, counted from empty space"))
                .tryIt(TryIt.of(
                        "orchard-lodge-vessel",
                        "A vessel twice as large keeps the gauge more than a bar below the set pressure.",
                        run -> Look.peak(run) < Look.reliefSet(run) - 1e5,
                        "vessel.volume=24 L"))
                .check(
                        "Why is a vessel twice as large not twice as good?",
                        "The pressure cannot fall below that of the supply. The rise above it shrinks, but never to"
                                + " nothing.")
                .sources(Sources.HANDBOOK, Sources.BOYLE, Sources.HOUSES)
                .caution(Cautions.GAS_VALVE)
                .caution(Cautions.NEVER_PLUG)
                .slider(new LessonSlider(
                        1, "Size of the vessel", "vessel.volume", List.of("2", "4", "8", "12", "18", "24", "35"), "L"))
                .expect("The small one does not keep the valve shut.", run -> Look.opened(run.result(0)))
                .expect(
                        "The middling and the large one do.",
                        run -> !Look.opened(run.result(1)) && !Look.opened(run.result(2)))
                .expect(
                        "The larger, the lower the pressure.",
                        run -> Look.peak(run.result(2)) < Look.peak(run.result(1))
                                && Look.peak(run.result(1)) < Look.peak(run.result(0)))
                .reading("Highest pressure, small vessel", Kind.GAUGE_PRESSURE, run -> Look.peak(run.result(0)))
                .reading("Highest pressure, large vessel", Kind.GAUGE_PRESSURE, run -> Look.peak(run.result(2)))
                .reading("Let out with the small vessel", Kind.VOLUME, run -> Look.relieved(run.result(0)))
                .build();
    }

    static Lesson lostCharge() {
        return Lesson.builder("a-lost-charge", "A charge lost over the years")
                .question("The drip was cured by a vessel. Years later it is back. Why?")
                .prediction(
                        "The gas slowly leaves through the rubber. When does the valve drip again?",
                        List.of("Never.", "Some years later, though nothing broke.", "In the first weeks."),
                        run -> Look.opened(run.result(0)) ? 2 : Look.opened(run.result(2)) ? 1 : 0)
                .compare(
                        LessonCase.bundled("newly charged", "orchard-lodge-vessel"),
                        LessonCase.bundled("some gas lost", "orchard-lodge-vessel", "vessel.precharge=2.8 bar"),
                        LessonCase.bundled("most gas lost", "orchard-lodge-lost-charge"))
                .notice(run -> List.of(
                        Statement.of(
                                "Newly charged, the gauge climbs to {}. With {} left it climbs to {}, with {} left to {}.",
                                Look.gauge(Look.peak(run.result(0))),
                                Look.gauge(Look.precharge(run.result(1))),
                                Look.gauge(Look.peak(run.result(1))),
                                Look.gauge(Look.precharge(run.result(2))),
                                Look.gauge(Look.peak(run.result(2)))),
                        Statement.of(
                                "If {} of the gas goes each year, that is after " + Look.number(years(run, 1)) + " and "
                                        + Look.number(years(run, 2))
                                        + " years. The estimate is good to a factor of three.",
                                Look.share(LOST_A_YEAR)),
                        Statement.of(
                                "At the start {}, {} and {} of the vessel are full of water. In the end {} runs out.",
                                Look.share(Look.fullAtStart(run.result(0))),
                                Look.share(Look.fullAtStart(run.result(1))),
                                Look.share(Look.fullAtStart(run.result(2))),
                                Look.volume(Look.relieved(run.result(2))))))
                .why(
                        "Rubber is not quite tight. A little gas goes through it into the water, year after year.",
                        "As the gas goes, the supply pushes more water in. In the end the vessel is as full as it can be,"
                                + " and takes nothing more.",
                        "The valve then opens as if there were no vessel. The vessel is not broken: it must be checked"
                                + " and charged again, with the heater off and the water side empty.")
                .formula(Formula.of(
                        "p_n = p_0 (1 - s)^n",
                        Sources.PERMEABILITY,
                        "p_n",
                        "precharge after n years, counted from empty space",
                        "p_0",
                        "precharge when new, counted from empty space",
                        "s",
                        "share of the gas lost in a year",
                        "n",
                        "number of years"))
                .tryIt(TryIt.of(
                        "orchard-lodge-vessel",
                        "With little gas left the relief valve opens again.",
                        Look::opened,
                        "vessel.precharge=1 bar"))
                .check(
                        "How can a sound vessel be useless?",
                        "Its gas is gone. Water fills it to the limit before the heating starts.")
                .sources(Sources.PERMEABILITY, Sources.BOYLE, Sources.HOUSES)
                .caution(Cautions.GAS_VALVE)
                .caution(Cautions.NEVER_PLUG)
                .slider(new LessonSlider(
                        0,
                        "Gas left in the vessel",
                        "vessel.precharge",
                        List.of("0.6", "1", "1.5", "2", "2.8", "3.5", "4.2"),
                        "bar"))
                .expect("New, the valve stays shut.", run -> !Look.opened(run.result(0)))
                .expect("In the end the valve opens.", run -> Look.opened(run.result(2)))
                .expect(
                        "In the end the vessel is at its limit before the heating starts.",
                        run -> Math.abs(Look.fullAtStart(run.result(2))
                                        - Look.vessel(run.result(2)).acceptance())
                                < 1e-3)
                .expect(
                        "The less gas, the higher the pressure.",
                        run -> Look.peak(run.result(0)) < Look.peak(run.result(1)))
                .reading("Highest pressure, newly charged", Kind.GAUGE_PRESSURE, run -> Look.peak(run.result(0)))
                .reading("Highest pressure, some gas lost", Kind.GAUGE_PRESSURE, run -> Look.peak(run.result(1)))
                .reading("Let out, most gas lost", Kind.VOLUME, run -> Look.relieved(run.result(2)))
                .build();
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

    private static double years(LessonRun run, int index) {
        double left = absolute(run.result(index)) / absolute(run.result(0));
        return Math.log(left) / Math.log(1 - LOST_A_YEAR);
    }

    private static double absolute(RunResult run) {
        return Look.precharge(run) + Look.atmosphere(run);
    }
}
