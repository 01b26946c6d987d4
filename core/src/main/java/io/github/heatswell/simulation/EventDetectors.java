package io.github.heatswell.simulation;

import static io.github.heatswell.simulation.StateVector.GAS;
import static io.github.heatswell.simulation.StateVector.MAINS;
import static io.github.heatswell.simulation.StateVector.PRESSURE;

import io.github.heatswell.result.Event;
import io.github.heatswell.simulation.ColdBranch.GasCushion;
import io.github.heatswell.simulation.Modes.Diaphragm;
import io.github.heatswell.simulation.Schedule.Conditions;
import io.github.heatswell.water.If97Region1;
import io.github.heatswell.water.Saturation;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntPredicate;
import java.util.function.UnaryOperator;

/**
 * Lists the detectors of events that can end a segment with given modes.
 *
 * <p>Devices that open and close have two thresholds. Where the physics has only one (the check valve, the diaphragm's
 * seat and limit, two mixing layers), the two differ by a small gap, so that rounding cannot reverse a change at once.
 */
final class EventDetectors {

    /** Half the gap (Pa) between the two thresholds of a check valve. */
    private static final double PRESSURE_GAP = 1e-4;
    /**
     * A modulating valve this close (Pa) to its reseat pressure passes a drop an hour and counts as closed; otherwise
     * it would approach the reseat pressure forever.
     */
    private static final double RESEAT_GAP = 1e-2;
    /** Half the gap (kg/s) between the two thresholds of a flow: a drop every few hours. */
    private static final double FLOW_GAP = 1e-9;
    /** The same (kg/s) for one that only turns round: rounding. */
    private static final double NO_FLOW = 1e-13;
    /**
     * Mixed layers separate where the lower ones would cool relative to the upper by this rate (K/s): a kelvin in
     * twelve days, more than the solver's error.
     */
    private static final double FALLS_BEHIND = 1e-6;
    /** A pressure this close (Pa) to equilibrium with the flows counts as settled, */
    private static final double SETTLED_WITHIN = 1;
    /** provided it is also this close (-) relative to the valve's lift at equilibrium. */
    private static final double SETTLED_WITHIN_LIFT = 0.05;
    /** But not closer than this (Pa): again a drop an hour, and more than the solver's noise. */
    private static final double SETTLED_ENOUGH = RESEAT_GAP;
    /** This close (Pa) to air pressure an opening takes in air instead of discharging water. */
    private static final double AT_ATMOSPHERE = 10;
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

    private static final UnaryOperator<Modes> FREED = modes -> modes.withRule(PressureRegime.FREE);

    private final CompiledSystem plant;
    private final StateVector vector;
    private final Balance balance;

    EventDetectors(CompiledSystem plant, StateVector vector, Balance balance) {
        this.plant = plant;
        this.vector = vector;
        this.balance = balance;
    }

    /**
     * All detectors of events that can end a segment.
     *
     * @param modes the modes of the segment
     * @param conditions the boundary conditions
     * @param start the state it starts from
     * @param drawEnds the delivered heat (J) at which a running draw ends, infinite if something else ends it
     * @param pausing which burners or elements may not yet switch on again
     */
    List<EventDetector> during(
            Modes modes, Conditions conditions, double[] start, double drawEnds, IntPredicate pausing) {
        List<EventDetector> watches = new ArrayList<>(USUAL);
        addThermostats(watches, modes, pausing);
        addFeed(watches, modes, conditions, start);
        addValves(watches, modes);
        addDiaphragm(watches, modes);
        addLayers(watches, modes, start);
        addLimits(watches, modes, start[PRESSURE]);
        if (drawEnds < Double.POSITIVE_INFINITY) {
            watches.add(EventDetector.of(
                    Event.Kind.DRAW_ENDED, EventDetector.SAME, y -> drawEnds - y[StateVector.DELIVERED]));
        }
        return watches;
    }

    private void addThermostats(List<EventDetector> watches, Modes modes, IntPredicate pausing) {
        for (int i = 0; i < plant.sources.length; i++) {
            CompiledSystem.HeatSource source = plant.sources[i];
            int number = i;
            int sensed = vector.lowest + source.layer;
            if (!modes.calls(i)) {
                if (!pausing.test(i)) {
                    watches.add(
                            EventDetector.silent(now -> now.withCall(number, true), y -> y[sensed] - source.switchOn));
                }
            } else if (!source.stuck) {
                watches.add(EventDetector.silent(now -> now.withCall(number, false), y -> source.setPoint - y[sensed]));
            }
        }
        if (!modes.lockedOut && plant.cutOut < Double.POSITIVE_INFINITY) {
            watches.add(EventDetector.of(
                    Event.Kind.CUT_OUT_TRIPPED, Modes::withCutOutTripped, y -> plant.cutOut - y[vector.highest]));
        }
    }

    private void addFeed(List<EventDetector> watches, Modes modes, Conditions conditions, double[] start) {
        SupplyBoundary feed = plant.feed;
        modes.rule.addEnds(this, watches, modes, conditions, start);
        if (feed.open || feed.leaks() && conditions.supplyOpen()) {
            double side = modes.outward ? -1 : 1;
            watches.add(EventDetector.ofFlows(EventDetector.TURN, y -> side * balance.fromMains() + NO_FLOW));
        }
        boolean shut = modes.rule == PressureRegime.FREE || modes.rule == PressureRegime.SETTLED;
        if (shut && conditions.supplyOpen()) {
            watches.add(EventDetector.silent(FREED, y -> y[PRESSURE] - feed.standing(y[MAINS]) + PRESSURE_GAP));
            if (feed.bypass) {
                watches.add(EventDetector.silent(FREED, y -> y[MAINS] + feed.bypassOpens - y[PRESSURE] + PRESSURE_GAP));
            }
        }
    }

    /** The feed closes where it would have to take water back. */
    void addEndOfHeld(List<EventDetector> watches, double[] start) {
        if (!plant.feed.open) {
            watches.add(EventDetector.ofFlows(FREED, y -> balance.supplyFlow() + FLOW_GAP));
        }
        if (plant.feed.lockUp < Double.POSITIVE_INFINITY) {
            addReducingValve(watches, start);
        }
    }

    /** The bypass closes where the mains would have to give water. */
    void addEndOfReturning(List<EventDetector> watches) {
        watches.add(EventDetector.ofFlows(FREED, y -> FLOW_GAP - balance.supplyFlow()));
    }

    /** The pressure has come to the feed's, or passed it. */
    void addEndOfFilling(List<EventDetector> watches, double[] start) {
        SupplyBoundary feed = plant.feed;
        boolean drooping = feed.droop > 0 && !feed.returns(start[PRESSURE], start[MAINS]);
        watches.add(EventDetector.ofFlows(drooping ? EventDetector.FOLLOW : FREED, this::distanceFromFilled));
        if (!feed.open && start[PRESSURE] < feed.standing(start[MAINS]) + PRESSURE_GAP) {
            watches.add(EventDetector.silent(FREED, y -> feed.standing(y[MAINS]) - y[PRESSURE] + PRESSURE_GAP));
        } else if (feed.returns(start[PRESSURE], start[MAINS])) {
            watches.add(EventDetector.silent(FREED, y -> y[PRESSURE] - y[MAINS] - feed.bypassOpens + PRESSURE_GAP));
        }
    }

    /** The flow ceases, or the equilibrium has become slow. */
    void addEndOfSettled(List<EventDetector> watches, Modes modes) {
        if (modes.anyValveOpen()) {
            watches.add(EventDetector.ofFlows(FREED, y -> balance.reliefFlow() + FLOW_GAP));
        }
        watches.add(EventDetector.ofFlows(
                FREED, y -> PressureResponse.SLOW - balance.response().settlingTime()));
    }

    /** Open valves and leaking seats come to their equilibrium. */
    void addEndOfFree(List<EventDetector> watches, Modes modes, Conditions conditions) {
        if (modes.anyValveOpen() || plant.leaks()) {
            watches.add(
                    EventDetector.ofFlows(EventDetector.SETTLE, y -> distanceFromSettled(y, conditions.supplyOpen())));
        }
    }

    /**
     * A reducing valve stops regulating when the mains pressure falls below its outlet pressure, and resumes above it.
     * Its outlet starts to follow the flow above a small droop, and stops well below it.
     */
    private void addReducingValve(List<EventDetector> watches, double[] start) {
        SupplyBoundary feed = plant.feed;
        double side = feed.followsMains(start[MAINS]) ? 1 : -1;
        watches.add(EventDetector.silent(FREED, y -> side * (feed.lockUp - y[MAINS]) + PRESSURE_GAP));
        if (balance.response().droops(start)) {
            watches.add(EventDetector.silent(
                    FREED, y -> feed.standing(y[MAINS]) - y[PRESSURE] - ReducingValveOutlet.LITTLE_DROOP / 2));
        } else if (feed.droop > 0) {
            watches.add(EventDetector.ofFlows(
                    FREED,
                    y -> 1.01 * ReducingValveOutlet.LITTLE_DROOP
                            - balance.response().droopOfFlow()));
        }
    }

    /** Distance (Pa) of the pressure from the feed's, while filling up or falling to it. */
    private double distanceFromFilled(double[] y) {
        SupplyBoundary feed = plant.feed;
        if (feed.droop > 0 && !feed.returns(y[PRESSURE], y[MAINS])) {
            boolean slow = balance.response().settlingTime() >= PressureResponse.FAST;
            return slow ? SETTLED_WITHIN : Math.abs(balance.response().distanceFromFollowing(y)) - SETTLED_WITHIN;
        }
        return Math.abs(y[PRESSURE] - feed.target(y[PRESSURE], y[MAINS])) - SETTLED_WITHIN;
    }

    /** How far (Pa) the pressure still is from counting as settled; a constant if there is nothing to settle at. */
    private double distanceFromSettled(double[] y, boolean supplyOpen) {
        double distance = balance.response().distanceFromEquilibrium();
        double lift = balance.response().equilibriumLift();
        double aboveFeed = supplyOpen ? y[PRESSURE] - distance - plant.feed.standing(y[MAINS]) : lift;
        // the solver's noise may keep the pressure above an equilibrium this little below the feed, which then never
        // opens
        if (!(lift > 0 && aboveFeed > -SETTLED_ENOUGH && balance.response().settlingTime() < PressureResponse.FAST)) {
            return SETTLED_WITHIN;
        }
        double nearer = SETTLED_WITHIN_LIFT * Math.min(lift, aboveFeed);
        return Math.abs(distance) - Math.min(SETTLED_WITHIN, Math.max(SETTLED_ENOUGH, nearer));
    }

    private void addValves(List<EventDetector> watches, Modes modes) {
        for (int i = 0; i < plant.valves.length; i++) {
            Valve valve = plant.valves[i];
            if (!valve.stuckOpen && !valve.blocked) {
                addValve(watches, modes, i, valve);
            }
            if (valve.seatLeaks() && !modes.lift(i).isOpen()) {
                double side = modes.lift(i) == Valve.Lift.SEEPING ? -1 : 1;
                watches.add(EventDetector.silent(
                        EventDetector.SAME, y -> side * (valve.leaksFrom - y[PRESSURE]) + PRESSURE_GAP));
            }
        }
    }

    private void addValve(List<EventDetector> watches, Modes modes, int i, Valve valve) {
        UnaryOperator<Modes> closed = now -> now.withLift(i, Valve.Lift.CLOSED);
        UnaryOperator<Modes> lifted = now -> now.withLift(i, Valve.Lift.PRESSURE);
        UnaryOperator<Modes> hot = now -> now.withLift(i, Valve.Lift.TEMPERATURE);
        boolean minds = valve.opensAt < Double.POSITIVE_INFINITY;
        EventDetector.Distance fromSet = y -> valve.setPressure - y[PRESSURE];
        EventDetector.Distance fromHot = y -> valve.opensAt - y[vector.highest];
        switch (modes.lift(i)) {
            case CLOSED, SEEPING -> {
                if (minds) {
                    // of simultaneous events the first in the list is taken
                    watches.add(opened(
                            valve, Event.OpeningCause.BOTH, hot, y -> Math.max(fromSet.from(y), fromHot.from(y))));
                    watches.add(opened(valve, Event.OpeningCause.TEMPERATURE, hot, fromHot));
                }
                watches.add(opened(valve, Event.OpeningCause.PRESSURE, lifted, fromSet));
            }
            case PRESSURE -> {
                watches.add(EventDetector.of(
                        Event.Kind.RELIEF_RESEATED,
                        valve.name,
                        closed,
                        y -> y[PRESSURE] - valve.reseatPressure - RESEAT_GAP));
                if (minds) {
                    watches.add(EventDetector.opening(
                            Event.Kind.RELIEF_OPENED_FULLY, valve.name, Event.OpeningCause.TEMPERATURE, hot, fromHot));
                }
            }
            case TEMPERATURE ->
                watches.add(EventDetector.of(
                        Event.Kind.RELIEF_RESEATED,
                        valve.name,
                        closed,
                        y -> Math.max(y[vector.highest] - valve.reseatsAt, y[PRESSURE] - valve.setPressure)));
        }
    }

    private static EventDetector opened(
            Valve valve, Event.OpeningCause cause, UnaryOperator<Modes> after, EventDetector.Distance distance) {
        return EventDetector.opening(Event.Kind.RELIEF_OPENED, valve.name, cause, after, distance);
    }

    private void addDiaphragm(List<EventDetector> watches, Modes modes) {
        GasCushion vessel = plant.vessel;
        UnaryOperator<Modes> floating = now -> now.withDiaphragm(Diaphragm.FLOATING);
        switch (modes.diaphragm) {
            case ABSENT -> {
                // nothing to watch
            }
            case SEATED ->
                watches.add(EventDetector.of(
                        Event.Kind.VESSEL_LIFTED,
                        floating,
                        y -> vessel.pressureWith(0, y[GAS]) - y[PRESSURE] + vessel.gap));
            case FLOATING -> {
                watches.add(EventDetector.of(
                        Event.Kind.VESSEL_SEATED,
                        now -> now.withDiaphragm(Diaphragm.SEATED),
                        y -> y[PRESSURE] - vessel.pressureWith(0, y[GAS]) + vessel.gap));
                if (vessel.largestWater < vessel.volume) {
                    watches.add(EventDetector.of(
                            Event.Kind.VESSEL_BOTTOMED_OUT,
                            now -> now.withDiaphragm(Diaphragm.BOTTOMED_OUT),
                            y -> vessel.pressureWith(vessel.largestWater, y[GAS]) - y[PRESSURE] + vessel.gap));
                }
            }
            case BOTTOMED_OUT ->
                watches.add(EventDetector.of(
                        Event.Kind.VESSEL_FREED,
                        floating,
                        y -> y[PRESSURE] - vessel.pressureWith(vessel.largestWater, y[GAS]) + vessel.gap));
        }
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
                        && balance.column().turnover(layer) > 1 / RegimeSelector.SHORTEST_FLUSH
                        && Math.abs(start[below + 1] - start[below]) > RegimeSelector.HARDLY) {
                    watches.add(EventDetector.silent(
                            EventDetector.SAME, y -> Math.abs(y[below + 1] - y[below]) - RegimeSelector.HARDLY / 2));
                }
            } else if (balance.column().inversionTendency(layer) > -FALLS_BEHIND
                    && balance.column().turnover(layer) < 1 / RegimeSelector.SHORTEST_FLUSH) {
                // otherwise they have just been found to mix anyway
                int upTo = layer;
                watches.add(EventDetector.ofFlows(
                        EventDetector.SAME, y -> balance.column().inversionTendency(upTo) + FALLS_BEHIND));
            }
        }
    }

    private void addLimits(List<EventDetector> watches, Modes modes, double pressure) {
        if (pressure < plant.workingPressure) {
            watches.add(EventDetector.of(
                    Event.Kind.WORKING_PRESSURE_EXCEEDED,
                    EventDetector.SAME,
                    y -> plant.workingPressure - y[PRESSURE]));
        }
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
                y -> y[PRESSURE] - plant.atmosphere - AT_ATMOSPHERE));
        for (int i = 0; i < plant.valves.length; i++) {
            Valve valve = plant.valves[i];
            if (modes.lift(i).isOpen()) {
                // an open valve higher up reaches air pressure first
                watches.add(EventDetector.of(
                        Event.Kind.ATMOSPHERE_REACHED,
                        valve.name,
                        EventDetector.SAME,
                        y -> y[PRESSURE] - valve.atmosphere - AT_ATMOSPHERE));
            }
        }
        watches.add(EventDetector.of(
                Event.Kind.VAPOUR_FORMS, EventDetector.SAME, y -> y[PRESSURE] - boiling(y[vector.highest])));
        watches.add(EventDetector.of(
                Event.Kind.WATER_OUT_OF_RANGE, EventDetector.SAME, y -> MAX_TEMPERATURE - y[vector.highest]));
        watches.add(EventDetector.of(Event.Kind.WATER_FREEZES, EventDetector.SAME, y -> y[vector.lowest] - FREEZES));
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
