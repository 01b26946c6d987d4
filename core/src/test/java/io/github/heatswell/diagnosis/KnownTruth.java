package io.github.heatswell.diagnosis;

import static io.github.heatswell.units.PressureUnit.BAR;

import io.github.heatswell.result.Channel;
import io.github.heatswell.simulation.Simulation;
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
import io.github.heatswell.units.PressureUnit;
import io.github.heatswell.units.RatioUnit;
import io.github.heatswell.units.TemperatureDifferenceUnit;
import io.github.heatswell.units.TemperatureUnit;
import io.github.heatswell.units.VolumeUnit;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import org.hipparchus.random.RandomGenerator;
import org.hipparchus.random.Well19937c;

/**
 * A house as described, what is really the matter with it, and the log a household gauge would have made of that.
 *
 * @param described the house as its owner believes it to be
 * @param truth what is the matter
 * @param parameters what was changed, those of the cause first
 * @param values to which values
 * @param start when the heater came on (s, in the time of the log)
 * @param log what was logged: one reading a minute, scatter of one per cent, steps of 1 psi
 */
record KnownTruth(
        HotWaterSystem described,
        Hypothesis truth,
        List<FreeParameter> parameters,
        double[] values,
        double start,
        PressureLog log) {

    /** How long a log is (h). */
    static final double HOURS = 12;

    /** Draws a case, logged by the library; the cause is one of those possible in the house, each as often. */
    static KnownTruth random(long seed) {
        return random(seed, KnownTruth::simulated);
    }

    /**
     * Draws a case; the cause is one of those possible in the house, each as often.
     *
     * @param seed the same case comes from the same seed
     * @param gauge what a perfect gauge in a house shows (Pa, gauge), once a minute over the hours of a log
     */
    static KnownTruth random(long seed, Function<HotWaterSystem, double[]> gauge) {
        RandomGenerator random = new Well19937c(seed);
        HotWaterSystem house = house(random);
        List<Hypothesis> all = Hypothesis.of(house);
        return of(house, all.get(random.nextInt(all.size())), random, gauge);
    }

    /** The sum of squares at the truth. */
    double costAtTruth() {
        Trial trial = new Trial(described, truth, Target.fine(log, SpotReadings.none()));
        double[] position = new double[trial.parameters().size()];
        for (int i = 0; i < position.length; i++) {
            FreeParameter free = trial.parameters().get(i);
            double started = free.parameter() == Parameter.START_OF_HEATING ? free.position(start) : 0;
            position[i] = i < values.length ? free.position(values[i]) : started;
        }
        return Trial.sumOfSquares(trial.residuals(position));
    }

    static KnownTruth of(HotWaterSystem house, Hypothesis truth, RandomGenerator random) {
        return of(house, truth, random, KnownTruth::simulated);
    }

    private static KnownTruth of(
            HotWaterSystem house, Hypothesis truth, RandomGenerator random, Function<HotWaterSystem, double[]> gauge) {
        List<FreeParameter> parameters = new ArrayList<>();
        List<Double> values = new ArrayList<>();
        for (FreeParameter own : truth.open()) {
            parameters.add(own);
            double share = 0.15 + 0.7 * random.nextDouble();
            double low = own.parameter().toScale(own.low());
            double high = own.parameter().toScale(own.high());
            values.add(own.parameter().fromScale(low + share * (high - low)));
        }
        double start = 60.0 * (5 + random.nextInt(40));
        for (FreeParameter circumstance : circumstances(house, truth)) {
            parameters.add(circumstance);
            double scatter = Math.max(-2, Math.min(2, random.nextGaussian()));
            values.add(circumstance.value(scatter));
        }
        double[] array = values.stream().mapToDouble(v -> v).toArray();
        double[] shown = gauge.apply(truth.house(house, parameters, array));
        return new KnownTruth(house, truth, parameters, array, start, log(shown, start, random));
    }

    private static List<FreeParameter> circumstances(HotWaterSystem house, Hypothesis truth) {
        List<FreeParameter> all = new Circumstances(house, null, Set.of(), DrawMarks.none()).with(truth.open());
        return all.subList(truth.open().size(), all.size());
    }

    /** What a perfect gauge shows (Pa, gauge), as the library works it out. */
    static double[] simulated(HotWaterSystem real) {
        return Simulation.of(real, Duration.ofSeconds((long) (HOURS * 3600)))
                .run()
                .trace()
                .values(Channel.GAUGE_READING);
    }

    private static PressureLog log(double[] gauge, double start, RandomGenerator random) {
        int before = (int) (start / 60);
        double[] times = new double[(int) (HOURS * 60)];
        double[] readings = new double[times.length];
        double psi = PressureUnit.PSI.factor();
        for (int i = 0; i < times.length; i++) {
            times[i] = 60.0 * i;
            double p = gauge[Math.min(gauge.length - 1, Math.max(0, i - before))];
            readings[i] = psi * Math.rint(p * (1 + 0.01 * random.nextGaussian()) / psi);
        }
        return PressureLog.builder(times, readings).build();
    }

    private static double between(RandomGenerator random, double low, double high) {
        return low + (high - low) * random.nextDouble();
    }

    /** An invented house with a check valve or a reducing valve, a vessel that suits it, and one relief valve. */
    static HotWaterSystem house(RandomGenerator random) {
        double supply = between(random, 2.5, 4.2);
        double tank = between(random, 120, 300);
        return HotWaterSystem.builder()
                .site(Site.builder()
                        .altitude(between(random, 0, 800), LengthUnit.METRE)
                        .room(between(random, 12, 22), TemperatureUnit.CELSIUS)
                        .build())
                .supply(supply(random, supply))
                .tank(Tank.builder()
                        .volume(tank, VolumeUnit.LITRE)
                        .shell(Shell.cylinder(Material.STEEL, 480, between(random, 2, 3), LengthUnit.MILLIMETRE))
                        .standingLoss(between(random, 1.2, 3), ConductanceUnit.WATT_PER_KELVIN)
                        .workingPressure(Pressure.gauge(10, BAR))
                        .build())
                .heater(Heater.builder()
                        .energy(Heater.Energy.ELECTRIC)
                        .input(between(random, 3, 12), PowerUnit.KILOWATT)
                        .recoveryEfficiency(98, RatioUnit.PERCENT)
                        .setPoint(between(random, 52, 68), TemperatureUnit.CELSIUS)
                        .differential(between(random, 3, 6), TemperatureDifferenceUnit.KELVIN)
                        .build())
                .addPipe(PipeRun.builder()
                        .material(random.nextBoolean() ? Material.COPPER : Material.PEX)
                        .outsideDiameter(22, LengthUnit.MILLIMETRE)
                        .wall(random.nextBoolean() ? 1 : 2, LengthUnit.MILLIMETRE)
                        .length(between(random, 8, 30), LengthUnit.METRE)
                        .build())
                .addReliefValve(ReliefValve.builder()
                        .name("relief valve")
                        .setPressure(Pressure.gauge(7, BAR))
                        .fullLiftPressure(Pressure.gauge(7.7, BAR))
                        .reseatPressure(Pressure.gauge(between(random, 5.4, 6.6), BAR))
                        .fullFlow(20, FlowUnit.LITRE_PER_MINUTE)
                        .liftCharacteristic(ReliefValve.LiftCharacteristic.MODULATING)
                        .build())
                .vessel(ExpansionVessel.builder()
                        .volume(tank * between(random, 0.05, 0.09), VolumeUnit.LITRE)
                        .precharge(Pressure.gauge(supply - 0.2, BAR))
                        .acceptance(80, RatioUnit.PERCENT)
                        .build())
                .build();
    }

    private static Supply supply(RandomGenerator random, double pressure) {
        Supply.Builder supply = Supply.builder().water(between(random, 5, 16), TemperatureUnit.CELSIUS);
        if (random.nextBoolean()) {
            return supply.arrangement(Supply.Arrangement.CHECK_VALVE)
                    .pressure(Pressure.gauge(pressure, BAR))
                    .build();
        }
        return supply.arrangement(Supply.Arrangement.REDUCING_VALVE)
                .pressure(Pressure.gauge(pressure + between(random, 1.5, 3), BAR))
                .reducingValve(ReducingValve.builder()
                        .set(Pressure.gauge(pressure, BAR))
                        .lockUpRise(0.0, BAR)
                        .droop(0.5, BAR)
                        .ratedFlow(20, FlowUnit.LITRE_PER_MINUTE)
                        .build())
                .build();
    }
}
