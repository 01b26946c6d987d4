package io.github.heatswell.sizing;

import static io.github.heatswell.units.PressureUnit.BAR;

import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.system.Heater;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.Material;
import io.github.heatswell.system.PipeRun;
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

/** Invented houses to find vessels for. */
final class Houses {

    private Houses() {}

    /** A steel tank behind a check valve, with copper pipe, a 7 bar valve and a place for a vessel. */
    static HotWaterSystem.Builder cottage(double supplyBar) {
        return HotWaterSystem.builder()
                .site(site(310, 17))
                .supply(supply(Supply.Arrangement.CHECK_VALVE, Pressure.gauge(supplyBar, BAR), 9))
                .tank(tank(200, Shell.cylinder(Material.STEEL, 470, 2.3, LengthUnit.MILLIMETRE), 2.1, 10))
                .heater(heater(3, 62))
                .addPipe(pipe(Material.COPPER, 22, 1, 12))
                .addReliefValve(valve(7, 5.9))
                .vessel(vessel(60));
    }

    /** The textbook case: rigid, without loss or piping, at sea level. */
    static HotWaterSystem textbook(double litres, double setCelsius) {
        return HotWaterSystem.builder()
                .site(site(0, 20))
                .supply(supply(Supply.Arrangement.CHECK_VALVE, Pressure.absolute(4, BAR), 10))
                .tank(tank(litres, Shell.rigid(), 0, 12.5))
                .heater(heater(4.5, setCelsius))
                .vessel(vessel(100))
                .build();
    }

    static Site site(double metres, double roomCelsius) {
        return Site.builder()
                .altitude(metres, LengthUnit.METRE)
                .room(roomCelsius, TemperatureUnit.CELSIUS)
                .build();
    }

    static Supply supply(Supply.Arrangement arrangement, Pressure pressure, double celsius) {
        return Supply.builder()
                .arrangement(arrangement)
                .pressure(pressure)
                .water(celsius, TemperatureUnit.CELSIUS)
                .build();
    }

    static Tank tank(double litres, Shell shell, double wattPerKelvin, double workingBar) {
        return tankBuilder(litres, shell, wattPerKelvin, workingBar).build();
    }

    static Tank.Builder tankBuilder(double litres, Shell shell, double wattPerKelvin, double workingBar) {
        return Tank.builder()
                .volume(litres, VolumeUnit.LITRE)
                .shell(shell)
                .standingLoss(wattPerKelvin, ConductanceUnit.WATT_PER_KELVIN)
                .workingPressure(Pressure.gauge(workingBar, BAR));
    }

    static Heater heater(double kilowatt, double setCelsius) {
        return heaterBuilder(kilowatt, setCelsius).build();
    }

    static Heater.Builder heaterBuilder(double kilowatt, double setCelsius) {
        return Heater.builder()
                .energy(Heater.Energy.ELECTRIC)
                .input(kilowatt, PowerUnit.KILOWATT)
                .recoveryEfficiency(100, RatioUnit.PERCENT)
                .setPoint(setCelsius, TemperatureUnit.CELSIUS)
                .differential(4, TemperatureDifferenceUnit.KELVIN);
    }

    static PipeRun pipe(Material material, double outsideMillimetre, double wallMillimetre, double metres) {
        return PipeRun.builder()
                .material(material)
                .outsideDiameter(outsideMillimetre, LengthUnit.MILLIMETRE)
                .wall(wallMillimetre, LengthUnit.MILLIMETRE)
                .length(metres, LengthUnit.METRE)
                .build();
    }

    static ReliefValve valve(double opensBar, double reseatsBar) {
        return valveBuilder(opensBar, reseatsBar).build();
    }

    static ReliefValve.Builder valveBuilder(double opensBar, double reseatsBar) {
        return ReliefValve.builder()
                .name("valve " + opensBar)
                .setPressure(Pressure.gauge(opensBar, BAR))
                .fullLiftPressure(Pressure.gauge(opensBar * 1.1, BAR))
                .reseatPressure(Pressure.gauge(reseatsBar, BAR))
                .fullFlow(20, FlowUnit.LITRE_PER_MINUTE)
                .liftCharacteristic(ReliefValve.LiftCharacteristic.MODULATING);
    }

    static ExpansionVessel vessel(double acceptancePercent) {
        return vesselBuilder(acceptancePercent).build();
    }

    static ExpansionVessel.Builder vesselBuilder(double acceptancePercent) {
        return ExpansionVessel.builder()
                .volume(12, VolumeUnit.LITRE)
                .precharge(Pressure.gauge(2, BAR))
                .acceptance(acceptancePercent, RatioUnit.PERCENT);
    }

    /** A target of so many bar absolute, below every other bound. */
    static SizingTarget target(HotWaterSystem house, double absoluteBar) {
        return SizingTarget.builder(house)
                .vesselRating(Pressure.gauge(16, BAR))
                .withoutCodeCap()
                .own(Pressure.absolute(absoluteBar, BAR))
                .build();
    }
}
