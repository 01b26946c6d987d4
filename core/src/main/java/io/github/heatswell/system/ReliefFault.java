package io.github.heatswell.system;

import io.github.heatswell.units.FlowUnit;
import io.github.heatswell.units.Limits;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.RatioUnit;
import java.util.Optional;

/**
 * What is wrong with a relief valve: it is stuck open, or its seat leaks, or it never opens, or nothing is. Immutable.
 */
public final class ReliefFault {

    private static final Limits STUCK_LIFT = Limits.between("stuck-open", 1e-4, 1);
    private static final Limits LEAKS_FROM = Limits.between("leaks-from", 0, 20e5);
    private static final Limits LEAKAGE = Limits.above("leakage", 0, 10e-3 / 60);

    private static final ReliefFault NONE = new ReliefFault(ReliefValve.Condition.SOUND, new Builder());
    private static final ReliefFault BLOCKED = new ReliefFault(ReliefValve.Condition.BLOCKED, new Builder());

    private final ReliefValve.Condition condition;
    private final double stuckLift;
    private final double leakage;
    private final Pressure leaksFrom;

    private ReliefFault(ReliefValve.Condition condition, Builder from) {
        this.condition = condition;
        stuckLift = from.stuckLift;
        leakage = from.leakage;
        leaksFrom = from.leaksFrom;
    }

    /**
     * No fault: the valve works.
     *
     * @return a fault that is none
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
     * Starts a description of a valve that is stuck open, or of one whose seat leaks.
     *
     * @return an empty builder
     */
    public static Builder builder() {
        return new Builder();
    }

    ReliefValve.Condition condition() {
        return condition;
    }

    double stuckLift() {
        return stuckLift;
    }

    double leakage() {
        return leakage;
    }

    Optional<Pressure> leaksFrom() {
        return Optional.ofNullable(leaksFrom);
    }

    /** Builds a {@link ReliefFault}. */
    public static final class Builder {
        private double stuckLift;
        private double leakage;
        private Pressure leaksFrom;

        private Builder() {}

        /**
         * Makes it a valve that never closes.
         *
         * @param lift the lift it is stuck at, 0.01 % to 100 %
         * @param unit its unit
         * @return this builder
         * @throws IllegalArgumentException if the lift is outside its range
         */
        public Builder stuckOpen(double lift, RatioUnit unit) {
            stuckLift = STUCK_LIFT.check(lift, unit);
            return this;
        }

        /**
         * Sets the pressure above which the closed seat leaks; how much must be set too.
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
         * Sets what the closed seat lets by just below the opening pressure; where that begins must be set too.
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
         * Ends the description.
         *
         * @return the fault
         * @throws InvalidDescriptionException if there are two faults, or half of one
         */
        public ReliefFault build() {
            boolean leaks = leaksFrom != null || leakage > 0;
            Requirements requirements = new Requirements();
            requirements.rule(
                    !leaks || stuckLift == 0, "stuck-open", "has no place beside leaks-from; describe one fault");
            requirements.rule(leaks || stuckLift > 0, "stuck-open", "is missing, and so is what leaks");
            requirements.rule(!leaks || leaksFrom != null, "leaks-from", "is missing");
            requirements.rule(!leaks || leakage > 0, "leakage", "is missing");
            requirements.orThrow();
            return new ReliefFault(leaks ? ReliefValve.Condition.LEAKING_SEAT : ReliefValve.Condition.STUCK_OPEN, this);
        }
    }
}
