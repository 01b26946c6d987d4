package io.github.heatswell.simulation;

import io.github.heatswell.result.Trace;

/** Receives the samples of a run in batches, one per solver step. */
@FunctionalInterface
interface SampleSink {

    /**
     * Receives samples. The arrays are reused and must not be kept.
     *
     * @param count how many there are, at least 1
     * @param times since the start of the run (s)
     * @param channels for each channel, by its {@code ordinal()}, its values
     * @param regime the pressure regime of all of them
     */
    void take(int count, double[] times, double[][] channels, Trace.Regime regime);

    /** A sink that hands on samples one by one. */
    static SampleSink to(SampleListener listener, int channels) {
        double[] values = new double[channels];
        return (count, times, columns, regime) -> {
            for (int i = 0; i < count; i++) {
                for (int channel = 0; channel < channels; channel++) {
                    values[channel] = columns[channel][i];
                }
                listener.sample(times[i], values, regime);
            }
        };
    }
}
