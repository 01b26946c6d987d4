package io.github.heatswell.scenarios.variation;

import io.github.heatswell.charts.NamedRun;
import io.github.heatswell.narrative.NamedSummary;
import io.github.heatswell.narrative.Narrative;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.result.RunSummary;
import io.github.heatswell.scenarios.variation.Combinations.Variant;
import io.github.heatswell.simulation.SimulationException;
import io.github.heatswell.simulation.Workers;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.stream.IntStream;

/**
 * What variants found. Of many, only those to be drawn are run a second time with their course kept, so that memory does
 * not grow with their number. Immutable.
 *
 * @param variants what was run
 * @param summaries what each found, in the same order
 * @param drawn the runs to draw, at most six, in the same order
 */
public record VariantRuns(List<Variant> variants, List<RunSummary> summaries, List<NamedRun> drawn) {

    /** More curves than this cannot be told apart in one picture. */
    public static final int MAX_DRAWN = 6;

    /**
     * Copies the lists.
     *
     * @param variants what was run
     * @param summaries what each found, in the same order
     * @param drawn the runs to draw, at most six, in the same order
     */
    public VariantRuns {
        variants = List.copyOf(variants);
        summaries = List.copyOf(summaries);
        drawn = List.copyOf(drawn);
    }

    /**
     * Runs variants, several at a time. What is found does not depend on how many.
     *
     * @param variants what to run
     * @param threads how many run at a time, at least 1
     * @return what they found
     * @throws IllegalArgumentException if the number of threads is below 1
     * @throws VariantFailedException if the simulation of one fails
     */
    public static VariantRuns of(List<Variant> variants, int threads) {
        Objects.requireNonNull(variants, "variants");
        Workers workers = Workers.of(threads);
        if (variants.size() <= MAX_DRAWN) {
            List<RunResult> results = workers.map(variants, attempted(VariantRuns::kept));
            return new VariantRuns(
                    variants, results.stream().map(RunResult::summary).toList(), named(variants, results));
        }
        List<RunSummary> summaries = workers.map(variants, attempted(VariantRuns::passing));
        List<Variant> chosen =
                spread(peaks(summaries), MAX_DRAWN).stream().map(variants::get).toList();
        return new VariantRuns(variants, summaries, named(chosen, workers.map(chosen, attempted(VariantRuns::kept))));
    }

    /**
     * What every variant found.
     *
     * @return the variants' names and findings, in their order
     */
    public List<NamedSummary> named() {
        List<NamedSummary> named = new ArrayList<>();
        IntStream.range(0, variants.size())
                .forEach(i -> named.add(new NamedSummary(
                        variants.get(i).name(),
                        summaries.get(i),
                        variants.get(i).scenario().doubts())));
        return named;
    }

    /**
     * The first run in which people may be hurt.
     *
     * @return its place among the variants, or empty if there is none
     */
    public OptionalInt firstHazard() {
        List<NamedSummary> named = named();
        return IntStream.range(0, named.size())
                .filter(i -> Narrative.of(named.get(i).summary(), named.get(i).doubts())
                        .isHazard())
                .findFirst();
    }

    private static RunResult kept(Variant variant) {
        return variant.scenario().simulation().run();
    }

    private static RunSummary passing(Variant variant) {
        return variant.scenario().simulation().stream((time, sample, regime) -> {});
    }

    private static <T> Function<Variant, T> attempted(Function<Variant, T> simulating) {
        return variant -> {
            try {
                return simulating.apply(variant);
            } catch (SimulationException e) {
                throw new VariantFailedException(variant.name(), e);
            }
        };
    }

    private static List<Double> peaks(List<RunSummary> summaries) {
        return summaries.stream().map(summary -> summary.peak().value()).toList();
    }

    private static List<NamedRun> named(List<Variant> variants, List<RunResult> results) {
        List<NamedRun> named = new ArrayList<>();
        IntStream.range(0, variants.size())
                .forEach(i -> named.add(new NamedRun(variants.get(i).name(), results.get(i))));
        return named;
    }

    /**
     * Chooses representatives: the lowest, the highest, and others spaced evenly by rank.
     *
     * @param values what they are ranked by; of equal ones the earlier counts as lower
     * @param count how many to choose, at least 2 and no more than there are
     * @return which were chosen, in the order of the values given, not of their rank
     */
    static List<Integer> spread(List<Double> values, int count) {
        List<Integer> ranked = IntStream.range(0, values.size())
                .boxed()
                .sorted(Comparator.comparing(values::get))
                .toList();
        return IntStream.range(0, count)
                .mapToObj(i -> ranked.get((int) Math.round(i * (values.size() - 1.0) / (count - 1))))
                .sorted()
                .toList();
    }

    /**
     * The simulation of a variant failed.
     */
    public static final class VariantFailedException extends RuntimeException {

        private static final long serialVersionUID = 1L;

        /** Which variant. */
        private final String variant;

        /**
         * Creates the exception.
         *
         * @param variant the name of the variant
         * @param cause why it failed
         */
        VariantFailedException(String variant, SimulationException cause) {
            super(cause.getMessage(), cause);
            this.variant = variant;
        }

        /**
         * Which variant failed.
         *
         * @return its name
         */
        public String variant() {
            return variant;
        }
    }
}
