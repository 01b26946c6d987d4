package io.github.heatswell.scenarios.cli;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.BooleanSupplier;

/**
 * Stops long work in an orderly way when the user interrupts the program, and waits until its results are written.
 */
final class Interruption implements AutoCloseable, BooleanSupplier {

    /** How long (s) the program waits for results to be written before it gives up. */
    private static final int MAX_WAIT = 30;

    private final AtomicBoolean asked = new AtomicBoolean();
    private final CountDownLatch finished = new CountDownLatch(1);
    private final Thread hook = new Thread(this::interrupt);

    Interruption() {
        Runtime.getRuntime().addShutdownHook(hook);
    }

    /** Whether the work should stop. */
    @Override
    public boolean getAsBoolean() {
        return asked.get();
    }

    /** What happens when the user interrupts: the work stops, and this waits for its end. */
    void interrupt() {
        asked.set(true);
        try {
            if (!finished.await(MAX_WAIT, TimeUnit.SECONDS)) {
                return;
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    /** The results are written. */
    @Override
    public void close() {
        finished.countDown();
        try {
            Runtime.getRuntime().removeShutdownHook(hook);
        } catch (IllegalStateException e) {
            // The program is being ended, and the hook runs already or is about to.
            return;
        }
    }
}
