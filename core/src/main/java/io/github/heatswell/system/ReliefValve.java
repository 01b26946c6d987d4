package io.github.heatswell.system;

import io.github.heatswell.units.FlowUnit;
import io.github.heatswell.units.LengthUnit;
import io.github.heatswell.units.Limits;
import io.github.heatswell.units.PowerUnit;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.PressureUnit;
import io.github.heatswell.units.TemperatureUnit;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;

/**
 * A spring-loaded relief valve. It opens at its set pressure, reaches full lift at the full-lift pressure, and closes
 * only at the reseat pressure. Set pressure minus reseat pressure is the blowdown.
 */
public final class ReliefValve {

    /** A lift curve is checked at so many points, */
    private static final int CURVE_POINTS = 1_000;
    /** and may leave its range by this (-): rounding. */
    private static final double CURVE_TOLERANCE = 1e-9;

    private static final Limits OPENS = Limits.between("setPressure", 0.2e5, 25e5);
    private static final Limits FULL_LIFT = Limits.between("fullLiftPressure", 0.2e5, 27.5e5);
    private static final Limits RESEATS = Limits.above("reseatPressure", 0, 25e5);
    private static final Limits HEIGHT = Limits.between("height", -30, 30);
    private static final Limits OPENS_AT = Limits.between("opensAt", 323.15, 383.15);
    private static final Limits RESEATS_AT = Limits.between("reseatsAt", 313.15, 382.15);
    private static final Limits RATED_INPUT = Limits.above("ratedInput", 0, 2e6);
    private static final Limits FULL_FLOW = Limits.between("fullFlow", 0.1e-3 / 60, 1_000e-3 / 60);

    /** What it consists of: a copy that nobody else has and nothing changes. */
    private final Builder parts;

    private ReliefValve(Builder from) {
        parts = new Builder(from);
    }

    /** {@return an empty builder; name, set, full-lift and reseat pressure, full flow and lift characteristic must be set} */
    public static Builder builder() {
        return new Builder();
    }

    /** {@return a builder that holds everything this valve holds, to change a part of it} */
    public Builder toBuilder() {
        return new Builder(parts);
    }

    /**
     * The same valve with a stronger or weaker spring: set, full-lift and reseat pressure keep their proportions. Springs push
     * against the air, so it is the gauge pressures that do.
     *
     * @param factor how many times as strong (-), above 0
     * @param atmosphere the absolute pressure (Pa) of the surrounding air
     * @return the valve
     * @throws IllegalArgumentException if a pressure leaves its range
     */
    public ReliefValve scaled(double factor, double atmosphere) {
        UnaryOperator<Pressure> scale =
                pressure -> Pressure.gauge(factor * pressure.gauge(atmosphere), PressureUnit.PASCAL);
        return toBuilder()
                .setPressure(scale.apply(parts.setPressure))
                .fullLiftPressure(scale.apply(parts.fullLiftPressure))
                .reseatPressure(scale.apply(parts.reseatPressure))
                .build();
    }

    /** How the lift of an open valve depends on pressure: its curve and the slope of that, which the compiler asks for. */
    public enum LiftCharacteristic implements LiftCurve {
        /** Lift grows linearly from zero at the reseat pressure to full at the full-lift pressure. */
        MODULATING,
        /** Fully lifted from the moment it opens until it reseats. */
        SNAP;

        @Override
        public double lift(double share) {
            return switch (this) {
                case MODULATING -> Math.min(1, share);
                case SNAP -> 1;
            };
        }

        @Override
        public double slope(double share) {
            return switch (this) {
                case MODULATING -> share < 1 ? 1 : 0;
                case SNAP -> 0;
            };
        }
    }

    /**
     * How far an open valve lifts at a pressure. Write one for a valve that no {@link LiftCharacteristic} describes, such
     * as a valve whose lift was measured:
     *
     * <pre>
     *   class QuickOpening implements ReliefValve.LiftCurve {
     *       public double lift(double share) { return share * (2 - share); }
     *       public double slope(double share) { return 2 - 2 * share; }
     *   }
     * </pre>
     *
     * <p>A curve is a pure function, without a jump, and is called from reseat to full lift only. Above, the lift stays full;
     * below, a run continues the curve along a straight line with its slope at reseat.
     */
    public interface LiftCurve {

        /**
         * Lift of the open valve.
         *
         * @param share where pressure stands (-), from reseat (0) to full lift (1)
         * @return the share of full lift (-), 0 to 1
         */
        double lift(double share);

        /**
         * How fast lift grows with pressure.
         *
         * @param share where pressure stands (-), from reseat (0) to full lift (1)
         * @return the derivative of {@link #lift} (-), finite at both ends too
         */
        double slope(double share);
    }

    /** Where a valve sits. */
    public enum Location {
        /** On the cold branch: it discharges cold water. */
        BRANCH,
        /** On top of the tank, with its probe in the hottest water, which it discharges. */
        TANK_TOP
    }

    /** What a valve is made for. */
    public enum Kind {
        /** To guard the tank: a temperature and pressure relief valve, or any valve about which no more is known. */
        RELIEF_VALVE,
        /** To discharge the expansion, on the cold inlet: an expansion valve (EN 1491). It opens below the tank's guard. */
        EXPANSION_VALVE,
        /**
         * The same with a check valve in one body: a safety group (EN 1487) or expansion group (EN 1488), between the supply and
         * the tank.
         */
        SAFETY_GROUP;

        /** {@return whether discharging the expansion is its work} */
        public boolean takesExpansion() {
            return this != RELIEF_VALVE;
        }
    }

    /** {@return name, set and reseat pressure in a line} */
    @Override
    public String toString() {
        return "'" + name() + "', opens at " + setPressure() + ", reseats at " + reseatPressure();
    }

    /** {@return what this valve is called, not blank} */
    public String name() {
        return parts.name;
    }

    /** {@return the set pressure, at which a closed valve opens} */
    public Pressure setPressure() {
        return parts.setPressure;
    }

    /** {@return the full-lift pressure, at or above the set pressure} */
    public Pressure fullLiftPressure() {
        return parts.fullLiftPressure;
    }

    /** {@return the reseat pressure, below the set pressure, at which an open valve closes} */
    public Pressure reseatPressure() {
        return parts.reseatPressure;
    }

    /**
     * {@return the volume flow (m3/s) of the fully lifted valve at its full-lift pressure; elsewhere it varies with the square root of the
     * pressure difference to the air, as for any orifice}
     */
    public double fullFlow() {
        return parts.fullFlow;
    }

    /** {@return the characteristic that describes its lift, or empty if a curve of its own does} */
    public Optional<LiftCharacteristic> liftCharacteristic() {
        return parts.liftCurve instanceof LiftCharacteristic known ? Optional.of(known) : Optional.empty();
    }

    /** {@return the curve of its lift: its own, or that of its characteristic} */
    public LiftCurve liftCurve() {
        return parts.liftCurve;
    }

    /** {@return where the valve sits} */
    public Location location() {
        return parts.location;
    }

    /** {@return what it is made for} */
    public Kind kind() {
        return parts.kind;
    }

    /** {@return the height (m) above the tank's drain cock, negative below it; a higher valve sees less pressure} */
    public double height() {
        return parts.height;
    }

    /**
     * {@return the water temperature (K) at which a combined temperature and pressure device opens as well, or empty for a valve that
     * responds to pressure only}
     */
    public OptionalDouble setTemperature() {
        return parts.setTemperature == null ? OptionalDouble.empty() : OptionalDouble.of(parts.setTemperature);
    }

    /** {@return the water temperature (K) below which the device closes again, or empty for a valve that responds to pressure only} */
    public OptionalDouble reseatTemperature() {
        return parts.reseatTemperature == null ? OptionalDouble.empty() : OptionalDouble.of(parts.reseatTemperature);
    }

    /**
     * {@return the heat input (W) of a heater that a combined device is certified to keep from overheating, or empty if it is
     * unknown}
     */
    public OptionalDouble ratedInput() {
        return parts.ratedInput == null ? OptionalDouble.empty() : OptionalDouble.of(parts.ratedInput);
    }

    /** {@return what is wrong with the valve; {@link ReliefFault#none()} if it is sound} */
    public ReliefFault fault() {
        return parts.fault;
    }

    /** {@return the state its fault leaves the valve in} */
    public ReliefFault.Condition condition() {
        return parts.fault.condition();
    }

    /** {@return whether it can discharge, which all but a blocked valve can; only such a valve limits the pressure} */
    public boolean relieves() {
        return condition() != ReliefFault.Condition.BLOCKED;
    }

    /** What its pressures must agree on. */
    ReliefRules rules() {
        return new ReliefRules(
                parts.setPressure, parts.fullLiftPressure, parts.reseatPressure, parts.fault.leaksFrom());
    }

    /** Builds a {@link ReliefValve}. */
    public static final class Builder {
        private String name;
        private Pressure setPressure;
        private Pressure fullLiftPressure;
        private Pressure reseatPressure;
        private Double fullFlow;
        private LiftCurve liftCurve;
        private Location location = Location.BRANCH;
        private Kind kind = Kind.RELIEF_VALVE;
        private double height;
        private Double setTemperature;
        private Double reseatTemperature;
        private Double ratedInput;
        private ReliefFault fault = ReliefFault.none();

        private Builder() {}

        private Builder(Builder from) {
            name = from.name;
            setPressure = from.setPressure;
            fullLiftPressure = from.fullLiftPressure;
            reseatPressure = from.reseatPressure;
            fullFlow = from.fullFlow;
            liftCurve = from.liftCurve;
            location = from.location;
            kind = from.kind;
            height = from.height;
            setTemperature = from.setTemperature;
            reseatTemperature = from.reseatTemperature;
            ratedInput = from.ratedInput;
            fault = from.fault;
        }

        /**
         * Sets what the valve is called.
         *
         * @param value the name, 1 to 60 visible characters, not blank
         * @return this builder
         * @throws IllegalArgumentException if the name is blank, too long, or contains a line break, a control
         *     character or another invisible character
         */
        public Builder name(String value) {
            name = Requirements.name(value);
            return this;
        }

        /**
         * Sets the set pressure.
         *
         * @param value the pressure, 0.2 bar to 25 bar
         * @return this builder
         * @throws IllegalArgumentException if the pressure is outside its range
         */
        public Builder setPressure(Pressure value) {
            setPressure = OPENS.check(value);
            return this;
        }

        /**
         * Sets the pressure of full lift.
         *
         * @param value the pressure, 0.2 bar to 27.5 bar
         * @return this builder
         * @throws IllegalArgumentException if the pressure is outside its range
         */
        public Builder fullLiftPressure(Pressure value) {
            fullLiftPressure = FULL_LIFT.check(value);
            return this;
        }

        /**
         * Sets the pressure at which the valve closes again.
         *
         * @param value the pressure, above 0 to 25 bar
         * @return this builder
         * @throws IllegalArgumentException if the pressure is outside its range
         */
        public Builder reseatPressure(Pressure value) {
            reseatPressure = RESEATS.check(value);
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
         * Sets how the lift follows the pressure, in place of any curve.
         *
         * @param value the character
         * @return this builder
         */
        public Builder liftCharacteristic(LiftCharacteristic value) {
            liftCurve = Objects.requireNonNull(value, "character");
            return this;
        }

        /**
         * Sets a lift curve of its own, in place of any characteristic.
         *
         * @param value the curve
         * @return this builder
         * @throws IllegalArgumentException if the curve throws, leaves 0 to 1 between reseat and full lift, does not end at 1, jumps or
         *     has another slope than it states (looked at in thousandths of the way), or has no finite lift and slope at
         *     either end
         */
        public Builder liftCurve(LiftCurve value) {
            if (Objects.requireNonNull(value, "lift-curve") instanceof LiftCharacteristic known) {
                return liftCharacteristic(known);
            }
            Optional<String> broken;
            try {
                broken = broken(value);
            } catch (RuntimeException failed) {
                throw new IllegalArgumentException(
                        "liftCurve: fails between reseat (0) and full lift (1): " + failed, failed);
            }
            if (broken.isPresent()) {
                throw new IllegalArgumentException("liftCurve: " + broken.get());
            }
            liftCurve = value;
            return this;
        }

        /** What a curve does not keep, or empty. */
        private static Optional<String> broken(LiftCurve curve) {
            for (int end = 0; end <= 1; end++) {
                if (!Double.isFinite(curve.lift(end)) || !Double.isFinite(curve.slope(end))) {
                    return Optional.of("lift and slope must be finite at " + (end == 0 ? "reseat (0)" : "full lift (1)")
                            + ", and are " + curve.lift(end) + " and " + curve.slope(end));
                }
            }
            if (!(Math.abs(curve.lift(1) - 1) <= CURVE_TOLERANCE)) {
                return Optional.of("must be 1 at full lift");
            }
            for (int i = 0; i < CURVE_POINTS; i++) {
                double share = (double) i / CURVE_POINTS;
                if (!(curve.lift(share) >= -CURVE_TOLERANCE && curve.lift(share) <= 1 + CURVE_TOLERANCE)) {
                    return Optional.of("must be from 0 to 1, and is " + curve.lift(share) + " at " + share
                            + " between reseat (0) and full lift (1)");
                }
            }
            return new StatedCurve(curve::lift, curve::slope)
                    .contradiction(0, 1, 1)
                    .map(found -> "between " + found.from() + " and " + found.to()
                            + " from reseat (0) to full lift (1) it rises by " + found.rise() + ", with the slope "
                            + found.slope() + "; so it jumps, or its slope is not its derivative");
        }

        /**
         * Sets where the valve sits; by default, on the cold branch.
         *
         * @param value the location
         * @return this builder
         */
        public Builder location(Location value) {
            location = Objects.requireNonNull(value, "location");
            return this;
        }

        /**
         * Sets what the valve is made for; by default, a relief valve about which no more is known. It does not affect the
         * simulation.
         *
         * @param value the kind
         * @return this builder
         */
        public Builder kind(Kind value) {
            kind = Objects.requireNonNull(value, "kind");
            return this;
        }

        /**
         * Sets the height above the tank's drain cock.
         *
         * @param value the height, -30 m to 30 m
         * @param unit its unit
         * @return this builder
         * @throws IllegalArgumentException if the height is outside its range
         */
        public Builder height(double value, LengthUnit unit) {
            height = HEIGHT.check(value, unit);
            return this;
        }

        /**
         * Makes it a temperature and pressure relief valve (T&amp;P), which also opens fully at a temperature.
         *
         * @param value the temperature, 50 degC to 110 degC
         * @param unit its unit
         * @return this builder
         * @throws IllegalArgumentException if the temperature is outside its range
         */
        public Builder opensAt(double value, TemperatureUnit unit) {
            setTemperature = OPENS_AT.check(value, unit);
            return this;
        }

        /**
         * Sets the temperature below which a T&amp;P valve closes again.
         *
         * @param value the temperature, 40 degC to 109 degC
         * @param unit its unit
         * @return this builder
         * @throws IllegalArgumentException if the temperature is outside its range
         */
        public Builder reseatsAt(double value, TemperatureUnit unit) {
            reseatTemperature = RESEATS_AT.check(value, unit);
            return this;
        }

        /**
         * Sets the heat input for which a T&amp;P valve is certified, from its plate; it does not affect the
         * simulation.
         *
         * @param value the input, above 0 to 2000 kW
         * @param unit its unit
         * @return this builder
         * @throws IllegalArgumentException if the input is outside its range
         */
        public Builder ratedInput(double value, PowerUnit unit) {
            ratedInput = RATED_INPUT.check(value, unit);
            return this;
        }

        /**
         * Sets the valve's fault; none by default.
         *
         * @param value the fault; replaces any other
         * @return this builder
         */
        public Builder fault(ReliefFault value) {
            fault = Objects.requireNonNull(value, "fault");
            return this;
        }

        /**
         * Completes the description. Pressures against different references are compared when the valve is put into a
         * system, which knows the air around it.
         *
         * @return the valve
         * @throws InvalidDescriptionException if something is missing or does not belong together, such as a reseat
         *     pressure above the set pressure
         */
        public ReliefValve build() {
            Requirements requirements = new Requirements()
                    .present("name", name)
                    .present("opens", setPressure)
                    .present("full-lift", fullLiftPressure)
                    .present("reseats", reseatPressure)
                    .present("full-flow", fullFlow)
                    .present("character", liftCurve);
            ReliefRules.device(requirements, setTemperature, reseatTemperature, location, ratedInput);
            ReliefRules.inlet(requirements, kind, setTemperature, location);
            if (setPressure != null && fullLiftPressure != null && reseatPressure != null) {
                fullLiftPressure = ReliefRules.notBelowByRounding(fullLiftPressure, setPressure);
                new ReliefRules(setPressure, fullLiftPressure, reseatPressure, fault.leaksFrom()).alone(requirements);
            }
            requirements.orThrow();
            return new ReliefValve(this);
        }
    }
}
