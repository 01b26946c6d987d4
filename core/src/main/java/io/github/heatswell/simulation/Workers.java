package io.github.heatswell.simulation;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BooleanSupplier;
import java.util.function.Function;
import java.util.function.IntConsumer;
import java.util.function.Supplier;

/**
 * Worker threads for numbered tasks, such as simulations of many houses. Each takes the next unstarted task, so that
 * finished tasks are always a gapless prefix and results do not depend on the number of threads. The threads end with
 * the work and are daemons.
 */
public final class Workers {

    private static final BooleanSupplier NEVER = () -> false;

    private final int threads;
    private final Supplier<Telling> telling;

    private Workers(int threads, Supplier<Telling> telling) {
        this.threads = threads;
        this.telling = telling;
    }

    /**
     * So many workers.
     *
     * @param threads how many pieces are worked on at a time, at least 1
     * @return the workers
     * @throws IllegalArgumentException if the number is below 1
     */
    public static Workers of(int threads) {
        if (threads < 1) {
            throw new IllegalArgumentException("threads: " + threads + " is outside the allowed range, 1 or more");
        }
        return new Workers(threads, () -> new Telling((done, total) -> {}, 0));
    }

    /**
     * The same workers, who tell of every piece. Pieces are counted through all the work they are given.
     *
     * @param listener hears how many pieces are done
     * @param total how many pieces there will be in all
     * @return the workers
     */
    public Workers telling(Progress listener, int total) {
        Telling one = new Telling(listener, total);
        return new Workers(threads, () -> one);
    }

    /**
     * Does all pieces and returns when the last is done. If one fails, no new ones are begun.
     *
     * @param count how many pieces there are, 0 or more
     * @param piece does the piece of a number, counted from 0
     * @throws RuntimeException what a piece that failed had thrown; of several, that of the lowest number
     * @throws CancellationException if the calling thread is interrupted; its interrupt status stays set
     */
    public void each(int count, IntConsumer piece) {
        if (until(NEVER, count, () -> piece) < count) {
            throw new CancellationException("interrupted before all runs were done");
        }
    }

    /**
     * What comes of each of some things.
     *
     * @param things the things
     * @param work what is done with each
     * @param <A> the kind of thing
     * @param <B> what comes of it
     * @return what came of each, in the order of the things
     * @throws RuntimeException what was thrown for a thing; of several, for the first in the list
     * @throws CancellationException if the calling thread is interrupted; its interrupt status stays set
     */
    public <A, B> List<B> map(List<A> things, Function<A, B> work) {
        List<B> found = new ArrayList<>(Collections.nCopies(things.size(), null));
        each(things.size(), i -> found.set(i, work.apply(things.get(i))));
        return found;
    }

    /**
     * Does pieces until all are done, the work is stopped, or the calling thread is interrupted, which stays marked so.
     * Pieces that were begun are finished.
     *
     * @param stop is asked before every piece, by several threads at once: true once no more are to be begun
     * @param count how many pieces there are, 0 or more
     * @param worker makes, once for each thread, what does the piece of a number, counted from 0
     * @return how many pieces were done: the first ones, without a gap
     * @throws RuntimeException what a piece, the signal or the listener had thrown; of several pieces, that of the
     *     lowest number
     */
    public int until(BooleanSupplier stop, int count, Supplier<IntConsumer> worker) {
        Job job = new Job(stop, count, worker, telling.get());
        job.halted = Thread.currentThread().isInterrupted();
        List<Thread> running = new ArrayList<>();
        boolean interrupted = false;
        try {
            for (int i = 0; i < Math.min(threads, count); i++) {
                Thread thread = new Thread(job, "heatswell-worker");
                thread.setDaemon(true);
                thread.start();
                running.add(thread);
            }
            for (Thread thread : running) {
                interrupted |= ended(thread, job);
            }
        } finally {
            job.halted = true;
        }
        if (interrupted) {
            Thread.currentThread().interrupt();
        }
        return job.result();
    }

    /** Waits for a thread to end; an interrupt stops the work, but not the waiting. Returns whether there was one. */
    private static boolean ended(Thread thread, Job job) {
        boolean interrupted = false;
        while (true) {
            try {
                thread.join();
                return interrupted;
            } catch (InterruptedException stopped) {
                job.halted = true;
                interrupted = true;
            }
        }
    }

    /** The listener, and how many pieces it has heard of. */
    private static final class Telling {
        private final Progress listener;
        private final int total;
        private int done;

        Telling(Progress listener, int total) {
            this.listener = listener;
            this.total = total;
        }

        synchronized void one() {
            done++;
            listener.done(done, total);
        }
    }

    /** Work that is being done. */
    private static final class Job implements Runnable {
        private final BooleanSupplier stop;
        private final int count;
        private final Supplier<IntConsumer> worker;
        private final Telling telling;
        private final AtomicInteger next = new AtomicInteger();
        private final AtomicInteger done = new AtomicInteger();
        private volatile boolean halted;
        private int failedPiece;
        private Throwable failure;

        Job(BooleanSupplier stop, int count, Supplier<IntConsumer> worker, Telling telling) {
            this.stop = stop;
            this.count = count;
            this.worker = worker;
            this.telling = telling;
        }

        @Override
        public void run() {
            int piece = Integer.MAX_VALUE;
            try {
                IntConsumer working = worker.get();
                for (piece = take(); piece < count; piece = take()) {
                    working.accept(piece);
                    done.incrementAndGet();
                    telling.one();
                }
            } catch (RuntimeException | Error thrown) {
                failed(piece, thrown);
            }
        }

        /** The next piece to do; beyond the last if there is none or the work is stopped. */
        private int take() {
            if (halted) {
                return count;
            }
            if (stop.getAsBoolean()) {
                halted = true;
                return count;
            }
            return next.getAndIncrement();
        }

        private synchronized void failed(int piece, Throwable thrown) {
            halted = true;
            if (failure == null || piece < failedPiece) {
                failure = thrown;
                failedPiece = piece;
            }
        }

        private synchronized int result() {
            if (failure instanceof Error error) {
                throw error;
            }
            if (failure != null) {
                throw (RuntimeException) failure; // a piece of work throws nothing checked
            }
            return done.get();
        }
    }

    /** Progress of long work: one call at a time, from any of the worker threads. */
    @FunctionalInterface
    public interface Progress {

        /**
         * Called after each piece of the work.
         *
         * @param done how many pieces are done, one more with each call
         * @param total how many there are
         */
        void done(int done, int total);
    }
}
