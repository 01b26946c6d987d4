package io.github.heatswell.reference;

import static io.github.heatswell.units.PressureUnit.BAR;
import static io.github.heatswell.units.PressureUnit.PSI;
import static io.github.heatswell.units.TemperatureUnit.CELSIUS;

import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.system.Heater;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.Material;
import io.github.heatswell.system.PipeRun;
import io.github.heatswell.system.ReliefValve;
import io.github.heatswell.system.Shell;
import io.github.heatswell.system.Site;
import io.github.heatswell.system.Start;
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
import java.util.List;

/**
 * A system, and how long it is followed. Between them the cases visit every regime and most ways from one to another.
 *
 * @param name what it shows
 * @param system the system
 * @param hours how long
 */
record ComparisonCase(String name, HotWaterSystem system, double hours) {

    /** {@return all cases} */
    static List<ComparisonCase> all() {
        return List.of(
                new ComparisonCase("sealed, rigid", sealedRigid(), 2),
                new ComparisonCase("sealed, elastic steel", sealedSteel(), 12),
                new ComparisonCase("modulating relief", lodge(modulating(20)).build(), 24),
                new ComparisonCase("snap relief", lodge(snap(20)).build(), 6),
                new ComparisonCase("small relief valve", lodge(modulating(0.1)).build(), 6),
                new ComparisonCase("vessel floats", vesselFloats(), 24),
                new ComparisonCase("vessel seated first", vesselSeated(), 24),
                new ComparisonCase("vessel bottoms out, then relief", vesselBottoms(), 24),
                new ComparisonCase("relief above a vessel", vesselTooSmall(modulating(20)), 24),
                new ComparisonCase("snap relief above a vessel", vesselTooSmall(snap(20)), 6),
                new ComparisonCase("vessel, gas with a time constant", slowGas(), 24),
                new ComparisonCase("snap relief above slow gas", slowGasSnap(), 6),
                new ComparisonCase("direct supply", direct(), 24),
                new ComparisonCase("cooling, fed", cooling(), 24),
                new ComparisonCase("below the density maximum", coldest(), 6),
                new ComparisonCase("plastic pipe", plastic(), 12),
                new ComparisonCase("two relief valves", twoValves(), 12),
                new ComparisonCase("electric, 50 gal", electric(), 12));
    }

    /** A lodge with an orchard: steel tank, gas burner, check valve, a little copper pipe. */
    private static HotWaterSystem.Builder lodge() {
        return HotWaterSystem.builder()
                .site(site(310, 17))
                .supply(supply(Supply.Arrangement.CHECK_VALVE, Pressure.gauge(4.2, BAR), 9))
                .tank(tank(230, Shell.cylinder(Material.STEEL, 480, 2.2, LengthUnit.MILLIMETRE), 2.4))
                .heater(burner(58))
                .addPipe(pipe(Material.COPPER, 22, 0.9, 14));
    }

    private static HotWaterSystem.Builder lodge(ReliefValve valve) {
        return lodge().addReliefValve(valve);
    }

    private static HotWaterSystem sealedRigid() {
        return lodge().site(site(0, 20))
                .supply(supply(Supply.Arrangement.CHECK_VALVE, Pressure.absolute(4.5, BAR), 10))
                .tank(tank(190, Shell.rigid(), 1.2))
                .build();
    }

    private static HotWaterSystem sealedSteel() {
        return lodge().tank(tank(150, Shell.cylinder(Material.STEEL, 450, 2.2, LengthUnit.MILLIMETRE), 8))
                .heater(burner(24))
                .build();
    }

    private static HotWaterSystem vesselFloats() {
        return lodge(modulating(20)).vessel(vessel(24, 4.0, 90).build()).build();
    }

    private static HotWaterSystem vesselSeated() {
        return lodge(modulating(20)).vessel(vessel(24, 5.1, 90).build()).build();
    }

    private static HotWaterSystem vesselBottoms() {
        return lodge(modulating(20)).vessel(vessel(12, 4.0, 20).build()).build();
    }

    private static HotWaterSystem vesselTooSmall(ReliefValve valve) {
        return lodge(valve).vessel(vessel(5, 4.1, 95).build()).build();
    }

    private static HotWaterSystem slowGas() {
        return lodge(modulating(20))
                .vessel(vessel(8, 4.4, 60)
                        .gasTimeConstant(40, DurationUnit.SECOND)
                        .build())
                .build();
    }

    private static HotWaterSystem slowGasSnap() {
        return lodge(snap(20))
                .vessel(vessel(5, 4.1, 95)
                        .gasTimeConstant(25, DurationUnit.SECOND)
                        .build())
                .build();
    }

    private static HotWaterSystem direct() {
        return lodge(modulating(20))
                .supply(supply(Supply.Arrangement.DIRECT, Pressure.gauge(4.2, BAR), 9))
                .vessel(vessel(8, 3.5, 90).build())
                .build();
    }

    private static HotWaterSystem cooling() {
        return lodge(modulating(20))
                .tank(tank(230, Shell.cylinder(Material.STEEL, 480, 2.2, LengthUnit.MILLIMETRE), 8))
                .start(Start.builder().water(66, CELSIUS).build())
                .build();
    }

    private static HotWaterSystem coldest() {
        return lodge(modulating(20))
                .supply(supply(Supply.Arrangement.CHECK_VALVE, Pressure.gauge(4.2, BAR), 2))
                .build();
    }

    private static HotWaterSystem plastic() {
        return lodge(modulating(8)).addPipe(pipe(Material.PEX, 20, 2.8, 60)).build();
    }

    /** The first valve lets out less than the water gains once it is warm, and the second one snaps open above it. */
    private static HotWaterSystem twoValves() {
        ReliefValve weeping = ReliefValve.builder()
                .name("weeping")
                .setPressure(Pressure.gauge(6.2, BAR))
                .fullLiftPressure(Pressure.gauge(8.5, BAR))
                .reseatPressure(Pressure.gauge(5.9, BAR))
                .fullFlow(0.1, FlowUnit.LITRE_PER_MINUTE)
                .liftCharacteristic(ReliefValve.LiftCharacteristic.MODULATING)
                .build();
        return lodge(snap(12)).addReliefValve(weeping).build();
    }

    private static HotWaterSystem electric() {
        return HotWaterSystem.builder()
                .site(site(0, 20))
                .supply(Supply.builder()
                        .arrangement(Supply.Arrangement.CHECK_VALVE)
                        .pressure(Pressure.gauge(65, PSI))
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
                        .build())
                .addPipe(pipe(Material.COPPER, 22.225, 1.143, 18))
                .addReliefValve(ReliefValve.builder()
                        .name("temperature and pressure")
                        .setPressure(Pressure.gauge(150, PSI))
                        .fullLiftPressure(Pressure.gauge(165, PSI))
                        .reseatPressure(Pressure.gauge(125, PSI))
                        .fullFlow(6, FlowUnit.US_GALLON_PER_MINUTE)
                        .liftCharacteristic(ReliefValve.LiftCharacteristic.MODULATING)
                        .build())
                .build();
    }

    private static Site site(double metres, double celsius) {
        return Site.builder()
                .altitude(metres, LengthUnit.METRE)
                .room(celsius, CELSIUS)
                .build();
    }

    private static Supply supply(Supply.Arrangement arrangement, Pressure pressure, double celsius) {
        return Supply.builder()
                .arrangement(arrangement)
                .pressure(pressure)
                .water(celsius, CELSIUS)
                .build();
    }

    private static Tank tank(double litres, Shell shell, double wattsPerKelvin) {
        return Tank.builder()
                .volume(litres, VolumeUnit.LITRE)
                .shell(shell)
                .standingLoss(wattsPerKelvin, ConductanceUnit.WATT_PER_KELVIN)
                .workingPressure(Pressure.gauge(10, BAR))
                .build();
    }

    private static Heater burner(double setCelsius) {
        return Heater.builder()
                .energy(Heater.Energy.GAS)
                .input(11.2, PowerUnit.KILOWATT)
                .recoveryEfficiency(78, RatioUnit.PERCENT)
                .setPoint(setCelsius, CELSIUS)
                .differential(6, TemperatureDifferenceUnit.KELVIN)
                .build();
    }

    private static PipeRun pipe(Material material, double outside, double wall, double metres) {
        return PipeRun.builder()
                .material(material)
                .outsideDiameter(outside, LengthUnit.MILLIMETRE)
                .wall(wall, LengthUnit.MILLIMETRE)
                .length(metres, LengthUnit.METRE)
                .build();
    }

    private static ExpansionVessel.Builder vessel(double litres, double prechargeBar, double acceptancePercent) {
        return ExpansionVessel.builder()
                .volume(litres, VolumeUnit.LITRE)
                .precharge(Pressure.gauge(prechargeBar, BAR))
                .acceptance(acceptancePercent, RatioUnit.PERCENT);
    }

    private static ReliefValve modulating(double litresPerMinute) {
        return relief(litresPerMinute, ReliefValve.LiftCharacteristic.MODULATING);
    }

    private static ReliefValve snap(double litresPerMinute) {
        return relief(litresPerMinute, ReliefValve.LiftCharacteristic.SNAP);
    }

    private static ReliefValve relief(double litresPerMinute, ReliefValve.LiftCharacteristic character) {
        return ReliefValve.builder()
                .name("relief")
                .setPressure(Pressure.gauge(7, BAR))
                .fullLiftPressure(Pressure.gauge(7.7, BAR))
                .reseatPressure(Pressure.gauge(5.6, BAR))
                .fullFlow(litresPerMinute, FlowUnit.LITRE_PER_MINUTE)
                .liftCharacteristic(character)
                .build();
    }

    @Override
    public String toString() {
        return name;
    }
}
