package io.github.heatswell.scenarios;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import io.github.heatswell.scenarios.report.FileTransaction;
import io.github.heatswell.scenarios.report.OutputException;
import io.github.heatswell.scenarios.report.ResultFile;
import io.github.heatswell.scenarios.report.ResultFolder;
import io.github.heatswell.scenarios.report.WritingLoop;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Whatever ends the program while it writes, the folder holds the results of one run. {@code -Dsignals.rounds} sends more
 * signals to a program that writes without end, at moments nobody chose.
 */
class SignalsTest {

    private static final int ROUNDS = Integer.getInteger("signals.rounds", 2);

    @TempDir
    private Path temporary;

    private Path folder;

    @BeforeEach
    void signalsAreThere() throws Exception {
        assumeTrue(Child.works("kill", "-l"), "signals cannot be sent here");
        folder = temporary.resolve("results");
        Files.createDirectory(folder);
        Files.writeString(folder.resolve("mine.txt"), "mine");
    }

    static Stream<Arguments> points() {
        Stream<Arguments> killed = IntStream.range(0, WritingLoop.MOVES).mapToObj(i -> Arguments.of("KILL", "move", i));
        Stream<Arguments> ended = Stream.of("TERM", "INT")
                .flatMap(signal -> IntStream.of(0, 2, 5).mapToObj(i -> Arguments.of(signal, "move", i)));
        Stream<Arguments> writing = Stream.of("KILL", "TERM", "INT").map(signal -> Arguments.of(signal, "file", 1));
        return Stream.of(killed, ended, writing).flatMap(all -> all);
    }

    @ParameterizedTest
    @MethodSource("points")
    void theFolderHoldsOneRun(String signal, String what, int point) throws Exception {
        Process child = start(what, Integer.toString(point));
        awaitLine(child.inputReader(), "here");
        send(signal, child);
        boolean killed = signal.equals("KILL");
        if (!killed && what.equals("move")) {
            goOn(child);
        }
        child.waitFor();
        if (killed) {
            assertTrue(WritingLoop.sets(folder).size() <= 1, "files of two runs lie side by side");
            nextRun();
        }
        // Once the new files are ready, as before the first move of an old one, they are the ones that stay.
        boolean isNew = what.equals("move") && (!killed || point > 0);
        assertEquals(Set.of(isNew ? "2" : "1"), WritingLoop.sets(folder));
        assertOnlyResults(killed);
    }

    @ParameterizedTest
    @ValueSource(strings = {"KILL", "TERM", "INT"})
    void atAnyMoment(String signal) throws Exception {
        for (int round = 0; round < ROUNDS; round++) {
            Process child = start("loop");
            for (int i = 0; i <= round % 5; i++) {
                awaitLine(child.inputReader(), "written");
            }
            send(signal, child);
            assertTrue(child.inputReader().lines().noneMatch("written late"::equals), "a write began too late");
            child.waitFor();
            boolean killed = signal.equals("KILL");
            if (killed) {
                assertTrue(WritingLoop.sets(folder).size() <= 1, "files of two runs lie side by side");
                nextRun();
            }
            assertEquals(1, WritingLoop.sets(folder).size());
            assertOnlyResults(killed);
            Files.deleteIfExists(folder.resolve("next.txt"));
        }
    }

    @Test
    void aLoopEndsWithItsParent() throws Exception {
        Process child = start("loop");
        awaitLine(child.inputReader(), "written");
        child.getOutputStream().close(); // as when this process is gone
        child.inputReader().lines().forEach(line -> {});
        assertEquals(1, child.waitFor());
    }

    @Test
    void twoProgramsInOneFolderTakeTurnsOrAreRefused() throws Exception {
        Process one = start("loop");
        Process two = start("loop");
        for (Process each : List.of(one, two)) {
            for (int i = 0; i < 10; i++) {
                String line = each.inputReader().readLine();
                assertTrue(
                        line.equals("written")
                                || line.equals("another Heatswell is writing into " + folder
                                        + "; nothing was written there, try again"),
                        line);
            }
        }
        for (Process each : List.of(one, two)) {
            send("TERM", each);
            each.inputReader().lines().forEach(line -> {});
            each.waitFor();
        }
        assertEquals(1, WritingLoop.sets(folder).size());
        assertOnlyResults(false);
    }

    @Test
    void aFolderThatIsBeingWrittenIntoIsRefused() throws Exception {
        try (FileTransaction reserved = ResultFolder.at(folder).reserve()) {
            OutputException refused = assertThrows(OutputException.class, this::nextRun);
            assertEquals(
                    "another Heatswell is writing into " + folder + "; nothing was written there, try again",
                    refused.getMessage());
            reserved.write(List.of(ResultFile.ofText("a.csv", out -> out.append("1"))), () -> {});
        }
        nextRun();
        assertEquals("1", Files.readString(folder.resolve("a.csv")));
    }

    private void nextRun() throws OutputException {
        ResultFolder.at(folder).write(List.of(ResultFile.ofText("next.txt", out -> out.append("1"))));
    }

    private void assertOnlyResults(boolean withNext) throws IOException {
        Set<String> expected = new TreeSet<>(WritingLoop.NAMES);
        expected.add("mine.txt");
        if (withNext) {
            expected.add("next.txt");
        }
        try (Stream<Path> files = Files.list(folder)) {
            assertEquals(
                    expected,
                    new TreeSet<>(
                            files.map(file -> file.getFileName().toString()).toList()));
        }
    }

    private Process start(String... how) throws IOException {
        String[] arguments =
                Stream.concat(Stream.of(folder.toString()), Stream.of(how)).toArray(String[]::new);
        return new ProcessBuilder(Child.java(WritingLoop.class, arguments))
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
    }

    private static void awaitLine(BufferedReader out, String wanted) throws IOException {
        String line = out.readLine();
        while (line != null && !line.equals(wanted)) {
            line = out.readLine();
        }
        assertEquals(wanted, line);
    }

    private static void send(String signal, Process child) throws Exception {
        if (signal.equals("INT") && Child.ignoresInterrupts(child)) {
            child.destroyForcibly();
            assumeTrue(false, "what runs in the background here ignores INT");
        }
        assertTrue(Child.works("kill", "-" + signal, Long.toString(child.pid())));
    }

    private static void goOn(Process child) {
        try {
            child.getOutputStream().write('\n');
            child.getOutputStream().flush();
        } catch (IOException e) {
            assertFalse(child.isAlive(), new UncheckedIOException(e)::toString);
        }
    }
}
