package io.github.heatswell.system;

import io.github.heatswell.units.DurationUnit;
import io.github.heatswell.units.LengthUnit;
import io.github.heatswell.units.Limits;
import io.github.heatswell.units.MassUnit;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.QuantityFormat;
import io.github.heatswell.units.RatioUnit;
import io.github.heatswell.units.TemperatureUnit;
import io.github.heatswell.units.UnitSystem;
import io.github.heatswell.units.VolumeUnit;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A diaphragm expansion vessel on the cold branch, or built into the tank: a fixed mass of gas behind a diaphragm that takes up water once the
 * system's pressure exceeds the precharge, up to the acceptance limit of the diaphragm.
 */
public final class ExpansionVessel {

    private static final Limits VOLUME = Limits.between("volume", 0.1e-3, 5.0);
    private static final Limits PRECHARGE = Limits.above("precharge", 0, 16e5);
    private static final Limits ACCEPTANCE = Limits.between("acceptance", 0.05, 1.0);
    private static final Limits GAS_TIME_CONSTANT = Limits.between("gasTimeConstant", 1, 3_600);
    private static final Limits CHARGED_AT = Limits.between("chargedAt", 243.15, 333.15);
    private static final Limits TEMPERATURE = Limits.between("temperature", 243.15, 343.15);
    private static final Limits HEIGHT = Limits.between("height", -30, 30);
    /**
     * Time constant (s) of gas in a tank unless another is given: an everyday example, no source. Tanks warm over hours, so a few times as
     * much changes little.
     */
    private static final double IN_TANK_TIME_CONSTANT = 30;

    private static final Limits RATING = Limits.between("rating", 0.5e5, 25e5);
    private static final Limits EMPTY_MASS = Limits.above("emptyMass", 0, 2_000);
    private static final Limits LENGTH = Limits.between("length", 0.05, 5);

    /** What it consists of: a copy that nobody else has and nothing changes. */
    private final Builder parts;

    private ExpansionVessel(Builder from) {
        parts = new Builder(from);
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
        return new Builder(parts);
    }

    /** {@return volume and precharge in SI units: {@code 12 L vessel, precharge 4.2 bar gauge}} */
    @Override
    public String toString() {
        return QuantityFormat.ascii(UnitSystem.SI).volume(volume()) + " vessel, precharge " + precharge();
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

    /** Where the vessel is. */
    public enum Location {
        /** On the cold branch, in the air of a room. */
        BRANCH,
        /** Built into the tank: its gas takes the temperature of the tank's water at its height. */
        IN_TANK
    }

    /**
     * Mechanical data of a vessel, none of which affects the simulation.
     *
     * @param rating the maximum working pressure stated by the maker, or empty if it is unknown
     * @param mounting how it sits on its pipe, or empty if it is unknown
     * @param emptyMass the mass without water (kg), or empty if it is unknown
     * @param length the length from the connection to the far end (m), or empty if it is unknown
     */
    public record Body(
            Optional<Pressure> rating, Optional<Mounting> mounting, OptionalDouble emptyMass, OptionalDouble length) {}

    /** How a vessel is mounted. */
    public enum Mounting {
        /** It stands on its connection. */
        UPRIGHT,
        /** It hangs from its connection. */
        HANGING,
        /** Horizontal, carried by its connection alone. */
        HORIZONTAL,
        /** Horizontal, carried by a bracket or a shelf. */
        HORIZONTAL_SUPPORTED
    }

    /**
     * What to call it where there are several.
     *
     * @return the name, or empty if it has none
     */
    public Optional<String> name() {
        return Optional.ofNullable(parts.name);
    }

    /**
     * Total inner volume, gas and water together.
     *
     * @return the volume (m3)
     */
    public double volume() {
        return parts.volume;
    }

    /**
     * The gas pressure measured with the water side empty, at room temperature.
     *
     * @return the precharge
     */
    public Pressure precharge() {
        return parts.precharge;
    }

    /**
     * Acceptance limit: the largest share of the volume that water may fill.
     *
     * @return the acceptance limit (-)
     */
    public double acceptance() {
        return parts.acceptance;
    }

    /** {@return the law of its gas, or empty for a fixed mass of ideal gas} */
    public Optional<GasLaw> gasLaw() {
        return Optional.ofNullable(parts.gasLaw);
    }

    /** {@return the share (-) of the volume left to the gas at the acceptance limit, and at least {@link GasLaw#MIN_SHARE}} */
    public double gasShareAtLimit() {
        return Math.max(GasLaw.MIN_SHARE, 1 - parts.acceptance);
    }

    /**
     * Pressure of the gas with the water side empty.
     *
     * @param atmosphere the pressure (Pa, absolute) of the surrounding air
     * @param room the temperature (K) of the room, at which the precharge was set unless another is known
     * @param temperature the temperature (K) of the gas
     * @return the pressure (Pa, absolute)
     */
    public double chargeAbsolute(double atmosphere, double room, double temperature) {
        double charge = parts.precharge.absolute(atmosphere);
        double warmth = temperature / chargedAt().orElse(room);
        return gasPressure(charge, 1, warmth);
    }

    /**
     * The part of the vessel that its gas takes up, were there neither seat nor limit of the diaphragm. Beyond both, a law of its own
     * goes on along a straight line.
     *
     * @param charge the precharge (Pa, absolute)
     * @param pressure the pressure of the gas (Pa, absolute)
     * @param warmth its absolute temperature over that at which the precharge was set (-)
     * @return the share (-) of the vessel's volume
     */
    public double gasShare(double charge, double pressure, double warmth) {
        return parts.gasLaw == null
                ? charge * warmth / pressure
                : new GasLawInverse(parts.gasLaw, gasShareAtLimit()).share(charge, pressure, warmth);
    }

    /**
     * Pressure of the gas in a part of the vessel, the inverse of {@link #gasShare}.
     *
     * @param charge the precharge (Pa, absolute)
     * @param share the share (-) of the vessel's volume
     * @param warmth its absolute temperature over that at which the precharge was set (-)
     * @return the pressure (Pa, absolute)
     */
    public double gasPressure(double charge, double share, double warmth) {
        return parts.gasLaw == null
                ? charge * warmth / share
                : new GasLawInverse(parts.gasLaw, gasShareAtLimit()).pressure(charge, share, warmth);
    }

    /**
     * Time constant with which the gas follows the temperature around it, as after compression.
     *
     * @return the time constant (s), 30 s in a tank unless another was given, or empty if the gas is isothermal
     */
    public OptionalDouble gasTimeConstant() {
        return parts.gasTimeConstant == null && isInTank()
                ? OptionalDouble.of(IN_TANK_TIME_CONSTANT)
                : known(parts.gasTimeConstant);
    }

    /**
     * The temperature of the gas when the precharge was set.
     *
     * @return the temperature (K), or empty for that of the room
     */
    public OptionalDouble chargedAt() {
        return known(parts.chargedAt);
    }

    /**
     * The temperature of the air around the vessel.
     *
     * @return the temperature (K), or empty for that of the room, and in a tank
     */
    public OptionalDouble temperature() {
        return known(parts.temperature);
    }

    /** {@return where the vessel is} */
    public Location location() {
        return parts.location;
    }

    /** {@return whether the vessel is built into the tank, so that its gas warms and cools with the tank's water} */
    public boolean isInTank() {
        return parts.location == Location.IN_TANK;
    }

    /**
     * Height above the tank's drain cock.
     *
     * @return the height (m), negative below it
     */
    public double height() {
        return parts.height;
    }

    /**
     * What state the vessel is in.
     *
     * @return the condition
     */
    public Condition condition() {
        return parts.condition;
    }

    /**
     * Pressure rating, mass and mounting.
     *
     * @return the body; all of it may be unknown
     */
    public Body body() {
        return new Body(
                Optional.ofNullable(parts.rating),
                Optional.ofNullable(parts.mounting),
                known(parts.emptyMass),
                known(parts.length));
    }

    private static OptionalDouble known(Double value) {
        return value == null ? OptionalDouble.empty() : OptionalDouble.of(value);
    }

    /** Builds an {@link ExpansionVessel}. */
    public static final class Builder {
        private String name;
        private Double volume;
        private Pressure precharge;
        private Double acceptance;
        private GasLaw gasLaw;
        private Double gasTimeConstant;
        private Double chargedAt;
        private Double temperature;
        private Location location = Location.BRANCH;
        private double height;
        private Condition condition = Condition.SOUND;
        private Pressure rating;
        private Mounting mounting;
        private Double emptyMass;
        private Double length;

        private Builder() {}

        private Builder(Builder from) {
            name = from.name;
            volume = from.volume;
            precharge = from.precharge;
            acceptance = from.acceptance;
            gasLaw = from.gasLaw;
            gasTimeConstant = from.gasTimeConstant;
            chargedAt = from.chargedAt;
            temperature = from.temperature;
            location = from.location;
            height = from.height;
            condition = from.condition;
            rating = from.rating;
            mounting = from.mounting;
            emptyMass = from.emptyMass;
            length = from.length;
        }

        /**
         * Names it, for a system with several vessels.
         *
         * @param value the name, 1 to 60 visible characters, not blank
         * @return this builder
         * @throws IllegalArgumentException if the name is blank, too long, or contains a line break, a control
         *     character or another invisible character
         */
        public Builder name(String value) {
            name = Requirements.name(value);
            return this;
        }

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
         * Gives the gas a law of its own; by default it is a fixed mass of ideal gas. What the law must keep is checked where the
         * vessel is put into a system, which knows the air around it.
         *
         * @param value the law
         * @return this builder
         */
        public Builder gasLaw(GasLaw value) {
            gasLaw = Objects.requireNonNull(value, "gas-law");
            return this;
        }

        /**
         * Sets the time constant with which the gas follows the temperature around it; by default the gas is isothermal, or, in a
         * tank, 30 s behind its water.
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
         * Sets the temperature of the air around the vessel; that of a tank's water is not to be set.
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
         * Sets where the vessel is; by default, on the cold branch. In the tank, the gas and the water it holds are as warm as the
         * tank's water at its height; what that water takes of the tank's heat is left out.
         *
         * @param value the location
         * @return this builder
         */
        public Builder location(Location value) {
            location = Objects.requireNonNull(value, "location");
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
         * Sets the maximum working pressure from the maker's plate; unknown by default.
         *
         * @param value the pressure, 0.5 bar to 25 bar
         * @return this builder
         * @throws IllegalArgumentException if the pressure is outside its range
         */
        public Builder rating(Pressure value) {
            rating = RATING.check(value);
            return this;
        }

        /**
         * Sets how it is mounted; unknown by default.
         *
         * @param value the mounting
         * @return this builder
         */
        public Builder mounting(Mounting value) {
            mounting = Objects.requireNonNull(value, "mounting");
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
            emptyMass = EMPTY_MASS.check(value, unit);
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
            length = LENGTH.check(value, unit);
            return this;
        }

        /**
         * Completes the description.
         *
         * @return the vessel
         * @throws InvalidDescriptionException if something is missing
         */
        public ExpansionVessel build() {
            Requirements requirements = new Requirements()
                    .present("volume", volume)
                    .present("precharge", precharge)
                    .present("acceptance", acceptance);
            requirements.rule(
                    location != Location.IN_TANK || temperature == null,
                    "temperature",
                    "follows the tank's water, since location is in-tank; leave temperature out");
            requirements.orThrow();
            return new ExpansionVessel(this);
        }
    }
}
