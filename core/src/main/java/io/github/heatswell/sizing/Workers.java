package io.github.heatswell.sizing;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.IntConsumer;

/** Does numbered pieces of work, each once, in so many threads. What a piece finds must not depend on the others. */
final class Workers {

    private final int threads;

    Workers(int threads) {
        this.threads = threads;
    }

    /**
     * Does all pieces from 0 to the count and returns when the last is done. If one fails no new ones are begun.
     *
     * @throws RuntimeException what the piece that failed had thrown
     * @throws CancellationException if the calling thread is interrupted; it stays marked so
     */
    void each(int count, IntConsumer piece) {
        AtomicInteger next = new AtomicInteger();
        Runnable work = () -> {
            try {
                for (int i = next.getAndIncrement(); i < count; i = next.getAndIncrement()) {
                    piece.accept(i);
                }
            } finally {
                next.set(count);
            }
        };
        ExecutorService pool = Executors.newFixedThreadPool(threads);
        try {
            List<Future<?>> running = new ArrayList<>();
            for (int i = 0; i < threads; i++) {
                running.add(pool.submit(work));
            }
            for (Future<?> worker : running) {
                worker.get();
            }
        } catch (InterruptedException interrupted) {
            next.set(count);
            Thread.currentThread().interrupt();
            throw new CancellationException("interrupted before all runs were done");
        } catch (ExecutionException failed) {
            throw rethrown(failed.getCause());
        } finally {
            pool.shutdownNow();
        }
    }

    private static RuntimeException rethrown(Throwable cause) {
        if (cause instanceof Error error) {
            throw error;
        }
        return cause instanceof RuntimeException known ? known : new IllegalStateException(cause);
    }
}
