package io.github.heatswell.system;

import io.github.heatswell.units.DurationUnit;
import io.github.heatswell.units.LengthUnit;
import io.github.heatswell.units.Limits;
import io.github.heatswell.units.MassUnit;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.RatioUnit;
import io.github.heatswell.units.TemperatureUnit;
import io.github.heatswell.units.VolumeUnit;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * A diaphragm expansion vessel on the cold branch: a fixed mass of gas behind a diaphragm that takes up water once the
 * system's pressure exceeds the precharge, up to the acceptance limit of the diaphragm.
 */
public final class ExpansionVessel {

    private static final Limits VOLUME = Limits.between("volume", 0.1e-3, 5.0);
    private static final Limits PRECHARGE = Limits.above("precharge", 0, 16e5);
    private static final Limits ACCEPTANCE = Limits.between("acceptance", 0.05, 1.0);
    private static final Limits GAS_TIME_CONSTANT = Limits.between("gas-time-constant", 1, 3_600);
    private static final Limits CHARGED_AT = Limits.between("charged-at", 243.15, 333.15);
    private static final Limits TEMPERATURE = Limits.between("temperature", 243.15, 343.15);
    private static final Limits HEIGHT = Limits.between("height", -30, 30);

    private final double volume;
    private final Pressure precharge;
    private final double acceptance;
    private final Double gasTimeConstant;
    private final Double chargedAt;
    private final Double temperature;
    private final double height;
    private final Condition condition;
    private final VesselBody body;

    private ExpansionVessel(Builder from) {
        volume = from.volume;
        precharge = from.precharge;
        acceptance = from.acceptance;
        gasTimeConstant = from.gasTimeConstant;
        chargedAt = from.chargedAt;
        temperature = from.temperature;
        height = from.height;
        condition = from.condition;
        body = from.body.build();
    }

    /**
     * Starts a description; volume, precharge and acceptance must be set.
     *
     * @return an empty builder
     */
    public static Builder builder() {
        return new Builder();
    }

    /**
     * Starts a description from this one, to change a part of it.
     *
     * @return a builder that holds everything this vessel holds
     */
    public Builder toBuilder() {
        Builder builder = new Builder();
        builder.volume = volume;
        builder.precharge = precharge;
        builder.acceptance = acceptance;
        builder.gasTimeConstant = gasTimeConstant;
        builder.chargedAt = chargedAt;
        builder.temperature = temperature;
        builder.height = height;
        builder.condition = condition;
        builder.body = body.toBuilder();
        return builder;
    }

    /** What state the vessel is in. */
    public enum Condition {
        /** It works. */
        SOUND,
        /** It is behind a closed isolating valve: the system behaves as if it had none. */
        ISOLATED,
        /** The diaphragm has failed and the gas is gone: the vessel is full of water and takes up no expansion. */
        WATERLOGGED,
        /**
         * It is on the mains side of the check valve or reducing valve, cut off from the tank: the system behaves as if
         * it had none.
         */
        UPSTREAM_OF_CHECK
    }

    /**
     * Total inner volume, gas and water together.
     *
     * @return the volume (m3)
     */
    public double volume() {
        return volume;
    }

    /**
     * The gas pressure measured with the water side empty, at room temperature.
     *
     * @return the precharge
     */
    public Pressure precharge() {
        return precharge;
    }

    /**
     * Acceptance limit: the largest share of the volume that water may fill.
     *
     * @return the acceptance limit (-)
     */
    public double acceptance() {
        return acceptance;
    }

    /**
     * Time constant with which the gas returns to room temperature after compression.
     *
     * @return the time constant (s), or empty if the gas is isothermal
     */
    public OptionalDouble gasTimeConstant() {
        return gasTimeConstant == null ? OptionalDouble.empty() : OptionalDouble.of(gasTimeConstant);
    }

    /**
     * The temperature of the gas when the precharge was set.
     *
     * @return the temperature (K), or empty for that of the room
     */
    public OptionalDouble chargedAt() {
        return chargedAt == null ? OptionalDouble.empty() : OptionalDouble.of(chargedAt);
    }

    /**
     * The temperature of the air around the vessel.
     *
     * @return the temperature (K), or empty for that of the room
     */
    public OptionalDouble temperature() {
        return temperature == null ? OptionalDouble.empty() : OptionalDouble.of(temperature);
    }

    /**
     * Height above the tank's drain cock.
     *
     * @return the height (m), negative below it
     */
    public double height() {
        return height;
    }

    /**
     * What state the vessel is in.
     *
     * @return the condition
     */
    public Condition condition() {
        return condition;
    }

    /**
     * Pressure rating, mass and mounting.
     *
     * @return the body; all of it may be unknown
     */
    public VesselBody body() {
        return body;
    }

    /** Builds an {@link ExpansionVessel}. */
    public static final class Builder {
        private Double volume;
        private Pressure precharge;
        private Double acceptance;
        private Double gasTimeConstant;
        private Double chargedAt;
        private Double temperature;
        private double height;
        private Condition condition = Condition.SOUND;
        private VesselBody.Builder body = VesselBody.builder();

        private Builder() {}

        /**
         * Sets the total inner volume.
         *
         * @param value the volume, 0.1 L to 5 m3
         * @param unit its unit
         * @return this builder
         * @throws IllegalArgumentException if the volume is outside its range
         */
        public Builder volume(double value, VolumeUnit unit) {
            volume = VOLUME.check(value, unit);
            return this;
        }

        /**
         * Sets the precharge, measured with the water side empty.
         *
         * @param value the pressure, above 0 to 16 bar
         * @return this builder
         * @throws IllegalArgumentException if the pressure is outside its range
         */
        public Builder precharge(Pressure value) {
            precharge = PRECHARGE.check(value);
            return this;
        }

        /**
         * Sets the share of the volume that water may fill.
         *
         * @param value the acceptance limit, 5 % to 100 %
         * @param unit its unit
         * @return this builder
         * @throws IllegalArgumentException if the limit is outside its range
         */
        public Builder acceptance(double value, RatioUnit unit) {
            acceptance = ACCEPTANCE.check(value, unit);
            return this;
        }

        /**
         * Sets the time constant with which the gas returns to room temperature; by default the gas is isothermal.
         *
         * @param value the time constant, 1 s to 1 h
         * @param unit its unit
         * @return this builder
         * @throws IllegalArgumentException if the time constant is outside its range
         */
        public Builder gasTimeConstant(double value, DurationUnit unit) {
            gasTimeConstant = GAS_TIME_CONSTANT.check(value, unit);
            return this;
        }

        /**
         * Sets the temperature of the gas when the precharge was set.
         *
         * @param value the temperature, -30 degC to 60 degC
         * @param unit its unit
         * @return this builder
         * @throws IllegalArgumentException if the temperature is outside its range
         */
        public Builder chargedAt(double value, TemperatureUnit unit) {
            chargedAt = CHARGED_AT.check(value, unit);
            return this;
        }

        /**
         * Sets the temperature of the air around the vessel.
         *
         * @param value the temperature, -30 degC to 70 degC
         * @param unit its unit
         * @return this builder
         * @throws IllegalArgumentException if the temperature is outside its range
         */
        public Builder temperature(double value, TemperatureUnit unit) {
            temperature = TEMPERATURE.check(value, unit);
            return this;
        }

        /**
         * Sets the height above the tank's drain cock.
         *
         * @param value the height, -30 m to 30 m
         * @param unit its unit
         * @return this builder
         * @throws IllegalArgumentException if the height is outside its range
         */
        public Builder height(double value, LengthUnit unit) {
            height = HEIGHT.check(value, unit);
            return this;
        }

        /**
         * Sets what state the vessel is in.
         *
         * @param value the condition
         * @return this builder
         */
        public Builder condition(Condition value) {
            condition = Objects.requireNonNull(value, "condition");
            return this;
        }

        /**
         * Sets pressure rating, mass and mounting; by default all are unknown.
         *
         * @param value the body
         * @return this builder
         */
        public Builder body(VesselBody value) {
            body = Objects.requireNonNull(value, "body").toBuilder();
            return this;
        }

        /**
         * Sets the maximum working pressure from the maker's plate; unknown by default.
         *
         * @param value the pressure, 0.5 bar to 25 bar
         * @return this builder
         * @throws IllegalArgumentException if the pressure is outside its range
         */
        public Builder rating(Pressure value) {
            body.rating(value);
            return this;
        }

        /**
         * Sets how it is mounted; unknown by default.
         *
         * @param value the mounting
         * @return this builder
         */
        public Builder mounting(VesselBody.Mounting value) {
            body.mounting(value);
            return this;
        }

        /**
         * Sets the empty mass; unknown by default.
         *
         * @param value the mass, above 0 to 2000 kg
         * @param unit its unit
         * @return this builder
         * @throws IllegalArgumentException if the mass is outside its range
         */
        public Builder emptyMass(double value, MassUnit unit) {
            body.emptyMass(value, unit);
            return this;
        }

        /**
         * Sets the length from the connection to the far end; unknown by default.
         *
         * @param value the length, 50 mm to 5 m
         * @param unit its unit
         * @return this builder
         * @throws IllegalArgumentException if the length is outside its range
         */
        public Builder length(double value, LengthUnit unit) {
            body.length(value, unit);
            return this;
        }

        /**
         * Completes the description.
         *
         * @return the vessel
         * @throws InvalidDescriptionException if something is missing
         */
        public ExpansionVessel build() {
            new Requirements()
                    .present("volume", volume)
                    .present("precharge", precharge)
                    .present("acceptance", acceptance)
                    .orThrow();
            return new ExpansionVessel(this);
        }
    }
}
