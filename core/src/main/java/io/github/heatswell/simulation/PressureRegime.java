package io.github.heatswell.simulation;

import io.github.heatswell.result.Trace;
import io.github.heatswell.simulation.Device.Segment;
import java.util.List;

/**
 * What fixes the pressure during a segment: the unknown the balance is then solved for, what ends the segment, and what
 * the run calls it.
 */
enum PressureRegime {
    /** The feed holds it; the flow from the supply follows from the balance. */
    HELD {
        @Override
        void solve(Balance balance, double[] y, Modes modes, double[] rates) {
            balance.solveAtFeed(y, modes, rates);
        }

        @Override
        void addEnds(List<EventDetector> to, Segment now, SupplyBoundary feed) {
            feed.addEndOfHeld(to, now);
        }

        @Override
        Trace.Regime reported(SupplyBoundary feed, boolean down, boolean anyValveOpen) {
            return feed.open ? Trace.Regime.UNSEALED : Trace.Regime.FED;
        }
    },
    /** The mains hold it through an open bypass and take back the expansion. */
    RETURNING {
        @Override
        void solve(Balance balance, double[] y, Modes modes, double[] rates) {
            balance.solveAtMains();
        }

        @Override
        void addEnds(List<EventDetector> to, Segment now, SupplyBoundary feed) {
            feed.addEndOfReturning(to, now);
        }

        @Override
        Trace.Regime reported(SupplyBoundary feed, boolean down, boolean anyValveOpen) {
            return Trace.Regime.RETURNED;
        }
    },
    /** It follows from the balance of mass, with the feed closed. */
    FREE {
        @Override
        void solve(Balance balance, double[] y, Modes modes, double[] rates) {
            balance.solveFree(0);
        }

        @Override
        void addEnds(List<EventDetector> to, Segment now, SupplyBoundary feed) {
            Balance balance = now.balance();
            boolean supplyOpen = now.conditions().supplyOpen();
            if (now.modes().anyValveOpen() || balance.leaks()) {
                to.add(EventDetector.ofFlows(
                        EventDetector.SETTLE, y -> balance.response().distanceFromSettled(y, supplyOpen)));
            }
        }

        @Override
        Trace.Regime reported(SupplyBoundary feed, boolean down, boolean anyValveOpen) {
            return closed(anyValveOpen);
        }
    },
    /** It follows from the balance of mass, with the feed running towards its own pressure. */
    FILLING {
        @Override
        void solve(Balance balance, double[] y, Modes modes, double[] rates) {
            balance.solveFilling(y);
        }

        @Override
        void addEnds(List<EventDetector> to, Segment now, SupplyBoundary feed) {
            feed.addEndOfFilling(to, now);
        }

        @Override
        Trace.Regime reported(SupplyBoundary feed, boolean down, boolean anyValveOpen) {
            // the flow through a reducing valve always follows its droop
            return down ? Trace.Regime.RETURNED : feed.droop > 0 ? Trace.Regime.FED : Trace.Regime.FILLING;
        }
    },
    /**
     * It follows the slow equilibrium of open valves or leaking seats with the water's expansion; their flow follows
     * from the balance.
     */
    SETTLED {
        @Override
        void solve(Balance balance, double[] y, Modes modes, double[] rates) {
            balance.solveSettled(y, modes, rates);
        }

        @Override
        void addEnds(List<EventDetector> to, Segment now, SupplyBoundary feed) {
            Balance balance = now.balance();
            if (now.modes().anyValveOpen()) {
                to.add(EventDetector.ofFlows(EventDetector.FREED, y -> balance.reliefFlow() + FLOW_GAP));
            }
            to.add(EventDetector.ofFlows(
                    EventDetector.FREED,
                    y -> PressureResponse.SLOW - balance.response().settlingTime()));
        }

        @Override
        Trace.Regime reported(SupplyBoundary feed, boolean down, boolean anyValveOpen) {
            return closed(anyValveOpen);
        }
    };

    /** Half the gap (kg/s) between the two thresholds of a flow: a drop every few hours. */
    static final double FLOW_GAP = 1e-9;

    /** Solves the balance of a state for the rate of pressure and the flow of the supply. */
    abstract void solve(Balance balance, double[] y, Modes modes, double[] rates);

    /** Adds the detectors of what ends this regime by itself. */
    abstract void addEnds(List<EventDetector> to, Segment now, SupplyBoundary feed);

    /**
     * What the trace calls it.
     *
     * @param feed the supply
     * @param down whether the pressure is at or above the opening pressure of the bypass
     * @param anyValveOpen whether a relief valve is open
     */
    abstract Trace.Regime reported(SupplyBoundary feed, boolean down, boolean anyValveOpen);

    /** Whether the pressure is that of the supply or the mains, whatever the water does. */
    boolean holds() {
        return this == HELD || this == RETURNING;
    }

    /** Whether water from the supply keeps up a flow through the tank. */
    boolean feeds() {
        return this == HELD || this == FILLING;
    }

    private static Trace.Regime closed(boolean anyValveOpen) {
        return anyValveOpen ? Trace.Regime.RELIEVING : Trace.Regime.SEALED;
    }
}
