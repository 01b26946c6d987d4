package io.github.heatswell.diagnosis;

import io.github.heatswell.system.Draw;
import io.github.heatswell.system.DrawProfile;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.Start;
import io.github.heatswell.units.DurationUnit;
import io.github.heatswell.units.TemperatureUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Finds the cause behind readings. Each cause is fitted to them by least squares on the simulation; the Bayesian
 * information criterion (Schwarz, "Estimating the dimension of a model", Annals of Statistics 6, 1978; from memory)
 * then weighs goodness of fit against the number of free parameters. Immutable; the same readings give the same result.
 */
public final class Diagnosis {

    private static final double DAY = 86_400;
    private static final double COLDEST = 273.15;
    private static final double HOTTEST = 372.15;
    private static final int FIRST_TEMPERATURES = 5;
    /** A first temperature so far (K) off the line of the next few is no measurement; our own judgement. */
    private static final double FAULTY = 5;

    private final HotWaterSystem house;
    private final PressureLog log;
    private final DrawMarks draws;
    private final List<BeyondLimit> beyond;
    private final SpotReadings spots;
    private final Set<Cause> without;
    private final int threads;
    private final Set<Parameter> assumed;

    private Diagnosis(Builder from) {
        PressureLog thinned = from.log == null ? null : from.log.thinned();
        boolean byHand = thinned != null && !thinned.tellsItsScatter();
        DrawMarks all =
                DrawMarks.of(thinned, !byHand && !from.house.draws().draws().isEmpty());
        log = thinned == null ? null : thinned.first(all.usable(thinned));
        draws = log == null ? all : all.within(log);
        HotWaterSystem described = draws.anyNoted()
                ? from.house.toBuilder().draws(DrawProfile.none()).build()
                : from.house;
        house = log == null ? described : withoutDrawsWhileShut(startingWith(log, described));
        Optional<PressureLog> whole = Optional.ofNullable(from.log);
        beyond = Stream.<Optional<? extends BeyondLimit>>of(
                        Overheat.of(from.house, whole, from.spots), Overpressure.of(from.house, whole, from.spots))
                .<BeyondLimit>flatMap(Optional::stream)
                .toList();
        SpotReadings counting = from.spots.of(from.house);
        spots = log == null ? counting : counting.beside(log);
        without = EnumSet.copyOf(from.without);
        threads = from.threads;
        assumed = Set.copyOf(from.assumed);
    }

    /**
     * Starts a diagnosis; a log, readings on site, or both must follow.
     *
     * @param house the system as its owner believes it to be, in the state it had at the beginning of the log
     * @return a builder
     */
    public static Builder builder(HotWaterSystem house) {
        return new Builder(house);
    }

    /** The house with the clock time and the water temperature of the log's beginning, where the log knows them. */
    private static HotWaterSystem startingWith(PressureLog log, HotWaterSystem house) {
        Start.Builder start = house.start().toBuilder();
        log.timeOfDay().ifPresent(time -> start.timeOfDay(time, DurationUnit.SECOND));
        double expected = house.start()
                .waterTemperature()
                .orElse(house.supply().water().on(house.start().dayOfYear()));
        firstTemperature(log, expected)
                .ifPresent(kelvin -> start.water(Math.min(HOTTEST, Math.max(COLDEST, kelvin)), TemperatureUnit.KELVIN));
        return house.toBuilder().start(start.build()).build();
    }

    /** Without the draws described that begin while somebody knows that there were none. */
    private HotWaterSystem withoutDrawsWhileShut(HotWaterSystem started) {
        List<Draw> draws = started.draws().draws();
        List<Draw> left = draws.stream()
                .filter(draw -> {
                    double ahead = (draw.timeOfDay() - started.start().timeOfDay() + DAY) % DAY;
                    return !log.isShut(ahead, ahead) && !log.isShut(ahead + DAY, ahead + DAY);
                })
                .toList();
        return left.size() == draws.size()
                ? started
                : started.toBuilder()
                        .draws(left.isEmpty() ? DrawProfile.none() : DrawProfile.of("as noted", left))
                        .build();
    }

    /**
     * The water at the first reading (K): that reading, unless it is far from what was described and far off the line of median slope
     * through the first few (Theil and Sen; from memory), as a faulty one is; then that line, kept between the coldest and the
     * hottest of them.
     */
    private static OptionalDouble firstTemperature(PressureLog log, double expected) {
        int[] known = IntStream.range(0, log.count())
                .filter(i -> log.temperature(i).isPresent())
                .limit(FIRST_TEMPERATURES)
                .toArray();
        if (known.length == 0) {
            return OptionalDouble.empty();
        }
        double[] kelvin = Arrays.stream(known)
                .mapToDouble(i -> log.temperature(i).orElseThrow())
                .toArray();
        List<Double> slopes = new ArrayList<>();
        for (int i = 0; i < known.length; i++) {
            for (int j = i + 1; j < known.length; j++) {
                slopes.add((kelvin[j] - kelvin[i]) / (log.time(known[j]) - log.time(known[i])));
            }
        }
        double slope = slopes.isEmpty() ? 0 : middle(slopes.stream().mapToDouble(s -> s));
        double line = middle(IntStream.range(0, known.length).mapToDouble(i -> kelvin[i] - slope * log.time(known[i])));
        double coldest = Arrays.stream(kelvin).min().orElseThrow();
        double hottest = Arrays.stream(kelvin).max().orElseThrow();
        boolean faulty = Math.abs(kelvin[0] - line) > FAULTY && Math.abs(kelvin[0] - expected) > FAULTY;
        return OptionalDouble.of(faulty || known[0] > 0 ? Math.min(hottest, Math.max(coldest, line)) : kelvin[0]);
    }

    private static double middle(DoubleStream values) {
        double[] sorted = values.sorted().toArray();
        return sorted[sorted.length / 2];
    }

    /**
     * The log as it is used: of a longer one only the first two days, thinned to at most 3000 readings.
     *
     * @return the log, or empty if there are readings on site only
     */
    public Optional<PressureLog> log() {
        return Optional.ofNullable(log);
    }

    /**
     * Looks at every cause: some thousands of runs, which take seconds.
     *
     * @return what the readings say
     * @throws java.util.concurrent.CancellationException if the calling thread is interrupted; its interrupt status stays set
     */
    public DiagnosisResult run() {
        List<Hypothesis> hypotheses = Stream.concat(Hypothesis.of(house).stream(), Stream.of(Hypothesis.gaugeStuck()))
                .filter(hypothesis -> !without.contains(hypothesis.cause()) && canShow(hypothesis.cause()))
                .toList();
        return new Comparison(house, Target.fine(log, spots, assumed, draws), threads)
                .of(hypotheses)
                .with(beyond);
    }

    /**
     * No pressure reading shows what a mixing valve does; without a reading at a tap it could never be ruled out. Nor is a gauge stuck
     * that moves. A valve that lets the pressure go far beyond its plate does not open, unless somebody saw water come out of it.
     */
    private boolean canShow(Cause cause) {
        if (cause == Cause.RELIEF_STUCK_OPEN && beyond.stream().anyMatch(Diagnosis::isPlatePassed)) {
            return log != null
                    && log.sightings().stream()
                            .anyMatch(seen -> seen.kind() == Sighting.Kind.DRIPS || seen.volume() > 0);
        }
        if (cause == Cause.GAUGE_STUCK) {
            return log != null && log.rests();
        }
        return cause != Cause.MIXING_VALVE_PASSES || spots.all().containsKey(SiteCheck.HOT_TAP);
    }

    private static boolean isPlatePassed(BeyondLimit reading) {
        return reading.isHazard()
                && reading instanceof Overpressure over
                && over.plate() == Overpressure.Plate.RELIEF_VALVE;
    }

    /** Builds a {@link Diagnosis}. */
    public static final class Builder {
        private final HotWaterSystem house;
        private final Set<Cause> without = EnumSet.noneOf(Cause.class);
        private PressureLog log;
        private SpotReadings spots = SpotReadings.none();
        private int threads = Runtime.getRuntime().availableProcessors();
        private final Set<Parameter> assumed = EnumSet.noneOf(Parameter.class);

        private Builder(HotWaterSystem house) {
            this.house = Objects.requireNonNull(house, "house");
        }

        /**
         * Adds a log.
         *
         * @param value the log
         * @return this builder
         */
        public Builder log(PressureLog value) {
            log = Objects.requireNonNull(value, "log");
            return this;
        }

        /**
         * Adds readings on site.
         *
         * @param value the readings
         * @return this builder
         */
        public Builder spots(SpotReadings value) {
            spots = Objects.requireNonNull(value, "spots");
            return this;
        }

        /**
         * Excludes a cause known not to apply.
         *
         * @param cause the cause; {@link Cause#AS_DESCRIBED} cannot be left out
         * @return this builder
         * @throws IllegalArgumentException if the cause is {@link Cause#AS_DESCRIBED}
         */
        public Builder without(Cause cause) {
            Objects.requireNonNull(cause, "cause");
            if (cause == Cause.AS_DESCRIBED) {
                throw new IllegalArgumentException("the case that everything is as described cannot be left out");
            }
            without.add(cause);
            return this;
        }

        /**
         * Says that the reseat pressure of the relief valves is only assumed. Every cause then leaves it open within what is usual.
         *
         * @return this builder
         */
        public Builder reseatAssumed() {
            assumed.add(Parameter.RESEAT_SHARE);
            return this;
        }

        /**
         * Says that the acceptance of the vessels is only assumed. A cause that turns on a low precharge then leaves it open.
         *
         * @return this builder
         */
        public Builder acceptanceAssumed() {
            assumed.add(Parameter.ACCEPTANCE);
            return this;
        }

        /**
         * Sets how many causes are examined in parallel; the result does not depend on it.
         *
         * @param number the number, at least 1; as many as there are processors if not set
         * @return this builder
         * @throws IllegalArgumentException if the number is below 1
         */
        public Builder threads(int number) {
            if (number < 1) {
                throw new IllegalArgumentException("threads: " + number + " is outside the allowed range, 1 or more");
            }
            threads = number;
            return this;
        }

        /**
         * Completes the description.
         *
         * @return the diagnosis
         * @throws IllegalArgumentException if there are no readings at all, one of the gas of several vessels, or
         *     only such of a vessel that the house has not
         */
        public Diagnosis build() {
            if (house.vessels().size() > 1 && spots.all().containsKey(SiteCheck.TYRE_GAUGE)) {
                throw new IllegalArgumentException("tyre-gauge: the house has "
                        + house.vessels().size()
                        + " expansion vessels, and the reading does not say of which; put it into the description as"
                        + " that vessel's precharge and leave it out here");
            }
            if (log == null && spots.of(house).isEmpty() && !spots.isEmpty()) {
                throw new IllegalArgumentException(
                        "all readings are of an expansion vessel, and the house has none; describe it with its volume and"
                                + " precharge");
            }
            if (log == null && spots.isEmpty()) {
                throw new IllegalArgumentException(
                        "a diagnosis needs a log or at least one reading; give log(...) or spots(...)");
            }
            return new Diagnosis(this);
        }
    }
}
