package io.github.heatswell.scenarios.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;

class ProgressLineTest {

    private final AtomicLong seconds = new AtomicLong();
    private final StringWriter err = new StringWriter();
    private final Console console = Console.silent(new PrintWriter(new StringWriter()), new PrintWriter(err));

    @Test
    void itSaysHowFarAndHowLong() {
        try (ProgressLine progress = new ProgressLine(console, () -> TimeUnit.SECONDS.toNanos(seconds.get()))) {
            progress.done(1, 100);
            assertEquals("", err.toString(), "at first nobody knows how long it takes");
            seconds.set(25);
            progress.done(25, 100);
            assertEquals("\r[#######-----------------------] 25 %, 1 min 15 s left", err.toString());
            seconds.set(90);
            progress.done(90, 100);
            assertTrue(err.toString().contains("\r[###########################---] 90 %, 10 s left "), err.toString());
        }
        assertTrue(err.toString().endsWith("\r"), "the line is taken away");
    }

    @Test
    void nobodyWatchesUnlessTheStartingScriptSaysSo() {
        assertEquals(null, System.getProperty("heatswell.terminal"));
        try (ProgressLine progress = ProgressLine.shownTo(console)) {
            progress.done(50, 100);
            progress.done(100, 100);
        }
        assertEquals("", err.toString());
    }
}
