package io.github.heatswell.reference;

import static io.github.heatswell.units.PressureUnit.BAR;

import io.github.heatswell.simulation.RandomHouses;
import io.github.heatswell.system.Circulation;
import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.system.Heater;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.Leak;
import io.github.heatswell.system.Material;
import io.github.heatswell.system.PipeRun;
import io.github.heatswell.system.ReliefFault;
import io.github.heatswell.system.ReliefValve;
import io.github.heatswell.system.ReliefValve.LiftCharacteristic;
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
import java.util.Locale;
import java.util.StringJoiner;
import org.hipparchus.random.RandomGenerator;
import org.hipparchus.random.Well19937c;

/**
 * Draws houses for the comparison: those of {@link RandomHouses}, with vessels and valves that stand to the pressure of the
 * house as they do in life: rightly charged, too low, too high, empty, full of water, or none; and a valve that is sound,
 * weeps, or opens too early. A third keeps whatever vessel and valves it was drawn with.
 *
 * <p>Left out is what the unreduced equations cannot represent: a second element, a cut-out, cold water whose temperature
 * changes during the run. Columns of more than five layers, which they could, take too long.
 */
final class RandomCases {

    private static final double KELVIN = 273.15;

    private final RandomHouses houses;
    private final RandomGenerator random;
    private int drawn;

    RandomCases(long seed) {
        houses = new RandomHouses(seed);
        random = new Well19937c(seed + 2_000_000);
    }

    /** {@return the next house, with its number and what is in it as its name} */
    ComparisonCase next() {
        while (true) {
            try {
                ComparisonCase chosen = draw();
                drawn++;
                return chosen;
            } catch (IllegalArgumentException refused) {
                // parts that do not fit each other
            }
        }
    }

    /** {@return the next house, with air under the top of its tank: 0.01 % to 2 % of it, and no more than it has room for} */
    ComparisonCase nextWithAir() {
        ComparisonCase plain = next();
        HotWaterSystem house = plain.system();
        double air = house.site().atmosphere();
        double most = 0.3
                * house.tank().volume()
                / house.tank().layers()
                * air
                / house.supplyAtStart().absolute(air);
        double filled = Math.min(most, house.tank().volume() * Math.exp(between(Math.log(1e-4), Math.log(0.02))));
        HotWaterSystem.Builder with = house.toBuilder();
        with.changeTank(
                tank -> tank.toBuilder().air(filled, VolumeUnit.CUBIC_METRE).build());
        String name = plain.name() + String.format(Locale.ROOT, ", %.3f L of air", filled * 1e3);
        return new ComparisonCase(name, with.build(), plain.hours());
    }

    private ComparisonCase draw() {
        HotWaterSystem base = houses.next();
        StringJoiner name = new StringJoiner(", ", drawn + ": ", "");
        double resting = BAR.fromSi(base.supplyAtStart().gauge(base.site().atmosphere()));
        HotWaterSystem.Builder house = HotWaterSystem.builder()
                .site(base.site())
                .supply(supply(base))
                .tank(tank(base.tank()))
                .heater(heater(base.heater()))
                .start(start(base.start(), resting))
                .draws(base.draws());
        base.piping().forEach((PipeRun pipe) -> house.addPipe(pipe));
        base.leaks().forEach((Leak leak) -> house.addLeak(leak));
        base.trappedAir().ifPresent(air -> house.trappedAir(air, VolumeUnit.CUBIC_METRE));
        name.add(base.supply().arrangement().toString());
        if (chance(1.0 / 3)) {
            name.add("any parts");
            base.reliefValves().forEach((ReliefValve valve) -> house.addReliefValve(valve));
            base.vessel().ifPresent(vessel -> house.vessel(vessel));
        } else {
            addVessel(house, base.tank(), resting, name);
            addValve(house, resting, name);
        }
        double hours = new double[] {4, 8, 16, 24}[random.nextInt(4)];
        return new ComparisonCase(name.toString(), house.build(), hours);
    }

    /** {@return the next house, with its taps at the end of a hot branch: up to 40 m of pipe, bare or insulated} */
    ComparisonCase nextWithHotBranch() {
        ComparisonCase plain = next();
        PipeRun hot = hotPipe(PipeRun.Carries.HOT);
        return new ComparisonCase(
                plain.name() + ", hot branch" + told(hot),
                plain.system().toBuilder().addPipe(hot).build(),
                plain.hours());
    }

    /** {@return the next house, with a circulation loop, whose pump rests at some hours or never, and perhaps a branch behind it} */
    ComparisonCase nextWithLoop() {
        ComparisonCase plain = next();
        PipeRun pipe = hotPipe(PipeRun.Carries.LOOP);
        Circulation.Builder pump = Circulation.builder()
                .flow(Math.exp(between(Math.log(0.5), Math.log(10))), FlowUnit.LITRE_PER_MINUTE)
                .returnHeight(chance(0.5) ? 0 : between(0, 0.9), RatioUnit.ONE);
        if (chance(0.7)) {
            pump.pump(List.of(new Circulation.Hours(random.nextInt(43_200), 43_200 + random.nextInt(43_200))));
        }
        HotWaterSystem.Builder house = plain.system().toBuilder().addPipe(pipe).circulation(pump.build());
        String name = plain.name() + ", loop" + told(pipe);
        if (chance(0.4)) {
            PipeRun hot = hotPipe(PipeRun.Carries.HOT);
            house.addPipe(hot);
            name += ", hot branch" + told(hot);
        }
        return new ComparisonCase(name, house.build(), plain.hours());
    }

    private PipeRun hotPipe(PipeRun.Carries what) {
        PipeRun.Builder pipe = PipeRun.builder()
                .carries(what)
                .material(chance(0.5) ? Material.COPPER : Material.PEX)
                .outsideDiameter(between(12, 35), LengthUnit.MILLIMETRE)
                .wall(between(0.8, 3), LengthUnit.MILLIMETRE)
                .length(Math.exp(between(Math.log(3), Math.log(40))), LengthUnit.METRE);
        if (chance(0.6)) {
            pipe.insulation(between(4, 40), LengthUnit.MILLIMETRE);
        }
        return pipe.build();
    }

    private static String told(PipeRun pipe) {
        return String.format(Locale.ROOT, " of %.2f L, %.1f W/K", pipe.volume() * 1e3, pipe.heatLoss());
    }

    private Supply supply(HotWaterSystem base) {
        double cold = base.supply().water().on(base.start().dayOfYear());
        return base.supply().toBuilder()
                .water(cold - KELVIN, TemperatureUnit.CELSIUS)
                .build();
    }

    private Tank tank(Tank base) {
        int layers = chance(0.6) ? 1 : 2 + random.nextInt(4);
        return Tank.builder()
                .volume(base.volume(), VolumeUnit.CUBIC_METRE)
                .shell(base.shell())
                .standingLoss(base.standingLoss(), ConductanceUnit.WATT_PER_KELVIN)
                .workingPressure(base.workingPressure())
                .layers(layers)
                .height(base.height().orElse(1), LengthUnit.METRE)
                .build();
    }

    private Heater heater(Heater base) {
        double height = base.elements().get(0).height();
        return Heater.builder()
                .energy(height < 0.2 ? Heater.Energy.GAS : Heater.Energy.ELECTRIC)
                .input(base.input(), PowerUnit.WATT)
                .recoveryEfficiency(base.recoveryEfficiency(), RatioUnit.ONE)
                .height(height < 0.2 ? 0 : height, RatioUnit.ONE)
                .setPoint(base.setPoint() - KELVIN, TemperatureUnit.CELSIUS)
                .differential(base.differential(), TemperatureDifferenceUnit.KELVIN)
                .thermostatStuck(base.thermostatStuck())
                .build();
    }

    private Start start(Start base, double resting) {
        Start.Builder start = Start.builder().timeOfDay(base.timeOfDay(), DurationUnit.SECOND);
        if (chance(0.4)) {
            start.water(between(5, 75), TemperatureUnit.CELSIUS);
        }
        if (chance(0.15)) {
            start.pressure(Pressure.gauge(Math.max(0.3, resting + between(-1, 2)), BAR));
        }
        return start.build();
    }

    private void addVessel(HotWaterSystem.Builder house, Tank tank, double resting, StringJoiner name) {
        ExpansionVessel.Builder vessel = ExpansionVessel.builder()
                .volume(tank.volume() * between(0.02, 0.12), VolumeUnit.CUBIC_METRE)
                .acceptance(chance(0.3) ? 100 : between(30, 95), RatioUnit.PERCENT)
                .height(chance(0.5) ? 0 : between(-1, 3), LengthUnit.METRE);
        if (chance(0.3)) {
            vessel.gasTimeConstant(between(5, 300), DurationUnit.SECOND);
        }
        double charge = Math.max(0.05, resting - between(0, 0.3));
        int kind = random.nextInt(7);
        switch (kind) {
            case 0 -> name.add("no vessel");
            case 1, 2 -> name.add("charge right");
            case 3 -> {
                name.add("charge low");
                charge = resting * between(0.2, 0.8);
            }
            case 4 -> {
                name.add("charge high");
                charge = resting + between(0.3, 3);
            }
            case 5 -> {
                name.add("charge lost");
                charge = between(0.02, 0.1);
            }
            default -> {
                name.add("full of water");
                vessel.condition(ExpansionVessel.Condition.WATERLOGGED);
            }
        }
        if (kind != 0) {
            house.vessel(vessel.precharge(Pressure.gauge(charge, BAR)).build());
        }
    }

    private void addValve(HotWaterSystem.Builder house, double resting, StringJoiner name) {
        double set = Math.max(6, Math.ceil(resting + between(0.5, 4)));
        double worn = chance(0.25) ? between(0.7, 0.97) : 1;
        double setPressure = set * worn;
        LiftCharacteristic lift = RandomHouses.lift(random);
        ReliefValve.Builder valve = ReliefValve.builder()
                .name("relief")
                .setPressure(Pressure.gauge(setPressure, BAR))
                .fullLiftPressure(Pressure.gauge(setPressure * between(1.03, 1.15), BAR))
                .reseatPressure(Pressure.gauge(setPressure * between(0.75, 0.97), BAR))
                .fullFlow(Math.exp(between(Math.log(2), Math.log(100))), FlowUnit.LITRE_PER_MINUTE)
                .liftCharacteristic(lift);
        name.add(lift.name().toLowerCase(Locale.ROOT) + (worn < 1 ? " opening early" : ""));
        if (chance(0.25)) {
            name.add("weeping");
            valve.fault(ReliefFault.leakingSeat(
                    Pressure.gauge(setPressure * between(0.3, 0.9), BAR),
                    between(1, 60),
                    FlowUnit.MILLILITRE_PER_MINUTE));
        }
        if (chance(0.3)) {
            valve.location(ReliefValve.Location.TANK_TOP)
                    .opensAt(between(92, 99), TemperatureUnit.CELSIUS)
                    .reseatsAt(between(75, 90), TemperatureUnit.CELSIUS);
        }
        house.addReliefValve(valve.build());
    }

    private double between(double low, double high) {
        return low + (high - low) * random.nextDouble();
    }

    private boolean chance(double probability) {
        return random.nextDouble() < probability;
    }
}
