package io.github.heatswell.study;

import static io.github.heatswell.units.PressureUnit.BAR;

import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.Parts;
import io.github.heatswell.system.ReliefValve;
import io.github.heatswell.units.Pressure;

/** Invented houses to study and to check. */
public final class Houses {

    private Houses() {}

    /** The lodge behind a reducing valve set at 3 bar that locks up at 3.4 bar, with a relief valve and a vessel. */
    public static HotWaterSystem reduced() {
        return Parts.lodge(6, 58)
                .supply(Parts.reduced(6, Parts.reducingValve(3, 0.4, 0.9, 30)))
                .addReliefValve(valve(7))
                .vessel(vessel(18, 3))
                .build();
    }

    /** A modulating valve, fully lifted a tenth above its set pressure; it reseats a fifth below. */
    public static ReliefValve valve(double opensBar) {
        return Parts.valve("expansion valve", opensBar, 0.8 * opensBar).build();
    }

    public static ExpansionVessel vessel(double litres, double prechargeBar) {
        return Parts.vessel(litres, Pressure.gauge(prechargeBar, BAR), 60).build();
    }
}
