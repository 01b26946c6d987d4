package io.github.heatswell.narrative;

import io.github.heatswell.assessment.Doubts;
import io.github.heatswell.assessment.Finding;
import io.github.heatswell.assessment.Findings;
import io.github.heatswell.assessment.PrechargeTarget;
import io.github.heatswell.sizing.NominalSize;
import io.github.heatswell.sizing.SizingResult;
import io.github.heatswell.sizing.SizingTarget;
import io.github.heatswell.study.SizeCertainty;
import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.ReliefValve;
import io.github.heatswell.units.Pressure;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * A sizing, and how sure its numbers are: which of the sizes on sale to take.
 *
 * @param sizing the answer of the simulation
 * @param house the house as it is
 * @param certainty in how many houses within what is uncertain the limit is kept; empty if nothing is uncertain
 * @param lower the cheapest lower supply with the vessel that goes with it; empty if none was found or looked for
 * @param doubts what is not known of the house
 */
public record SizeAdvice(
        SizingResult sizing,
        HotWaterSystem house,
        Optional<SizeCertainty> certainty,
        Optional<LowerSupply> lower,
        Doubts doubts) {

    /** Findings that a vessel is made for too little. */
    private static final Set<String> WEAK = Set.of("vessel-rated-below-relief", "vessel-rating-exceeded");

    /** Pressures closer than this (Pa) are the same. */
    private static final double READS_THE_SAME = 1;

    /**
     * A lower supply at which a vessel keeps the limit in nine of ten houses.
     *
     * @param supply the supply
     * @param volume the volume of the vessel (m3)
     * @param precharge its precharge
     * @param owned whether it is the vessel of the house
     * @param price what valve and vessel cost; empty if there is nothing to buy
     */
    public record LowerSupply(
            Setting supply, double volume, Pressure precharge, boolean owned, Optional<NominalSize.Price> price) {

        /**
         * Checks that everything is there.
         *
         * @param supply the supply
         * @param volume the volume of the vessel (m3)
         * @param precharge its precharge
         * @param owned whether it is the vessel of the house
         * @param price what valve and vessel cost
         */
        public LowerSupply {
            Objects.requireNonNull(supply, "supply");
            Objects.requireNonNull(precharge, "precharge");
            Objects.requireNonNull(price, "price");
        }
    }

    /**
     * A supply that a reducing valve gives.
     *
     * @param valve what the valve is to be set to
     * @param standing the pressure of the supply then, with no water running
     * @param fitted whether the house has no reducing valve yet, so that one is to be fitted
     */
    public record Setting(Pressure valve, Pressure standing, boolean fitted) {

        /**
         * Checks that everything is there.
         *
         * @param valve what the valve is to be set to
         * @param standing the pressure of the supply then, with no water running
         * @param fitted whether one is to be fitted
         */
        public Setting {
            Objects.requireNonNull(valve, "valve");
            Objects.requireNonNull(standing, "standing");
        }
    }

    /**
     * A sizing at the supply as it is, of a house of which everything is known.
     *
     * @param sizing the answer of the simulation
     * @param house the house as it is
     * @param certainty in how many houses within what is uncertain the limit is kept; empty if nothing is uncertain
     */
    public SizeAdvice(SizingResult sizing, HotWaterSystem house, Optional<SizeCertainty> certainty) {
        this(sizing, house, certainty, Optional.empty(), Doubts.NONE);
    }

    /**
     * Checks that everything is there.
     *
     * @param sizing the answer of the simulation
     * @param house the house as it is
     * @param certainty in how many houses within what is uncertain the limit is kept
     * @param lower the cheapest lower supply with the vessel that goes with it
     * @param doubts what is not known of the house
     */
    public SizeAdvice {
        Objects.requireNonNull(sizing, "sizing");
        Objects.requireNonNull(house, "house");
        Objects.requireNonNull(certainty, "certainty");
        Objects.requireNonNull(lower, "lower");
        Objects.requireNonNull(doubts, "doubts");
    }

    /**
     * The size to take, the same in every report, file and picture: the smallest on sale that keeps the limit in nine of ten houses
     * within what is uncertain, or, where nothing is uncertain, the smallest that keeps it.
     *
     * @return the vessel, or empty if none is needed, or none on sale is enough or sure enough
     */
    public Optional<SizingResult.Vessel> recommended() {
        return certainty
                .map(found -> found.advised()
                        .flatMap(advised -> sizing.nominal().stream()
                                .filter(size -> size.volume() == advised.volume())
                                .findFirst()))
                .orElseGet(sizing::smallestOnSale);
    }

    /**
     * The vessel of the house, where it is to be kept: nothing has to be bought then, whatever its charge, and even if it is cut off
     * or sits on the wrong side of the supply valve.
     *
     * @return the vessel, if it is the only one, holds its gas, is made for the pressures here and no smaller than the size to take
     */
    public Optional<ExpansionVessel> kept() {
        return fit(house, sizing.target(), doubts)
                .filter(present -> recommended()
                        .filter(wanted -> wanted.volume() <= present.volume() * (1 + 1e-9))
                        .isPresent());
    }

    /**
     * The vessel of the house, where it need only be large enough to be kept: it is then one of the sizes to choose from, whichever are
     * on sale.
     *
     * @param house the house as it is
     * @param target what the peak must stay below
     * @param doubts what is not known of the house
     * @return the vessel, if it is the only one, holds its gas and is made for the pressures here
     */
    public static Optional<ExpansionVessel> fit(HotWaterSystem house, SizingTarget target, Doubts doubts) {
        return only(house)
                .filter(present -> present.condition() != ExpansionVessel.Condition.WATERLOGGED)
                .filter(present -> !isWeak(present, house, target, doubts));
    }

    /**
     * The vessel of the house, where recharging it is the first thing to try though a larger one is advised.
     *
     * @return the vessel, if it is the only one, works, is made for the pressures here, keeps the limit by the best estimates alone, and
     *     is charged wrong
     */
    public Optional<ExpansionVessel> justEnough() {
        return only(house)
                .filter(present -> present.condition() == ExpansionVessel.Condition.SOUND)
                .filter(present -> sizing.smallest()
                        .filter(least -> least.volume() <= present.volume())
                        .isPresent())
                .filter(present -> kept().isEmpty() && madeFor().isEmpty() && !isCharged());
    }

    private static Optional<ExpansionVessel> only(HotWaterSystem house) {
        return house.vessel().filter(one -> !house.hasSeveralVessels());
    }

    /**
     * Whether the limit is kept with nothing changed, even where the house differs from its description.
     *
     * @return true if the vessel is to be kept and works with the right charge, or if no vessel is needed beside those present
     */
    public boolean isAsItShouldBe() {
        boolean enough = sizing.outcome() == SizingResult.Outcome.NONE_NEEDED
                && (house.hasSeveralVessels() || house.vessel().isEmpty());
        return enough
                ? certainty.filter(found -> found.bare().holds()).isPresent()
                : kept().isPresent() && isAtWork() && isCharged();
    }

    /**
     * Whether the vessel of the house works as it is: whether nothing cuts it off from the water that expands.
     *
     * @return false without a vessel, or if none of them works
     */
    public boolean isAtWork() {
        return house.vessels().stream().anyMatch(vessel -> vessel.condition() == ExpansionVessel.Condition.SOUND);
    }

    /**
     * What another vessel must be made for, where the plate of the only one of the house says less.
     *
     * @return the set pressure of the relief valve that opens last, or without one the limit where the vessel stands (Pa, gauge); empty if
     *     the present one is made for it, or nobody has read its plate
     */
    public OptionalDouble madeFor() {
        return only(house)
                .filter(present -> isWeak(present, house, sizing.target(), doubts))
                .map(present -> OptionalDouble.of(Limit.lastRelief(house)
                        .map(valve -> valve.setPressure().gauge(house.site().atmosphere()))
                        .orElseGet(() -> sizing.target().gauge() - house.head(present.height()))))
                .orElse(OptionalDouble.empty());
    }

    private static boolean isWeak(ExpansionVessel present, HotWaterSystem house, SizingTarget target, Doubts doubts) {
        HotWaterSystem working = house.toBuilder()
                .vessel(present.toBuilder()
                        .condition(ExpansionVessel.Condition.SOUND)
                        .build())
                .build();
        double limit = target.gauge() - house.head(present.height());
        return present.body()
                        .rating()
                        .filter(rating -> rating.gauge(house.site().atmosphere()) < limit - READS_THE_SAME
                                || Limit.opensAbove(rating, house).isPresent())
                        .isPresent()
                || Findings.of(working, doubts).stream().map(Finding::id).anyMatch(WEAK::contains);
    }

    /**
     * Whether the vessel of the house is known to be charged as it should be.
     *
     * @return false without a vessel or with several, and if nobody has read the charge
     */
    public boolean isCharged() {
        return PrechargeTarget.isMet(house, doubts);
    }

    /**
     * A relief valve that runs whichever vessel is fitted.
     *
     * @return the first that is stuck open, or empty if none is
     */
    public Optional<ReliefValve> stuckOpen() {
        return ReliefWords.stuckOpen(house);
    }

    /**
     * What a bound of the target is.
     *
     * @param bound the bound
     * @return such as {@code working pressure of the tank}
     */
    public String name(SizingTarget.Bound bound) {
        return switch (bound.rule()) {
            case RELIEF_RESEAT ->
                "reseat pressure of "
                        + (house.reliefValves().size() == 1 ? "the relief valve" : "'" + bound.device() + "'")
                        + ", less 3 % of its set pressure";
            case CODE_CAP ->
                SizingTarget.cap(house)
                        .filter(rule -> bound.source().text().startsWith(rule.clause()))
                        .map(rule -> house.site().place().isKnown()
                                ? "limit here (" + rule.clause() + ")"
                                : "cap of a US model code (" + rule.clause() + ")")
                        .orElse("cap given");
            case VESSEL_RATING ->
                bound.assumed()
                        ? "rating assumed for the vessel: read its plate"
                                + (house.reliefValves().isEmpty()
                                        ? ""
                                        : "; it must be at least the "
                                                + (house.reliefValves().size() == 1
                                                        ? "relief valve's set pressure"
                                                        : "highest set pressure of the relief valves"))
                        : "rating of the vessel"
                                + (house.vessel()
                                                .filter(vessel -> vessel.height() != 0)
                                                .isPresent()
                                        ? ", taken to the drain cock"
                                        : "");
            case WORKING_PRESSURE ->
                house.tank().workingPressureGiven()
                        ? "working pressure of the tank"
                        : "working pressure assumed for the tank: read its plate";
            case OWN -> "limit given";
        };
    }
}
