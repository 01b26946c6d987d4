package io.github.heatswell.study;

import io.github.heatswell.simulation.SimulationException;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.locks.ReentrantLock;
import java.util.function.Supplier;

/**
 * Runs a model again and again on a fixed number of threads. Each takes the next run that nobody has taken yet, finishes
 * it and puts the answers in their place. So the outcome does not depend on which thread came first, and a study that is
 * stopped ends without a gap.
 */
final class Runner {

    /** The listener hears about so many steps of the whole. */
    private static final int NEWS = 200;

    private final Study study;
    private final Supplier<PointSource> source;
    private final int total;
    private final double[][] answers;
    private final AtomicInteger next = new AtomicInteger();
    private final AtomicInteger done = new AtomicInteger();
    private final ReentrantLock telling = new ReentrantLock();
    private final BitSet failed = new BitSet();
    private int firstFailed = Integer.MAX_VALUE;
    private String firstFailure;
    private volatile int told;
    private volatile boolean halted;

    Runner(Study study, int total, Supplier<PointSource> source) {
        this.study = study;
        this.total = total;
        this.source = source;
        answers = new double[study.outputs().size()][total];
    }

    /** Runs the model until all is done or the study is stopped; what a model throws unexpectedly is thrown on. */
    Runs run() {
        AtomicInteger number = new AtomicInteger();
        ExecutorService pool = Executors.newFixedThreadPool(study.threads(), task -> {
            Thread thread = new Thread(task, "study-" + number.incrementAndGet());
            thread.setDaemon(true);
            return thread;
        });
        try {
            List<Future<?>> workers = new ArrayList<>();
            for (int i = 0; i < study.threads(); i++) {
                workers.add(pool.submit(this::work));
            }
            await(workers);
        } finally {
            pool.shutdown();
        }
        tell();
        int completed = done.get();
        int failures = failed.get(0, completed).cardinality();
        return new Runs(total, completed, answers, failures, failures == 0 ? null : firstFailure);
    }

    /** Waits for all workers, also when interrupted, which stops the study. */
    private void await(List<Future<?>> workers) {
        boolean interrupted = false;
        Throwable thrown = null;
        for (Future<?> worker : workers) {
            boolean waiting = true;
            while (waiting) {
                try {
                    worker.get();
                    waiting = false;
                } catch (InterruptedException stop) {
                    interrupted = true;
                    halted = true;
                } catch (ExecutionException unexpected) {
                    thrown = thrown == null ? unexpected.getCause() : thrown;
                    waiting = false;
                }
            }
        }
        if (interrupted) {
            Thread.currentThread().interrupt();
        }
        if (thrown instanceof Error error) {
            throw error;
        }
        if (thrown != null) {
            throw (RuntimeException) thrown; // a worker throws nothing checked
        }
    }

    private void work() {
        boolean orderly = false;
        try {
            PointSource points = source.get();
            int run = take();
            while (run < total) {
                calculate(run, points.values(run));
                done.incrementAndGet();
                tellIfNobodyElseDoes();
                run = take();
            }
            orderly = true;
        } finally {
            halted |= !orderly;
        }
    }

    /** The next run to do; beyond the last if there is none or the study was stopped. */
    private int take() {
        halted |= study.stopSignal().getAsBoolean();
        return halted ? total : next.getAndIncrement();
    }

    private void calculate(int run, double[] values) {
        try {
            put(run, study.model().answers(values));
        } catch (SampleFailedException | SimulationException failure) {
            fail(run, failure.getMessage());
        }
    }

    private void put(int run, double[] given) {
        if (given.length != answers.length) {
            throw new IllegalStateException(
                    "the model gave " + given.length + " answers, but " + answers.length + " outputs are named");
        }
        for (int i = 0; i < given.length; i++) {
            if (Double.isInfinite(given[i])) {
                fail(run, study.outputs().get(i) + " became infinite");
                return;
            }
        }
        for (int i = 0; i < given.length; i++) {
            answers[i][run] = given[i];
        }
    }

    private void fail(int run, String message) {
        for (double[] column : answers) {
            column[run] = Double.NaN;
        }
        synchronized (failed) {
            failed.set(run);
            if (run < firstFailed) {
                firstFailed = run;
                firstFailure = message;
            }
        }
    }

    private void tellIfNobodyElseDoes() {
        if (done.get() - told >= Math.max(1, total / NEWS) && telling.tryLock()) {
            try {
                tell();
            } finally {
                telling.unlock();
            }
        }
    }

    private void tell() {
        int now = done.get();
        if (now > told) {
            told = now;
            study.progress().done(now, total);
        }
    }
}
