package io.github.heatswell.system;

import io.github.heatswell.units.FlowUnit;
import io.github.heatswell.units.Limits;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.RatioUnit;
import java.util.Optional;

/**
 * Fault of a relief valve: stuck open, leaking seat, blocked, or none. Immutable.
 */
public final class ReliefFault {

    private static final Limits STUCK_LIFT = Limits.between("stuckOpen", 1e-4, 1);
    /** What state a valve is in. */
    public enum Condition {
        /** It works. */
        SOUND,
        /** It never closes: an orifice of fixed lift. */
        STUCK_OPEN,
        /** It works, but its seat leaks while it is closed. */
        LEAKING_SEAT,
        /** It never opens. */
        BLOCKED
    }

    private static final Limits LEAKS_FROM = Limits.between("leaksFrom", 0, 20e5);
    private static final Limits LEAKAGE = Limits.above("leakage", 0, 10e-3 / 60);

    private static final ReliefFault NONE = new ReliefFault(Condition.SOUND, new Builder());
    private static final ReliefFault BLOCKED = new ReliefFault(Condition.BLOCKED, new Builder());

    private final Condition condition;
    private final double stuckLift;
    private final double leakage;
    private final Pressure leaksFrom;

    private ReliefFault(Condition condition, Builder from) {
        this.condition = condition;
        stuckLift = from.stuckLift;
        leakage = from.leakage;
        leaksFrom = from.leaksFrom;
    }

    /**
     * No fault: the valve works.
     *
     * @return no fault
     */
    public static ReliefFault none() {
        return NONE;
    }

    /**
     * The valve never opens.
     *
     * @return the fault
     */
    public static ReliefFault blocked() {
        return BLOCKED;
    }

    /**
     * The valve never closes.
     *
     * @param lift the lift at which it is stuck, 0.01 % to 100 %
     * @param unit its unit
     * @return the fault
     * @throws IllegalArgumentException if the lift is outside its range
     */
    public static ReliefFault stuckOpen(double lift, RatioUnit unit) {
        return builder().stuckOpen(lift, unit).build();
    }

    /**
     * The valve's closed seat leaks.
     *
     * @param from the pressure above which it leaks, 0 to 20 bar
     * @param flow the leakage just below the set pressure, above 0 to 10 L/min
     * @param unit the unit of the flow
     * @return the fault
     * @throws IllegalArgumentException if a number is outside its range
     */
    public static ReliefFault leakingSeat(Pressure from, double flow, FlowUnit unit) {
        return builder().leaksFrom(from).leakage(flow, unit).build();
    }

    /**
     * Starts a description of a valve that is stuck open, or of one whose seat leaks.
     *
     * @return an empty builder
     */
    public static Builder builder() {
        return new Builder();
    }

    /**
     * What state it leaves the valve in.
     *
     * @return the condition, sound if there is no fault
     */
    public Condition condition() {
        return condition;
    }

    /**
     * The lift at which the valve is stuck.
     *
     * @return the lift (-), 0 unless it is stuck open
     */
    public double stuckLift() {
        return stuckLift;
    }

    /**
     * Seat leakage at the set pressure; it falls linearly to zero at {@link #leaksFrom}.
     *
     * @return the flow (m3/s), 0 for a tight seat
     */
    public double leakage() {
        return leakage;
    }

    /**
     * Pressure above which the seat leaks.
     *
     * @return the pressure, or empty for a tight seat
     */
    public Optional<Pressure> leaksFrom() {
        return Optional.ofNullable(leaksFrom);
    }

    /** Builds a {@link ReliefFault}. */
    public static final class Builder {
        private double stuckLift;
        private double leakage;
        private Pressure leaksFrom;

        private Builder() {}

        /**
         * Makes the valve stuck open: it never closes.
         *
         * @param lift the lift at which it is stuck, 0.01 % to 100 %
         * @param unit its unit
         * @return this builder
         * @throws IllegalArgumentException if the lift is outside its range
         */
        public Builder stuckOpen(double lift, RatioUnit unit) {
            stuckLift = STUCK_LIFT.check(lift, unit);
            return this;
        }

        /**
         * Sets the pressure above which the closed seat leaks; the leakage must be set too.
         *
         * @param value the pressure, 0 to 20 bar
         * @return this builder
         * @throws IllegalArgumentException if the pressure is outside its range
         */
        public Builder leaksFrom(Pressure value) {
            leaksFrom = LEAKS_FROM.check(value);
            return this;
        }

        /**
         * Sets the seat leakage just below the set pressure; the pressure at which it starts must be set too.
         *
         * @param flow the flow, above 0 to 10 L/min
         * @param unit its unit
         * @return this builder
         * @throws IllegalArgumentException if the flow is outside its range
         */
        public Builder leakage(double flow, FlowUnit unit) {
            leakage = LEAKAGE.check(flow, unit);
            return this;
        }

        /**
         * Completes the description.
         *
         * @return the fault
         * @throws InvalidDescriptionException if there are two faults, or one is incomplete
         */
        public ReliefFault build() {
            boolean leaks = leaksFrom != null || leakage > 0;
            Requirements requirements = new Requirements();
            requirements.rule(
                    !leaks || stuckLift == 0, "stuck-open", "cannot be combined with leaks-from; describe one fault");
            requirements.rule(leaks || stuckLift > 0, "stuck-open", "is missing, and so is the leakage");
            requirements.rule(!leaks || leaksFrom != null, "leaks-from", "is missing");
            requirements.rule(!leaks || leakage > 0, "leakage", "is missing");
            requirements.orThrow();
            return new ReliefFault(leaks ? Condition.LEAKING_SEAT : Condition.STUCK_OPEN, this);
        }
    }
}
