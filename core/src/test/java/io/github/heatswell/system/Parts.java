package io.github.heatswell.system;

import static io.github.heatswell.units.PressureUnit.BAR;
import static io.github.heatswell.units.PressureUnit.PSI;

import io.github.heatswell.units.ConductanceUnit;
import io.github.heatswell.units.FlowUnit;
import io.github.heatswell.units.LengthUnit;
import io.github.heatswell.units.PowerUnit;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.RatioUnit;
import io.github.heatswell.units.TemperatureDifferenceUnit;
import io.github.heatswell.units.TemperatureUnit;
import io.github.heatswell.units.VolumeUnit;

/** Parts of the invented houses the tests of several packages start from, and the houses they share. */
public final class Parts {

    private Parts() {}

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
    public static HotWaterSystem.Builder textbook(
            double litres, double coldCelsius, double absoluteBar, double setCelsius) {
        return HotWaterSystem.builder()
                .site(site(0, 20))
                .supply(supply(Supply.Arrangement.CHECK_VALVE, Pressure.absolute(absoluteBar, BAR), coldCelsius))
                .tank(tank(litres, Shell.rigid(), 0, 12.5))
                .heater(heater(4.5, 100, setCelsius, 0.5));
    }

    /** An electric heater of 50 gallons and the tank it is in, as in America. */
    public static HotWaterSystem.Builder american(double supplyPsi, Site site) {
        return HotWaterSystem.builder()
                .site(site)
                .supply(Supply.builder()
                        .arrangement(Supply.Arrangement.CHECK_VALVE)
                        .pressure(Pressure.gauge(supplyPsi, PSI))
                        .water(58, TemperatureUnit.FAHRENHEIT)
                        .build())
                .tank(Tank.builder()
                        .volume(50, VolumeUnit.US_GALLON)
                        .shell(Shell.cylinder(Material.STEEL, 18, 0.075, LengthUnit.INCH))
                        .standingLoss(2.5, ConductanceUnit.BTU_PER_HOUR_FAHRENHEIT)
                        .workingPressure(Pressure.gauge(150, PSI))
                        .build())
                .heater(Heater.builder()
                        .energy(Heater.Energy.ELECTRIC)
                        .input(4.5, PowerUnit.KILOWATT)
                        .recoveryEfficiency(98, RatioUnit.PERCENT)
                        .setPoint(125, TemperatureUnit.FAHRENHEIT)
                        .differential(8, TemperatureDifferenceUnit.FAHRENHEIT_DEGREE)
                        .build());
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

    /** Water of 9 degC behind a reducing valve. */
    public static Supply reduced(double mainsBar, ReducingValve.Builder valve) {
        return Supply.builder()
                .arrangement(Supply.Arrangement.REDUCING_VALVE)
                .pressure(Pressure.gauge(mainsBar, BAR))
                .water(9, TemperatureUnit.CELSIUS)
                .reducingValve(valve.build())
                .build();
    }

    public static ReducingValve.Builder reducingValve(
            double setBar, double lockUpRiseBar, double droopBar, double litresPerMinute) {
        return ReducingValve.builder()
                .set(Pressure.gauge(setBar, BAR))
                .lockUpRise(lockUpRiseBar, BAR)
                .droop(droopBar, BAR)
                .ratedFlow(litresPerMinute, FlowUnit.LITRE_PER_MINUTE);
    }

    public static Tank tank(double litres, Shell shell, double wattPerKelvin, double workingBar) {
        return tankBuilder(litres, shell, wattPerKelvin, workingBar).build();
    }

    public static Tank.Builder tankBuilder(double litres, Shell shell, double wattPerKelvin, double workingBar) {
        return Tank.builder()
                .volume(litres, VolumeUnit.LITRE)
                .shell(shell)
                .standingLoss(wattPerKelvin, ConductanceUnit.WATT_PER_KELVIN)
                .workingPressure(Pressure.gauge(workingBar, BAR));
    }

    public static Shell steel(double diameterMillimetre, double wallMillimetre) {
        return Shell.cylinder(Material.STEEL, diameterMillimetre, wallMillimetre, LengthUnit.MILLIMETRE);
    }

    /** A gas burner. */
    public static Heater heater(double kilowatt, double percent, double setCelsius, double differentialKelvin) {
        return heaterBuilder(kilowatt, percent, setCelsius, differentialKelvin).build();
    }

    /** A gas burner. */
    public static Heater.Builder heaterBuilder(
            double kilowatt, double percent, double setCelsius, double differentialKelvin) {
        return Heater.builder()
                .energy(Heater.Energy.GAS)
                .input(kilowatt, PowerUnit.KILOWATT)
                .recoveryEfficiency(percent, RatioUnit.PERCENT)
                .setPoint(setCelsius, TemperatureUnit.CELSIUS)
                .differential(differentialKelvin, TemperatureDifferenceUnit.KELVIN);
    }

    public static PipeRun copper(double metres) {
        return pipe(Material.COPPER, 22, 0.9, metres);
    }

    public static PipeRun pipe(Material material, double outsideMillimetre, double wallMillimetre, double metres) {
        return PipeRun.builder()
                .material(material)
                .outsideDiameter(outsideMillimetre, LengthUnit.MILLIMETRE)
                .wall(wallMillimetre, LengthUnit.MILLIMETRE)
                .length(metres, LengthUnit.METRE)
                .build();
    }

    /** A modulating valve, fully lifted a tenth above its set pressure. */
    public static ReliefValve.Builder valve(String name, double opensBar, double reseatsBar) {
        return ReliefValve.builder()
                .name(name)
                .setPressure(Pressure.gauge(opensBar, BAR))
                .fullLiftPressure(Pressure.gauge(opensBar * 1.1, BAR))
                .reseatPressure(Pressure.gauge(reseatsBar, BAR))
                .fullFlow(20, FlowUnit.LITRE_PER_MINUTE)
                .liftCharacteristic(ReliefValve.LiftCharacteristic.MODULATING);
    }

    public static ExpansionVessel.Builder vessel(double litres, Pressure precharge, double acceptancePercent) {
        return ExpansionVessel.builder()
                .volume(litres, VolumeUnit.LITRE)
                .precharge(precharge)
                .acceptance(acceptancePercent, RatioUnit.PERCENT);
    }
}
