package io.github.heatswell.charts;

import io.github.heatswell.charts.ValueScale.Range;
import io.github.heatswell.charts.picture.Area;
import io.github.heatswell.charts.picture.Points;
import io.github.heatswell.charts.picture.Points.PointCollector;
import io.github.heatswell.narrative.UncertainRise;
import io.github.heatswell.result.Channel;
import io.github.heatswell.result.Event;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.result.RunSummary;
import io.github.heatswell.result.Trace;
import io.github.heatswell.system.ReliefValve;
import io.github.heatswell.units.QuantityFormat;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;

/**
 * The lines a run draws. Samples alone would cut off what happens between them, so the located events and the extremes
 * are corners of the line too: the drop of a snap-acting valve stands as the sharp edge it is.
 */
final class RunLines {

    /** Two moments this close (s) are one. */
    private static final double SAME = 1e-6;

    private final RunResult result;
    private final QuantityFormat amounts;
    private final TimeScale scale;
    private final int columns;

    RunLines(RunResult result, QuantityFormat amounts, TimeScale scale, int columns) {
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

    /** Where the gauge pressure may lie while it rises. */
    Area rise(UncertainRise rise) {
        return Area.between(
                Area.Role.UNCERTAIN,
                rise.label(),
                edge(rise, UncertainRise.Instant::lowest),
                edge(rise, UncertainRise.Instant::highest));
    }

    private Points edge(UncertainRise rise, ToDoubleFunction<UncertainRise.Instant> pressure) {
        return new Points(
                rise.instants().stream()
                        .mapToDouble(instant -> scale.of(instant.time()))
                        .toArray(),
                rise.instants().stream()
                        .mapToDouble(instant -> gauge(pressure.applyAsDouble(instant)))
                        .toArray());
    }

    /** From the coldest water, at the bottom, to the hottest, at the top of a tank in layers. */
    Area layers() {
        return Area.between(
                Area.Role.LAYERS,
                "from the bottom to the top of the tank",
                merged(Channel.WATER_BOTTOM, List.of()),
                merged(Channel.WATER_TOP, List.of()));
    }

    /** The temperature of the water in the hot branch. */
    Points hotBranch() {
        return merged(Channel.WATER_AT_TAP, List.of());
    }

    /** The temperature of the water in a circulation loop. */
    Points loop() {
        return merged(Channel.WATER_IN_LOOP, List.of());
    }

    /** The volume discharged since the start. */
    Points relieved() {
        return merged(Channel.RELIEVED_TOTAL, List.of());
    }

    /** The volume that went back to the mains since the start. */
    Points returned() {
        return merged(Channel.RETURNED_TOTAL, List.of());
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
            case WATER_MEAN, WATER_TOP, WATER_BOTTOM, WATER_AT_TAP, WATER_IN_LOOP ->
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

    /**
     * When the pressure settled after a modulating valve opened between two samples. It falls within seconds; a straight
     * line to the next sample would show a fall of up to a minute that never happened.
     *
     * <p>The time follows from what the trace holds. Part of the water discharged until the next sample is steady flow; the
     * rest left during the fall, as the opening valve's flow decayed. An exponential decay is 95 % complete after three
     * times that rest divided by the initial flow.
     */
    private static final class ReliefDrop {

        private static final double TIME_CONSTANTS = 3;

        private final RunResult result;

        ReliefDrop(RunResult result) {
            this.result = result;
        }

        /**
         * The end of the fall, before the next sample.
         *
         * @param index the number of the event
         * @return the time since the start (s), or empty if the event is none of this kind or the trace does not tell
         */
        OptionalDouble end(int index) {
            Event opening = result.events().get(index);
            int sample = sampleAfter(opening.time());
            if (opening.kind() != Event.Kind.RELIEF_OPENED || sample < 0 || interrupted(index, sample)) {
                return OptionalDouble.empty();
            }
            Trace trace = result.trace();
            boolean settled = trace.regime(sample) == Trace.Regime.RELIEVING
                    && trace.value(Channel.PRESSURE_ABSOLUTE, sample) < opening.pressureAbsolute();
            double firstFlow = firstFlow(opening.device());
            if (!settled || !(firstFlow > 0)) {
                return OptionalDouble.empty();
            }
            double left = trace.grid().time(sample) - opening.time();
            double rest = trace.value(Channel.RELIEVED_TOTAL, sample)
                    - trace.value(Channel.RELIEVED_TOTAL, sample - 1)
                    - trace.value(Channel.RELIEF_FLOW, sample) * left;
            double fall = TIME_CONSTANTS * rest / firstFlow;
            return fall >= 0 && fall < left ? OptionalDouble.of(opening.time() + fall) : OptionalDouble.empty();
        }

        /** The sample next after a moment, or -1 if there is none with one before it. */
        int sampleAfter(double time) {
            int sample = (int) Math.floor(time / result.trace().grid().step()) + 1;
            return sample < result.trace().count() ? sample : -1;
        }

        private boolean interrupted(int index, int sample) {
            boolean last = index == result.events().size() - 1;
            return !last
                    && result.events().get(index + 1).time()
                            <= result.trace().grid().time(sample);
        }

        /** The flow (m3/s) of a valve as it opens, if it falls from there along its curve; 0 for one that then drops at once. */
        private double firstFlow(String name) {
            double atmosphere = result.system().site().atmosphere();
            for (ReliefValve valve : result.system().reliefValves()) {
                if (valve.name().equals(name)) {
                    double reseatPressure = valve.reseatPressure().gauge(atmosphere);
                    double share = (valve.setPressure().gauge(atmosphere) - reseatPressure)
                            / (valve.fullLiftPressure().gauge(atmosphere) - reseatPressure);
                    boolean drops = valve.liftCharacteristic()
                            .filter(known -> switch (known) {
                                case MODULATING -> false;
                                case SNAP -> true;
                            })
                            .isPresent();
                    return drops ? 0 : valve.liftCurve().lift(share) * valve.fullFlow();
                }
            }
            return 0;
        }
    }
}
