package io.github.heatswell.reference;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.result.RunResult;
import io.github.heatswell.simulation.Simulation;
import io.github.heatswell.water.GibbsPolynomialWater;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Validation of the library against the unreduced equations: conserved masses and energy, finite conductances, an implicit
 * integrator. The two share the description of the system and the properties of water, nothing else.
 *
 * <p>The bounds are what a user may expect, far above the tolerances of either integration (1e-9 for the reference) and
 * above what finite conductances do, at most 35 Pa while a valve is wide open.
 */
@Tag("validation")
class UnreducedComparisonTest {

    private static final double SAMPLE = 60;
    private static final double TOLERANCE = 1e-9;

    /** Absolute pressure: 0.1 %, less than the hand of a pressure gauge is wide. */
    private static final double PRESSURE = 1e-3;

    /** Water temperature: 0.01 K, the last digit of a good probe. */
    private static final double TEMPERATURE = 0.01;

    /** Water in the vessel, of its volume: what 0.1 % of the pressure of isothermal gas stands for. */
    private static final double VESSEL_WATER = 1e-3;

    /** Relieved and let-in mass: 0.3 % of what the valves gave off or the mains let in, whichever is more. */
    private static final double MASS = 3e-3;

    /** Mass (kg) below which a share says nothing: a drop. */
    private static final double DROP = 0.25e-3;

    /** Openings of a snap-acting valve over a whole run: 2 %, since a cycle more or less may fall off the end. */
    private static final double OPENINGS = 0.02;

    static List<ComparisonCase> cases() {
        return ComparisonCase.all();
    }

    @ParameterizedTest
    @MethodSource("cases")
    void libraryFollowsTheUnreducedEquations(ComparisonCase chosen) {
        double seconds = chosen.hours() * 3600;
        UnreducedSystem equations =
                new UnreducedSystem(chosen.system(), GibbsPolynomialWater.instance(), Conductances.ample());
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
                () -> assertInstants(agreement.referenceEvents(), agreement.libraryEvents()),
                () -> assertEquals(0, agreement.openings(), OPENINGS, "openings"),
                () -> assertMasses(agreement, reference, library));
    }

    private static void assertInstants(Map<String, List<Double>> expected, Map<String, List<Double>> found) {
        assertEquals(expected.keySet(), found.keySet(), "kinds of events");
        expected.forEach((kind, instants) -> {
            List<Double> others = found.get(kind);
            assertEquals(instants.size(), others.size(), kind + ": " + instants + " expected, found " + others);
            for (int i = 0; i < instants.size(); i++) {
                assertEquals(instants.get(i), others.get(i), Agreement.NEAR, kind + " (s), number " + i);
            }
        });
    }

    private static void assertMasses(Agreement agreement, ReferenceRun reference, RunResult library) {
        double moved = Math.max(agreement.referenceRelieved(), reference.letIn());
        double bound = MASS * moved + DROP;
        assertEquals(agreement.referenceRelieved(), agreement.libraryRelieved(), bound, "relieved (kg)");
        assertEquals(reference.letIn(), agreement.cold(library.totals().letIn()), bound, "let in (kg)");
        double returned = agreement.cold(library.totals().returned());
        assertEquals(reference.returned(), returned, MASS * reference.returned() + DROP, "gone back (kg)");
        assertTrue(library.audit().closes(), "the library's own books close");
    }
}
