package io.github.heatswell.simulation;

import io.github.heatswell.water.LiquidWater;

/**
 * Decides when the boundaries between the layers move with the water that a tap takes, and sets them anew.
 *
 * <p>All boundaries move together, so that no layer mixes with the next. Cold water makes the lowest layer grow; once it is as thick as an
 * even one and a little more, that little begins a new one and the two highest, which are thinner by as much, become one. A draw begins with
 * a new layer where that mixes less than letting the water into the lowest one. Where the two highest differ by more than
 * all others, a front has come to the top: the boundaries stand still, and the flow mixes from layer to layer.
 *
 * <p>Working memory of one run, not thread-safe.
 */
final class Restacking {

    /** Differences (K2) that are not worth following: 1 K across the tank mixes to nothing that could be seen. Own choice. */
    private static final double WORTH = 1;
    /** Nor are layers that a flow replaces within less than this (s). Own choice. */
    private static final double MIN_FLUSH = 1;
    /** Thinner overlaps, in even layers (-), are rounding. */
    private static final double NONE = 1e-7;

    private static final int ITERATIONS = 4;

    private final CompiledSystem plant;
    private final StateVector vector;
    private final Balance balance;
    private final BalanceAudit audit;
    private final LiquidWater.State water = new LiquidWater.State();
    private final double[] stacked;
    private double pressure;

    Restacking(CompiledSystem plant, Balance balance, BalanceAudit audit) {
        this.balance = balance;
        this.audit = audit;
        this.plant = plant;
        vector = plant.vector;
        stacked = new double[plant.layers];
    }

    /**
     * Lets the boundaries follow a draw, from its beginning on, until a front reaches the top.
     *
     * @param modes the modes with all earlier decisions
     * @param y the state, changed where the boundaries are set anew
     * @param drawing whether a tap is open
     * @param begun whether it has just been opened
     * @return the modes from now on
     */
    Modes follow(Modes modes, double[] y, boolean drawing, boolean begun) {
        pressure = y[StateVector.PRESSURE];
        if (!plant.moves) {
            return modes;
        }
        boolean follows = drawing && (begun || modes.moving);
        boolean due = begun || follows && full(y);
        boolean worth = follows && (!due || worth(y));
        Modes now = modes;
        if (due && worth && better(y, modes.moving)) {
            double[] before = y.clone();
            now = modes.withJoined(new boolean[plant.layers - 1]);
            double all = audit.water(y, modes);
            double energy = audit.tankEnergy(y, modes);
            if (restack(y)) {
                pressure = audit.settle(y, now, all, energy, balance);
            }
            if (y[StateVector.PRESSURE] <= plant.atmosphere + Valve.AT_ATMOSPHERE) {
                // mixed water fills less room, and nothing in a stiff house without supply makes up for that: the flow
                // mixes instead
                System.arraycopy(before, 0, y, 0, y.length);
                pressure = y[StateVector.PRESSURE];
                now = modes;
            }
        }
        return now.withLayering(worth && !full(y), Layering.raises(y[vector.phase]));
    }

    /** The pressure (Pa, absolute) with the water there is after that; the feed or the mains may hold another one. */
    double pressure() {
        return pressure;
    }

    /** Whether the lowest layer is due to be cut. */
    private boolean full(double[] y) {
        return y[vector.phase] >= Layering.FULL - Layering.ROUNDING;
    }

    /** Whether the boundaries had better begin anew, rather than go on as they stand. */
    private boolean better(double[] y, boolean moving) {
        double phase = y[vector.phase];
        double stays = phase * square(y[vector.lowest] - y[StateVector.COLD]);
        return mixed(y) <= (moving || phase >= 1 ? 0.5 * below(y) : 0) + stays;
    }

    /** Whether a draw is worth following. */
    private boolean worth(double[] y) {
        return below(y) + square(y[vector.lowest] - y[StateVector.COLD]) > WORTH
                && plant.tankVolume / plant.layers > MIN_FLUSH * balance.drawn();
    }

    /** The squares of all differences (K2) but that between the two highest layers. */
    private double below(double[] y) {
        double sum = 0;
        for (int i = vector.lowest; i + 1 < vector.highest; i++) {
            sum += square(y[i + 1] - y[i]);
        }
        return sum;
    }

    private static double square(double x) {
        return x * x;
    }

    /** What setting the boundaries anew mixes (K2, in even layers). */
    private double mixed(double[] y) {
        double sum = 0;
        for (int i = 0; i < plant.layers; i++) {
            double part = 0;
            double first = 0;
            double second = 0;
            for (int j = 0; j < plant.layers; j++) {
                double overlap = overlap(y, i, j);
                double t = y[vector.lowest + j] - y[StateVector.COLD];
                part += overlap;
                first += overlap * t;
                second += overlap * t * t;
            }
            sum += second - first * first / part;
        }
        return sum;
    }

    /** How much of a layer that is there, in even layers (-), a new one takes. */
    private double overlap(double[] y, int now, int before) {
        double phase = y[vector.phase];
        double lower = Math.max(lower(now, Layering.NEW), lower(before, phase));
        double upper = Math.min(upper(now, Layering.NEW), upper(before, phase));
        return upper - lower > NONE ? upper - lower : 0;
    }

    private double upper(int layer, double phase) {
        return layer == plant.layers - 1 ? plant.layers : layer + phase;
    }

    private double lower(int layer, double phase) {
        return layer == 0 ? 0 : layer - 1 + phase;
    }

    /** Sets the boundaries anew, each layer with the mass and energy of the water in it; returns whether any has mixed. */
    private boolean restack(double[] y) {
        boolean mixes = false;
        double p = y[StateVector.PRESSURE];
        for (int i = 0; i < plant.layers; i++) {
            double m = 0;
            double u = 0;
            double t = Double.NaN;
            boolean even = true;
            for (int j = 0; j < plant.layers; j++) {
                double overlap = overlap(y, i, j);
                if (overlap > 0) {
                    double of = y[vector.lowest + j];
                    even &= Double.isNaN(t) || Double.compare(t, of) == 0;
                    plant.water.evaluate(of, p, water);
                    t = Double.isNaN(t) ? of : t + overlap * (of - t);
                    m += overlap * water.density();
                    u += overlap * water.density() * water.internalEnergy();
                }
            }
            for (int n = 0; n < ITERATIONS && !even; n++) {
                plant.water.evaluate(t, p, water);
                t += (u / m - water.internalEnergy()) / water.heatCapacity();
            }
            mixes |= !even;
            stacked[i] = t;
        }
        System.arraycopy(stacked, 0, y, vector.lowest, plant.layers);
        y[vector.phase] = Layering.NEW;
        return mixes;
    }
}
