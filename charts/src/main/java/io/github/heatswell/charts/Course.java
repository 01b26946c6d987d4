package io.github.heatswell.charts;

import io.github.heatswell.charts.ValueScale.Range;
import io.github.heatswell.charts.picture.Area;
import io.github.heatswell.charts.picture.PointCollector;
import io.github.heatswell.charts.picture.Points;
import io.github.heatswell.result.Channel;
import io.github.heatswell.result.Event;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.result.RunSummary;
import io.github.heatswell.result.Trace;
import io.github.heatswell.units.QuantityFormat;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The lines a run draws. Samples alone would cut off what happens between them, so the located events and the extremes
 * are corners of the line too: the drop of a snap-acting valve stands as the sharp edge it is.
 */
final class Course {

    /** Two moments this close (s) are one. */
    private static final double SAME = 1e-6;

    private final RunResult result;
    private final QuantityFormat amounts;
    private final TimeScale scale;
    private final int columns;

    Course(RunResult result, QuantityFormat amounts, TimeScale scale, int columns) {
        this.result = result;
        this.amounts = amounts;
        this.scale = scale;
        this.columns = columns;
    }

    /** The gauge pressure. */
    Points pressure() {
        List<Moment> moments = new ArrayList<>();
        for (int i = 0; i < result.events().size(); i++) {
            Event event = result.events().get(i);
            moments.add(new Moment(event.time(), gauge(event.pressureAbsolute())));
            addDrop(moments, i);
        }
        addExtreme(moments, result.extremes().highestPressure());
        addExtreme(moments, result.extremes().lowestPressure());
        moments.sort(Comparator.comparingDouble(Moment::time));
        return merged(Channel.PRESSURE_ABSOLUTE, moments);
    }

    /** The mean water temperature. */
    Points temperature() {
        List<Moment> moments = new ArrayList<>();
        for (Event event : result.events()) {
            moments.add(new Moment(event.time(), amounts.units().temperature().fromSi(event.waterTemperature())));
        }
        return merged(Channel.WATER_MEAN, moments);
    }

    /** The gauge pressure of the mains. */
    Points mains() {
        return merged(Channel.MAINS_ABSOLUTE, List.of());
    }

    /** From the coldest water, at the bottom, to the hottest, at the top of a tank in layers. */
    Area layers() {
        return Area.between(
                Area.Role.LAYERS,
                "from the bottom to the top of the tank",
                merged(Channel.WATER_BOTTOM, List.of()),
                merged(Channel.WATER_TOP, List.of()));
    }

    /** The volume discharged since the start. */
    Points relieved() {
        return merged(Channel.RELIEVED_TOTAL, List.of());
    }

    /** The range of the gauge pressure. */
    Range pressureRange() {
        return new Range(
                gauge(result.extremes().lowestPressure().value()),
                gauge(result.extremes().highestPressure().value()));
    }

    private void addDrop(List<Moment> moments, int index) {
        ReliefDrop drop = new ReliefDrop(result);
        drop.end(index).ifPresent(end -> {
            int sample = drop.sampleAfter(end);
            moments.add(new Moment(end, gauge(result.trace().value(Channel.PRESSURE_ABSOLUTE, sample))));
        });
    }

    private void addExtreme(List<Moment> moments, RunSummary.Extreme extreme) {
        double step = result.trace().grid().step();
        boolean sampled = Math.abs(extreme.time() - step * Math.rint(extreme.time() / step)) < SAME;
        boolean known = sampled
                || result.end() - extreme.time() < SAME
                || result.events().stream().anyMatch(event -> Math.abs(event.time() - extreme.time()) < SAME);
        if (!known) {
            moments.add(new Moment(extreme.time(), gauge(extreme.value())));
        }
    }

    private Points merged(Channel channel, List<Moment> moments) {
        Trace trace = result.trace();
        PointCollector line =
                new PointCollector(scale.axis().from(), scale.axis().to(), columns);
        int next = 0;
        for (int i = 0; i < trace.count(); i++) {
            double time = trace.grid().time(i);
            while (next < moments.size() && moments.get(next).time() <= time) {
                line.add(scale.of(moments.get(next).time()), moments.get(next).value());
                next++;
            }
            line.add(scale.of(time), shown(channel, trace.value(channel, i)));
        }
        return line.points();
    }

    private double shown(Channel channel, double value) {
        return switch (channel) {
            case PRESSURE_ABSOLUTE, MAINS_ABSOLUTE -> gauge(value);
            case WATER_MEAN, WATER_TOP, WATER_BOTTOM ->
                amounts.units().temperature().fromSi(value);
            default -> amounts.units().volume().fromSi(value);
        };
    }

    private double gauge(double absolute) {
        return amounts.units().pressure().fromSi(result.gauge(absolute));
    }

    /**
     * A corner between the samples.
     *
     * @param time since the start (s)
     * @param value in the unit shown
     */
    private record Moment(double time, double value) {}
}
