package io.github.heatswell.charts;

import io.github.heatswell.result.Channel;
import io.github.heatswell.result.Event;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.result.RunSummary;
import io.github.heatswell.result.Trace;
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
        double[] values = new double[Channel.values().length];
        for (int i = 0; i < trace.count(); i++) {
            for (Channel channel : Channel.values()) {
                values[channel.ordinal()] = trace.value(channel, i);
            }
            collector.sample(trace.grid().time(i), values, trace.regime(i));
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
}
