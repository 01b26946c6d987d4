package io.github.heatswell.charts;

import static io.github.heatswell.charts.Plants.bar;

import io.github.heatswell.result.RunResult;
import io.github.heatswell.simulation.Simulation;
import io.github.heatswell.system.Draw;
import io.github.heatswell.system.DrawProfile;
import io.github.heatswell.system.Element;
import io.github.heatswell.system.Heater;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.Leak;
import io.github.heatswell.system.MainsPressure;
import io.github.heatswell.system.Material;
import io.github.heatswell.system.ReducingValve;
import io.github.heatswell.system.ReliefFault;
import io.github.heatswell.system.ReliefValve;
import io.github.heatswell.system.ReliefValve.LiftCharacteristic;
import io.github.heatswell.system.Shell;
import io.github.heatswell.system.Start;
import io.github.heatswell.system.Supply;
import io.github.heatswell.system.Supply.Arrangement;
import io.github.heatswell.system.SupplyTemperature;
import io.github.heatswell.system.Tank;
import io.github.heatswell.units.ConductanceUnit;
import io.github.heatswell.units.DurationUnit;
import io.github.heatswell.units.FlowUnit;
import io.github.heatswell.units.LengthUnit;
import io.github.heatswell.units.PowerUnit;
import io.github.heatswell.units.PressureUnit;
import io.github.heatswell.units.RatioUnit;
import io.github.heatswell.units.TemperatureDifferenceUnit;
import io.github.heatswell.units.TemperatureUnit;
import io.github.heatswell.units.VolumeUnit;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Invented houses over a day and longer: draws, layers, streets, faults. */
public final class Houses {

    private Houses() {}

    /** A household of the European profile M and a relief valve that drips. */
    public static RunResult europeanDay() {
        return day(warm(Plants.bare())
                .tank(layered(190, 10))
                .addReliefValve(valve(LiftCharacteristic.MODULATING))
                .draws(profile("eu-m")));
    }

    /** The medium draw pattern of the United States, two elements and a vessel. */
    public static RunResult americanDay() {
        Heater heater = Heater.builder()
                .energy(Heater.Energy.ELECTRIC)
                .input(4.5, PowerUnit.KILOWATT)
                .height(10, RatioUnit.PERCENT)
                .recoveryEfficiency(98, RatioUnit.PERCENT)
                .setPoint(125, TemperatureUnit.FAHRENHEIT)
                .differential(6, TemperatureDifferenceUnit.FAHRENHEIT_DEGREE)
                .upper(Element.builder()
                        .input(4.5, PowerUnit.KILOWATT)
                        .height(70, RatioUnit.PERCENT)
                        .setPoint(125, TemperatureUnit.FAHRENHEIT)
                        .differential(6, TemperatureDifferenceUnit.FAHRENHEIT_DEGREE)
                        .build())
                .build();
        return day(Plants.bare()
                .tank(layered(190, 20))
                .heater(heater)
                .vessel(Plants.vessel(8, 4.2))
                .addReliefValve(temperatureAndPressure().build())
                .start(Start.builder().water(125, TemperatureUnit.FAHRENHEIT).build())
                .draws(profile("us-medium")));
    }

    /** The thermostat is stuck; a valve that opens on temperature holds the heat. */
    public static RunResult runaway() {
        return day(Plants.bare()
                .heater(stuck().build())
                .addReliefValve(temperatureAndPressure().build())
                .addReliefValve(valve(LiftCharacteristic.MODULATING)));
    }

    /** The same with that valve blocked. */
    public static RunResult blocked() {
        return day(Plants.bare()
                .heater(stuck().build())
                .addReliefValve(
                        temperatureAndPressure().fault(ReliefFault.blocked()).build())
                .addReliefValve(valve(LiftCharacteristic.MODULATING)));
    }

    /** The same with a high-limit cut-out. */
    public static RunResult cutOut() {
        return day(Plants.bare()
                .heater(stuck().cutOut(85, TemperatureUnit.CELSIUS).build())
                .addReliefValve(valve(LiftCharacteristic.MODULATING)));
    }

    /** A mains whose pressure rises above the relief set pressure at night. */
    public static RunResult nightMains() {
        MainsPressure mains = MainsPressure.daily(
                Map.of(5 * 3600.0, bar(7.4), 7 * 3600.0, bar(4.2), 20 * 3600.0, bar(4.2), 23 * 3600.0, bar(7.4)));
        return day(Plants.bare()
                .supply(Supply.builder()
                        .arrangement(Arrangement.CHECK_VALVE)
                        .mains(mains)
                        .water(12, TemperatureUnit.CELSIUS)
                        .build())
                .addReliefValve(valve(LiftCharacteristic.MODULATING))
                .start(Start.builder()
                        .timeOfDay(12, DurationUnit.HOUR)
                        .water(59, TemperatureUnit.CELSIUS)
                        .build())
                .draws(profile("eu-s")));
    }

    /** A reducing valve with a bypass. */
    public static RunResult bypass() {
        return day(warm(Plants.bare())
                .supply(reducing(5.0, 0.2).build())
                .addReliefValve(valve(LiftCharacteristic.MODULATING))
                .draws(profile("eu-m")));
    }

    /** A snap valve over a day with draws. */
    public static RunResult snapDay() {
        return day(warm(Plants.bare())
                .addReliefValve(valve(LiftCharacteristic.SNAP))
                .draws(profile("eu-m")));
    }

    /** The supply is shut off for two hours in the morning, with the heater on. */
    public static RunResult shutOff() {
        Draw shower = Draw.ofVolume(5.8 * 3600, 60, VolumeUnit.LITRE, 8, FlowUnit.LITRE_PER_MINUTE);
        Draw evening = Draw.ofVolume(19 * 3600, 40, VolumeUnit.LITRE, 8, FlowUnit.LITRE_PER_MINUTE);
        Supply supply = Supply.builder()
                .arrangement(Arrangement.DIRECT)
                .pressure(bar(4.2))
                .water(12, TemperatureUnit.CELSIUS)
                .addOutage(new Supply.Outage(6 * 3600, 8 * 3600))
                .build();
        return day(warm(Plants.bare())
                .supply(supply)
                .addReliefValve(valve(LiftCharacteristic.MODULATING))
                .draws(DrawProfile.of("two draws", List.of(shower, evening))));
    }

    /** A tap opened while the supply is shut off. */
    public static RunResult dryTap() {
        Draw tap = Draw.ofVolume(7 * 3600, 20, VolumeUnit.LITRE, 6, FlowUnit.LITRE_PER_MINUTE);
        Supply supply = Supply.builder()
                .arrangement(Arrangement.CHECK_VALVE)
                .pressure(bar(4.2))
                .water(12, TemperatureUnit.CELSIUS)
                .addOutage(new Supply.Outage(6 * 3600, 8 * 3600))
                .build();
        return day(warm(Plants.bare())
                .supply(supply)
                .addReliefValve(valve(LiftCharacteristic.MODULATING))
                .draws(DrawProfile.of("one tap", List.of(tap))));
    }

    /** A dripping tap that hides the expansion. */
    public static RunResult leaking() {
        return day(warm(Plants.bare())
                .addLeak(Leak.of(60, FlowUnit.MILLILITRE_PER_MINUTE, bar(4.2)))
                .addReliefValve(valve(LiftCharacteristic.MODULATING))
                .draws(profile("eu-s")));
    }

    /** A relief valve that does not close. */
    public static RunResult stuckOpen() {
        ReliefValve valve = ReliefValve.builder()
                .name("expansion valve")
                .setPressure(bar(7))
                .fullLiftPressure(bar(7.7))
                .reseatPressure(bar(5.6))
                .fullFlow(20, FlowUnit.LITRE_PER_MINUTE)
                .liftCharacteristic(LiftCharacteristic.MODULATING)
                .fault(ReliefFault.stuckOpen(2, RatioUnit.PERCENT))
                .build();
        return day(warm(Plants.bare()).addReliefValve(valve).draws(profile("eu-s")));
    }

    /** A relief valve on the fourth floor. */
    public static RunResult upstairs() {
        ReliefValve valve = ReliefValve.builder()
                .name("attic valve")
                .setPressure(bar(6))
                .fullLiftPressure(bar(6.6))
                .reseatPressure(bar(5.2))
                .fullFlow(20, FlowUnit.LITRE_PER_MINUTE)
                .liftCharacteristic(LiftCharacteristic.MODULATING)
                .height(10, LengthUnit.METRE)
                .build();
        return day(warm(Plants.bare())
                .addReliefValve(valve)
                .addReliefValve(temperatureAndPressure().build())
                .draws(profile("eu-s")));
    }

    /** A household whose cold water follows the seasons, for as many days. */
    public static HotWaterSystem seasonal() {
        return warm(Plants.bare())
                .supply(Supply.builder()
                        .arrangement(Arrangement.CHECK_VALVE)
                        .pressure(bar(4.2))
                        .water(SupplyTemperature.seasonal(
                                10, TemperatureUnit.CELSIUS, 20, TemperatureDifferenceUnit.KELVIN))
                        .build())
                .vessel(Plants.vessel(4, 4.2))
                .addReliefValve(valve(LiftCharacteristic.MODULATING))
                .start(Start.builder()
                        .dayOfYear(60)
                        .water(60, TemperatureUnit.CELSIUS)
                        .build())
                .draws(profile("eu-m"))
                .build();
    }

    /** The same without vessel: it drips all year. */
    public static HotWaterSystem seasonalWithoutVessel() {
        return seasonal().toBuilder().withoutVessel().build();
    }

    /** A month of it. */
    public static RunResult month() {
        return Simulation.of(seasonal(), Duration.ofDays(30)).run();
    }

    /** All days by name. */
    public static Map<String, RunResult> days() {
        Map<String, RunResult> days = new LinkedHashMap<>();
        days.put("eu-day", europeanDay());
        days.put("us-day", americanDay());
        days.put("runaway", runaway());
        days.put("blocked", blocked());
        days.put("cut-out", cutOut());
        days.put("night-mains", nightMains());
        days.put("bypass", bypass());
        days.put("snap-day", snapDay());
        days.put("shut-off", shutOff());
        days.put("dry-tap", dryTap());
        days.put("leaking", leaking());
        days.put("stuck-open", stuckOpen());
        days.put("upstairs", upstairs());
        return days;
    }

    /** A supply through a reducing valve set at 3.5 bar, with a bypass that opens so far (bar) above the mains. */
    public static Supply.Builder reducing(double mainsBar, double bypassBar) {
        return Supply.builder()
                .arrangement(Arrangement.REDUCING_VALVE)
                .pressure(bar(mainsBar))
                .water(12, TemperatureUnit.CELSIUS)
                .reducingValve(ReducingValve.builder()
                        .set(bar(3.5))
                        .lockUpRise(0.3, PressureUnit.BAR)
                        .droop(0.7, PressureUnit.BAR)
                        .ratedFlow(20, FlowUnit.LITRE_PER_MINUTE)
                        .bypassOpens(bypassBar, PressureUnit.BAR)
                        .build());
    }

    /** A valve on the tank's lid that minds temperature. */
    public static ReliefValve.Builder temperatureAndPressure() {
        return ReliefValve.builder()
                .name("T&P valve")
                .setPressure(bar(10))
                .fullLiftPressure(bar(11))
                .reseatPressure(bar(8.5))
                .fullFlow(30, FlowUnit.LITRE_PER_MINUTE)
                .liftCharacteristic(LiftCharacteristic.MODULATING)
                .location(ReliefValve.Location.TANK_TOP)
                .opensAt(99, TemperatureUnit.CELSIUS)
                .reseatsAt(88, TemperatureUnit.CELSIUS);
    }

    private static Heater.Builder stuck() {
        return Heater.builder()
                .energy(Heater.Energy.GAS)
                .input(11, PowerUnit.KILOWATT)
                .recoveryEfficiency(78, RatioUnit.PERCENT)
                .setPoint(60, TemperatureUnit.CELSIUS)
                .differential(6, TemperatureDifferenceUnit.KELVIN)
                .thermostatStuck(true);
    }

    private static HotWaterSystem.Builder warm(HotWaterSystem.Builder system) {
        return system.start(Start.builder().water(60, TemperatureUnit.CELSIUS).build());
    }

    private static ReliefValve valve(LiftCharacteristic character) {
        return Plants.valve("expansion valve", 7, 5.6, character);
    }

    private static Tank layered(double litres, int layers) {
        return Tank.builder()
                .volume(litres, VolumeUnit.LITRE)
                .shell(Shell.cylinder(Material.STEEL, 450, 2.2, LengthUnit.MILLIMETRE))
                .standingLoss(1.8, ConductanceUnit.WATT_PER_KELVIN)
                .workingPressure(bar(10))
                .layers(layers)
                .height(1.2, LengthUnit.METRE)
                .build();
    }

    private static DrawProfile profile(String name) {
        return DrawProfile.published().get(name);
    }

    private static RunResult day(HotWaterSystem.Builder system) {
        return Simulation.of(system.build(), Duration.ofDays(1)).run();
    }
}
