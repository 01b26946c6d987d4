package io.github.heatswell.charts;

import io.github.heatswell.result.Channel;
import io.github.heatswell.result.Event;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.result.RunSummary;
import io.github.heatswell.result.Trace;
import io.github.heatswell.simulation.Simulation;
import io.github.heatswell.system.HotWaterSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * A few figures for each day of a run: all that is left of a course too long to keep. Days are counted from the start of
 * the run, so each is 24 h long but the last. Immutable.
 *
 * @param days the days, in their order; none if the run had no sample
 */
public record DailyFigures(List<Day> days) {

    /** The length of a day (s). */
    static final double DAY = 86_400;

    /**
     * Copies the days.
     *
     * @param days the days, in their order; none if the run had no sample
     */
    public DailyFigures {
        days = List.copyOf(Objects.requireNonNull(days, "days"));
    }

    /**
     * Starts to gather figures from samples as they come. The memory it takes grows with the days, not with the samples.
     *
     * @param system the system that is going to run
     * @return the collector
     */
    public static DailyCollector collector(HotWaterSystem system) {
        return new DailyCollector(Objects.requireNonNull(system, "system"));
    }

    /**
     * The figures of a run whose course was kept, its located events included.
     *
     * @param result the run
     * @return the figures
     */
    public static DailyFigures of(RunResult result) {
        DailyCollector collector =
                collector(Objects.requireNonNull(result, "result").system());
        Trace trace = result.trace();
        for (int i = 0; i < trace.count(); i++) {
            collector.sample(trace.grid().time(i), trace.sample(i), trace.regime(i));
        }
        return collector.figures().completedBy(result.summary());
    }

    /**
     * The same figures, widened by what happened between the samples: the pressures of located events, such as the opening
     * of a valve, and the extremes of the run.
     *
     * @param summary the run the figures are of
     * @return the figures
     */
    public DailyFigures completedBy(RunSummary summary) {
        List<Day> wider = new ArrayList<>(days);
        for (Event event : Objects.requireNonNull(summary, "summary").events()) {
            widen(wider, event.time(), summary.gauge(event.pressureAbsolute()));
        }
        RunSummary.Extreme highest = summary.extremes().highestPressure();
        RunSummary.Extreme lowest = summary.extremes().lowestPressure();
        widen(wider, highest.time(), summary.gauge(highest.value()));
        widen(wider, lowest.time(), summary.gauge(lowest.value()));
        return new DailyFigures(wider);
    }

    /**
     * What all relief valves discharged.
     *
     * @return the volume (m3) of each day, as cold water
     */
    public List<Double> relieved() {
        return days.stream().map(Day::relieved).toList();
    }

    private static void widen(List<Day> days, double time, double gauge) {
        int index = Math.min((int) Math.floor(time / DAY), days.size() - 1);
        if (index >= 0) {
            days.set(index, days.get(index).with(gauge));
        }
    }

    /**
     * The figures of one day.
     *
     * @param lowestPressure the lowest pressure (Pa, gauge)
     * @param highestPressure the highest pressure (Pa, gauge)
     * @param relieved the volume discharged by all relief valves (m3), as cold water
     * @param drawn the volume of hot water drawn (m3), as cold water
     * @param highestTemperature the temperature of the hottest water (K)
     */
    public record Day(
            double lowestPressure, double highestPressure, double relieved, double drawn, double highestTemperature) {

        private Day with(double gauge) {
            return new Day(
                    Math.min(lowestPressure, gauge),
                    Math.max(highestPressure, gauge),
                    relieved,
                    drawn,
                    highestTemperature);
        }
    }

    /**
     * Gathers {@link DailyFigures} from the samples of one run as they come. For one thread.
     *
     * <p>A day takes in the samples at both its ends. Where a day ends between two samples, volumes are shared out evenly over
     * the time between them, and each of the days has both samples.
     */
    public static final class DailyCollector implements Simulation.SampleListener {

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
}
