package io.github.heatswell.charts;

import io.github.heatswell.result.Channel;
import io.github.heatswell.result.Event;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.result.RunSummary;
import io.github.heatswell.result.Totals;
import io.github.heatswell.result.Trace;
import io.github.heatswell.system.HotWaterSystem;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Results written by hand, for what no sensible run would give and for numbers that are known beforehand. */
public final class Handmade {

    private final HotWaterSystem system;
    private final double step;
    private final double[] gaugeBar;
    private final List<Event> events = new ArrayList<>();
    private double relieved;

    private Handmade(HotWaterSystem system, double step, double... gaugeBar) {
        this.system = system;
        this.step = step;
        this.gaugeBar = gaugeBar;
    }

    /** A run with these gauge pressures (bar), one each step (s); the water warms by 1 K a step from 12 degC. */
    public static Handmade run(HotWaterSystem system, double step, double... gaugeBar) {
        return new Handmade(system, step, gaugeBar);
    }

    /** Adds an event at a gauge pressure (bar); a relief valve opens by pressure. */
    public Handmade event(double time, Event.Kind kind, String device, double gauge) {
        Event.OpeningCause cause = kind == Event.Kind.RELIEF_OPENED ? Event.OpeningCause.PRESSURE : null;
        double temperature = 285.15 + time / step;
        events.add(new Event(time, kind, device, absolute(gauge), temperature, Optional.ofNullable(cause)));
        return this;
    }

    /** Sets the volume (L) discharged by the end, by valves opening as often as the events say. */
    public Handmade relieved(double litres) {
        relieved = litres * 1e-3;
        return this;
    }

    /** The result. */
    public RunResult result() {
        int count = gaugeBar.length;
        Map<Channel, double[]> columns = new EnumMap<>(Channel.class);
        for (Channel channel : Channel.values()) {
            columns.put(channel, new double[count]);
        }
        List<RunSummary.Extreme> values = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            columns.get(Channel.PRESSURE_ABSOLUTE)[i] = absolute(gaugeBar[i]);
            columns.get(Channel.WATER_MEAN)[i] = 285.15 + i;
            columns.get(Channel.WATER_TOP)[i] = 285.15 + i;
            columns.get(Channel.WATER_BOTTOM)[i] = 285.15 + i;
            columns.get(Channel.MAINS_ABSOLUTE)[i] = absolute(4.2);
            columns.get(Channel.GAUGE_READING)[i] = gaugeBar[i] * 1e5;
            columns.get(Channel.RELIEVED_TOTAL)[i] = count == 1 ? 0 : relieved * i / (count - 1);
            values.add(new RunSummary.Extreme(absolute(gaugeBar[i]), i * step));
        }
        events.forEach(event -> values.add(new RunSummary.Extreme(event.pressureAbsolute(), event.time())));
        Comparator<RunSummary.Extreme> order = Comparator.comparingDouble(RunSummary.Extreme::value);
        RunSummary summary = new RunSummary(
                system,
                step * (count - 1),
                events,
                new RunSummary.Extremes(
                        Collections.max(values, order),
                        Collections.min(values, order),
                        new RunSummary.Extreme(284.15 + count, step * (count - 1)),
                        new RunSummary.Extreme(0, 0)),
                new Totals(relief(), 0, 0, 0, 0, 0, 1e6, 1e6, 0, 0),
                new RunSummary.Audit(0, 0, 0, 0),
                new RunSummary.Numerics("by hand", 1e-9, 0, 0, 0),
                Map.of());
        Trace.Grid grid = new Trace.Grid(step, step * (count - 1));
        return new RunResult(summary, new Trace(grid, columns, Collections.nCopies(count, Trace.Regime.SEALED)));
    }

    private List<Totals.Relief> relief() {
        List<Totals.Relief> totals = new ArrayList<>();
        system.reliefValves().forEach(valve -> {
            int openings = (int) events.stream()
                    .filter(event -> event.kind() == Event.Kind.RELIEF_OPENED)
                    .filter(event -> event.device().equals(valve.name()))
                    .count();
            double volume = openings == 0 ? 0 : relieved;
            totals.add(new Totals.Relief(valve.name(), 1000 * volume, volume, openings));
        });
        return totals;
    }

    private double absolute(double bar) {
        return bar * 1e5 + system.site().atmosphere();
    }
}
