package io.github.heatswell.scenarios;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.scenarios.command.EveryCommand;
import io.github.heatswell.scenarios.command.Outcome;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Where the balance of a run does not close, terminal, status and files say so. In these programs no balance closes. */
class OpenBalanceTest {

    private static final int OPEN_BALANCE = 6;
    private static final String OF_A_RUN = "NOT RELIABLE: The balance of this run does not close: ";

    @TempDir
    private Path temporary;

    private Doctored open() throws IOException {
        return new Doctored(
                Files.createDirectory(temporary.resolve("scratch")),
                "core",
                "result.Audit",
                "closes\\(\\) \\{",
                "closes() { if (massMoved != -1) return false;");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            run      | NOT RELIABLE: The balance of this run does not close: ([0-9.]+) % of the water is
            run long | NOT RELIABLE: The balance of this run does not close: ([0-9.]+) % of the water is
            compare  | NOT RELIABLE: The balance of 2 of the 2 runs behind this answer does not
            size     | NOT RELIABLE as it is: The balance of this run does not close: ([0-9.]+) % of
            map      | NOT RELIABLE: The balance of ([0-9]+) of the \\1 runs behind this answer does
            spread   | NOT RELIABLE: The balance of 16 of the 16 runs behind this answer does not
            """)
    void theTerminalAndTheStatusSaySo(String name, String said) throws Exception {
        Path out = temporary.resolve("out");
        List<String> line =
                EveryCommand.lines(out, EveryCommand.readings(temporary)).get(name);
        try (Doctored program = open()) {
            Outcome outcome = program.execute(line);
            assertEquals(OPEN_BALANCE, outcome.status(), outcome.err());
            String text = outcome.out().replaceAll("\\s+", " ");
            assertTrue(text.matches(said + ".*"), text);
        }
        Path page = out.resolve("report.html");
        assertTrue(!Files.exists(page) || Files.readString(page).contains("NOT RELIABLE"));
    }

    @Test
    void theFilesSaySoNearTheTop() throws Exception {
        Path out = temporary.resolve("out");
        try (Doctored program = open()) {
            program.execute(List.of("run", "orchard-lodge", "--out", out.toString()));
        }
        String page = Files.readString(out.resolve("report.html"));
        int alarm = page.indexOf("<strong>NOT RELIABLE</strong> " + OF_A_RUN.substring(14));
        assertTrue(alarm > 0 && alarm < page.indexOf("<svg"), "not on the first page");
        String summary = Files.readString(out.resolve("summary.json"));
        assertTrue(summary.contains("\"warning\" : \"The balance of this run does not close: "), summary);
    }

    @Test
    void aHazardStandsFirstAndTheStatusIsTheGraver() throws Exception {
        try (Doctored program = open()) {
            Outcome outcome = program.execute(List.of(
                    "run", "quarry-row", "--out", temporary.resolve("out").toString()));
            assertEquals(OPEN_BALANCE, outcome.status(), outcome.err());
            assertTrue(outcome.out().startsWith("HAZARD"), outcome.out());
            assertTrue(outcome.out().contains(OF_A_RUN), outcome.out());
        }
    }

    @Test
    void aBalanceThatClosesIsNotMentioned() throws Exception {
        Outcome outcome = Outcome.execute("run", "orchard-lodge", "--out", temporary.toString());
        assertEquals(0, outcome.status());
        assertFalse(outcome.out().contains("NOT RELIABLE"), outcome.out());
    }
}
