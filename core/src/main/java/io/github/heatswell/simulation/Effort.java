package io.github.heatswell.simulation;

import io.github.heatswell.result.Event;
import io.github.heatswell.units.Decimals;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * Limit on the work of a run, counted in solver steps and so the same on every machine, and the explanation if a system
 * exceeds it.
 */
final class Effort {

    /**
     * Work per simulated hour; a step costs its number of layers plus four. An ordinary single-layer house takes a few
     * steps per hour out of 80 000; a day at the limit takes some seconds.
     */
    private static final double WORK_PER_HOUR = 400_000;
    /** The part of a step's work that does not depend on the layers, in layers. */
    private static final double WORK_WITHOUT_LAYERS = 4;
    /** Initial allowance of steps: the 500 openings that identify a chattering valve take two thirds of it behind a reducing valve. */
    private static final long MAX_STEPS_AHEAD = 80_000;

    private static final double HOUR = 3600;
    /** Above this many steps per event, the events are not the reason. */
    private static final double STEPS_PER_EVENT = 60;
    /** A layer flushed in less than this (s) limits the step. */
    private static final double QUICK_FLUSH = 20;

    private final CompiledSystem plant;
    private final Balance balance;

    Effort(CompiledSystem plant, Balance balance) {
        this.plant = plant;
        this.balance = balance;
    }

    /** Whether the steps exceed the allowance for a time (s since the start of the run). */
    boolean isTooMuch(long steps, double time) {
        return steps > MAX_STEPS_AHEAD + stepsPerHour() * (time / HOUR);
    }

    private double stepsPerHour() {
        return WORK_PER_HOUR / (WORK_WITHOUT_LAYERS + plant.layers);
    }

    /**
     * Explains what makes a system take so many steps, and what to change in its description.
     *
     * @param events what happened so far
     * @param steps the steps taken
     * @param time the time covered (s)
     */
    String explain(List<Event> events, long steps, double time) {
        return "too many steps: " + steps + " for " + Decimals.fixed(time, 0) + " s, with "
                + Decimals.fixed(stepsPerHour(), 0) + " allowed for an hour; " + cause(events, steps, time);
    }

    /**
     * Explains why the solver cannot continue, and what to change in the description.
     *
     * @param stopped what the solver says
     */
    String explain(Exception stopped) {
        return "the pressure cannot be computed any further: part of the system is extremely soft or extremely"
                + " stiff; look for quantities at their limits, above all "
                + (plant.shellCompliance > 1e-8
                        ? "the wall of the tank"
                        : balance.response().steepest())
                + " (solver message: " + stopped.getMessage() + ")";
    }

    private String cause(List<Event> events, long steps, double time) {
        Optional<String> device = busiest(events, Event.Kind.RELIEF_OPENED, steps);
        if (device.isPresent()) {
            return "the relief valve '" + device.get() + "' opens "
                    + count(events, Event.Kind.RELIEF_OPENED, device.get())
                    + " times; check its set and reseat pressures, or add a vessel";
        }
        Optional<String> heater = busiest(events, Event.Kind.HEATER_ON, steps);
        if (heater.isPresent()) {
            return "the heater switches on " + count(events, Event.Kind.HEATER_ON, heater.get())
                    + " times; use a smaller input, a tank larger than "
                    + Decimals.significant(plant.tankVolume * 1e3, 3)
                    + " L, or a wider thermostat differential";
        }
        double turnover = balance.column().turnover(0);
        double settling = balance.response().settlingTime();
        if (turnover > 1 / QUICK_FLUSH || turnover > 0 && !(settling < PressureResponse.SLOW)) {
            boolean fewerHelp = plant.layers > 1 && turnover < plant.layers / QUICK_FLUSH;
            return "the flow replaces " + Decimals.significant(plant.tankVolume * 1e3 / plant.layers, 2)
                    + " L of the tank within " + Decimals.significant(1 / turnover, 1) + " s; use a smaller flow"
                    + (fewerHelp ? ", or fewer than " + plant.layers + " layers" : ", or a larger tank");
        }
        if (!(settling < Double.POSITIVE_INFINITY)) {
            return "no single part stands out; look for quantities at their limits, and for a curve of your own that jumps";
        }
        return "the pressure responds within " + Decimals.significant(settling, 1) + " s to "
                + balance.response().steepest() + "; reduce that flow, or add compliance: a vessel, more piping";
    }

    private static Optional<String> busiest(List<Event> events, Event.Kind kind, long steps) {
        return events.stream()
                .filter(event -> event.kind() == kind)
                .map(Event::device)
                .collect(Collectors.groupingBy(Function.identity(), Collectors.counting()))
                .entrySet()
                .stream()
                .filter(entry -> entry.getValue() * STEPS_PER_EVENT > steps)
                .max(Comparator.comparingLong(entry -> entry.getValue()))
                .map(entry -> entry.getKey());
    }

    private static long count(List<Event> events, Event.Kind kind, String device) {
        return events.stream()
                .filter(event -> event.kind() == kind && event.device().equals(device))
                .count();
    }
}
