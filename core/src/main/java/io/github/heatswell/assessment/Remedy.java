package io.github.heatswell.assessment;

import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.system.ReliefValve;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Advice that brings the peak of a heat-up within its limits: the precharge first, then a larger vessel or a lower supply. What is
 * estimated here, as in {@link VesselSizeRule}, only tells which of them to look at; a sizing, which simulates, names vessel and
 * supply.
 */
final class Remedy {

    /** How far the estimate may be off, by warming gas, piping that warms or stretches, and hoses, as a factor; our own judgement. */
    private static final double MARGIN = 1.1;

    /** No usual vessel is larger (m3): the largest of those beside {@link io.github.heatswell.place.Customs}. */
    private static final double MAX_VOLUME = 0.08;

    private static final String WATCH =
            " and watch a gauge through a full heat-up. If it still goes above {}, have a larger vessel fitted or the supply pressure"
                    + " lowered: 'heatswell size' says which vessel, and at which supply.";

    private final AssessmentContext subject;
    private final double limit;

    /** What helps in a case. */
    Remedy(AssessmentContext subject) {
        this.subject = subject;
        this.limit = subject.peakLimit();
    }

    /** Whether a vessel that works cannot hold the limit but at a lower supply. */
    boolean isSupply() {
        return vessel().filter(vessel -> !mayHold(vessel, subject.highestStatic()))
                .filter(vessel -> mayHold(vessel, least(vessel)))
                .isPresent();
    }

    /** Whether a vessel that works is too small at the present supply even with the right charge. */
    boolean isTooSmall() {
        return vessel().filter(vessel -> !mayHold(vessel, subject.highestStatic()))
                .isPresent();
    }

    private boolean several() {
        return subject.soundVessels().size() > 1;
    }

    /** The only vessel, if it works and the supply rises to it. */
    private Optional<ExpansionVessel> vessel() {
        return several() ? Optional.empty() : subject.soundVessel().filter(vessel -> !subject.isOutOfReach(vessel));
    }

    /** The least supply (Pa, gauge, at the drain cock) that is of use at the vessel too. */
    private double least(ExpansionVessel vessel) {
        return AssessmentContext.MIN_SUPPLY + Math.max(0, subject.lift(vessel.height()));
    }

    /** The advice; all limits share it, since the lowest has to hold. */
    void advise(Finding.Draft draft) {
        Optional<ReliefValve> useless =
                subject.working().stream().filter(subject::closesTooLow).findFirst();
        if (useless.isPresent()) {
            draft.advisesWork(
                    "Have " + Rule.quoted(useless.get().name())
                            + " replaced first, as it closes too low for any supply. Then watch a gauge through a full heat-up.");
        } else {
            draft.advisesWork(advice(), Measure.gauge(limit));
        }
    }

    private String advice() {
        if (subject.drivenUp() || subject.neverWarms()) {
            return "Have whatever drives the pressure up fixed first, then watch a gauge through a full heat-up. It should stay"
                    + " below {}.";
        }
        if (subject.soundVessel().isEmpty() && subject.house.vessel().isPresent()) {
            return "Have the vessel fixed first" + WATCH;
        }
        if (several()) {
            String wrong = subject.soundVessels().stream()
                    .filter(one -> PrechargeRule.isWrong(subject, one))
                    .map(subject::called)
                    .collect(Collectors.joining(" and "));
            return (wrong.isEmpty()
                            ? "Have the precharge of every vessel checked"
                            : "Have the precharge of " + wrong + " corrected")
                    + WATCH;
        }
        Optional<ExpansionVessel> vessel = vessel();
        if (vessel.isEmpty()) {
            return "Have an expansion vessel fitted that keeps the peak below {}, with the supply pressure lowered if need be.";
        }
        boolean wrong = PrechargeRule.isWrong(subject, vessel.get());
        if (mayHold(vessel.get(), subject.highestStatic())) {
            return (wrong ? "Have the precharge corrected" : "Have the precharge checked") + WATCH;
        }
        String first = wrong ? "The right precharge alone is not enough. " : "";
        if (!mayHold(vessel.get(), least(vessel.get()))) {
            return first + "Have a larger vessel fitted: this one is too small for {} at any useful supply pressure.";
        }
        String answered = " matched to it: 'heatswell size' says ";
        return first
                + (isForSale(vessel.get())
                        ? "To keep the peak below {}, have a larger vessel fitted, or the supply pressure lowered and the precharge"
                                + answered + "which vessel, and at which supply."
                        : "To keep the peak below {}, have the supply pressure lowered and the precharge" + answered
                                + "to which pressure. At the present supply no vessel of a usual size is large enough.");
    }

    /** Whether a vessel that is large enough for the present supply may be one of the usual sizes. */
    private boolean isForSale(ExpansionVessel vessel) {
        double supply = subject.highestStatic();
        return vessel.volume() * VesselSizeRule.needed(subject, supply, limit, subject.highestSetPoint())
                <= MARGIN * MAX_VOLUME * room(vessel, supply);
    }

    /** Whether a vessel charged to match holds at a supply (Pa, gauge), unless the estimate is further off than it ever should be. */
    private boolean mayHold(ExpansionVessel vessel, double supply) {
        return MARGIN * room(vessel, supply)
                >= VesselSizeRule.needed(subject, supply, limit, subject.highestSetPoint());
    }

    private double room(ExpansionVessel vessel, double supply) {
        return VesselSizeRule.room(subject, vessel, supply - subject.lift(vessel.height()), supply, limit);
    }
}
