package io.github.heatswell.result;

import java.util.concurrent.atomic.AtomicReference;

/** Collects the {@link Balances} of the runs behind an answer. Any number of threads may add to it. */
public final class BalanceCount {

    private final AtomicReference<Balances> sum = new AtomicReference<>(Balances.NONE);

    /** Starts with no run. */
    public BalanceCount() {}

    /**
     * Adds a run.
     *
     * @param run the run
     * @return the same run
     */
    public RunSummary add(RunSummary run) {
        add(Balances.of(run));
        return run;
    }

    /**
     * Adds a run.
     *
     * @param run the run
     * @return the same run
     */
    public RunResult add(RunResult run) {
        add(run.summary());
        return run;
    }

    /**
     * Adds several runs.
     *
     * @param balances theirs
     */
    public void add(Balances balances) {
        sum.accumulateAndGet(balances, Balances::and);
    }

    /**
     * The sum of all balances added so far.
     *
     * @return their balances
     */
    public Balances sum() {
        return sum.get();
    }
}
