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
     * Creates workers.
     *
     * @param threads how many tasks run at a time, at least 1
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
     * The same workers, reporting every finished task. Tasks are counted through all the work they are given.
     *
     * @param listener hears how many tasks are done
     * @param total how many tasks there will be in all
     * @return the workers
     */
    public Workers telling(Progress listener, int total) {
        Telling one = new Telling(listener, total);
        return new Workers(threads, () -> one);
    }

    /**
     * Runs all tasks and returns when the last is done. If one fails, no new ones are begun.
     *
     * @param count how many tasks there are, 0 or more
     * @param task does the task of a number, counted from 0
     * @throws RuntimeException what a task that failed had thrown; of several, that of the lowest number
     * @throws CancellationException if the calling thread is interrupted; its interrupt status stays set
     */
    public void each(int count, IntConsumer task) {
        if (until(NEVER, count, () -> task) < count) {
            throw new CancellationException("interrupted before all runs were done");
        }
    }

    /**
     * Works on every item of a list.
     *
     * @param things the items
     * @param work what is done with an item
     * @param <A> the type of an item
     * @param <B> the type of its result
     * @return the results, in the order of the items
     * @throws RuntimeException what was thrown for an item; of several, for the first in the list
     * @throws CancellationException if the calling thread is interrupted; its interrupt status stays set
     */
    public <A, B> List<B> map(List<A> things, Function<A, B> work) {
        List<B> found = new ArrayList<>(Collections.nCopies(things.size(), null));
        each(things.size(), i -> found.set(i, work.apply(things.get(i))));
        return found;
    }

    /**
     * Runs tasks until all are done, the work is stopped, or the calling thread is interrupted; it stays marked as interrupted.
     * Tasks that were begun are finished.
     *
     * @param stop is asked before every task, by several threads at once: true once no more are to be begun
     * @param count how many tasks there are, 0 or more
     * @param worker makes, once for each thread, what does the task of a number, counted from 0
     * @return how many tasks were done: the first ones, without a gap
     * @throws RuntimeException what a task, the signal or the listener had thrown; of several tasks, that of the
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

    /** The listener, and how many tasks it has heard of. */
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
        private int failedTask;
        private Throwable failure;

        Job(BooleanSupplier stop, int count, Supplier<IntConsumer> worker, Telling telling) {
            this.stop = stop;
            this.count = count;
            this.worker = worker;
            this.telling = telling;
        }

        @Override
        public void run() {
            int task = Integer.MAX_VALUE;
            try {
                IntConsumer working = worker.get();
                for (task = take(); task < count; task = take()) {
                    working.accept(task);
                    done.incrementAndGet();
                    telling.one();
                }
            } catch (RuntimeException | Error thrown) {
                failed(task, thrown);
            }
        }

        /** The next task to do; beyond the last if there is none or the work is stopped. */
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

        private synchronized void failed(int task, Throwable thrown) {
            halted = true;
            if (failure == null || task < failedTask) {
                failure = thrown;
                failedTask = task;
            }
        }

        private synchronized int result() {
            if (failure instanceof Error error) {
                throw error;
            }
            if (failure != null) {
                throw (RuntimeException) failure; // a task throws nothing checked
            }
            return done.get();
        }
    }

    /** Progress of long work: one call at a time, from any of the worker threads. */
    @FunctionalInterface
    public interface Progress {

        /**
         * Called after each task.
         *
         * @param done how many tasks are done, one more with each call
         * @param total how many there are
         */
        void done(int done, int total);
    }
}
