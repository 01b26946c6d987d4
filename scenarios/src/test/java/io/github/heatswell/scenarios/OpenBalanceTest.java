package io.github.heatswell.scenarios;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.scenarios.cli.CommandFactory;
import io.github.heatswell.scenarios.cli.EveryCommand;
import io.github.heatswell.scenarios.cli.Outcome;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Regression: where the balance of a run does not close, terminal, status and files say so; and everything is computed before the
 * first file is begun. In this program no balance closes, and a simulation fails that ends while there is a file in the folder
 * where files are prepared.
 */
@Order(1)
class OpenBalanceTest {

    private static final int OPEN_BALANCE = 6;
    private static final Set<String> OF_ONE_RUN = Set.of("run", "run long", "interview");
    private static final Pattern OF_MANY = Pattern.compile("NOT RELIABLE: The balance of ([0-9]+) of the ([0-9]+) runs"
            + " behind (?:this answer|the check sheet and the sizes) does not close");
    private static final String FOLDER = "open.balance.prepared";
    private static final String ALLOWED = "open.balance.beside";
    private static final String OF_A_RUN = "NOT RELIABLE: The balance of this run does not close: ";

    @TempDir
    private Path temporary;

    private static Doctored program;

    @BeforeAll
    static void open(@TempDir Path scratch) throws IOException {
        program = new Doctored(
                scratch,
                "core",
                "result.RunSummary",
                "public boolean closes\\(\\) \\{",
                "public static final java.util.concurrent.atomic.AtomicLong MADE = new java.util.concurrent.atomic.AtomicLong();"
                        + " public Audit { MADE.incrementAndGet(); java.io.File[] begun = new java.io.File(System.getProperty(\""
                        + FOLDER
                        + "\", \"no such folder\")).listFiles(file -> !file.getName().equals(System.getProperty(\""
                        + ALLOWED
                        + "\"))); if (begun != null && begun.length > 0)"
                        + " throw new AssertionError(\"simulates beside \" + begun[0]); }"
                        + " public boolean closes() { if (massMoved != -1) return false;");
    }

    @AfterAll
    static void close() throws IOException {
        program.close();
    }

    private static long runs() throws ReflectiveOperationException {
        return ((Number)
                        program.load("result.RunSummary$Audit").getField("MADE").get(null))
                .longValue();
    }

    /** Executes a command line; no run may end beside a file of its results, but for one that is allowed. */
    private static Outcome executeWatched(List<String> line, Path out, String allowed)
            throws ReflectiveOperationException {
        System.setProperty(FOLDER, out.resolve(".heatswell-unfinished/new").toString());
        System.setProperty(ALLOWED, allowed);
        try {
            return program.execute(line);
        } finally {
            System.clearProperty(FOLDER);
            System.clearProperty(ALLOWED);
        }
    }

    static Set<String> commands() {
        return EveryCommand.lines(Path.of("out"), Path.of("readings")).keySet();
    }

    @ParameterizedTest
    @MethodSource("commands")
    void theTerminalTheStatusAndTheFilesSaySo(String name) throws Exception {
        Path out = temporary.resolve("out");
        List<String> line =
                EveryCommand.lines(out, EveryCommand.readings(temporary)).get(name);
        long before = runs();
        Outcome outcome = executeWatched(line, out, name.equals("run long") ? "trace.csv" : "");
        assertEquals("", outcome.err(), "nothing is simulated once a file is begun");
        assertEquals(OPEN_BALANCE, outcome.status());
        String text = outcome.out().replaceAll("\\s+", " ");
        if (OF_ONE_RUN.contains(name)) {
            assertTrue(text.contains(OF_A_RUN), text);
        }
        Matcher said = OF_MANY.matcher(text);
        assertTrue(said.find(), text);
        assertEquals(said.group(1), said.group(2), "in this program all are open");
        if (!name.equals("lessons")) { // its pages make some runs anew for each sentence
            long alone = OF_ONE_RUN.contains(name) ? 1 : 0;
            assertEquals(runs() - before, Long.parseLong(said.group(2)) + alone, "every run is counted, once");
        }
        try (Stream<Path> files = Files.walk(out)) {
            for (Path file : files.filter(OpenBalanceTest::speaks).toList()) {
                String content = Files.readString(file);
                assertTrue(
                        content.contains("NOT RELIABLE") || content.contains("\"warning\" : \"The balance of "),
                        file.toString());
            }
        }
    }

    @Test
    void theWatchIsNoSleeper() throws Exception {
        Path out = temporary.resolve("out");
        Files.createDirectories(out.resolve(".heatswell-unfinished/new"));
        Files.writeString(out.resolve(".heatswell-unfinished/new/left"), "");
        Outcome outcome = executeWatched(List.of("run", "orchard-lodge", "--out", out.toString()), out, "");
        assertEquals(5, outcome.status(), outcome.out());
        assertTrue(outcome.err().contains("simulates beside"), outcome.err());
    }

    /** Whether a file says in words what was found. Those of pupils and teachers that show no run need not. */
    private static boolean speaks(Path file) {
        String name = file.getFileName().toString();
        return name.endsWith(".json") || name.endsWith(".html") && !name.equals("teachers.html");
    }

    @Test
    void noCommandThatSimulatesIsLeftOut() throws Exception {
        Set<String> covered = new TreeSet<>();
        EveryCommand.lines(Path.of("out"), Path.of("readings")).values().forEach(line -> covered.add(line.get(0)));
        Map<String, List<String>> others = Map.of(
                "list", List.of("list"),
                "show", List.of("show", "orchard-lodge"),
                "rules",
                        List.of(
                                "rules",
                                "orchard-lodge",
                                "--out",
                                temporary.resolve("rules").toString()),
                // its steps are the commands above
                "guide", List.of("guide", "--help"),
                "readings", List.of("readings", "--help"),
                // simulates in the browser
                "page", List.of("page", "--help"),
                "help", List.of("help"));
        try (Doctored still = Doctored.failing(
                Files.createDirectory(temporary.resolve("still")), "core", "simulation.Engine", "AssertionError")) {
            for (String command : CommandFactory.names()) {
                if (!covered.contains(command)) {
                    assertTrue(others.containsKey(command), command + ": is missing in EveryCommand, or here");
                    assertEquals(0, still.execute(others.get(command)).status(), command + " simulates");
                }
            }
        }
    }

    @Test
    void theFilesSaySoNearTheTop() throws Exception {
        Path out = temporary.resolve("out");
        program.execute(List.of("run", "orchard-lodge", "--out", out.toString()));
        String page = Files.readString(out.resolve("report.html"));
        int alarm = page.indexOf("<strong>NOT RELIABLE</strong> " + OF_A_RUN.substring(14));
        assertTrue(alarm > 0 && alarm < page.indexOf("<svg"), "not on the first page");
        String summary = Files.readString(out.resolve("summary.json"));
        assertTrue(summary.contains("\"warning\" : \"The balance of this run does not close: "), summary);
    }

    @Test
    void aHazardStandsFirstAndTheStatusIsTheGraver() throws Exception {
        Outcome outcome = program.execute(
                List.of("run", "quarry-row", "--out", temporary.resolve("out").toString()));
        assertEquals(OPEN_BALANCE, outcome.status(), outcome.err());
        assertTrue(outcome.out().startsWith("HAZARD"), outcome.out());
        assertTrue(outcome.out().contains(OF_A_RUN), outcome.out());
    }

    @Test
    void aBalanceThatClosesIsNotMentioned() throws Exception {
        Outcome outcome = Outcome.execute("run", "orchard-lodge", "--out", temporary.toString());
        assertEquals(0, outcome.status());
        assertFalse(outcome.out().contains("NOT RELIABLE"), outcome.out());
    }
}
