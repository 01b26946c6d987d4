package io.github.heatswell.system;

import io.github.heatswell.units.DurationUnit;
import io.github.heatswell.units.Limits;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.QuantityFormat;
import io.github.heatswell.units.TemperatureUnit;
import io.github.heatswell.units.UnitSystem;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Where a run starts. Nothing set means the cold fill: the tank full of supply water at supply pressure.
 */
public final class Start {

    private static final Limits WATER = Limits.between("water", 273.15, 372.15);
    private static final Limits PRESSURE = Limits.above("pressure", 0, 25e5);
    private static final Start COLD_FILL = new Start(new Builder());

    private static final Limits TIME_OF_DAY = Limits.between("timeOfDay", 0, 86_399);
    private static final int DAYS = 366;

    /** What it consists of: a copy that nobody else has and nothing changes. */
    private final Builder parts;

    private Start(Builder from) {
        parts = new Builder(from);
    }

    /**
     * The cold fill: supply water at supply pressure.
     *
     * @return the cold fill
     */
    public static Start coldFill() {
        return COLD_FILL;
    }

    /**
     * Starts a description in which everything is optional.
     *
     * @return an empty builder
     */
    public static Builder builder() {
        return new Builder();
    }

    /**
     * Starts a description from this one, to change a part of it.
     *
     * @return a builder that holds everything this start holds
     */
    public Builder toBuilder() {
        return new Builder(parts);
    }

    /** {@return water, pressure, day and clock time in a line} */
    @Override
    public String toString() {
        return (parts.waterTemperature == null
                        ? "water of the supply"
                        : "water at " + QuantityFormat.ascii(UnitSystem.SI).temperature(parts.waterTemperature))
                + ", " + pressure().map(Pressure::toString).orElse("supply pressure")
                + ", day " + dayOfYear() + " at " + DurationUnit.clock((long) (timeOfDay() / 60));
    }

    /**
     * The temperature of the water in the tank at the start.
     *
     * @return the temperature (K), or empty for that of the supply
     */
    public OptionalDouble waterTemperature() {
        return parts.waterTemperature == null ? OptionalDouble.empty() : OptionalDouble.of(parts.waterTemperature);
    }

    /**
     * The pressure at the start.
     *
     * @return the pressure, or empty for that of the supply
     */
    public Optional<Pressure> pressure() {
        return Optional.ofNullable(parts.pressure);
    }

    /**
     * Clock time at the start, on which draws and the mains timetable depend.
     *
     * @return the time (s since midnight), 0 if not set
     */
    public double timeOfDay() {
        return parts.timeOfDay;
    }

    /**
     * Day of the year at the start, on which the supply temperature depends.
     *
     * @return the day, 1 (the first of January) if not set
     */
    public int dayOfYear() {
        return parts.dayOfYear;
    }

    /** The same, or a start at the pressure of a supply that would fill the system at once or cannot hold the one described. */
    Start following(Supply supply, double atmosphere) {
        double feed = supply.staticAbsolute(parts.timeOfDay, atmosphere);
        boolean held = parts.pressure != null
                && parts.pressure.absolute(atmosphere) >= feed
                && supply.arrangement() != Supply.Arrangement.DIRECT;
        return held ? this : toBuilder().atSupplyPressure().build();
    }

    /** Builds a {@link Start}. */
    public static final class Builder {
        private Double waterTemperature;
        private Pressure pressure;
        private double timeOfDay;
        private int dayOfYear = 1;

        private Builder() {}

        private Builder(Builder from) {
            waterTemperature = from.waterTemperature;
            pressure = from.pressure;
            timeOfDay = from.timeOfDay;
            dayOfYear = from.dayOfYear;
        }

        /**
         * Sets the temperature of the water in the tank.
         *
         * @param value the temperature, 0 degC to 99 degC
         * @param unit its unit
         * @return this builder
         * @throws IllegalArgumentException if the temperature is outside its range
         */
        public Builder water(double value, TemperatureUnit unit) {
            waterTemperature = WATER.check(value, unit);
            return this;
        }

        /**
         * Sets the pressure.
         *
         * @param value the pressure, above 0 to 25 bar
         * @return this builder
         * @throws IllegalArgumentException if the pressure is outside its range
         */
        public Builder pressure(Pressure value) {
            pressure = PRESSURE.check(value);
            return this;
        }

        /**
         * Starts the run at the supply pressure.
         *
         * @return this builder
         */
        public Builder atSupplyPressure() {
            pressure = null;
            return this;
        }

        /**
         * Sets the clock time.
         *
         * @param value the time since midnight, 0 to less than a day
         * @param unit its unit
         * @return this builder
         * @throws IllegalArgumentException if the time is outside its range
         */
        public Builder timeOfDay(double value, DurationUnit unit) {
            timeOfDay = TIME_OF_DAY.check(value, unit);
            return this;
        }

        /**
         * Sets the day of the year.
         *
         * @param number the day, 1 to 366
         * @return this builder
         * @throws IllegalArgumentException if the day is outside its range
         */
        public Builder dayOfYear(int number) {
            dayOfYear = Limits.whole("dayOfYear", number, 1, DAYS);
            return this;
        }

        /**
         * Completes the description.
         *
         * @return the start
         */
        public Start build() {
            return new Start(this);
        }
    }
}
