package io.github.heatswell.simulation;

import static io.github.heatswell.simulation.StateVector.PRESSURE;

import io.github.heatswell.result.Event;
import io.github.heatswell.simulation.Device.Segment;
import io.github.heatswell.water.If97Region1;
import io.github.heatswell.water.Saturation;
import java.util.ArrayList;
import java.util.List;

/**
 * Lists the detectors of events that can end a segment: those of the devices, of the tank's layers, and of the limits of
 * the model.
 *
 * <p>Devices that open and close have two thresholds. Where the physics has only one (the check valve, the diaphragm's
 * seat and limit, two mixing layers), the two differ by a small gap, so that rounding cannot reverse a change at once.
 */
final class EventDetectors {

    /**
     * Mixed layers separate where the lower ones would cool relative to the upper by this rate (K/s): a kelvin in
     * twelve days, more than the solver's error.
     */
    private static final double FALLS_BEHIND = 1e-6;
    /**
     * Freezing point (K): a millikelvin below the range of the water properties, so that supply water at 0 degC still
     * counts as liquid.
     */
    private static final double FREEZES = 273.149;
    /** Highest water temperature (K) of the water properties. */
    private static final double MAX_TEMPERATURE = 423.15;
    /** The highest pressure (Pa, absolute) of the formulation for textbook runs. */
    private static final double MAX_TEXTBOOK_PRESSURE =
            If97Region1.instance().validity().highestPressureAbsolute();
    /** Water up to this temperature (K) boils at half the air pressure of sea level at most. */
    private static final double TEPID = 353.15;

    private static final double BOILING_TEPID = Saturation.pressureAbsolute(TEPID);

    /** Usual number of detectors in a segment. */
    private static final int USUAL = 16;

    private final CompiledSystem plant;
    private final StateVector vector;
    private final Balance balance;
    private final AirPocket air;
    private final EventDetector aboveWorkingPressure;
    /** Made once for all segments. */
    private final List<EventDetector> limits;

    EventDetectors(CompiledSystem plant, Balance balance) {
        this.plant = plant;
        vector = plant.vector;
        this.balance = balance;
        air = plant.air();
        aboveWorkingPressure = EventDetector.of(
                Event.Kind.WORKING_PRESSURE_EXCEEDED, EventDetector.SAME, y -> plant.workingPressure - y[PRESSURE]);
        limits = limits();
    }

    /**
     * All detectors of events that can end a segment.
     *
     * @param now the segment
     * @param drawEnds the delivered heat (J) at which a running draw ends, infinite if something else ends it
     */
    List<EventDetector> during(Segment now, double drawEnds) {
        List<EventDetector> watches = new ArrayList<>(USUAL);
        for (Device<?> device : plant.devices) {
            device.addDetectors(watches, now);
        }
        addLayers(watches, now.modes(), now.start());
        if (now.modes().moving) {
            double until = now.modes().raised ? Layering.HALF : Layering.FULL;
            watches.add(EventDetector.silent(EventDetector.SAME, y -> until - y[vector.phase]));
        }
        if (now.start()[PRESSURE] < plant.workingPressure) {
            watches.add(aboveWorkingPressure);
        }
        watches.addAll(limits);
        if (drawEnds < Double.POSITIVE_INFINITY) {
            watches.add(EventDetector.of(
                    Event.Kind.DRAW_ENDED, EventDetector.SAME, y -> drawEnds - y[StateVector.DELIVERED]));
        }
        return watches;
    }

    private void addLayers(List<EventDetector> watches, Modes modes, double[] start) {
        for (int layer = 0; layer + 1 < plant.layers; layer++) {
            if (!modes.joined(layer)) {
                int lower = layer;
                int below = vector.lowest + layer;
                double inversion = RegimeSelector.inversion(balance.column().turnover(layer));
                watches.add(
                        EventDetector.silent(now -> now.withJoined(lower), y -> y[below + 1] - y[below] + inversion));
                if (modes.rule.feeds()
                        && balance.column().turnover(layer) > 1 / RegimeSelector.MIN_FLUSH
                        && Math.abs(start[below + 1] - start[below]) > RegimeSelector.HARDLY) {
                    watches.add(EventDetector.silent(
                            EventDetector.SAME, y -> Math.abs(y[below + 1] - y[below]) - RegimeSelector.HARDLY / 2));
                }
            } else if (balance.column().inversionTendency(layer) > -FALLS_BEHIND
                    && balance.column().turnover(layer) < 1 / RegimeSelector.MIN_FLUSH) {
                // otherwise they have just been found to mix anyway
                int upTo = layer;
                watches.add(EventDetector.ofFlows(
                        EventDetector.SAME, y -> balance.column().inversionTendency(upTo) + FALLS_BEHIND));
            }
        }
    }

    /** What ends a run, or a formulation, whatever the modes. */
    private List<EventDetector> limits() {
        List<EventDetector> watches = new ArrayList<>(USUAL);
        watches.add(
                plant.textbook
                        ? EventDetector.of(
                                Event.Kind.WATER_OUT_OF_RANGE,
                                EventDetector.SAME,
                                y -> MAX_TEXTBOOK_PRESSURE - y[PRESSURE])
                        : EventDetector.of(
                                Event.Kind.TEST_PRESSURE_REACHED,
                                EventDetector.SAME,
                                y -> plant.testPressure - y[PRESSURE]));
        watches.add(EventDetector.of(
                Event.Kind.ATMOSPHERE_REACHED,
                EventDetector.SAME,
                y -> y[PRESSURE] - plant.atmosphere - Valve.AT_ATMOSPHERE));
        if (air.isEmpty()) {
            watches.add(EventDetector.of(
                    Event.Kind.VAPOUR_FORMS, EventDetector.SAME, y -> y[PRESSURE] - boiling(y[vector.highest])));
        } else {
            watches.add(EventDetector.of(
                    Event.Kind.VAPOUR_FORMS, EventDetector.SAME, y -> air.tillVapour(y[PRESSURE], y[vector.highest])));
            watches.add(EventDetector.of(
                    Event.Kind.VAPOUR_FORMS, EventDetector.SAME, y -> air.room(y[PRESSURE], y[vector.highest])));
            watches.add(EventDetector.ofFlows(
                    Event.Kind.VAPOUR_FORMS,
                    EventDetector.SAME,
                    y -> balance.column().untilCollapse()));
        }
        watches.add(EventDetector.of(
                Event.Kind.WATER_OUT_OF_RANGE, EventDetector.SAME, y -> MAX_TEMPERATURE - y[vector.highest]));
        watches.add(EventDetector.of(Event.Kind.WATER_FREEZES, EventDetector.SAME, y -> y[vector.lowest] - FREEZES));
        return List.copyOf(watches);
    }

    /**
     * Pressure (Pa, absolute) at which the hottest water boils. Water too cool to boil at the lowest possible air
     * pressure is skipped; a solver's trial state may lie beyond the temperatures that end a run.
     */
    private static double boiling(double temperature) {
        return temperature <= TEPID
                ? BOILING_TEPID
                : Saturation.pressureAbsolute(Math.min(MAX_TEMPERATURE, temperature));
    }
}
