package io.github.heatswell.simulation;

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
