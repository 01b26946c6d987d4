package io.github.heatswell.reference;

import static io.github.heatswell.units.PressureUnit.BAR;
import static io.github.heatswell.units.PressureUnit.PSI;
import static io.github.heatswell.units.TemperatureUnit.CELSIUS;

import io.github.heatswell.system.Draw;
import io.github.heatswell.system.DrawProfile;
import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.system.Heater;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.Leak;
import io.github.heatswell.system.MainsPressure;
import io.github.heatswell.system.Material;
import io.github.heatswell.system.Parts;
import io.github.heatswell.system.PipeRun;
import io.github.heatswell.system.ReducingValve;
import io.github.heatswell.system.ReliefFault;
import io.github.heatswell.system.ReliefValve;
import io.github.heatswell.system.Site;
import io.github.heatswell.system.Start;
import io.github.heatswell.system.Supply;
import io.github.heatswell.system.Tank;
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

/** Houses in which people draw water and parts fail; between them they visit everything the plumbing can do. */
final class PlumbingCases {

    private static final double HOUR = 3600;

    private PlumbingCases() {}

    /** {@return all cases} */
    static List<ComparisonCase> all() {
        return List.of(
                new ComparisonCase("EU M day", house().draws(day("eu-m")).build(), 24),
                new ComparisonCase("EU M day, vessel", vesselDay(), 24),
                new ComparisonCase("EU M day, vessel, slow gas", slowGasDay(), 24),
                new ComparisonCase("US medium day, vessel", american(), 24),
                new ComparisonCase("reducing valve", reducing(6.5, null).build(), 24),
                new ComparisonCase("reducing valve, vessel", reducingWithVessel(), 24),
                new ComparisonCase(
                        "reducing valve with bypass", reducing(5.5, 0.15).build(), 24),
                new ComparisonCase(
                        "bypass, mains above the relief set", reducing(8, 0.15).build(), 24),
                new ComparisonCase("mains above the relief set at night", highNight(), 24),
                new ComparisonCase("bypass under a timetable", bypassTimetable(), 24),
                new ComparisonCase("leaking check valve", leakingCheck(), 24),
                new ComparisonCase("reducing valve with a leaking seat", leakingReducing(), 24),
                new ComparisonCase("check valve that hardly checks", wideOpenCheck(), 24),
                new ComparisonCase(
                        "check valve that hardly checks, changing mains", wideOpenCheckBelowChangingMains(), 24),
                new ComparisonCase("reducing valve that hardly closes", wideOpenReducing(), 24),
                new ComparisonCase("dripping tap", drippingTap(), 24),
                new ComparisonCase("trapped air", trappedAir(), 24),
                new ComparisonCase("thermostat stuck, T&P device", stuckThermostat(), 10),
                new ComparisonCase("relief valve stuck open", stuckOpen(), 24),
                new ComparisonCase("relief valve with a leaking seat", leakingSeat(), 24),
                new ComparisonCase("supply shut off, vessel", outage(), 24),
                new ComparisonCase("supply shut off while heating", outageWithoutVessel(), 6),
                new ComparisonCase("valve and vessel upstairs", upstairs(7, 3), 24),
                new ComparisonCase("valve and vessel in the cellar", upstairs(-4, -3), 24),
                new ComparisonCase("direct supply", directDay(), 24),
                new ComparisonCase("mixed tank, partial draw", partialDraw(1, 0).build(), 8),
                new ComparisonCase("two layers, partial draw", partialDraw(2, 0).build(), 8),
                new ComparisonCase(
                        "five layers, partial draw", partialDraw(5, 0).build(), 8),
                new ComparisonCase(
                        "five layers, element in the middle", partialDraw(5, 45).build(), 8),
                new ComparisonCase("five layers, vessel, half an EU M day", layeredDay(), 12),
                new ComparisonCase("five layers, inflow that mixes a half", mixingInlet(), 8),
                new ComparisonCase("reducing valve, long draw", longDraw(), 1),
                new ComparisonCase("two layers, draw while heating", drawWhileHeating(), 1),
                new ComparisonCase("three layers, thermostat stuck, T&P device", stuckThermostatLayers(), 10),
                new ComparisonCase("two layers, flow that grows while heating", growingFlow(), 3));
    }

    private static DrawProfile day(String name) {
        return DrawProfile.published().get(name);
    }

    /** A house by a mill: steel tank, gas burner, check valve, a little copper pipe, a relief valve on the cold branch. */
    private static HotWaterSystem.Builder house() {
        return HotWaterSystem.builder()
                .site(Parts.site(240, 18))
                .supply(check().build())
                .tank(tank(210, 2.2))
                .heater(burner().build())
                .addPipe(pipe())
                .addReliefValve(relief().build());
    }

    private static Supply.Builder check() {
        return Supply.builder()
                .arrangement(Supply.Arrangement.CHECK_VALVE)
                .pressure(Pressure.gauge(4.0, BAR))
                .water(10, CELSIUS);
    }

    private static Tank tank(double litres, double wattsPerKelvin) {
        return layered(litres, wattsPerKelvin, 1);
    }

    private static Tank layered(double litres, double wattsPerKelvin, int layers) {
        return Parts.tankBuilder(litres, Parts.steel(470, 2.3), wattsPerKelvin, 10)
                .layers(layers)
                .height(1.25, LengthUnit.METRE)
                .build();
    }

    private static Heater.Builder burner() {
        return Parts.heaterBuilder(10.5, 80, 60, 6);
    }

    private static PipeRun pipe() {
        return Parts.pipe(Material.COPPER, 22, 1, 15);
    }

    private static ReliefValve.Builder relief() {
        return Parts.valve("relief", 7, 5.6)
                .fullLiftPressure(Pressure.gauge(7.7, BAR))
                .fullFlow(18, FlowUnit.LITRE_PER_MINUTE);
    }

    private static ExpansionVessel.Builder vessel(double litres, double prechargeBar) {
        return Parts.vessel(litres, Pressure.gauge(prechargeBar, BAR), 90);
    }

    private static HotWaterSystem vesselDay() {
        return house().draws(day("eu-m")).vessel(vessel(12, 3.8).build()).build();
    }

    private static HotWaterSystem slowGasDay() {
        return house().draws(day("eu-m"))
                .vessel(vessel(12, 3.8).gasTimeConstant(30, DurationUnit.SECOND).build())
                .build();
    }

    private static HotWaterSystem american() {
        return Parts.american(
                        60,
                        Site.builder()
                                .altitude(0, LengthUnit.METRE)
                                .room(67.5, TemperatureUnit.FAHRENHEIT)
                                .build())
                .addPipe(pipe())
                .vessel(ExpansionVessel.builder()
                        .volume(2, VolumeUnit.US_GALLON)
                        .precharge(Pressure.gauge(56, PSI))
                        .acceptance(50, RatioUnit.PERCENT)
                        .build())
                .draws(day("us-medium"))
                .build();
    }

    private static Supply.Builder behindReducingValve(double mainsBar, Double bypassBar) {
        ReducingValve.Builder valve = ReducingValve.builder()
                .set(Pressure.gauge(3.5, BAR))
                .lockUpRise(0.3, BAR)
                .droop(0.7, BAR)
                .ratedFlow(25, FlowUnit.LITRE_PER_MINUTE);
        if (bypassBar != null) {
            valve.bypassOpens(bypassBar, BAR);
        }
        return Supply.builder()
                .arrangement(Supply.Arrangement.REDUCING_VALVE)
                .reducingValve(valve.build())
                .pressure(Pressure.gauge(mainsBar, BAR))
                .water(10, CELSIUS);
    }

    private static HotWaterSystem.Builder reducing(double mainsBar, Double bypassBar) {
        return house().supply(behindReducingValve(mainsBar, bypassBar).build()).draws(day("eu-m"));
    }

    private static HotWaterSystem reducingWithVessel() {
        return reducing(6.5, null).vessel(vessel(12, 3.3).build()).build();
    }

    private static MainsPressure nights(double dayBar, double nightBar) {
        return MainsPressure.daily(Map.of(
                3 * HOUR,
                Pressure.gauge(nightBar, BAR),
                6.5 * HOUR,
                Pressure.gauge(dayBar, BAR),
                19 * HOUR,
                Pressure.gauge(dayBar, BAR),
                23 * HOUR,
                Pressure.gauge(nightBar, BAR)));
    }

    private static HotWaterSystem highNight() {
        return house().supply(check().mains(nights(4.5, 7.3)).build())
                .start(Start.builder().timeOfDay(12, DurationUnit.HOUR).build())
                .build();
    }

    private static HotWaterSystem bypassTimetable() {
        return house().supply(
                        behindReducingValve(5, 0.1).mains(nights(4.2, 5.8)).build())
                .draws(day("eu-m"))
                .start(Start.builder().timeOfDay(17, DurationUnit.HOUR).build())
                .build();
    }

    private static HotWaterSystem leakingCheck() {
        return house().supply(
                        check().seatLeakage(0.012, FlowUnit.LITRE_PER_MINUTE).build())
                .draws(draws())
                .build();
    }

    private static HotWaterSystem leakingReducing() {
        return house().supply(behindReducingValve(6, null)
                        .seatLeakage(0.02, FlowUnit.LITRE_PER_MINUTE)
                        .build())
                .draws(draws())
                .build();
    }

    private static HotWaterSystem wideOpenCheck() {
        return house().supply(check().seatLeakage(1, FlowUnit.LITRE_PER_MINUTE).build())
                .draws(draws())
                .build();
    }

    private static HotWaterSystem wideOpenCheckBelowChangingMains() {
        MainsPressure mains = MainsPressure.daily(Map.of(
                0.0, Pressure.gauge(5.2, BAR), 7 * HOUR, Pressure.gauge(3.4, BAR), 16 * HOUR, Pressure.gauge(4, BAR)));
        return house().supply(check().mains(mains)
                        .seatLeakage(5, FlowUnit.LITRE_PER_MINUTE)
                        .build())
                .draws(day("eu-m"))
                .build();
    }

    private static HotWaterSystem wideOpenReducing() {
        return house().supply(behindReducingValve(6, null)
                        .seatLeakage(2, FlowUnit.LITRE_PER_MINUTE)
                        .build())
                .vessel(vessel(8, 3.5).gasTimeConstant(60, DurationUnit.SECOND).build())
                .draws(draws())
                .build();
    }

    private static DrawProfile draws() {
        return DrawProfile.of(
                "shower and bath",
                List.of(
                        Draw.ofVolume(6.25 * HOUR, 40, VolumeUnit.LITRE, 9, FlowUnit.LITRE_PER_MINUTE)
                                .mixedTo(39, CELSIUS),
                        Draw.ofVolume(18.5 * HOUR, 110, VolumeUnit.LITRE, 12, FlowUnit.LITRE_PER_MINUTE)
                                .mixedTo(55, CELSIUS),
                        Draw.ofVolume(21.75 * HOUR, 6, VolumeUnit.LITRE, 5, FlowUnit.LITRE_PER_MINUTE)));
    }

    private static HotWaterSystem drippingTap() {
        return house().addLeak(Leak.of(0.02, FlowUnit.LITRE_PER_MINUTE, Pressure.gauge(3, BAR)))
                .draws(draws())
                .build();
    }

    private static HotWaterSystem trappedAir() {
        return house().trappedAir(2.5, VolumeUnit.LITRE).draws(draws()).build();
    }

    private static ReliefValve combined() {
        return ReliefValve.builder()
                .name("T&P")
                .setPressure(Pressure.gauge(10, BAR))
                .fullLiftPressure(Pressure.gauge(11, BAR))
                .reseatPressure(Pressure.gauge(8.5, BAR))
                .fullFlow(20, FlowUnit.LITRE_PER_MINUTE)
                .liftCharacteristic(ReliefValve.LiftCharacteristic.MODULATING)
                .location(ReliefValve.Location.TANK_TOP)
                .opensAt(99, CELSIUS)
                .reseatsAt(84, CELSIUS)
                .build();
    }

    private static HotWaterSystem stuckThermostat() {
        return house().heater(burner().thermostatStuck(true).build())
                .addReliefValve(combined())
                .build();
    }

    private static HotWaterSystem stuckThermostatLayers() {
        return house().heater(burner().thermostatStuck(true).build())
                .tank(layered(210, 2.2, 3))
                .addReliefValve(combined())
                .build();
    }

    /** The mains rises, and with it what runs through a valve on top: the burner first warms the tank, then loses. */
    private static HotWaterSystem growingFlow() {
        return withRelief(relief().location(ReliefValve.Location.TANK_TOP)
                        .fault(ReliefFault.stuckOpen(15, RatioUnit.PERCENT))
                        .build())
                .supply(check().mains(MainsPressure.daily(
                                Map.of(0.0, Pressure.gauge(0.5, BAR), 3 * HOUR, Pressure.gauge(6, BAR))))
                        .build())
                .heater(burner().input(4, PowerUnit.KILOWATT)
                        .setPoint(75, CELSIUS)
                        .build())
                .tank(layered(60, 2.2, 2))
                .start(Start.builder().timeOfDay(0, DurationUnit.HOUR).build())
                .build();
    }

    /** The burner runs when the tap opens, and gives less heat than the cold water takes. */
    private static HotWaterSystem drawWhileHeating() {
        return house().tank(layered(210, 2.2, 2))
                .start(Start.builder().water(50, CELSIUS).build())
                .draws(DrawProfile.of(
                        "sixty litres",
                        List.of(Draw.ofVolume(100, 60, VolumeUnit.LITRE, 6, FlowUnit.LITRE_PER_MINUTE))))
                .build();
    }

    /** As the tank cools, ever more of the mixed water comes from it, and the outlet of the reducing valve falls. */
    private static HotWaterSystem longDraw() {
        return house().supply(behindReducingValve(6, null).build())
                .start(Start.builder().water(75, CELSIUS).build())
                .draws(DrawProfile.of(
                        "bath",
                        List.of(Draw.ofVolume(600, 150, VolumeUnit.LITRE, 12, FlowUnit.LITRE_PER_MINUTE)
                                .mixedTo(40, CELSIUS))))
                .build();
    }

    private static HotWaterSystem.Builder withRelief(ReliefValve valve) {
        return HotWaterSystem.builder()
                .site(house().build().site())
                .supply(check().build())
                .tank(tank(210, 2.2))
                .heater(burner().build())
                .addPipe(pipe())
                .addReliefValve(valve);
    }

    private static HotWaterSystem stuckOpen() {
        return withRelief(relief().fault(ReliefFault.stuckOpen(0.2, RatioUnit.PERCENT))
                        .build())
                .draws(draws())
                .build();
    }

    private static HotWaterSystem leakingSeat() {
        return withRelief(relief().fault(
                                ReliefFault.leakingSeat(Pressure.gauge(4.6, BAR), 0.03, FlowUnit.LITRE_PER_MINUTE))
                        .build())
                .draws(draws())
                .build();
    }

    private static HotWaterSystem outage() {
        return house().supply(check().addOutage(new Supply.Outage(6.1 * HOUR, 8 * HOUR))
                        .addOutage(new Supply.Outage(15 * HOUR, 20 * HOUR))
                        .build())
                .vessel(vessel(12, 2.5).build())
                .draws(DrawProfile.of(
                        "a sip",
                        List.of(
                                Draw.ofVolume(7 * HOUR, 1.2, VolumeUnit.LITRE, 4, FlowUnit.LITRE_PER_MINUTE),
                                Draw.ofVolume(9 * HOUR, 50, VolumeUnit.LITRE, 8, FlowUnit.LITRE_PER_MINUTE))))
                .build();
    }

    private static HotWaterSystem outageWithoutVessel() {
        return house().supply(check().addOutage(new Supply.Outage(0.25 * HOUR, 1 * HOUR))
                        .addOutage(new Supply.Outage(3 * HOUR, 5 * HOUR))
                        .build())
                .build();
    }

    private static HotWaterSystem upstairs(double vesselMetres, double valveMetres) {
        return withRelief(relief().height(valveMetres, LengthUnit.METRE).build())
                .vessel(vessel(5, 3.6).height(vesselMetres, LengthUnit.METRE).build())
                .draws(draws())
                .build();
    }

    private static HotWaterSystem directDay() {
        return house().supply(check().arrangement(Supply.Arrangement.DIRECT)
                        .mains(nights(3.5, 4.6))
                        .build())
                .draws(day("eu-m"))
                .build();
    }

    /** Sixty litres taken from a hot tank, which then heats up again. */
    private static HotWaterSystem.Builder partialDraw(int layers, double elementPercent) {
        return house().tank(layered(190, 1.6, layers))
                .heater(Heater.builder()
                        .energy(Heater.Energy.ELECTRIC)
                        .input(3, PowerUnit.KILOWATT)
                        .recoveryEfficiency(100, RatioUnit.PERCENT)
                        .height(elementPercent, RatioUnit.PERCENT)
                        .setPoint(60, CELSIUS)
                        .differential(5, TemperatureDifferenceUnit.KELVIN)
                        .build())
                .start(Start.builder().water(59.5, CELSIUS).build())
                .draws(DrawProfile.of(
                        "sixty litres",
                        List.of(Draw.ofVolume(0.5 * HOUR, 60, VolumeUnit.LITRE, 10, FlowUnit.LITRE_PER_MINUTE))));
    }

    /** The jet reaches two layers and half of the third. */
    private static HotWaterSystem mixingInlet() {
        return partialDraw(5, 0)
                .tank(layered(190, 1.6, 5).toBuilder()
                        .inletMixing(50, RatioUnit.PERCENT)
                        .build())
                .build();
    }

    private static HotWaterSystem layeredDay() {
        return partialDraw(5, 0)
                .draws(day("eu-m"))
                .vessel(vessel(12, 3.8).build())
                .build();
    }
}
