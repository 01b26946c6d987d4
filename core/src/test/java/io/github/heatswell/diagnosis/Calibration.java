package io.github.heatswell.diagnosis;

import static io.github.heatswell.units.PressureUnit.PSI;

import io.github.heatswell.simulation.Workers;
import io.github.heatswell.system.Draw;
import io.github.heatswell.system.DrawProfile;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.Material;
import io.github.heatswell.system.PipeRun;
import io.github.heatswell.units.DurationUnit;
import io.github.heatswell.units.FlowUnit;
import io.github.heatswell.units.LengthUnit;
import io.github.heatswell.units.PowerUnit;
import io.github.heatswell.units.TemperatureUnit;
import io.github.heatswell.units.VolumeUnit;
import java.util.List;
import java.util.Locale;
import java.util.NavigableMap;
import java.util.TreeMap;
import java.util.function.LongFunction;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.hipparchus.random.RandomGenerator;
import org.hipparchus.random.Well19937c;

/**
 * How often the diagnosis is right when it says how sure it is: random houses whose owners do not know them well, half of them begun
 * warm, most with hot-water use that nobody noted, read by a gauge with an error, noise, and coarse digits.
 */
public final class Calibration {

    private static final double SOUND = 1.0 / 3;
    private static final double WARM = 0.5;
    private static final double DRAWN = 0.7;
    private static final double SURE = 0.8;
    /** From this weight on a cause that stands alone is called settled. */
    private static final double SETTLED = 0.9;
    /** No draw lasts longer (h): 80 L at 4 L/min. */
    private static final double LONGEST = 20 / 60.0;

    private static final int[] MINUTES = {1, 2, 5};
    private static final int[] HOURS = {6, 12, 24};
    /** A class of the table is a tenth wide and begins here. */
    private static final int FIRST_CLASS = 1;

    private final List<Outcome> outcomes;

    private Calibration(List<Outcome> outcomes) {
        this.outcomes = List.copyOf(outcomes);
    }

    /** What a perfect gauge in a house shows (Pa, gauge), once a minute. */
    @FunctionalInterface
    public interface Gauge {

        /**
         * Shows it.
         *
         * @param house the real house
         * @param hours for how long (h)
         */
        double[] shown(HotWaterSystem house, int hours);
    }

    /** A house as described, the log of the real one, and what is the matter with it. */
    private record Case(HotWaterSystem described, Hypothesis truth, double[] values, PressureLog log) {}

    /** What was called, and what was so. */
    private record Outcome(
            long seed,
            Cause truth,
            Cause called,
            double weight,
            boolean misfit,
            boolean settled,
            boolean hazard,
            int numbers,
            int inside) {

        /** The same from a line of the file. */
        static Outcome of(String line) {
            String[] cells = line.split(",");
            return new Outcome(
                    Long.parseLong(cells[0]),
                    Cause.valueOf(cells[1]),
                    Cause.valueOf(cells[2]),
                    Double.parseDouble(cells[3]),
                    Boolean.parseBoolean(cells[4]),
                    Boolean.parseBoolean(cells[5]),
                    Boolean.parseBoolean(cells[6]),
                    Integer.parseInt(cells[7]),
                    Integer.parseInt(cells[8]));
        }

        String line() {
            return String.format(
                    Locale.ROOT,
                    "%d,%s,%s,%.3f,%b,%b,%b,%d,%d",
                    seed,
                    truth,
                    called,
                    weight,
                    misfit,
                    settled,
                    hazard,
                    numbers,
                    inside);
        }

        boolean right() {
            return truth == called;
        }

        boolean isSound() {
            return truth == Cause.AS_DESCRIBED;
        }

        boolean accuses() {
            return isSound() && !right() && !misfit && weight > SURE;
        }

        boolean callsHazardWithoutCause() {
            return hazard && !truth.isHazard();
        }
    }

    /** Cases from a seed on, each with the gauge that suits its number. */
    public static Calibration of(long from, int count, LongFunction<Gauge> gauges) {
        List<Long> seeds = LongStream.range(from, from + count).boxed().toList();
        return new Calibration(Workers.of(Runtime.getRuntime().availableProcessors())
                .map(seeds, seed -> outcome(seed, of(seed, gauges.apply(seed)))));
    }

    /** What an earlier look found, a house in a line. */
    public static Calibration read(List<String> lines) {
        return new Calibration(lines.stream().map(Outcome::of).toList());
    }

    /** {@return a house in a line, for a file} */
    public List<String> lines() {
        return outcomes.stream().map(Outcome::line).toList();
    }

    private static Outcome outcome(long seed, Case known) {
        DiagnosisResult found = Diagnosis.builder(known.described)
                .log(known.log)
                .threads(1)
                .build()
                .run();
        int numbers = 0;
        int inside = 0;
        HypothesisFit fit = found.of(known.truth.cause()).orElseThrow();
        for (int i = 0; i < fit.ownNumbers() && fit.criterion() < DiagnosisResult.ALIKE && !found.misfit(); i++) {
            Estimate estimate = fit.estimates().get(i);
            if (estimate.standing() != Estimate.Standing.NOT_CARRIED) {
                numbers++;
                inside += estimate.contains(known.values[i]) ? 1 : 0;
            }
        }
        boolean hazard = !found.hazards().isEmpty();
        return new Outcome(
                seed,
                known.truth.cause(),
                found.best().cause(),
                found.best().weight(),
                found.misfit(),
                found.isDecided() && found.best().weight() >= SETTLED,
                hazard,
                numbers,
                inside);
    }

    private static Case of(long seed, Gauge gauge) {
        RandomGenerator random = new Well19937c(seed);
        HotWaterSystem described = KnownTruth.house(random);
        List<Hypothesis> all = Hypothesis.of(described);
        boolean sound = random.nextDouble() < SOUND;
        Hypothesis truth = all.get(sound ? 0 : 1 + random.nextInt(all.size() - 1));
        double[] values = truth.open().stream()
                .mapToDouble(own -> {
                    double low = own.parameter().toScale(own.low());
                    double high = own.parameter().toScale(own.high());
                    return own.parameter().fromScale(low + between(random, 0.15, 0.85) * (high - low));
                })
                .toArray();
        int hours = HOURS[random.nextInt(HOURS.length)];
        HotWaterSystem real = used(truth.house(unknown(described, random), truth.open(), values), hours, random);
        return new Case(described, truth, values, log(gauge.shown(real, hours), random));
    }

    /** The house as it is: its owner is wrong about the tank by 10 %, the input by 15 %, the set point by 5 K, and the pipes. */
    private static HotWaterSystem unknown(HotWaterSystem described, RandomGenerator random) {
        double tank = between(random, 0.9, 1.1) * described.tank().volume();
        double input = between(random, 0.85, 1.15);
        double hotter = between(random, -5, 5);
        Material material = random.nextBoolean() ? Material.COPPER : Material.PEX;
        return described.toBuilder()
                .tank(described.tank().toBuilder()
                        .volume(tank, VolumeUnit.CUBIC_METRE)
                        .build())
                .changeHeater(heater -> heater.withElements(one -> one.toBuilder()
                        .input(input * one.input(), PowerUnit.WATT)
                        .setPoint(one.setPoint() + hotter, TemperatureUnit.KELVIN)
                        .build()))
                .changePiping(run -> PipeRun.builder()
                        .material(material)
                        .outsideDiameter(22, LengthUnit.MILLIMETRE)
                        .wall(1, LengthUnit.MILLIMETRE)
                        .length(run.volume() / (Math.PI * 0.01 * 0.01), LengthUnit.METRE)
                        .build())
                .build();
    }

    /** Half of the tanks are warm at first; in most houses water is drawn, which nobody notes. */
    private static HotWaterSystem used(HotWaterSystem house, int hours, RandomGenerator random) {
        HotWaterSystem begun = random.nextDouble() < WARM
                ? house.toBuilder()
                        .changeStart(start -> start.toBuilder()
                                .water(between(random, 30, 50), TemperatureUnit.CELSIUS)
                                .build())
                        .build()
                : house;
        NavigableMap<Double, Draw> draws = new TreeMap<>();
        int count = random.nextDouble() < DRAWN ? 1 + random.nextInt(1 + hours / 4) : 0;
        for (int i = 0; i < count; i++) {
            double hour = between(random, 0.3, hours - 0.3);
            Draw draw = Draw.builder()
                    .timeOfDay(hour, DurationUnit.HOUR)
                    .volume(Math.exp(between(random, Math.log(2), Math.log(80))), VolumeUnit.LITRE)
                    .flow(between(random, 4, 12), FlowUnit.LITRE_PER_MINUTE)
                    .build();
            if (draws.subMap(hour - LONGEST, hour + LONGEST).isEmpty()) {
                draws.put(hour, draw);
            }
        }
        return draws.isEmpty()
                ? begun
                : begun.toBuilder()
                        .draws(DrawProfile.of("not noted", List.copyOf(draws.values())))
                        .build();
    }

    private static PressureLog log(double[] gauge, RandomGenerator random) {
        int apart = MINUTES[random.nextInt(MINUTES.length)];
        double digit = random.nextBoolean() ? PSI.factor() : 0.1e5;
        double zero = 0.1e5 * Math.max(-2, Math.min(2, random.nextGaussian()));
        int count = (gauge.length - 1) / apart;
        double[] times = new double[count];
        double[] readings = new double[count];
        for (int i = 0; i < count; i++) {
            times[i] = 60.0 * apart * i;
            readings[i] = digit * Math.rint((zero + gauge[apart * i] * (1 + 0.01 * random.nextGaussian())) / digit);
        }
        return PressureLog.builder(times, readings).build();
    }

    private static double between(RandomGenerator random, double low, double high) {
        return low + (high - low) * random.nextDouble();
    }

    /** {@return how many houses were looked at} */
    public int count() {
        return outcomes.size();
    }

    /** {@return the share of the sound houses that are accused, at more than 80 % (-)} */
    public double accused() {
        return share(outcomes.stream().filter(Outcome::accuses).count(), sound());
    }

    /** {@return the share of the houses without hazard in which one is called (-)} */
    public double falseHazards() {
        long harmless = outcomes.stream().filter(one -> !one.truth.isHazard()).count();
        return share(outcomes.stream().filter(Outcome::callsHazardWithoutCause).count(), harmless);
    }

    /** {@return the share of the numbers of the true cause that lie in their intervals (-), 1 if there are none} */
    public double inside() {
        return numbers() == 0
                ? 1
                : share(outcomes.stream().mapToInt(Outcome::inside).sum(), numbers());
    }

    /**
     * How often the first cause is the true one, of those called likely to a tenth.
     *
     * @param tenth the class, such as 8 for 80 to 90 %
     */
    double right(int tenth) {
        return share(
                called(tenth).stream().filter(Outcome::right).count(),
                called(tenth).size());
    }

    /** What was called likely to such a tenth and explains its readings. */
    private List<Outcome> called(int tenth) {
        return outcomes.stream()
                .filter(one -> !one.misfit && Math.min(9, (int) (10 * one.weight)) == tenth)
                .toList();
    }

    private long sound() {
        return outcomes.stream().filter(Outcome::isSound).count();
    }

    private int numbers() {
        return outcomes.stream().mapToInt(Outcome::numbers).sum();
    }

    private static double share(long part, long of) {
        return of == 0 ? 0 : (double) part / of;
    }

    /** How sure the answer was and how often it was right, of the classes that hold a house: a point of the picture. */
    record Point(double called, int houses, long right) {

        double share() {
            return (double) right / houses;
        }
    }

    List<Point> points() {
        return IntStream.range(0, 10)
                .mapToObj(this::called)
                .filter(houses -> !houses.isEmpty())
                .map(houses -> new Point(
                        houses.stream().mapToDouble(Outcome::weight).average().orElseThrow(),
                        houses.size(),
                        houses.stream().filter(Outcome::right).count()))
                .toList();
    }

    /** {@return the table and the counts, in Markdown} */
    public String table() {
        StringBuilder table = new StringBuilder("\n| Called | Houses | True | Share |\n| --- | --- | --- | --- |\n");
        for (int tenth = FIRST_CLASS; tenth < 10; tenth++) {
            List<Outcome> called = called(tenth);
            table.append(String.format(
                    Locale.ROOT,
                    "| %d to %d %% | %d | %d | %s |%n",
                    10 * tenth,
                    10 * tenth + 10,
                    called.size(),
                    called.stream().filter(Outcome::right).count(),
                    called.isEmpty() ? "" : Math.round(100 * right(tenth)) + " %"));
        }
        long misfits = outcomes.stream().filter(Outcome::misfit).count();
        return table
                + String.format(
                        Locale.ROOT,
                        "%n%d houses (seeds %d to %d). Nothing explains the readings of %d, and the answer says so. Settled: %d, of which %d"
                                + " are wrong.%nOf the %d sound houses, %d are accused at more than 80 %%. A hazard without cause is called"
                                + " in %d. Of %d houses with a hazard%nit is called in %d; cautions are not counted. Of %d numbers of the true"
                                + " cause, %d lie in their 95 %% interval.%n"
                                + "What is called 80 %% or more is true in %s of the houses with even seeds, and in %s of those with odd"
                                + " ones.%n",
                        count(),
                        outcomes.get(0).seed,
                        outcomes.get(count() - 1).seed,
                        misfits,
                        outcomes.stream().filter(Outcome::settled).count(),
                        outcomes.stream()
                                .filter(one -> one.settled && !one.right())
                                .count(),
                        sound(),
                        outcomes.stream().filter(Outcome::accuses).count(),
                        outcomes.stream()
                                .filter(Outcome::callsHazardWithoutCause)
                                .count(),
                        outcomes.stream().filter(one -> one.truth.isHazard()).count(),
                        outcomes.stream()
                                .filter(one -> one.truth.isHazard() && one.hazard)
                                .count(),
                        numbers(),
                        outcomes.stream().mapToInt(Outcome::inside).sum(),
                        sure(0),
                        sure(1));
    }

    /** How many of those called likely enough are right, in one half of the seeds. */
    private String sure(int remainder) {
        List<Outcome> sure = outcomes.stream()
                .filter(one -> !one.misfit && one.weight >= SURE && one.seed % 2 == remainder)
                .toList();
        return sure.stream().filter(Outcome::right).count() + " of " + sure.size();
    }

    /** {@return every house in a line, for reading after a long look} */
    @Override
    public String toString() {
        StringBuilder all = new StringBuilder();
        outcomes.forEach(one -> all.append(one).append('\n'));
        return all + table();
    }
}
