package io.github.heatswell.system;

import io.github.heatswell.units.DurationUnit;
import io.github.heatswell.units.FlowUnit;
import io.github.heatswell.units.Limits;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.TemperatureUnit;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * The cold feed: how it is connected to the mains, the pressure there, and the temperature of the water.
 */
public final class Supply {

    private static final Limits SEAT_LEAKAGE = Limits.between("seatLeakage", 0, 10e-3 / 60);

    /** What it consists of: a copy that nobody else has and nothing changes. */
    private final Builder parts;

    private Supply(Builder from) {
        parts = new Builder(from);
    }

    /**
     * Starts a description; arrangement, pressure and water temperature must be set.
     *
     * @return an empty builder
     */
    public static Builder builder() {
        return new Builder();
    }

    /**
     * Starts a description from this one, to change a part of it.
     *
     * @return a builder that holds everything this supply holds
     */
    public Builder toBuilder() {
        return new Builder(parts);
    }

    /** How the house is connected to the mains. */
    public enum Arrangement {
        /** No check valve: the expanding water flows back to the mains. */
        DIRECT,
        /** A check valve or backflow preventer: water can flow in but not back. */
        CHECK_VALVE,
        /** A pressure reducing valve, with or without an expansion bypass. */
        REDUCING_VALVE
    }

    /** {@return arrangement and pressures of the mains over the day in a line: {@code check valve, mains 4 bar gauge at 06:00, 6 bar gauge at 22:00}} */
    @Override
    public String toString() {
        return arrangement().name().toLowerCase(Locale.ROOT).replace('_', ' ') + ", mains "
                + mains().entries().entrySet().stream()
                        .map(entry -> entry.getValue()
                                + (mains().isConstant()
                                        ? ""
                                        : " at "
                                                + DurationUnit.clock(
                                                        entry.getKey().longValue() / 60)))
                        .collect(Collectors.joining(", "));
    }

    /**
     * How the house is connected to the mains.
     *
     * @return the arrangement
     */
    public Arrangement arrangement() {
        return parts.arrangement;
    }

    /**
     * The static pressure of the mains.
     *
     * @return the pressure over the day
     */
    public MainsPressure mains() {
        return parts.mains;
    }

    /**
     * The temperature of the cold feed, of the branch piping and of the water in the vessel.
     *
     * @return the temperature over the year
     */
    public SupplyTemperature water() {
        return parts.water;
    }

    /**
     * The pressure reducing valve.
     *
     * @return the valve, or empty unless the arrangement has one
     */
    public Optional<ReducingValve> reducingValve() {
        return Optional.ofNullable(parts.reducingValve);
    }

    /**
     * Leakage of the closed check valve or reducing valve at a pressure difference of 1 bar, from the higher to the
     * lower side; it varies with the square root of the difference.
     *
     * @return the flow (m3/s), 0 for a tight seat
     */
    public double seatLeakage() {
        return parts.seatLeakage;
    }

    /**
     * When the supply is shut off.
     *
     * @return the times, possibly none, in their order
     */
    public List<Outage> outages() {
        return Collections.unmodifiableList(parts.outages);
    }

    /**
     * Static pressure of the feed without flow: that of the mains, or the reducing valve's lock-up pressure if that is
     * lower.
     *
     * @param timeOfDay the clock time (s since midnight)
     * @param atmosphere the absolute pressure (Pa) of the surrounding air
     * @return the static pressure (Pa, absolute)
     */
    public double staticAbsolute(double timeOfDay, double atmosphere) {
        double outside = parts.mains.absolute(timeOfDay, atmosphere);
        return parts.reducingValve == null
                ? outside
                : Math.min(outside, parts.reducingValve.set().absolute(atmosphere) + parts.reducingValve.lockUpRise());
    }

    /** Builds a {@link Supply}. */
    public static final class Builder {
        private Arrangement arrangement;
        private MainsPressure mains;
        private SupplyTemperature water;
        private ReducingValve reducingValve;
        private double seatLeakage;
        private final List<Outage> outages = new ArrayList<>();

        private Builder() {}

        private Builder(Builder from) {
            arrangement = from.arrangement;
            mains = from.mains;
            water = from.water;
            reducingValve = from.reducingValve;
            seatLeakage = from.seatLeakage;
            outages.addAll(from.outages);
        }

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
         * Sets a static pressure that is the same at all times.
         *
         * @param value the pressure, above 0 to 25 bar
         * @return this builder
         * @throws IllegalArgumentException if the pressure is outside its range
         */
        public Builder pressure(Pressure value) {
            return mains(MainsPressure.constant(value));
        }

        /**
         * Sets the static pressure of the mains over the day.
         *
         * @param value the pressure
         * @return this builder
         */
        public Builder mains(MainsPressure value) {
            mains = Objects.requireNonNull(value, "pressure");
            return this;
        }

        /**
         * Sets a temperature of the cold water that is the same all year.
         *
         * @param value the temperature, 0 degC to 40 degC
         * @param unit its unit
         * @return this builder
         * @throws IllegalArgumentException if the temperature is outside its range
         */
        public Builder water(double value, TemperatureUnit unit) {
            return water(SupplyTemperature.constant(value, unit));
        }

        /**
         * Sets the temperature of the cold water over the year.
         *
         * @param value the temperature
         * @return this builder
         */
        public Builder water(SupplyTemperature value) {
            water = Objects.requireNonNull(value, "water");
            return this;
        }

        /**
         * Sets the pressure reducing valve, required by that arrangement and not allowed in others.
         *
         * @param value the valve
         * @return this builder
         */
        public Builder reducingValve(ReducingValve value) {
            reducingValve = Objects.requireNonNull(value, "reducing-valve");
            return this;
        }

        /**
         * Sets the leakage of the closed seat at a difference of 1 bar.
         *
         * @param value the flow, 0 to 10 L/min
         * @param unit its unit
         * @return this builder
         * @throws IllegalArgumentException if the flow is outside its range
         */
        public Builder seatLeakage(double value, FlowUnit unit) {
            seatLeakage = SEAT_LEAKAGE.check(value, unit);
            return this;
        }

        /**
         * Adds a period in which the supply is shut off.
         *
         * @param value when
         * @return this builder
         */
        public Builder addOutage(Outage value) {
            outages.add(Objects.requireNonNull(value, "shut-off"));
            return this;
        }

        /**
         * Removes all periods in which the supply is shut off.
         *
         * @return this builder
         */
        public Builder withoutOutages() {
            outages.clear();
            return this;
        }

        /**
         * Completes the description.
         *
         * @return the supply
         * @throws InvalidDescriptionException if something is missing or does not belong together
         */
        public Supply build() {
            Requirements requirements = new Requirements()
                    .present("arrangement", arrangement)
                    .present("pressure", mains)
                    .present("water", water);
            if (arrangement != null) {
                boolean reducing = arrangement == Arrangement.REDUCING_VALVE;
                requirements.rule(
                        reducing == (reducingValve != null),
                        "reducing-valve",
                        reducing ? "is missing" : "is allowed only with the arrangement reducing-valve");
                requirements.rule(
                        seatLeakage == 0 || arrangement != Arrangement.DIRECT,
                        "seat-leakage",
                        "is allowed only with a check valve, reducing valve or backflow preventer");
            }
            outages.sort(Comparator.comparingDouble(Outage::from));
            for (int i = 1; i < outages.size(); i++) {
                requirements.rule(outages.get(i).from() >= outages.get(i - 1).to(), "shut-off", "the times overlap");
            }
            requirements.orThrow();
            return new Supply(this);
        }
    }

    /**
     * A period in which the supply is shut off.
     *
     * @param from start of the outage (s since the start of the run), 0 or more
     * @param to end of the outage (s since the start of the run), after {@code from}
     */
    public record Outage(double from, double to) {

        /** No run is longer (s). */
        private static final Limits TIME = Limits.between("time", 0, 36_525 * 86_400.0);

        /**
         * Checks the times.
         *
         * @param from start of the outage (s since the start of the run), 0 or more
         * @param to end of the outage (s since the start of the run), after {@code from}
         * @throws IllegalArgumentException if the times do not run forward from the start of the run
         */
        public Outage {
            if (!(from >= 0 && to > from && to < Double.POSITIVE_INFINITY)) {
                throw new IllegalArgumentException(
                        "shutOff: from " + from + " s to " + to + " s does not run forward from the start of the run");
            }
        }

        /**
         * Starts a description; both times must be set.
         *
         * @return an empty builder
         */
        public static Builder builder() {
            return new Builder();
        }

        /** Builds an {@link Outage}. */
        public static final class Builder {
            private Double from;
            private Double to;

            private Builder() {}

            /**
             * Sets when the supply is shut off.
             *
             * @param value the time since the start of the run, 0 to 36525 d
             * @param unit its unit
             * @return this builder
             * @throws IllegalArgumentException if the time is outside its range
             */
            public Builder from(double value, DurationUnit unit) {
                from = checked("from", value, unit);
                return this;
            }

            /**
             * Sets when the supply is opened again.
             *
             * @param value the time since the start of the run, 0 to 36525 d
             * @param unit its unit
             * @return this builder
             * @throws IllegalArgumentException if the time is outside its range
             */
            public Builder to(double value, DurationUnit unit) {
                to = checked("to", value, unit);
                return this;
            }

            private static double checked(String field, double value, DurationUnit unit) {
                double seconds = unit.toSi(value);
                if (!TIME.contains(seconds)) {
                    throw new IllegalArgumentException(
                            field + ": " + TIME.outside(value, unit) + " is outside the allowed range, 0 s to 36525 d");
                }
                return seconds;
            }

            /**
             * Completes the description.
             *
             * @return the outage
             * @throws InvalidDescriptionException if a time is missing, or they do not run forward
             */
            public Outage build() {
                Requirements requirements =
                        new Requirements().present("from", from).present("to", to);
                requirements.rule(runsForward(), "to", "must be later than from; both count from the start of the run");
                requirements.orThrow();
                return new Outage(from, to);
            }

            private boolean runsForward() {
                return from == null || to == null || to > from;
            }
        }
    }
}
