package io.github.heatswell.scenarios.file;

import io.github.heatswell.scenarios.quantity.ClockTime;
import io.github.heatswell.system.Draw;
import io.github.heatswell.units.DurationUnit;
import io.github.heatswell.units.EnergyUnit;
import io.github.heatswell.units.FlowUnit;
import io.github.heatswell.units.TemperatureUnit;
import io.github.heatswell.units.VolumeUnit;

/** A draw while being read. Every number is checked at once, by a draw made for it. */
final class DrawDraft {

    /** The flow that makes any volume short enough; the largest allowed (L/min). */
    private static final double MAX_FLOW = 200;

    private double at;
    private double volume;
    private double heat;
    private double flow;
    private double mixed;

    void at(String clock) {
        at = ClockTime.read(clock);
    }

    void volume(double value, VolumeUnit unit) {
        Draw.ofVolume(0, value, unit, MAX_FLOW, FlowUnit.LITRE_PER_MINUTE);
        volume = unit.toSi(value);
    }

    void energy(double value, EnergyUnit unit) {
        heat = Draw.ofHeat(0, value, unit, MAX_FLOW, FlowUnit.LITRE_PER_MINUTE)
                .heat()
                .orElseThrow();
    }

    void flow(double value, FlowUnit unit) {
        flow = Draw.ofHeat(0, 1, EnergyUnit.JOULE, value, unit).flow();
    }

    void mixed(double value, TemperatureUnit unit) {
        Draw any = Draw.ofHeat(0, 1, EnergyUnit.JOULE, MAX_FLOW, FlowUnit.LITRE_PER_MINUTE);
        mixed = any.mixedTo(value, unit).mixedTemperature().orElseThrow();
    }

    Draw end() {
        if (volume > 0 && heat > 0) {
            throw new DraftException("energy", "has no place beside volume; one of them ends the draw");
        }
        if (volume == 0 && heat == 0) {
            throw new DraftException("volume", "is missing, and so is an energy; one of them ends the draw");
        }
        if (volume / flow >= DurationUnit.DAY.factor()) {
            throw new DraftException("volume", "takes longer than a day at this flow");
        }
        Draw draw = heat > 0
                ? Draw.ofHeat(at, heat, EnergyUnit.JOULE, flow, FlowUnit.CUBIC_METRE_PER_SECOND)
                : Draw.ofVolume(at, volume, VolumeUnit.CUBIC_METRE, flow, FlowUnit.CUBIC_METRE_PER_SECOND);
        return mixed > 0 ? draw.mixedTo(mixed, TemperatureUnit.KELVIN) : draw;
    }
}
