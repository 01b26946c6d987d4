package io.github.heatswell.charts;

import io.github.heatswell.place.Place;
import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.system.Heater;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.Material;
import io.github.heatswell.system.ReliefValve;
import io.github.heatswell.system.Shell;
import io.github.heatswell.system.Site;
import io.github.heatswell.system.Supply;
import io.github.heatswell.system.Tank;
import io.github.heatswell.units.ConductanceUnit;
import io.github.heatswell.units.FlowUnit;
import io.github.heatswell.units.LengthUnit;
import io.github.heatswell.units.PowerUnit;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.PressureUnit;
import io.github.heatswell.units.RatioUnit;
import io.github.heatswell.units.TemperatureDifferenceUnit;
import io.github.heatswell.units.TemperatureUnit;
import io.github.heatswell.units.VolumeUnit;

/** Invented systems for tests. */
public final class Plants {

    private Plants() {}

    /** A 190 L gas-heated tank behind a check valve, without relief valve or vessel. */
    public static HotWaterSystem.Builder bare() {
        return HotWaterSystem.builder()
                .site(site().build())
                .supply(supply(Supply.Arrangement.CHECK_VALVE, 4.2))
                .tank(Tank.builder()
                        .volume(190, VolumeUnit.LITRE)
                        .shell(Shell.cylinder(Material.STEEL, 450, 2.2, LengthUnit.MILLIMETRE))
                        .standingLoss(2.1, ConductanceUnit.WATT_PER_KELVIN)
                        .workingPressure(bar(10))
                        .build())
                .heater(Heater.builder()
                        .energy(Heater.Energy.GAS)
                        .input(11, PowerUnit.KILOWATT)
                        .recoveryEfficiency(78, RatioUnit.PERCENT)
                        .setPoint(60, TemperatureUnit.CELSIUS)
                        .differential(6, TemperatureDifferenceUnit.KELVIN)
                        .build());
    }

    private static Site.Builder site() {
        return Site.builder().altitude(120, LengthUnit.METRE).room(19, TemperatureUnit.CELSIUS);
    }

    /** The same at a place, with a relief valve that opens at 7 bar and closes at 6.3 bar. */
    static HotWaterSystem at(Place place) {
        return bare().site(site().place(place).build())
                .addReliefValve(valve("safety valve", 7, 6.3, ReliefValve.LiftCharacteristic.MODULATING))
                .build();
    }

    /** A cold feed at 12 degC. */
    public static Supply supply(Supply.Arrangement arrangement, double gaugeBar) {
        return Supply.builder()
                .arrangement(arrangement)
                .pressure(bar(gaugeBar))
                .water(12, TemperatureUnit.CELSIUS)
                .build();
    }

    /** A relief valve that is fully lifted a tenth above its set pressure. */
    public static ReliefValve valve(
            String name, double setPressure, double reseatPressure, ReliefValve.LiftCharacteristic character) {
        return ReliefValve.builder()
                .name(name)
                .setPressure(bar(setPressure))
                .fullLiftPressure(bar(setPressure * 1.1))
                .reseatPressure(bar(reseatPressure))
                .fullFlow(20, FlowUnit.LITRE_PER_MINUTE)
                .liftCharacteristic(character)
                .build();
    }

    /** A vessel that takes water up to seven tenths of its volume. */
    public static ExpansionVessel vessel(double litres, double prechargeBar) {
        return ExpansionVessel.builder()
                .volume(litres, VolumeUnit.LITRE)
                .precharge(bar(prechargeBar))
                .acceptance(70, RatioUnit.PERCENT)
                .build();
    }

    /** A gauge pressure. */
    public static Pressure bar(double gauge) {
        return Pressure.gauge(gauge, PressureUnit.BAR);
    }
}
