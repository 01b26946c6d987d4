package io.github.heatswell.scenarios.catalogue;

import static io.github.heatswell.scenarios.catalogue.Runs.bar;
import static io.github.heatswell.scenarios.catalogue.Runs.litres;
import static io.github.heatswell.scenarios.catalogue.Runs.run;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.assessment.Finding;
import io.github.heatswell.assessment.Findings;
import io.github.heatswell.result.Channel;
import io.github.heatswell.result.Event;
import io.github.heatswell.result.RunResult;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What the bundled scenarios expect comes out. */
class OutcomeTest {

    @Test
    void behindACheckValveTheReliefValveOpensAndDrips() {
        RunResult result = run("orchard-lodge");
        assertTrue(result.hazard().isEmpty());
        double opened = result.first(Event.Kind.RELIEF_OPENED).orElseThrow().time();
        double heaterOff = result.first(Event.Kind.HEATER_OFF).orElseThrow().time();
        double reseated = result.first(Event.Kind.RELIEF_RESEATED).orElseThrow().time();
        assertTrue(opened < heaterOff / 2, "opens early in the heat-up");
        assertTrue(reseated >= heaterOff && reseated - heaterOff < 60, "drips until the heat-up ends");
        assertTrue(
                litres(result.totals().relieved()) > 2 && litres(result.totals().relieved()) < 5);
    }

    @Test
    void aChargedVesselKeepsTheReliefValveShut() {
        RunResult result = run("orchard-lodge-vessel");
        assertTrue(result.hazard().isEmpty());
        assertTrue(result.first(Event.Kind.RELIEF_OPENED).isEmpty());
        assertEquals(0, result.totals().relieved());
        assertTrue(bar(result, result.extremes().highestPressure().value()) < 7);
        assertTrue(result.first(Event.Kind.VESSEL_BOTTOMED_OUT).isEmpty());
    }

    @Test
    void aVesselWithoutChargeIsFullFromTheStartAndWorthNothing() {
        RunResult result = run("orchard-lodge-lost-charge");
        assertEquals(7.2, litres(result.trace().value(Channel.VESSEL_WATER, 0)), 1e-6);
        RunResult without = run("orchard-lodge");
        double relieved = result.totals().relieved();
        assertEquals(without.totals().relieved(), relieved, 0.01 * relieved);
        double opened = result.first(Event.Kind.RELIEF_OPENED).orElseThrow().time();
        assertEquals(without.first(Event.Kind.RELIEF_OPENED).orElseThrow().time(), opened, 0.02 * opened);
    }

    @Test
    void withoutACheckValveThePressureStaysAtTheSupplys() {
        RunResult result = run("ferry-cottage");
        assertTrue(result.hazard().isEmpty());
        assertEquals(3.4, bar(result, result.extremes().highestPressure().value()), 1e-6);
        assertEquals(3.4, bar(result, result.extremes().lowestPressure().value()), 1e-6);
        assertTrue(litres(result.totals().returned()) > 1);
        assertEquals(0, result.totals().relieved());
    }

    @Test
    void aCheckValveAndNothingElseEndsAtTheTestPressureInTheFirstHeatUp() {
        RunResult result = run("quarry-row");
        assertEquals(
                Event.Kind.TEST_PRESSURE_REACHED, result.hazard().orElseThrow().kind());
        assertTrue(
                result.first(Event.Kind.WORKING_PRESSURE_EXCEEDED).orElseThrow().time()
                        < result.hazard().orElseThrow().time());
        assertTrue(result.first(Event.Kind.HEATER_OFF).isEmpty(), "the first heat-up is not over");
        assertEquals(result.end(), result.hazard().orElseThrow().time(), 1e-9);
    }

    @Test
    void aValveSetToTheWorkingPressureKeepsItFromBeingExceeded() {
        RunResult result = run("ridge-house");
        assertTrue(result.hazard().isEmpty());
        assertTrue(result.first(Event.Kind.WORKING_PRESSURE_EXCEEDED).isEmpty());
        assertTrue(result.first(Event.Kind.RELIEF_OPENED).isPresent());
    }

    /** A safety group discharges what the water gains, on an ordinary day a share of the tank below the 3 % of the trade, and nothing is wrong with it. */
    @Test
    void aSafetyGroupDoesItsWork() {
        RunResult result = run("vineyard-cottage");
        double relieved = litres(result.totals().relieved());
        assertTrue(relieved > 2 && relieved < 4 && relieved < 0.03 * 200, "about three litres: " + relieved);
        assertTrue(Findings.of(result.summary()).stream()
                .allMatch(finding -> finding.severity() == Finding.Severity.NOTE));
    }

    @Test
    void anExpansionValveOpensBeforeTheTemperatureAndPressureReliefValve() {
        RunResult result = run("shearers-hut");
        assertTrue(result.summary().openings("cold water valve").count() > 0);
        assertEquals(0, result.summary().openings("T&P valve").count());
        assertEquals(0, result.totals().relief().get(1).volume());
        assertTrue(bar(result, result.extremes().highestPressure().value()) < 7.7);
    }

    static Stream<String> names() {
        return Catalogue.names().stream();
    }

    @ParameterizedTest
    @MethodSource("names")
    void theBooksClose(String name) {
        RunResult result = run(name);
        assertTrue(result.audit().closes(), () -> result.audit().toString());
        assertFalse(result.events().isEmpty());
    }
}
