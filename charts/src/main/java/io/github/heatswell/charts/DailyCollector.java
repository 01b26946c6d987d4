package io.github.heatswell.charts;

import io.github.heatswell.result.Channel;
import io.github.heatswell.result.Trace;
import io.github.heatswell.simulation.SampleListener;
import io.github.heatswell.system.HotWaterSystem;
import java.util.ArrayList;
import java.util.List;

/**
 * Gathers {@link DailyFigures} from the samples of one run as they come. For one thread.
 *
 * <p>A day takes in the samples at both its ends. Where a day ends between two samples, volumes are shared out evenly over
 * the time between them, and each of the days has both samples.
 */
public final class DailyCollector implements SampleListener {

    private static final int PRESSURE = Channel.PRESSURE_ABSOLUTE.ordinal();
    private static final int TOP = Channel.WATER_TOP.ordinal();
    private static final int RELIEVED = Channel.RELIEVED_TOTAL.ordinal();
    private static final int DRAWN = Channel.DRAWN_TOTAL.ordinal();

    /** A sample this close (s) to the end of a day lies on it. */
    private static final double SAME = 1e-6;

    private final double atmosphere;
    private final List<DailyFigures.Day> finished = new ArrayList<>();
    private Sample last;
    private double lowest;
    private double highest;
    private double hottest;
    private double relieved;
    private double drawn;

    DailyCollector(HotWaterSystem system) {
        atmosphere = system.site().atmosphere();
        begin();
    }

    @Override
    public void sample(double time, double[] values, Trace.Regime regime) {
        Sample now = new Sample(time, values[PRESSURE] - atmosphere, values[TOP], values[RELIEVED], values[DRAWN]);
        if (last == null) {
            see(now);
        } else {
            add(now);
        }
        last = now;
    }

    /**
     * The figures so far, the unfinished day included.
     *
     * @return the figures
     */
    public DailyFigures figures() {
        List<DailyFigures.Day> days = new ArrayList<>(finished);
        boolean begun = last != null && last.time > DailyFigures.DAY * finished.size() + SAME;
        if (begun || last != null && finished.isEmpty()) {
            days.add(day());
        }
        return new DailyFigures(days);
    }

    private void add(Sample now) {
        double from = last.time;
        while (from < now.time) {
            double dayEnds = DailyFigures.DAY * (finished.size() + 1);
            double to = Math.min(now.time, dayEnds);
            double share = (to - from) / (now.time - last.time);
            see(last);
            see(now);
            relieved += share * (now.relieved - last.relieved);
            drawn += share * (now.drawn - last.drawn);
            if (to >= dayEnds - SAME) {
                finished.add(day());
                begin();
            }
            from = to;
        }
    }

    private void see(Sample sample) {
        lowest = Math.min(lowest, sample.gauge);
        highest = Math.max(highest, sample.gauge);
        hottest = Math.max(hottest, sample.top);
    }

    private DailyFigures.Day day() {
        return new DailyFigures.Day(lowest, highest, relieved, drawn, hottest);
    }

    private void begin() {
        lowest = Double.POSITIVE_INFINITY;
        highest = Double.NEGATIVE_INFINITY;
        hottest = Double.NEGATIVE_INFINITY;
        relieved = 0;
        drawn = 0;
    }

    /** What is kept of the sample before. */
    private record Sample(double time, double gauge, double top, double relieved, double drawn) {}
}
