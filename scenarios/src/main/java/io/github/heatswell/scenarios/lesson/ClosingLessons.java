package io.github.heatswell.scenarios.lesson;

import io.github.heatswell.assessment.Measure.Kind;
import io.github.heatswell.assessment.Statement;
import io.github.heatswell.result.Channel;
import io.github.heatswell.result.Event;
import io.github.heatswell.result.EventKind;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.scenarios.lesson.Prediction.Option;

/** What becomes of the water that heating adds: open and closed. */
final class ClosingLessons {

    private static final double HOUR = 3600;

    private ClosingLessons() {}

    static Lesson open() {
        return Lesson.builder("open-to-the-mains", "A house open to the mains")
                .question("Heated water needs more room. Where does it go in a house without any special valve?")
                .prediction(
                        "The tank is heated from cold, and no tap is open. What does the pressure do?",
                        run -> Look.opened(run.result(0)) ? 0 : rise(run.result(0)) > -1e4 ? 1 : 2,
                        Option.wrong(
                                "It climbs until something gives.",
                                Claim.of(
                                        "It would if the water were shut in. Here it can flow back the way it came.",
                                        run -> run.result(0).totals().returned() > 0)),
                        Option.right("It stays where it was."),
                        Option.wrong(
                                "It falls.",
                                Claim.of(
                                        "Water shrinks when it cools. When it is heated from here on it grows, so nothing"
                                                + " pulls the pressure down.",
                                        run -> WaterFacts.expansivity(Look.cold(run.result(0))) > 0)))
                .compare(LessonCase.bundled("open to the mains", "ferry-cottage"))
                .notice(
                        Claim.computed(
                                run -> Statement.of(
                                        "The gauge starts at {} and stays there.",
                                        Look.gauge(Look.supply(run.result(0)))),
                                run -> Math.abs(rise(run.result(0))) < 5e3),
                        Claim.computed(run -> Statement.of(
                                "Heating to {} pushed {} back into the mains.",
                                Look.temperature(Look.setPoint(run.result(0))),
                                Look.volume(run.result(0).totals().returned()))),
                        Claim.computed(
                                run -> Statement.of(
                                        "The formula below says the same. The water needs room for {}, and the tank gains {}"
                                                + " as its metal grows warm.",
                                        Look.volume(new HeatUp(run.result(0)).growth()),
                                        Look.volume(new HeatUp(run.result(0)).metal())),
                                run -> Look.near(
                                        new HeatUp(run.result(0)).growth() - new HeatUp(run.result(0)).metal(),
                                        run.result(0).totals().returned(),
                                        0.01)))
                .why(
                        Claim.of(
                                "Water grows a little when it is heated. The tank is already full, so the extra water has"
                                        + " to leave it."),
                        Claim.of(
                                "The warm tank grows too, but far less than its water.",
                                run -> new HeatUp(run.result(0)).metal() < 0.2 * new HeatUp(run.result(0)).growth()),
                        Claim.of(
                                "Here the way back to the mains is open. The mains are so large that they do not notice a"
                                        + " litre or two. So the pressure stays that of the supply."),
                        Claim.of(
                                "The relief valve is a safety valve that opens when the pressure gets too high. In this"
                                        + " house it has nothing to do.",
                                run -> !Look.opened(run.result(0))))
                .formula(Formula.of(
                        "V_out = V (1 - (1 + 3 alpha dT) rho_hot / rho_cold)",
                        Sources.WATER,
                        "V_out",
                        "water that leaves the tank, counted as cold water, in litres",
                        "V",
                        "what the cold tank holds, in litres",
                        "alpha",
                        "growth in length of the tank's metal, in 1/K",
                        "dT",
                        "degrees of warming, in K",
                        "rho_hot",
                        "weight of a litre of hot water, in kilograms",
                        "rho_cold",
                        "weight of a litre of cold water, in kilograms"))
                .tryIt(TryIt.of(
                        0,
                        "A check valve lets water in, but not back. With one in the feed the relief valve opens.",
                        Look::opened,
                        "supply.arrangement=check-valve"))
                .check(
                        "Why does the relief valve of an open house stay dry?",
                        Claim.of(
                                "The extra water flows back to the mains, so the pressure does not climb.",
                                run -> run.result(0).totals().returned() > 0 && !Look.opened(run.result(0))))
                .sources(Sources.WATER, Sources.TANK_WALL, Sources.HOUSES)
                .caution(Cautions.LOOK_ONLY)
                .expect("The pressure stays at that of the supply.", run -> Math.abs(rise(run.result(0))) < 5e3)
                .expect("The relief valve stays shut.", run -> !Look.opened(run.result(0)))
                .expect(
                        "Water goes back to the mains.",
                        run -> run.result(0).totals().returned() > 0)
                .reading(
                        "Water temperature after one hour",
                        Kind.TEMPERATURE,
                        run -> Look.at(run.result(0), Channel.WATER_MEAN, HOUR))
                .reading(
                        "Water temperature after two hours",
                        Kind.TEMPERATURE,
                        run -> Look.at(run.result(0), Channel.WATER_MEAN, 2 * HOUR))
                .build();
    }

    static Lesson closing() {
        return Lesson.builder("closing-the-system", "Closing the system")
                .question("A check valve lets water in, but not back. What happens now when the tank is heated?")
                .prediction(
                        "The same house with a check valve is heated from cold. Where does the extra water go?",
                        run -> Look.opened(run.result(1))
                                ? 2
                                : run.result(1).totals().returned() > 0 ? 1 : 0,
                        Option.wrong(
                                "Nowhere: the tank has room.",
                                Claim.computed(
                                        run -> Statement.of(
                                                "The tank does stretch and grow, but only by {}. The water needs room for"
                                                        + " {}.",
                                                Look.volume(room(run.result(1))),
                                                Look.volume(new HeatUp(run.result(1)).growth())),
                                        run -> room(run.result(1)) < new HeatUp(run.result(1)).growth())),
                        Option.wrong(
                                "Back to the mains.",
                                Claim.of(
                                        "That way is shut: the check valve lets no water back.",
                                        run -> run.result(1).totals().returned() == 0)),
                        Option.right("Out through the relief valve."))
                .compare(
                        LessonCase.bundled("open to the mains", "ferry-cottage"),
                        LessonCase.bundled("with a check valve", "ferry-cottage", "supply.arrangement=check-valve"))
                .notice(
                        Claim.computed(
                                run -> Statement.of(
                                        "Open, the gauge stays at {}. Closed, it climbs to {}.",
                                        Look.gauge(Look.peak(run.result(0))),
                                        Look.gauge(Look.peak(run.result(1)))),
                                run -> Math.abs(rise(run.result(0))) < 5e3 && rise(run.result(1)) > 1e5),
                        Claim.computed(run -> Statement.of(
                                "The relief valve opened {} after the start, when the water had reached {}.",
                                Look.time(Look.time(run.result(1), EventKind.RELIEF_OPENED)),
                                Look.temperature(warmthAtOpening(run.result(1))))),
                        Claim.computed(
                                run -> Statement.of(
                                        "Then the gauge falls to {} and stays just above it until the heater stops. All that"
                                                + " time the valve drips.",
                                        Look.gauge(Look.reseat(run.result(1)))),
                                run -> dripsJustAboveReseat(run.result(1))),
                        Claim.computed(
                                run -> Statement.of(
                                        "Of the {} that have no room, the warm metal takes {} and stretching takes {}. The"
                                                + " valve releases the rest, {}.",
                                        Look.volume(new HeatUp(run.result(1)).growth()),
                                        Look.volume(new HeatUp(run.result(1)).metal()),
                                        Look.volume(new HeatUp(run.result(1)).stretch(Look.reseat(run.result(1)))),
                                        Look.volume(Look.relieved(run.result(1)))),
                                run -> Look.near(
                                        new HeatUp(run.result(1)).released(), Look.relieved(run.result(1)), 0.02)))
                .why(
                        Claim.of(
                                "A check valve is a flap that lets water pass one way only. It keeps water of the house out"
                                        + " of the mains. A house with such a flap and all taps shut is called closed."),
                        Claim.of(
                                "The water still grows, but its way back is shut. It is squeezed, and the pressure climbs."
                                        + " The relief valve is made to open at a certain pressure, called its set pressure."),
                        Claim.of(
                                "Once open, the valve does not shut at that pressure again. It shuts at a lower one, its"
                                        + " reseat pressure. The fall between the two, called blowdown, is the cliff in the"
                                        + " picture. It takes moments, for a little water let out takes the squeeze away.",
                                run -> Look.reseat(run.result(1)) < Look.reliefSet(run.result(1))
                                        && fallsFast(run.result(1))),
                        Claim.of("Such a drip alone does not show that the valve is worn. A relief valve is there for"
                                + " emergencies: codes ask that the growth be taken up elsewhere."))
                .formula(Formula.of(
                        "V_relief = V_growth - V_metal - V_stretch(p_reseat)",
                        Sources.HOUSES,
                        "V_relief",
                        "what the relief valve releases, counted as cold water, in litres",
                        "V_growth",
                        "room the heated water wants, in litres",
                        "V_metal",
                        "room won as the warm metal grows, in litres",
                        "V_stretch",
                        "room won as the tank is stretched and the water squeezed up to a pressure, in litres",
                        "p_reseat",
                        "pressure at which the valve shuts again, in bar"))
                .tryIt(TryIt.of(
                        1,
                        "A backflow preventer is, for this, another check valve: the relief valve opens just the same.",
                        Look::opened,
                        "supply.arrangement=backflow-preventer"))
                .check(
                        "A valve began to drip after a check valve was fitted. Is it faulty?",
                        Claim.of(
                                "Probably not. The check valve closed the way back, and the relief valve lets the extra"
                                        + " water out.",
                                run -> Look.opened(run.result(1)) && !Look.opened(run.result(0))))
                .sources(
                        Sources.EXPANSION_CODE, Sources.NOT_BY_RELIEF, Sources.WATER, Sources.TANK_WALL, Sources.HOUSES)
                .caution(Cautions.LOOK_ONLY)
                .cautionAfter(Cautions.NEVER_PLUG)
                .cautionAfter("Do not take out a check valve to stop a drip. It protects the drinking water of others.")
                .expect("The open house stays dry.", run -> !Look.opened(run.result(0)))
                .expect("The closed house reaches the set pressure.", run -> Look.opened(run.result(1)))
                .expect(
                        "Nothing goes back through the check valve.",
                        run -> run.result(1).totals().returned() == 0)
                .reading(
                        "Released by the relief valve after two hours",
                        Kind.VOLUME,
                        run -> Look.at(run.result(1), Channel.RELIEVED_TOTAL, 2 * HOUR))
                .reading(
                        "Gauge after four hours, with the check valve",
                        Kind.GAUGE_PRESSURE,
                        run -> Look.at(run.result(1), Channel.GAUGE_READING, 4 * HOUR))
                .reading(
                        "Time until the gauge is back at the supply pressure",
                        Kind.TIME,
                        run -> backAtSupply(run.result(1)))
                .build();
    }

    /** What metal and stretching take by the time the valve reseats (m3). */
    private static double room(RunResult run) {
        HeatUp heatUp = new HeatUp(run);
        return heatUp.metal() + heatUp.stretch(Look.reseat(run));
    }

    /** Whether the valve flows, a little above its reseat pressure, shortly after it opened and shortly before the heater stops. */
    private static boolean dripsJustAboveReseat(RunResult run) {
        double step = run.trace().grid().step();
        double opened = Look.time(run, EventKind.RELIEF_OPENED) + 2 * step;
        double off = Look.time(run, EventKind.HEATER_OFF) - 2 * step;
        return opened < off && drips(run, opened) && drips(run, off);
    }

    private static boolean drips(RunResult run, double time) {
        double above = Look.at(run, Channel.GAUGE_READING, time) - Look.reseat(run);
        return above > 0 && above < 5e3 && Look.at(run, Channel.RELIEF_FLOW, time) > 0;
    }

    /** Whether the gauge is near the reseat pressure within two samples of the opening, after less than a hundredth of all. */
    private static boolean fallsFast(RunResult run) {
        double after =
                Look.time(run, EventKind.RELIEF_OPENED) + 2 * run.trace().grid().step();
        return Look.at(run, Channel.GAUGE_READING, after) - Look.reseat(run) < 5e3
                && Look.at(run, Channel.RELIEVED_TOTAL, after) < 0.05 * Look.relieved(run);
    }

    private static double backAtSupply(RunResult run) {
        return run.events().stream()
                .filter(event -> event.kind() == EventKind.SUPPLY_OPENED)
                .mapToDouble(Event::time)
                .findFirst()
                .orElse(run.end());
    }

    private static double warmthAtOpening(RunResult run) {
        return Look.at(run, Channel.WATER_MEAN, Look.time(run, EventKind.RELIEF_OPENED));
    }

    private static double rise(RunResult run) {
        return Look.peak(run) - Look.supply(run);
    }
}
