package io.github.heatswell.system;

import io.github.heatswell.units.Limits;
import io.github.heatswell.units.PowerUnit;
import io.github.heatswell.units.RatioUnit;
import io.github.heatswell.units.TemperatureDifferenceUnit;
import io.github.heatswell.units.TemperatureUnit;
import java.util.Objects;
import java.util.Optional;

/**
 * One burner or electric element with its thermostat: off when the water around it reaches the set point, on again when
 * that has fallen by the differential.
 */
public final class Element {

    private static final Limits INPUT = Limits.above("input", 0, 500e3);
    private static final Limits HEIGHT = Limits.between("height", 0, 0.95);
    private static final Limits SET_POINT = Limits.between("setPoint", 283.15, 372.15);
    private static final Limits DIFFERENTIAL = Limits.between("differential", 0.1, 40);

    /** A power curve is looked at so many times, */
    private static final int CURVE_STEPS = 2 * 96;
    /** one after so long (s). */
    private static final double CURVE_STEP = 900;

    private final double input;
    private final double height;
    private final double setPoint;
    private final double differential;
    private final PowerCurve powerCurve;

    private Element(Builder from) {
        input = from.input;
        height = from.height;
        setPoint = from.setPoint;
        differential = from.differential;
        powerCurve = from.powerCurve;
    }

    /**
     * Starts a description; input, set point and differential must be set.
     *
     * @return a builder of an element at the bottom
     */
    public static Builder builder() {
        return new Builder();
    }

    /**
     * Starts a description from this one, to change a part of it.
     *
     * @return a builder that holds everything this element holds
     */
    public Builder toBuilder() {
        Builder builder = new Builder();
        builder.copy(this);
        return builder;
    }

    /**
     * Power input while on; with a curve of its own, the most it takes.
     *
     * @return the input (W)
     */
    public double input() {
        return input;
    }

    /**
     * Height of the element and its thermostat, as a share of the tank's height.
     *
     * @return the height (-), 0 at the bottom
     */
    public double height() {
        return height;
    }

    /**
     * The water temperature at which the thermostat switches off.
     *
     * @return the set point (K)
     */
    public double setPoint() {
        return setPoint;
    }

    /**
     * How far the water falls below the set point before the thermostat switches on.
     *
     * @return the differential (K)
     */
    public double differential() {
        return differential;
    }

    /**
     * The water temperature below which the thermostat switches on: the set point less the differential.
     *
     * @return the temperature (K)
     */
    public double switchesOn() {
        return setPoint - differential;
    }

    /** {@return what part of its input it takes at a time and a temperature, or empty if it takes all of it while on} */
    public Optional<PowerCurve> powerCurve() {
        return Optional.ofNullable(powerCurve);
    }

    /** Builds an {@link Element}. */
    public static final class Builder {
        private Double input;
        private double height;
        private Double setPoint;
        private Double differential;
        private PowerCurve powerCurve;

        private Builder() {}

        void copy(Element element) {
            input = element.input;
            height = element.height;
            setPoint = element.setPoint;
            differential = element.differential;
            powerCurve = element.powerCurve;
        }

        /**
         * Sets the input while on.
         *
         * @param value the input, above 0 to 500 kW
         * @param unit its unit
         * @return this builder
         * @throws IllegalArgumentException if the input is outside its range
         */
        public Builder input(double value, PowerUnit unit) {
            input = INPUT.check(value, unit);
            return this;
        }

        /**
         * Sets the height; by default, the bottom.
         *
         * @param value the share of the tank's height, 0 to 95 %
         * @param unit its unit
         * @return this builder
         * @throws IllegalArgumentException if the height is outside the tank
         */
        public Builder height(double value, RatioUnit unit) {
            height = HEIGHT.check(value, unit);
            return this;
        }

        /**
         * Sets the temperature at which the thermostat switches off.
         *
         * @param value the set point, 10 degC to 99 degC
         * @param unit its unit
         * @return this builder
         * @throws IllegalArgumentException if the set point is outside its range
         */
        public Builder setPoint(double value, TemperatureUnit unit) {
            setPoint = SET_POINT.check(value, unit);
            return this;
        }

        /**
         * Sets how far the water cools before the thermostat switches on.
         *
         * @param value the differential, 0.1 K to 40 K
         * @param unit its unit
         * @return this builder
         * @throws IllegalArgumentException if the differential is outside its range
         */
        public Builder differential(double value, TemperatureDifferenceUnit unit) {
            differential = DIFFERENTIAL.check(value, unit);
            return this;
        }

        /**
         * Sets what part of its input it takes while on; by default, all of it.
         *
         * @param value the curve
         * @return this builder
         * @throws IllegalArgumentException if the curve fails or leaves 0 to 1 at some quarter of an hour of two days between
         *     5 degC and 95 degC, or names as its next change one that does not come later
         */
        public Builder powerCurve(PowerCurve value) {
            Objects.requireNonNull(value, "power-curve");
            for (int step = 0; step <= CURVE_STEPS; step++) {
                double clock = step * CURVE_STEP;
                for (int degrees = 5; degrees <= 95; degrees += 10) {
                    double share;
                    double next;
                    try {
                        share = value.share(clock, TemperatureUnit.CELSIUS.toSi(degrees));
                        next = value.nextChange(clock);
                    } catch (RuntimeException failed) {
                        throw new IllegalArgumentException(
                                "powerCurve: fails at " + clock + " s and " + degrees + " degC: " + failed, failed);
                    }
                    if (!(share >= 0 && share <= 1)) {
                        throw new IllegalArgumentException("powerCurve: at " + clock + " s and " + degrees
                                + " degC it gives " + share + ", where 0 to 1 is needed");
                    }
                    if (!(next > clock)) {
                        throw new IllegalArgumentException("powerCurve: at " + clock + " s it names " + next
                                + " s as its next change, where a later time is needed");
                    }
                }
            }
            powerCurve = value;
            return this;
        }

        /**
         * Completes the description.
         *
         * @return the element
         * @throws InvalidDescriptionException if something is missing, or if the thermostat would switch on only below
         *     freezing
         */
        public Element build() {
            Requirements requirements = new Requirements()
                    .present("input", input)
                    .present("set-point", setPoint)
                    .present("differential", differential);
            if (requirements.met()) {
                requirements.rule(
                        setPoint - differential > 273.15,
                        "differential",
                        () -> Limits.quantity(differential, TemperatureDifferenceUnit.KELVIN)
                                + " would let the water cool to freezing before the thermostat switches on");
            }
            requirements.orThrow();
            return new Element(this);
        }
    }
}
