package io.github.heatswell.reference;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.IntStream;

/** Some houses drawn at random, of which library and unreduced equations must say the same. */
final class RandomLook {

    /** As many houses of each kind, from the first one on; if it is not said, a few that take less than a second each. */
    private static final int SYSTEMS = Integer.getInteger("reference.systems", 0);

    /** Highest gauge pressure: 0.02 %. */
    private static final double PEAK = 2e-4;
    /** What each relief valve gave off, and of the vessels' volume what they hold: 0.1 %. */
    private static final double SHARE = 1e-3;
    /** Mass (kg) below which a share says nothing: a drop. */
    private static final double DROP = 0.25e-3;

    private final Function<ComparisonCase, RandomComparison> compare;

    /**
     * A look.
     *
     * @param compare how a house is compared
     */
    RandomLook(Function<ComparisonCase, RandomComparison> compare) {
        this.compare = compare;
    }

    private static List<ComparisonCase> chosen(Supplier<ComparisonCase> cases, int... quick) {
        int drawn = SYSTEMS > 0 ? SYSTEMS : IntStream.of(quick).max().orElseThrow() + 1;
        List<ComparisonCase> all = new ArrayList<>();
        for (int i = 0; i < drawn; i++) {
            all.add(cases.get());
        }
        return SYSTEMS > 0 ? all : IntStream.of(quick).mapToObj(all::get).toList();
    }

    /** {@return whether peak, volumes and balance agree, and all instants within seconds} */
    static boolean agrees(RandomComparison compared) {
        return agreesInAmounts(compared) && agreesInInstants(compared);
    }

    private static boolean agreesInAmounts(RandomComparison compared) {
        return Math.abs(compared.peak()) <= PEAK
                && compared.relieved(DROP) <= SHARE
                && compared.agreement().vesselWater() <= SHARE
                && compared.library().audit().closes();
    }

    private static boolean agreesInInstants(RandomComparison compared) {
        return Math.abs(compared.end()) <= RandomComparison.SECONDS
                && compared.instants().apart().isEmpty();
    }

    /**
     * Pressures and volumes agree in every house. Of a hundred houses one may differ in an instant: where a thermostat is
     * approached at a hundredth of a millikelvin a second, the reference itself puts it minutes elsewhere with ampler conductances.
     *
     * @param cases draws the houses
     * @param quick which of them take less than a second, counted from 0
     * @return how each compares
     */
    List<RandomComparison> follow(Supplier<ComparisonCase> cases, int... quick) {
        List<RandomComparison> all = new ArrayList<>();
        List<String> wrong = new ArrayList<>();
        List<String> apart = new ArrayList<>();
        double[] widest = new double[4];
        for (ComparisonCase house : chosen(cases, quick)) {
            RandomComparison compared = assertDoesNotThrow(() -> compare.apply(house), house::name);
            all.add(compared);
            widest[0] = Math.max(widest[0], Math.abs(compared.peak()));
            widest[1] = Math.max(widest[1], compared.relieved(DROP));
            widest[2] = Math.max(widest[2], compared.agreement().vesselWater());
            widest[3] = Math.max(widest[3], compared.instants().widest());
            if (!agreesInAmounts(compared)) {
                wrong.add(compared.toString());
            } else if (!agreesInInstants(compared)) {
                apart.add(compared.toString());
            }
        }
        if (SYSTEMS > 0) {
            // a long look is for reading
            System.out.println(all.size() + " houses; widest differences: peak " + widest[0] + ", relieved " + widest[1]
                    + ", water held " + widest[2] + ", instants " + widest[3] + " s");
        }
        assertEquals(List.of(), wrong);
        assertTrue(apart.size() <= all.size() / 100, apart::toString);
        return all;
    }
}
