package io.github.heatswell.scenarios.cli;

import io.github.heatswell.simulation.Workers;
import java.util.function.LongSupplier;

/** Shows progress and remaining time in one line that is overwritten. */
final class ProgressLine implements Workers.Progress, AutoCloseable {

    private static final int CELLS = 30;
    private static final double NANOS = 1e-9;
    private static final double LEAST_PAUSE = 0.1;
    /** Before that the time left is a guess (s). */
    private static final double FIRST = 0.5;

    private final Console console;
    private final LongSupplier clock;
    private final long start;
    private double lastShown;
    private int width;

    /**
     * Starts the clock.
     *
     * @param console takes the line
     * @param clock the time (ns)
     */
    ProgressLine(Console console, LongSupplier clock) {
        this.console = console;
        this.clock = clock;
        this.start = clock.getAsLong();
    }

    /** A line for a user who watches, or silence if nobody does. */
    static ProgressLine shownTo(Console console) {
        return new ProgressLine(console.watched() ? console : Console.silent(), System::nanoTime);
    }

    @Override
    public void done(int done, int total) {
        double elapsed = (clock.getAsLong() - start) * NANOS;
        if (elapsed < FIRST || elapsed - lastShown < LEAST_PAUSE && done < total) {
            return;
        }
        lastShown = elapsed;
        double share = (double) done / total;
        int filled = (int) (CELLS * share);
        show("[" + "#".repeat(filled) + "-".repeat(CELLS - filled) + "] " + (int) (100 * share) + " %, "
                + left(done == 0 ? Double.NaN : elapsed * (1 - share) / share));
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
        }
    }
}
