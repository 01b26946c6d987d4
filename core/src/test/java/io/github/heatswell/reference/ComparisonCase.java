package io.github.heatswell.reference;

import static io.github.heatswell.units.PressureUnit.BAR;
import static io.github.heatswell.units.PressureUnit.PSI;
import static io.github.heatswell.units.TemperatureUnit.CELSIUS;

import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.Material;
import io.github.heatswell.system.Parts;
import io.github.heatswell.system.ReliefValve;
import io.github.heatswell.system.Shell;
import io.github.heatswell.system.Start;
import io.github.heatswell.system.Supply;
import io.github.heatswell.units.DurationUnit;
import io.github.heatswell.units.FlowUnit;
import io.github.heatswell.units.Pressure;
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

    private static HotWaterSystem.Builder lodge(ReliefValve valve) {
        return Parts.lodge(4.2, 58).addReliefValve(valve);
    }

    private static HotWaterSystem electric() {
        return Parts.american(65, Parts.site(0, 20))
                .addPipe(Parts.pipe(Material.COPPER, 22.225, 1.143, 18))
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

    private static HotWaterSystem sealedRigid() {
        return Parts.lodge(4.2, 58)
                .site(Parts.site(0, 20))
                .supply(Parts.supply(Supply.Arrangement.CHECK_VALVE, Pressure.absolute(4.5, BAR), 10))
                .tank(Parts.tank(190, Shell.rigid(), 1.2, 10))
                .build();
    }

    private static HotWaterSystem sealedSteel() {
        return Parts.lodge(4.2, 58)
                .tank(Parts.tank(150, Parts.steel(450, 2.2), 8, 10))
                .heater(Parts.heater(11.2, 78, 24, 6))
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
                .supply(Parts.supply(Supply.Arrangement.DIRECT, Pressure.gauge(4.2, BAR), 9))
                .vessel(vessel(8, 3.5, 90).build())
                .build();
    }

    private static HotWaterSystem cooling() {
        return lodge(modulating(20))
                .tank(Parts.tank(230, Parts.steel(480, 2.2), 8, 10))
                .start(Start.builder().water(66, CELSIUS).build())
                .build();
    }

    private static HotWaterSystem coldest() {
        return lodge(modulating(20))
                .supply(Parts.supply(Supply.Arrangement.CHECK_VALVE, Pressure.gauge(4.2, BAR), 2))
                .build();
    }

    private static HotWaterSystem plastic() {
        return lodge(modulating(8))
                .addPipe(Parts.pipe(Material.PEX, 20, 2.8, 60))
                .build();
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

    private static ExpansionVessel.Builder vessel(double litres, double prechargeBar, double acceptancePercent) {
        return Parts.vessel(litres, Pressure.gauge(prechargeBar, BAR), acceptancePercent);
    }

    private static ReliefValve modulating(double litresPerMinute) {
        return relief(litresPerMinute, ReliefValve.LiftCharacteristic.MODULATING);
    }

    private static ReliefValve snap(double litresPerMinute) {
        return relief(litresPerMinute, ReliefValve.LiftCharacteristic.SNAP);
    }

    private static ReliefValve relief(double litresPerMinute, ReliefValve.LiftCharacteristic character) {
        return Parts.valve("relief", 7, 5.6)
                .fullLiftPressure(Pressure.gauge(7.7, BAR))
                .fullFlow(litresPerMinute, FlowUnit.LITRE_PER_MINUTE)
                .liftCharacteristic(character)
                .build();
    }

    @Override
    public String toString() {
        return name;
    }
}
