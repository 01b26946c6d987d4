package io.github.heatswell.system;

import io.github.heatswell.place.Place;
import io.github.heatswell.units.LengthUnit;
import io.github.heatswell.units.Limits;
import io.github.heatswell.units.QuantityFormat;
import io.github.heatswell.units.TemperatureUnit;
import io.github.heatswell.units.UnitSystem;
import java.util.Objects;

/**
 * Where the heater is installed. The altitude determines the air pressure that gauges read against; the room temperature
 * governs the standing loss and the gas temperature of an expansion vessel; the place says which rules apply.
 */
public final class Site {

    /** Sea-level pressure of the ISO 2533 standard atmosphere (Pa). */
    private static final double SEA_LEVEL_PRESSURE = 101_325.0;
    /** Sea-level temperature of the ISO 2533 standard atmosphere (K). */
    private static final double SEA_LEVEL_TEMPERATURE = 288.15;
    /** Temperature gradient of the ISO 2533 troposphere (K/m). */
    private static final double TEMPERATURE_GRADIENT = -0.0065;
    /** Exponent g M / (R L) of the barometric formula with the constants of ISO 2533 (-). */
    private static final double BAROMETRIC_EXPONENT = 5.255_88;

    private static final Limits ALTITUDE = Limits.between("altitude", -430, 5_500);
    private static final Limits ROOM = Limits.between("room", 243.15, 333.15);

    private final double altitude;
    private final double roomTemperature;
    private final Place place;

    private Site(double altitude, double roomTemperature, Place place) {
        this.altitude = altitude;
        this.roomTemperature = roomTemperature;
        this.place = place;
    }

    /**
     * Starts a description; altitude and room temperature must be set.
     *
     * @return an empty builder
     */
    public static Builder builder() {
        return new Builder();
    }

    /** {@return altitude, room temperature and place in a line} */
    @Override
    public String toString() {
        QuantityFormat si = QuantityFormat.ascii(UnitSystem.SI);
        return si.length(altitude) + " above sea level, room at " + si.temperature(roomTemperature) + ", "
                + place.title();
    }

    /**
     * Height above sea level.
     *
     * @return the altitude (m)
     */
    public double altitude() {
        return altitude;
    }

    /**
     * Temperature of the air around the tank and the vessel.
     *
     * @return the room temperature (K)
     */
    public double roomTemperature() {
        return roomTemperature;
    }

    /**
     * The place whose rules hold.
     *
     * @return the place; not known if nobody said
     */
    public Place place() {
        return place;
    }

    /**
     * Pressure of the surrounding air by the ISO 2533 standard atmosphere,
     * {@code 101325 (1 - 0.0065 h / 288.15)^5.25588}.
     *
     * @return the local atmospheric pressure (Pa, absolute)
     */
    public double atmosphere() {
        return SEA_LEVEL_PRESSURE
                * Math.pow(1 + TEMPERATURE_GRADIENT * altitude / SEA_LEVEL_TEMPERATURE, BAROMETRIC_EXPONENT);
    }

    /** Builds a {@link Site}. */
    public static final class Builder {
        private Double altitude;
        private Double roomTemperature;
        private Place place = Place.NOT_KNOWN;

        private Builder() {}

        /**
         * Sets the height above sea level.
         *
         * @param value the altitude, -430 m to 5500 m
         * @param unit its unit
         * @return this builder
         * @throws IllegalArgumentException if the altitude is outside its range
         */
        public Builder altitude(double value, LengthUnit unit) {
            altitude = ALTITUDE.check(value, unit);
            return this;
        }

        /**
         * Sets the temperature of the room.
         *
         * @param value the temperature, -30 degC to 60 degC
         * @param unit its unit
         * @return this builder
         * @throws IllegalArgumentException if the temperature is outside its range
         */
        public Builder room(double value, TemperatureUnit unit) {
            roomTemperature = ROOM.check(value, unit);
            return this;
        }

        /**
         * Sets the place whose rules apply; not known by default.
         *
         * @param value the place
         * @return this builder
         */
        public Builder place(Place value) {
            place = Objects.requireNonNull(value, "place");
            return this;
        }

        /**
         * Completes the description.
         *
         * @return the site
         * @throws InvalidDescriptionException if something is missing
         */
        public Site build() {
            new Requirements()
                    .present("altitude", altitude)
                    .present("room", roomTemperature)
                    .orThrow();
            return new Site(altitude, roomTemperature, place);
        }
    }
}
