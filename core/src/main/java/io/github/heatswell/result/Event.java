package io.github.heatswell.result;

import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.PressureUnit;
import io.github.heatswell.units.QuantityFormat;
import io.github.heatswell.units.UnitSystem;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;

/**
 * Something that happened at a precisely located time. Immutable.
 *
 * @param time since the start of the run (s), 0 or more, located by root finding and not rounded to a sample
 * @param kind what happened
 * @param device the name of the relief valve, or of the element or vessel where there are several, or the pipe whose water freezes;
 *     empty for all other kinds
 * @param pressureAbsolute the pressure at that moment at the tank's drain cock (Pa, absolute), above 0; a device higher
 *     up sees less ({@link io.github.heatswell.system.HotWaterSystem#head})
 * @param waterTemperature the mean water temperature at that moment (K), above 0
 * @param cause what opened the relief valve; empty for all other kinds
 */
public record Event(
        double time,
        Kind kind,
        String device,
        double pressureAbsolute,
        double waterTemperature,
        Optional<OpeningCause> cause) {

    /** As many digits have pressures that are read by people. */
    static final int PRESSURE_DIGITS = 4;

    /** {@return what happened, to what, when and at which pressure, in SI units: {@code RELIEF_OPENED 'valve', 1 h 5 min, 7.98 bar abs}} */
    @Override
    public String toString() {
        return kind + (device.isEmpty() ? "" : " '" + device + "'") + ", "
                + QuantityFormat.ascii(UnitSystem.SI).time(time) + ", "
                + Pressure.absolute(pressureAbsolute, PressureUnit.PASCAL).text(PRESSURE_DIGITS);
    }

    /**
     * Checks that kind and device are there, that the numbers are in their ranges, and that an opening, and nothing
     * else, has a cause.
     *
     * @param time since the start of the run (s), 0 or more, located by root finding and not rounded to a sample
     * @param kind what happened
     * @param device the name of the relief valve, or of the element or vessel where there are several,
     *     or the pipe whose water freezes; empty for all other kinds
     * @param pressureAbsolute the pressure at that moment at the tank's drain cock (Pa, absolute), above 0; a device
     *     higher up sees less ({@link io.github.heatswell.system.HotWaterSystem#head})
     * @param waterTemperature the mean water temperature at that moment (K), above 0
     * @param cause what opened the relief valve; empty for all other kinds
     * @throws IllegalArgumentException if a number is NaN, infinite or outside its range, if a relief valve opens
     *     without a cause, or if anything else has one
     */
    public Event {
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(device, "device");
        require(time >= 0, "time", time, "s", "0 or more");
        require(pressureAbsolute > 0, "pressureAbsolute", pressureAbsolute, "Pa", "above 0");
        require(waterTemperature > 0, "waterTemperature", waterTemperature, "K", "above 0");
        if (Objects.requireNonNull(cause, "cause").isPresent() != kind.hasCause()) {
            throw new IllegalArgumentException(
                    kind.hasCause() ? "cause: " + kind + " needs one" : "cause: " + kind + " has none");
        }
    }

    /**
     * An event other than the opening of a relief valve.
     *
     * @param time since the start of the run (s), 0 or more
     * @param kind what happened
     * @param device the name of the relief valve, or of the element or vessel where there are several,
     *     or the pipe whose water freezes; empty for all other kinds
     * @param pressureAbsolute the pressure at that moment at the tank's drain cock (Pa, absolute), above 0; a device
     *     higher up sees less ({@link io.github.heatswell.system.HotWaterSystem#head})
     * @param waterTemperature the mean water temperature at that moment (K), above 0
     * @throws IllegalArgumentException if a number is NaN, infinite or outside its range, or if a relief valve opens:
     *     that needs a cause
     */
    public Event(double time, Kind kind, String device, double pressureAbsolute, double waterTemperature) {
        this(time, kind, device, pressureAbsolute, waterTemperature, Optional.empty());
    }

    /**
     * Whether pressure opened a relief valve.
     *
     * @return true for an opening of which {@link OpeningCause#byPressure()} holds
     */
    public boolean openedByPressure() {
        return cause.filter(OpeningCause::byPressure).isPresent();
    }

    /**
     * Whether hot water opened a relief valve, or opened fully one that pressure had lifted.
     *
     * @return true for an opening of which {@link OpeningCause#byTemperature()} holds
     */
    public boolean openedByTemperature() {
        return cause.filter(OpeningCause::byTemperature).isPresent();
    }

    private static void require(boolean inRange, String field, double value, String unit, String range) {
        if (!inRange || value == Double.POSITIVE_INFINITY) {
            throw new IllegalArgumentException(
                    field + ": " + value + " " + unit + " is outside the allowed range, " + range);
        }
    }

    /**
     * What can happen at a precisely located time of a run.
     */
    public enum Kind {
        /** The thermostat switched the burner or element on. */
        HEATER_ON("heater on"),
        /** The thermostat switched the burner or element off. */
        HEATER_OFF("heater off"),
        /** A relief valve left its seat. {@link Event#cause()} says why. */
        RELIEF_OPENED("relief valve opened"),
        /**
         * A temperature and pressure relief valve that pressure had lifted opened fully, because the hottest water had reached the
         * temperature at which it opens.
         */
        RELIEF_OPENED_FULLY("relief valve opened fully by hot water"),
        /** A relief valve closed again. */
        RELIEF_RESEATED("relief valve reseated"),
        /** The system's pressure passed the vessel's gas pressure and the diaphragm left its seat. */
        VESSEL_LIFTED("vessel diaphragm lifted"),
        /** The vessel gave back its last water and the diaphragm lies on its seat. */
        VESSEL_SEATED("vessel diaphragm seated"),
        /** The vessel reached its acceptance limit and takes no more water. */
        VESSEL_BOTTOMED_OUT("vessel bottomed out"),
        /** The vessel fell below its acceptance limit. */
        VESSEL_FREED("vessel freed"),
        /** The supply began to feed the system. */
        SUPPLY_OPENED("supply feeds"),
        /** The check valve or reducing valve closed: the system is cut off from the supply. */
        SUPPLY_CLOSED("supply valve closed"),
        /** The bypass of the reducing valve opened: the mains takes water back. */
        BYPASS_OPENED("bypass opened"),
        /** The bypass of the reducing valve closed. */
        BYPASS_CLOSED("bypass closed"),
        /** The supply was shut off. */
        SUPPLY_SHUT_OFF("supply shut off"),
        /** The supply was opened again. */
        SUPPLY_RESTORED("supply restored"),
        /** A tap was opened. */
        DRAW_STARTED("draw started"),
        /** The tap was closed. */
        DRAW_ENDED("draw ended"),
        /** The high-limit cut-out switched the heater off, until somebody resets it. */
        CUT_OUT_TRIPPED("high-limit cut-out tripped"),
        /** The tank's working pressure was exceeded. */
        WORKING_PRESSURE_EXCEEDED("working pressure exceeded"),
        /** Hazard: the tank's test pressure was reached. The run ends. */
        TEST_PRESSURE_REACHED("test pressure reached"),
        /** Hazard: the hottest water reached its boiling point, or steam took over the air above it. The run ends. */
        VAPOUR_FORMS("vapour forms"),
        /** Hazard: the pressure, here or at an open valve higher up, fell to that of the air. The run ends. */
        ATMOSPHERE_REACHED("pressure down to atmosphere"),
        /** Hazard: a relief valve opens and closes several times a second, which no valve stands for long. The run ends. */
        RELIEF_CHATTERS("relief valve chatters"),
        /** Hazard: the water left the temperatures or pressures of its known properties. The run ends. */
        WATER_OUT_OF_RANGE("water temperature out of range"),
        /** Hazard: the coldest water fell below 0 degC. The run ends. */
        WATER_FREEZES("water freezes");

        private final String description;

        Kind(String description) {
            this.description = description;
        }

        /**
         * The event in words.
         *
         * @return a short description in lower case
         */
        public String description() {
            return description;
        }

        /**
         * What the event means for somebody who stands next to the tank.
         *
         * @return a sentence or two; empty if it is neither a hazard nor a limit passed
         */
        public String meaning() {
            return switch (this) {
                case TEST_PRESSURE_REACHED ->
                    "A tank is tested up to this pressure and no further: beyond it, it may burst.";
                case VAPOUR_FORMS ->
                    "Steam can burst a tank: if its pressure is let go, boiling water flashes into steam at once, with the force"
                            + " of an explosion.";
                case ATMOSPHERE_REACHED ->
                    "Air or dirty water may be sucked in, the heater may fall dry, and a thin tank may buckle.";
                case RELIEF_CHATTERS -> "No valve stands that for long.";
                case WATER_OUT_OF_RANGE ->
                    "Water that hot bursts into steam where it escapes. Nothing is known of what follows.";
                case WATER_FREEZES ->
                    "Ice takes more room than water: it bursts tanks and pipes, and blocks relief valves.";
                case WORKING_PRESSURE_EXCEEDED -> "The manufacturer allows no more than the working pressure in use.";
                default -> "";
            };
        }

        /**
         * Whether {@link Event#cause()} is present: for a relief valve that opens, or opens fully.
         *
         * @return true for the opening of a relief valve
         */
        public boolean hasCause() {
            return this == RELIEF_OPENED || this == RELIEF_OPENED_FULLY;
        }

        /**
         * Whether the model ends at this event, because what follows is a hazard it does not describe.
         *
         * @return true for a hazard that ends the run
         */
        public boolean endsRun() {
            return switch (this) {
                case TEST_PRESSURE_REACHED,
                        VAPOUR_FORMS,
                        ATMOSPHERE_REACHED,
                        RELIEF_CHATTERS,
                        WATER_OUT_OF_RANGE,
                        WATER_FREEZES -> true;
                default -> false;
            };
        }
    }

    /**
     * What opened a relief valve. The simulation states it with the event because it knows which limit was reached; where
     * both are close, pressure and temperature at that moment cannot tell.
     */
    public enum OpeningCause {
        /**
         * The pressure at the height of the valve reached its set pressure. At the tank's drain cock, where {@link Event} gives it,
         * it is then {@link io.github.heatswell.system.HotWaterSystem#atDrainCock more by the column of water between}: a valve 8 m up
         * that is set to 7 bar opens at about 7.78 bar there.
         */
        PRESSURE,
        /** The hottest water reached the temperature at which the valve opens fully. */
        TEMPERATURE,
        /** Both limits were reached at the same moment, as in a run that starts beyond them. */
        BOTH;

        /**
         * Whether the pressure had reached the set pressure.
         *
         * @return true for {@link #PRESSURE} and {@link #BOTH}
         */
        public boolean byPressure() {
            return this != TEMPERATURE;
        }

        /**
         * Whether the water had reached the temperature at which the valve opens: the heater did not stop in time.
         *
         * @return true for {@link #TEMPERATURE} and {@link #BOTH}
         */
        public boolean byTemperature() {
            return this != PRESSURE;
        }

        /**
         * The cause as files write it.
         *
         * @return the name in lower case
         */
        public String label() {
            return name().toLowerCase(Locale.ROOT);
        }
    }
}
