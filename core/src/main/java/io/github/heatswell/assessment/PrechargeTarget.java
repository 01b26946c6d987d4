package io.github.heatswell.assessment;

import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.system.HotWaterSystem;
import java.util.Objects;
import java.util.Optional;

/**
 * What the charge of a vessel should read with its water side drained, by {@link Codes#PRECHARGE}: the pressure to pump to is the
 * lowest the supply stands at where the vessel is, and a charge is too low further below it than the trade allows and a hand-held
 * gauge can tell. Whoever says when to pump, or how far, says it by this.
 *
 * @param pumpToGauge the charge to set (Pa, gauge)
 * @param tooLowGauge the charge below which it has to be set again (Pa, gauge)
 */
public record PrechargeTarget(double pumpToGauge, double tooLowGauge) {

    /** How far below the supply a charge may lie (Pa): 0.2 bar to 0.3 bar by the trade page, and the reading. */
    static final double ALLOWED_BELOW = 0.4e5;

    /**
     * What the vessel of a house should read.
     *
     * @param house the house
     * @return its charge; empty without a vessel
     */
    public static Optional<PrechargeTarget> of(HotWaterSystem house) {
        AssessmentContext subject = new AssessmentContext(Objects.requireNonNull(house, "house"), Optional.empty());
        return house.vessel().map(vessel -> of(subject, vessel));
    }

    static PrechargeTarget of(AssessmentContext subject, ExpansionVessel vessel) {
        double target = subject.lowestStatic() - subject.lift(vessel.height());
        return new PrechargeTarget(target, target - ALLOWED_BELOW);
    }
}
