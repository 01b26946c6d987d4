package io.github.heatswell.system;

import io.github.heatswell.units.DurationUnit;
import io.github.heatswell.units.Limits;

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
                    "shut-off: from " + from + " s to " + to + " s does not run forward from the start of the run");
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
            Requirements requirements = new Requirements().present("from", from).present("to", to);
            requirements.rule(runsForward(), "to", "must be later than from; both count from the start of the run");
            requirements.orThrow();
            return new Outage(from, to);
        }

        private boolean runsForward() {
            return from == null || to == null || to > from;
        }
    }
}
