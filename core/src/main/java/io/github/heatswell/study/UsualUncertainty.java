package io.github.heatswell.study;

import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.Supply;
import java.util.Objects;
import java.util.function.ObjDoubleConsumer;
import java.util.function.Predicate;

/**
 * How well the numbers of a house are usually known, where nobody has measured better. Each is a deviation from what the
 * description says, in the unit named by {@link #unit()}, spread as {@link Distribution#around} says. The figures are
 * common practice without a source, except where noted.
 */
public enum UsualUncertainty {
    /** The pressure of the mains, by the same at all hours: 0.15 bar. */
    SUPPLY_PRESSURE("supply pressure", "Pa", 0.15e5, house -> true, Deviations::supplyPressure),
    /** What a reducing valve is set to: 0.15 bar. */
    REDUCED_PRESSURE("reducing valve's set pressure", "Pa", 0.15e5, Has::reducingValve, Deviations::reducedPressure),
    /** The temperature of the cold water: 2 K. */
    SUPPLY_WATER("cold water temperature", "K", 2, house -> true, Deviations::supplyWater),
    /** Where thermostats switch off, all by the same: 3 K. */
    SET_POINT("set point", "K", 3, house -> true, Deviations::setPoint),
    /** The share of the heater's input that reaches the water: 3 % of it; never above all of it. */
    RECOVERY_EFFICIENCY("recovery efficiency", "", 0.03, house -> true, Deviations::recoveryEfficiency),
    /** The volume of the tank: 3 % of it. */
    TANK_VOLUME("tank volume", "", 0.03, house -> true, Deviations::tankVolume),
    /** The precharge of the expansion vessel: 0.1 bar. */
    PRECHARGE("vessel's precharge", "Pa", 0.1e5, Has::soundVessel, Deviations::precharge),
    /**
     * The set pressure of all relief valves, with their full-lift and reseat pressures: 3 % of it, their tolerance
     * (common practice, no source).
     */
    RELIEF_SET("relief set pressure", "", 0.03, house -> !house.reliefValves().isEmpty(), Deviations::reliefSet);

    private final String label;
    private final String unit;
    private final double expanded;
    private final Predicate<HotWaterSystem> concerns;
    private final ObjDoubleConsumer<Deviations> apply;

    UsualUncertainty(
            String label,
            String unit,
            double expanded,
            Predicate<HotWaterSystem> concerns,
            ObjDoubleConsumer<Deviations> apply) {
        this.label = label;
        this.unit = unit;
        this.expanded = expanded;
        this.concerns = concerns;
        this.apply = apply;
    }

    /** What a house may have. */
    private static final class Has {
        private static boolean reducingValve(HotWaterSystem house) {
            return house.supply().arrangement() == Supply.Arrangement.REDUCING_VALVE;
        }

        private static boolean soundVessel(HotWaterSystem house) {
            return house.vessel()
                    .filter(vessel -> vessel.condition() == ExpansionVessel.Condition.SOUND)
                    .isPresent();
        }
    }

    /**
     * What is uncertain.
     *
     * @return the quantity in words
     */
    public String label() {
        return label;
    }

    /**
     * The unit of the deviation.
     *
     * @return Pa or K, or nothing for a deviation that is a share of the described value
     */
    public String unit() {
        return unit;
    }

    /**
     * The usual uncertainty.
     *
     * @return the expanded uncertainty, in the unit of {@link #unit()}
     */
    public double expanded() {
        return expanded;
    }

    /**
     * The usual spread of the deviation.
     *
     * @return the spread around 0
     */
    public Distribution usual() {
        return Distribution.around(0, expanded);
    }

    /**
     * Whether a house has this quantity.
     *
     * @param house the house
     * @return true if it has
     */
    public boolean concerns(HotWaterSystem house) {
        return concerns.test(Objects.requireNonNull(house, "house"));
    }

    void apply(Deviations deviations, double value) {
        apply.accept(deviations, value);
    }
}
