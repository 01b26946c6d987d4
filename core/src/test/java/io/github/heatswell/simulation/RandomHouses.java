package io.github.heatswell.simulation;

import static io.github.heatswell.units.PressureUnit.BAR;

import io.github.heatswell.system.Draw;
import io.github.heatswell.system.DrawProfile;
import io.github.heatswell.system.Element;
import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.system.Heater;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.InvalidDescriptionException;
import io.github.heatswell.system.Leak;
import io.github.heatswell.system.MainsPressure;
import io.github.heatswell.system.ReducingValve;
import io.github.heatswell.system.ReliefFault;
import io.github.heatswell.system.ReliefValve;
import io.github.heatswell.system.ReliefValve.LiftCharacteristic;
import io.github.heatswell.system.Start;
import io.github.heatswell.system.Supply;
import io.github.heatswell.system.SupplyTemperature;
import io.github.heatswell.system.Tank;
import io.github.heatswell.units.ConductanceUnit;
import io.github.heatswell.units.DurationUnit;
import io.github.heatswell.units.EnergyUnit;
import io.github.heatswell.units.FlowUnit;
import io.github.heatswell.units.LengthUnit;
import io.github.heatswell.units.PowerUnit;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.RatioUnit;
import io.github.heatswell.units.TemperatureDifferenceUnit;
import io.github.heatswell.units.TemperatureUnit;
import io.github.heatswell.units.VolumeUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.hipparchus.random.RandomGenerator;
import org.hipparchus.random.Well19937c;

/**
 * Draws houses with everything that can be in them: any feed, draws, layers, leaks, air, heights and faults; on demand, with air under the
 * top of the tank and several vessels.
 */
public final class RandomHouses {

    private final RandomGenerator random;
    private final RandomSystems simple;
    /** Draws air and further vessels apart from the rest, so that the houses stay what they are otherwise; null for none. */
    private final RandomGenerator further;

    private final List<String> profiles = List.copyOf(DrawProfile.published().keySet());

    /**
     * Draws from a seed.
     *
     * @param seed the same houses come from the same seed
     */
    public RandomHouses(long seed) {
        this(seed, null);
    }

    private RandomHouses(long seed, RandomGenerator further) {
        this.further = further;
        random = new Well19937c(seed);
        simple = new RandomSystems(seed + 1_000_000);
    }

    /**
     * {@return houses of a seed, of which half have air under the top of the tank and half have up to three vessels more}
     *
     * @param seed the seed
     */
    public static RandomHouses withAirAndVessels(long seed) {
        return new RandomHouses(seed, new Well19937c(seed + 3_000_000));
    }

    /**
     * {@return the next house in which something disturbs the feed: always an outage, often a warm feed, a leaking seat, layers or a
     * tap mixed below the feed}
     */
    public HotWaterSystem nextDisturbed() {
        while (true) {
            try {
                return disturbed(next());
            } catch (InvalidDescriptionException refused) {
                // parts that do not fit each other
            }
        }
    }

    private HotWaterSystem disturbed(HotWaterSystem house) {
        Supply.Builder supply = house.supply().toBuilder();
        double from = between(0, 50_000);
        supply.addOutage(new Supply.Outage(70_000, 70_000 + between(60, 10_000)));
        if (house.supply().outages().isEmpty()) {
            supply.addOutage(new Supply.Outage(from, from + between(60, 15_000)));
        }
        if (chance(0.4)) {
            supply.water(between(25, 40), TemperatureUnit.CELSIUS);
        }
        if (house.supply().arrangement() != Supply.Arrangement.DIRECT && chance(0.5)) {
            supply.seatLeakage(Math.exp(between(Math.log(1), Math.log(10_000))), FlowUnit.MILLILITRE_PER_MINUTE);
        }
        HotWaterSystem.Builder disturbed = house.toBuilder().supply(supply.build());
        if (chance(0.7)) {
            disturbed.draws(draws());
        }
        return disturbed.build();
    }

    /** {@return the next house that makes sense as a whole; what the builders refuse is thrown away} */
    public HotWaterSystem next() {
        while (true) {
            try {
                return furnished(house());
            } catch (InvalidDescriptionException refused) {
                // parts that do not fit each other
            }
        }
    }

    private HotWaterSystem furnished(HotWaterSystem plain) {
        if (further == null) {
            return plain;
        }
        HotWaterSystem.Builder house = plain.toBuilder();
        if (further.nextBoolean()) {
            double most = 0.1 * plain.tank().volume() / plain.tank().layers();
            double air = most * Math.pow(1e-3, further.nextDouble());
            house.changeTank(
                    tank -> tank.toBuilder().air(air, VolumeUnit.CUBIC_METRE).build());
        }
        if (further.nextBoolean()) {
            for (int i = further.nextInt(3); i >= 0; i--) {
                house.addVessel(furtherVessel("further " + i, i == 1, plain.tank()));
            }
        }
        return house.build();
    }

    private ExpansionVessel furtherVessel(String name, boolean inTank, Tank tank) {
        ExpansionVessel.Builder vessel = ExpansionVessel.builder()
                .name(name)
                .volume(Math.pow(60, further.nextDouble()), VolumeUnit.LITRE)
                .precharge(Pressure.gauge(0.2 + 6 * further.nextDouble(), BAR))
                .acceptance(further.nextBoolean() ? 100 : 20 + 75 * further.nextDouble(), RatioUnit.PERCENT)
                .location(inTank ? ExpansionVessel.Location.IN_TANK : ExpansionVessel.Location.BRANCH);
        double share = further.nextDouble();
        vessel.height(inTank ? share * tank.height().orElse(1) : -1 + 4 * share, LengthUnit.METRE);
        if (further.nextBoolean()) {
            vessel.gasTimeConstant(5 + 300 * further.nextDouble(), DurationUnit.SECOND);
        }
        return vessel.build();
    }

    private HotWaterSystem house() {
        HotWaterSystem base = simple.next();
        HotWaterSystem.Builder house = HotWaterSystem.builder()
                .site(base.site())
                .supply(supply())
                .tank(tank(base.tank()))
                .heater(heater())
                .gaugeHeight(between(-2, 8), LengthUnit.METRE)
                .start(Start.builder()
                        .timeOfDay(between(0, 23.9), DurationUnit.HOUR)
                        .dayOfYear(1 + random.nextInt(365))
                        .build());
        base.piping().forEach(house::addPipe);
        for (int i = random.nextInt(4); i > 0; i--) {
            house.addReliefValve(valve("valve " + i));
        }
        if (chance(0.6)) {
            house.vessel(vessel());
        }
        if (chance(0.2) && !base.piping().isEmpty()) {
            house.trappedAir(between(0.01, 0.4), VolumeUnit.LITRE);
        }
        if (chance(0.3)) {
            house.addLeak(Leak.of(between(1, 300), FlowUnit.MILLILITRE_PER_MINUTE, Pressure.gauge(between(1, 6), BAR)));
        }
        if (chance(0.7)) {
            house.draws(draws());
        }
        return house.build();
    }

    private Supply supply() {
        double mains = between(1.5, 9);
        Supply.Builder supply = Supply.builder()
                .mains(
                        chance(0.6)
                                ? MainsPressure.constant(Pressure.gauge(mains, BAR))
                                : MainsPressure.daily(Map.of(
                                        between(0, 40_000), Pressure.gauge(mains, BAR),
                                        between(40_001, 86_000), Pressure.gauge(between(1.5, 9), BAR))))
                .water(
                        chance(0.5)
                                ? SupplyTemperature.constant(between(2, 25), TemperatureUnit.CELSIUS)
                                : SupplyTemperature.seasonal(
                                        between(5, 25),
                                        TemperatureUnit.CELSIUS,
                                        between(0, 25),
                                        TemperatureDifferenceUnit.KELVIN));
        double kind = random.nextDouble();
        if (kind < 0.15) {
            supply.arrangement(Supply.Arrangement.DIRECT);
        } else if (kind < 0.5) {
            supply.arrangement(Supply.Arrangement.CHECK_VALVE);
        } else {
            supply.arrangement(Supply.Arrangement.REDUCING_VALVE).reducingValve(reducingValve());
        }
        if (kind >= 0.15 && chance(0.3)) {
            supply.seatLeakage(between(0, 50), FlowUnit.MILLILITRE_PER_MINUTE);
        }
        if (chance(0.15)) {
            double from = between(0, 60_000);
            supply.addOutage(new Supply.Outage(from, from + between(60, 20_000)));
        }
        return supply.build();
    }

    private ReducingValve reducingValve() {
        ReducingValve.Builder valve = ReducingValve.builder()
                .set(Pressure.gauge(between(1.5, 6), BAR))
                .lockUpRise(chance(0.2) ? 0 : between(0, 0.8), BAR)
                .droop(chance(0.2) ? 0 : between(0, 1.5), BAR)
                .ratedFlow(between(10, 40), FlowUnit.LITRE_PER_MINUTE);
        if (chance(0.4)) {
            valve.bypassOpens(between(0, 0.6), BAR);
        }
        return valve.build();
    }

    private Tank tank(Tank base) {
        int layers = chance(0.4) ? 1 : 2 + random.nextInt(12);
        return Tank.builder()
                .volume(VolumeUnit.LITRE.fromSi(base.volume()), VolumeUnit.LITRE)
                .shell(base.shell())
                .standingLoss(base.standingLoss(), ConductanceUnit.WATT_PER_KELVIN)
                .workingPressure(base.workingPressure())
                .layers(layers)
                .height(between(0.4, 2.2), LengthUnit.METRE)
                .build();
    }

    private Heater heater() {
        Heater.Builder heater = Heater.builder()
                .energy(Heater.Energy.ELECTRIC)
                .input(between(0.5, 30), PowerUnit.KILOWATT)
                .recoveryEfficiency(between(60, 100), RatioUnit.PERCENT)
                .height(between(0, 40), RatioUnit.PERCENT)
                .setPoint(between(40, 85), TemperatureUnit.CELSIUS)
                .differential(between(0.5, 12), TemperatureDifferenceUnit.KELVIN)
                .thermostatStuck(chance(0.1))
                .simultaneous(chance(0.5));
        if (chance(0.3)) {
            heater.upper(Element.builder()
                    .input(between(0.5, 10), PowerUnit.KILOWATT)
                    .height(between(45, 90), RatioUnit.PERCENT)
                    .setPoint(between(40, 85), TemperatureUnit.CELSIUS)
                    .differential(between(0.5, 12), TemperatureDifferenceUnit.KELVIN)
                    .build());
        }
        if (chance(0.5)) {
            heater.cutOut(between(80, 100), TemperatureUnit.CELSIUS);
        }
        return heater.build();
    }

    private ReliefValve valve(String name) {
        double setPressure = between(3, 12);
        ReliefValve.Builder valve = ReliefValve.builder()
                .name(name)
                .setPressure(Pressure.gauge(setPressure, BAR))
                .fullLiftPressure(Pressure.gauge(setPressure * between(1, 1.2), BAR))
                .reseatPressure(Pressure.gauge(setPressure * between(0.7, 0.99), BAR))
                .fullFlow(Math.exp(between(Math.log(0.5), Math.log(200))), FlowUnit.LITRE_PER_MINUTE)
                .liftCharacteristic(lift(random))
                .height(between(-1, 3), LengthUnit.METRE);
        if (chance(0.5)) {
            valve.location(ReliefValve.Location.TANK_TOP);
            if (chance(0.6)) {
                valve.opensAt(between(92, 99), TemperatureUnit.CELSIUS)
                        .reseatsAt(between(70, 91), TemperatureUnit.CELSIUS);
            }
        }
        if (valve.build().location() == ReliefValve.Location.BRANCH && (int) (10 * setPressure) % 3 == 0) {
            valve.kind(ReliefValve.Kind.EXPANSION_VALVE); // draws nothing, so that the houses stay what they are
        }
        double fault = random.nextDouble();
        if (fault < 0.06) {
            valve.fault(ReliefFault.stuckOpen(between(0.1, 20), RatioUnit.PERCENT));
        } else if (fault < 0.2) {
            valve.fault(ReliefFault.leakingSeat(
                    Pressure.gauge(setPressure * between(0.2, 0.9), BAR),
                    between(1, 100),
                    FlowUnit.MILLILITRE_PER_MINUTE));
        } else if (fault < 0.25) {
            valve.fault(ReliefFault.blocked());
        }
        return valve.build();
    }

    private ExpansionVessel vessel() {
        ExpansionVessel.Builder vessel = ExpansionVessel.builder()
                .volume(Math.exp(between(Math.log(1), Math.log(60))), VolumeUnit.LITRE)
                .precharge(Pressure.gauge(between(0.2, 6), BAR))
                .acceptance(chance(0.2) ? 100 : between(20, 95), RatioUnit.PERCENT)
                .chargedAt(between(-5, 35), TemperatureUnit.CELSIUS)
                .temperature(between(2, 45), TemperatureUnit.CELSIUS)
                .height(between(-1, 3), LengthUnit.METRE);
        if (chance(0.3)) {
            vessel.gasTimeConstant(between(5, 300), DurationUnit.SECOND);
        }
        if (chance(0.1)) {
            vessel.condition(ExpansionVessel.Condition.ISOLATED);
        } else if (chance(0.1)) {
            vessel.condition(ExpansionVessel.Condition.WATERLOGGED);
        }
        return vessel.build();
    }

    private DrawProfile draws() {
        if (chance(0.5)) {
            // the largest profiles are meant for blocks of flats
            return DrawProfile.published().get(profiles.get(random.nextInt(profiles.size() - 6)));
        }
        List<Draw> own = new ArrayList<>();
        for (int hour = random.nextInt(4); hour < 24; hour += 1 + random.nextInt(6)) {
            Draw draw = chance(0.5)
                    ? Draw.ofVolume(
                            hour * 3600.0, between(1, 60), VolumeUnit.LITRE, between(2, 20), FlowUnit.LITRE_PER_MINUTE)
                    : Draw.ofHeat(
                            hour * 3600.0,
                            between(0.1, 3),
                            EnergyUnit.KILOWATT_HOUR,
                            between(2, 20),
                            FlowUnit.LITRE_PER_MINUTE);
            own.add(chance(0.5) ? draw.mixedTo(between(20, 55), TemperatureUnit.CELSIUS) : draw);
        }
        return DrawProfile.of("own", own);
    }

    /** {@return a characteristic, each with the probability that the compiler asks for} */
    public static LiftCharacteristic lift(RandomGenerator random) {
        LiftCharacteristic[] all = LiftCharacteristic.values();
        double left = random.nextDouble();
        int i = all.length - 1;
        while (i > 0 && left >= probability(all[i])) {
            left -= probability(all[i--]);
        }
        return all[i];
    }

    private static double probability(LiftCharacteristic lift) {
        return switch (lift) {
            case MODULATING -> 0.7;
            case SNAP -> 0.3;
        };
    }

    private double between(double low, double high) {
        return low + (high - low) * random.nextDouble();
    }

    private boolean chance(double probability) {
        return random.nextDouble() < probability;
    }
}
