package io.github.heatswell.sizing;

import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.units.DurationUnit;
import io.github.heatswell.units.LengthUnit;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.RatioUnit;
import io.github.heatswell.units.TemperatureUnit;
import io.github.heatswell.units.VolumeUnit;

/** A described vessel as the type for others in the same place, intact and of any size and precharge. */
record VesselType(ExpansionVessel pattern) {

    /** Smallest volume (m3) that can be described. */
    static final double SMALLEST = 0.1e-3;
    /** Largest volume (m3) that can be described. */
    static final double LARGEST = 5.0;

    ExpansionVessel with(double volume, Pressure precharge) {
        return filled(pattern.acceptance())
                .height(pattern.height(), LengthUnit.METRE)
                .volume(volume, VolumeUnit.CUBIC_METRE)
                .precharge(precharge)
                .build();
    }

    /** The same with its precharge measured at the temperature of the room. */
    VesselType chargedInTheRoom() {
        ExpansionVessel.Builder builder = ExpansionVessel.builder()
                .acceptance(pattern.acceptance(), RatioUnit.ONE)
                .height(pattern.height(), LengthUnit.METRE);
        pattern.gasTimeConstant().ifPresent(tau -> builder.gasTimeConstant(tau, DurationUnit.SECOND));
        pattern.temperature().ifPresent(t -> builder.temperature(t, TemperatureUnit.KELVIN));
        return copy(builder);
    }

    /** The same without height. */
    VesselType level() {
        return copy(filled(pattern.acceptance()));
    }

    /** The same without an acceptance limit. */
    VesselType unlimited() {
        return copy(filled(1).height(pattern.height(), LengthUnit.METRE));
    }

    /** The same with gas that is charged at the temperature of the room and keeps it. */
    VesselType isothermal() {
        return copy(ExpansionVessel.builder()
                .acceptance(pattern.acceptance(), RatioUnit.ONE)
                .height(pattern.height(), LengthUnit.METRE));
    }

    private VesselType copy(ExpansionVessel.Builder builder) {
        return new VesselType(builder.volume(pattern.volume(), VolumeUnit.CUBIC_METRE)
                .precharge(pattern.precharge())
                .build());
    }

    private ExpansionVessel.Builder filled(double acceptance) {
        ExpansionVessel.Builder builder = ExpansionVessel.builder().acceptance(acceptance, RatioUnit.ONE);
        pattern.gasTimeConstant().ifPresent(tau -> builder.gasTimeConstant(tau, DurationUnit.SECOND));
        pattern.chargedAt().ifPresent(t -> builder.chargedAt(t, TemperatureUnit.KELVIN));
        pattern.temperature().ifPresent(t -> builder.temperature(t, TemperatureUnit.KELVIN));
        return builder;
    }
}
