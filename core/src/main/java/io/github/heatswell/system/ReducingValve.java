package io.github.heatswell.system;

import io.github.heatswell.units.FlowUnit;
import io.github.heatswell.units.Limits;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.PressureUnit;
import java.util.OptionalDouble;

/**
 * A pressure reducing valve on the cold feed. Outlet pressure is lock-up pressure (set pressure plus lock-up rise)
 * minus droop times flow, and never exceeds the mains pressure. It passes no water back unless it has an expansion
 * bypass, which opens to the mains once the house pressure exceeds the mains by a small difference.
 */
public final class ReducingValve {

    private static final Limits SET = Limits.between("set", 0.5e5, 12e5);
    private static final Limits LOCK_UP_RISE = Limits.between("lockUpRise", 0, 2e5);
    private static final Limits DROOP = Limits.between("droop", 0, 4e5);
    private static final Limits RATED_FLOW = Limits.between("ratedFlow", 1e-3 / 60, 1e-3 / 60 * 500);
    private static final Limits BYPASS_OPENS = Limits.between("bypassOpens", 0, 2e5);

    /** What it consists of: a copy that nobody else has and nothing changes. */
    private final Builder parts;

    private ReducingValve(Builder from) {
        parts = new Builder(from);
    }

    /**
     * Starts a description; set pressure, lock-up rise, droop and rated flow must be set.
     *
     * @return a builder of a valve without bypass
     */
    public static Builder builder() {
        return new Builder();
    }

    /**
     * Starts a description from this one, to change a part of it.
     *
     * @return a builder that holds everything this valve holds
     */
    public Builder toBuilder() {
        return new Builder(parts);
    }

    /**
     * The pressure the valve is set to.
     *
     * @return the set pressure of the outlet
     */
    public Pressure set() {
        return parts.set;
    }

    /**
     * How far the outlet rises above the set pressure before the valve closes.
     *
     * @return the difference (Pa)
     */
    public double lockUpRise() {
        return parts.lockUpRise;
    }

    /**
     * How far the outlet falls below the set pressure at the rated flow.
     *
     * @return the difference (Pa)
     */
    public double droop() {
        return parts.droop;
    }

    /**
     * The flow at which the droop is measured.
     *
     * @return the flow (m3/s)
     */
    public double ratedFlow() {
        return parts.ratedFlow;
    }

    /**
     * Pressure difference from house to mains at which the bypass opens.
     *
     * @return the difference (Pa), or empty for a valve without bypass
     */
    public OptionalDouble bypassOpens() {
        return parts.bypassOpens == null ? OptionalDouble.empty() : OptionalDouble.of(parts.bypassOpens);
    }

    /** Builds a {@link ReducingValve}. */
    public static final class Builder {
        private Pressure set;
        private Double lockUpRise;
        private Double droop;
        private Double ratedFlow;
        private Double bypassOpens;

        private Builder() {}

        private Builder(Builder from) {
            set = from.set;
            lockUpRise = from.lockUpRise;
            droop = from.droop;
            ratedFlow = from.ratedFlow;
            bypassOpens = from.bypassOpens;
        }

        /**
         * Sets the set pressure.
         *
         * @param value the pressure, 0.5 bar to 12 bar
         * @return this builder
         * @throws IllegalArgumentException if the pressure is outside its range
         */
        public Builder set(Pressure value) {
            set = SET.check(value);
            return this;
        }

        /**
         * Sets the lock-up rise.
         *
         * @param value the difference, 0 to 2 bar
         * @param unit its unit
         * @return this builder
         * @throws IllegalArgumentException if the difference is outside its range
         */
        public Builder lockUpRise(double value, PressureUnit unit) {
            lockUpRise = LOCK_UP_RISE.check(value, unit);
            return this;
        }

        /**
         * Sets the droop at the rated flow.
         *
         * @param value the difference, 0 to 4 bar
         * @param unit its unit
         * @return this builder
         * @throws IllegalArgumentException if the difference is outside its range
         */
        public Builder droop(double value, PressureUnit unit) {
            droop = DROOP.check(value, unit);
            return this;
        }

        /**
         * Sets the flow at which the droop is measured.
         *
         * @param value the flow, 1 L/min to 500 L/min
         * @param unit its unit
         * @return this builder
         * @throws IllegalArgumentException if the flow is outside its range
         */
        public Builder ratedFlow(double value, FlowUnit unit) {
            ratedFlow = RATED_FLOW.check(value, unit);
            return this;
        }

        /**
         * Adds an expansion bypass.
         *
         * @param value how far the house must exceed the mains, 0 to 2 bar
         * @param unit its unit
         * @return this builder
         * @throws IllegalArgumentException if the difference is outside its range
         */
        public Builder bypassOpens(double value, PressureUnit unit) {
            bypassOpens = BYPASS_OPENS.check(value, unit);
            return this;
        }

        /**
         * Completes the description.
         *
         * @return the valve
         * @throws InvalidDescriptionException if something is missing
         */
        public ReducingValve build() {
            new Requirements()
                    .present("set", set)
                    .present("lock-up-rise", lockUpRise)
                    .present("droop", droop)
                    .present("rated-flow", ratedFlow)
                    .orThrow();
            return new ReducingValve(this);
        }
    }
}
