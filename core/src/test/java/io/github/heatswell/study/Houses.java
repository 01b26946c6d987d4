package io.github.heatswell.study;

import static io.github.heatswell.units.PressureUnit.BAR;

import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.system.Heater;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.Material;
import io.github.heatswell.system.PipeRun;
import io.github.heatswell.system.ReducingValve;
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
import io.github.heatswell.units.RatioUnit;
import io.github.heatswell.units.TemperatureDifferenceUnit;
import io.github.heatswell.units.TemperatureUnit;
import io.github.heatswell.units.VolumeUnit;

/** Invented houses to study and to check. */
public final class Houses {

    private Houses() {}

    /** A lodge in the hills: steel tank, gas burner, check valve, a little copper pipe, nothing that gives way. */
    public static HotWaterSystem.Builder lodge(double supplyBar, double setCelsius) {
        return HotWaterSystem.builder()
                .site(site(310, 17))
                .supply(supply(Supply.Arrangement.CHECK_VALVE, Pressure.gauge(supplyBar, BAR), 9))
                .tank(tank(230, steel(480, 2.2), 2.4, 10))
                .heater(heater(11.2, 78, setCelsius, 6))
                .addPipe(copper(14));
    }

    /** A rigid, perfectly insulated tank at sea level without piping: the textbook case. */
    public static HotWaterSystem.Builder textbook(double litres, double setCelsius) {
        return HotWaterSystem.builder()
                .site(site(0, 20))
                .supply(supply(Supply.Arrangement.CHECK_VALVE, Pressure.absolute(4, BAR), 10))
                .tank(tank(litres, Shell.rigid(), 0, 12.5))
                .heater(heater(4.5, 100, setCelsius, 0.5));
    }

    /** The lodge behind a reducing valve set at 3 bar that locks up at 3.4 bar, with a relief valve and a vessel. */
    public static HotWaterSystem reduced() {
        return lodge(6, 58)
                .supply(Supply.builder()
                        .arrangement(Supply.Arrangement.REDUCING_VALVE)
                        .pressure(Pressure.gauge(6, BAR))
                        .water(9, TemperatureUnit.CELSIUS)
                        .reducingValve(ReducingValve.builder()
                                .set(Pressure.gauge(3, BAR))
                                .lockUpRise(0.4, BAR)
                                .droop(0.9, BAR)
                                .ratedFlow(30, FlowUnit.LITRE_PER_MINUTE)
                                .build())
                        .build())
                .addReliefValve(valve(7))
                .vessel(vessel(18, 3))
                .build();
    }

    public static Site site(double metres, double roomCelsius) {
        return Site.builder()
                .altitude(metres, LengthUnit.METRE)
                .room(roomCelsius, TemperatureUnit.CELSIUS)
                .build();
    }

    public static Supply supply(Supply.Arrangement arrangement, Pressure pressure, double celsius) {
        return Supply.builder()
                .arrangement(arrangement)
                .pressure(pressure)
                .water(celsius, TemperatureUnit.CELSIUS)
                .build();
    }

    public static Tank tank(double litres, Shell shell, double wattPerKelvin, double workingBar) {
        return Tank.builder()
                .volume(litres, VolumeUnit.LITRE)
                .shell(shell)
                .standingLoss(wattPerKelvin, ConductanceUnit.WATT_PER_KELVIN)
                .workingPressure(Pressure.gauge(workingBar, BAR))
                .build();
    }

    public static Shell steel(double diameterMillimetre, double wallMillimetre) {
        return Shell.cylinder(Material.STEEL, diameterMillimetre, wallMillimetre, LengthUnit.MILLIMETRE);
    }

    public static Heater heater(double kilowatt, double percent, double setCelsius, double differentialKelvin) {
        return Heater.builder()
                .energy(Heater.Energy.GAS)
                .input(kilowatt, PowerUnit.KILOWATT)
                .recoveryEfficiency(percent, RatioUnit.PERCENT)
                .setPoint(setCelsius, TemperatureUnit.CELSIUS)
                .differential(differentialKelvin, TemperatureDifferenceUnit.KELVIN)
                .build();
    }

    public static PipeRun copper(double metres) {
        return PipeRun.builder()
                .material(Material.COPPER)
                .outsideDiameter(22, LengthUnit.MILLIMETRE)
                .wall(0.9, LengthUnit.MILLIMETRE)
                .length(metres, LengthUnit.METRE)
                .build();
    }

    /** A modulating valve, fully lifted a tenth above its set pressure; it reseats a fifth below. */
    public static ReliefValve valve(double opensBar) {
        return ReliefValve.builder()
                .name("expansion valve")
                .setPressure(Pressure.gauge(opensBar, BAR))
                .fullLiftPressure(Pressure.gauge(1.1 * opensBar, BAR))
                .reseatPressure(Pressure.gauge(0.8 * opensBar, BAR))
                .fullFlow(20, FlowUnit.LITRE_PER_MINUTE)
                .liftCharacteristic(ReliefValve.LiftCharacteristic.MODULATING)
                .build();
    }

    public static ExpansionVessel vessel(double litres, double prechargeBar) {
        return ExpansionVessel.builder()
                .volume(litres, VolumeUnit.LITRE)
                .precharge(Pressure.gauge(prechargeBar, BAR))
                .acceptance(60, RatioUnit.PERCENT)
                .build();
    }
}
