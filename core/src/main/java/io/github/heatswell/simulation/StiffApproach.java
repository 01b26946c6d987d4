package io.github.heatswell.simulation;

import io.github.heatswell.simulation.BalanceAudit.Inventory;
import java.util.List;

/**
 * Instantaneous approach of a very stiff system to its reducing valve's pressure. A litre of water in a rigid tank
 * changes its pressure by bars within milliseconds when a relief valve opens or closes; the solver would take a hundred
 * steps each time although hardly any water flows. The water stored or released is booked as inflow, or as outflow
 * through whatever is open: what a tap or a valve on the tank takes leaves at the top, with its heat. Compression warms
 * the tank's water.
 */
final class StiffApproach {

    /**
     * Time constant (s) below which an approach is instantaneous: only systems with a compliance of a few grams per bar
     * are that stiff.
     */
    static final double AT_ONCE = 0.05;
    /** The approach ends this close (Pa) to equilibrium. */
    private static final double THERE = 0.5;

    private static final int MAX_ITERATIONS = 30;

    private final StateVector vector;
    private final Balance balance;
    private final Inventory inventory;
    private final double[] rates;

    StiffApproach(StateVector vector, Balance balance, Inventory inventory) {
        this.vector = vector;
        this.balance = balance;
        this.inventory = inventory;
        rates = new double[vector.length];
    }

    /**
     * Finds the end of the approach by Newton's method.
     *
     * @param start the state it starts from
     * @param modes the modes, in which the feed runs towards its pressure
     * @param watches what may end the segment
     * @return the state at its end; the one it starts from if the house is not stiff, or if something happens on the
     *     way
     */
    double[] from(double[] start, Modes modes, List<EventDetector> watches) {
        double[] y = start.clone();
        double[] before = null;
        double step = 0;
        for (int i = 0; i < MAX_ITERATIONS; i++) {
            balance.evaluate(y, modes, rates);
            if (balance.response().settlingTime() > AT_ONCE || isDue(watches, y)) {
                return start;
            }
            double distance = balance.response().distanceFromFollowing(y);
            if (Math.abs(distance) < THERE) {
                return y;
            }
            if (distance >= 0 || leaving() > 0) {
                before = y.clone();
                step = distance;
            } else if (before != null) {
                // a seat gives way the more the nearer the pressure is to the mains: the step was too long
                System.arraycopy(before, 0, y, 0, y.length);
                balance.evaluate(y, modes, rates);
                step /= 2;
            } else {
                return start;
            }
            move(y, modes, step);
        }
        return start;
    }

    private static boolean isDue(List<EventDetector> watches, double[] y) {
        return watches.stream()
                .anyMatch(watch -> !watch.settles() && watch.distance().from(y) <= 0);
    }

    private double leaving() {
        return rates[StateVector.DRAWN] + rates[StateVector.LEAKED] + vector.relieved(rates);
    }

    private void move(double[] y, Modes modes, double step) {
        double before = inventory.mass(y, modes);
        double released = Math.max(0, -step * balance.stiffness());
        inventory.press(y, modes, step, released > 0 ? released * balance.overTop() / leaving() : 0);
        double gained = inventory.mass(y, modes) - before;
        if (gained > 0) {
            y[StateVector.LET_IN] += gained;
            return;
        }
        double seconds = -gained / leaving();
        y[StateVector.DRAWN] += seconds * rates[StateVector.DRAWN];
        y[StateVector.DELIVERED] += seconds * rates[StateVector.DELIVERED];
        y[StateVector.LEAKED] += seconds * rates[StateVector.LEAKED];
        vector.discharge(y, seconds, rates);
    }
}
