package io.github.heatswell.diagnosis;

import static io.github.heatswell.units.PressureUnit.BAR;

import io.github.heatswell.system.Circulation;
import io.github.heatswell.system.Draw;
import io.github.heatswell.system.DrawProfile;
import io.github.heatswell.system.Element;
import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.system.Heater;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.Leak;
import io.github.heatswell.system.MainsPressure;
import io.github.heatswell.system.Material;
import io.github.heatswell.system.PipeRun;
import io.github.heatswell.system.ReducingValve;
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
import java.util.Map;

/** The guest wing of an invented abbey: everything a house may have, and a plain one beside it. */
final class Abbey {

    private Abbey() {}

    /** A sound house at sea level: 200 L of electrically heated water behind a check valve at 3 bar, a vessel, one relief valve. */
    static HotWaterSystem.Builder plain() {
        return HotWaterSystem.builder()
                .site(Site.builder()
                        .altitude(0, LengthUnit.METRE)
                        .room(18, TemperatureUnit.CELSIUS)
                        .build())
                .supply(checkValve(3).build())
                .tank(Tank.builder()
                        .volume(200, VolumeUnit.LITRE)
                        .shell(Shell.cylinder(Material.STEEL, 480, 2.5, LengthUnit.MILLIMETRE))
                        .standingLoss(2, ConductanceUnit.WATT_PER_KELVIN)
                        .workingPressure(Pressure.gauge(10, BAR))
                        .build())
                .heater(heater(3, 60).build())
                .addPipe(PipeRun.builder()
                        .material(Material.COPPER)
                        .outsideDiameter(22, LengthUnit.MILLIMETRE)
                        .wall(1, LengthUnit.MILLIMETRE)
                        .length(20, LengthUnit.METRE)
                        .build())
                .addReliefValve(relief("by the tank", 7).build())
                .vessel(vessel().build());
    }

    /** The plain house with a circulation loop. */
    static HotWaterSystem.Builder pumped(Circulation pump) {
        return plain().addPipe(PipeRun.builder()
                        .material(Material.COPPER)
                        .outsideDiameter(15, LengthUnit.MILLIMETRE)
                        .wall(1, LengthUnit.MILLIMETRE)
                        .length(20, LengthUnit.METRE)
                        .carries(PipeRun.Carries.LOOP)
                        .build())
                .circulation(pump);
    }

    static Supply.Builder checkValve(double bar) {
        return Supply.builder()
                .arrangement(Supply.Arrangement.CHECK_VALVE)
                .pressure(Pressure.gauge(bar, BAR))
                .water(10, TemperatureUnit.CELSIUS);
    }

    static Supply.Builder reducingValve(double mainsBar, double setBar) {
        return Supply.builder()
                .arrangement(Supply.Arrangement.REDUCING_VALVE)
                .pressure(Pressure.gauge(mainsBar, BAR))
                .water(10, TemperatureUnit.CELSIUS)
                .reducingValve(ReducingValve.builder()
                        .set(Pressure.gauge(setBar, BAR))
                        .lockUpRise(0.2, BAR)
                        .droop(0.6, BAR)
                        .ratedFlow(25, FlowUnit.LITRE_PER_MINUTE)
                        .bypassOpens(0.3, BAR)
                        .build());
    }

    static Heater.Builder heater(double kilowatt, double celsius) {
        return Heater.builder()
                .energy(Heater.Energy.ELECTRIC)
                .input(kilowatt, PowerUnit.KILOWATT)
                .recoveryEfficiency(98, RatioUnit.PERCENT)
                .setPoint(celsius, TemperatureUnit.CELSIUS)
                .differential(5, TemperatureDifferenceUnit.KELVIN);
    }

    static ReliefValve.Builder relief(String name, double bar) {
        return ReliefValve.builder()
                .name(name)
                .setPressure(Pressure.gauge(bar, BAR))
                .fullLiftPressure(Pressure.gauge(1.1 * bar, BAR))
                .reseatPressure(Pressure.gauge(0.8 * bar, BAR))
                .fullFlow(20, FlowUnit.LITRE_PER_MINUTE)
                .liftCharacteristic(ReliefValve.LiftCharacteristic.MODULATING);
    }

    static ExpansionVessel.Builder vessel() {
        return ExpansionVessel.builder()
                .volume(12, VolumeUnit.LITRE)
                .precharge(Pressure.gauge(3, BAR))
                .acceptance(80, RatioUnit.PERCENT);
    }

    /** The same wing with everything a description can hold. */
    static HotWaterSystem everything() {
        Supply supply = reducingValve(6, 3).build().toBuilder()
                .mains(MainsPressure.daily(Map.of(0.0, Pressure.gauge(6, BAR), 43_200.0, Pressure.gauge(5, BAR))))
                .addOutage(new Supply.Outage(1_000, 2_000))
                .build();
        Element upper = Element.builder()
                .input(2, PowerUnit.KILOWATT)
                .setPoint(62, TemperatureUnit.CELSIUS)
                .differential(4, TemperatureDifferenceUnit.KELVIN)
                .height(70, RatioUnit.PERCENT)
                .build();
        return plain().supply(supply)
                .heater(heater(3, 60)
                        .height(10, RatioUnit.PERCENT)
                        .upper(upper)
                        .simultaneous(true)
                        .cutOut(85, TemperatureUnit.CELSIUS)
                        .mixedTo(48, TemperatureUnit.CELSIUS)
                        .build())
                .withoutReliefValves()
                .addReliefValve(relief("at the feed", 6).build())
                .addReliefValve(relief("by the tank", 7)
                        .location(ReliefValve.Location.TANK_TOP)
                        .height(1.2, LengthUnit.METRE)
                        .opensAt(99, TemperatureUnit.CELSIUS)
                        .reseatsAt(90, TemperatureUnit.CELSIUS)
                        .ratedInput(11, PowerUnit.KILOWATT)
                        .build())
                .vessel(vessel().gasTimeConstant(90, DurationUnit.SECOND)
                        .chargedAt(20, TemperatureUnit.CELSIUS)
                        .temperature(25, TemperatureUnit.CELSIUS)
                        .height(1.5, LengthUnit.METRE)
                        .rating(Pressure.gauge(8, BAR))
                        .mounting(ExpansionVessel.Mounting.HANGING)
                        .build())
                .trappedAir(0.1, VolumeUnit.LITRE)
                .addLeak(Leak.of(1, FlowUnit.MILLILITRE_PER_MINUTE, Pressure.gauge(3, BAR)))
                .draws(DrawProfile.of(
                        "a bath", List.of(Draw.ofVolume(30_000, 60, VolumeUnit.LITRE, 8, FlowUnit.LITRE_PER_MINUTE))))
                .gaugeHeight(1, LengthUnit.METRE)
                .start(Start.builder()
                        .timeOfDay(5, DurationUnit.HOUR)
                        .dayOfYear(40)
                        .water(15, TemperatureUnit.CELSIUS)
                        .pressure(Pressure.gauge(3.7, BAR))
                        .build())
                .build();
    }
}
