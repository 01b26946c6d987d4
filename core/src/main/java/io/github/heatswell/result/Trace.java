package io.github.heatswell.result;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * The course of a run on a grid of instants, one column for each channel. At an event, the sample shows the state right
 * after it.
 */
public final class Trace {

    /** The number of channels. */
    static final int CHANNELS = Channel.values().length;

    private final TimeGrid grid;
    /** By the ordinal of the channel. */
    private final double[][] columns;

    private final Regime[] regimes;

    /**
     * Creates a trace; the columns are copied.
     *
     * @param grid the instants
     * @param columns the values of every channel, in the SI unit of the channel, one for each instant
     * @param regimes the regime at every instant
     * @throws IllegalArgumentException if a channel is missing or a column has the wrong length
     */
    public Trace(TimeGrid grid, Map<Channel, double[]> columns, List<Regime> regimes) {
        this(
                Objects.requireNonNull(grid, "grid"),
                copied(Objects.requireNonNull(columns, "columns")),
                Objects.requireNonNull(regimes, "regimes").toArray(Regime[]::new));
    }

    /** Creates a trace that keeps what it is given. */
    Trace(TimeGrid grid, double[][] columns, Regime[] regimes) {
        this.grid = grid;
        this.columns = columns;
        this.regimes = regimes;
        int count = grid.count();
        for (Channel channel : Channel.values()) {
            double[] column = columns[channel.ordinal()];
            if (column == null || column.length != count || regimes.length != count) {
                throw new IllegalArgumentException(
                        "a trace of " + count + " samples needs as many values of " + channel);
            }
        }
    }

    private static double[][] copied(Map<Channel, double[]> columns) {
        double[][] copies = new double[CHANNELS][];
        columns.forEach((channel, column) -> copies[channel.ordinal()] = column.clone());
        return copies;
    }

    /**
     * The instants.
     *
     * @return the grid
     */
    public TimeGrid grid() {
        return grid;
    }

    /**
     * The number of samples.
     *
     * @return the number, at least 1
     */
    public int count() {
        return regimes.length;
    }

    /**
     * One value.
     *
     * @param channel the quantity
     * @param index the number of the sample
     * @return the value, in the SI unit of the channel
     * @throws IndexOutOfBoundsException if there is no such sample
     */
    public double value(Channel channel, int index) {
        return columns[Objects.requireNonNull(channel, "channel").ordinal()][index];
    }

    /**
     * All values of a channel.
     *
     * @param channel the quantity
     * @return a copy, in the SI unit of the channel
     */
    public double[] values(Channel channel) {
        return columns[Objects.requireNonNull(channel, "channel").ordinal()].clone();
    }

    /**
     * The pressure regime at a sample.
     *
     * @param index the number of the sample
     * @return the regime
     * @throws IndexOutOfBoundsException if there is no such sample
     */
    public Regime regime(int index) {
        return regimes[index];
    }

    /**
     * The pressure regime, sample by sample.
     *
     * @return a copy
     */
    public List<Regime> regimes() {
        return List.copyOf(Arrays.asList(regimes));
    }
}
