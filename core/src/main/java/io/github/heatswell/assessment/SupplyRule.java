package io.github.heatswell.assessment;

import static io.github.heatswell.assessment.Measure.gauge;

import io.github.heatswell.assessment.Finding.Authority;
import io.github.heatswell.assessment.Finding.Severity;
import io.github.heatswell.place.PlaceRule;
import io.github.heatswell.place.PlaceRule.Topic;
import io.github.heatswell.system.ReducingValve;
import java.util.List;
import java.util.function.Consumer;

/** A supply pressure that is too high or too low, and a reducing valve whose seat leaks. */
final class SupplyRule implements Rule {

    /** A supply below this (Pa, gauge) is probably a typing error; our own judgement. */
    private static final double HARDLY_ANY = 0.3e5;

    private static final String ASK = "Ask the local authority which static pressure it allows.";

    @Override
    public void look(AssessmentContext subject, Consumer<CandidateFinding> found) {
        if (subject.highestStatic() < HARDLY_ANY) {
            found.accept(hardlyAny(subject.highestStatic()));
        }
        double high = subject.highestStatic();
        List<PlaceRule> limits = subject.limits(Topic.STATIC_LIMIT);
        PlaceRule lowest = limits.get(0);
        PlaceRule highest = limits.get(limits.size() - 1);
        if (Rule.readsAbove(high, limit(highest))
                && (subject.hasLimit(Topic.STATIC_LIMIT) || !subject.place.isKnown())) {
            found.accept(tooHigh(subject, high, highest));
        } else if (Rule.readsAbove(high, limit(lowest))) {
            found.accept(perhapsTooHigh(subject, high, lowest, highest));
        }
        subject.house
                .supply()
                .reducingValve()
                .filter(valve -> subject.creeps())
                .ifPresent(valve -> found.accept(creeping(subject, valve, high)));
    }

    private static CandidateFinding hardlyAny(double high) {
        return Finding.draft("static-pressure-low", Severity.CAUTION)
                .compares(Deciding.STATIC)
                .says("The supply reaches only {}: hardly any water would run from a tap.", gauge(high))
                .found(gauge(high))
                .limit(gauge(HARDLY_ANY))
                .advises(
                        "Check the supply pressure and its unit in the description: mains pressure is several bar, or tens of"
                                + " psi.")
                .by(Authority.computed("the supply pressure described; the limit is our own judgement"));
    }

    private static double limit(PlaceRule rule) {
        return rule.limit().orElseThrow();
    }

    private static CandidateFinding tooHigh(AssessmentContext subject, double high, PlaceRule rule) {
        return lowered(
                subject,
                draft(subject, Severity.FAULT, high, rule)
                        .says(
                                who(subject) + "up to {}, above the {} that "
                                        + (subject.place.isKnown() ? "the rules here" : "US model codes")
                                        + " allow in a building.",
                                gauge(high),
                                gauge(limit(rule))),
                rule,
                "");
    }

    /** Above what some places allow; whether it is too high here, nobody said. */
    private static CandidateFinding perhapsTooHigh(
            AssessmentContext subject, double high, PlaceRule lowest, PlaceRule highest) {
        String known = subject.place.isKnown() ? " No limit was found for this place." : "";
        return lowered(
                subject,
                draft(subject, Severity.CAUTION, high, lowest)
                        .says(
                                who(subject)
                                        + "up to {}. European and Australian rules allow {} at the taps, US model codes {} in a"
                                        + " building." + known,
                                gauge(high),
                                gauge(limit(lowest)),
                                gauge(limit(highest))),
                lowest,
                "If the lower limit applies here, ");
    }

    private static String who(AssessmentContext subject) {
        return subject.house.supply().reducingValve().isPresent()
                ? "The reducing valve holds the house at "
                : "The supply goes ";
    }

    private static Finding.Draft draft(AssessmentContext subject, Severity severity, double high, PlaceRule rule) {
        return Finding.draft("static-pressure-high", severity)
                .compares(Deciding.STATIC)
                .found(gauge(high))
                .limit(gauge(limit(rule)))
                .asks(ASK);
    }

    private static CandidateFinding lowered(
            AssessmentContext subject, Finding.Draft draft, PlaceRule rule, String condition) {
        boolean reduced = subject.house.supply().reducingValve().isPresent();
        return draft.advisesWork(condition
                        + (condition.isEmpty() ? "Have " : "have ")
                        + (reduced
                                ? "the reducing valve set lower" + ReliefSettingRule.matched(subject)
                                : "a pressure reducing valve fitted, with a vessel downstream of it, since the valve closes"
                                        + " the way back to the mains."))
                .by(Authority.of(rule));
    }

    private static CandidateFinding creeping(AssessmentContext subject, ReducingValve valve, double high) {
        double mains = subject.highestMains();
        Measure set = gauge(valve.set(), subject.atmosphere);
        String leaks = "The seat of the reducing valve, set to {}, leaks";
        Finding.Draft draft =
                Finding.draft("reducing-valve-creeps", Severity.FAULT).rests(Deciding.STATIC);
        if (subject.opensAtOnce(high)) {
            draft.says(
                    leaks
                            + ". An open relief valve hides it now; with that closed, the pressure would creep towards the {}"
                            + " of the mains while nothing is drawn.",
                    set,
                    gauge(mains));
        } else if (subject.leaksOutrunTheSeat(high)) {
            draft.says(
                    leaks
                            + ". What leaks out elsewhere hides it now; with that stopped, the pressure would creep towards the {}"
                            + " of the mains while nothing is drawn.",
                    set,
                    gauge(mains));
        } else if (subject.firstRelief().isPresent()
                && Rule.exceeds(mains, subject.firstLimit())
                && !subject.leaksOutrunTheSeat(subject.firstLimit())) {
            draft.says(
                    leaks + ": while nothing is drawn, the pressure creeps from {} towards the {} of the mains, until "
                            + subject.givesWay() + ".",
                    set,
                    gauge(high),
                    gauge(mains),
                    gauge(subject.firstLimit()));
        } else {
            draft.says(
                    leaks + ": while nothing is drawn, the pressure creeps from {} towards the {} of the mains.",
                    set,
                    gauge(high),
                    gauge(mains));
        }
        return draft.found(gauge(mains))
                .limit(gauge(high))
                .advisesWork(
                        "Have the valve cleaned or its seat replaced; watch a gauge overnight to see whether it helped.")
                .by(Codes.DESCRIPTION);
    }
}
