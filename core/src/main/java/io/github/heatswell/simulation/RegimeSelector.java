package io.github.heatswell.simulation;

import io.github.heatswell.simulation.Schedule.Conditions;

/**
 * Selects the modes that follow from a state: the pressure rule, the mixed layers, and what the devices adapt. Used
 * between segments.
 */
final class RegimeSelector {

    /** A flow above this (kg/s) counts as zero; below it, the supply would take water back. */
    private static final double NO_FLOW = 1e-10;
    /** A pressure this close (Pa) to the feed's counts as equal. */
    private static final double AT_FEED = 2;
    /** A pressure this little (Pa) above the feed's is rounding. */
    private static final double AT_REST = 1e-3;
    /** A pressure this close (Pa) below a feed whose flow would reverse counts as equal, and the feed closes. */
    private static final double CLOSES_WITHIN = 20;
    /** Temperatures this close (K) count as equal: several times the error of a step. */
    private static final double SAME_TEMPERATURE = 2e-6;

    /**
     * Rates this close (K/s) count as equal: a kelvin in thirty years. Layers that merely keep pace stay unmixed, so
     * that cold water can push them up one by one.
     */
    private static final double SAME_RATE = 1e-9;

    /**
     * Layers flushed faster than this (s) are merged once they hardly differ, so that a tank flushed for hours does not
     * need steps as short as its thinnest layer.
     */
    static final double MIN_FLUSH = 2;
    /** A layer this much (K) warmer than the one above it mixes with it, */
    private static final double INVERSION = 1e-6;
    /**
     * and this much (K) if the flow carries it on within a minute: so little buoyancy takes a quarter of an hour over a
     * decimetre. A feed that warms by millikelvins an hour would else turn over layer after layer.
     */
    private static final double CARRIED_INVERSION = 1e-4;

    private static final double QUICKLY_CARRIED = 60;
    /** Layers replaced more often than this (1/s) are stiff and mix as early as resting ones. */
    private static final double MAX_CARRYING = 2;
    /** Largest such difference (K): merging then changes mass and heat by less than the audit can see. */
    static final double HARDLY = 0.01;

    private final CompiledSystem plant;
    private final StateVector vector;
    private final Balance balance;
    private final double[] rates;
    private boolean settling;

    RegimeSelector(CompiledSystem plant, Balance balance) {
        this.plant = plant;
        vector = plant.vector;
        this.balance = balance;
        rates = new double[vector.length];
    }

    /**
     * Selects the modes.
     *
     * @param candidate the modes with all earlier decisions
     * @param conditions the boundary conditions
     * @param y the state; the pressure is set exactly to the feed's where the feed takes over, and mixing layers get
     *     one temperature
     * @param maySettle whether the outlet of a reducing valve may be taken to follow its flow; if not, it is integrated
     */
    Modes choose(Modes candidate, Conditions conditions, double[] y, boolean maySettle) {
        settling = maySettle;
        Modes modes = withRule(plant.adapted(candidate, y), conditions, y);
        // the layers' tendency depends on the flows and hence on the rule; the rule depends only slightly on the layers
        return directed(plant.layers > 1 ? withRule(withZones(modes, y), conditions, y) : modes, y);
    }

    /** Whether water goes back to the mains; only without a tight valve may that turn during a segment. */
    private Modes directed(Modes modes, double[] y) {
        if (plant.feed.open || plant.feed.leaks()) {
            balance.evaluate(y, modes, rates);
            return modes.with(plant.feed, balance.fromMains() <= 0);
        }
        boolean down = modes.rule == PressureRegime.FILLING
                && plant.feed.returns(y[StateVector.PRESSURE], y[StateVector.MAINS]);
        return modes.with(plant.feed, down || modes.rule == PressureRegime.RETURNING);
    }

    private Modes withRule(Modes modes, Conditions conditions, double[] y) {
        if (!conditions.supplyOpen()) {
            return modes.withRule(PressureRegime.FREE);
        }
        double p = y[StateVector.PRESSURE];
        double standing = plant.feed.standing(y[StateVector.MAINS]);
        if (plant.feed.bypass && p >= y[StateVector.MAINS] + plant.feed.bypassOpens) {
            return withBypass(modes, y, y[StateVector.MAINS] + plant.feed.bypassOpens);
        }
        return p > standing + AT_REST && !plant.feed.open
                ? modes.withRule(PressureRegime.FREE)
                : withFeed(modes, y, standing);
    }

    /** The bypass lowers the pressure to the mains pressure, holds it there, or is about to close. */
    private Modes withBypass(Modes modes, double[] y, double returning) {
        double p = y[StateVector.PRESSURE];
        if (p > returning + AT_FEED) {
            return modes.withRule(PressureRegime.FILLING);
        }
        y[StateVector.PRESSURE] = returning;
        Modes back = modes.withRule(PressureRegime.RETURNING);
        balance.evaluate(y, back, rates);
        if (balance.supplyFlow() <= NO_FLOW) {
            return back;
        }
        return modes.withRule(PressureRegime.FREE);
    }

    /** The feed holds the pressure or moves it towards its own, or the check valve is about to close. */
    private Modes withFeed(Modes modes, double[] y, double standing) {
        return plant.feed.droop > 0 ? withDroopingFeed(modes, y, standing) : withStiffFeed(modes, y, standing);
    }

    /** A feed that holds its pressure: it closes if it would have to take water back. */
    private Modes withStiffFeed(Modes modes, double[] y, double standing) {
        double p = y[StateVector.PRESSURE];
        Modes held = modes.withRule(PressureRegime.HELD);
        balance.evaluate(y, held, rates);
        boolean closes = balance.supplyFlow() < -NO_FLOW && !plant.feed.open;
        if (Math.abs(p - standing) > (closes ? CLOSES_WITHIN : AT_FEED)) {
            return modes.withRule(PressureRegime.FILLING);
        }
        // a pressure risen above the feed stays there: resetting it would undo what the rise has just opened
        y[StateVector.PRESSURE] = plant.feed.open ? standing : Math.max(p, standing);
        return closes ? modes.withRule(PressureRegime.FREE) : held;
    }

    /**
     * A reducing valve. While its droop is no more than a few pascals it holds its pressure like any other feed; beyond
     * that, its outlet follows the flow.
     */
    private Modes withDroopingFeed(Modes modes, double[] y, double standing) {
        double p = y[StateVector.PRESSURE];
        if (p >= standing - ReducingValveOutlet.LITTLE_DROOP) {
            y[StateVector.PRESSURE] = Math.max(p, standing);
            Modes held = modes.withRule(PressureRegime.HELD);
            balance.evaluate(y, held, rates);
            if (balance.supplyFlow() < -NO_FLOW) {
                return modes.withRule(PressureRegime.FREE);
            }
            // what that moves, a diaphragm to its limit say, may leave the feed with more to supply
            if (droopsLittle(held, y) && droopsLittle(plant.moved(held, y), y)) {
                return held;
            }
            y[StateVector.PRESSURE] = p;
        }
        Modes filling = modes.withRule(PressureRegime.FILLING);
        balance.evaluate(y, filling, rates);
        return settling && balance.response().followsFast(y, AT_FEED) ? modes.withRule(PressureRegime.HELD) : filling;
    }

    private boolean droopsLittle(Modes held, double[] y) {
        balance.evaluate(y, held, rates);
        return balance.response().droopOfFlow() <= ReducingValveOutlet.LITTLE_DROOP;
    }

    /** Mixes layers of equal temperature wherever the lower one would otherwise become warmer. */
    private Modes withZones(Modes modes, double[] y) {
        boolean[] joined = new boolean[plant.layers - 1];
        balance.evaluate(y, modes.withJoined(joined), rates);
        double[] tendency = new double[plant.layers];
        double[] temperature = new double[plant.layers];
        double[] weight = new double[plant.layers];
        int[] size = new int[plant.layers];
        int blocks = 0;
        for (int layer = 0; layer < plant.layers; layer++) {
            tendency[blocks] = rates[vector.lowest + layer];
            temperature[blocks] = y[vector.lowest + layer];
            weight[blocks] = balance.column().capacity(layer);
            size[blocks] = 1;
            blocks++;
            // pool neighbours until their mixed temperatures and rates grow upwards
            while (blocks > 1
                    && mixes(
                            layer - size[blocks - 1],
                            temperature[blocks - 2] - temperature[blocks - 1],
                            tendency[blocks - 2] - tendency[blocks - 1])) {
                double added = weight[blocks - 1] / (weight[blocks - 2] + weight[blocks - 1]);
                tendency[blocks - 2] += added * (tendency[blocks - 1] - tendency[blocks - 2]);
                temperature[blocks - 2] += added * (temperature[blocks - 1] - temperature[blocks - 2]);
                weight[blocks - 2] += weight[blocks - 1];
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
     * Merges adjacent blocks of nearly equal temperature while the flow would replace the lower one too quickly.
     *
     * @param y the state
     * @param size how many layers each block has
     * @param blocks how many blocks there are
     * @param rule the pressure rule: only the supply sustains a flow through the tank
     * @return how many blocks are left
     */
    private int withFlushed(double[] y, int[] size, int blocks, PressureRegime rule) {
        if (!rule.feeds()) {
            return blocks;
        }
        int left = 0;
        int layer = 0;
        double since = Double.POSITIVE_INFINITY;
        for (int block = 0; block < blocks; block++) {
            double lasts = size[block] / balance.column().turnover(layer);
            boolean alike = layer > 0 && Math.abs(y[vector.lowest + layer] - y[vector.lowest + layer - 1]) < HARDLY;
            layer += size[block];
            if (alike && since < MIN_FLUSH) {
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
     * Whether a block up to a layer mixes with the one above it: it is warmer, once mixed in itself, or equally warm and
     * about to become warmer. A difference within the solver's error, carried along by the flow, is no reason to mix.
     */
    private boolean mixes(int layer, double warmerBy, double fasterBy) {
        double turnover = balance.column().turnover(layer);
        // less than any inversion that a detector waits for, so that a pair which is due does mix
        double carried = (2 * SAME_TEMPERATURE + inversion(turnover) - INVERSION) * turnover;
        return warmerBy > INVERSION / 2 || warmerBy >= -SAME_TEMPERATURE && fasterBy > SAME_RATE + carried;
    }

    /**
     * A layer this much (K) warmer than the one above it mixes with it.
     *
     * @param turnover how often a second (1/s) the flow replaces its water
     */
    static double inversion(double turnover) {
        return turnover > 1 / QUICKLY_CARRIED && turnover < MAX_CARRYING ? CARRIED_INVERSION : INVERSION;
    }

    /** Layers that are equally warm stay so to the last digit: air above them would answer to rounding with pressure. */
    private void mix(double[] y, int layer, int size) {
        boolean mixed = true;
        for (int i = layer + 1; i < layer + size; i++) {
            mixed &= y[vector.lowest + i] == y[vector.lowest + layer];
        }
        if (mixed) {
            return;
        }
        double heat = 0;
        double capacity = 0;
        for (int i = layer; i < layer + size; i++) {
            heat += balance.column().capacity(i) * y[vector.lowest + i];
            capacity += balance.column().capacity(i);
        }
        for (int i = layer; i < layer + size; i++) {
            y[vector.lowest + i] = heat / capacity;
        }
    }
}
