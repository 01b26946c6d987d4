package io.github.heatswell.reference;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.result.Channel;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.simulation.Simulation;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.water.GibbsPolynomialWater;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Validation of the library against the unreduced equations for houses drawn at random. More of them are looked at with
 * {@code -Dtest.jvm.options=-Dreference.systems=200}, and others from another {@code reference.from} on.
 *
 * <p>Most peaks are thresholds that both sides know: the set pressure of a valve, the mains, the start. They say that both
 * get there; how much they share otherwise, the relieved water, the instants and the remaining peaks say.
 */
@Tag("validation")
@Order(1)
class RandomComparisonTest {

    private static final int ORDINARY = 2;
    private static final int SYSTEMS = Integer.getInteger("reference.systems", ORDINARY);
    private static final int FEWER = Integer.getInteger("reference.systems", ORDINARY / 2);
    private static final long FROM = Long.getLong("reference.from", 1);

    /** Where houses with air begin; the reference takes minutes for some of the first ones of this sequence. */
    private static final long AIR_FROM = 50;

    private static final int AIR_SKIPPED = 19;

    /** Where houses with a hot branch begin. */
    private static final long HOT_FROM = 100;
    /** Where houses with a circulation loop begin. */
    private static final long LOOP_FROM = 200;

    /** The reference takes longer for these first ones than for a dozen others. */
    private static final int LOOP_SKIPPED = 3;

    /** This one heats cold water while its pump runs. */
    private static final int LOOP_WARMS = 26;

    private static final double TOLERANCE = 1e-8;
    /** As for the chosen cases with taps: 15 Pa at 0.15 kg/s. */
    private static final Conductances CONDUCTANCES = new Conductances(1e-2, 1e-1);

    /** Highest pressure: 0.2 % of the gauge pressure, which is stricter than of the absolute one. */
    private static final double PEAK = 2e-3;
    /** What each relief valve gave off, and of the vessels' volume what they hold: 0.5 %. */
    private static final double SHARE = 5e-3;
    /** Mass (kg) below which a share says nothing: a drop. */
    private static final double DROP = 0.25e-3;

    /** How far houses with a loop may lie apart: a tenth in the peak, a fifth in volumes. */
    private static final double LOOP_PEAK = 2e-4;

    private static final double LOOP_SHARE = 1e-3;

    private static boolean agreesInAmounts(RandomComparison compared, double peak, double share) {
        return Math.abs(compared.peak()) <= peak
                && compared.relieved(DROP) <= share
                && compared.agreement().vesselWater() <= share
                && compared.library().audit().closes();
    }

    private static boolean agreesInInstants(RandomComparison compared) {
        return Math.abs(compared.end()) <= RandomComparison.SECONDS
                && compared.instants().apart().isEmpty();
    }

    /** Where both differ, the reference is integrated anew with ten times as ample conductances: its error is then less. */
    private static RandomComparison compared(ComparisonCase house, double peak, double share) {
        RandomComparison compared = new RandomComparison(house, CONDUCTANCES, TOLERANCE);
        return agreesInAmounts(compared, peak, share) && agreesInInstants(compared)
                ? compared
                : new RandomComparison(house, CONDUCTANCES.finer(), TOLERANCE);
    }

    /**
     * Pressures and volumes agree in every house. Of a hundred houses one may differ in an instant: where a thermostat is
     * approached at a hundredth of a millikelvin a second, the reference itself puts it minutes elsewhere with ampler
     * conductances.
     */
    @Test
    void libraryFollowsTheUnreducedEquations() {
        follow(new RandomCases(FROM)::next, SYSTEMS);
    }

    /**
     * The same with air under the top of the tank. A longer look went over 65 houses: peaks within 0.01 %, relieved volumes within
     * 0.06 %, instants within 5 s; one more, whose weeping valve comes to rest on its seat, agrees as well. Left out is one that the
     * reference could not follow within a minute.
     */
    @Test
    void libraryFollowsTheUnreducedEquationsWithAir() {
        RandomCases cases = new RandomCases(FROM + AIR_FROM);
        for (int i = 0; i < AIR_SKIPPED; i++) {
            cases.nextWithAir();
        }
        follow(cases::nextWithAir, SYSTEMS);
    }

    /**
     * The same with a hot branch between the tank and its taps. A longer look went over 70 houses. In 55 of them peaks agreed within
     * 0.002 %, relieved and drawn volumes within 0.04 %, instants within 1.5 s; the reference did not end within 40 s for the others.
     */
    @Test
    void libraryFollowsTheUnreducedEquationsWithAHotBranch() {
        follow(new RandomCases(FROM + HOT_FROM)::nextWithHotBranch, FEWER);
    }

    /**
     * The same with a circulation loop. A longer look went over 60 houses, and the reference ended in all of them: peaks agreed within
     * 0.004 %, relieved volumes within 0.01 %, instants within 5 s. Too little mixing in the reference lets the layer of a thermostat run
     * ahead of those above it, three seconds a cycle in one house; with ten times as much, its instants agree within 2.1 s.
     */
    @Test
    void libraryFollowsTheUnreducedEquationsWithALoop() {
        RandomCases cases = new RandomCases(FROM + LOOP_FROM);
        for (int i = 0; i < LOOP_SKIPPED; i++) {
            cases.nextWithLoop();
        }
        follow(cases::nextWithLoop, FEWER, LOOP_PEAK, LOOP_SHARE);
    }

    /**
     * While water in the loop warms and expands, nothing flows against the pump; if it did, this loop would be two millikelvins warmer.
     */
    @Test
    void aLoopWarmsAlike() {
        RandomCases cases = new RandomCases(FROM + LOOP_FROM);
        HotWaterSystem house = Stream.generate(cases::nextWithLoop)
                .skip(LOOP_WARMS)
                .findFirst()
                .orElseThrow()
                .system();
        RunResult library = Simulation.of(house, Duration.ofMinutes(10)).run();
        UnreducedSystem equations = new UnreducedSystem(house, GibbsPolynomialWater.instance(), CONDUCTANCES);
        ReferenceRun reference = ReferenceRun.of(equations, library.end(), library.end(), 10 * TOLERANCE);
        Column column = equations.column();
        column.settle(reference.state());
        assertEquals(
                column.layer(column.count()).temperature(),
                library.trace().value(Channel.WATER_IN_LOOP, library.trace().count() - 1),
                5e-4); // K: of a warming by 35 K
    }

    private static void follow(Supplier<ComparisonCase> cases, int systems) {
        follow(cases, systems, PEAK, SHARE);
    }

    private static void follow(Supplier<ComparisonCase> cases, int systems, double most, double share) {
        List<String> wrong = new ArrayList<>();
        List<String> apart = new ArrayList<>();
        double peak = 0;
        double relieved = 0;
        double end = 0;
        double instants = 0;
        for (int i = 0; i < systems; i++) {
            ComparisonCase house = cases.get();
            RandomComparison compared = assertDoesNotThrow(() -> compared(house, most, share), house::name);
            peak = Math.max(peak, Math.abs(compared.peak()));
            relieved = Math.max(relieved, compared.relieved(DROP));
            end = Math.max(end, Math.abs(compared.end()));
            instants = Math.max(instants, compared.instants().widest());
            if (!agreesInAmounts(compared, most, share)) {
                wrong.add(compared.toString());
            } else if (!agreesInInstants(compared)) {
                apart.add(compared.toString());
            }
        }
        if (systems > ORDINARY) {
            // a long look is for reading
            System.out.println(systems + " houses; widest differences: peak " + peak + ", relieved " + relieved
                    + ", end " + end + " s, instants " + instants + " s");
        }
        assertEquals(List.of(), wrong);
        assertTrue(apart.size() <= systems / 100, apart::toString);
    }
}
