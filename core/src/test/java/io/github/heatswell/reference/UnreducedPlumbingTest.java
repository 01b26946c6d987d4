package io.github.heatswell.reference;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.reference.UnreducedSystem.Integral;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.result.Totals;
import io.github.heatswell.simulation.Simulation;
import io.github.heatswell.water.GibbsPolynomialWater;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Validation of draws, feeds, faults and layers against the unreduced equations. Pressures are compared at every minute,
 * everything that crossed the boundary at the end, and every event.
 */
@Tag("validation")
@Order(1)
class UnreducedPlumbingTest {

    private static final double SAMPLE = 60;
    private static final double TOLERANCE = 1e-8;

    /** Ten times as ample as for expansion alone: a tap takes a hundred times as much, 15 Pa at 0.15 kg/s. */
    private static final Conductances CONDUCTANCES = new Conductances(1e-2, 1e-1);

    /** Absolute pressure: 0.2 %. */
    private static final double PRESSURE = 2e-3;

    /** Mean water temperature (K). */
    private static final double TEMPERATURE = 0.05;

    /** Water in the vessel, of its volume: what 0.2 % of the pressure of isothermal gas stands for. */
    private static final double VESSEL_WATER = 2e-3;

    /** What crossed the boundary: 0.5 %. */
    private static final double SHARE = 5e-3;

    /** Mass (kg) below which a share says nothing: a drop. */
    private static final double DROP = 0.25e-3;

    /**
     * Instants (s). The widest differences are where gas with a time constant brings the pressure back to that of the
     * mains at half a pascal a second, so that the few pascal the feed takes are seconds.
     */
    private static final double SECONDS = 5;

    static List<ComparisonCase> cases() {
        return PlumbingCases.all();
    }

    @ParameterizedTest
    @MethodSource("cases")
    void libraryFollowsTheUnreducedEquations(ComparisonCase chosen) {
        double seconds = chosen.hours() * 3600;
        UnreducedSystem equations = new UnreducedSystem(chosen.system(), GibbsPolynomialWater.instance(), CONDUCTANCES);
        ReferenceRun reference = ReferenceRun.of(equations, seconds, SAMPLE, TOLERANCE);
        RunResult library = Simulation.of(chosen.system(), Duration.ofSeconds((long) seconds))
                .run();
        Agreement agreement = new Agreement(reference, library);
        assertAll(
                () -> assertEquals(reference.last().time(), library.end(), Agreement.NEAR, "end of the run"),
                () -> assertEquals(
                        0, agreement.pressure(), PRESSURE, "pressure, worst at " + agreement.pressureWorstAt() + " s"),
                () -> assertEquals(0, agreement.temperature(), TEMPERATURE, "water temperature (K)"),
                () -> assertEquals(0, agreement.vesselWater(), VESSEL_WATER, "water in the vessel"),
                () -> assertInstants(agreement.lastingReferenceEvents(), agreement.lastingLibraryEvents()),
                () -> assertTotals(agreement, reference, library.totals()),
                () -> assertTrue(library.audit().closes(), "the library's own books close"));
    }

    private static void assertTotals(Agreement agreement, ReferenceRun reference, Totals totals) {
        assertShare(reference.letIn(), agreement.cold(totals.letIn()), "let in (kg)");
        assertShare(reference.returned(), agreement.cold(totals.returned()), "gone back (kg)");
        assertShare(reference.total(Integral.DRAWN), agreement.cold(totals.drawn()), "drawn (kg)");
        assertShare(reference.total(Integral.LEAKED), agreement.cold(totals.leaked()), "leaked (kg)");
        assertShare(reference.total(Integral.DELIVERED), totals.heatDelivered(), "delivered (J)");
        for (int i = 0; i < totals.relief().size(); i++) {
            assertShare(
                    reference.relieved(i),
                    totals.relief().get(i).mass(),
                    totals.relief().get(i).name());
        }
    }

    private static void assertShare(double expected, double found, String what) {
        assertEquals(expected, found, SHARE * Math.abs(expected) + DROP, what);
    }

    private static void assertInstants(Map<String, List<Double>> expected, Map<String, List<Double>> found) {
        assertEquals(new TreeMap<>(expected).keySet(), new TreeMap<>(found).keySet(), "kinds of events");
        expected.forEach((kind, instants) -> {
            List<Double> others = found.get(kind);
            assertEquals(instants.size(), others.size(), kind + ": " + instants + " expected, found " + others);
            for (int i = 0; i < instants.size(); i++) {
                assertEquals(instants.get(i), others.get(i), SECONDS, kind + " (s), number " + i);
            }
        });
    }
}
