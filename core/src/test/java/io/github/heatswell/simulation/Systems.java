package io.github.heatswell.simulation;

import static io.github.heatswell.units.PressureUnit.BAR;
import static io.github.heatswell.units.PressureUnit.PASCAL;

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
import io.github.heatswell.units.DurationUnit;
import io.github.heatswell.units.FlowUnit;
import io.github.heatswell.units.LengthUnit;
import io.github.heatswell.units.PowerUnit;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.RatioUnit;
import io.github.heatswell.units.TemperatureDifferenceUnit;
import io.github.heatswell.units.TemperatureUnit;
import io.github.heatswell.units.VolumeUnit;

/** Invented systems the tests start from. */
final class Systems {

    /** The air pressure at sea level (Pa), where most of them stand. */
    static final double SEA_LEVEL = 101_325;

    private Systems() {}

    /** A lodge in the hills: steel tank, gas burner, check valve, a little copper pipe, nothing that gives way. */
    static HotWaterSystem.Builder lodge() {
        return HotWaterSystem.builder()
                .site(site(310, 17))
                .supply(supply(Supply.Arrangement.CHECK_VALVE, Pressure.gauge(4.2, BAR), 9))
                .tank(tank(230, steel(480, 2.2), 2.4, 10))
                .heater(heater(11.2, 78, 58, 6))
                .addPipe(copper(14));
    }

    /** A rigid, perfectly insulated tank at sea level without piping: the textbook case. */
    static HotWaterSystem.Builder textbook(double litres, double coldCelsius, double absoluteBar, double setCelsius) {
        return HotWaterSystem.builder()
                .site(site(0, 20))
                .supply(supply(Supply.Arrangement.CHECK_VALVE, Pressure.absolute(absoluteBar, BAR), coldCelsius))
                .tank(tank(litres, Shell.rigid(), 0, 12.5))
                .heater(heater(4.5, 100, setCelsius, 0.5));
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
        return Tank.builder()
                .volume(litres, VolumeUnit.LITRE)
                .shell(shell)
                .standingLoss(wattPerKelvin, ConductanceUnit.WATT_PER_KELVIN)
                .workingPressure(Pressure.gauge(workingBar, BAR))
                .build();
    }

    static Shell steel(double diameterMillimetre, double wallMillimetre) {
        return Shell.cylinder(Material.STEEL, diameterMillimetre, wallMillimetre, LengthUnit.MILLIMETRE);
    }

    static Heater heater(double kilowatt, double percent, double setCelsius, double differentialKelvin) {
        return Heater.builder()
                .energy(Heater.Energy.GAS)
                .input(kilowatt, PowerUnit.KILOWATT)
                .recoveryEfficiency(percent, RatioUnit.PERCENT)
                .setPoint(setCelsius, TemperatureUnit.CELSIUS)
                .differential(differentialKelvin, TemperatureDifferenceUnit.KELVIN)
                .build();
    }

    /** A thermostat that never opens, on a gas burner of 11.2 kW set to 58 degC. */
    static Heater.Builder runaway() {
        return Heater.builder()
                .energy(Heater.Energy.GAS)
                .input(11.2, PowerUnit.KILOWATT)
                .recoveryEfficiency(78, RatioUnit.PERCENT)
                .setPoint(58, TemperatureUnit.CELSIUS)
                .differential(6, TemperatureDifferenceUnit.KELVIN)
                .thermostatStuck(true);
    }

    /** Opens at 10 bar or at 99 degC. */
    static ReliefValve.Builder temperatureAndPressure() {
        return ReliefValve.builder()
                .name("T&P valve")
                .setPressure(Pressure.gauge(10, BAR))
                .fullLiftPressure(Pressure.gauge(11, BAR))
                .reseatPressure(Pressure.gauge(8.5, BAR))
                .fullFlow(30, FlowUnit.LITRE_PER_MINUTE)
                .liftCharacteristic(ReliefValve.LiftCharacteristic.MODULATING)
                .location(ReliefValve.Location.TANK_TOP)
                .opensAt(99, TemperatureUnit.CELSIUS)
                .reseatsAt(88, TemperatureUnit.CELSIUS);
    }

    static PipeRun copper(double metres) {
        return PipeRun.builder()
                .material(Material.COPPER)
                .outsideDiameter(22, LengthUnit.MILLIMETRE)
                .wall(0.9, LengthUnit.MILLIMETRE)
                .length(metres, LengthUnit.METRE)
                .build();
    }

    /** Opens at 7 bar, fully lifted at 7.7, reseats at 5.6, 20 L/min. */
    static ReliefValve valve(ReliefValve.LiftCharacteristic character) {
        return valve("expansion valve", character, 7, 7.7, 5.6);
    }

    static ReliefValve valve(
            String name,
            ReliefValve.LiftCharacteristic character,
            double setPressure,
            double fullLiftPressure,
            double reseatPressure) {
        return ReliefValve.builder()
                .name(name)
                .setPressure(Pressure.gauge(setPressure, BAR))
                .fullLiftPressure(Pressure.gauge(fullLiftPressure, BAR))
                .reseatPressure(Pressure.gauge(reseatPressure, BAR))
                .fullFlow(20, FlowUnit.LITRE_PER_MINUTE)
                .liftCharacteristic(character)
                .build();
    }

    /** A modulating valve that holds a pressure within a hundredth of a bar. */
    static ReliefValve holding(double absolutePascal) {
        return ReliefValve.builder()
                .name("holding valve")
                .setPressure(Pressure.absolute(absolutePascal, PASCAL))
                .fullLiftPressure(Pressure.absolute(absolutePascal + 500, PASCAL))
                .reseatPressure(Pressure.absolute(absolutePascal - 500, PASCAL))
                .fullFlow(20, FlowUnit.LITRE_PER_MINUTE)
                .liftCharacteristic(ReliefValve.LiftCharacteristic.MODULATING)
                .build();
    }

    static ExpansionVessel vessel(double litres, Pressure precharge, double acceptancePercent) {
        return ExpansionVessel.builder()
                .volume(litres, VolumeUnit.LITRE)
                .precharge(precharge)
                .acceptance(acceptancePercent, RatioUnit.PERCENT)
                .build();
    }

    static ExpansionVessel slowVessel(double litres, Pressure precharge, double timeConstant) {
        return ExpansionVessel.builder()
                .volume(litres, VolumeUnit.LITRE)
                .precharge(precharge)
                .acceptance(100, RatioUnit.PERCENT)
                .gasTimeConstant(timeConstant, DurationUnit.SECOND)
                .build();
    }

    static double celsius(double degrees) {
        return TemperatureUnit.CELSIUS.toSi(degrees);
    }
}
