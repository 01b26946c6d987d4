package io.github.heatswell.assessment;

import static io.github.heatswell.assessment.Measure.gauge;

import io.github.heatswell.assessment.Finding.Authority;
import io.github.heatswell.assessment.Finding.Severity;
import io.github.heatswell.place.PlaceRule;
import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.system.NamedValue;
import io.github.heatswell.system.ReliefValve;
import io.github.heatswell.units.Pressure;
import java.util.Optional;
import java.util.function.Consumer;

/** The highest pressure of a run, or without one that of the supply, against everything it should stay below. */
final class PeakRule implements Rule {

    /** What a valve may let the tank exceed its working pressure by at full flow, as a share of it. */
    static final double OVERPRESSURE = 0.1;

    /** Ratings that belong together lie no further apart than this (-): 150 psi are 3 % above 10 bar; our own judgement. */
    private static final double APART = 1.05;

    private static final Authority WORKING_PRESSURE = Authority.computed(
            "the tank's working pressure as described; that a tenth more is dangerous is our own judgement");

    private static final String EXCEEDED = "The pressure reaches {}, above the tank's working pressure of {}";

    @Override
    public void look(AssessmentContext subject, Consumer<CandidateFinding> found) {
        double peak = Math.max(subject.peak(), subject.highestStatic());
        if (subject.house.tank().workingPressureGiven() && Rule.exceeds(peak, subject.workingPressure())) {
            found.accept(aboveWorkingPressure(subject, peak));
        }
        subject.soundVessels()
                .forEach(vessel -> vessel.body().rating().ifPresent(rating -> {
                    double here = peak - subject.lift(vessel.height());
                    if (Rule.exceeds(here, rating.gauge(subject.atmosphere))) {
                        found.accept(aboveRating(subject, vessel, rating, here));
                    } else {
                        subject.lastRelief()
                                .filter(valve -> Rule.exceeds(
                                        subject.setPressure(valve) - subject.lift(vessel.height()),
                                        APART * rating.gauge(subject.atmosphere)))
                                .ifPresent(valve -> found.accept(belowRelief(subject, vessel, rating, valve)));
                    }
                }));
        if (subject.run.isPresent() && Rule.exceeds(peak, subject.highestStatic())) {
            driven(subject, peak, found);
        }
    }

    /** What the run added to the pressure of the supply, whatever the cause: a limit that is passed is always said. */
    private static void driven(AssessmentContext subject, double peak, Consumer<CandidateFinding> found) {
        Optional<PlaceRule> passed = beyondCode(subject, peak);
        passed.ifPresent(rule -> found.accept(aboveCode(subject, peak, rule)));
        subject.firstRelief()
                .flatMap(valve -> nearRelief(subject, valve, peak, passed.isPresent()))
                .ifPresent(found);
    }

    /** The rule of the place that the run breaks and the supply alone does not; empty if there is none. */
    static Optional<PlaceRule> beyondCode(AssessmentContext subject, double peak) {
        return subject.peakRule()
                .filter(rule ->
                        !Rule.readsAbove(subject.highestStatic(), rule.limit().orElseThrow()))
                .filter(rule -> Rule.readsAbove(peak, rule.limit().orElseThrow()));
    }

    private static CandidateFinding aboveWorkingPressure(AssessmentContext subject, double peak) {
        Optional<ReliefValve> matched = subject.firstRelief().filter(valve -> allows(subject, valve, peak));
        if (matched.isPresent()) {
            return byTheValve(subject, matched.get(), peak);
        }
        boolean far = Rule.exceeds(peak, (1 + OVERPRESSURE) * subject.workingPressure());
        return exceeded(subject, peak, far ? Severity.HAZARD : Severity.FAULT)
                .says(EXCEEDED + ".", gauge(peak), gauge(subject.workingPressure()))
                .advises("Turn the heater off and let it cool. Have the relief valve and the expansion control repaired"
                        + " before it is used again.")
                .asks("Ask a licensed professional whether the tank may stay in use.")
                .by(WORKING_PRESSURE);
    }

    /** Whether a valve that suits the tank's plate lets the pressure rise so far: by its height and by what opens it fully. */
    private static boolean allows(AssessmentContext subject, ReliefValve valve, double peak) {
        double opening = valve.fullLiftPressure().gauge(subject.atmosphere)
                - valve.setPressure().gauge(subject.atmosphere);
        return !Rule.exceeds(OverheatGuardRule.setPressure(subject, valve), subject.workingPressure())
                && !Rule.exceeds(subject.highestStatic(), subject.workingPressure())
                && !Rule.exceeds(peak, subject.setPressure(valve) + opening);
    }

    private static CandidateFinding byTheValve(AssessmentContext subject, ReliefValve valve, double peak) {
        double height = subject.setPressure(valve) - valve.setPressure().gauge(subject.atmosphere);
        boolean higher = !Rule.exceeds(peak - subject.workingPressure(), height);
        return exceeded(subject, peak, Severity.CAUTION)
                .says(
                        EXCEEDED + ": " + Rule.quoted(valve.name()) + ", set to {}, "
                                + (higher
                                        ? "is higher than the gauge, and the water in between adds to the pressure at the tank."
                                        : "opens fully only a little above its set pressure."),
                        gauge(peak),
                        gauge(subject.workingPressure()),
                        gauge(valve.setPressure(), subject.atmosphere))
                .advises(
                        "The valve suits the tank: do not change it for this. Have a vessel take up the expansion, so that"
                                + " the valve need not open.")
                .by(WORKING_PRESSURE);
    }

    private static Finding.Draft exceeded(AssessmentContext subject, double peak, Severity severity) {
        return Finding.draft("working-pressure-exceeded", severity)
                .rests(Deciding.CUSHIONED, NamedValue.WORKING_PRESSURE)
                .unless("test-pressure-reached", "textbook-run-beyond-test-pressure")
                .found(gauge(peak))
                .limit(gauge(subject.workingPressure()));
    }

    private static CandidateFinding aboveRating(
            AssessmentContext subject, ExpansionVessel vessel, Pressure rating, double here) {
        Measure limit = gauge(rating, subject.atmosphere);
        return Finding.draft("vessel-rating-exceeded", Severity.FAULT)
                .rests(Deciding.CUSHIONED, NamedValue.VESSEL_RATING)
                .unless(ChargeAbovePlateRule.ID) // the gas alone is above the plate
                .says(
                        "The pressure at " + subject.calledWithVolume(vessel)
                                + " reaches {}, above the {} it is rated for.",
                        Measure.volume(vessel.volume()),
                        gauge(here),
                        limit)
                .found(gauge(here))
                .limit(limit)
                .advisesWork("Have a vessel fitted that is rated for at least the set pressure of every relief valve.")
                .by(Codes.DESCRIPTION);
    }

    /** Nothing was passed, and nothing would keep it from being passed. */
    private static CandidateFinding belowRelief(
            AssessmentContext subject, ExpansionVessel vessel, Pressure rating, ReliefValve valve) {
        Measure made = gauge(rating, subject.atmosphere);
        Measure opens = gauge(subject.setPressure(valve) - subject.lift(vessel.height()));
        return Finding.draft("vessel-rated-below-relief", Severity.CAUTION)
                .compares(NamedValue.SET_PRESSURE, NamedValue.VESSEL_RATING)
                .says(
                        Rule.sentence(subject.calledWithVolume(vessel))
                                + " is rated for only {}, and "
                                + (subject.house.reliefValves().size() == 1
                                        ? "no relief valve opens before the pressure there reaches {}."
                                        : Rule.quoted(valve.name())
                                                + " on the same water opens only when the pressure there reaches {}."),
                        Measure.volume(vessel.volume()),
                        made,
                        opens)
                .found(made)
                .limit(opens)
                .advisesWork(
                        "Read the pressure on the vessel's plate. If it is below {}, have a vessel fitted that is rated for at"
                                + " least that"
                                + (subject.house.reliefValves().size() == 1 ? "." : ": a valve set lower may fail."),
                        opens)
                .by(Codes.DESCRIPTION);
    }

    private static CandidateFinding aboveCode(AssessmentContext subject, double peak, PlaceRule rule) {
        Measure limit = gauge(rule.limit().orElseThrow());
        Finding.Draft draft = Finding.draft("peak-above-code-limit", Severity.CAUTION)
                .rests(subject.soundVessel().isPresent() ? Deciding.CUSHIONED : Deciding.HEAT_UP)
                .unless("relief-valve-controls-expansion", "expansion-valve-works") // both name the limit
                .unless(
                        "test-pressure-reached",
                        "textbook-run-beyond-test-pressure") // both name the peak, and a graver limit
                .says(
                        (subject.drivenUp()
                                                || subject.neverWarms()
                                                || subject.run.orElseThrow().peakTime() <= 0
                                        ? "The pressure reaches {}"
                                        : "Heating drives the pressure to {}")
                                + ", above the {} that "
                                + (subject.place.isKnown() ? "the rules here allow" : "US model codes allow")
                                + " in a building.",
                        gauge(peak),
                        limit)
                .found(gauge(peak))
                .limit(limit)
                .asks("Ask the local authority what limit applies to the peak of a heat-up.");
        new Remedy(subject).advise(draft);
        return draft.by(Authority.of(rule));
    }

    private static Optional<CandidateFinding> nearRelief(
            AssessmentContext subject, ReliefValve valve, double peak, boolean advised) {
        double limit = subject.closesFor(valve);
        if (!Rule.exceeds(peak, limit) || Rule.reaches(peak, subject.setPressure(valve))) {
            return Optional.empty();
        }
        Finding.Draft draft = Finding.draft("peak-near-relief", Severity.CAUTION)
                .rests(Deciding.CUSHIONED, NamedValue.SET_PRESSURE, NamedValue.RESEAT_PRESSURE)
                .about(valve)
                .unless("expansion-valve-provided") // to open is its work
                .says(
                        "The peak of {} is too close to the set pressure of " + Rule.quoted(valve.name())
                                + ", which opens at {} and reseats only at {}. Allowing for the tolerance of its setting,"
                                + " keep the peak below {}.",
                        gauge(peak),
                        gauge(subject.setPressure(valve)),
                        gauge(subject.reseatPressure(valve)),
                        gauge(limit))
                .found(gauge(peak))
                .limit(gauge(limit));
        if (advised) {
            draft.advises("What keeps the peak below {} cures this too.", gauge(subject.peakLimit()));
        } else {
            new Remedy(subject).advise(draft);
        }
        return Optional.of(draft.by(Codes.SET_TOLERANCE));
    }
}
