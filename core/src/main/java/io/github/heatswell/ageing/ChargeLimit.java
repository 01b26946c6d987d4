package io.github.heatswell.ageing;

import io.github.heatswell.assessment.PrechargeTarget;
import io.github.heatswell.result.Event;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How low the precharge may fall.
 *
 * @param lowestGauge the lowest precharge with which on the worst day of the year no relief valve discharges and the
 *     tank's working pressure is kept (Pa, gauge): 0 if any charge will do, empty if that of today does not
 * @param rechargeBelowGauge the reading of the drained vessel that calls for the pump (Pa, gauge): what the findings
 *     call too low, or the lowest precharge with a margin for the tyre gauge if that is more; empty as the other, if the
 *     plate of vessel or tank forbids to charge it as the supply stands (then the supply has to come down), or if a run
 *     with that charge ends in a hazard
 * @param pumpToGauge what to pump it to then, as the findings say (Pa, gauge); empty as the other
 * @param hazardWhenPumped the hazard in which the worst day of some month ends with the charge that matches the supply:
 *     then that charge is not advised and what follows from it is empty; itself empty if there is none, or if today's
 *     charge does not do or the plates forbid to match the supply
 * @param rechargeAfter when it is reached at the expected loss (years), infinite if never; empty as the others
 */
public record ChargeLimit(
        OptionalDouble lowestGauge,
        OptionalDouble rechargeBelowGauge,
        OptionalDouble pumpToGauge,
        Optional<Event.Kind> hazardWhenPumped,
        OptionalDouble rechargeAfter) {

    /** Margin above the limit at which to recharge (Pa, difference): common practice, no source. */
    public static final double MARGIN = 0.2e5;

    private static final double WITHIN = 100;

    static ChargeLimit of(Ageing house, PrechargeLoss loss) {
        double today = house.prechargeGauge();
        if (!house.isSoundAt(today)) {
            return unpumped(OptionalDouble.empty(), Optional.empty());
        }
        double limit = limit(house, today);
        PrechargeTarget target = house.target();
        if (!target.isAllowed()) {
            return unpumped(OptionalDouble.of(limit), Optional.empty());
        }
        Optional<Event.Kind> hazard = house.hazardAt(target.pumpToGauge());
        if (hazard.isPresent()) {
            return unpumped(OptionalDouble.of(limit), hazard);
        }
        double safe = limit == 0 ? 0 : limit + MARGIN;
        double recharge = Math.min(target.pumpToGauge(), Math.max(target.tooLowGauge(), safe));
        double after = today <= recharge ? 0 : loss.yearsUntil(today, recharge, house.staticGauge());
        return new ChargeLimit(
                OptionalDouble.of(limit),
                OptionalDouble.of(recharge),
                OptionalDouble.of(target.pumpToGauge()),
                Optional.empty(),
                OptionalDouble.of(after));
    }

    private static ChargeLimit unpumped(OptionalDouble limit, Optional<Event.Kind> hazard) {
        return new ChargeLimit(limit, OptionalDouble.empty(), OptionalDouble.empty(), hazard, OptionalDouble.empty());
    }

    /** Halves the range between a charge that will not do and one that does. */
    private static double limit(Ageing house, double sound) {
        if (house.isSoundAt(0)) {
            return 0;
        }
        double low = 0;
        double high = sound;
        while (high - low > WITHIN) {
            double middle = (low + high) / 2;
            if (house.isSoundAt(middle)) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return high;
    }
}
