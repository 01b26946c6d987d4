package io.github.heatswell.scenarios.report;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.result.RunResult;
import io.github.heatswell.scenarios.catalogue.Catalogue;
import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.units.UnitSystem;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A streamed run gives what a held one gives. */
class StreamedRunTest {

    private final Scenario scenario = Catalogue.read("mill-cottage").sampledEvery(Duration.ofMinutes(5));

    @Test
    void tablesAndSummaryAreThoseOfAHeldRun() throws IOException {
        RunResult result = scenario.simulation().run();
        List<ResultFile> held = Results.of(scenario, result, UnitSystem.SI);
        StreamedRun run = new StreamedRun(scenario, UnitSystem.SI);
        List<ResultFile> streamed = run.files();
        assertTrue(run.findings().isEmpty());
        for (int i = 0; i < held.size(); i++) {
            assertEquals(held.get(i).name(), streamed.get(i).name());
            byte[] bytes = bytes(streamed.get(i));
            if (i < 3) {
                assertArrayEquals(bytes(held.get(i)), bytes, held.get(i).name());
            }
            assertTrue(bytes.length > 0);
        }
        assertEquals(RunFindings.of(result), run.findings().orElseThrow());
        assertEquals(
                Results.answer(scenario, result, UnitSystem.SI).report().get(),
                run.answer().report().get());
    }

    @Test
    void itTellsHowFarItIsWhileTheTraceIsWritten() throws IOException {
        int[] told = {0, 0};
        StreamedRun run =
                new StreamedRun(scenario, UnitSystem.SI).telling((done, total) -> told[done == 1 ? 0 : 1] = total);
        ResultFile trace = run.files().get(0);
        assertArrayEquals(new int[] {0, 0}, told);
        bytes(trace);
        assertEquals(scenario.duration().toHours(), told[0]);
        assertEquals(told[0], told[1]);
    }

    @Test
    void theTraceComesFirst() {
        ResultFile events = new StreamedRun(scenario, UnitSystem.SI).files().get(1);
        assertThrows(IllegalStateException.class, () -> bytes(events));
    }

    @Test
    void onlyLongRunsAreStreamed() {
        Scenario year = Catalogue.read("heron-hill-year");
        assertFalse(StreamedRun.suits(year));
        assertTrue(StreamedRun.suits(year.sampledEvery(Duration.ofMinutes(1))));
    }

    private static byte[] bytes(ResultFile file) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        file.writeTo(bytes);
        return bytes.toByteArray();
    }
}
