package io.github.heatswell.simulation;

import io.github.heatswell.simulation.Modes.Diaphragm;
import io.github.heatswell.simulation.Modes.PressureRule;

/**
 * Chooses what follows from a state: which rule fixes the pressure, which layers are mixed, which thermostats call. Used
 * between segments, where the modes may change.
 */
final class RegimeSelector {

    /** A flow above this (kg/s) counts as none; below, the supply would take water back. */
    private static final double NO_FLOW = 1e-10;
    /** A pressure this close (Pa) to that of the feed is at it. */
    private static final double AT_FEED = 2;
    /** A pressure this little (Pa) above that of the feed is rounding. */
    private static final double AT_REST = 1e-3;
    /** A pressure this close (Pa) below that of a feed whose flow would turn is at it, and the feed closes. */
    private static final double CLOSES_WITHIN = 20;
    /** Temperatures this close (K) are one: some times the error of a step. */
    private static final double SAME_TEMPERATURE = 2e-6;

    /**
     * Rates this close (K/s) are one: a kelvin in thirty years. Layers that only keep step with each other stay apart, so
     * that cold water can push them up one by one.
     */
    private static final double SAME_RATE = 1e-9;

    /**
     * Layers that what flows through replaces faster than this (s) are taken together once they hardly differ: a tank that is
     * flushed for hours need not ask for steps as short as its thinnest layer is.
     */
    static final double SHORTEST_FLUSH = 2;
    /** So little (K) they differ then: taken together they neither shrink nor lose heat by what the audit could see. */
    static final double HARDLY = 0.01;

    private final CompiledSystem plant;
    private final StateVector vector;
    private final Balance balance;
    private final double[] rates;
    private boolean settling;

    RegimeSelector(CompiledSystem plant, StateVector vector, Balance balance) {
        this.plant = plant;
        this.vector = vector;
        this.balance = balance;
        rates = new double[vector.length];
    }

    /** The modes a state starts with, before any rule is chosen. */
    Modes atStart(double[] y) {
        Modes modes = Modes.resting(plant).withDiaphragm(diaphragm(y));
        for (int i = 0; i < plant.valves.length; i++) {
            if (plant.valves[i].stuckOpen) {
                modes = modes.withLift(i, Valve.Lift.PRESSURE);
            }
        }
        for (int i = 0; i < plant.sources.length; i++) {
            CompiledSystem.HeatSource source = plant.sources[i];
            if (source.stuck || y[vector.lowest + source.layer] <= source.switchOn) {
                modes = modes.withCall(i, true);
            }
        }
        return modes;
    }

    private Diaphragm diaphragm(double[] y) {
        if (plant.vessel == null) {
            return Diaphragm.ABSENT;
        }
        double p = y[StateVector.PRESSURE];
        double gas = y[StateVector.GAS];
        // high above the house the gas may press more than the water ever does, whatever volume its law then gives
        if (p <= plant.vessel.pressureWith(0, gas)) {
            return Diaphragm.SEATED;
        }
        boolean full = p >= plant.vessel.pressureWith(plant.vessel.largestWater, gas);
        return full ? Diaphragm.BOTTOMED_OUT : Diaphragm.FLOATING;
    }

    /**
     * Chooses.
     *
     * @param candidate the modes with all that was decided before
     * @param conditions what the world outside imposes
     * @param y the state; the pressure is put exactly onto that of the feed where the feed takes over, and layers that mix
     *     are given one temperature
     * @param maySettle whether the outlet of a reducing valve may be taken to follow its flow; if not, it is integrated
     */
    Modes choose(Modes candidate, Conditions conditions, double[] y, boolean maySettle) {
        settling = maySettle;
        Modes modes = withRule(withSeats(candidate, y[StateVector.PRESSURE]), conditions, y);
        // how layers tend to move depends on what flows, and hence on the rule; the rule only a little on the layers
        return plant.layers > 1 ? withRule(withZones(modes, y), conditions, y) : modes;
    }

    /** A closed valve leaks above some pressure, and below is tight. */
    private Modes withSeats(Modes candidate, double pressure) {
        if (!plant.anySeatLeaks) {
            return candidate;
        }
        Modes modes = candidate;
        for (int i = 0; i < plant.valves.length; i++) {
            Valve.Lift onSeat = plant.valves[i].onSeat(pressure);
            if (!modes.lift(i).isOpen() && modes.lift(i) != onSeat) {
                modes = modes.withLift(i, onSeat);
            }
        }
        return modes;
    }

    private Modes withRule(Modes modes, Conditions conditions, double[] y) {
        if (!conditions.supplyOpen()) {
            return modes.withRule(PressureRule.FREE);
        }
        double p = y[StateVector.PRESSURE];
        double standing = plant.feed.standing(y[StateVector.MAINS]);
        if (plant.feed.bypass && p >= y[StateVector.MAINS] + plant.feed.bypassOpens) {
            return withBypass(modes, y, y[StateVector.MAINS] + plant.feed.bypassOpens);
        }
        return p > standing + AT_REST && !plant.feed.open
                ? modes.withRule(PressureRule.FREE)
                : withFeed(modes, y, standing);
    }

    /** The bypass lets the pressure down to the mains pressure, holds it there, or is about to close. */
    private Modes withBypass(Modes modes, double[] y, double returning) {
        double p = y[StateVector.PRESSURE];
        if (p > returning + AT_FEED) {
            return modes.withRule(PressureRule.FILLING);
        }
        y[StateVector.PRESSURE] = returning;
        Modes back = modes.withRule(PressureRule.RETURNING);
        balance.evaluate(y, back, rates);
        if (balance.supplyFlow() <= NO_FLOW) {
            return back;
        }
        return modes.withRule(PressureRule.FREE);
    }

    /** The feed holds the pressure, or moves it to where it will; or the check valve is about to close. */
    private Modes withFeed(Modes modes, double[] y, double standing) {
        return plant.feed.droop > 0 ? withDroopingFeed(modes, y, standing) : withStiffFeed(modes, y, standing);
    }

    /** A feed that holds its pressure: it closes if it would have to take water back. */
    private Modes withStiffFeed(Modes modes, double[] y, double standing) {
        double p = y[StateVector.PRESSURE];
        Modes held = modes.withRule(PressureRule.HELD);
        balance.evaluate(y, held, rates);
        boolean closes = balance.supplyFlow() < -NO_FLOW && !plant.feed.open;
        if (Math.abs(p - standing) > (closes ? CLOSES_WITHIN : AT_FEED)) {
            return modes.withRule(PressureRule.FILLING);
        }
        // what has risen above the feed stays there: put back, it would undo what the rise has just opened
        y[StateVector.PRESSURE] = plant.feed.open ? standing : Math.max(p, standing);
        return closes ? modes.withRule(PressureRule.FREE) : held;
    }

    /**
     * A reducing valve. As long as its flow takes off no more than a few pascals it stands still like any other feed;
     * with more, its outlet follows the flow.
     */
    private Modes withDroopingFeed(Modes modes, double[] y, double standing) {
        double p = y[StateVector.PRESSURE];
        if (p >= standing - Balance.LITTLE_DROOP) {
            y[StateVector.PRESSURE] = Math.max(p, standing);
            Modes held = modes.withRule(PressureRule.HELD);
            balance.evaluate(y, held, rates);
            if (balance.supplyFlow() < -NO_FLOW) {
                return modes.withRule(PressureRule.FREE);
            }
            if (balance.droopOfFlow() <= Balance.LITTLE_DROOP) {
                return held;
            }
            y[StateVector.PRESSURE] = p;
        }
        Modes filling = modes.withRule(PressureRule.FILLING);
        balance.evaluate(y, filling, rates);
        return settling && balance.followsFast(y, AT_FEED) ? modes.withRule(PressureRule.HELD) : filling;
    }

    /** Mixes layers of one temperature wherever the lower one would otherwise become the warmer one. */
    private Modes withZones(Modes modes, double[] y) {
        boolean[] joined = new boolean[plant.layers - 1];
        balance.evaluate(y, modes.withJoined(joined), rates);
        double[] tendency = new double[plant.layers];
        double[] weight = new double[plant.layers];
        int[] size = new int[plant.layers];
        int blocks = 0;
        for (int layer = 0; layer < plant.layers; layer++) {
            tendency[blocks] = rates[vector.lowest + layer];
            weight[blocks] = balance.capacity(layer);
            size[blocks] = 1;
            blocks++;
            // pool neighbours until their rates grow upwards
            while (blocks > 1 && mixes(y, layer - size[blocks - 1], tendency[blocks - 2] - tendency[blocks - 1])) {
                double both = weight[blocks - 2] + weight[blocks - 1];
                tendency[blocks - 2] =
                        (tendency[blocks - 2] * weight[blocks - 2] + tendency[blocks - 1] * weight[blocks - 1]) / both;
                weight[blocks - 2] = both;
                size[blocks - 2] += size[blocks - 1];
                blocks--;
            }
        }
        blocks = withFlushed(y, size, blocks, modes.rule);
        int layer = 0;
        for (int block = 0; block < blocks; block++) {
            mix(y, layer, size[block]);
            for (int i = 1; i < size[block]; i++) {
                joined[layer + i - 1] = true;
            }
            layer += size[block];
        }
        return modes.withJoined(joined);
    }

    /**
     * Puts neighbouring blocks of nearly one temperature together while what flows through would replace the lower one in less
     * than a moment.
     *
     * @param y the state
     * @param size how many layers each block has
     * @param blocks how many blocks there are
     * @param rule what fixes the pressure: only the supply keeps up a flow through the tank
     * @return how many blocks are left
     */
    private int withFlushed(double[] y, int[] size, int blocks, PressureRule rule) {
        if (!rule.feeds()) {
            return blocks;
        }
        int left = 0;
        int layer = 0;
        double since = Double.POSITIVE_INFINITY;
        for (int block = 0; block < blocks; block++) {
            double lasts = size[block] / balance.turnover(layer);
            boolean alike = layer > 0 && Math.abs(y[vector.lowest + layer] - y[vector.lowest + layer - 1]) < HARDLY;
            layer += size[block];
            if (alike && since < SHORTEST_FLUSH) {
                size[left - 1] += size[block];
                since += lasts;
            } else {
                size[left++] = size[block];
                since = lasts;
            }
        }
        return left;
    }

    /**
     * Whether a layer mixes with the one above it: it is the warmer one, or as warm and about to be. Between layers that differ
     * by the solver's error only, what flows carries that error along, which is no reason to mix.
     */
    private boolean mixes(double[] y, int layer, double fasterBy) {
        double warmerBy = y[vector.lowest + layer] - y[vector.lowest + layer + 1];
        double carried = 2 * SAME_TEMPERATURE * balance.turnover(layer);
        return warmerBy > SAME_TEMPERATURE / 4 || warmerBy >= -SAME_TEMPERATURE && fasterBy > SAME_RATE + carried;
    }

    private void mix(double[] y, int layer, int size) {
        double heat = 0;
        double capacity = 0;
        for (int i = layer; i < layer + size; i++) {
            heat += balance.capacity(i) * y[vector.lowest + i];
            capacity += balance.capacity(i);
        }
        for (int i = layer; i < layer + size; i++) {
            y[vector.lowest + i] = heat / capacity;
        }
    }
}
