package io.github.heatswell.narrative;

import io.github.heatswell.result.Event;
import io.github.heatswell.result.RunSummary;
import io.github.heatswell.result.Totals;
import io.github.heatswell.system.HotWaterSystem;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What a run found, written by hand: for numbers known beforehand and for what no sensible run gives. */
final class RunByHand {

    private final HotWaterSystem system;
    private final double step;
    private final double[] gaugeBar;
    private final List<Event> events = new ArrayList<>();
    private double relieved;
    private double returned;
    private double leaked;
    private int cutShort;
    private double open;
    private double heat = 1e6;

    private RunByHand(HotWaterSystem system, double step, double... gaugeBar) {
        this.system = system;
        this.step = step;
        this.gaugeBar = gaugeBar;
    }

    /** A run with these gauge pressures (bar), one each step (s); the water warms by 1 K a step from 12 degC. */
    static RunByHand run(HotWaterSystem system, double step, double... gaugeBar) {
        return new RunByHand(system, step, gaugeBar);
    }

    /** Adds an event at a gauge pressure (bar); a relief valve opens by pressure. */
    RunByHand event(double time, Event.Kind kind, String device, double gauge) {
        return event(time, kind, device, gauge, kind == Event.Kind.RELIEF_OPENED ? Event.OpeningCause.PRESSURE : null);
    }

    /** Adds the opening of a relief valve by hot water, at a gauge pressure (bar). */
    RunByHand openedByTemperature(double time, Event.Kind kind, String device, double gauge) {
        return event(time, kind, device, gauge, Event.OpeningCause.TEMPERATURE);
    }

    private RunByHand event(double time, Event.Kind kind, String device, double gauge, Event.OpeningCause cause) {
        double temperature = 285.15 + time / step;
        events.add(new Event(time, kind, device, absolute(gauge), temperature, Optional.ofNullable(cause)));
        return this;
    }

    /** Sets the volume (L) discharged by the end, by valves opening as often as the events say. */
    RunByHand relieved(double litres) {
        relieved = litres * 1e-3;
        return this;
    }

    /** Sets the volume (L) returned to the mains by the end. */
    RunByHand returned(double litres) {
        returned = litres * 1e-3;
        return this;
    }

    /** Sets the volume (L) leaked by the end. */
    RunByHand leaked(double litres) {
        leaked = litres * 1e-3;
        return this;
    }

    /** Sets how many draws were cut short by the next one. */
    RunByHand cutShort(int draws) {
        cutShort = draws;
        return this;
    }

    /** Says that the heater never came on. */
    RunByHand unheated() {
        heat = 0;
        return this;
    }

    /** Sets the share of the heat (1) that the balance cannot account for. */
    RunByHand unbalanced(double share) {
        open = share;
        return this;
    }

    /** What it found. */
    RunSummary summary() {
        List<RunSummary.Extreme> values = new ArrayList<>();
        for (int i = 0; i < gaugeBar.length; i++) {
            values.add(new RunSummary.Extreme(absolute(gaugeBar[i]), i * step));
        }
        events.forEach(event -> values.add(new RunSummary.Extreme(event.pressureAbsolute(), event.time())));
        double end = step * (gaugeBar.length - 1);
        Comparator<RunSummary.Extreme> order = Comparator.comparingDouble(RunSummary.Extreme::value);
        return new RunSummary(
                system,
                end,
                events,
                new RunSummary.Extremes(
                        Collections.max(values, order),
                        Collections.min(values, order),
                        new RunSummary.Extreme(284.15 + gaugeBar.length, end),
                        new RunSummary.Extreme(0, 0)),
                new Totals(relief(), 0, returned, 0, leaked, 0, heat, heat, 0, cutShort),
                new RunSummary.Audit(0, 0, open, 1),
                new RunSummary.Numerics("by hand", 1e-9, 0, 0, 0),
                Map.of());
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
