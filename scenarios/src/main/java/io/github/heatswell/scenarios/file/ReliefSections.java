package io.github.heatswell.scenarios.file;

import static io.github.heatswell.scenarios.file.Field.amount;
import static io.github.heatswell.scenarios.file.Field.pressure;
import static io.github.heatswell.scenarios.file.Field.word;

import io.github.heatswell.scenarios.quantity.Kind;
import io.github.heatswell.system.NamedValue;
import io.github.heatswell.system.ReliefFault;
import io.github.heatswell.system.ReliefValve;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Relief valves: their keys, and those of their faults. */
final class ReliefSections {

    /** As many relief valves as a file may describe. */
    static final int MAX_VALVES = 20;

    private static final Section<ReliefFault.Builder, ReliefFault> FAULT = new Section<>(
            "relief.fault",
            ReliefFault::builder,
            ReliefFault.Builder::build,
            () -> List.of(
                    amount(
                                    "stuck-open",
                                    "lift at which it is stuck open",
                                    "5 %",
                                    Kind.RATIO,
                                    ReliefFault.Builder::stuckOpen)
                            .needed("unless the next two are", ReliefSections::noLeak)
                            .checkedAgainst("leaks-from", "leakage"),
                    pressure(
                                    "leaks-from",
                                    "pressure above which the closed seat leaks; below opens",
                                    "3 bar",
                                    ReliefFault.Builder::leaksFrom)
                            .needed("with leakage", given -> given.containsKey("leakage"))
                            .checkedAgainst("../opens"),
                    amount(
                                    "leakage",
                                    "seat leakage just below the set pressure",
                                    "10 mL/min",
                                    Kind.FLOW,
                                    ReliefFault.Builder::leakage)
                            .needed("with leaks-from", given -> given.containsKey("leaks-from"))));

    static final Section<ReliefValve.Builder, ReliefValve> RELIEF = new Section<>(
            "relief",
            ReliefValve::builder,
            ReliefValve.Builder::build,
            () -> List.of(
                    new Field<>(
                                    "name",
                                    "name in the results; different for every valve",
                                    "expansion valve",
                                    Form.text(60, ReliefValve.Builder::name))
                            .typically("relief valve", "no name was given"),
                    pressure(NamedValue.SET_PRESSURE.key(), "set pressure", "7 bar", ReliefValve.Builder::setPressure),
                    pressure(
                                    "full-lift",
                                    "full-lift pressure; not below opens",
                                    "7.7 bar",
                                    ReliefValve.Builder::fullLiftPressure)
                            .typically(Typical.of(
                                            "110 % of opens",
                                            "full lift at 10 % above the set pressure; a German test leaflet gives 20 % for EN 1487"
                                                    + " to 1491")
                                    .from(given -> Typical.Relief.share(given.get("opens"), 1.1), "opens"))
                            .checkedAgainst("opens"),
                    pressure(
                                    NamedValue.RESEAT_PRESSURE.key(),
                                    "reseat pressure; below opens",
                                    "5.6 bar",
                                    ReliefValve.Builder::reseatPressure)
                            .typically(Typical.of(
                                            "80 % of opens", "a blowdown of 20 %; no usual value if opens is absolute")
                                    .from(given -> Typical.Relief.share(given.get("opens"), 0.8), "opens"))
                            .checkedAgainst("opens"),
                    amount("full-flow", "flow at full lift", "20 L/min", Kind.FLOW, ReliefValve.Builder::fullFlow)
                            .typically("20 L/min", "far above the expansion flow, so it hardly matters"),
                    word(
                                    "character",
                                    "modulating: lift grows with pressure; snap: opens to full lift at once",
                                    "modulating",
                                    Words.of(ReliefValve.LiftCharacteristic.values()),
                                    ReliefValve.Builder::liftCharacteristic)
                            .typically("modulating", "small spring-loaded valves dribble before they lift"),
                    amount(
                                    NamedValue.SET_TEMPERATURE.key(),
                                    "water temperature at which a temperature and pressure relief valve (T&P) opens"
                                            + " as well; if left out, it responds to pressure only",
                                    "99 degC",
                                    Kind.TEMPERATURE,
                                    ReliefValve.Builder::opensAt)
                            .leftOutFreely(),
                    amount(
                                    "reseats-at",
                                    "water temperature below which it closes again",
                                    "88 degC",
                                    Kind.TEMPERATURE,
                                    ReliefValve.Builder::reseatsAt)
                            .typically(Typical.of(
                                            "11 K below opens-at, but not below 40 degC; none without opens-at",
                                            "a T&P valve: 99 and 88 degC")
                                    .from(given -> Typical.Relief.reseatsAt(given.get("opens-at")), "opens-at"))
                            .needed("with opens-at", ReliefSections::mindsTemperature)
                            .checkedAgainst("opens-at"),
                    word(
                                    "location",
                                    "branch: on the cold pipe, discharging cold water; tank-top: in the hottest"
                                            + " water. With opens-at it must be tank-top",
                                    "tank-top",
                                    Words.of(ReliefValve.Location.values()),
                                    ReliefValve.Builder::location)
                            .typically(Typical.of(
                                            "tank-top with opens-at, else branch",
                                            "its probe must be in the hottest water")
                                    .from(given -> Optional.of("tank-top"), "opens-at"))
                            .needed("with opens-at", ReliefSections::mindsTemperature)
                            .checkedAgainst("opens-at"),
                    word(
                                    "kind",
                                    "safety-group: on the cold inlet, there to discharge the expansion, with a check valve of its"
                                            + " own (EN 1487, EN 1488); expansion-valve: the same without one (EN 1491);"
                                            + " relief-valve if left out",
                                    "safety-group",
                                    Words.of(ReliefValve.Kind.values()),
                                    ReliefValve.Builder::kind)
                            .leftOutFreely()
                            .checkedAgainst("opens-at", "location"),
                    amount(
                                    NamedValue.RATED_INPUT.key(),
                                    "heat input for which the T&P valve is certified, from its plate; unknown if"
                                            + " left out",
                                    "30 kW",
                                    Kind.POWER,
                                    ReliefValve.Builder::ratedInput)
                            .leftOutFreely()
                            .checkedAgainst("opens-at"),
                    amount(
                                    "height",
                                    "height above the tank's drain cock; none if left out",
                                    "1.4 m",
                                    Kind.LENGTH,
                                    ReliefValve.Builder::height)
                            .leftOutFreely(),
                    word(
                                    "fault",
                                    "blocked: it never opens; or one of the faults below; no fault if left out",
                                    "blocked",
                                    Map.of("blocked", ReliefFault.blocked()),
                                    ReliefValve.Builder::fault)
                            .or(Nested.one(FAULT, ReliefValve.Builder::fault))
                            .leftOutFreely()));

    private ReliefSections() {}

    private static boolean noLeak(Map<String, String> given) {
        return !given.containsKey("leaks-from") && !given.containsKey("leakage");
    }

    private static boolean mindsTemperature(Map<String, String> given) {
        return given.containsKey("opens-at");
    }
}
