package io.github.heatswell.result;

import java.util.concurrent.atomic.AtomicReference;

/**
 * Number of runs behind an answer, and how many have a balance that does not close. Immutable.
 *
 * @param open how many do not close ({@link RunSummary.Audit#closes}); 0 for a reliable answer
 * @param runs how many there are
 */
public record Balances(long open, long runs) {

    /** Balances of an answer without runs. */
    public static final Balances NONE = new Balances(0, 0);

    /**
     * Checks the numbers.
     *
     * @param open how many do not close, 0 or more
     * @param runs how many there are, {@code open} or more
     * @throws IllegalArgumentException if a number is outside its range
     */
    public Balances {
        if (open < 0 || open > runs) {
            throw new IllegalArgumentException("open: " + open + " is outside the allowed range, 0 to " + runs);
        }
    }

    /**
     * The balance of one run.
     *
     * @param run the run
     * @return one run, open or not
     */
    public static Balances of(RunSummary run) {
        return new Balances(run.audit().closes() ? 0 : 1, 1);
    }

    /**
     * These and others.
     *
     * @param others those of other runs
     * @return both together
     */
    public Balances and(Balances others) {
        return new Balances(open + others.open, runs + others.runs);
    }

    /**
     * Whether every balance closes.
     *
     * @return false if the answer is unreliable
     */
    public boolean close() {
        return open == 0;
    }

    /** Collects the {@link Balances} of the runs behind an answer. Any number of threads may add to it. */
    public static final class Count {

        private final AtomicReference<Balances> sum = new AtomicReference<>(Balances.NONE);

        /** Starts with no run. */
        public Count() {}

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
}
