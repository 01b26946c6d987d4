package io.github.heatswell.scenarios.variation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import io.github.heatswell.charts.NamedRun;
import io.github.heatswell.scenarios.catalogue.Catalogue;
import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.scenarios.variation.Combinations.Variant;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Runs of variants, whatever the number of threads, and the choice of those to draw. */
class VariantRunsTest {

    private static final Scenario LODGE = Catalogue.read("orchard-lodge-vessel");

    /** Nine runs pass twice, those that are drawn with their course kept; neither way of running may change a digit. */
    @Test
    void oneThreadOrManyFindTheSameToTheLastDigit() {
        List<Variant> nine = variants("vessel.volume=8L,9L,10L", "tank.volume=150L,200L,250L");
        VariantRuns one = VariantRuns.of(nine, 1);
        VariantRuns many = VariantRuns.of(nine, 4);
        assertEquals(nine.size(), one.summaries().size());
        for (int i = 0; i < nine.size(); i++) {
            var alone = nine.get(i).scenario().simulation().run();
            assertEquals(alone.extremes(), one.summaries().get(i).extremes());
            assertEquals(alone.extremes(), many.summaries().get(i).extremes());
            assertEquals(alone.totals(), many.summaries().get(i).totals());
        }
        assertEquals(names(one), names(many));
        assertEquals(VariantRuns.MAX_DRAWN, one.drawn().size());
        for (NamedRun run : many.drawn()) {
            int index = nine.stream().map(Variant::name).toList().indexOf(run.name());
            assertEquals(many.summaries().get(index).extremes(), run.result().extremes(), run.name());
        }
    }

    @Test
    void sixRunsOrFewerAreAllDrawn() {
        VariantRuns runs = VariantRuns.of(variants("vessel.volume=8L,12L,18L"), 2);
        assertEquals(List.of("vessel.volume=8L", "vessel.volume=12L", "vessel.volume=18L"), names(runs));
    }

    @Test
    void theLowestAndTheHighestAreAmongTheChosen() {
        List<Double> values = List.of(5.0, 1.0, 9.0, 3.0, 7.0, 2.0, 8.0, 4.0, 6.0, 0.0, 10.0);
        List<Double> chosen =
                VariantRuns.spread(values, 6).stream().map(values::get).sorted().toList();
        assertEquals(List.of(0.0, 2.0, 4.0, 6.0, 8.0, 10.0), chosen);
        for (int count = 6; count <= 60; count++) {
            List<Double> equal = IntStream.range(0, count).mapToObj(i -> 7.0).toList();
            assertEquals(6, VariantRuns.spread(equal, 6).stream().distinct().count(), "of " + count);
        }
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            vessel.volume=8L, 12 L ,18L                     | 3 | 8L
            piping=[],[{ material: pex, wall: 3 mm }]       | 2 | []
            supply.pressure=4 bar +- 0.2 bar,5 bar          | 2 | 4 bar +- 0.2 bar
            vessel=none,{ volume: 8 L, precharge: 3 bar }   | 2 | none
            """)
    void commasInBracketsBelongToAValue(String text, int count, String first) {
        Variation variation = Variation.of(text);
        assertEquals(count, variation.values().size());
        assertEquals(first, variation.values().get(0));
    }

    @Test
    void numbersOfCombinationsDoNotOverflow() {
        List<String> ten = IntStream.range(0, 10).mapToObj(Integer::toString).toList();
        Combinations many = Combinations.of(IntStream.range(0, 12)
                .mapToObj(i -> new Variation("field" + i, ten))
                .toList());
        assertEquals(Integer.MAX_VALUE, many.count());
        assertThrows(IllegalArgumentException.class, () -> many.of("x", LODGE, List.of(), true));
    }

    private static List<String> names(VariantRuns runs) {
        return runs.drawn().stream().map(NamedRun::name).toList();
    }

    private static List<Variant> variants(String... variations) {
        List<Variation> read = List.of(variations).stream().map(Variation::of).toList();
        return Combinations.of(read).of("lodge", LODGE, List.of(), true);
    }
}
