package io.github.heatswell.scenarios.page.io.github.heatswell.simulation;

import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.function.Function;
import java.util.function.IntConsumer;
import java.util.function.Supplier;

/** Takes the place of {@link io.github.heatswell.simulation.Workers} in script, which has one thread: it does all work itself. */
public final class TWorkers {

    private final Progress listener;
    private final int total;
    private int done;

    private TWorkers(Progress listener, int total) {
        this.listener = listener;
        this.total = total;
    }

    /**
     * The one worker there is.
     *
     * @param threads how many were asked for
     * @return the worker
     */
    public static TWorkers of(int threads) {
        return new TWorkers((done, total) -> {}, threads);
    }

    /**
     * The worker, who tells of every piece.
     *
     * @param hearing hears how many pieces are done
     * @param pieces how many there will be
     * @return the worker
     */
    public TWorkers telling(Progress hearing, int pieces) {
        return new TWorkers(hearing, pieces);
    }

    /**
     * Does all pieces.
     *
     * @param count how many there are
     * @param piece does the piece of a number, counted from 0
     */
    public void each(int count, IntConsumer piece) {
        until(() -> false, count, () -> piece);
    }

    /**
     * What comes of each of some things.
     *
     * @param things the things
     * @param work what is done with each
     * @param <A> the kind of thing
     * @param <B> what comes of it
     * @return what came of each, in the order of the things
     */
    public <A, B> List<B> map(List<A> things, Function<A, B> work) {
        return things.stream().map(work).toList();
    }

    /**
     * Does pieces until all are done or the work is stopped.
     *
     * @param stop true once no more are to be begun
     * @param count how many pieces there are
     * @param worker makes what does the piece of a number
     * @return how many pieces were done
     */
    public int until(BooleanSupplier stop, int count, Supplier<IntConsumer> worker) {
        IntConsumer working = worker.get();
        int next = 0;
        while (next < count && !stop.getAsBoolean()) {
            working.accept(next);
            next++;
            done++;
            listener.done(done, total);
        }
        return next;
    }

    /** Progress of long work. */
    @FunctionalInterface
    public interface Progress {

        /**
         * Called after each piece.
         *
         * @param done how many are done
         * @param total how many there are
         */
        void done(int done, int total);
    }
}
