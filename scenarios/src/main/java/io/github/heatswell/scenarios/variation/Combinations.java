package io.github.heatswell.scenarios.variation;

import io.github.heatswell.scenarios.file.Change;
import io.github.heatswell.scenarios.file.Scenario;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * All combinations of the values of some fields. The last field changes fastest. Immutable.
 */
public final class Combinations {

    /** Longer tables are not readable. */
    public static final int MAX_RUNS = 60;

    private final List<Variation> variations;

    private Combinations(List<Variation> variations) {
        this.variations = List.copyOf(variations);
    }

    /**
     * The combinations of the values of these fields; without any field, the one that changes nothing.
     *
     * @param variations the fields and their values
     * @return the combinations
     * @throws IllegalArgumentException if a field is given twice
     */
    public static Combinations of(List<Variation> variations) {
        Set<String> fields = new HashSet<>();
        for (Variation variation : variations) {
            if (!fields.add(variation.field())) {
                throw new IllegalArgumentException(
                        variation.field() + ": is varied twice; put all its values in one --vary");
            }
        }
        return new Combinations(variations);
    }

    /**
     * The varied fields.
     *
     * @return their names, in the order given
     */
    public List<String> fields() {
        return variations.stream().map(Variation::field).toList();
    }

    /**
     * How many combinations there are.
     *
     * @return at least 1, and no more than {@link Integer#MAX_VALUE}, which stands for everything above it
     */
    public int count() {
        long count = 1;
        for (Variation variation : variations) {
            count = Math.min(Integer.MAX_VALUE, count * variation.values().size());
        }
        return (int) count;
    }

    /**
     * A scenario with every combination.
     *
     * @param name what the scenario is called
     * @param scenario the scenario
     * @param first what is changed before the values are, in the same step
     * @param alone whether no other scenario is varied too, so that the variants need not name it
     * @return the variants
     * @throws io.github.heatswell.scenarios.file.InvalidScenarioException if the scenario is not sound with one of them;
     *     that of the first is thrown
     * @throws IllegalArgumentException if there are more than {@link #MAX_RUNS}
     */
    public List<Variant> of(String name, Scenario scenario, List<Change> first, boolean alone) {
        if (count() > MAX_RUNS) {
            throw new IllegalArgumentException(count() + " combinations are more than " + MAX_RUNS);
        }
        List<Variant> variants = new ArrayList<>();
        for (List<Change> changes : all()) {
            String values = changes.stream().map(Change::toString).collect(Collectors.joining(", "));
            String called = changes.isEmpty() ? name : alone ? values : name + ", " + values;
            List<Change> together = new ArrayList<>(first);
            together.addAll(changes);
            variants.add(new Variant(
                    called, name, changes.stream().map(Change::value).toList(), scenario.with(together)));
        }
        return variants;
    }

    private List<List<Change>> all() {
        List<List<Change>> all = List.of(List.of());
        for (Variation variation : variations) {
            List<List<Change>> longer = new ArrayList<>();
            for (List<Change> before : all) {
                for (Change change : variation.changes()) {
                    List<Change> with = new ArrayList<>(before);
                    with.add(change);
                    longer.add(with);
                }
            }
            all = longer;
        }
        return all;
    }

    /**
     * A scenario with one combination of values.
     *
     * @param name what it is called, different from all others
     * @param of the name of the scenario it is a variant of
     * @param values the value of each varied field, as written
     * @param scenario the scenario with these values
     */
    public record Variant(String name, String of, List<String> values, Scenario scenario) {

        /**
         * Copies the values.
         *
         * @param name what it is called, different from all others
         * @param of the name of the scenario it is a variant of
         * @param values the value of each varied field, as written
         * @param scenario the scenario with these values
         */
        public Variant {
            Objects.requireNonNull(name, "name");
            Objects.requireNonNull(of, "of");
            Objects.requireNonNull(scenario, "scenario");
            values = List.copyOf(values);
        }
    }
}
