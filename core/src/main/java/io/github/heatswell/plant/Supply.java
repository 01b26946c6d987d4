package io.github.heatswell.plant;

import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.PressureUnit;
import io.github.heatswell.units.TemperatureUnit;
import java.util.Objects;

/**
 * The cold feed: how it is connected, its static pressure and its temperature.
 */
public final class Supply {

    private static final Limits PRESSURE = Limits.above("pressure", 0, 25e5);
    private static final Limits WATER = Limits.between("water", 273.15, 313.15);

    private final Arrangement arrangement;
    private final Pressure pressure;
    private final double waterTemperature;

    private Supply(Builder from) {
        arrangement = from.arrangement;
        pressure = from.pressure;
        waterTemperature = from.waterTemperature;
    }

    /**
     * Starts a description; arrangement, pressure and water temperature must be set.
     *
     * @return an empty builder
     */
    public static Builder builder() {
        return new Builder();
    }

    /** How the house is connected to the street. */
    public enum Arrangement {
        /** No check valve: what the water gains in volume goes back to the street. */
        DIRECT,
        /** A check valve or backflow preventer: water comes in, none goes back. */
        CHECK_VALVE
    }

    /**
     * How the house is connected to the street.
     *
     * @return the arrangement
     */
    public Arrangement arrangement() {
        return arrangement;
    }

    /**
     * The static pressure of the cold feed.
     *
     * @return the supply pressure, gauge or absolute as it was given
     */
    public Pressure pressure() {
        return pressure;
    }

    /**
     * The temperature of the cold feed, of the branch piping and of the water in the vessel.
     *
     * @return the temperature (K)
     */
    public double waterTemperature() {
        return waterTemperature;
    }

    /** Builds a {@link Supply}. */
    public static final class Builder {
        private Arrangement arrangement;
        private Pressure pressure;
        private Double waterTemperature;

        private Builder() {}

        /**
         * Sets how the house is connected.
         *
         * @param value the arrangement
         * @return this builder
         */
        public Builder arrangement(Arrangement value) {
            arrangement = Objects.requireNonNull(value, "arrangement");
            return this;
        }

        /**
         * Sets the static pressure.
         *
         * @param value the pressure, above 0 to 25 bar
         * @return this builder
         * @throws IllegalArgumentException if the pressure is outside its range
         */
        public Builder pressure(Pressure value) {
            PRESSURE.check(PressureUnit.BAR.fromSi(value.value()), PressureUnit.BAR);
            pressure = value;
            return this;
        }

        /**
         * Sets the temperature of the cold water.
         *
         * @param value the temperature, 0 degC to 40 degC
         * @param unit its unit
         * @return this builder
         * @throws IllegalArgumentException if the temperature is outside its range
         */
        public Builder water(double value, TemperatureUnit unit) {
            waterTemperature = WATER.check(value, unit);
            return this;
        }

        /**
         * Ends the description.
         *
         * @return the supply
         * @throws InvalidDescriptionException if something is missing
         */
        public Supply build() {
            new Requirements()
                    .present("arrangement", arrangement)
                    .present("pressure", pressure)
                    .present("water", waterTemperature)
                    .orThrow();
            return new Supply(this);
        }
    }
}
