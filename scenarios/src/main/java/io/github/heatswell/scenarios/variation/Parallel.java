package io.github.heatswell.scenarios.variation;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.Function;

/** Does the same to many things in several threads. */
final class Parallel {

    private final int threads;

    Parallel(int threads) {
        this.threads = threads;
    }

    /**
     * What comes of each thing, in their order, whichever was done first.
     *
     * @throws RuntimeException what the first thing that failed had thrown
     * @throws CancellationException if the calling thread is interrupted; it stays marked so
     */
    <A, B> List<B> each(List<A> things, Function<A, B> work) {
        List<Callable<B>> pieces = new ArrayList<>();
        things.forEach(thing -> pieces.add(() -> work.apply(thing)));
        ExecutorService pool = Executors.newFixedThreadPool(Math.max(1, Math.min(threads, things.size())));
        try {
            List<B> results = new ArrayList<>();
            for (Future<B> piece : pool.invokeAll(pieces)) {
                results.add(piece.get());
            }
            return results;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new CancellationException("interrupted before all runs were done");
        } catch (ExecutionException e) {
            throw rethrown(e.getCause());
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
