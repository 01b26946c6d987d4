package io.github.heatswell.system;

import io.github.heatswell.units.FlowUnit;
import io.github.heatswell.units.Limits;
import io.github.heatswell.units.RatioUnit;
import java.util.List;
import java.util.Objects;

/**
 * What drives a circulation loop: a pump that takes water from the top of the tank through the loop's pipes and back into the tank,
 * always or at certain hours. The pipes are {@link PipeRun}s that carry the loop.
 *
 * @param flow the flow of the pump (m3/s)
 * @param hours when the pump runs, every day; empty for always
 * @param returnHeight where the water comes back, as a share (-) of the tank's height
 */
public record Circulation(double flow, List<Hours> hours, double returnHeight) {

    private static final Limits FLOW = Limits.above("flow", 0, 100.0 / 60e3);
    private static final Limits RETURN = Limits.between("returnHeight", 0, 0.95);
    private static final double DAY = 86_400;

    /**
     * Copies the hours.
     *
     * @param flow the flow of the pump (m3/s)
     * @param hours when the pump runs, every day; empty for always
     * @param returnHeight where the water comes back, as a share (-) of the tank's height
     */
    public Circulation {
        hours = List.copyOf(hours);
    }

    /**
     * Hours of a day; they may pass midnight.
     *
     * @param from the clock time (s since midnight) at which the pump starts
     * @param to the clock time (s since midnight) at which it stops
     */
    public record Hours(double from, double to) {

        /**
         * Checks the times.
         *
         * @param from the clock time (s since midnight) at which the pump starts, 0 to less than 86 400
         * @param to the clock time (s since midnight) at which it stops, 0 to less than 86 400, other than {@code from}
         * @throws IllegalArgumentException if a time is outside its range, or both are the same
         */
        public Hours {
            if (!(from >= 0 && from < DAY && to >= 0 && to < DAY)) {
                throw new IllegalArgumentException(
                        "pump: " + from + " s to " + to + " s must be times of day, each from 0 s to below 86400 s");
            }
            Requirements requirements = new Requirements();
            requirements.rule(from != to, "to", "is the same time as from; leave pump out for one that always runs");
            requirements.orThrow();
        }

        /**
         * Starts a description; both times must be set.
         *
         * @return an empty builder
         */
        public static Builder builder() {
            return new Builder();
        }

        /** Builds {@link Hours}. */
        public static final class Builder {
            private Double from;
            private Double to;

            private Builder() {}

            /**
             * Sets when the pump starts.
             *
             * @param clock the clock time (s since midnight), 0 to less than 86 400
             * @return this builder
             */
            public Builder from(double clock) {
                from = clock;
                return this;
            }

            /**
             * Sets when it stops.
             *
             * @param clock the clock time (s since midnight), 0 to less than 86 400
             * @return this builder
             */
            public Builder to(double clock) {
                to = clock;
                return this;
            }

            /**
             * Completes the description.
             *
             * @return the hours
             * @throws InvalidDescriptionException if a time is missing, or both are the same
             */
            public Hours build() {
                new Requirements().present("from", from).present("to", to).orThrow();
                return new Hours(from, to);
            }
        }

        boolean hold(double clock) {
            return from < to ? clock >= from && clock < to : clock >= from || clock < to;
        }
    }

    /**
     * Starts a description; the flow must be set.
     *
     * @return a builder of a pump that always runs, with the return at the bottom
     */
    public static Builder builder() {
        return new Builder();
    }

    /**
     * Whether the pump runs.
     *
     * @param clock the clock time (s since midnight), 0 to less than 86 400
     * @return whether it does
     */
    public boolean runs(double clock) {
        return hours.isEmpty() || hours.stream().anyMatch(these -> these.hold(clock));
    }

    /**
     * The same loop with a pump that always runs.
     *
     * @return the loop
     */
    public Circulation always() {
        return new Circulation(flow, List.of(), returnHeight);
    }

    /**
     * How long the pump rests.
     *
     * @return the time (s) of a day
     */
    public double rests() {
        if (hours.isEmpty()) {
            return 0;
        }
        double rests = 0;
        for (int minute = 0; minute < 1440; minute++) {
            rests += runs(60.0 * minute) ? 0 : 60;
        }
        return rests;
    }

    /** Builds a {@link Circulation}. */
    public static final class Builder {
        private Double flow;
        private List<Hours> hours = List.of();
        private double returnHeight;

        private Builder() {}

        /**
         * Sets the flow of the pump.
         *
         * @param value the flow, above 0 to 100 L/min
         * @param unit its unit
         * @return this builder
         * @throws IllegalArgumentException if the flow is outside its range
         */
        public Builder flow(double value, FlowUnit unit) {
            flow = FLOW.check(value, unit);
            return this;
        }

        /**
         * Sets when the pump runs, every day; always if not set.
         *
         * @param value the hours; none for always
         * @return this builder
         */
        public Builder pump(List<Hours> value) {
            hours = List.copyOf(Objects.requireNonNull(value, "pump"));
            return this;
        }

        /**
         * Sets where the water comes back into a tank of several layers; at the bottom if not set.
         *
         * @param value the share of the tank's height, 0 to 95 %
         * @param unit its unit
         * @return this builder
         * @throws IllegalArgumentException if the share is outside its range
         */
        public Builder returnHeight(double value, RatioUnit unit) {
            returnHeight = RETURN.check(value, unit);
            return this;
        }

        /**
         * Completes the description.
         *
         * @return what drives the loop
         * @throws InvalidDescriptionException if the flow is missing
         */
        public Circulation build() {
            new Requirements().present("flow", flow).orThrow();
            return new Circulation(flow, hours, returnHeight);
        }
    }
}
