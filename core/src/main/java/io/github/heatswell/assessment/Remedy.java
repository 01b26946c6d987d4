package io.github.heatswell.assessment;

import io.github.heatswell.system.ExpansionVessel;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Advice that brings the peak of a heat-up within its limits: the precharge first, then the supply setting at which the vessel is
 * large enough. The setting is estimated as in {@link VesselSizeRule}, for water stored as hot as it should be: advice must hold
 * once all of it is followed.
 */
final class Remedy {

    /** A supply below this (Pa, gauge) serves no house; own judgement. */
    private static final double LEAST_SUPPLY = 1.5e5;

    private static final int HALVINGS = 40;

    /** What the estimate leaves out, above all piping and gas that warms up, as a factor on the expansion; own judgement. */
    private static final double MARGIN = 1.1;

    private final AssessmentContext subject;
    private final double limit;

    /** What helps in a case. */
    Remedy(AssessmentContext subject) {
        this.subject = subject;
        this.limit = subject.peakLimit();
    }

    /** Whether a vessel that works holds the limit at the present supply once its charge is right. */
    boolean isPrecharge() {
        return vessel().filter(vessel -> PrechargeRule.farOff(subject, vessel))
                .filter(vessel -> holds(vessel, subject.highestStatic()))
                .isPresent();
    }

    /** Whether a vessel that works holds the limit only at a lower supply. */
    boolean isSupply() {
        return vessel().filter(vessel -> !holds(vessel, subject.highestStatic()))
                .filter(vessel -> setting(vessel) >= least(vessel))
                .isPresent();
    }

    private boolean several() {
        return subject.soundVessels().size() > 1;
    }

    /** The only vessel, if it works and the supply rises to it. */
    private Optional<ExpansionVessel> vessel() {
        return several() ? Optional.empty() : subject.soundVessel().filter(vessel -> !subject.isOutOfReach(vessel));
    }

    /** The least setting (Pa, gauge, at the drain cock) that is of use at the vessel too. */
    private double least(ExpansionVessel vessel) {
        return LEAST_SUPPLY + Math.max(0, subject.lift(vessel.height()));
    }

    /** The advice; all limits share it, since the lowest has to hold. */
    void advise(Finding.Draft draft) {
        Optional<ExpansionVessel> vessel = vessel();
        if (several()) {
            draft.advisesWork(
                    "Have the precharge of every vessel checked and watch a gauge through a full heat-up. If it still passes"
                            + " {}, have a larger vessel fitted or the supply pressure lowered.",
                    Measure.gauge(limit));
            return;
        }
        if (vessel.isEmpty()) {
            draft.advisesWork(
                    "Have an expansion vessel fitted that keeps the peak below {}, with the supply pressure lowered if"
                            + " need be.",
                    Measure.gauge(limit));
            return;
        }
        boolean wrong = PrechargeRule.isWrong(subject, vessel.get());
        double setting = setting(vessel.get());
        if (setting < least(vessel.get())) {
            draft.advisesWork(
                    (wrong ? "The right precharge alone will not do. " : "")
                            + "Have a larger vessel fitted: this one is too small for {} at any useful supply pressure.",
                    Measure.gauge(limit));
        } else if (setting < subject.highestStatic() - Rule.SAME) {
            double lift = subject.lift(vessel.get().height());
            Optional<Measure> apart = Math.abs(lift) < Rule.SAME
                    ? Optional.empty()
                    : Optional.of(new Measure(Measure.Kind.PRESSURE_DIFFERENCE, Math.abs(lift)));
            draft.advisesWork(
                    (wrong ? "The right precharge alone will not do. " : "") + lower()
                            + " {} or less with no water running, and the vessel charged to "
                            + (apart.isEmpty()
                                    ? "the same pressure"
                                    : lift > 0 ? "{} less, since it hangs higher" : "{} more, since it hangs lower")
                            + ": by this estimate " + subject.calledWithVolume(vessel.get())
                            + " then keeps the peak below {}. 'heatswell size' looks for the setting"
                            + " that also holds with the usual tolerances and a year's loss of precharge, which may be lower. At"
                            + " the present supply it takes a larger vessel.",
                    Stream.of(
                                    Optional.of(new Measure(Measure.Kind.HIGHEST_SETTING, setting)),
                                    apart,
                                    Optional.of(Measure.volume(vessel.get().volume())),
                                    Optional.of(Measure.gauge(limit)))
                            .flatMap(Optional::stream)
                            .toArray(Measure[]::new));
        } else {
            draft.advisesWork(
                    (wrong ? "Have the precharge put right and watch" : "Have the precharge checked and watch")
                            + " a gauge through a full heat-up. If it still passes {}, have a larger vessel fitted or the"
                            + " supply pressure lowered.",
                    Measure.gauge(limit));
        }
    }

    private String lower() {
        return subject.house.supply().reducingValve().isPresent()
                ? "Have the reducing valve set so that the supply stands at"
                : "Have a reducing valve fitted that holds the supply at";
    }

    /**
     * The highest supply (Pa, gauge) at which the vessel, charged to match, keeps within the limit; 0 if there is none.
     */
    private double setting(ExpansionVessel vessel) {
        double low = 0;
        double high = limit;
        if (!holds(vessel, low)) {
            return 0;
        }
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            if (holds(vessel, middle)) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    private boolean holds(ExpansionVessel vessel, double supply) {
        double charge = supply - subject.lift(vessel.height());
        return VesselSizeRule.room(subject, vessel, charge, supply, limit)
                >= MARGIN
                        * VesselSizeRule.needed(
                                subject,
                                supply,
                                limit,
                                Math.max(subject.highestSetPoint(), WaterTemperatureRule.STORED));
    }
}
