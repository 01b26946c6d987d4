package io.github.heatswell.scenarios.lesson;

import io.github.heatswell.assessment.Measure.Kind;
import io.github.heatswell.assessment.Statement;
import io.github.heatswell.result.Channel;
import io.github.heatswell.result.EventKind;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.scenarios.lesson.Prediction.Option;
import java.util.List;

/** How large an expansion vessel must be. */
final class VesselSizeLesson {

    private static final double HOUR = 3600;

    private VesselSizeLesson() {}

    static Lesson size() {
        return Lesson.builder("the-size", "How large is large enough?")
                .question("Will the smallest vessel do?")
                .prediction(
                        "A vessel a third as large as the one that helped is fitted. What does the relief valve do?",
                        run -> !Look.opened(run.result(0)) ? 1 : Look.relieved(run.result(0)) < 0.4 * bare(run) ? 2 : 0,
                        Option.right("It opens and releases most of the water."),
                        Option.wrong(
                                "It stays shut.",
                                Claim.computed(
                                        run -> Statement.of(
                                                "The small vessel would have to take up what the medium one took, {}. That is {} of its"
                                                        + " {}: its gas would be squeezed far beyond the set pressure.",
                                                Look.volume(most(run.result(1))),
                                                Look.share(most(run.result(1))
                                                        / Look.vessel(run.result(0))
                                                                .volume()),
                                                Look.volume(Look.vessel(run.result(0))
                                                        .volume())),
                                        run -> Look.opened(run.result(0))
                                                && most(run.result(1))
                                                        > 0.7
                                                                * Look.vessel(run.result(0))
                                                                        .volume())),
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
                                VesselSizeLesson::eachLitreSavesLess),
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
                        1,
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

    private static double most(RunResult run) {
        return run.extremes().mostVesselWater().value();
    }
}
