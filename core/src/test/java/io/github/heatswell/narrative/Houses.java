package io.github.heatswell.narrative;

import static io.github.heatswell.units.PressureUnit.BAR;

import io.github.heatswell.assessment.FaultlessHouse;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.simulation.Simulation;
import io.github.heatswell.system.Draw;
import io.github.heatswell.system.DrawProfile;
import io.github.heatswell.system.Heater;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.ReliefValve;
import io.github.heatswell.system.ReliefValve.LiftCharacteristic;
import io.github.heatswell.system.Start;
import io.github.heatswell.units.FlowUnit;
import io.github.heatswell.units.PowerUnit;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.TemperatureUnit;
import io.github.heatswell.units.VolumeUnit;
import java.time.Duration;
import java.util.List;

/** Invented houses to tell of, made of the faultless one. */
final class Houses {

    private Houses() {}

    /** Behind a check valve at 4.2 bar, tank for 10 bar, without relief valve or vessel. */
    static HotWaterSystem.Builder bare() {
        return FaultlessHouse.house()
                .supply(FaultlessHouse.supply(4.2).build())
                .heater(FaultlessHouse.unmixed(60).build())
                .withoutReliefValves()
                .withoutVessel();
    }

    /** The same with hot water at the start and a valve set at 7 bar. */
    static HotWaterSystem.Builder warm() {
        return bare().addReliefValve(valve("lid", 7, 5.6).build())
                .start(Start.builder().water(60, TemperatureUnit.CELSIUS).build());
    }

    /** A thermostat that never opens, on a strong heater. */
    static Heater.Builder runaway() {
        return FaultlessHouse.unmixed(60).input(11, PowerUnit.KILOWATT).thermostatStuck(true);
    }

    static ReliefValve.Builder valve(String name, double setPressure, double reseatPressure) {
        return FaultlessHouse.valve(setPressure, reseatPressure).name(name);
    }

    static ReliefValve.Builder snap(String name, double setPressure, double reseatPressure) {
        return valve(name, setPressure, reseatPressure).liftCharacteristic(LiftCharacteristic.SNAP);
    }

    /** One draw of so many litres, begun at an hour of the day. */
    static DrawProfile tap(double hour, double litres) {
        return DrawProfile.of(
                "one tap", List.of(Draw.ofVolume(hour * 3600, litres, VolumeUnit.LITRE, 6, FlowUnit.LITRE_PER_MINUTE)));
    }

    static DrawProfile published(String name) {
        return DrawProfile.published().get(name);
    }

    static RunResult day(HotWaterSystem.Builder house) {
        return Simulation.of(house.build(), Duration.ofDays(1)).run();
    }

    static Pressure bar(double gauge) {
        return Pressure.gauge(gauge, BAR);
    }
}
