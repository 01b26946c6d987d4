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
    static final double MIN_VOLUME = 0.1e-3;
    /** Largest volume (m3) that can be described. */
    static final double MAX_VOLUME = 5.0;

    ExpansionVessel with(double volume, Pressure precharge) {
        return lawful(like(pattern.acceptance(), pattern.height(), true, true))
                .volume(volume, VolumeUnit.CUBIC_METRE)
                .precharge(precharge)
                .build();
    }

    /** The same with its precharge measured at the temperature of the room. */
    VesselType chargedInTheRoom() {
        return new VesselType(alike(pattern.acceptance(), pattern.height(), true, false));
    }

    /** The same without height. */
    VesselType level() {
        return new VesselType(alike(pattern.acceptance(), 0, true, true));
    }

    /** The same without an acceptance limit. */
    VesselType unlimited() {
        return new VesselType(alike(1, pattern.height(), true, true));
    }

    /** The same with ideal gas. */
    VesselType ideal() {
        return new VesselType(sized(like(pattern.acceptance(), pattern.height(), true, true)));
    }

    /** The same with gas that is charged at the temperature of the room and keeps it. */
    VesselType isothermal() {
        return new VesselType(alike(pattern.acceptance(), pattern.height(), false, false));
    }

    private ExpansionVessel alike(double acceptance, double height, boolean warms, boolean charged) {
        return sized(lawful(like(acceptance, height, warms, charged)));
    }

    private ExpansionVessel sized(ExpansionVessel.Builder builder) {
        return builder.volume(pattern.volume(), VolumeUnit.CUBIC_METRE)
                .precharge(pattern.precharge())
                .build();
    }

    private ExpansionVessel.Builder lawful(ExpansionVessel.Builder builder) {
        pattern.gasLaw().ifPresent(builder::gasLaw);
        return builder;
    }

    /** An intact vessel; its gas takes the pattern's temperatures, and keeps the one it was charged at, only if asked to. */
    private ExpansionVessel.Builder like(double acceptance, double height, boolean warms, boolean charged) {
        ExpansionVessel.Builder builder =
                ExpansionVessel.builder().acceptance(acceptance, RatioUnit.ONE).height(height, LengthUnit.METRE);
        if (warms) {
            pattern.gasTimeConstant().ifPresent(tau -> builder.gasTimeConstant(tau, DurationUnit.SECOND));
            pattern.temperature().ifPresent(t -> builder.temperature(t, TemperatureUnit.KELVIN));
            builder.location(pattern.location());
        }
        if (charged) {
            pattern.chargedAt().ifPresent(t -> builder.chargedAt(t, TemperatureUnit.KELVIN));
        }
        return builder;
    }
}
