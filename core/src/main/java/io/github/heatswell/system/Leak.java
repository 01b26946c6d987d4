package io.github.heatswell.system;

import io.github.heatswell.units.FlowUnit;
import io.github.heatswell.units.Limits;
import io.github.heatswell.units.Pressure;

/**
 * A dripping tap or any other small hole in the piping: a fixed orifice from the cold branch to the air. It can hide
 * thermal expansion or be mistaken for it.
 */
public final class Leak {

    private static final Limits FLOW = Limits.above("flow", 0, 20e-3 / 60);
    private static final Limits AT = Limits.between("at", 0.1e5, 25e5);

    private final double flow;
    private final Pressure at;

    private Leak(double flow, Pressure at) {
        this.flow = flow;
        this.at = at;
    }

    /**
     * A leak defined by its flow at one pressure.
     *
     * @param flow the measured flow, above 0 to 20 L/min
     * @param unit the unit of the flow
     * @param at the pressure at which it was measured, 0.1 bar to 25 bar
     * @return the leak
     * @throws IllegalArgumentException if a number is outside its range
     */
    public static Leak of(double flow, FlowUnit unit, Pressure at) {
        AT.check(at);
        return new Leak(FLOW.check(flow, unit), at);
    }

    /**
     * Starts a description; flow and pressure must be set.
     *
     * @return an empty builder
     */
    public static Builder builder() {
        return new Builder();
    }

    /**
     * Flow measured at {@link #at()}.
     *
     * @return the flow (m3/s)
     */
    public double flow() {
        return flow;
    }

    /**
     * Pressure at which the flow was measured.
     *
     * @return the pressure
     */
    public Pressure at() {
        return at;
    }

    /** Builds a {@link Leak}. */
    public static final class Builder {
        private Double flow;
        private Pressure at;

        private Builder() {}

        /**
         * Sets the measured flow.
         *
         * @param value the flow, above 0 to 20 L/min
         * @param unit its unit
         * @return this builder
         * @throws IllegalArgumentException if the flow is outside its range
         */
        public Builder flow(double value, FlowUnit unit) {
            flow = FLOW.check(value, unit);
            return this;
        }

        /**
         * Sets the pressure at which the flow was measured.
         *
         * @param value the pressure, 0.1 bar to 25 bar
         * @return this builder
         * @throws IllegalArgumentException if the pressure is outside its range
         */
        public Builder at(Pressure value) {
            at = AT.check(value);
            return this;
        }

        /**
         * Completes the description.
         *
         * @return the leak
         * @throws InvalidDescriptionException if something is missing
         */
        public Leak build() {
            new Requirements().present("flow", flow).present("at", at).orThrow();
            return new Leak(flow, at);
        }
    }
}
