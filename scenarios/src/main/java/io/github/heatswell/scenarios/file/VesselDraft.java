package io.github.heatswell.scenarios.file;

import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.system.VesselBody;
import io.github.heatswell.units.DurationUnit;
import io.github.heatswell.units.LengthUnit;
import io.github.heatswell.units.MassUnit;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.RatioUnit;
import io.github.heatswell.units.TemperatureUnit;
import io.github.heatswell.units.VolumeUnit;

/** An expansion vessel while being read: files give its plate beside the rest. */
final class VesselDraft {

    private final ExpansionVessel.Builder vessel = ExpansionVessel.builder();
    private final VesselBody.Builder body = VesselBody.builder();

    void volume(double value, VolumeUnit unit) {
        vessel.volume(value, unit);
    }

    void precharge(Pressure value) {
        vessel.precharge(value);
    }

    void acceptance(double value, RatioUnit unit) {
        vessel.acceptance(value, unit);
    }

    void gasTimeConstant(double value, DurationUnit unit) {
        vessel.gasTimeConstant(value, unit);
    }

    void chargedAt(double value, TemperatureUnit unit) {
        vessel.chargedAt(value, unit);
    }

    void temperature(double value, TemperatureUnit unit) {
        vessel.temperature(value, unit);
    }

    void height(double value, LengthUnit unit) {
        vessel.height(value, unit);
    }

    void condition(ExpansionVessel.Condition value) {
        vessel.condition(value);
    }

    void rating(Pressure value) {
        body.rating(value);
    }

    void mounting(VesselBody.Mounting value) {
        body.mounting(value);
    }

    void emptyMass(double value, MassUnit unit) {
        body.emptyMass(value, unit);
    }

    void length(double value, LengthUnit unit) {
        body.length(value, unit);
    }

    ExpansionVessel end() {
        return vessel.body(body.build()).build();
    }
}
