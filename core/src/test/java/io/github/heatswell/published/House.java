package io.github.heatswell.published;

import static io.github.heatswell.units.PressureUnit.BAR;

import io.github.heatswell.result.Event;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.simulation.Simulation;
import io.github.heatswell.study.UncertainHouse;
import io.github.heatswell.system.DrawProfile;
import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.system.Heater;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.Material;
import io.github.heatswell.system.ReliefValve;
import io.github.heatswell.system.Shell;
import io.github.heatswell.system.Site;
import io.github.heatswell.system.Start;
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
import java.time.Duration;

/** The house of a source: what it states, and one choice of what it leaves open. */
final class House {

    /**
     * Diameter over wall of a steel tank (-): 450 mm of 3.0 mm, 450 mm of 1.5 mm. Common practice, no source; domed heads,
     * flues and guessed walls are within it.
     */
    static final double[] WALL = {150, 300};
    /** Share of the volume that may be air under the top, at the pressure of the supply (-): the usual uncertainty. */
    static final double[] AIR = {
        UncertainHouse.Quantity.TANK_AIR.usual().low(),
        UncertainHouse.Quantity.TANK_AIR.usual().high()
    };
    /** Cold water where the source only says cold (degC). */
    static final double[] COLD = {10, 15};

    private final Tank.Builder tank =
            Tank.builder().standingLoss(2, ConductanceUnit.WATT_PER_KELVIN).workingPressure(Pressure.gauge(10, BAR));
    private final Heater.Builder heater = Heater.builder()
            .energy(Heater.Energy.ELECTRIC)
            .input(3, PowerUnit.KILOWATT)
            .recoveryEfficiency(100, RatioUnit.PERCENT)
            .differential(5, TemperatureDifferenceUnit.KELVIN);
    private final HotWaterSystem.Builder house = HotWaterSystem.builder()
            .site(Site.builder()
                    .altitude(0, LengthUnit.METRE)
                    .room(20, TemperatureUnit.CELSIUS)
                    .build());
    private Supply.Arrangement arrangement = Supply.Arrangement.CHECK_VALVE;
    private Pressure supply = Pressure.gauge(3, BAR);
    private double cold;
    private final double volume;

    private House(double value, VolumeUnit unit) {
        volume = unit.toSi(value);
        tank.volume(value, unit);
    }

    /** A tank of so much water; shell, cold water and set point must follow. */
    static House of(double value, VolumeUnit unit) {
        return new House(value, unit);
    }

    /** A steel cylinder of this diameter over wall, rigid if it is 0. */
    House wall(double diameterOverWall) {
        tank.shell(
                diameterOverWall == 0
                        ? Shell.rigid()
                        : Shell.cylinder(Material.STEEL, 450, 450 / diameterOverWall, LengthUnit.MILLIMETRE));
        return this;
    }

    /** Air under the top of the tank, as a share of its volume. */
    House air(double share) {
        if (share > 0) {
            tank.air(VolumeUnit.LITRE.fromSi(share * volume), VolumeUnit.LITRE);
        }
        return this;
    }

    /** A rigid tank of a textbook, which no pressure harms. */
    House textbook() {
        tank.neverFails(true);
        return wall(0);
    }

    House cold(double celsius) {
        cold = celsius;
        return this;
    }

    House to(double celsius) {
        heater.setPoint(celsius, TemperatureUnit.CELSIUS);
        return this;
    }

    House differential(double kelvin) {
        heater.differential(kelvin, TemperatureDifferenceUnit.KELVIN);
        return this;
    }

    House power(double kilowatt) {
        heater.input(kilowatt, PowerUnit.KILOWATT);
        return this;
    }

    House gas(double btuPerHour, double efficiency) {
        heater.energy(Heater.Energy.GAS)
                .input(btuPerHour, PowerUnit.BTU_PER_HOUR)
                .recoveryEfficiency(efficiency, RatioUnit.ONE);
        return this;
    }

    House stuckThermostat() {
        heater.thermostatStuck(true);
        return this;
    }

    House supply(double value, PressureUnit unit) {
        supply = Pressure.gauge(value, unit);
        return this;
    }

    House openToMains() {
        arrangement = Supply.Arrangement.DIRECT;
        return this;
    }

    House working(double value, PressureUnit unit) {
        tank.workingPressure(Pressure.gauge(value, unit));
        return this;
    }

    House layers(int number) {
        tank.layers(number).height(1.2, LengthUnit.METRE);
        return this;
    }

    House lossless() {
        tank.standingLoss(0, ConductanceUnit.WATT_PER_KELVIN);
        return this;
    }

    /** A modulating relief valve, fully open a tenth above its setting, reseating a fifth below it. */
    House relief(double value, PressureUnit unit) {
        return relief(value, unit, 0.8);
    }

    /** A modulating relief valve, fully open a tenth above its setting, reseating at a share of it. */
    House relief(double value, PressureUnit unit, double reseats) {
        house.addReliefValve(ReliefValve.builder()
                .name("relief valve")
                .setPressure(Pressure.gauge(value, unit))
                .fullLiftPressure(Pressure.gauge(value * 1.1, unit))
                .reseatPressure(Pressure.gauge(value * reseats, unit))
                .fullFlow(20, FlowUnit.LITRE_PER_MINUTE)
                .liftCharacteristic(ReliefValve.LiftCharacteristic.MODULATING)
                .build());
        return this;
    }

    House vessel(double value, VolumeUnit unit, Pressure precharge) {
        house.vessel(ExpansionVessel.builder()
                .volume(value, unit)
                .precharge(precharge)
                .acceptance(100, RatioUnit.PERCENT)
                .build());
        return this;
    }

    House draws(DrawProfile day) {
        house.draws(day);
        return this;
    }

    /** A run that starts with the tank hot instead of cold. */
    House startsAt(double celsius) {
        house.start(Start.builder().water(celsius, TemperatureUnit.CELSIUS).build());
        return this;
    }

    HotWaterSystem system() {
        return house.supply(Supply.builder()
                        .arrangement(arrangement)
                        .pressure(supply)
                        .water(cold, TemperatureUnit.CELSIUS)
                        .build())
                .tank(tank.build())
                .heater(heater.build())
                .build();
    }

    RunResult run(Duration duration) {
        RunResult run = Simulation.of(system(), duration).run();
        if (!run.audit().closes()) {
            throw new IllegalStateException("the balance of " + run.system() + " is open");
        }
        return run;
    }

    /** Gauge pressure (Pa) when the heater switches off; infinite if the tank's test pressure came first. */
    double pressureWhenHot(Duration atMost) {
        RunResult run = run(atMost);
        return run.first(Event.Kind.TEST_PRESSURE_REACHED).isPresent()
                ? Double.POSITIVE_INFINITY
                : run.gauge(run.first(Event.Kind.HEATER_OFF).orElseThrow().pressureAbsolute());
    }

    static double fahrenheit(double degrees) {
        return (degrees - 32) / 1.8;
    }
}
