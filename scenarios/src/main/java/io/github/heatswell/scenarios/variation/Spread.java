package io.github.heatswell.scenarios.variation;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** Chooses a few of many that stand for all: the lowest, the highest, and others evenly between by rank. */
final class Spread {

    private Spread() {}

    /**
     * Selects the modes.
     *
     * @param values what they are ranked by; of equal ones the earlier counts as lower
     * @param count how many to choose, at least 2 and no more than there are
     * @return which were chosen, in the order of the values given, not of their rank
     */
    static List<Integer> of(List<Double> values, int count) {
        List<Integer> ranked = IntStream.range(0, values.size())
                .boxed()
                .sorted(Comparator.comparing(values::get))
                .toList();
        return IntStream.range(0, count)
                .mapToObj(i -> ranked.get((int) Math.round(i * (values.size() - 1.0) / (count - 1))))
                .sorted()
                .toList();
    }
}
