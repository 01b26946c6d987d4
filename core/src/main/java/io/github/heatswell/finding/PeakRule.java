package io.github.heatswell.finding;

import static io.github.heatswell.finding.Measure.gauge;

import io.github.heatswell.plant.ExpansionVessel;
import io.github.heatswell.plant.ReliefValve;
import io.github.heatswell.units.Pressure;
import java.util.Optional;
import java.util.function.Consumer;

/** The highest pressure of a run, or without one that of the supply, against everything it should stay below. */
final class PeakRule implements Rule {

    /** How far below the reseat pressure a peak should stay, as a share of the set pressure: the tolerance of the setting. */
    private static final double MARGIN = 0.03;

    /** Up to this share of the set pressure a peak near it is worth a note only: EN 12828, a tenth, from memory. */
    private static final double NOTE_UP_TO = 0.9;
    /** What a valve may let the tank exceed its working pressure by at full flow, as a share of it. */
    private static final double OVERPRESSURE = 0.1;

    private static final Authority WORKING_PRESSURE = Authority.computed(
            "the tank's working pressure as described; that a tenth more is dangerous is own judgement");

    @Override
    public void look(Case subject, Consumer<Finding> found) {
        double peak = Math.max(subject.peak(), subject.highestStatic());
        if (peak > subject.workingPressure() + SAME) {
            found.accept(aboveWorkingPressure(subject, peak));
        }
        subject.soundVessel()
                .ifPresent(vessel -> vessel.body().rating().ifPresent(rating -> {
                    double here = peak - subject.lift(vessel.height());
                    if (here > rating.gauge(subject.atmosphere) + SAME) {
                        found.accept(aboveRating(subject, vessel, rating, here));
                    }
                }));
        if (subject.run.isPresent() && !subject.drivenUp() && subject.highestStatic() < peak - SAME) {
            heated(subject, peak, found);
        }
    }

    /** What a heat-up added to the pressure of the supply. */
    private static void heated(Case subject, double peak, Consumer<Finding> found) {
        if (new Remedy(subject, Math.min(subject.firstLimit(), SupplyRule.CODE_LIMIT)).isPrecharge()) {
            return; // the peak has one cause, and the finding on the precharge names it
        }
        Optional<Finding> near = subject.firstRelief().flatMap(valve -> nearRelief(subject, valve, peak));
        near.ifPresent(found);
        boolean fed = subject.highestStatic() > SupplyRule.CODE_LIMIT + SAME;
        if (near.isEmpty() && !fed && peak > SupplyRule.CODE_LIMIT + SAME) {
            found.accept(aboveCode(subject, peak));
        }
    }

    private static Finding aboveWorkingPressure(Case subject, double peak) {
        Measure limit = gauge(subject.workingPressure());
        boolean far = peak > (1 + OVERPRESSURE) * subject.workingPressure() + SAME;
        return Finding.draft("working-pressure-exceeded", far ? Severity.HAZARD : Severity.FAULT)
                .says("The pressure reaches {}, above the tank's working pressure of {}.", gauge(peak), limit)
                .found(gauge(peak))
                .limit(limit)
                .advises(
                        "Turn the heater off and let it cool. Have the relief valve and the expansion control put right"
                                + " before it is used again.")
                .asks("Ask a licensed professional whether the tank may stay in use.")
                .by(WORKING_PRESSURE);
    }

    private static Finding aboveRating(Case subject, ExpansionVessel vessel, Pressure rating, double here) {
        Measure limit = gauge(rating, subject.atmosphere);
        return Finding.draft("vessel-rating-exceeded", Severity.FAULT)
                .says(
                        "The pressure at the {} vessel reaches {}, above the {} it is made for.",
                        Measure.volume(vessel.volume()),
                        gauge(here),
                        limit)
                .found(gauge(here))
                .limit(limit)
                .advisesWork("Have a vessel fitted that is made for the relief valve's set pressure.")
                .by(Codes.DESCRIPTION);
    }

    private static Finding aboveCode(Case subject, double peak) {
        Finding.Draft draft = Finding.draft("peak-above-code-limit", Severity.CAUTION)
                .says(
                        "Heating drives the pressure to {}, above the {} that plumbing codes allow in a building.",
                        gauge(peak),
                        gauge(SupplyRule.CODE_LIMIT))
                .found(gauge(peak))
                .limit(gauge(SupplyRule.CODE_LIMIT))
                .asks("Ask the local authority which limit it holds the peak of a heat-up to.");
        new Remedy(subject, SupplyRule.CODE_LIMIT).advise(draft);
        return draft.by(Codes.EXPANSION_LIMIT);
    }

    private static Optional<Finding> nearRelief(Case subject, ReliefValve valve, double peak) {
        double limit = subject.reseats(valve) - MARGIN * valve.opens().gauge(subject.atmosphere);
        if (peak <= limit + SAME || peak >= subject.opens(valve) - SAME) {
            return Optional.empty();
        }
        boolean slight = peak - subject.lift(valve.height())
                <= NOTE_UP_TO * valve.opens().gauge(subject.atmosphere);
        Finding.Draft draft = Finding.draft("peak-near-relief", slight ? Severity.NOTE : Severity.CAUTION)
                .says(
                        "The peak of {} leaves too little to '" + valve.name() + "', which opens at {} and closes only"
                                + " at {}: with the tolerance of its setting, {} should be the highest.",
                        gauge(peak),
                        gauge(subject.opens(valve)),
                        gauge(subject.reseats(valve)),
                        gauge(limit))
                .found(gauge(peak))
                .limit(gauge(limit));
        new Remedy(subject, limit).advise(draft);
        return Optional.of(draft.by(Codes.SET_TOLERANCE));
    }
}
