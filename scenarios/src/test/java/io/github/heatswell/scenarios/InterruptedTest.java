package io.github.heatswell.scenarios;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import io.github.heatswell.scenarios.cli.EveryCommand;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The program is interrupted in the middle of long work, as by Ctrl-C or when the machine is shut down. */
@Timeout(value = 3, unit = TimeUnit.MINUTES, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
class InterruptedTest {

    /** Far longer than it takes until the signal comes. */
    private static final List<String> LONG_RUN = List.of("heron-hill-year", "--sample", "2s", "--out");

    /** Between two glances (ms) at what a program does, which needs the processor itself. */
    private static final int GLANCE = 5;

    @TempDir
    private Path temporary;

    private Path out;

    @BeforeEach
    void signalsAreThere() throws Exception {
        assumeTrue(Child.works("kill", "-l"), "signals cannot be sent here");
        out = temporary.resolve("new/out");
    }

    @ParameterizedTest
    @CsvSource({"INT, 130", "TERM, 143"})
    void aSpreadWritesWhatItHas(String signal, int status) throws Exception {
        Process process =
                start("spread", "orchard-lodge", "--samples", "20000", "--threads", "2", "--out", out.toString());
        int c = process.getErrorStream().read();
        while (c != '%' && c >= 0) {
            c = process.getErrorStream().read();
        }
        assertEquals('%', c, "there was no progress");
        Child.Ended ended = interrupt(process, signal);
        assertEquals(status, ended.status(), ended.err());
        assertEquals(
                Set.of("report.html", "samples.csv", "spread.csv", "spread.json", "spread.png", "spread.svg"),
                names(out));
        long samples = Files.readAllLines(out.resolve("samples.csv")).size() - 1L;
        assertTrue(samples > 0 && samples < 20_000, () -> samples + " samples");
        assertTrue(ended.out().contains(samples + " of 20000"), ended.out());
        assertTrue(Files.readString(out.resolve("spread.svg")).contains("</svg"));
    }

    @Test
    void aLongRunLeavesNothingOfItself() throws Exception {
        Process process = start(line("run", "orchard-lodge", LONG_RUN, out));
        Path second = out.resolve("heron-hill-year");
        awaitGrowth(second, process);
        assertEquals(130, interrupt(process, "INT").status());
        assertEquals(Set.of("orchard-lodge"), names(out));
        assertEquals(6, names(out.resolve("orchard-lodge")).size());
    }

    @Test
    void aLongRunKeepsWhatWasThere() throws Exception {
        EveryCommand.earlier(out);
        Map<String, String> before = EveryCommand.contents(temporary);
        Process process = start(line("run", null, LONG_RUN, out));
        awaitGrowth(out, process);
        assertEquals(143, interrupt(process, "TERM").status());
        assertEquals(before, EveryCommand.contents(temporary));
    }

    @Test
    void anInterviewKeepsTheAnswersSoFar() throws Exception {
        Path kept = temporary.resolve("my-house.partial.yaml");
        Process process =
                start("interview", "--out", temporary.resolve("my-house.yaml").toString());
        process.getOutputStream().write("not known\nMill cottage\ncheck valve\n".getBytes(StandardCharsets.US_ASCII));
        process.getOutputStream().flush();
        while (!written(kept).contains("check-valve")) {
            assertTrue(process.isAlive(), "the interview has ended before it could be interrupted");
            Thread.sleep(GLANCE);
        }
        assertEquals(143, interrupt(process, "TERM").status());
        assertEquals(Set.of(kept.getFileName().toString()), names(temporary));
    }

    /** What a file holds; nothing while it is not there yet, or is being replaced. */
    private static String written(Path file) throws IOException {
        try {
            return Files.readString(file);
        } catch (NoSuchFileException absent) {
            return "";
        }
    }

    private static String[] line(String command, String first, List<String> others, Path out) {
        Stream<String> head = first == null ? Stream.of(command) : Stream.of(command, first);
        return Stream.concat(Stream.concat(head, others.stream()), Stream.of(out.toString()))
                .toArray(String[]::new);
    }

    private static Process start(String... arguments) throws IOException {
        // As the launcher says to a terminal; a progress line is the sign that the work has begun.
        List<String> command = Child.heatswell(arguments);
        command.add(1, "-Dheatswell.terminal=true");
        return new ProcessBuilder(command).start();
    }

    /** Waits until something of a trace is on the disk, where it is prepared. */
    private static void awaitGrowth(Path folder, Process process) throws IOException, InterruptedException {
        while (sizeOfTrace(folder) == 0) {
            assertTrue(process.isAlive(), "the run has ended before it could be interrupted");
            Thread.sleep(GLANCE);
        }
    }

    private static long sizeOfTrace(Path folder) throws IOException {
        Path trace = folder.resolve(".heatswell-unfinished/new/trace.csv");
        return Files.exists(trace) ? Files.size(trace) : 0;
    }

    private static Child.Ended interrupt(Process process, String signal) throws Exception {
        if (signal.equals("INT") && Child.ignoresInterrupts(process)) {
            process.destroyForcibly();
            assumeTrue(false, "what runs in the background here ignores INT");
        }
        assertTrue(Child.works("kill", "-" + signal, Long.toString(process.pid())));
        Child.Ended ended = Child.end(process);
        assertFalse(ended.err().contains("\tat "), ended.err());
        return ended;
    }

    private static Set<String> names(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return new TreeSet<>(
                    files.map(file -> file.getFileName().toString()).toList());
        }
    }
}
