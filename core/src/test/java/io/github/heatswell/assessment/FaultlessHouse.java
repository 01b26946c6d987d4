package io.github.heatswell.assessment;

import static io.github.heatswell.units.PressureUnit.BAR;

import io.github.heatswell.result.Event;
import io.github.heatswell.result.RunSummary;
import io.github.heatswell.result.Totals;
import io.github.heatswell.system.Circulation;
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
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** An invented house in which nothing is wrong, taken apart so that one thing can be, and runs of it written by hand. */
public final class FaultlessHouse {

    private FaultlessHouse() {}

    /** At sea level, with a room temperature (degC). */
    static Site site(double room) {
        return Site.builder()
                .altitude(0, LengthUnit.METRE)
                .room(room, TemperatureUnit.CELSIUS)
                .build();
    }

    /** Behind a check valve at 4 bar, with vessel, temperature and pressure relief valve, cut-out and mixing valve. */
    public static HotWaterSystem.Builder house() {
        return HotWaterSystem.builder()
                .site(site(20))
                .supply(supply(4).build())
                .tank(tank(10))
                .heater(heater(60).build())
                .addPipe(PipeRun.builder()
                        .material(Material.COPPER)
                        .outsideDiameter(22, LengthUnit.MILLIMETRE)
                        .wall(1, LengthUnit.MILLIMETRE)
                        .length(12, LengthUnit.METRE)
                        .build())
                .addReliefValve(guard(7, 6).build())
                .vessel(vessel(18, 4).build());
    }

    /** Bare copper pipe, 22 mm outside and 20 mm inside, that carries hot water: 0.314 L a metre. */
    public static PipeRun hotBranch(double metres) {
        return PipeRun.builder()
                .carries(PipeRun.Carries.HOT)
                .material(Material.COPPER)
                .outsideDiameter(22, LengthUnit.MILLIMETRE)
                .wall(1, LengthUnit.MILLIMETRE)
                .length(metres, LengthUnit.METRE)
                .build();
    }

    /** Adds a loop of ten metres of bare copper pipe, whose pump rests some hours of the night. */
    public static HotWaterSystem.Builder addLoop(HotWaterSystem.Builder house, double litresPerMinute, double rests) {
        Circulation.Builder pump = Circulation.builder().flow(litresPerMinute, FlowUnit.LITRE_PER_MINUTE);
        if (rests > 0) {
            pump.pump(List.of(new Circulation.Hours(rests * 3600, 0)));
        }
        return house.circulation(pump.build())
                .addPipe(PipeRun.builder()
                        .carries(PipeRun.Carries.LOOP)
                        .material(Material.COPPER)
                        .outsideDiameter(22, LengthUnit.MILLIMETRE)
                        .wall(1, LengthUnit.MILLIMETRE)
                        .length(10, LengthUnit.METRE)
                        .build());
    }

    /** The same without its relief valve. */
    public static HotWaterSystem.Builder unguarded() {
        HotWaterSystem whole = house().build();
        return HotWaterSystem.builder()
                .site(whole.site())
                .supply(whole.supply())
                .tank(whole.tank())
                .heater(whole.heater())
                .vessel(whole.vessel().orElseThrow());
    }

    public static Supply.Builder supply(double bar) {
        return Supply.builder()
                .arrangement(Supply.Arrangement.CHECK_VALVE)
                .pressure(Pressure.gauge(bar, BAR))
                .water(10, TemperatureUnit.CELSIUS);
    }

    public static Supply.Builder reduced(double mains, ReducingValve.Builder valve) {
        return supply(mains).arrangement(Supply.Arrangement.REDUCING_VALVE).reducingValve(valve.build());
    }

    public static ReducingValve.Builder reducer(double set) {
        return ReducingValve.builder()
                .set(Pressure.gauge(set, BAR))
                .lockUpRise(0, BAR)
                .droop(0.5, BAR)
                .ratedFlow(20, FlowUnit.LITRE_PER_MINUTE);
    }

    public static Tank tank(double workingBar) {
        return Tank.builder()
                .volume(200, VolumeUnit.LITRE)
                .shell(Shell.rigid())
                .standingLoss(2, ConductanceUnit.WATT_PER_KELVIN)
                .workingPressure(Pressure.gauge(workingBar, BAR))
                .build();
    }

    /** A tank whose plate nobody has read. */
    public static Tank unread(double assumedBar) {
        return tank(10).toBuilder()
                .assumedWorkingPressure(Pressure.gauge(assumedBar, BAR))
                .build();
    }

    public static Heater.Builder heater(double celsius) {
        return Heater.builder()
                .energy(Heater.Energy.ELECTRIC)
                .input(3, PowerUnit.KILOWATT)
                .recoveryEfficiency(100, RatioUnit.PERCENT)
                .setPoint(celsius, TemperatureUnit.CELSIUS)
                .differential(4, TemperatureDifferenceUnit.KELVIN)
                .cutOut(celsius < 90 ? 95 : 110, TemperatureUnit.CELSIUS)
                .mixedTo(45, TemperatureUnit.CELSIUS);
    }

    public static Heater.Builder unmixed(double celsius) {
        return Heater.builder()
                .energy(Heater.Energy.ELECTRIC)
                .input(3, PowerUnit.KILOWATT)
                .recoveryEfficiency(100, RatioUnit.PERCENT)
                .setPoint(celsius, TemperatureUnit.CELSIUS)
                .differential(4, TemperatureDifferenceUnit.KELVIN);
    }

    /** A temperature and pressure relief valve. */
    public static ReliefValve.Builder guard(double setPressure, double reseatPressure) {
        return valve(setPressure, reseatPressure)
                .name("T&P valve")
                .opensAt(99, TemperatureUnit.CELSIUS)
                .reseatsAt(88, TemperatureUnit.CELSIUS)
                .location(ReliefValve.Location.TANK_TOP)
                .ratedInput(3, PowerUnit.KILOWATT);
    }

    /** The same without a vessel, and with a safety group on the cold inlet, listed first. */
    public static HotWaterSystem.Builder grouped(double setPressure, double reseatPressure) {
        return house().withoutVessel()
                .withoutReliefValves()
                .addReliefValve(valve(setPressure, reseatPressure)
                        .name("safety group")
                        .kind(ReliefValve.Kind.SAFETY_GROUP)
                        .build())
                .addReliefValve(guard(7, 6).build());
    }

    public static ReliefValve.Builder valve(double setPressure, double reseatPressure) {
        return ReliefValve.builder()
                .name("safety valve")
                .setPressure(Pressure.gauge(setPressure, BAR))
                .fullLiftPressure(Pressure.gauge(setPressure * 1.1, BAR))
                .reseatPressure(Pressure.gauge(reseatPressure, BAR))
                .fullFlow(20, FlowUnit.LITRE_PER_MINUTE)
                .liftCharacteristic(ReliefValve.LiftCharacteristic.MODULATING);
    }

    public static ExpansionVessel.Builder vessel(double litres, double chargeBar) {
        return ExpansionVessel.builder()
                .volume(litres, VolumeUnit.LITRE)
                .precharge(Pressure.gauge(chargeBar, BAR))
                .acceptance(60, RatioUnit.PERCENT);
    }

    /** A run that reached a highest gauge pressure and a highest temperature, in half a day. */
    public static RunSummary run(HotWaterSystem house, double peakBar, double hottestCelsius, Event... events) {
        return run(house, peakBar, 4, hottestCelsius, 0, events);
    }

    /** A run with its extremes and what the first relief valve gave off (L), in half a day. */
    public static RunSummary run(
            HotWaterSystem house, double peakBar, double lowBar, double hottest, double relieved, Event... events) {
        double air = house.site().atmosphere();
        List<Totals.Relief> relief = house.reliefValves().stream()
                .limit(1)
                .map(valve -> new Totals.Relief(valve.name(), relieved, relieved * 1e-3, events.length))
                .toList();
        double warmed = hottest + 273.15 - house.start().waterTemperature().orElse(house.coldAtStart());
        double heat = Math.max(0, warmed) * house.tank().volume() * 4.2e6;
        return new RunSummary(
                house,
                43_200,
                List.of(events),
                new RunSummary.Extremes(
                        new RunSummary.Extreme(peakBar * 1e5 + air, 3_600),
                        new RunSummary.Extreme(lowBar * 1e5 + air, 0),
                        new RunSummary.Extreme(hottest + 273.15, 3_600),
                        new RunSummary.Extreme(0, 0)),
                new Totals(relief, 0, 0, 0, 0, 0, heat, heat, 0, 0),
                new RunSummary.Audit(0, 1, 0, 1),
                new RunSummary.Numerics("by hand", 1e-9, 0, 0, 1),
                Map.of());
    }

    public static Event event(Event.Kind kind, double gaugeBar) {
        return event(kind, "", gaugeBar);
    }

    /** An event after an hour; a relief valve opens by pressure. */
    public static Event event(Event.Kind kind, String device, double gaugeBar) {
        return event(kind, device, gaugeBar, kind == Event.Kind.RELIEF_OPENED ? Event.OpeningCause.PRESSURE : null);
    }

    /** A relief valve opens by pressure, temperature or both. */
    public static Event opened(String device, double gaugeBar, Event.OpeningCause cause) {
        return event(Event.Kind.RELIEF_OPENED, device, gaugeBar, cause);
    }

    private static Event event(Event.Kind kind, String device, double gaugeBar, Event.OpeningCause cause) {
        return new Event(3_600, kind, device, gaugeBar * 1e5 + 101_325, 333.15, Optional.ofNullable(cause));
    }
}
