package io.github.heatswell.scenarios.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.assessment.Doubts;
import io.github.heatswell.assessment.Finding;
import io.github.heatswell.assessment.Findings;
import io.github.heatswell.narrative.Narrative;
import io.github.heatswell.result.Event;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.scenarios.file.ScenarioReader;
import io.github.heatswell.units.UnitSystem;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

/** Regression: how often a valve opened is one number, wherever it is given. */
class OneCountTest {

    /** Pressure lifts the valve each time before hot water opens it fully. */
    private static final Scenario TOO_HOT = ScenarioReader.read("too-hot", """
            supply: { arrangement: check-valve, pressure: 4.2 bar }
            tank:   { volume: 230 L, material: steel }
            heater: { energy: gas, input: 11.2 kW, set-point: 98 degC }
            relief:
              - { name: T&P valve, opens: 7 bar, opens-at: 97 degC }
            run:    { duration: 6 h }
            """);

    @Test
    void openingsAreCountedAlike() throws IOException {
        RunResult run = TOO_HOT.simulation().run();
        int openings = run.totals().relief().get(0).openings();
        assertTrue(openings > 2, "it opens often: " + openings);
        assertTrue(
                run.events().stream().anyMatch(event -> event.kind() == Event.Kind.RELIEF_OPENED_FULLY),
                "and fully, which is no opening");
        assertEquals(openings, run.summary().openings("T&P valve").count());
        String headline = Narrative.of(run.summary(), Doubts.NONE).headline().text(UnitSystem.SI);
        assertTrue(headline.contains("opens " + openings + " times, first on temperature after 2 h"), headline);
        String sentence = Findings.of(run.summary()).stream()
                .filter(finding -> finding.id().equals("relief-valve-controls-expansion"))
                .map(Finding::sentence)
                .map(said -> said.text(UnitSystem.SI))
                .findFirst()
                .orElseThrow();
        assertTrue(sentence.contains("opened " + openings + " times in the run"), sentence);
        ByteArrayOutputStream json = new ByteArrayOutputStream();
        SummaryJson.of(TOO_HOT, RunFindings.of(run)).write(json);
        String text = json.toString(StandardCharsets.UTF_8).replaceAll("\\s", "");
        assertTrue(text.contains("\"openings\":" + openings), text);
    }
}
