package io.github.heatswell.simulation;

/** Hears how far long work has come: one call at a time, from any of the threads that do it. */
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
