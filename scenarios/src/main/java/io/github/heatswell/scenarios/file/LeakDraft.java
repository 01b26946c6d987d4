package io.github.heatswell.scenarios.file;

import io.github.heatswell.system.Leak;
import io.github.heatswell.units.FlowUnit;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.PressureUnit;

/** A leak while being read. */
final class LeakDraft {

    private double flow;
    private Pressure at;

    void flow(double value, FlowUnit unit) {
        flow = Leak.of(value, unit, Pressure.gauge(1, PressureUnit.BAR)).flow();
    }

    void at(Pressure value) {
        at = Leak.of(1, FlowUnit.MILLILITRE_PER_MINUTE, value).at();
    }

    Leak end() {
        return Leak.of(flow, FlowUnit.CUBIC_METRE_PER_SECOND, at);
    }
}
