package io.github.heatswell.assessment;

import static io.github.heatswell.assessment.Measure.gauge;

import io.github.heatswell.assessment.Finding.Authority;
import io.github.heatswell.assessment.Finding.Severity;
import io.github.heatswell.place.PlaceRule;
import io.github.heatswell.place.PlaceRule.Topic;
import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.system.NamedValue;
import io.github.heatswell.system.ReliefFault;
import io.github.heatswell.system.Supply;
import java.util.function.Consumer;

/** Where the expansion goes: to the mains, into a vessel, or nowhere. */
final class ExpansionRule implements Rule {

    static final String ASK =
            "Ask the local authority which kind of expansion control it accepts, and who may fit it: not"
                    + " every place asks for more than a relief valve that may drip.";

    /** Advice for a place that may accept a dripping safety valve. */
    static String mayDrip(AssessmentContext subject) {
        return (subject.place.isKnown()
                        ? "The rules read for this place leave the expansion to this relief valve, which then drips while the water"
                                + " heats."
                        : "Where local rules let the relief valve handle expansion, as in much of Europe, it is meant to drip"
                                + " while the water heats.")
                + MAY_END;
    }

    /** Where a vessel does its work; between a stop valve and a check valve it would do none. */
    static final String HAVE_FITTED =
            "Have an expansion vessel of the right size and precharge fitted downstream of every check"
                    + " valve, reducing valve and backflow preventer.";

    static final String MAY_END =
            " Before any work to stop that, turn the heater off, let it cool and relieve the pressure. " + HAVE_FITTED;

    /** The share (-) of the estimated expansion that is counted on; our own judgement. */
    private static final double MARGIN = 0.9;

    static final String NEVER_PLUG =
            " Never plug, cap or downsize the relief valve; if it has discharged often, have it checked.";

    @Override
    public void look(AssessmentContext subject, Consumer<CandidateFinding> found) {
        if (subject.open()) {
            found.accept(goesBack(subject));
        } else if (subject.house.vessel().isPresent()) {
            subject.house.vessels().stream()
                    .filter(vessel -> vessel.condition() != ExpansionVessel.Condition.SOUND)
                    .forEach(vessel -> found.accept(outOfService(subject, vessel)));
        } else if (subject.bypassOpens().isPresent()) {
            found.accept(bypassTooLate(subject));
        } else {
            found.accept(subject.firstRelief()
                    .filter(subject::isItsWork)
                    .map(valve -> ExpansionValveRule.provided(subject, valve))
                    .orElseGet(() -> missing(subject)));
        }
    }

    private static CandidateFinding goesBack(AssessmentContext subject) {
        if (subject.house.supply().arrangement() == Supply.Arrangement.DIRECT) {
            return Finding.draft("expansion-returns-to-mains", Severity.NOTE)
                    .compares(NamedValue.ARRANGEMENT, NamedValue.VESSEL, NamedValue.SUPPLY, NamedValue.BYPASS)
                    .compares(subject.limitInputs())
                    .says("The expanded water goes back to the mains through the open connection.")
                    .advises(
                            "If a check valve, backflow preventer or reducing valve is ever fitted on the supply, a vessel"
                                    + " is needed.")
                    .asks("Ask the water company whether its meter or connection holds a check valve.")
                    .by(subject.by(Topic.EXPANSION_CONTROL, Codes.EXPANSION_CONTROL));
        }
        boolean vessel = subject.soundVessel().isPresent();
        Finding.Draft draft = Finding.draft("expansion-returns-to-mains", vessel ? Severity.NOTE : Severity.CAUTION)
                .compares(NamedValue.ARRANGEMENT, NamedValue.VESSEL, NamedValue.SUPPLY, NamedValue.BYPASS)
                .compares(subject.limitInputs())
                .says(
                        "The bypass of the reducing valve opens at {} and lets the expanded water back to the mains, before "
                                + subject.givesWay()
                                + ". It does so only while mains pressure stays that low and there is no check"
                                + " valve upstream of it.",
                        gauge(subject.bypassOpens().orElseThrow()),
                        gauge(subject.firstLimit()))
                .found(gauge(subject.bypassOpens().orElseThrow()))
                .limit(gauge(subject.firstLimit()));
        return (vessel
                        ? draft.advises("Keep the vessel charged all the same: the bypass does not replace it.")
                        : draft.advises(
                                "Do not rely on the bypass alone: plan an expansion vessel downstream of the reducing"
                                        + " valve."))
                .asks(
                        subject.place
                                        .demand(Topic.BYPASS)
                                        .filter(PlaceRule::requires)
                                        .isPresent()
                                ? "The rules here ask for expansion control downstream of a reducing valve, bypass or not; some"
                                        + " towns accept a bypass. Ask the local authority."
                                : "US model codes ask for expansion control downstream of a reducing valve, bypass or not; some"
                                        + " places accept a bypass. Ask the local authority.")
                .by(subject.by(Topic.BYPASS, Codes.EXPANSION_BEHIND_REGULATOR));
    }

    private static CandidateFinding missing(AssessmentContext subject) {
        boolean check = subject.house.supply().arrangement() == Supply.Arrangement.CHECK_VALVE;
        boolean may = subject.mayDischargeExpansion();
        Finding.Draft draft = Finding.draft("expansion-control-missing", may ? Severity.CAUTION : Severity.FAULT)
                .rests(Deciding.STATIC, NamedValue.VESSEL, NamedValue.BYPASS)
                .rests(subject.limitInputs())
                .unless("relief-valve-controls-expansion")
                .asks(ASK);
        String closed = (check
                        ? "Nothing can flow back to the mains"
                        : "The reducing valve, "
                                + (subject.doubts.has(NamedValue.BYPASS)
                                        ? "assumed to have no bypass"
                                        : "described without a bypass")
                                + ", closes the way back to the mains")
                + " and no expansion vessel is described";
        draft = gives(subject)
                ? draft.says(
                                closed + (isTight(subject) ? ": every" : ". Once nothing leaks any more, every")
                                        + " heat-up from cold drives the pressure up until " + subject.givesWay() + ".",
                                gauge(subject.firstLimit()))
                        .limit(gauge(subject.firstLimit()))
                : draft.says(closed + ": tank, pipes and trapped air alone have to take up the expansion.");
        return may
                ? draft.advises(mayDrip(subject)).by(subject.by(Topic.RELIEF_FOR_EXPANSION, Codes.RELIEF_MAY_DRIP))
                : draft.advisesWork(HAVE_FITTED).by(behind(subject, check));
    }

    /** Whether nothing leaks that would let the expansion out unseen. */
    private static boolean isTight(AssessmentContext subject) {
        return subject.house.leaks().isEmpty()
                && subject.house.supply().seatLeakage() == 0
                && subject.working().stream().allMatch(valve -> valve.condition() == ReliefFault.Condition.SOUND);
    }

    /** Whether the expansion of a heat-up from cold clearly exceeds what tank, pipes and trapped air take until something gives. */
    private static boolean gives(AssessmentContext subject) {
        double from = subject.highestStatic();
        double to = subject.firstLimit();
        double pipes = subject.house.piping().stream()
                        .mapToDouble(pipe -> pipe.volume() * pipe.compliance())
                        .sum()
                * (to - from);
        double trapped = subject.house.trappedAir().orElse(0)
                + subject.house.tank().air().orElse(0);
        double air = trapped * (1 - (from + subject.atmosphere) / (to + subject.atmosphere));
        return Rule.exceeds(to, from) && MARGIN * VesselSizeRule.needed(subject) > pipes + air;
    }

    private static CandidateFinding bypassTooLate(AssessmentContext subject) {
        double setPressure = subject.bypassOpens().orElseThrow();
        boolean may = subject.mayDischargeExpansion();
        Finding.Draft draft = Finding.draft("bypass-opens-too-late", may ? Severity.CAUTION : Severity.FAULT)
                .compares(NamedValue.ARRANGEMENT, NamedValue.VESSEL, NamedValue.SUPPLY, NamedValue.BYPASS)
                .compares(subject.limitInputs())
                .says(
                        "The bypass of the reducing valve opens only at {}, because mains pressure is that high; before that, "
                                + subject.givesWay() + ".",
                        gauge(setPressure),
                        gauge(subject.firstLimit()))
                .found(gauge(setPressure))
                .limit(gauge(subject.firstLimit()))
                .asks(ASK);
        return may
                ? draft.advises(mayDrip(subject)).by(subject.by(Topic.RELIEF_FOR_EXPANSION, Codes.RELIEF_MAY_DRIP))
                : draft.advisesWork("Have an expansion vessel fitted between the reducing valve and the tank.")
                        .by(behind(subject, false));
    }

    /** What asks for expansion control; where a vessel is a choice, what says that this relief valve does not do instead. */
    private static Authority behind(AssessmentContext subject, boolean check) {
        boolean choice = subject.place
                .demand(Topic.EXPANSION_CONTROL)
                .filter(rule -> !rule.requires())
                .isPresent();
        return choice
                ? subject.by(Topic.RELIEF_FOR_EXPANSION, Codes.RELIEF_MAY_DRIP)
                : subject.by(
                        Topic.EXPANSION_CONTROL, check ? Codes.EXPANSION_CONTROL : Codes.EXPANSION_BEHIND_REGULATOR);
    }

    private static CandidateFinding outOfService(AssessmentContext subject, ExpansionVessel vessel) {
        Authority control = subject.by(Topic.EXPANSION_CONTROL, Codes.EXPANSION_CONTROL);
        String which = subject.calledWithVolume(vessel);
        Measure size = Measure.volume(vessel.volume());
        return switch (vessel.condition()) {
            case ISOLATED ->
                Finding.draft("vessel-isolated", Severity.FAULT)
                        .rests(NamedValue.VESSEL_VOLUME)
                        .says("The isolating valve of " + which + " is closed, so it takes no water.", size)
                        .advises(
                                "With the heater off and the water cool, open the valve and secure it in that position.")
                        .by(control);
            case UPSTREAM_OF_CHECK ->
                Finding.draft("vessel-upstream-of-check", Severity.FAULT)
                        .rests(NamedValue.VESSEL_VOLUME)
                        .says(
                                Rule.sentence(which)
                                        + " sits on the mains side of the supply valve, where no expansion reaches it.",
                                size)
                        .advisesWork("Have the vessel moved between the supply valve and the tank.")
                        .asks("Ask a licensed plumber which fitting on the supply closes the way back.")
                        .by(control);
            default ->
                Finding.draft("vessel-waterlogged", Severity.FAULT)
                        .rests(NamedValue.VESSEL_VOLUME)
                        .says(
                                Rule.sentence(which)
                                        + " has lost its gas and is full of water, so it takes up no expansion.",
                                size)
                        .advisesWork("Have the vessel replaced: with a failed diaphragm it cannot be recharged.")
                        .by(Codes.DESCRIPTION);
        };
    }
}
