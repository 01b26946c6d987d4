package io.github.heatswell.scenarios.catalogue;

import static io.github.heatswell.scenarios.catalogue.Runs.bar;
import static io.github.heatswell.scenarios.catalogue.Runs.count;
import static io.github.heatswell.scenarios.catalogue.Runs.first;
import static io.github.heatswell.scenarios.catalogue.Runs.litres;
import static io.github.heatswell.scenarios.catalogue.Runs.lowest;
import static io.github.heatswell.scenarios.catalogue.Runs.peak;
import static io.github.heatswell.scenarios.catalogue.Runs.relieved;
import static io.github.heatswell.scenarios.catalogue.Runs.run;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.result.Channel;
import io.github.heatswell.result.Event;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.result.Trace;
import org.junit.jupiter.api.Test;

/** What the arrangement of the supply does. */
class SupplyOutcomeTest {

    @Test
    void aLeakingCheckValveLetsThePressureSinkBack() {
        RunResult result = run("ford-house-leaking-check");
        Trace trace = result.trace();
        assertEquals(3.8, bar(result, trace.value(Channel.PRESSURE_ABSOLUTE, 5 * 60)), 0.05);
        assertTrue(litres(result.totals().returned()) > 1);
        assertTrue(relieved(result) < 1);
    }

    @Test
    void withoutSupplyACoolingTankLosesItsPressure() {
        RunResult result = run("ford-house-shut-off");
        assertTrue(result.hazard().isEmpty());
        assertTrue(lowest(result) < 3 && lowest(result) > 0);
        double restored = first(result, Event.Kind.SUPPLY_RESTORED);
        assertEquals(7 * 3600, restored, 1e-6);
        int after = (int) (restored / 60) + 1;
        assertEquals(3.8, bar(result, result.trace().value(Channel.PRESSURE_ABSOLUTE, after)), 0.01);
    }

    @Test
    void aReducingValveKeepsTheExpansionIn() {
        RunResult result = run("tannery-yard");
        assertEquals(3.3, lowest(result), 1e-3);
        assertEquals(6, peak(result), 1e-3);
        assertTrue(relieved(result) > 2);
        assertEquals(0, result.totals().returned());
    }

    @Test
    void aBypassLetsItBackToTheMains() {
        RunResult result = run("tannery-yard-bypass");
        assertEquals(5.2, peak(result), 1e-3);
        assertEquals(0, relieved(result));
        assertTrue(litres(result.totals().returned()) > 2);
    }

    @Test
    void aBypassSavesNothingUnderAMainsAboveTheReliefSet() {
        RunResult result = run("tannery-yard-bypass-high-mains");
        assertEquals(0, count(result, Event.Kind.BYPASS_OPENED));
        assertEquals(0, result.totals().returned());
        assertEquals(relieved(run("tannery-yard")), relieved(result), 0.01);
    }

    @Test
    void coldWaterOfLateWinterDrivesOutMore() {
        RunResult result = run("heron-hill-year");
        assertTrue(result.hazard().isEmpty());
        Trace trace = result.trace();
        double winter = trace.value(Channel.RELIEVED_TOTAL, 75) - trace.value(Channel.RELIEVED_TOTAL, 45);
        double summer = trace.value(Channel.RELIEVED_TOTAL, 255) - trace.value(Channel.RELIEVED_TOTAL, 225);
        // what the flue loses all year is reheated all year, and takes from the difference that the seasons make
        assertTrue(winter > 1.05 * summer, litres(winter) + " L against " + litres(summer) + " L");
    }
}
