package io.github.heatswell.scenarios.choice;

import io.github.heatswell.ageing.PrechargeLoss;
import io.github.heatswell.assessment.PrechargeTarget;
import io.github.heatswell.narrative.Limit;
import io.github.heatswell.result.Balances;
import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.scenarios.spread.VariedHouse;
import io.github.heatswell.sizing.VesselSizing;
import io.github.heatswell.study.Distribution;
import io.github.heatswell.study.SizeCertainty;
import io.github.heatswell.study.SizeCertainty.Range;
import io.github.heatswell.study.SizeCertainty.Reading;
import io.github.heatswell.study.SizeCertainty.Tried;
import io.github.heatswell.study.Study;
import io.github.heatswell.study.StudyResult;
import io.github.heatswell.study.StudyResult.Share;
import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.NamedValue;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.PressureUnit;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.DoubleFunction;
import java.util.function.DoublePredicate;
import java.util.function.ToDoubleFunction;
import java.util.function.UnaryOperator;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;

/**
 * Sampled houses that differ in the uncertain values of a scenario, each from the day its vessel was charged until the next check a year later: in how many of them a vessel keeps within the limit all that time. The same samples for every vessel. Not for several threads.
 */
final class SampledHouses {

    /** So few tell where most are above the limit. */
    private static final int FIRST_SAMPLES = 16;
    /** Enough to tell one in thirty from one in five; each is one heat-up. */
    private static final int SAMPLES = 64;
    /** So many more where that leaves open whether a vessel keeps the limit in nine of ten. */
    private static final int MORE_SAMPLES = 128;

    private static final long SEED = 1;
    /** A zero precharge cannot be described; this one (Pa, gauge) is as good as none. */
    private static final double MIN_PRECHARGE = 1000;

    private final Scenario scenario;
    private final double limitGauge;
    private final DoubleFunction<UnaryOperator<HotWaterSystem>> fitted;
    private final Balances.Count count;
    private final Map<List<Double>, Known> drawn = new ConcurrentHashMap<>();
    private final Map<Double, Tried> tried = new HashMap<>();
    private int fixed = -1;

    /**
     * The houses of a scenario.
     *
     * @param scenario the scenario
     * @param limitGauge what the peak must not exceed (Pa, gauge)
     * @param fitted what a house is with a vessel of some volume (m3), or without one for 0
     * @param count counts the runs
     */
    SampledHouses(
            Scenario scenario,
            double limitGauge,
            DoubleFunction<UnaryOperator<HotWaterSystem>> fitted,
            Balances.Count count) {
        this.scenario = scenario;
        this.limitGauge = limitGauge;
        this.fitted = fitted;
        this.count = count;
    }

    /** Whether no more is uncertain than can be sampled. */
    boolean isPossible() {
        return varied(0).inputs().size() < Study.MAX_INPUTS;
    }

    boolean isUsual() {
        return scenario.uncertain().isEmpty();
    }

    private VariedHouse varied(double volume) {
        return VariedHouse.with(scenario, fitted.apply(volume)).withUnreadLockUp(scenario);
    }

    /** In how many of the houses a vessel of a volume (m3) lets the pressure go above the limit; of more of them where few do not tell. */
    Tried tried(double volume) {
        return tried.computeIfAbsent(volume, size -> {
            Tried few = new Tried(size, above(size, SAMPLES, SEED));
            return few.isOpen() ? new Tried(size, sum(few.above(), above(size, MORE_SAMPLES, SEED + 1))) : few;
        });
    }

    /** Whether {@link #tried} says that a vessel holds. Looks at no more houses once so many are above the limit that it cannot. */
    private boolean holds(double volume) {
        if (tried.containsKey(volume)) {
            return tried.get(volume).holds();
        }
        for (int samples = FIRST_SAMPLES; samples < SAMPLES; samples *= 2) {
            Share least = new Share(above(volume, samples, SEED).count(), SAMPLES);
            if (least.atLeast() > SizeCertainty.HOLDS) {
                return false;
            }
        }
        Tried few = new Tried(volume, above(volume, SAMPLES, SEED));
        for (int samples = FIRST_SAMPLES; few.isOpen() && samples < MORE_SAMPLES; samples *= 2) {
            Share least = new Share(above(volume, samples, SEED + 1).count(), MORE_SAMPLES);
            if (sum(few.above(), least).atMost() > SizeCertainty.HOLDS) {
                return false;
            }
        }
        return tried(volume).holds();
    }

    private static Share sum(Share one, Share other) {
        return new Share(one.count() + other.count(), one.of() + other.of());
    }

    /** In how many of the first so many houses of a seed the pressure goes above the limit. */
    private Share above(double volume, int samples, long seed) {
        VariedHouse varied = varied(volume);
        return study(varied, samples, seed, values -> isAbove(varied, values, volume) ? 1 : 0)
                .spread(0)
                .above(0);
    }

    private static StudyResult study(VariedHouse varied, int samples, long seed, ToDoubleFunction<double[]> model) {
        Study.Builder study = Study.builder()
                .outputs(List.of("worst heat-up"))
                .model(values -> new double[] {model.applyAsDouble(values)})
                .samples(samples)
                .seed(seed);
        varied.inputs().forEach(input -> study.input(input.name(), input.input().distribution()));
        return study.input("precharge loss (share of all vessels)", Distribution.between(0, 1))
                .build()
                .run();
    }

    /** Whether a sample goes above the limit; asks no run where one with a smaller vessel did not, or one with a larger vessel did. */
    private boolean isAbove(VariedHouse varied, double[] values, double volume) {
        List<Double> house = Arrays.stream(values).boxed().toList();
        Known known = drawn.getOrDefault(house, Known.NOTHING);
        if (volume >= known.keeps()) {
            return false;
        }
        if (volume <= known.exceeds()) {
            return true;
        }
        boolean above = peaks(varied, values).anyMatch(peak -> peak > limitGauge);
        drawn.put(house, above ? new Known(volume, known.keeps()) : new Known(known.exceeds(), volume));
        return above;
    }

    /** The largest volume (m3) that was seen to exceed the limit, and the smallest that was seen to keep it. */
    private record Known(double exceeds, double keeps) {
        private static final Known NOTHING = new Known(-1, Double.POSITIVE_INFINITY);
    }

    private double described(double volume) {
        return VesselSizing.worstPeak(fitted.apply(volume).apply(scenario.system()), count);
    }

    /** The peaks (Pa, gauge) of a sample of which one is the highest from the day its vessel was charged to the next check. */
    private DoubleStream peaks(VariedHouse varied, double[] values) {
        return aged(varied, values).mapToDouble(this::peak);
    }

    private double peak(HotWaterSystem house) {
        return Study.orFailed(() -> VesselSizing.worstPeak(house, count));
    }

    /** In how many of the houses that were looked at a relief valve opens with the vessel, which takes a pressure above the limit. */
    private Share opening(Tried tried) {
        VariedHouse varied = varied(tried.volume());
        ToDoubleFunction<double[]> opens = values -> isAbove(varied, values, tried.volume())
                        && aged(varied, values)
                                .anyMatch(house -> peak(house)
                                        > Limit.reliefSetGauge(house).orElse(Double.POSITIVE_INFINITY))
                ? 1
                : 0;
        Share few = study(varied, SAMPLES, SEED, opens).spread(0).above(0);
        return tried.above().of() == SAMPLES
                ? few
                : sum(
                        few,
                        study(varied, MORE_SAMPLES, SEED + 1, opens).spread(0).above(0));
    }

    /** The house of a sample, at the moments of which one has the highest peak. */
    private Stream<HotWaterSystem> aged(VariedHouse varied, double[] values) {
        int own = varied.inputs().size();
        double[] known = Arrays.copyOf(values, own);
        if (fixed >= 0) {
            known[fixed] = varied.inputs().get(fixed).input().distribution().quantile(0.5);
        }
        PrechargeLoss loss = PrechargeLoss.Range.usual().quantile(values[own]);
        return ends(Study.orFailed(() -> varied.house().apply(known)), loss);
    }

    /**
     * The peak falls until the precharge is down to the supply's, and rises after that, so it is highest at one of the ends. Of
     * several vessels each loses its own.
     */
    private static Stream<HotWaterSystem> ends(HotWaterSystem charged, PrechargeLoss loss) {
        double air = charged.site().atmosphere();
        HotWaterSystem.Builder faded = charged.toBuilder();
        boolean fades = false;
        boolean above = false;
        for (int i = 0; i < charged.vessels().size(); i++) {
            Optional<PrechargeTarget> target = PrechargeTarget.of(charged, i);
            if (target.isEmpty()) {
                continue;
            }
            ExpansionVessel vessel = charged.vessels().get(i);
            double fill = target.get().pumpToGauge();
            double set = vessel.precharge().gauge(air);
            double left = Math.max(MIN_PRECHARGE, loss.left(set, fill, PrechargeLoss.MAX_UNCHECKED));
            faded.changeVessel(
                    i,
                    one -> one.toBuilder()
                            .precharge(Pressure.gauge(left, PressureUnit.PASCAL))
                            .build());
            fades = true;
            above |= set > fill || vessel.chargedAt().isPresent();
        }
        if (!fades) {
            return Stream.of(charged);
        }
        return above ? Stream.of(faded.build(), charged) : Stream.of(faded.build());
    }

    /**
     * How sure the sizes on sale are.
     *
     * @param sizes all of them (m3), the smallest first; 0 for none before them if the best estimates call for none
     * @param bare which of them the best estimates call for
     */
    SizeCertainty certainty(List<Double> sizes, int bare) {
        OptionalInt most = first(sizes, bare, size -> tried(size).holds());
        // where the run as given calls for more than a cold fill, smaller vessels are out of the question
        boolean byRun = bare > 0 && described(sizes.get(bare - 1)) <= limitGauge;
        Optional<Range> range = byRun
                ? Optional.empty()
                : least(sizes, bare).stream()
                        .mapToObj(least -> range(sizes, least, most, bare))
                        .findFirst();
        List<Tried> looked = tried.values().stream()
                .filter(one -> one.volume() >= sizes.get(bare))
                .sorted(Comparator.comparingDouble(Tried::volume))
                .toList();
        return new SizeCertainty(isUsual(), looked, Optional.of(opening(looked.get(0))), range, count.sum());
    }

    /**
     * The place of the smallest size that keeps the limit in nine of ten houses; empty if none does.
     *
     * @param sizes the sizes (m3), the smallest first
     * @param bare which of them the best estimates call for
     */
    OptionalInt sure(List<Double> sizes, int bare) {
        return first(sizes, bare, this::holds);
    }

    private Range range(List<Double> sizes, int least, OptionalInt most, int bare) {
        Range range = new Range(sizes.get(least), volume(sizes, most), Optional.empty());
        return range.isVague()
                ? new Range(range.least(), range.most(), Optional.of(reading(sizes, least, bare)))
                : range;
    }

    private static OptionalDouble volume(List<Double> sizes, OptionalInt place) {
        return place.isPresent() ? OptionalDouble.of(sizes.get(place.getAsInt())) : OptionalDouble.empty();
    }

    /** What moves the peaks most, and which sizes the houses call for once it is known; how fast a vessel loses charge no reading tells. */
    private Reading reading(List<Double> sizes, int least, int bare) {
        VariedHouse varied = varied(sizes.get(bare));
        StudyResult peaks = study(
                varied, SAMPLES, SEED, values -> peaks(varied, values).max().orElseThrow());
        int most = 0;
        for (int i = 1; i < varied.inputs().size(); i++) {
            if (Math.abs(peaks.importance(i, 0)) > Math.abs(peaks.importance(most, 0))) {
                most = i;
            }
        }
        SampledHouses known = new SampledHouses(scenario, limitGauge, fitted, count);
        known.fixed = most;
        OptionalInt from = known.least(sizes, bare);
        OptionalInt to = known.sure(sizes, bare);
        VariedHouse.Input input = varied.inputs().get(most);
        return new Reading(input.label(), named(input.name()), sizes.get(from.orElse(least)), volume(sizes, to));
    }

    private static Optional<NamedValue> named(String input) {
        return NamedValue.of(input)
                .or(() -> Arrays.stream(NamedValue.values())
                        .filter(value -> value.label().equals(input))
                        .findFirst());
    }

    /** The smallest size that is enough in at least one of ten houses. */
    private OptionalInt least(List<Double> sizes, int bare) {
        if (!isOften(sizes.get(bare))) {
            return first(sizes, bare, this::isOften);
        }
        int least = bare;
        while (least > 0 && isOften(sizes.get(least - 1))) {
            least--;
        }
        return OptionalInt.of(least);
    }

    private boolean isOften(double volume) {
        return tried(volume).above().value() <= 1 - SizeCertainty.HOLDS;
    }

    /**
     * The first size that does: looks at one, at the next, at the second after that, and so on in growing steps, and then, for a
     * larger vessel never peaks higher, halves the sizes in between: of a hundred sizes at a dozen.
     */
    private OptionalInt first(List<Double> sizes, int from, DoublePredicate does) {
        int fails = from - 1;
        int next = from;
        while (!does.test(sizes.get(next))) {
            if (next == sizes.size() - 1) {
                return OptionalInt.empty();
            }
            int step = Math.max(1, 2 * (next - fails));
            fails = next;
            next = Math.min(sizes.size() - 1, next + (fails == from ? 1 : step));
        }
        int holds = next;
        while (holds - fails > 1) {
            int middle = (fails + holds) / 2;
            if (does.test(sizes.get(middle))) {
                holds = middle;
            } else {
                fails = middle;
            }
        }
        return OptionalInt.of(holds);
    }
}
