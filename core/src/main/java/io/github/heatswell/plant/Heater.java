package io.github.heatswell.plant;

import io.github.heatswell.units.PowerUnit;
import io.github.heatswell.units.RatioUnit;
import io.github.heatswell.units.TemperatureDifferenceUnit;
import io.github.heatswell.units.TemperatureUnit;
import java.util.Objects;

/**
 * What heats the tank, and the thermostat that switches it: off when the water reaches the set point, on again when it
 * has fallen by the differential.
 */
public final class Heater {

    private static final Limits INPUT = Limits.above("input", 0, 500e3);
    private static final Limits RECOVERY_EFFICIENCY = Limits.between("recovery-efficiency", 0.1, 1.0);
    private static final Limits SET_POINT = Limits.between("set-point", 283.15, 372.15);
    private static final Limits DIFFERENTIAL = Limits.between("differential", 0.1, 40);

    private final Energy energy;
    private final double input;
    private final double recoveryEfficiency;
    private final double setPoint;
    private final double differential;

    private Heater(Builder from) {
        energy = from.energy;
        input = from.input;
        recoveryEfficiency = from.recoveryEfficiency;
        setPoint = from.setPoint;
        differential = from.differential;
    }

    /**
     * Starts a description; everything must be set.
     *
     * @return an empty builder
     */
    public static Builder builder() {
        return new Builder();
    }

    /** Where the heat comes from. */
    public enum Energy {
        /** A gas burner under the tank. */
        GAS,
        /** An electric immersion element. */
        ELECTRIC
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
     * What the burner or element takes in while it is on.
     *
     * @return the input (W)
     */
    public double input() {
        return input;
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
     * The water temperature at which the thermostat switches off.
     *
     * @return the set point (K)
     */
    public double setPoint() {
        return setPoint;
    }

    /**
     * How far the water falls below the set point before the thermostat switches on.
     *
     * @return the differential (K)
     */
    public double differential() {
        return differential;
    }

    /**
     * The heat that reaches the water while the heater is on.
     *
     * @return input times recovery efficiency (W)
     */
    public double output() {
        return input * recoveryEfficiency;
    }

    /** Builds a {@link Heater}. */
    public static final class Builder {
        private Energy energy;
        private Double input;
        private Double recoveryEfficiency;
        private Double setPoint;
        private Double differential;

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
         * Sets the input while on.
         *
         * @param value the input, above 0 to 500 kW
         * @param unit its unit
         * @return this builder
         * @throws IllegalArgumentException if the input is outside its range
         */
        public Builder input(double value, PowerUnit unit) {
            input = INPUT.check(value, unit);
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
         * Sets the temperature at which the thermostat switches off.
         *
         * @param value the set point, 10 degC to 99 degC
         * @param unit its unit
         * @return this builder
         * @throws IllegalArgumentException if the set point is outside its range
         */
        public Builder setPoint(double value, TemperatureUnit unit) {
            setPoint = SET_POINT.check(value, unit);
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
            differential = DIFFERENTIAL.check(value, unit);
            return this;
        }

        /**
         * Ends the description.
         *
         * @return the heater
         * @throws InvalidDescriptionException if something is missing, or if the thermostat would switch on only below
         *     freezing
         */
        public Heater build() {
            Requirements requirements = new Requirements()
                    .present("energy", energy)
                    .present("input", input)
                    .present("recovery-efficiency", recoveryEfficiency)
                    .present("set-point", setPoint)
                    .present("differential", differential);
            if (requirements.met()) {
                requirements.rule(
                        setPoint - differential > 273.15,
                        "differential",
                        Limits.quantity(differential, TemperatureDifferenceUnit.KELVIN)
                                + " would let the water cool to freezing before the thermostat switches on");
            }
            requirements.orThrow();
            return new Heater(this);
        }
    }
}
