package io.github.heatswell.assessment;

import static io.github.heatswell.assessment.Measure.gauge;

import io.github.heatswell.assessment.Finding.Authority;
import io.github.heatswell.assessment.Finding.Severity;
import io.github.heatswell.system.ReducingValve;
import io.github.heatswell.units.PressureUnit;
import java.util.function.Consumer;

/** A supply that stands too high, and a reducing valve that lets it by. */
final class SupplyRule implements Rule {

    /** The highest static pressure in a building by the model codes (Pa). */
    static final double CODE_LIMIT = PressureUnit.PSI.toSi(80);

    /** A supply below this (Pa, gauge) is probably a typing error; own judgement. */
    private static final double HARDLY_ANY = 0.3e5;

    private static final String ASK = "Ask the local authority which static pressure it allows.";

    @Override
    public void look(AssessmentContext subject, Consumer<Found> found) {
        if (subject.highestStatic() < HARDLY_ANY) {
            found.accept(hardlyAny(subject.highestStatic()));
        }
        double high = subject.highestStatic();
        if (high > CODE_LIMIT + SAME) {
            found.accept(tooHigh(subject, high));
        }
        subject.house
                .supply()
                .reducingValve()
                .filter(valve -> subject.creeps())
                .ifPresent(valve -> found.accept(creeping(subject, valve, high)));
    }

    private static Found hardlyAny(double high) {
        return Finding.draft("static-pressure-low", Severity.CAUTION)
                .compares(Deciding.STATIC)
                .says("The supply stands at {} at most: hardly any water would run from a tap.", gauge(high))
                .found(gauge(high))
                .limit(gauge(HARDLY_ANY))
                .advises(
                        "Check the supply pressure and its unit in the description: mains stand at several bar, or some dozens of"
                                + " psi.")
                .by(Authority.computed("the supply pressure described; the limit is own judgement"));
    }

    private static Found tooHigh(AssessmentContext subject, double high) {
        boolean reduced = subject.house.supply().reducingValve().isPresent();
        Finding.Draft draft = Finding.draft("static-pressure-high", Severity.FAULT)
                .compares(Deciding.STATIC)
                .found(gauge(high))
                .limit(gauge(CODE_LIMIT))
                .asks(ASK);
        String who = reduced ? "The reducing valve holds the house at " : "The supply stands at ";
        draft.says(
                who + "up to {}, above the {} that US model codes allow in a building.",
                gauge(high),
                gauge(CODE_LIMIT));
        return reduced
                ? draft.advisesWork("Have the reducing valve set lower, and the charge of the vessel matched to it.")
                        .by(Codes.STATIC_80_PSI)
                : draft.advisesWork(
                                "Have a pressure reducing valve fitted, with a vessel behind it, since the valve closes"
                                        + " the way back to the mains.")
                        .by(Codes.STATIC_80_PSI);
    }

    private static Found creeping(AssessmentContext subject, ReducingValve valve, double high) {
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
        } else if (subject.firstRelief().isPresent() && subject.firstLimit() < mains - SAME) {
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
