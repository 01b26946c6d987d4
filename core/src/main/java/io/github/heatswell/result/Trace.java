package io.github.heatswell.result;

import io.github.heatswell.units.QuantityFormat;
import io.github.heatswell.units.UnitSystem;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;

/**
 * The course of a run on a grid of instants, one column for each channel. At an event, the sample shows the state right
 * after it.
 */
public final class Trace {

    /** The number of channels. */
    static final int CHANNELS = Channel.values().length;

    private final Grid grid;
    /** By the ordinal of the channel; a column of one value has it at every instant. */
    private final double[][] columns;
    /** By their ordinals. */
    private final byte[] regimes;

    /**
     * Creates a trace; the columns are copied.
     *
     * @param grid the instants
     * @param columns the values of every channel, in the SI unit of the channel, one for each instant
     * @param regimes the regime at every instant
     * @throws IllegalArgumentException if a channel is missing or a column has the wrong length
     */
    public Trace(Grid grid, Map<Channel, double[]> columns, List<Regime> regimes) {
        this.grid = Objects.requireNonNull(grid, "grid");
        Objects.requireNonNull(columns, "columns");
        this.columns = new double[CHANNELS][];
        this.regimes = new byte[regimes.size()];
        for (int i = 0; i < this.regimes.length; i++) {
            this.regimes[i] = (byte) regimes.get(i).ordinal();
        }
        int count = grid.count();
        for (Channel channel : Channel.values()) {
            double[] column = columns.get(channel);
            if (column == null || column.length != count || this.regimes.length != count) {
                throw new IllegalArgumentException(
                        "a trace of " + count + " samples needs as many values of " + channel);
            }
            this.columns[channel.ordinal()] = column.clone();
        }
    }

    /** {@return how many samples it has, and over which time, in SI units: {@code 241 samples, one every 1 min}} */
    @Override
    public String toString() {
        return count() + " samples, one every "
                + QuantityFormat.ascii(UnitSystem.SI).time(grid.step());
    }

    /**
     * As many values as a sample has: one for each channel, and where there are several vessels two for each of them.
     *
     * @param vessels how many vessels the system has
     * @return the number
     */
    public static int columns(int vessels) {
        return CHANNELS + (vessels > 1 ? 2 * vessels : 0);
    }

    /**
     * Where the water in one of several vessels (m3) stands among the values of a sample; NaN there if the vessel takes no part.
     *
     * @param vessel its place among the vessels of the system, from 0
     * @param vessels how many vessels the system has, at least 2; the water of the only one is {@link Channel#VESSEL_WATER}
     * @return the index
     * @throws IndexOutOfBoundsException if there is no such vessel, or not several
     */
    public static int vesselWater(int vessel, int vessels) {
        if (vessels < 2) {
            throw new IndexOutOfBoundsException(
                    "vessels: a sample has values of each vessel where there are several, not with " + vessels);
        }
        return CHANNELS + 2 * Objects.checkIndex(vessel, vessels);
    }

    /**
     * Where the pressure of the gas in one of several vessels (Pa, absolute) stands among the values of a sample; NaN there if
     * the vessel takes no part. It is that of the water at the vessel's height, unless the diaphragm is at its seat or limit.
     *
     * @param vessel its place among the vessels of the system, from 0
     * @param vessels how many vessels the system has, at least 2
     * @return the index
     * @throws IndexOutOfBoundsException if there is no such vessel, or not several
     */
    public static int vesselGas(int vessel, int vessels) {
        return vesselWater(vessel, vessels) + 1;
    }

    /** Creates a trace that keeps what it is given. */
    private Trace(Grid grid, double[][] columns, byte[] regimes) {
        this.grid = grid;
        this.columns = columns;
        this.regimes = regimes;
    }

    /**
     * The instants.
     *
     * @return the grid
     */
    public Grid grid() {
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
        return value(Objects.requireNonNull(channel, "channel").ordinal(), index);
    }

    private double value(int column, int index) {
        double[] values = columns[column];
        int place = Objects.checkIndex(index, count());
        return values[values.length == 1 ? 0 : place];
    }

    /**
     * All values of a sample, as a listener of a run receives them.
     *
     * @param index the number of the sample
     * @return one value for each channel, by its {@code ordinal()}, in its SI unit, and behind them those of each of several
     *     vessels
     * @throws IndexOutOfBoundsException if there is no such sample
     */
    public double[] sample(int index) {
        double[] values = new double[columns.length];
        for (int i = 0; i < values.length; i++) {
            values[i] = value(i, index);
        }
        return values;
    }

    /**
     * All values of a channel.
     *
     * @param channel the quantity
     * @return a copy, in the SI unit of the channel
     */
    public double[] values(Channel channel) {
        double[] column = columns[Objects.requireNonNull(channel, "channel").ordinal()];
        double[] values = Arrays.copyOf(column, count());
        if (column.length == 1) {
            Arrays.fill(values, column[0]);
        }
        return values;
    }

    /**
     * The pressure regime at a sample.
     *
     * @param index the number of the sample
     * @return the regime
     * @throws IndexOutOfBoundsException if there is no such sample
     */
    public Regime regime(int index) {
        return Regime.ALL.get(regimes[index]);
    }

    /**
     * The pressure regime, sample by sample.
     *
     * @return a copy
     */
    public List<Regime> regimes() {
        Regime[] all = new Regime[count()];
        Arrays.setAll(all, this::regime);
        return List.of(all);
    }

    /**
     * The instants at which a run is sampled: 0, one step, two steps, and so on; the end of the run is always the last one, even
     * when it is not a whole number of steps away.
     *
     * @param step the distance of the samples (s), above 0
     * @param end the end of the run (s), 0 or more
     */
    public record Grid(double step, double end) {

        /** Two instants this close (fraction of the step) count as one. */
        public static final double SAME_INSTANT = 1e-9;

        /** The largest number of samples a grid may have. */
        private static final double MAX_SAMPLES = 1e9;

        /**
         * Checks that the grid is finite and runs forward.
         *
         * @param step the distance of the samples (s), above 0
         * @param end the end of the run (s), 0 or more
         * @throws IllegalArgumentException if the step is not above 0, the end is below 0, or the grid has more than a
         *     billion samples
         */
        public Grid {
            if (!(step > 0 && end >= 0 && end / step < MAX_SAMPLES)) {
                throw new IllegalArgumentException(
                        "a grid of " + step + " s steps up to " + end + " s is not a finite forward grid");
            }
        }

        /**
         * The number of samples.
         *
         * @return the number, at least 1
         */
        public int count() {
            return (int) Math.ceil(end / step - SAME_INSTANT) + 1;
        }

        /**
         * The instant of a sample.
         *
         * @param index the number of the sample, 0 to {@code count() - 1}
         * @return the time since the start of the run (s)
         * @throws IndexOutOfBoundsException if there is no such sample
         */
        public double time(int index) {
            int count = count();
            if (index < 0 || index >= count) {
                throw new IndexOutOfBoundsException("sample " + index + " of " + count);
            }
            return index == count - 1 ? end : index * step;
        }
    }

    /**
     * Builds a {@link Trace} sample by sample. It hands its columns to the trace without copying, so a long run is stored
     * once; afterwards it accepts no more samples.
     */
    public static final class Builder {

        private final double interval;
        private final int room;
        /** Columns, of one value while all are the same; those of channels whose values came in one array are one. */
        private double[][] columns;
        /** For each column the first that is the same. */
        private final int[] kept;

        private byte[] regimes;
        private int count;
        private double last;

        /**
         * Starts a trace.
         *
         * @param planned the instants to allocate for; the trace may end earlier
         */
        public Builder(Trace.Grid planned) {
            this(planned, 0);
        }

        /**
         * Starts a trace of a system that may have several vessels.
         *
         * @param planned the instants to allocate for; the trace may end earlier
         * @param vessels how many vessels the system has; two or more are recorded one by one as well
         */
        public Builder(Trace.Grid planned, int vessels) {
            interval = planned.step();
            room = planned.count();
            columns = new double[Trace.columns(vessels)][];
            kept = new int[columns.length];
            regimes = new byte[room];
        }

        /**
         * Adds one sample.
         *
         * @param time since the start of the run (s), later than that of the sample before
         * @param values one value for each {@link Channel}, by its {@code ordinal()}, in its SI unit, and behind them those of
         *     {@link Trace#vesselWater(int, int)} and {@link Trace#vesselGas(int, int)}; copied
         * @param regime the pressure regime
         * @throws IllegalStateException if there is no room for it, or the trace has been built
         */
        public void add(double time, double[] values, Regime regime) {
            double[][] single = new double[kept.length][];
            for (int i = 0; i < single.length; i++) {
                single[i] = new double[] {values[i]};
            }
            addAll(1, new double[] {time}, single, regime);
        }

        /**
         * Adds samples that follow on each other under one regime.
         *
         * @param samples how many, at least 1
         * @param times of each of them, since the start of the run (s), rising; there may be room for more
         * @param values for each {@link Channel}, by its {@code ordinal()}, as many values in its SI unit or more, or the one that all of them
         *     have; copied. An array that stands for several channels is kept once
         * @param regime the pressure regime of all of them
         * @throws IllegalStateException if there is no room for them, or the trace has been built
         */
        public void addAll(int samples, double[] times, double[][] values, Regime regime) {
            checkRoomFor(samples);
            for (int i = 0; i < columns.length; i++) {
                if (count == 0) {
                    kept[i] = first(values, i);
                } else if (values[i] != values[kept[i]]) {
                    columns[i] = columns[kept[i]].clone();
                    kept[i] = i;
                }
                columns[i] = kept[i] == i ? extended(columns[i], values[i], samples) : columns[kept[i]];
            }
            Arrays.fill(regimes, count, count + samples, (byte) regime.ordinal());
            last = times[samples - 1];
            count += samples;
        }

        /** A column with more values; as long as all are the same, it has room for one. */
        private double[] extended(double[] column, double[] values, int samples) {
            boolean single = count > 0 && column.length == 1;
            if (values.length == 1 && (count == 0 || single && Double.compare(column[0], values[0]) == 0)) {
                return count == 0 ? values.clone() : column;
            }
            double[] into = count == 0 || single ? new double[room] : column;
            if (single) {
                Arrays.fill(into, 0, count, column[0]);
            }
            if (values.length == 1) {
                Arrays.fill(into, count, count + samples, values[0]);
            } else {
                System.arraycopy(values, 0, into, count, samples);
            }
            return into;
        }

        private static int first(double[][] arrays, int index) {
            int first = 0;
            while (arrays[first] != arrays[index]) {
                first++;
            }
            return first;
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
                    boolean copied = kept[i] != i;
                    columns[i] =
                            copied ? columns[kept[i]] : Arrays.copyOf(columns[i], Math.min(columns[i].length, count));
                }
                regimes = Arrays.copyOf(regimes, count);
            }
            Trace trace = new Trace(new Trace.Grid(interval, last), columns, regimes);
            columns = null;
            return trace;
        }
    }

    /**
     * What determines the pressure at a moment. One regime applies at a time; located events lead from one to the next.
     */
    public enum Regime {
        /**
         * Nothing enters or leaves but draws, leaks and what leaking seats pass: the water's expansion and the compliance of
         * tank, pipes and vessel determine the pressure.
         */
        SEALED,
        /**
         * The supply holds the pressure and makes up what is missing: behind a check valve at the supply pressure, behind a
         * reducing valve at lock-up pressure minus droop times flow.
         */
        FED,
        /**
         * The system is refilled towards the supply pressure, after an outage, a start below it, or a relief valve that
         * lowered the pressure. Lasts seconds, or minutes with a large vessel; behind a reducing valve the regime is
         * {@link #FED}.
         */
        FILLING,
        /** A relief valve is open: its flow balances the water's expansion. */
        RELIEVING,
        /** The bypass is open: the mains hold the pressure a little above their own and take back the expansion. */
        RETURNED,
        /** No check valve: the mains hold the pressure and take back the expansion. */
        UNSEALED;

        private static final List<Regime> ALL = List.of(values());

        /**
         * The regime as files write it.
         *
         * @return the name in lower case
         */
        public String label() {
            return name().toLowerCase(Locale.ROOT);
        }
    }
}
