package io.github.heatswell.scenarios.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.diagnosis.Cause;
import io.github.heatswell.diagnosis.Diagnosis;
import io.github.heatswell.diagnosis.DiagnosisResult;
import io.github.heatswell.diagnosis.HypothesisFit;
import io.github.heatswell.diagnosis.PressureLog;
import io.github.heatswell.result.Channel;
import io.github.heatswell.result.Trace;
import io.github.heatswell.simulation.Simulation;
import io.github.heatswell.system.Draw;
import io.github.heatswell.system.DrawProfile;
import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.Leak;
import io.github.heatswell.system.ReliefFault;
import io.github.heatswell.system.Start;
import io.github.heatswell.units.DurationUnit;
import io.github.heatswell.units.FlowUnit;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.PressureUnit;
import io.github.heatswell.units.RatioUnit;
import io.github.heatswell.units.TemperatureUnit;
import io.github.heatswell.units.VolumeUnit;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;

/**
 * Regression: logs of sound and faulty houses by gauges that are off, rounded, and noisy, of tanks that were warm and with a draw that
 * nobody told. No more than three in a hundred sound houses may be accused. A cause that is called more than 80 % likely must be the true
 * one in 85 of a hundred, and no decided one may be wrong. Draws that nobody told were taken for valves that open low, and leaks. The long
 * look, with {@code -Dlong.look=true}, takes 75 of them, or as many as {@code -Dgauge.sweep} says, some ten minutes, others with
 * {@code -Dgauge.seed}, only some of them with {@code -Dgauge.only=50,56}, and prints each false verdict and a table of truth against
 * verdict. With seed 7102 the search missed the true cause of logs 50, 56, and 70, two of them of warm tanks.
 */
@EnabledIfSystemProperty(named = "long.look", matches = "true")
class GaugeSweepDiagnosisTest {

    private static final int LOGS = Integer.getInteger("gauge.sweep", 75);
    /** The numbers of the logs to look at, all if empty; the others are made, so that these stay what they are, but not diagnosed. */
    private static final Set<Integer> ONLY = Arrays.stream(
                    System.getProperty("gauge.only", "").split(","))
            .filter(number -> !number.isBlank())
            .map(Integer::valueOf)
            .collect(Collectors.toSet());

    private static final double SURE = 0.8;
    private static final double ACCUSED = 0.03;
    private static final double FOUND = 0.75;
    private static final double TRUE_WHERE_SURE = 0.85;

    private static final List<String> HOUSES =
            List.of("orchard-lodge", "orchard-lodge-vessel", "tannery-yard", "ridge-house", "mill-cottage-worn-seat");
    private static final double[] DIGITS = {1e3, 2e3, 5e3, 1e4, PressureUnit.PSI.factor()};
    private static final int[] MINUTES = {1, 2, 3, 4, 5, 10};

    /** What a verdict is worth. */
    private enum Verdict {
        TRUE_CAUSE_FIRST,
        TRUE_CAUSE_AMONG_THE_LIKELIEST,
        NOTHING_FITS,
        NOT_SETTLED,
        ACCUSES_FALSELY
    }

    private final Random random = new Random(Integer.getInteger("gauge.seed", 2024));

    private static Map<Cause, UnaryOperator<HotWaterSystem>> faults(HotWaterSystem house) {
        double air = house.site().atmosphere();
        Map<Cause, UnaryOperator<HotWaterSystem>> all = new TreeMap<>();
        if (house.vessel().isPresent()) {
            Pressure low = Pressure.gauge(0.3 * house.vessel().get().precharge().gauge(air), PressureUnit.PASCAL);
            all.put(Cause.PRECHARGE_LOW, vessel(v -> v.precharge(low)));
            all.put(Cause.VESSEL_ISOLATED, vessel(v -> v.condition(ExpansionVessel.Condition.ISOLATED)));
            all.put(Cause.VESSEL_WATERLOGGED, vessel(v -> v.condition(ExpansionVessel.Condition.WATERLOGGED)));
        }
        ReliefFault leaking =
                ReliefFault.leakingSeat(Pressure.gauge(2, PressureUnit.BAR), 12, FlowUnit.MILLILITRE_PER_MINUTE);
        all.put(Cause.RELIEF_SEAT_WEEPS, relief(leaking));
        all.put(Cause.RELIEF_STUCK_OPEN, relief(ReliefFault.stuckOpen(0.04, RatioUnit.ONE)));
        all.put(
                Cause.RELIEF_OPENS_LOW,
                h -> h.toBuilder().changeReliefValves(v -> v.scaled(0.8, air)).build());
        all.put(
                Cause.RELIEF_OPENS_HIGH,
                h -> h.toBuilder().changeReliefValves(v -> v.scaled(1.25, air)).build());
        Leak tap = Leak.of(20, FlowUnit.MILLILITRE_PER_MINUTE, Pressure.gauge(4, PressureUnit.BAR));
        all.put(Cause.LEAK, h -> h.toBuilder().addLeak(tap).build());
        Cause passes =
                house.supply().reducingValve().isPresent() ? Cause.REDUCING_VALVE_CREEPS : Cause.CHECK_VALVE_PASSES;
        all.put(
                passes,
                h -> h.toBuilder()
                        .changeSupply(s -> s.toBuilder()
                                .seatLeakage(12, FlowUnit.MILLILITRE_PER_MINUTE)
                                .build())
                        .build());
        all.put(
                Cause.WATER_TOO_HOT,
                h -> h.toBuilder()
                        .changeHeater(heater -> heater.withElements(one -> one.toBuilder()
                                .setPoint(one.setPoint() + 15, TemperatureUnit.KELVIN)
                                .build()))
                        .build());
        return all;
    }

    private static UnaryOperator<HotWaterSystem> vessel(UnaryOperator<ExpansionVessel.Builder> change) {
        return house -> house.toBuilder()
                .changeVessel(v -> change.apply(v.toBuilder()).build())
                .build();
    }

    private static UnaryOperator<HotWaterSystem> relief(ReliefFault fault) {
        return house -> house.toBuilder()
                .changeReliefValves(v -> v.toBuilder().fault(fault).build())
                .build();
    }

    /** A log of a few hours by a gauge that is a little off, rounded to a digit, every few minutes. */
    private PressureLog log(HotWaterSystem real) {
        double zero = 0.15e5 * (2 * random.nextDouble() - 1);
        double scale = 1 + 0.025 * (2 * random.nextDouble() - 1);
        double digit = DIGITS[random.nextInt(DIGITS.length)];
        int minutes = MINUTES[random.nextInt(MINUTES.length)];
        double noise = random.nextBoolean() ? 0.01 : 0;
        int hours = 3 + random.nextInt(4);
        Trace trace = Simulation.of(real, Duration.ofHours(hours))
                .sampledEvery(Duration.ofMinutes(1))
                .run()
                .trace();
        int count = (Math.min(60 * hours, trace.count()) - 1) / minutes + 1;
        double[] times = new double[count];
        double[] gauge = new double[count];
        for (int i = 0; i < count; i++) {
            times[i] = 60.0 * minutes * i;
            double shown = trace.value(Channel.GAUGE_READING, minutes * i) * (1 + noise * random.nextGaussian());
            gauge[i] = digit * Math.rint((zero + scale * shown) / digit);
        }
        return PressureLog.builder(times, gauge).build();
    }

    /** Cold, or now and then warm or with a draw, neither of which the description tells. */
    private HotWaterSystem begun(HotWaterSystem house) {
        double share = random.nextDouble();
        if (share < 0.15) {
            return house.toBuilder()
                    .start(Start.builder().water(38, TemperatureUnit.CELSIUS).build())
                    .build();
        }
        Draw bath = Draw.builder()
                .timeOfDay(3_600 * (1 + random.nextDouble()), DurationUnit.SECOND)
                .volume(25, VolumeUnit.LITRE)
                .flow(8, FlowUnit.LITRE_PER_MINUTE)
                .build();
        return share < 0.3
                ? house.toBuilder()
                        .draws(DrawProfile.of("untold", List.of(bath)))
                        .build()
                : house;
    }

    private static Verdict verdict(DiagnosisResult found, Cause truth) {
        if (found.misfit()) {
            return Verdict.NOTHING_FITS;
        }
        if (found.best().cause() == truth) {
            return Verdict.TRUE_CAUSE_FIRST;
        }
        if (found.isDecided() || found.best().weight() > SURE) {
            return Verdict.ACCUSES_FALSELY;
        }
        return found.alike().stream().anyMatch(fit -> fit.cause() == truth)
                ? Verdict.TRUE_CAUSE_AMONG_THE_LIKELIEST
                : Verdict.NOT_SETTLED;
    }

    @Test
    void soundHousesAreNotAccusedAndTrueCausesAreNamed() {
        Map<Cause, Map<Verdict, Integer>> table = new TreeMap<>();
        int sure = 0;
        int right = 0;
        List<String> decidedWrongly = new ArrayList<>();
        for (int i = 0; i < LOGS; i++) {
            HotWaterSystem house = Catalogue.read(HOUSES.get(i % HOUSES.size())).system().toBuilder()
                    .changeReliefValves(
                            v -> v.toBuilder().fault(ReliefFault.none()).build())
                    .draws(DrawProfile.none())
                    .start(Start.builder().build())
                    .build();
            Map<Cause, UnaryOperator<HotWaterSystem>> faults = faults(house);
            List<Cause> causes = new ArrayList<>(faults.keySet());
            Cause truth = i % 3 == 2 ? causes.get(random.nextInt(causes.size())) : Cause.AS_DESCRIBED;
            HotWaterSystem real =
                    truth == Cause.AS_DESCRIBED ? house : faults.get(truth).apply(house);
            PressureLog log = log(begun(real));
            if (!ONLY.isEmpty() && !ONLY.contains(i)) {
                continue;
            }
            DiagnosisResult found = Diagnosis.builder(house).log(log).build().run();
            HypothesisFit best = found.best();
            if (best.weight() > SURE && !found.misfit()) {
                sure++;
                right += best.cause() == truth ? 1 : 0;
            }
            if (verdict(found, truth) == Verdict.ACCUSES_FALSELY) {
                String row = i + " " + HOUSES.get(i % HOUSES.size()) + ": " + truth + " taken for " + best.cause();
                System.out.println(row);
                if (found.isDecided()) {
                    decidedWrongly.add(row);
                }
            }
            table.computeIfAbsent(truth, cause -> new TreeMap<>()).merge(verdict(found, truth), 1, Integer::sum);
        }
        System.out.println(table); // a long look is for reading
        Map<Verdict, Integer> soundHouses = table.getOrDefault(Cause.AS_DESCRIBED, Map.of());
        int sound = sum(soundHouses);
        int accused = soundHouses.getOrDefault(Verdict.ACCUSES_FALSELY, 0);
        assertTrue(accused <= ACCUSED * sound, table::toString);
        assertEquals(List.of(), decidedWrongly);
        assertTrue(right >= TRUE_WHERE_SURE * sure, right + " of " + sure + " " + table);
        table.remove(Cause.AS_DESCRIBED);
        int named = 0;
        int faulty = 0;
        for (Map<Verdict, Integer> row : table.values()) {
            faulty += sum(row) - row.getOrDefault(Verdict.NOTHING_FITS, 0);
            named += row.getOrDefault(Verdict.TRUE_CAUSE_FIRST, 0)
                    + row.getOrDefault(Verdict.TRUE_CAUSE_AMONG_THE_LIKELIEST, 0);
        }
        assertTrue(named >= FOUND * faulty, table::toString);
    }

    private static int sum(Map<Verdict, Integer> row) {
        return row.values().stream().mapToInt(i -> i).sum();
    }
}
