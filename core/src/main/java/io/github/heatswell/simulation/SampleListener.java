package io.github.heatswell.simulation;

import io.github.heatswell.result.Channel;
import io.github.heatswell.result.Trace;

/**
 * Receives the samples of a run one by one, so that a long run need not be held in memory.
 */
@FunctionalInterface
public interface SampleListener {

    /**
     * Takes one sample. Samples come in the order of time, the first at the start and the last at the end of the run.
     *
     * @param time since the start of the run (s)
     * @param values one value for each {@link Channel}, by its {@code ordinal()}, in its SI unit; the array is reused
     *     for the next sample and must not be kept
     * @param regime the pressure regime
     */
    void sample(double time, double[] values, Trace.Regime regime);
}
