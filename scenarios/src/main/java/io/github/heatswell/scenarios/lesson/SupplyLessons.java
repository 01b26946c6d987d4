package io.github.heatswell.scenarios.lesson;

import io.github.heatswell.finding.Measure.Kind;
import io.github.heatswell.finding.Statement;
import io.github.heatswell.result.Channel;
import io.github.heatswell.result.EventKind;
import io.github.heatswell.result.RunResult;
import java.util.List;

/** What the pressure of the street does, and a reducing valve. */
final class SupplyLessons {

    private SupplyLessons() {}

    static Lesson highStreet() {
        return Lesson.builder("a-high-street-pressure", "A high street pressure")
                .question("The vessel is sound and well charged, and the valve drips all the same. Why?")
                .prediction(
                        "The street stands only a little below the set pressure. Does the same vessel still help?",
                        List.of("Yes, as before.", "No, it has almost no room."),
                        run -> Look.opened(run.result(1)) ? 1 : 0)
                .compare(
                        LessonCase.bundled("usual street", "orchard-lodge-vessel"),
                        LessonCase.bundled(
                                "high street",
                                "orchard-lodge-vessel",
                                "supply.pressure=6.4 bar",
                                "vessel.precharge=6.4 bar",
                                "relief[0].reseats=6.7 bar"))
                .notice(run -> List.of(
                        Statement.of(
                                "With a supply of {} the gauge climbs to {}, with {} to {}.",
                                Look.gauge(Look.supply(run.result(0))),
                                Look.gauge(Look.peak(run.result(0))),
                                Look.gauge(Look.supply(run.result(1))),
                                Look.gauge(Look.peak(run.result(1)))),
                        Statement.of(
                                "Up to the set pressure of {} the vessel may use {} of its size at the usual street, but"
                                        + " {} at the high one.",
                                Look.gauge(Look.reliefSet(run.result(0))),
                                Look.share(factor(run.result(0))),
                                Look.share(factor(run.result(1)))),
                        Statement.of(
                                "At the high street {} runs out, although the vessel is charged to the supply.",
                                Look.volume(Look.relieved(run.result(1))))))
                .why(
                        "A vessel takes up water only as far as the pressure may climb. If the supply stands close to the"
                                + " set pressure, there is almost nothing to climb.",
                        "The share of a vessel that can be used is called the acceptance factor. It shrinks to nothing as"
                                + " the supply nears the set pressure.",
                        "The cure is a lower supply pressure, not a higher set pressure: the tank is not made for more.")
                .formula(Formula.of(
                        "f = 1 - p_1 / p_2",
                        Sources.HANDBOOK,
                        "f",
                        "acceptance factor, the share of the vessel that can be used",
                        "p_1",
                        "supply pressure, counted from empty space",
                        "p_2",
                        "set pressure of the relief valve, counted from empty space"))
                .tryIt(TryIt.of(
                        "orchard-lodge-vessel",
                        "A lower street and a precharge to match leave far more room.",
                        run -> Look.peak(run) < 4.5e5 && !Look.opened(run),
                        "supply.pressure=3 bar",
                        "vessel.precharge=3 bar"))
                .check(
                        "Supply and set pressure are nearly the same. Will a larger vessel help?",
                        "Hardly. The usable share is close to nothing, so even a large vessel takes up little.")
                .sources(Sources.HANDBOOK, Sources.BOYLE, Sources.HOUSES)
                .caution(
                        "Never raise the set pressure of a relief valve, and never fit one of a higher set pressure to stop"
                                + " a drip.")
                .caution(Cautions.GAS_VALVE)
                .slider(new LessonSlider(
                        0,
                        "Pressure of the street; the charge of the vessel stays",
                        "supply.pressure",
                        List.of("3", "3.6", "4.2", "5", "5.8", "6.6"),
                        "bar"))
                .expect("At the usual street the valve stays shut.", run -> !Look.opened(run.result(0)))
                .expect("At the high street it opens.", run -> Look.opened(run.result(1)))
                .expect("The usable share falls to less than a tenth.", run -> factor(run.result(1)) < 0.1)
                .reading("Usable share, usual street", Kind.SHARE, run -> factor(run.result(0)))
                .reading("Usable share, high street", Kind.SHARE, run -> factor(run.result(1)))
                .reading("Let out at the high street", Kind.VOLUME, run -> Look.relieved(run.result(1)))
                .build();
    }

    static Lesson reducingValve() {
        return Lesson.builder("the-reducing-valve", "A reducing valve, with and without a bypass")
                .question("A reducing valve lowers the pressure of the street. Does it also keep the gauge low?")
                .prediction(
                        "A reducing valve without a bypass is fitted and the tank is heated. What does the gauge do?",
                        List.of("It stays at the reduced pressure.", "It climbs to the set pressure."),
                        run -> Look.opened(run.result(0)) ? 1 : 0)
                .compare(
                        LessonCase.bundled("without a bypass", "tannery-yard"),
                        LessonCase.bundled("with a bypass", "tannery-yard-bypass"),
                        LessonCase.bundled("with a bypass, high street", "tannery-yard-bypass-high-street"))
                .notice(run -> List.of(
                        Statement.of(
                                "Without a bypass the gauge starts at {} and climbs to {}. {} runs out of the valve.",
                                Look.gauge(Look.supply(run.result(0))),
                                Look.gauge(Look.peak(run.result(0))),
                                Look.volume(Look.relieved(run.result(0)))),
                        Statement.of(
                                "With a bypass it stops at {}, because the street stands at {}. {} goes back to the"
                                        + " street.",
                                Look.gauge(Look.peak(run.result(1))),
                                Look.gauge(street(run.result(1))),
                                Look.volume(run.result(1).totals().returned())),
                        Statement.of(
                                "With the street at {} and the set pressure at {} the bypass never opens. {} runs out.",
                                Look.gauge(street(run.result(2))),
                                Look.gauge(Look.reliefSet(run.result(2))),
                                Look.volume(Look.relieved(run.result(2))))))
                .why(
                        "A reducing valve lets in water until the house has the pressure it is set to. Then it closes, and"
                                + " it works like a check valve.",
                        "A bypass is a second way around it, with a flap that opens towards the street. It opens once the"
                                + " house has a little more pressure than the street.",
                        "So a bypass holds the house at the pressure of the street. If that is above the set pressure, the"
                                + " relief valve opens first, and the bypass saves nothing.")
                .formula(Formula.of(
                        "p_house <= p_street + dp_bypass",
                        Sources.BYPASS_CODE,
                        "p_house",
                        "pressure in the house",
                        "p_street",
                        "pressure of the street",
                        "dp_bypass",
                        "the little more that opens the bypass"))
                .tryIt(TryIt.of(
                        "tannery-yard-bypass",
                        "With the street raised above the set pressure the relief valve drips in spite of the bypass.",
                        Look::opened,
                        "supply.pressure=6.5 bar"))
                .check(
                        "When does a bypass keep the relief valve dry?",
                        "When the street stands well below the set pressure of the relief valve, day and night.")
                .sources(Sources.BYPASS_CODE, Sources.EXPANSION_CODE, Sources.HOUSES)
                .caution(Cautions.NEVER_PLUG)
                .caution(Cautions.LOOK_ONLY)
                .expect("Without a bypass the relief valve opens.", run -> Look.opened(run.result(0)))
                .expect(
                        "With a bypass it stays shut, and water goes back.",
                        run -> !Look.opened(run.result(1))
                                && run.result(1).totals().returned() > 0)
                .expect(
                        "With a high street the relief valve opens and the bypass does not.",
                        run -> Look.opened(run.result(2))
                                && run.result(2).first(EventKind.BYPASS_OPENED).isEmpty())
                .expect(
                        "The bypass holds the house close to the street.",
                        run -> Look.peak(run.result(1)) < street(run.result(1)) + 5e4)
                .reading("Highest pressure without a bypass", Kind.GAUGE_PRESSURE, run -> Look.peak(run.result(0)))
                .reading("Highest pressure with a bypass", Kind.GAUGE_PRESSURE, run -> Look.peak(run.result(1)))
                .reading(
                        "Returned through the bypass",
                        Kind.VOLUME,
                        run -> run.result(1).totals().returned())
                .build();
    }

    private static double factor(RunResult run) {
        double atmosphere = Look.atmosphere(run);
        return 1 - (Look.supply(run) + atmosphere) / (Look.reliefSet(run) + atmosphere);
    }

    private static double street(RunResult run) {
        return run.gauge(run.trace().value(Channel.STREET_ABSOLUTE, 0));
    }
}
