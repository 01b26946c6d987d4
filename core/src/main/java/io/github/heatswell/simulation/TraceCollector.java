package io.github.heatswell.simulation;

import io.github.heatswell.result.Channel;
import io.github.heatswell.result.Regime;
import io.github.heatswell.result.TimeGrid;
import io.github.heatswell.result.Trace;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** Keeps all samples of a run. */
final class TraceCollector implements SampleListener {

    private final double interval;
    private final double[][] columns;
    private final List<Regime> regimes = new ArrayList<>();
    private double last;

    TraceCollector(TimeGrid planned) {
        interval = planned.step();
        columns = new double[Channel.values().length][planned.count()];
    }

    @Override
    public void sample(double time, double[] values, Regime regime) {
        for (int i = 0; i < columns.length; i++) {
            columns[i][regimes.size()] = values[i];
        }
        regimes.add(regime);
        last = time;
    }

    /** The samples so far as a trace. */
    Trace trace() {
        Map<Channel, double[]> trimmed = new EnumMap<>(Channel.class);
        for (Channel channel : Channel.values()) {
            double[] column = columns[channel.ordinal()];
            boolean full = column.length == regimes.size();
            trimmed.put(channel, full ? column : Arrays.copyOf(column, regimes.size()));
        }
        return new Trace(new TimeGrid(interval, last), trimmed, regimes);
    }
}
