package io.github.heatswell.study;

import io.github.heatswell.simulation.SimulationException;
import io.github.heatswell.simulation.Workers;
import java.util.BitSet;
import java.util.function.IntConsumer;
import java.util.function.Supplier;

/**
 * Runs a model repeatedly on a fixed number of threads. The outcome does not depend on thread timing, and a stopped
 * study has no gaps.
 */
final class SampleRunner {

    private final Study study;
    private final Supplier<PointSource> source;
    private final int total;
    private final double[][] answers;
    private final BitSet failed = new BitSet();
    private int firstFailed = Integer.MAX_VALUE;
    private String firstFailure;

    SampleRunner(Study study, int total, Supplier<PointSource> source) {
        this.study = study;
        this.total = total;
        this.source = source;
        answers = new double[study.outputs().size()][total];
    }

    /** Runs the model until all is done or the study is stopped; what a model throws unexpectedly is thrown on. */
    Runs run() {
        int completed = Workers.of(study.threads())
                .telling(study.progress(), total)
                .until(study.stopSignal(), total, this::worker);
        int failures = failed.get(0, completed).cardinality();
        return new Runs(total, completed, answers, failures, failures == 0 ? null : firstFailure);
    }

    private IntConsumer worker() {
        PointSource points = source.get();
        return run -> calculate(run, points.values(run));
    }

    private void calculate(int run, double[] values) {
        try {
            put(run, study.model().answers(values));
        } catch (Study.SampleFailedException | SimulationException failure) {
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

    /**
     * What the runs of a model gave: the first {@code completed} of them, without a gap.
     *
     * @param planned how many runs were asked for
     * @param completed how many are there
     * @param answers by output, then by run; NaN where there is none
     * @param failed how many of them have no answers
     * @param firstFailure why the first of these has none, or null
     */
    record Runs(int planned, int completed, double[][] answers, int failed, String firstFailure) {}
}
