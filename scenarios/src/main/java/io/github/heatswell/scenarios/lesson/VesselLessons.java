package io.github.heatswell.scenarios.lesson;

import io.github.heatswell.finding.Measure.Kind;
import io.github.heatswell.finding.Statement;
import io.github.heatswell.outlook.GasLoss;
import io.github.heatswell.result.Channel;
import io.github.heatswell.result.EventKind;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.scenarios.lesson.Prediction.Option;
import java.util.List;

/** What an expansion vessel does, and what it needs for that. */
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
                                                "A vessel that is too small does just that. This one is large enough: the gauge"
                                                        + " stops {} below the set pressure.",
                                                Look.difference(
                                                        Look.reliefSet(run.result(1)) - Look.peak(run.result(1)))),
                                        run -> Look.peak(run.result(1)) < Look.reliefSet(run.result(1))
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
                        "orchard-lodge-vessel",
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
                .caution(Cautions.GAS_VALVE)
                .caution(Cautions.NEVER_PLUG)
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
                        "Three equal vessels hold gas at the supply pressure, far below it and far above it. Which keeps"
                                + " the pressure lowest?",
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
                        "orchard-lodge-vessel",
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

    static Lesson size() {
        return Lesson.builder("the-size", "How large is large enough?")
                .question("Will the smallest vessel do?")
                .prediction(
                        "A vessel of a third of the size is fitted. What does the relief valve do?",
                        run -> !Look.opened(run.result(0)) ? 0 : Look.relieved(run.result(0)) < 0.4 * bare(run) ? 2 : 1,
                        Option.wrong(
                                "It stays shut.",
                                Claim.computed(
                                        run -> Statement.of(
                                                "The small vessel would have to take up what the medium one took, {}. That is nearly"
                                                        + " all of its {}: its gas would be squeezed far beyond the set pressure.",
                                                Look.volume(most(run.result(1))),
                                                Look.volume(Look.vessel(run.result(0))
                                                        .volume())),
                                        run -> Look.opened(run.result(0))
                                                && most(run.result(1))
                                                        > 0.7
                                                                * Look.vessel(run.result(0))
                                                                        .volume())),
                        Option.right("It opens and releases most of the water."),
                        Option.wrong(
                                "It opens and releases about a third of the water.",
                                Claim.computed(
                                        run -> Statement.of(
                                                "The vessel keeps only {} when the valve opens and gives some of it back as the valve"
                                                        + " falls to its reseat pressure. Without a vessel {} runs out, with the small"
                                                        + " one {}.",
                                                Look.volume(most(run.result(0))),
                                                Look.volume(bare(run)),
                                                Look.volume(Look.relieved(run.result(0)))),
                                        run -> Look.relieved(run.result(0)) > 0.5 * bare(run)
                                                && Look.relieved(run.result(0)) < bare(run))))
                .compare(
                        LessonCase.bundled("small", "orchard-lodge-vessel", "vessel.volume=4 L"),
                        LessonCase.bundled("medium", "orchard-lodge-vessel"),
                        LessonCase.bundled("large", "orchard-lodge-vessel", "vessel.volume=24 L"))
                .notice(
                        Claim.computed(
                                run -> Statement.of(
                                        "With {} of vessel the gauge climbs to {}, with {} to {}, with {} to {}.",
                                        Look.volume(Look.vessel(run.result(0)).volume()),
                                        Look.gauge(Look.peak(run.result(0))),
                                        Look.volume(Look.vessel(run.result(1)).volume()),
                                        Look.gauge(Look.peak(run.result(1))),
                                        Look.volume(Look.vessel(run.result(2)).volume()),
                                        Look.gauge(Look.peak(run.result(2)))),
                                run -> Look.peak(run.result(2)) < Look.peak(run.result(1))
                                        && Look.peak(run.result(1)) < Look.peak(run.result(0))),
                        Claim.computed(
                                run -> Statement.of(
                                        "The small one lets {} run out of the relief valve, the large one nothing.",
                                        Look.volume(Look.relieved(run.result(0)))),
                                run -> Look.relieved(run.result(2)) == 0 && Look.relieved(run.result(0)) > 0),
                        Claim.computed(
                                run -> Statement.of(
                                        "Another {} lowers the peak of the medium vessel by {}, but that of the large one by only"
                                                + " {}.",
                                        Look.volume(1e-3),
                                        Look.difference(saving(run, 1)),
                                        Look.difference(saving(run, 2))),
                                run -> saving(run, 1) > saving(run, 2)))
                .why(
                        Claim.of(
                                "The smaller the cushion, the more the same water squeezes it, and the higher the pressure.",
                                run -> Look.peak(run.result(2)) < Look.peak(run.result(1))
                                        && Look.peak(run.result(1)) < Look.peak(run.result(0))),
                        Claim.of(
                                "Size has a diminishing return: each further litre saves less than the one before.",
                                VesselLessons::eachLitreSavesLess),
                        Claim.of(
                                "The formula below leaves out that tank and pipes stretch, so it asks for a little too much. The"
                                        + " command heatswell size shows both answers.",
                                run -> formulaVolume(run.result(1)) > Look.smallestDry(run, 1)
                                        && formulaVolume(run.result(1)) < 1.15 * Look.smallestDry(run, 1)))
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
                        "A vessel twice as large is fitted. Does the rise of the gauge above the supply fall to half?",
                        Claim.computed(
                                run -> Statement.of(
                                        "To less than half: from {} to {}, for the same water squeezes twice the gas far less. But"
                                                + " it never falls to nothing, and doubling once more saves fewer bar.",
                                        Look.difference(rise(run.result(1))),
                                        Look.difference(rise(run.result(2)))),
                                run -> rise(run.result(2)) < 0.5 * rise(run.result(1))
                                        && rise(run.result(2)) > 0
                                        && rise(run.result(1)) - rise(run.result(2))
                                                > rise(run.result(2)) - rise(Look.with(run, 2, "vessel.volume=48 L"))))
                .sources(Sources.HANDBOOK, Sources.BOYLE, Sources.HOUSES)
                .caution(Cautions.GAS_VALVE)
                .caution(Cautions.NEVER_PLUG)
                .slider(new LessonSlider(
                        1,
                        "Size of the vessel",
                        List.of("vessel.volume"),
                        List.of("2", "4", "8", "12", "18", "24", "35"),
                        "L"))
                .expect("The small one does not keep the valve shut.", run -> Look.opened(run.result(0)))
                .expect(
                        "The medium and the large one do.",
                        run -> !Look.opened(run.result(1)) && !Look.opened(run.result(2)))
                .reading("Time until the relief valve opens, small vessel", Kind.TIME, run -> opening(run.result(0)))
                .reading(
                        "Gauge after half an hour, medium vessel",
                        Kind.GAUGE_PRESSURE,
                        run -> Look.at(run.result(1), Channel.GAUGE_READING, HOUR / 2))
                .reading(
                        "Gauge after one hour, large vessel",
                        Kind.GAUGE_PRESSURE,
                        run -> Look.at(run.result(2), Channel.GAUGE_READING, HOUR))
                .build();
    }

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
                                run -> years(run, 1) < years(run, 2) && GasLoss.HIGH / GasLoss.USUAL < 3.1),
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
                                run -> near(
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
                                        && near(Look.relieved(run.result(2)), bare(run), 0.03)),
                        Claim.of(
                                "The vessel is not broken: it must be checked and charged again, with the heater off and the"
                                        + " water side empty."))
                .formula(Formula.of(
                        "p_n = p_0 - k p_s n",
                        Sources.PERMEABILITY,
                        "p_n",
                        "precharge after n years, on the gauge",
                        "p_0",
                        "precharge when new, on the gauge; at most the supply pressure",
                        "k",
                        "share lost in a year; here " + Look.plain(GasLoss.USUAL),
                        "p_s",
                        "supply pressure at the vessel, on the gauge",
                        "n",
                        "number of years"))
                .tryIt(TryIt.of(
                        "orchard-lodge-vessel",
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

    private static boolean near(double value, double other, double part) {
        return Math.abs(value / other - 1) < part;
    }

    private static double opening(RunResult run) {
        return Look.time(run, EventKind.RELIEF_OPENED);
    }

    private static double rise(RunResult run) {
        return Look.peak(run) - Look.supply(run);
    }

    /** What the house of the second case releases without any vessel (m3). */
    private static double bare(LessonRun run) {
        return Look.relieved(Look.with(run, 1, "vessel=none"));
    }

    /** By how much one litre more lowers the peak of a case (Pa, difference). */
    private static double saving(LessonRun run, int index) {
        double litres = Look.vessel(run.result(index)).volume() * 1e3;
        return Look.peak(run.result(index)) - Look.peak(Look.with(run, index, "vessel.volume=" + (litres + 1) + " L"));
    }

    /** Whether the peak falls by less with every litre, from the medium vessel on. */
    private static boolean eachLitreSavesLess(LessonRun run) {
        double before = Double.POSITIVE_INFINITY;
        double peak = Look.peak(run.result(1));
        int litres = (int) Math.round(Look.vessel(run.result(1)).volume() * 1e3);
        for (int more = 1; more <= litres; more++) {
            double next = Look.peak(Look.with(run, 1, "vessel.volume=" + (litres + more) + " L"));
            if (peak - next >= before || peak - next <= 0) {
                return false;
            }
            before = peak - next;
            peak = next;
        }
        return true;
    }

    /** The size the formula of the lesson asks for, up to the set pressure (m3). */
    private static double formulaVolume(RunResult run) {
        double warming = Look.setPoint(run) - Look.cold(run);
        double growth = WaterFacts.growth(Look.cold(run), Look.setPoint(run))
                - run.system().tank().shell().thermalGrowth() * warming;
        double air = Look.atmosphere(run);
        double factor = 1 - (Look.supply(run) + air) / (Look.reliefSet(run) + air);
        return run.system().tank().volume() * growth / factor;
    }

    /** How many times more gas gives way than as much water, at the supply pressure. */
    private static double gasOverWater(RunResult run) {
        return 1 / (Look.supply(run) + Look.atmosphere(run)) / WaterFacts.compressibility(Look.cold(run));
    }

    /** The precharge that goes in the first year (Pa, difference), by the law of the outlook. */
    private static double lostInAYear(LessonRun run) {
        double now = Look.precharge(run.result(0));
        return now - new GasLoss(GasLoss.USUAL).left(now, Look.supply(run.result(0)), 1);
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

    /** How long the charge of the first case takes to fall to that of another (years), by the law of the outlook. */
    private static double years(LessonRun run, int index) {
        return new GasLoss(GasLoss.USUAL)
                .yearsUntil(
                        Look.precharge(run.result(0)), Look.precharge(run.result(index)), Look.supply(run.result(0)));
    }
}
