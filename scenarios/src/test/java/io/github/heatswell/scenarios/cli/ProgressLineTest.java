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
    private final Request request = new Request(
                    null, Console.silent(new PrintWriter(new StringWriter()), new PrintWriter(err)))
            .about("a-house");

    @Test
    void itSaysHowFarAndHowLong() {
        try (ProgressLine progress = new ProgressLine(request, true, () -> TimeUnit.SECONDS.toNanos(seconds.get()))) {
            progress.done(0, 100);
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
    void itIsGoneWhenAllIsDone() {
        ProgressLine progress = new ProgressLine(request, true, () -> TimeUnit.SECONDS.toNanos(seconds.get()));
        progress.done(1, 100);
        seconds.set(25);
        progress.done(25, 100);
        progress.done(100, 100);
        assertTrue(err.toString().endsWith(" \r"), err.toString());
    }

    /** Nobody watches unless the starting script says so: then long work alone leaves a note, ever more rarely. */
    @Test
    void whereNobodyWatchesItSaysNowAndThenHowMuchIsLeft() {
        assertEquals(null, System.getProperty("heatswell.terminal"));
        try (ProgressLine progress = ProgressLine.shownTo(request)) {
            progress.done(50, 100);
            progress.done(100, 100);
        }
        assertEquals("", err.toString());
        try (ProgressLine progress = new ProgressLine(request, false, () -> TimeUnit.SECONDS.toNanos(seconds.get()))) {
            seconds.set(1_000);
            progress.done(0, 60_000);
            for (int second = 1_001; second <= 1_100; second++) {
                seconds.set(second);
                progress.done((second - 1_000) * 100, 60_000);
            }
            seconds.set(1_001_000);
            progress.done(10_000, 60_000);
        }
        assertEquals(
                "a-house: 0 % done, about 10 min left\na-house: 3 % done, about 10 min left\n"
                        + "a-house: 13 % done, about 9 min left\na-house: 16 % done, about 1389 h left\n",
                err.toString());
    }

    @Test
    void workThatIsSoonDoneLeavesNoNote() {
        ProgressLine progress = new ProgressLine(request, false, () -> TimeUnit.SECONDS.toNanos(seconds.get()));
        progress.done(0, 100);
        seconds.set(60);
        progress.done(80, 100);
        assertEquals("", err.toString());
    }
}
