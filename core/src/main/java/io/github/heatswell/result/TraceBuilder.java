package io.github.heatswell.result;

import java.util.Arrays;

/**
 * Builds a {@link Trace} sample by sample. It hands its columns to the trace without copying, so a long run is stored
 * once; afterwards it accepts no more samples.
 */
public final class TraceBuilder {

    private final double interval;
    private final int room;
    private double[][] columns;
    private Regime[] regimes;
    private int count;
    private double last;

    /**
     * Starts a trace.
     *
     * @param planned the instants to allocate for; the trace may end earlier
     */
    public TraceBuilder(TimeGrid planned) {
        interval = planned.step();
        room = planned.count();
        columns = new double[Trace.CHANNELS][room];
        regimes = new Regime[room];
    }

    /**
     * Adds one sample.
     *
     * @param time since the start of the run (s), later than that of the sample before
     * @param values one value for each {@link Channel}, by its {@code ordinal()}, in its SI unit; copied
     * @param regime the pressure regime
     * @throws IllegalStateException if there is no room for it, or the trace has been built
     */
    public void add(double time, double[] values, Regime regime) {
        checkRoomFor(1);
        for (int i = 0; i < columns.length; i++) {
            columns[i][count] = values[i];
        }
        regimes[count] = regime;
        last = time;
        count++;
    }

    /**
     * Adds samples that follow on each other under one regime.
     *
     * @param samples how many, at least 1
     * @param times of each of them, since the start of the run (s), rising; there may be room for more
     * @param values for each {@link Channel}, by its {@code ordinal()}, as many values in its SI unit or more; copied
     * @param regime the pressure regime of all of them
     * @throws IllegalStateException if there is no room for them, or the trace has been built
     */
    public void addAll(int samples, double[] times, double[][] values, Regime regime) {
        checkRoomFor(samples);
        for (int i = 0; i < columns.length; i++) {
            System.arraycopy(values[i], 0, columns[i], count, samples);
        }
        Arrays.fill(regimes, count, count + samples, regime);
        last = times[samples - 1];
        count += samples;
    }

    private void checkRoomFor(int samples) {
        if (columns == null) {
            throw new IllegalStateException("the trace has been built; start another for more samples");
        }
        if (samples > room - count) {
            throw new IllegalStateException("a trace planned for " + room + " samples takes no more");
        }
    }

    /**
     * Completes the trace with the samples added so far.
     *
     * @return the trace
     * @throws IllegalStateException if there is no sample, or the trace has been built already
     */
    public Trace build() {
        if (columns == null || count == 0) {
            throw new IllegalStateException(
                    count == 0 ? "a trace needs at least one sample" : "the trace has been built");
        }
        if (count < room) {
            for (int i = 0; i < columns.length; i++) {
                columns[i] = Arrays.copyOf(columns[i], count);
            }
            regimes = Arrays.copyOf(regimes, count);
        }
        Trace trace = new Trace(new TimeGrid(interval, last), columns, regimes);
        columns = null;
        return trace;
    }
}
