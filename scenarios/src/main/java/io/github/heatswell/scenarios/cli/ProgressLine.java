package io.github.heatswell.scenarios.cli;

import io.github.heatswell.simulation.Workers;
import java.util.function.LongSupplier;

/**
 * Shows progress and remaining time: in one line that is overwritten on a terminal, and elsewhere, where nobody may be watching
 * and a log would fill, in a line now and then if much is left.
 */
final class ProgressLine implements Workers.Progress, AutoCloseable {

    private static final int CELLS = 30;
    private static final double NANOS = 1e-9;
    private static final double MIN_PAUSE = 0.1;
    /** Before that the time left is a guess (s), */
    private static final double FIRST = 0.5;
    /** and more so where what was said stands. */
    private static final double FIRST_NOTE = 5;
    /** Each further note comes after so many times (-) the time of the one before, */
    private static final double RARER = 4;
    /** and none where less than this is left (s). */
    private static final double WORTH_A_NOTE = 20;

    private static final double MINUTE = 60;
    private static final double HOUR = 3_600;
    /** From here on (s), minutes are too fine. */
    private static final double HOURS = 2 * HOUR;

    private final Console console;
    private final String who;
    private final boolean overwrites;
    private final LongSupplier clock;
    /** When the first piece was done: what comes before is no measure of the others. */
    private long start;

    private int atStart = -1;
    private double lastShown;
    private int width;

    /**
     * A line about some work.
     *
     * @param request whose console takes the line, and what it is about
     * @param overwrites whether the line is overwritten, or notes are left
     * @param clock the time (ns)
     */
    ProgressLine(Request request, boolean overwrites, LongSupplier clock) {
        this.console = request.console();
        this.who = request.name();
        this.overwrites = overwrites;
        this.clock = clock;
    }

    /** A line for a user who watches, or notes if nobody does. */
    static ProgressLine shownTo(Request request) {
        return new ProgressLine(request, request.console().watched(), System::nanoTime);
    }

    @Override
    public void done(int done, int total) {
        if (done == total) {
            close();
            return;
        }
        long now = clock.getAsLong();
        if (atStart < 0) {
            atStart = done;
            start = now;
        }
        double elapsed = (now - start) * NANOS;
        double share = (double) done / total;
        double left = done == atStart ? Double.NaN : elapsed * (total - done) / (done - atStart);
        if (overwrites) {
            line(elapsed, share, left);
        } else if (elapsed >= Math.max(FIRST_NOTE, RARER * lastShown) && left >= WORTH_A_NOTE) {
            lastShown = elapsed;
            console.complain(who + ": " + (int) (100 * share) + " % done, about " + roughly(left) + " left");
        }
    }

    private void line(double elapsed, double share, double left) {
        if (elapsed < FIRST || elapsed - lastShown < MIN_PAUSE) {
            return;
        }
        lastShown = elapsed;
        int filled = (int) (CELLS * share);
        show("[" + "#".repeat(filled) + "-".repeat(CELLS - filled) + "] " + (int) (100 * share) + " %, " + left(left));
    }

    private static String roughly(double seconds) {
        if (seconds >= HOURS) {
            return (long) Math.ceil(seconds / HOUR) + " h";
        }
        return seconds < MINUTE ? (long) Math.ceil(seconds) + " s" : (long) Math.ceil(seconds / MINUTE) + " min";
    }

    private static String left(double seconds) {
        if (Double.isNaN(seconds)) {
            return "just started";
        }
        long whole = (long) Math.ceil(seconds);
        return whole < 60 ? whole + " s left" : (whole / 60) + " min " + (whole % 60) + " s left";
    }

    private void show(String line) {
        console.overwrite(line + " ".repeat(Math.max(0, width - line.length())));
        width = line.length();
    }

    /** Takes the line away. */
    @Override
    public void close() {
        if (width > 0) {
            console.overwrite(" ".repeat(width));
            console.overwrite("");
            width = 0;
        }
    }
}
