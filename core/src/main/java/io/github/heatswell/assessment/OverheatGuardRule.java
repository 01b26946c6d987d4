package io.github.heatswell.assessment;

import static io.github.heatswell.assessment.Measure.gauge;
import static io.github.heatswell.assessment.Measure.temperature;

import io.github.heatswell.assessment.Finding.Authority;
import io.github.heatswell.assessment.Finding.Severity;
import io.github.heatswell.place.Place;
import io.github.heatswell.place.PlaceRule;
import io.github.heatswell.place.PlaceRule.Topic;
import io.github.heatswell.system.NamedValue;
import io.github.heatswell.system.ReliefValve;
import io.github.heatswell.system.Tank;
import io.github.heatswell.units.TemperatureUnit;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.regex.Pattern;

/** What keeps the tank from bursting: is there a temperature and pressure relief valve, is it set right, is it big enough? */
final class OverheatGuardRule implements Rule {

    private static final String ASK = "Ask the local authority which safety devices a storage heater must have here.";

    private static final String SET_HIGH = "tp-relief-set-high";

    /** The cut-out is missing, or at least not described. */
    static final String NO_CUT_OUT = "cut-out-missing";

    /** What people call a valve that opens on temperature too. */
    private static final Pattern NAMED =
            Pattern.compile("\\bT ?(&|and|/) ?P\\b|\\bTPR?V?\\b|temperature", Pattern.CASE_INSENSITIVE);

    @Override
    public void look(AssessmentContext subject, Consumer<CandidateFinding> found) {
        List<ReliefValve> guards = subject.house.reliefValves().stream()
                .filter(valve -> valve.setTemperature().isPresent())
                .toList();
        if (subject.house.reliefValves().isEmpty()) {
            found.accept(noReliefValve(subject));
        } else if (guards.isEmpty()) {
            found.accept(noTemperatureRelief(subject));
        }
        guards.forEach(valve -> look(subject, valve, found));
        last(subject, guards).forEach(valve -> setPressure(subject, valve, found));
        if (isCutOutMissing(subject)) {
            found.accept(noCutOut(subject));
        }
        subject.working().stream()
                .min(Comparator.comparingDouble(valve -> setPressure(subject, valve)))
                .filter(valve -> Rule.exceeds(setPressure(subject, valve), highestRating(subject)))
                .ifPresent(valve -> found.accept(aboveWorkingPressure(subject, valve)));
    }

    /** What the tank is rated for at most (Pa, gauge), whoever has read its plate. */
    static double highestRating(AssessmentContext subject) {
        return subject.house.tank().workingPressureGiven() ? subject.workingPressure() : Tank.MAX_WORKING_PRESSURE;
    }

    /**
     * The setting (Pa, gauge) to hold against the tank's plate. Makers match the two plates without regard to the height between, so
     * the water below a valve counts only where it is more than a valve may let the pressure rise by.
     */
    static double setPressure(AssessmentContext subject, ReliefValve valve) {
        double plate = plate(subject, valve);
        double atTank = subject.setPressure(valve);
        boolean onTop = valve.location() == ReliefValve.Location.TANK_TOP;
        boolean small =
                atTank > plate && !Rule.exceeds(atTank, (1 + PeakRule.OVERPRESSURE) * subject.workingPressure());
        return onTop || small ? plate : atTank;
    }

    private static double plate(AssessmentContext subject, ReliefValve valve) {
        return valve.setPressure().gauge(subject.atmosphere);
    }

    /** The valves that are left when every other has failed: those that open on heat, or else the one set highest. */
    private static List<ReliefValve> last(AssessmentContext subject, List<ReliefValve> guards) {
        return guards.isEmpty()
                ? subject.house.reliefValves().stream()
                        .max(Comparator.comparingDouble(valve -> plate(subject, valve)))
                        .stream()
                        .toList()
                : guards;
    }

    /** Set above the tank's plate, the last valve guards nothing, also where a lower one stands before it: that one may fail. */
    private static void setPressure(AssessmentContext subject, ReliefValve valve, Consumer<CandidateFinding> found) {
        double set = plate(subject, valve);
        double most = subject.limits(Topic.RELIEF_PRESSURE).get(0).limit().orElseThrow();
        if (Rule.exceeds(set, highestRating(subject))) {
            found.accept(setAboveTank(subject, valve, gauge(set)));
        } else if (valve.setTemperature().isPresent() && Rule.exceeds(set, most)) {
            found.accept(setHigh(subject, valve, gauge(set), gauge(most)));
        }
    }

    private static void look(AssessmentContext subject, ReliefValve valve, Consumer<CandidateFinding> found) {
        double opensAt = valve.setTemperature().orElseThrow();
        double anywhere = marked(Place.NOT_KNOWN.laxest(Topic.RELIEF_TEMPERATURE));
        double here = subject.hasLimit(Topic.RELIEF_TEMPERATURE)
                ? marked(subject.place.strictest(Topic.RELIEF_TEMPERATURE))
                : anywhere;
        if (opensAt > here + 1e-6) {
            found.accept(hot(
                    subject,
                    valve,
                    opensAt > anywhere + 1e-6 ? Severity.FAULT : Severity.CAUTION,
                    temperature(opensAt),
                    temperature(here)));
        }
        if (subject.highestSetPoint() > opensAt - 1e-6) {
            found.accept(opensBeforeThermostat(subject, valve, temperature(subject.highestSetPoint())));
        }
        subject.house.heater().cutOut().stream()
                .filter(trips -> trips > opensAt - 1e-6)
                .forEach(trips -> found.accept(cutOutTooLate(valve, temperature(trips), temperature(opensAt))));
        if (valve.ratedInput().orElse(Double.POSITIVE_INFINITY) < subject.heatInput() * (1 - 1e-9)) {
            found.accept(tooSmall(subject, valve));
        }
    }

    /** A limit in the whole degrees Celsius that valves are marked with: 210 degF are 98.9 degC, and marked as 99 degC. */
    private static double marked(Optional<PlaceRule> rule) {
        double celsius =
                TemperatureUnit.CELSIUS.fromSi(rule.orElseThrow().limit().orElseThrow());
        return TemperatureUnit.CELSIUS.toSi(Math.ceil(celsius - 1e-6));
    }

    private static CandidateFinding noReliefValve(AssessmentContext subject) {
        return Finding.draft("relief-valve-missing", Severity.HAZARD)
                .says(
                        "No relief valve is described: nothing keeps the tank from bursting when the water expands or boils.")
                .advises(
                        "Turn the heater off and leave it off until a temperature and pressure relief valve with a free"
                                + " discharge pipe has been fitted.")
                .asks(ASK)
                .by(subject.by(Topic.RELIEF_PRESSURE, Codes.RELIEF_SETTING));
    }

    /** Whether a valve opens on temperature too, or at least is called so by whoever described it. */
    static boolean guardsAgainstHeat(ReliefValve valve) {
        return valve.setTemperature().isPresent() || NAMED.matcher(valve.name()).find();
    }

    private static CandidateFinding noTemperatureRelief(AssessmentContext subject) {
        Optional<ReliefValve> named = subject.house.reliefValves().stream()
                .filter(OverheatGuardRule::guardsAgainstHeat)
                .findFirst();
        if (named.isPresent()) {
            return temperatureNotGiven(subject, named.get());
        }
        if (subject.place.demand(Topic.HEAT_RELIEF).filter(PlaceRule::requires).isPresent()) {
            return temperatureReliefAskedFor(subject);
        }
        Severity severity = WaterTemperatureRule.mayFlash(subject) ? Severity.CAUTION : Severity.NOTE;
        Finding.Draft draft =
                Finding.draft("temperature-relief-missing", severity).rests(NamedValue.SET_TEMPERATURE);
        return (subject.house.heater().cutOut().isPresent()
                        ? draft.says(
                                        "Besides the thermostat, only the cut-out guards against boiling. No valve is described as"
                                                + " a temperature and pressure relief valve (T&P), with the temperature at which it"
                                                + " opens. Many European heaters are built that way.")
                                .advises(
                                        "Look for a T&P valve at the top of the tank and add it with the temperature on its plate if"
                                                + " there is one."
                                                + (subject.place.isKnown()
                                                        ? ""
                                                        : " In the US a storage heater must have one; in the UK an unvented one"
                                                                + " needs it, or another second device, besides the cut-out."))
                        : draft.says(
                                        "Neither a cut-out nor a valve that opens on temperature is described, so it is not known"
                                                + " what guards against boiling besides the thermostat.")
                                .advises(
                                        "Look at the heater and its papers for both and add what is there: a T&P valve sits at the"
                                                + " top of the tank and names its temperature on its plate, a cut-out behind the"
                                                + " thermostat's cover. If there is neither,"
                                                + " turn the heater off and call a licensed professional."))
                .asks(ASK)
                .by(subject.by(Topic.HEAT_RELIEF, Codes.TWO_DEVICES));
    }

    /** A valve with the name of one that opens on temperature: what is missing is a number in the description. */
    private static CandidateFinding temperatureNotGiven(AssessmentContext subject, ReliefValve valve) {
        boolean required = subject.place
                .demand(Topic.HEAT_RELIEF)
                .filter(PlaceRule::requires)
                .isPresent();
        boolean other = subject.house.heater().cutOut().isPresent() && !required;
        return Finding.draft("temperature-relief-missing", required ? Severity.CAUTION : Severity.NOTE)
                .compares(NamedValue.SET_TEMPERATURE)
                .says(Rule.quoted(valve.name())
                        + " is described without its temperature (opens-at), so it is not known whether it"
                        + " guards against boiling.")
                .advises("Read the temperature on the valve's plate and add it."
                        + (other
                                ? ""
                                : " If the plate names none, turn the heater off and have a licensed professional fit a"
                                        + " temperature and pressure relief valve."))
                .asks(ASK)
                .by(subject.by(Topic.HEAT_RELIEF, Codes.TWO_DEVICES));
    }

    /** Where the rules of the place ask for it, a cut-out does not take its place. */
    private static CandidateFinding temperatureReliefAskedFor(AssessmentContext subject) {
        String cutOut = subject.house.heater().cutOut().isPresent()
                ? " Besides the thermostat only the cut-out guards against boiling."
                : " No cut-out is described either.";
        return Finding.draft("temperature-relief-missing", Severity.FAULT)
                .compares(NamedValue.SET_TEMPERATURE)
                .says("No temperature and pressure relief valve (T&P) is described, and the rules here ask for one."
                        + cutOut)
                .advises(
                        "Look for a T&P valve at the top of the tank and add it with the temperature on its plate if there is"
                                + " one. If there is none, turn the heater off and have a licensed professional fit one.")
                .asks(ASK)
                .by(subject.by(Topic.HEAT_RELIEF, Codes.TWO_DEVICES));
    }

    private static CandidateFinding aboveWorkingPressure(AssessmentContext subject, ReliefValve valve) {
        boolean read = subject.house.tank().workingPressureGiven();
        Measure limit = gauge(highestRating(subject));
        Finding.Draft draft =
                Finding.draft("relief-set-above-tank", Severity.HAZARD).compares(NamedValue.SET_PRESSURE);
        return (read ? draft.compares(NamedValue.WORKING_PRESSURE) : draft)
                .says(
                        "No relief valve opens below {} at the tank, "
                                + (read
                                        ? "which is rated for only {}."
                                        : "and no tank of a house is rated for more than {}."),
                        gauge(setPressure(subject, valve)),
                        limit)
                .found(gauge(setPressure(subject, valve)))
                .limit(limit)
                .advises(
                        !Rule.exceeds(plate(subject, valve), highestRating(subject))
                                ? "The valve's setting suits the tank; its height does not, since the water below it adds to the"
                                        + " pressure. Turn the heater off and leave it off until the valve has been moved down beside"
                                        + " the tank."
                                : "Turn the heater off and leave it off until the relief valve has been replaced by one set to the"
                                        + " tank's working pressure or less.")
                .asks(ASK)
                .by(subject.by(Topic.RELIEF_PRESSURE, Codes.RELIEF_SETTING));
    }

    private static CandidateFinding setAboveTank(AssessmentContext subject, ReliefValve valve, Measure set) {
        Measure limit = gauge(highestRating(subject));
        return Finding.draft(SET_HIGH, Severity.HAZARD)
                .compares(NamedValue.SET_PRESSURE, NamedValue.WORKING_PRESSURE)
                .about(valve)
                .unless("relief-set-above-tank")
                .says(
                        Rule.quoted(valve.name()) + " is set to {}, and "
                                + (subject.house.tank().workingPressureGiven()
                                        ? "the tank is rated for only {}"
                                        : "no tank of a house is rated for more than {}")
                                + ": if nothing else opens, it opens too late.",
                        set,
                        limit)
                .found(set)
                .limit(limit)
                .advises(
                        "Turn the heater off and leave it off until a licensed professional has replaced this valve by one set to"
                                + " the tank's working pressure or less. Never alter the setting of a relief valve.")
                .asks(ASK)
                .by(subject.by(Topic.RELIEF_PRESSURE, Codes.RELIEF_SETTING));
    }

    private static CandidateFinding setHigh(
            AssessmentContext subject, ReliefValve valve, Measure set, Measure highest) {
        return Finding.draft(SET_HIGH, Severity.FAULT)
                .compares(NamedValue.SET_PRESSURE, NamedValue.WORKING_PRESSURE)
                .about(valve)
                .unless("relief-set-above-tank")
                .says(Rule.quoted(valve.name()) + " is set to {}; {} is the most allowed.", set, highest)
                .found(set)
                .limit(highest)
                .advisesWork(
                        "Have the valve replaced by one with the right setting. Never alter the setting of a relief valve.")
                .asks(ASK)
                .by(subject.by(Topic.RELIEF_PRESSURE, Codes.RELIEF_SETTING));
    }

    /** Whether the rules of the place ask for a cut-out besides the thermostat, and the description has none. */
    private static boolean isCutOutMissing(AssessmentContext subject) {
        return subject.place == Place.UK && subject.house.heater().cutOut().isEmpty();
    }

    /** Somebody who found none is told to stop; a description that is silent about it is one to complete. */
    private static CandidateFinding noCutOut(AssessmentContext subject) {
        boolean absent = subject.house.heater().isCutOutAbsent();
        return Finding.draft(NO_CUT_OUT, absent ? Severity.HAZARD : Severity.FAULT)
                .compares(NamedValue.CUT_OUT)
                .says(
                        absent
                                ? "The heater has no cut-out, and the rules here ask for one besides the thermostat and the relief"
                                        + " valve."
                                : "No cut-out is described. Every unvented cylinder has one besides the thermostat and the relief"
                                        + " valve, so see that it is there.")
                .advises(
                        absent
                                ? "Turn the heater off and leave it off until a licensed professional has fitted one."
                                : "Look in the heater's papers and for its red reset button, and add its temperature to the"
                                        + " description. If there is none, turn the heater off and have a licensed professional fit"
                                        + " one.")
                .asks(ASK)
                .by(subject.by(Topic.HEAT_RELIEF, Codes.TWO_DEVICES));
    }

    private static CandidateFinding hot(
            AssessmentContext subject, ReliefValve valve, Severity severity, Measure opensAt, Measure limit) {
        return Finding.draft("tp-relief-temperature-high", severity)
                .compares(NamedValue.SET_TEMPERATURE)
                .about(valve)
                .says(Rule.quoted(valve.name()) + " opens only at {}, above the {} at which it should.", opensAt, limit)
                .found(opensAt)
                .limit(limit)
                .advisesWork("Have the valve replaced by one that opens at that temperature or below.")
                .asks("Ask the local authority what temperature it requires; some require less.")
                .by(subject.by(Topic.RELIEF_TEMPERATURE, Codes.RELIEF_SETTING));
    }

    /** However long it takes to get there, and whether or not a run sees it. */
    private static CandidateFinding opensBeforeThermostat(
            AssessmentContext subject, ReliefValve valve, Measure setPoint) {
        Measure opensAt = temperature(valve.setTemperature().orElseThrow());
        return Finding.draft("set-point-above-relief", Severity.HAZARD)
                .compares(NamedValue.SET_POINT, NamedValue.UPPER_SET_POINT, NamedValue.SET_TEMPERATURE)
                .about(valve)
                .unless("relief-valve-opened-by-heat")
                .says(
                        "The heater is set to {}, and " + Rule.quoted(valve.name())
                                + " opens at {}: near-boiling water comes out of it before the thermostat switches off.",
                        setPoint,
                        opensAt)
                .found(setPoint)
                .limit(opensAt)
                .advises(
                        "Turn the heater off, let it cool, and set its thermostat to {} or less before it is used again.",
                        temperature(WaterTemperatureRule.STORED))
                .asks(ASK)
                .by(subject.by(Topic.HEAT_RELIEF, Codes.TWO_DEVICES));
    }

    /** The valve is the last guard: it is not to open before the last but one has acted. */
    private static CandidateFinding cutOutTooLate(ReliefValve valve, Measure trips, Measure opensAt) {
        return Finding.draft("cut-out-above-relief", Severity.FAULT)
                .compares(NamedValue.CUT_OUT, NamedValue.SET_TEMPERATURE)
                .about(valve)
                .says(
                        "The cut-out trips only at {}, and " + Rule.quoted(valve.name())
                                + " opens at {}: if the thermostat fails, near-boiling water runs from the valve and the cut-out"
                                + " never trips.",
                        trips,
                        opensAt)
                .found(trips)
                .limit(opensAt)
                .advisesWork(
                        "Have the cut-out replaced, or set as its manufacturer says, by a licensed professional, so that it"
                                + " trips first. Do not change the valve for it.")
                .asks(ASK)
                .by(Authority.computed(
                        "the two temperatures described; that the cut-out comes first is our own judgement"));
    }

    private static CandidateFinding tooSmall(AssessmentContext subject, ReliefValve valve) {
        Measure rated = new Measure(Measure.Kind.POWER, valve.ratedInput().orElseThrow());
        Measure input = new Measure(Measure.Kind.POWER, subject.heatInput());
        return Finding.draft("tp-relief-rating-low", Severity.HAZARD)
                .compares(NamedValue.RATED_INPUT, NamedValue.HEATER_INPUT)
                .says(
                        Rule.quoted(valve.name()) + " is certified for heaters of up to {}, and this one takes in {}.",
                        rated,
                        input)
                .found(rated)
                .limit(input)
                .advises(
                        "Turn the heater off and leave it off until the valve has been replaced by one that is certified"
                                + " for its input.")
                .asks(ASK)
                .by(subject.by(Topic.RELIEF_CAPACITY, Codes.RELIEF_CAPACITY));
    }
}
