package io.github.heatswell.scenarios.report;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.result.RunResult;
import io.github.heatswell.scenarios.catalogue.Catalogue;
import io.github.heatswell.scenarios.file.Change;
import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.units.UnitSystem;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Regression: what nobody knows is not told as found. */
class UnknownsTest {

    private static String report(Scenario scenario) {
        RunResult run = scenario.simulation().run();
        return Pages.onScreen(scenario, run, UnitSystem.US).text().replaceAll("\\s+", " ");
    }

    private static Scenario precharge(String value) {
        return Catalogue.read("orchard-lodge-vessel").with(List.of(Change.of("vessel.precharge=" + value)));
    }

    @Test
    void aPrechargeThatNobodyKnowsIsNoFault() throws IOException {
        Scenario unknown = precharge("15 psi to 60 psi");
        String text = report(unknown);
        assertTrue(
                text.contains(
                        "Caution: The precharge of the expansion tank is not known. Assumed to be 37.5 psi, it would"
                                + " be below the"),
                text);
        assertTrue(text.contains("measure the precharge with a tire gauge"), text);
        assertFalse(text.contains("The expansion tank is charged to"), text);
        ByteArrayOutputStream json = new ByteArrayOutputStream();
        SummaryJson.of(unknown, RunFindings.of(unknown.simulation().run())).write(json);
        assertFalse(json.toString(StandardCharsets.UTF_8).contains("tank is charged to"));
    }

    @Test
    void theHoursOfATestAreNoTimesOfDay() {
        Scenario house = Catalogue.read("orchard-lodge-vessel");
        String said = "The draw times are those of a test (US test pattern, medium use)";
        assertTrue(report(house.with(List.of(Change.of("draws=us-medium")))).contains(said));
        assertFalse(report(house.with(List.of(Change.of("draws=eu-m")))).contains("hours of the draws"));
    }

    @Test
    void aPrechargeThatWasReadIsOne() {
        for (String read : List.of("37.5 psi", "37.5 psi +- 2 psi")) {
            String text = report(precharge(read));
            assertTrue(text.contains("Fault: The expansion tank is charged to 37.5 psi"), text);
        }
    }
}
