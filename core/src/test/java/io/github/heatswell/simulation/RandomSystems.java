package io.github.heatswell.simulation;

import static io.github.heatswell.units.PressureUnit.BAR;

import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.Material;
import io.github.heatswell.system.Parts;
import io.github.heatswell.system.PipeRun;
import io.github.heatswell.system.ReliefValve;
import io.github.heatswell.system.Shell;
import io.github.heatswell.system.Start;
import io.github.heatswell.system.Supply;
import io.github.heatswell.units.DurationUnit;
import io.github.heatswell.units.FlowUnit;
import io.github.heatswell.units.LengthUnit;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.RatioUnit;
import io.github.heatswell.units.TemperatureUnit;
import io.github.heatswell.units.VolumeUnit;
import java.util.List;
import org.hipparchus.random.RandomGenerator;
import org.hipparchus.random.Well19937c;

/** Draws valid systems from all that can be described, the same ones for the same seed. */
final class RandomSystems {

    private final RandomGenerator random;

    RandomSystems(long seed) {
        random = new Well19937c(seed);
    }

    HotWaterSystem next() {
        double supply = between(1.5, 9);
        double working = between(Math.max(6, supply + 0.5), 12.5);
        double cold = between(1, 25);
        HotWaterSystem.Builder builder = HotWaterSystem.builder()
                .site(Parts.site(between(0, 3000), between(2, 35)))
                .supply(Parts.supply(
                        chance(0.15) ? Supply.Arrangement.DIRECT : Supply.Arrangement.CHECK_VALVE,
                        Pressure.gauge(supply, BAR),
                        cold))
                .tank(Parts.tank(between(10, 500), shell(), chance(0.1) ? 0 : between(0.2, 8), working))
                .heater(Parts.heater(between(0.5, 40), between(60, 100), between(cold + 10, 90), between(0.5, 7)));
        for (int i = random.nextInt(4); i > 0; i--) {
            builder.addPipe(pipe());
        }
        for (int i = random.nextInt(3); i > 0; i--) {
            builder.addReliefValve(valve("valve " + i));
        }
        if (chance(0.6)) {
            builder.vessel(vessel(working));
        }
        if (chance(0.3)) {
            builder.start(Start.builder()
                    .water(between(1, 80), TemperatureUnit.CELSIUS)
                    .build());
        }
        return builder.build();
    }

    private Shell shell() {
        if (chance(0.1)) {
            return Shell.rigid();
        }
        Material material = List.of(Material.STEEL, Material.STAINLESS_STEEL, Material.COPPER)
                .get(random.nextInt(3));
        return Shell.cylinder(material, between(200, 900), between(0.8, 6), LengthUnit.MILLIMETRE);
    }

    private PipeRun pipe() {
        Material material = List.of(Material.COPPER, Material.STEEL, Material.PEX, Material.PE)
                .get(random.nextInt(4));
        double outside = between(10, 40);
        return PipeRun.builder()
                .material(material)
                .outsideDiameter(outside, LengthUnit.MILLIMETRE)
                .wall(outside * between(0.04, 0.15), LengthUnit.MILLIMETRE)
                .length(between(0.5, 60), LengthUnit.METRE)
                .build();
    }

    private ReliefValve valve(String name) {
        double setPressure = between(2, 12);
        return ReliefValve.builder()
                .name(name)
                .setPressure(Pressure.gauge(setPressure, BAR))
                .fullLiftPressure(Pressure.gauge(setPressure * between(1, 1.2), BAR))
                .reseatPressure(Pressure.gauge(setPressure * between(0.7, 0.99), BAR))
                .fullFlow(Math.exp(between(Math.log(0.3), Math.log(300))), FlowUnit.LITRE_PER_MINUTE)
                .liftCharacteristic(RandomHouses.lift(random))
                .build();
    }

    private ExpansionVessel vessel(double workingBar) {
        ExpansionVessel.Builder builder = ExpansionVessel.builder()
                .volume(Math.exp(between(Math.log(1), Math.log(80))), VolumeUnit.LITRE)
                .precharge(Pressure.gauge(between(0.1, workingBar), BAR))
                .acceptance(chance(0.2) ? 100 : between(20, 95), RatioUnit.PERCENT);
        if (chance(0.4)) {
            builder.gasTimeConstant(between(5, 300), DurationUnit.SECOND);
        }
        return builder.build();
    }

    private double between(double low, double high) {
        return low + (high - low) * random.nextDouble();
    }

    private boolean chance(double probability) {
        return random.nextDouble() < probability;
    }
}
