package io.github.heatswell.system;

import io.github.heatswell.units.Limits;
import io.github.heatswell.units.PowerUnit;
import io.github.heatswell.units.QuantityFormat;
import io.github.heatswell.units.RatioUnit;
import io.github.heatswell.units.TemperatureDifferenceUnit;
import io.github.heatswell.units.TemperatureUnit;
import io.github.heatswell.units.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;

/**
 * What heats the tank: a gas burner, or one or two electric elements, each with its thermostat, and a high-limit cut-out
 * above them.
 */
public final class Heater {

    private static final Limits RECOVERY_EFFICIENCY = Limits.between("recoveryEfficiency", 0.1, 1.0);
    private static final Limits MIXED_TO = Limits.between("mixedTo", 303.15, 353.15);
    private static final Limits CUT_OUT = Limits.between("cutOut", 323.15, 403.15);

    private final Energy energy;
    private final double recoveryEfficiency;
    private final List<Element> elements;
    private final boolean simultaneous;
    private final boolean thermostatStuck;
    private final Double cutOut;
    private final boolean cutOutAbsent;
    private final Double mixedTo;

    private Heater(Builder from, List<Element> elements) {
        energy = from.energy;
        recoveryEfficiency = from.recoveryEfficiency;
        this.elements = List.copyOf(elements);
        simultaneous = from.simultaneous;
        thermostatStuck = from.thermostatStuck;
        cutOut = from.cutOut;
        cutOutAbsent = from.cutOutAbsent;
        mixedTo = from.mixedTo;
    }

    /**
     * Starts a description; energy, recovery efficiency and the element's numbers must be set.
     *
     * @return an empty builder
     */
    public static Builder builder() {
        return new Builder();
    }

    /**
     * Starts a description from this one, to change a part of it.
     *
     * @return a builder that holds everything this heater holds
     */
    public Builder toBuilder() {
        Builder builder = new Builder();
        builder.energy = energy;
        builder.recoveryEfficiency = recoveryEfficiency;
        builder.simultaneous = simultaneous;
        builder.thermostatStuck = thermostatStuck;
        builder.cutOut = cutOut;
        builder.cutOutAbsent = cutOutAbsent;
        builder.mixedTo = mixedTo;
        builder.lower.copy(elements.get(0));
        builder.upper = elements.size() > 1 ? elements.get(1) : null;
        return builder;
    }

    /**
     * The same heater with every element changed.
     *
     * @param change makes another element of each
     * @return the heater
     * @throws InvalidDescriptionException if the elements do not go together then
     */
    public Heater withElements(UnaryOperator<Element> change) {
        Builder builder = toBuilder();
        builder.lower.copy(change.apply(elements.get(0)));
        builder.upper = elements.size() > 1 ? change.apply(elements.get(1)) : null;
        return builder.build();
    }

    /** Where the heat comes from. */
    public enum Energy {
        /** A gas burner under the tank. */
        GAS,
        /** Electric immersion elements. */
        ELECTRIC
    }

    /** {@return energy, input and set point in a line} */
    @Override
    public String toString() {
        QuantityFormat si = QuantityFormat.ascii(UnitSystem.SI);
        return energy.name().toLowerCase(Locale.ROOT).replace('_', ' ') + " heater, " + si.power(input()) + ", set to "
                + si.temperature(setPoint());
    }

    /**
     * Where the heat comes from.
     *
     * @return the energy
     */
    public Energy energy() {
        return energy;
    }

    /**
     * Power input of the burner, or of the lower element, while on.
     *
     * @return the input (W)
     */
    public double input() {
        return elements.get(0).input();
    }

    /**
     * The share of the input that reaches the water while the heater is on.
     *
     * @return the recovery efficiency (-)
     */
    public double recoveryEfficiency() {
        return recoveryEfficiency;
    }

    /**
     * The water temperature at which the thermostat switches off; with two elements, that of the lower one.
     *
     * @return the set point (K)
     */
    public double setPoint() {
        return elements.get(0).setPoint();
    }

    /**
     * How far the water falls below the set point before the thermostat switches on; with two elements, at the lower one.
     *
     * @return the differential (K)
     */
    public double differential() {
        return elements.get(0).differential();
    }

    /**
     * The heat that reaches the water while the burner or the lower element is on.
     *
     * @return input times recovery efficiency (W)
     */
    public double output() {
        return input() * recoveryEfficiency;
    }

    /**
     * The burner or the elements.
     *
     * @return one or two, the lower first
     */
    public List<Element> elements() {
        return elements;
    }

    /**
     * Whether two elements may heat at once. If not, the upper one goes first.
     *
     * @return true if both may be on together
     */
    public boolean simultaneous() {
        return simultaneous;
    }

    /**
     * Whether the thermostat of the burner or lower element is stuck and never switches off.
     *
     * @return true for that fault
     */
    public boolean thermostatStuck() {
        return thermostatStuck;
    }

    /**
     * The temperature of the hottest water at which the high-limit cut-out switches everything off, until somebody resets
     * it by hand.
     *
     * @return the temperature (K), or empty if there is no cut-out or it has failed
     */
    public OptionalDouble cutOut() {
        return cutOut == null ? OptionalDouble.empty() : OptionalDouble.of(cutOut);
    }

    /**
     * Whether somebody looked for a cut-out and found none; a description that is silent about it says nothing of the kind.
     *
     * @return true if there is none
     */
    public boolean isCutOutAbsent() {
        return cutOutAbsent;
    }

    /**
     * Temperature that a mixing valve after the tank delivers to the taps.
     *
     * @return the temperature (K), or empty if there is no mixing valve
     */
    public OptionalDouble mixedTo() {
        return mixedTo == null ? OptionalDouble.empty() : OptionalDouble.of(mixedTo);
    }

    /** Builds a {@link Heater}. */
    public static final class Builder {
        private final Element.Builder lower = Element.builder();
        private Energy energy;
        private Double recoveryEfficiency;
        private Element upper;
        private boolean simultaneous;
        private boolean thermostatStuck;
        private Double cutOut;
        private boolean cutOutAbsent;
        private Double mixedTo;

        private Builder() {}

        /**
         * Sets where the heat comes from.
         *
         * @param value the energy
         * @return this builder
         */
        public Builder energy(Energy value) {
            energy = Objects.requireNonNull(value, "energy");
            return this;
        }

        /**
         * Sets the input of the burner or the lower element.
         *
         * @param value the input, above 0 to 500 kW
         * @param unit its unit
         * @return this builder
         * @throws IllegalArgumentException if the input is outside its range
         */
        public Builder input(double value, PowerUnit unit) {
            lower.input(value, unit);
            return this;
        }

        /**
         * Sets what part of its input the burner or the lower element takes while on; by default, all of it.
         *
         * @param value the curve
         * @return this builder
         * @throws IllegalArgumentException if the curve breaks its contract, see {@link Element.Builder#powerCurve}
         */
        public Builder powerCurve(PowerCurve value) {
            lower.powerCurve(value);
            return this;
        }

        /**
         * Sets the recovery efficiency.
         *
         * @param value the efficiency, 10 % to 100 %
         * @param unit its unit
         * @return this builder
         * @throws IllegalArgumentException if the efficiency is outside its range
         */
        public Builder recoveryEfficiency(double value, RatioUnit unit) {
            recoveryEfficiency = RECOVERY_EFFICIENCY.check(value, unit);
            return this;
        }

        /**
         * Sets the height of the burner or lower element and its thermostat; by default, the bottom.
         *
         * @param value the share of the tank's height, 0 to 95 %
         * @param unit its unit
         * @return this builder
         * @throws IllegalArgumentException if the height is outside the tank
         */
        public Builder height(double value, RatioUnit unit) {
            lower.height(value, unit);
            return this;
        }

        /**
         * Sets the temperature at which the thermostat switches off.
         *
         * @param value the set point, 10 degC to 99 degC
         * @param unit its unit
         * @return this builder
         * @throws IllegalArgumentException if the set point is outside its range
         */
        public Builder setPoint(double value, TemperatureUnit unit) {
            lower.setPoint(value, unit);
            return this;
        }

        /**
         * Sets how far the water cools before the thermostat switches on.
         *
         * @param value the differential, 0.1 K to 40 K
         * @param unit its unit
         * @return this builder
         * @throws IllegalArgumentException if the differential is outside its range
         */
        public Builder differential(double value, TemperatureDifferenceUnit unit) {
            lower.differential(value, unit);
            return this;
        }

        /**
         * Adds an upper electric element.
         *
         * @param value the element, above the lower one
         * @return this builder
         */
        public Builder upper(Element value) {
            upper = Objects.requireNonNull(value, "upper");
            return this;
        }

        /**
         * Sets whether two elements may heat at once; by default they may not, and the upper one goes first.
         *
         * @param value true if they may
         * @return this builder
         */
        public Builder simultaneous(boolean value) {
            simultaneous = value;
            return this;
        }

        /**
         * Makes the thermostat of the burner or the lower element one that never switches off.
         *
         * @param value true for that fault
         * @return this builder
         */
        public Builder thermostatStuck(boolean value) {
            thermostatStuck = value;
            return this;
        }

        /**
         * Adds a high-limit cut-out.
         *
         * @param value the temperature of the hottest water, 50 degC to 130 degC
         * @param unit its unit
         * @return this builder
         * @throws IllegalArgumentException if the temperature is outside its range
         */
        public Builder cutOut(double value, TemperatureUnit unit) {
            cutOut = CUT_OUT.check(value, unit);
            cutOutAbsent = false;
            return this;
        }

        /**
         * States that there is no cut-out, which leaving it out does not.
         *
         * @return this builder
         */
        public Builder withoutCutOut() {
            cutOut = null;
            cutOutAbsent = true;
            return this;
        }

        /**
         * Adds a mixing valve after the tank. It decides whether the taps can scald but does not affect the simulation.
         *
         * @param value the temperature at the taps, 30 degC to 80 degC
         * @param unit its unit
         * @return this builder
         * @throws IllegalArgumentException if the temperature is outside its range
         */
        public Builder mixedTo(double value, TemperatureUnit unit) {
            mixedTo = MIXED_TO.check(value, unit);
            return this;
        }

        /**
         * Removes the mixing valve: the taps get water at tank temperature.
         *
         * @return this builder
         */
        public Builder withoutMixing() {
            mixedTo = null;
            return this;
        }

        /**
         * Completes the description.
         *
         * @return the heater
         * @throws InvalidDescriptionException if something is missing or does not belong together
         */
        public Heater build() {
            Requirements requirements =
                    new Requirements().present("energy", energy).present("recovery-efficiency", recoveryEfficiency);
            List<Element> elements = new ArrayList<>();
            requirements.absorb(() -> elements.add(lower.build()));
            if (upper != null) {
                requirements.rule(energy != Energy.GAS, "upper", "a gas burner has no second element");
                requirements.rule(
                        elements.isEmpty() || upper.height() > elements.get(0).height(),
                        "upper",
                        "must sit above the lower element");
                elements.add(upper);
            }
            requirements.rule(upper != null || !simultaneous, "simultaneous", "needs an upper element");
            requirements.rule(
                    cutOut == null || elements.stream().allMatch(element -> element.setPoint() < cutOut),
                    "cut-out",
                    "must be above the set point, or the cut-out trips on every heat-up");
            requirements.orThrow();
            return new Heater(this, elements);
        }
    }
}
