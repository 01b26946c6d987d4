package io.github.heatswell.assessment;

import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.system.HotWaterSystem;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;

/**
 * What the charge of a vessel should read with its water side drained, by {@link Codes#PRECHARGE}: the highest supply
 * pressure at the vessel, for which the vessel is sized too. A charge is too low once it is further below the lowest supply
 * pressure than the trade allows and a hand-held gauge can show. Everything that says when or how far to pump takes it from
 * here.
 *
 * @param pumpToGauge the charge to set, where the plates allow it (Pa, gauge)
 * @param tooLowGauge the charge below which it has to be set again (Pa, gauge)
 * @param mostGauge the most that the plates of vessel and tank allow (Pa, gauge)
 * @param afterSupply whether a relief valve opens at the supply's own pressure, so that no charge helps before that comes down
 */
public record PrechargeTarget(double pumpToGauge, double tooLowGauge, double mostGauge, boolean afterSupply) {

    /** How far below the supply a charge may lie (Pa): 0.2 bar to 0.3 bar by the trade page, and the reading. */
    static final double ALLOWED_BELOW = 0.4e5;

    /**
     * What the vessel of a house should read.
     *
     * @param house the house
     * @return its charge; empty without a vessel, or if the supply does not rise to it
     */
    public static Optional<PrechargeTarget> of(HotWaterSystem house) {
        AssessmentContext subject = new AssessmentContext(Objects.requireNonNull(house, "house"), Optional.empty());
        return house.vessel().filter(vessel -> !subject.isOutOfReach(vessel)).map(vessel -> of(subject, vessel));
    }

    /**
     * The vessel whose precharge is watched: the first that works and that the supply reaches.
     *
     * @param house the house
     * @return its place among the vessels, from 0; empty if there is none such
     */
    public static OptionalInt leading(HotWaterSystem house) {
        return IntStream.range(0, house.vessels().size())
                .filter(i -> house.vessels().get(i).condition() == ExpansionVessel.Condition.SOUND)
                .filter(i -> of(house, i).isPresent())
                .findFirst();
    }

    /**
     * The precharge one of several vessels of a house should have.
     *
     * @param house the house
     * @param index its place among the vessels, from 0
     * @return the target, or empty if the supply does not rise to it
     * @throws IndexOutOfBoundsException if there is no such vessel
     */
    public static Optional<PrechargeTarget> of(HotWaterSystem house, int index) {
        AssessmentContext subject = new AssessmentContext(Objects.requireNonNull(house, "house"), Optional.empty());
        return Optional.of(house.vessels().get(index))
                .filter(vessel -> !subject.isOutOfReach(vessel))
                .map(vessel -> of(subject, vessel));
    }

    /**
     * Whether the vessel of a house is known to be charged as it should be.
     *
     * @param house the house
     * @param doubts what is not known of it
     * @return false without a vessel, with several, if the supply does not rise to it, or if nobody has read its charge
     */
    public static boolean isMet(HotWaterSystem house, Doubts doubts) {
        return house.vessel().isPresent() && !house.hasSeveralVessels() && isMet(house, 0, doubts);
    }

    /**
     * Whether one of the vessels of a house is known to be charged as it should be.
     *
     * @param house the house
     * @param index its place among the vessels, from 0
     * @param doubts what is not known of the house
     * @return false if the supply does not rise to it, or if nobody has read the charges
     * @throws IndexOutOfBoundsException if there is no such vessel
     */
    public static boolean isMet(HotWaterSystem house, int index, Doubts doubts) {
        AssessmentContext subject =
                new AssessmentContext(house, Optional.empty(), Objects.requireNonNull(doubts, "doubts"));
        ExpansionVessel vessel = house.vessels().get(index);
        return !subject.prechargeIsUnknown()
                && !subject.isOutOfReach(vessel)
                && !PrechargeRule.isWrong(subject, vessel);
    }

    static PrechargeTarget of(AssessmentContext subject, ExpansionVessel vessel) {
        double lift = subject.lift(vessel.height());
        double tank = subject.workingPressure();
        double most = vessel.body()
                .rating()
                .map(rating -> Math.min(tank, rating.gauge(subject.atmosphere)))
                .orElse(tank);
        return new PrechargeTarget(
                subject.highestStatic() - lift,
                subject.lowestStatic() - lift - ALLOWED_BELOW,
                most,
                subject.supplyOpensRelief());
    }

    /**
     * Whether this charge may be set. If not, the supply has to come down first.
     *
     * @return false if vessel or tank is made for less, or a relief valve opens at the supply's own pressure
     */
    public boolean isAllowed() {
        return !afterSupply && !isBeyondPlate();
    }

    /**
     * Whether the charge is more than the plates allow.
     *
     * @return true if vessel or tank is made for less
     */
    public boolean isBeyondPlate() {
        return Rule.exceeds(pumpToGauge, mostGauge);
    }

    /**
     * Whether a relief valve opens at the supply's own pressure.
     *
     * @param house the house
     * @return true if no precharge helps before the supply comes down
     */
    public static boolean isSupplyTooHigh(HotWaterSystem house) {
        return new AssessmentContext(house, Optional.empty()).supplyOpensRelief();
    }

    /**
     * Whether the findings ask to lower the supply, or might. The charge then follows it.
     *
     * @param house the house
     * @return true if the supply stands above what is allowed for sure, or its vessel is large enough only at a lower one
     */
    public static boolean maySupplyComeDown(HotWaterSystem house) {
        return maySupplyComeDown(new AssessmentContext(house, Optional.empty()));
    }

    static boolean maySupplyComeDown(AssessmentContext subject) {
        return Rule.exceeds(subject.highestStatic(), subject.staticLimit()) || new Remedy(subject).isSupply();
    }
}
