package io.github.heatswell.scenarios.catalogue;

import static io.github.heatswell.scenarios.catalogue.Runs.count;
import static io.github.heatswell.scenarios.catalogue.Runs.hottest;
import static io.github.heatswell.scenarios.catalogue.Runs.peak;
import static io.github.heatswell.scenarios.catalogue.Runs.relieved;
import static io.github.heatswell.scenarios.catalogue.Runs.run;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.result.Event;
import io.github.heatswell.result.RunResult;
import org.junit.jupiter.api.Test;

/** What happens when the heater cannot be switched off. */
class FailureOutcomeTest {

    @Test
    void theValveHoldsARunaway() {
        RunResult result = run("kiln-house-runaway");
        assertTrue(result.hazard().isEmpty());
        assertEquals(99, hottest(result), 0.01);
        assertTrue(count(result, Event.Kind.RELIEF_OPENED) > 1);
        assertTrue(relieved(result) > 100);
    }

    @Test
    void aCutOutComesBeforeTheValve() {
        RunResult result = run("kiln-house-cut-out");
        assertEquals(85, hottest(result), 0.01);
        assertEquals(1, count(result, Event.Kind.CUT_OUT_TRIPPED));
        assertEquals(0, relieved(result));
        assertEquals(1, count(result, Event.Kind.HEATER_ON));
    }

    @Test
    void aBlockedValveEndsInVapour() {
        RunResult result = run("kiln-house-blocked");
        assertEquals(Event.Kind.VAPOUR_FORMS, result.hazard().orElseThrow().kind());
        assertTrue(hottest(result) > 130);
        assertEquals(2.5, peak(result), 1e-6);
    }
}
