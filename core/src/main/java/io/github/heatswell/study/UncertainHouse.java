package io.github.heatswell.study;

import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.NamedValue;
import io.github.heatswell.system.Supply;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** A house some of whose numbers are known only within limits. Immutable. */
public final class UncertainHouse {

    private final HotWaterSystem described;
    private final Map<Quantity, Distribution> deviations;

    private UncertainHouse(HotWaterSystem described, Map<Quantity, Distribution> deviations) {
        this.described = described;
        this.deviations = Collections.unmodifiableMap(deviations);
    }

    /**
     * A house whose numbers are known as well as they usually are.
     *
     * @param described the house as described, from which its numbers deviate
     * @return the house with every {@link Quantity} that concerns it
     */
    public static UncertainHouse usual(HotWaterSystem described) {
        Objects.requireNonNull(described, "described");
        Map<Quantity, Distribution> deviations = new EnumMap<>(Quantity.class);
        for (Quantity each : Quantity.values()) {
            if (each.concerns(described)) {
                deviations.put(each, each.usual());
            }
        }
        return new UncertainHouse(described, deviations);
    }

    /**
     * The same house with one quantity known better or worse.
     *
     * @param quantity the quantity
     * @param deviation how far it is from the described value, in the unit of the quantity
     * @return the house
     * @throws IllegalArgumentException if the house has no such quantity
     */
    public UncertainHouse with(Quantity quantity, Distribution deviation) {
        Objects.requireNonNull(quantity, "quantity");
        Objects.requireNonNull(deviation, "deviation");
        if (!quantity.concerns(described)) {
            throw new IllegalArgumentException(quantity.label() + ": the house has none that could be uncertain");
        }
        Map<Quantity, Distribution> changed = new EnumMap<>(deviations);
        changed.put(quantity, deviation);
        return new UncertainHouse(described, changed);
    }

    /**
     * The same house with one quantity exactly as described.
     *
     * @param quantity the quantity
     * @return the house
     */
    public UncertainHouse exactly(Quantity quantity) {
        Map<Quantity, Distribution> changed = new EnumMap<>(deviations);
        changed.remove(Objects.requireNonNull(quantity, "quantity"));
        return new UncertainHouse(described, changed);
    }

    /**
     * The house as described.
     *
     * @return the house, with no deviation
     */
    public HotWaterSystem described() {
        return described;
    }

    /**
     * The uncertain quantities.
     *
     * @return the quantities, in the order of the inputs
     */
    public List<Quantity> quantities() {
        return List.copyOf(deviations.keySet());
    }

    /**
     * The uncertain inputs: the deviation of each quantity, in its unit.
     *
     * @return the inputs, named after the quantities
     */
    public List<Study.Input> inputs() {
        List<Study.Input> inputs = new ArrayList<>();
        deviations.forEach((quantity, deviation) -> inputs.add(new Study.Input(quantity.label(), deviation)));
        return inputs;
    }

    /**
     * The house with its numbers moved.
     *
     * @param values the deviation of each quantity, in the unit of {@link Quantity#unit}, in the order of the inputs
     * @return the house
     * @throws IllegalArgumentException if a number leaves its range or contradicts another, which a study counts as a
     *     failed sample; a recovery efficiency above 100 % becomes 100 %, and cold water stays above freezing
     */
    public HotWaterSystem moved(double[] values) {
        if (Objects.requireNonNull(values, "values").length != deviations.size()) {
            throw new IllegalArgumentException("values: " + deviations.size()
                    + " uncertain quantities need as many deviations, not " + values.length);
        }
        HotWaterSystem.Builder house = described.toBuilder();
        int next = 0;
        for (Quantity quantity : deviations.keySet()) {
            quantity.value.raise(house, values[next++]);
        }
        return house.followSupply().build();
    }

    /**
     * A number of a house and its usual uncertainty, unless somebody measured it better. Each is a deviation from what the
     * description says, in the unit named by {@link #unit()}, spread as {@link Distribution#around} says, or evenly between two limits
     * that do not lie around it. The figures are common practice without a source, except where noted.
     *
     * <p>Stiffness counts only without a working vessel: with one, it changes the rise by 1 to 6 %.
     */
    public enum Quantity {
        /** The pressure of the mains, off by the same amount at all hours: 0.15 bar. */
        SUPPLY_PRESSURE(NamedValue.SUPPLY, 0.15e5),
        /** What a reducing valve is set to: 0.15 bar. */
        REDUCED_PRESSURE(NamedValue.REDUCED, 0.15e5),
        /** The temperature of the cold water: 2 K. */
        SUPPLY_WATER(NamedValue.COLD, 2),
        /** Where thermostats switch off, all off by the same amount: 3 K. */
        SET_POINT(NamedValue.SET_POINT, 3),
        /** The share of the heater's input that reaches the water: 3 % of it; never above all of it. */
        RECOVERY_EFFICIENCY(NamedValue.RECOVERY_EFFICIENCY, 0.03),
        /** The volume of the tank: 3 % of it. */
        TANK_VOLUME(NamedValue.TANK_VOLUME, 0.03),
        /**
         * By how much the tank stretches, where nobody measured it: 30 %, for heads and a flue that are not described, bending, and a
         * wall that is guessed (no source). {@link io.github.heatswell.system.Tank.Builder#heads(io.github.heatswell.system.Tank.Heads)}
         * says
         * how far heads move it: those flatter than 43 % of their radius further than this.
         */
        TANK_STRETCH(NamedValue.COMPLIANCE, 0.3),
        /** Air under the top of the tank, where none is described: up to 0.2 % of the tank. */
        TANK_AIR(NamedValue.TANK_AIR, 0, 0.002),
        /**
         * By how much plastic pipe stretches: down to 30 % less, up to twice as much. The moduli of makers lie that far apart, and half
         * is left after hours of load (Handbook of PE Pipe, table B.1.1: 538 MPa after half an hour, 414 MPa after 12 h) or at 60 degC.
         */
        PIPE_STRETCH(NamedValue.PLASTIC_PIPE, -0.3, 1),
        /** The precharge of the expansion vessel: 0.1 bar. */
        PRECHARGE(NamedValue.PRECHARGE, 0.1e5),
        /**
         * The set pressure of all relief valves, with their full-lift and reseat pressures: 3 % of it, their tolerance
         * (common practice, no source).
         */
        RELIEF_SET(NamedValue.SET_PRESSURE, 0.03);

        private final NamedValue value;
        private final double expanded;
        private final Distribution usual;

        Quantity(NamedValue value, double expanded) {
            this.value = value;
            this.expanded = expanded;
            usual = Distribution.around(0, expanded);
        }

        Quantity(NamedValue value, double low, double high) {
            this.value = value;
            expanded = (high - low) / 2;
            usual = Distribution.between(low, high);
        }

        /**
         * What is uncertain.
         *
         * @return the quantity in words
         */
        public String label() {
            return value.label();
        }

        /**
         * The unit of the deviation.
         *
         * @return Pa or K, or nothing for a deviation that is a share of the described value
         */
        public String unit() {
            return value.raisedIn();
        }

        /**
         * The usual uncertainty.
         *
         * @return the expanded uncertainty, or half the distance of the limits, in the unit of {@link #unit()}
         */
        public double expanded() {
            return expanded;
        }

        /**
         * The usual spread of the deviation.
         *
         * @return the spread around 0, or between limits
         */
        public Distribution usual() {
            return usual;
        }

        /**
         * Whether a house has this quantity.
         *
         * @param house the house
         * @return true if it has
         */
        public boolean concerns(HotWaterSystem house) {
            Objects.requireNonNull(house, "house");
            return switch (this) {
                case REDUCED_PRESSURE -> house.supply().arrangement() == Supply.Arrangement.REDUCING_VALVE;
                case PRECHARGE ->
                    house.vessel()
                            .filter(vessel -> vessel.condition() == ExpansionVessel.Condition.SOUND)
                            .isPresent();
                case RELIEF_SET -> !house.reliefValves().isEmpty();
                case TANK_STRETCH ->
                    stiff(house)
                            && !house.tank().complianceGiven()
                            && house.tank().compliance() > 0;
                case TANK_AIR ->
                    stiff(house) && house.tank().air().isEmpty() && house.tank().compliance() > 0;
                case PIPE_STRETCH ->
                    stiff(house)
                            && house.piping().stream()
                                    .anyMatch(pipe -> pipe.material().yields());
                default -> true;
            };
        }

        /** Whether a closed house has no vessel that works, so that trifles decide how fast its pressure rises. */
        private static boolean stiff(HotWaterSystem house) {
            return house.supply().arrangement() != Supply.Arrangement.DIRECT
                    && house.vessels().stream()
                            .noneMatch(vessel -> vessel.condition() == ExpansionVessel.Condition.SOUND);
        }
    }
}
