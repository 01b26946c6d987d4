package io.github.heatswell.plant;

import io.github.heatswell.units.FlowUnit;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.PressureUnit;
import java.util.Objects;

/**
 * A spring-loaded relief valve. It opens at its set pressure, is fully lifted at a somewhat higher pressure, and closes
 * only after the pressure has fallen to the reseat pressure; the difference between opening and reseating is its
 * blowdown.
 */
public final class ReliefValve {

    private static final Limits OPENS = Limits.between("opens", 0.2e5, 25e5);
    private static final Limits FULL_LIFT = Limits.between("full-lift", 0.2e5, 27.5e5);
    private static final Limits RESEATS = Limits.above("reseats", 0, 25e5);
    private static final Limits FULL_FLOW = Limits.between("full-flow", 0.1e-3 / 60, 1_000e-3 / 60);

    private final String name;
    private final Pressure opens;
    private final Pressure fullLift;
    private final Pressure reseats;
    private final double fullFlow;
    private final Character character;

    private ReliefValve(Builder from) {
        name = from.name;
        opens = from.opens;
        fullLift = from.fullLift;
        reseats = from.reseats;
        fullFlow = from.fullFlow;
        character = from.character;
    }

    /**
     * Starts a description; everything must be set.
     *
     * @return an empty builder
     */
    public static Builder builder() {
        return new Builder();
    }

    /** How the lift of an open valve follows the pressure. */
    public enum Character {
        /** The lift grows linearly from nothing at the reseat pressure to full at the full-lift pressure. */
        MODULATING,
        /** Fully lifted from the moment it opens until it reseats. */
        SNAP
    }

    /**
     * What this valve is called.
     *
     * @return the name, not blank
     */
    public String name() {
        return name;
    }

    /**
     * The set pressure, at which a closed valve opens.
     *
     * @return the set pressure
     */
    public Pressure opens() {
        return opens;
    }

    /**
     * The pressure at which the valve is fully lifted.
     *
     * @return the full-lift pressure, at or above the set pressure
     */
    public Pressure fullLift() {
        return fullLift;
    }

    /**
     * The pressure at which an open valve closes.
     *
     * @return the reseat pressure, below the set pressure
     */
    public Pressure reseats() {
        return reseats;
    }

    /**
     * The flow of the fully lifted valve at its full-lift pressure. At another pressure it goes with the square root of
     * the pressure difference to the air, as through any orifice.
     *
     * @return the volume flow (m3/s)
     */
    public double fullFlow() {
        return fullFlow;
    }

    /**
     * How the lift follows the pressure.
     *
     * @return the character
     */
    public Character character() {
        return character;
    }

    /** Notes everything about this valve that contradicts itself once the air pressure is known. */
    void check(Requirements requirements, String path, double atmosphere) {
        double set = opens.gauge(atmosphere);
        requirements.rule(
                reseats.gauge(atmosphere) < set,
                path + ".reseats",
                reseats + " must be below the opening pressure of " + opens);
        requirements.rule(
                reseats.gauge(atmosphere) > 0, path + ".reseats", reseats + " must be above the surrounding air");
        requirements.rule(
                fullLift.gauge(atmosphere) >= set,
                path + ".full-lift",
                fullLift + " must not be below the opening pressure of " + opens);
    }

    /** Builds a {@link ReliefValve}. */
    public static final class Builder {
        private String name;
        private Pressure opens;
        private Pressure fullLift;
        private Pressure reseats;
        private Double fullFlow;
        private Character character;

        private Builder() {}

        /**
         * Sets what the valve is called.
         *
         * @param value the name, 1 to 60 characters, not blank
         * @return this builder
         * @throws IllegalArgumentException if the name is blank or too long
         */
        public Builder name(String value) {
            if (value.isBlank() || value.length() > 60) {
                throw new IllegalArgumentException("name: must have 1 to 60 characters and not be blank");
            }
            name = value;
            return this;
        }

        /**
         * Sets the set pressure.
         *
         * @param value the pressure, 0.2 bar to 25 bar
         * @return this builder
         * @throws IllegalArgumentException if the pressure is outside its range
         */
        public Builder opens(Pressure value) {
            opens = checked(OPENS, value);
            return this;
        }

        /**
         * Sets the pressure of full lift.
         *
         * @param value the pressure, 0.2 bar to 27.5 bar
         * @return this builder
         * @throws IllegalArgumentException if the pressure is outside its range
         */
        public Builder fullLift(Pressure value) {
            fullLift = checked(FULL_LIFT, value);
            return this;
        }

        /**
         * Sets the pressure at which the valve closes again.
         *
         * @param value the pressure, above 0 to 25 bar
         * @return this builder
         * @throws IllegalArgumentException if the pressure is outside its range
         */
        public Builder reseats(Pressure value) {
            reseats = checked(RESEATS, value);
            return this;
        }

        /**
         * Sets the flow at full lift.
         *
         * @param value the flow, 0.1 L/min to 1000 L/min
         * @param unit its unit
         * @return this builder
         * @throws IllegalArgumentException if the flow is outside its range
         */
        public Builder fullFlow(double value, FlowUnit unit) {
            fullFlow = FULL_FLOW.check(value, unit);
            return this;
        }

        /**
         * Sets how the lift follows the pressure.
         *
         * @param value the character
         * @return this builder
         */
        public Builder character(Character value) {
            character = Objects.requireNonNull(value, "character");
            return this;
        }

        /**
         * Ends the description. Rules between the pressures are checked when the valve is put into a system, since they
         * may be given against different references.
         *
         * @return the valve
         * @throws InvalidDescriptionException if something is missing
         */
        public ReliefValve build() {
            new Requirements()
                    .present("name", name)
                    .present("opens", opens)
                    .present("full-lift", fullLift)
                    .present("reseats", reseats)
                    .present("full-flow", fullFlow)
                    .present("character", character)
                    .orThrow();
            return new ReliefValve(this);
        }

        private static Pressure checked(Limits limits, Pressure value) {
            limits.check(PressureUnit.BAR.fromSi(value.value()), PressureUnit.BAR);
            return value;
        }
    }
}
