package io.github.heatswell.scenarios;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.scenarios.cli.EveryCommand;
import io.github.heatswell.scenarios.cli.Outcome;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Whatever is thrown below the command line is one line and a status of its own, and nothing is half written. */
@Order(1)
class ErrorsTest {

    private static final int FAILED = 5;

    /** Names the error with which the classes below fail. */
    private static final String INJECTED = "errors.test.injected";

    private static final List<String> ERRORS = List.of(
            "StackOverflowError",
            "OutOfMemoryError",
            "NoClassDefFoundError",
            "AssertionError",
            "IllegalStateException");

    /** Fails where a simulation begins. */
    private static Doctored simulating;

    /** Fails where writing begins. */
    private static Doctored writing;

    @TempDir
    private Path temporary;

    @BeforeAll
    static void change(@TempDir Path scratch) throws IOException {
        simulating = Doctored.failingAsTold(
                Files.createDirectory(scratch.resolve("simulating")), "core", "simulation.Engine", INJECTED, ERRORS);
        writing = Doctored.failingAsTold(
                Files.createDirectory(scratch.resolve("writing")),
                "scenarios",
                "scenarios.report.FileTransaction",
                INJECTED,
                ERRORS);
    }

    @AfterAll
    static void close() throws IOException {
        simulating.close();
        writing.close();
    }

    private static Outcome failing(Doctored program, String error, List<String> line)
            throws ReflectiveOperationException {
        System.setProperty(INJECTED, error);
        try {
            return program.execute(line);
        } finally {
            System.clearProperty(INJECTED);
        }
    }

    private static List<String> run(Path out) {
        return List.of("run", "orchard-lodge", "--set", "tank.volume=150L", "--out", out.toString());
    }

    static Stream<Arguments> everyError() {
        return Stream.of("simulating", "writing")
                .flatMap(where -> ERRORS.stream().map(error -> Arguments.of(where, error)));
    }

    @ParameterizedTest
    @MethodSource("everyError")
    void anErrorIsOneLineAndNothingIsWritten(String where, String error) throws Exception {
        Path out = temporary.resolve("out");
        EveryCommand.earlier(out);
        Map<String, String> before = EveryCommand.contents(out);
        assertOneLine(error, failing(where.equals("writing") ? writing : simulating, error, run(out)));
        assertEquals(before, EveryCommand.contents(out));
    }

    private static void assertOneLine(String error, Outcome outcome) {
        assertEquals(FAILED, outcome.status(), outcome.err());
        assertEquals("", outcome.out());
        assertEquals(1, outcome.err().lines().count(), outcome.err());
        String said =
                error.equals("OutOfMemoryError") ? "out of memory" : "this is a bug in Heatswell; please report it: ";
        assertTrue(outcome.err().contains(said), outcome.err());
    }

    /** Classes that cannot be loaded: whoever needs one first gets the error. */
    @ParameterizedTest
    @CsvSource({
        "core, simulation.Engine, IllegalStateException",
        "scenarios, scenarios.report.FileTransaction, NoClassDefFoundError",
        "charts, charts.drawing.SvgWriter, StackOverflowError",
        "scenarios, scenarios.file.SectionBinder, AssertionError",
        "scenarios, scenarios.file.Change, StackOverflowError",
        "scenarios, scenarios.report.SummaryJson, OutOfMemoryError",
        "scenarios, scenarios.report.RunRows, OutOfMemoryError",
        "scenarios, scenarios.report.Report, LinkageError"
    })
    void soIsAClassThatCannotBeLoaded(String module, String name, String error) throws Exception {
        Path out = temporary.resolve("out");
        EveryCommand.earlier(out);
        Map<String, String> before = EveryCommand.contents(out);
        try (Doctored program =
                Doctored.failing(Files.createDirectory(temporary.resolve("scratch")), module, name, error)) {
            assertOneLine(error, program.execute(run(out)));
        }
        assertEquals(before, EveryCommand.contents(out));
    }

    @ParameterizedTest
    @ValueSource(strings = {"compare", "size", "map", "spread", "diagnose", "outlook", "lessons", "interview"})
    void soItIsForEveryCommand(String name) throws Exception {
        Path out = temporary.resolve("out");
        List<String> line =
                EveryCommand.lines(out, EveryCommand.readings(temporary)).get(name);
        Outcome outcome = failing(simulating, "StackOverflowError", line);
        assertEquals(FAILED, outcome.status(), outcome.err());
        assertEquals(1, outcome.err().lines().count(), outcome.err());
        assertTrue(outcome.err().contains("nothing was written: this is a bug in Heatswell"), outcome.err());
        assertFalse(Files.exists(out) && !name.equals("interview"));
    }

    /** Without the error these programs are sound, so what they said above is due to it. */
    @Test
    void withoutTheErrorAllIsWritten() throws Exception {
        for (Doctored program : List.of(simulating, writing)) {
            Path out = temporary.resolve("out");
            assertEquals(0, program.execute(run(out)).status());
            assertTrue(Files.exists(out.resolve("summary.json")));
        }
    }

    /** The class that puts the command line together cannot be loaded: nothing in it can catch that. */
    @Test
    void aDamagedProgramIsOneLineToo() throws Exception {
        try (Doctored program =
                Doctored.failing(temporary, "scenarios", "scenarios.cli.CommandFactory", "LinkageError")) {
            List<String> command = new ArrayList<>(Child.heatswell("list"));
            command.set(command.indexOf("-cp") + 1, program.classPath());
            Child.Ended ended = Child.run(command);
            assertEquals(FAILED, ended.status());
            assertEquals(
                    "heatswell: the program cannot be started: java.lang.LinkageError: injected\n",
                    ended.err().replace("\r\n", "\n"));
        }
    }

    /** From too little to begin with to just enough: either everything is written, or nothing and the line says so. */
    @ParameterizedTest
    @ValueSource(strings = {"10m", "16m", "24m"})
    void tooLittleMemoryWritesNothing(String heap) throws Exception {
        Path out = temporary.resolve("out");
        List<String> command = new ArrayList<>(Child.heatswell(
                "run", "orchard-lodge", "--set", "run.duration=20 min", "--sample", "1s", "--out", out.toString()));
        command.add(1, "-Xmx" + heap);
        Child.Ended ended = Child.run(command);
        if (ended.status() == 0) {
            try (Stream<Path> files = Files.list(out)) {
                assertEquals(6, files.count());
            }
        } else {
            assertEquals(FAILED, ended.status(), ended.err());
            assertEquals(1, ended.err().lines().count(), ended.err());
            assertTrue(ended.err().contains("memory"), ended.err());
            assertEquals("", ended.out());
            assertFalse(Files.exists(out), ended.err());
        }
    }
}
