package io.github.heatswell.scenarios;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.scenarios.cli.EveryCommand;
import io.github.heatswell.scenarios.cli.Outcome;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Regression: everything is computed before the first file is begun. In these programs a simulation fails that begins while
 * there is a file in the folder where files are prepared.
 */
class ComputedBeforeWrittenTest {

    private static final String FOLDER = "computed.before.written";
    private static final String ALLOWED = "allowed.beside";

    private static Doctored program;

    @TempDir
    private Path temporary;

    /** All but a run too long to be held, which is its own test. */
    static Set<String> commands() {
        return EveryCommand.lines(Path.of("out"), Path.of("readings")).keySet().stream()
                .filter(name -> !name.equals("run long"))
                .collect(Collectors.toSet());
    }

    @BeforeAll
    static void watch(@TempDir Path scratch) throws IOException {
        program = new Doctored(
                scratch,
                "core",
                "simulation.Engine",
                "final class Engine \\{",
                "final class Engine { { java.io.File[] begun = new java.io.File(System.getProperty(\"" + FOLDER
                        + "\")).listFiles(file -> !file.getName().equals(System.getProperty(\"" + ALLOWED
                        + "\"))); if (begun != null && begun.length > 0)"
                        + " throw new AssertionError(\"simulates beside \" + begun[0]); }");
    }

    @AfterAll
    static void close() throws IOException {
        program.close();
    }

    private Outcome execute(String name, String allowed) throws Exception {
        Path out = temporary.resolve("out");
        Map<String, List<String>> lines = EveryCommand.lines(out, EveryCommand.readings(temporary));
        System.setProperty(FOLDER, out.resolve(".heatswell-unfinished/new").toString());
        System.setProperty(ALLOWED, allowed);
        try {
            return program.execute(lines.get(name));
        } finally {
            System.clearProperty(FOLDER);
            System.clearProperty(ALLOWED);
        }
    }

    @ParameterizedTest
    @MethodSource("commands")
    void nothingIsSimulatedOnceAFileIsBegun(String name) throws Exception {
        Outcome outcome = execute(name, "");
        assertEquals("", outcome.err());
        assertEquals(0, outcome.status(), outcome.out());
    }

    @Test
    void aRunTooLongToBeHeldIsSimulatedBesideItsTraceAndNothingElse() throws Exception {
        Outcome alone = execute("run long", "trace.csv");
        assertEquals("", alone.err());
        assertEquals(0, alone.status(), alone.out());
    }

    @Test
    void theWatchIsNoSleeper() throws Exception {
        Path out = temporary.resolve("out");
        Files.createDirectories(out.resolve(".heatswell-unfinished/new"));
        Files.writeString(out.resolve(".heatswell-unfinished/new/left"), "");
        Outcome outcome = execute("run", "");
        assertEquals(5, outcome.status(), outcome.out());
        assertTrue(outcome.err().contains("simulates beside"), outcome.err());
    }
}
