package io.github.heatswell.system;

import io.github.heatswell.units.DurationUnit;
import io.github.heatswell.units.EnergyUnit;
import io.github.heatswell.units.FlowUnit;
import io.github.heatswell.units.Limits;
import io.github.heatswell.units.QuantityFormat;
import io.github.heatswell.units.TemperatureUnit;
import io.github.heatswell.units.UnitSystem;
import io.github.heatswell.units.VolumeUnit;
import java.time.LocalTime;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * One opening of a hot tap in the course of a day: when, how much flows at the tap, what ends it, and whether cold
 * water is mixed in.
 *
 * <p>A draw ends after a given volume at the tap, or after a given amount of useful heat above cold water. With a mixed
 * temperature, the tank supplies only the share that this temperature needs; if the tank is cooler than that, it
 * supplies the whole flow.
 */
public final class Draw {

    /** Seconds in a day. */
    static final double DAY = 86_400;

    private static final Limits FLOW = Limits.above("flow", 0, 200e-3 / 60);
    private static final Limits MIXED = Limits.between("mixedTo", 293.15, 368.15);
    /** The largest flow (L/min). */
    private static final double MAX_FLOW = 200;
    /** 2777 kWh (J). */
    private static final Limits HEAT = Limits.above("heat", 0, 2777 * 3.6e6);

    private final double time;
    private final double flow;
    private final double volume;
    private final double heat;
    private final double mixedTemperature;

    private Draw(double time, double flow, double volume, double heat, double mixedTemperature) {
        this.time = time;
        this.flow = flow;
        this.volume = volume;
        this.heat = heat;
        this.mixedTemperature = mixedTemperature;
    }

    /**
     * A draw that ends after a volume has flowed: {@code ofVolume(LocalTime.of(7, 0), ...)} begins at seven in the morning.
     *
     * @param at when the tap opens
     * @param volume the volume at the tap, above 0
     * @param volumeUnit the unit of the volume
     * @param flow the flow at the tap, above 0 to 200 L/min
     * @param flowUnit the unit of the flow
     * @return the draw
     * @throws IllegalArgumentException if a number is outside its range, or if the draw would last more than a day
     */
    public static Draw ofVolume(LocalTime at, double volume, VolumeUnit volumeUnit, double flow, FlowUnit flowUnit) {
        return ofVolume(seconds(at), volume, volumeUnit, flow, flowUnit);
    }

    /**
     * A draw that ends after a volume has flowed, for callers that count in seconds: {@code ofVolume(7, ...)} begins seven seconds after
     * midnight.
     *
     * @param secondsAfterMidnight the clock time (s since midnight, not hours), 0 to less than 86 400
     * @param volume the volume at the tap, above 0
     * @param volumeUnit the unit of the volume
     * @param flow the flow at the tap, above 0 to 200 L/min
     * @param flowUnit the unit of the flow
     * @return the draw
     * @throws IllegalArgumentException if a number is outside its range, or if the draw would last more than a day
     */
    public static Draw ofVolume(
            double secondsAfterMidnight, double volume, VolumeUnit volumeUnit, double flow, FlowUnit flowUnit) {
        double si = Objects.requireNonNull(volumeUnit, "volume: its unit").toSi(volume);
        double rate = checkedFlow(flow, flowUnit);
        if (!(si > 0 && si / rate < DAY)) {
            throw new IllegalArgumentException("volume: " + Limits.quantity(volume, volumeUnit)
                    + " is outside the allowed range, above 0 and drawn within a day");
        }
        return new Draw(checkedTime(secondsAfterMidnight), rate, si, 0, 0);
    }

    /**
     * A draw that ends when an amount of useful heat has been delivered: {@code ofHeat(LocalTime.of(7, 0), ...)} begins at seven in the
     * morning.
     *
     * @param at when the tap opens
     * @param heat the heat above cold water, above 0 to 2777 kWh
     * @param heatUnit the unit of the heat
     * @param flow the flow at the tap, above 0 to 200 L/min
     * @param flowUnit the unit of the flow
     * @return the draw
     * @throws IllegalArgumentException if a number is outside its range
     */
    public static Draw ofHeat(LocalTime at, double heat, EnergyUnit heatUnit, double flow, FlowUnit flowUnit) {
        return ofHeat(seconds(at), heat, heatUnit, flow, flowUnit);
    }

    /**
     * A draw that ends when an amount of useful heat has been delivered, for callers that count in seconds: {@code ofHeat(7, ...)} begins
     * seven
     * seconds after midnight.
     *
     * @param secondsAfterMidnight the clock time (s since midnight, not hours), 0 to less than 86 400
     * @param heat the heat above cold water, above 0 to 2777 kWh
     * @param heatUnit the unit of the heat
     * @param flow the flow at the tap, above 0 to 200 L/min
     * @param flowUnit the unit of the flow
     * @return the draw
     * @throws IllegalArgumentException if a number is outside its range
     */
    public static Draw ofHeat(
            double secondsAfterMidnight, double heat, EnergyUnit heatUnit, double flow, FlowUnit flowUnit) {
        double joules = HEAT.check(heat, heatUnit);
        return new Draw(checkedTime(secondsAfterMidnight), checkedFlow(flow, flowUnit), 0, joules, 0);
    }

    /** {@return when and how much, in SI units: {@code 40 L at 8 L/min from 7 h}} */
    @Override
    public String toString() {
        QuantityFormat si = QuantityFormat.ascii(UnitSystem.SI);
        String much = heat > 0 ? si.energy(heat) : si.volume(volume);
        return much + " at " + si.flow(flow) + " from " + si.time(time)
                + (mixedTemperature > 0 ? ", mixed to " + si.temperature(mixedTemperature) : "");
    }

    /**
     * Starts a description; the time, the flow, and either a volume or an amount of heat must be set.
     *
     * @return an empty builder
     */
    public static Builder builder() {
        return new Builder();
    }

    /**
     * The same draw with cold water mixed in at the tap.
     *
     * @param value the temperature of the mixed water, 20 degC to 95 degC
     * @param unit its unit
     * @return the draw
     * @throws IllegalArgumentException if the temperature is outside its range
     */
    public Draw mixedTo(double value, TemperatureUnit unit) {
        double si = MIXED.check(value, unit);
        return new Draw(time, flow, volume, heat, si);
    }

    /**
     * When the tap opens.
     *
     * @return the clock time (s since midnight)
     */
    public double timeOfDay() {
        return time;
    }

    /**
     * What flows at the tap, hot and cold together.
     *
     * @return the flow (m3/s)
     */
    public double flow() {
        return flow;
    }

    /**
     * The volume at the tap after which the draw ends.
     *
     * @return the volume (m3), or empty if heat ends it
     */
    public OptionalDouble volume() {
        return volume > 0 ? OptionalDouble.of(volume) : OptionalDouble.empty();
    }

    /**
     * The useful heat after which the draw ends.
     *
     * @return the heat (J), or empty if a volume ends it
     */
    public OptionalDouble heat() {
        return heat > 0 ? OptionalDouble.of(heat) : OptionalDouble.empty();
    }

    /**
     * The temperature wanted at the tap.
     *
     * @return the temperature (K), or empty if no cold water is mixed in
     */
    public OptionalDouble mixedTemperature() {
        return mixedTemperature > 0 ? OptionalDouble.of(mixedTemperature) : OptionalDouble.empty();
    }

    private static double seconds(LocalTime at) {
        return Objects.requireNonNull(at, "at").toNanoOfDay() / 1e9;
    }

    private static double checkedTime(double timeOfDay) {
        if (!(timeOfDay >= 0 && timeOfDay < DAY)) {
            throw new IllegalArgumentException(
                    "at: " + Limits.quantity(DurationUnit.HOUR.fromSi(timeOfDay), DurationUnit.HOUR)
                            + " is outside the allowed range, 00:00 to 23:59:59");
        }
        return timeOfDay;
    }

    private static double checkedFlow(double flow, FlowUnit unit) {
        return FLOW.check(flow, unit);
    }

    /** Builds a {@link Draw}. */
    public static final class Builder {
        private Double time;
        private Double flow;
        private double volume;
        private double heat;
        private double mixedTemperature;

        private Builder() {}

        /**
         * Sets when the tap opens.
         *
         * @param value the time since midnight, 0 to less than a day
         * @param unit its unit
         * @return this builder
         * @throws IllegalArgumentException if the time is outside its range
         */
        public Builder timeOfDay(double value, DurationUnit unit) {
            time = checkedTime(Objects.requireNonNull(unit, "at: its unit").toSi(value));
            return this;
        }

        /**
         * Ends the draw after a volume.
         *
         * @param value the volume at the tap, above 0 and drawn within a day
         * @param unit its unit
         * @return this builder
         * @throws IllegalArgumentException if the volume is outside its range at any flow
         */
        public Builder volume(double value, VolumeUnit unit) {
            volume = ofVolume(0, value, unit, MAX_FLOW, FlowUnit.LITRE_PER_MINUTE).volume;
            return this;
        }

        /**
         * Ends the draw after an amount of useful heat.
         *
         * @param value the heat above cold water, above 0 to 2777 kWh
         * @param unit its unit
         * @return this builder
         * @throws IllegalArgumentException if the heat is outside its range
         */
        public Builder heat(double value, EnergyUnit unit) {
            heat = HEAT.check(value, unit);
            return this;
        }

        /**
         * Sets the flow at the tap.
         *
         * @param value the flow, above 0 to 200 L/min
         * @param unit its unit
         * @return this builder
         * @throws IllegalArgumentException if the flow is outside its range
         */
        public Builder flow(double value, FlowUnit unit) {
            flow = checkedFlow(value, unit);
            return this;
        }

        /**
         * Mixes cold water in at the tap; by default none is.
         *
         * @param value the temperature of the mixed water, 20 degC to 95 degC
         * @param unit its unit
         * @return this builder
         * @throws IllegalArgumentException if the temperature is outside its range
         */
        public Builder mixedTo(double value, TemperatureUnit unit) {
            mixedTemperature = MIXED.check(value, unit);
            return this;
        }

        /**
         * Completes the description.
         *
         * @return the draw
         * @throws InvalidDescriptionException if something is missing or does not belong together
         */
        public Draw build() {
            Requirements requirements = new Requirements().present("at", time).present("flow", flow);
            requirements.rule(volume == 0 || heat == 0, "energy", "cannot be combined with volume; give one of them");
            requirements.rule(volume > 0 || heat > 0, "volume", "is missing, and so is energy; give one of them");
            requirements.rule(endsWithinADay(), "volume", "takes longer than a day at this flow");
            requirements.orThrow();
            return new Draw(time, flow, volume, heat, mixedTemperature);
        }

        private boolean endsWithinADay() {
            return flow == null || volume / flow < DAY;
        }
    }
}
