package io.github.heatswell.reference;

/**
 * Lets the boundaries between layers move with the water that a tap takes, all together, from the beginning of a draw on, and sets them
 * anew: a slice of the lowest layer becomes a layer of its own, each next boundary stands a layer higher, and the rest under the
 * top is the highest layer. A layer takes of each old one the part of its mass and energy that it takes of its volume. Warm and cold
 * water need less room together, so the layers then share out the water until one pressure holds in all.
 *
 * <p>A draw begins with a new lowest layer if that mixes less than letting its water into the old one. A boundary that has moved by a whole layer
 * is set back, unless a front has come to the top.
 */
final class Stacking {

    private static final double SLICE = 0.01;
    private static final double CUT = 1 + SLICE;
    private static final double MIDDLE = 0.5;
    private static final double ROUNDING = 1e-9;
    /** Differences (K2) that are not worth following, */
    private static final double WORTH = 1;
    /** nor layers that are drawn within this (s). */
    private static final double SHORTEST = 1;
    /** Corrections of a pressure, which converge at once: water hardly yields. */
    private static final int ROUNDS = 6;

    private final UnreducedSystem system;
    private final Column column;
    private final int layers;

    Stacking(UnreducedSystem system) {
        this.system = system;
        column = system.column();
        layers = column.count();
    }

    /** {@return the thickness of the lowest layer that ends a mode in which it grows} */
    static double until(Mode mode) {
        return mode.stack().raised() ? MIDDLE : CUT;
    }

    /**
     * Follows a change of mode.
     *
     * @param before the mode before it
     * @param after the mode after it
     * @param y the state, changed where the boundaries are set anew
     * @return the mode with what the boundaries do
     */
    Mode follow(Mode before, Mode after, double[] y) {
        if (!column.moves()) {
            return after;
        }
        boolean moving = after.stack().moving() && after.day().tap() >= 0;
        boolean begins =
                after.day().tap() >= 0 && after.day().tap() != before.day().tap();
        if (begins || moving && isCut(y)) {
            moving = isWorth(after, y);
            if (moving && isBetter(begins, before.stack().moving(), y)) {
                setAnew(y);
            }
        }
        double phase = y[column.phaseIndex()];
        return after.withStack(new Mode.Stack(moving && !isCut(y), phase < MIDDLE - ROUNDING));
    }

    private boolean isCut(double[] y) {
        return y[column.phaseIndex()] >= CUT - ROUNDING;
    }

    private double temperature(int layer) {
        return column.layer(layer).temperature();
    }

    private boolean isWorth(Mode mode, double[] y) {
        double flow = system.agenda().entry(mode.day().tap()).draw().flow();
        column.settle(y);
        return lowerSteps() + Math.pow(temperature(0) - system.description().coldAtStart(), 2) > WORTH
                && system.description().tank().volume() / layers > SHORTEST * flow;
    }

    /** The squares of all steps of temperature (K2) but the one under the highest layer. */
    private double lowerSteps() {
        double sum = 0;
        for (int i = 0; i + 2 < layers; i++) {
            sum += Math.pow(temperature(i + 1) - temperature(i), 2);
        }
        return sum;
    }

    private boolean isBetter(boolean begins, boolean moved, double[] y) {
        double phase = y[column.phaseIndex()];
        double left = phase * Math.pow(temperature(0) - system.description().coldAtStart(), 2);
        double flowing = moved || phase >= 1 ? lowerSteps() / 2 : 0;
        return mixed(phase) <= left + flowing;
    }

    /** How much less the squares of temperatures (K2, in even layers) are after setting the boundaries anew. */
    private double mixed(double phase) {
        double lost = 0;
        for (int i = 0; i < layers; i++) {
            double[] moments = new double[3];
            for (int j = 0; j < layers; j++) {
                double part = shared(i, j, phase);
                double t = temperature(j) - system.description().coldAtStart();
                moments[0] += part;
                moments[1] += part * t;
                moments[2] += part * t * t;
            }
            lost += moments[2] - moments[1] * moments[1] / moments[0];
        }
        return lost;
    }

    private double top(int layer, double phase) {
        return layer < layers - 1 ? layer + phase : layers;
    }

    private double shared(int now, int old, double phase) {
        double from = Math.max(now == 0 ? 0 : top(now - 1, SLICE), old == 0 ? 0 : top(old - 1, phase));
        double part = Math.min(top(now, SLICE), top(old, phase)) - from;
        return part < 1e-7 ? 0 : part;
    }

    /** Finds the pressure at which the layers hold all the water, and what each holds at it. */
    private void shareOut(double[] y, double[] old) {
        column.settle(old);
        double p = column.layer(0).pressure();
        double[] temperature = new double[layers];
        double mass = 0;
        double energy = 0;
        for (int i = 0; i < layers; i++) {
            mass += y[Column.massIndex(i)];
            energy += y[Column.massIndex(i) + 1];
            temperature[i] = column.layer(i).temperatureAt(y[Column.massIndex(i) + 1] / y[Column.massIndex(i)], p);
        }
        column.divide(y);
        for (int n = 0; n < ROUNDS; n++) {
            double missing = mass - held(y, temperature, p);
            p += missing / (held(y, temperature, p + 1) - held(y, temperature, p));
        }
        held(y, temperature, p);
        for (int i = 0; i < layers; i++) {
            energy -= y[Column.massIndex(i) + 1];
        }
        for (int i = 0; i < layers; i++) {
            y[Column.massIndex(i) + 1] += energy * y[Column.massIndex(i)] / mass;
        }
    }

    /** What the layers hold (kg) at temperatures (K) and a pressure (Pa, absolute); the state is set to it. */
    private double held(double[] y, double[] temperature, double p) {
        double sum = 0;
        for (int i = 0; i < layers; i++) {
            TankWater layer = column.layer(i);
            double mass = layer.massAt(temperature[i], p);
            y[Column.massIndex(i)] = mass;
            y[Column.massIndex(i) + 1] = mass * layer.internalEnergy();
            sum += mass;
        }
        return sum;
    }

    private void setAnew(double[] y) {
        double[] old = y.clone();
        double phase = y[column.phaseIndex()];
        for (int i = 0; i < layers; i++) {
            double mass = 0;
            double energy = 0;
            for (int j = 0; j < layers; j++) {
                double thickness = top(j, phase) - (j == 0 ? 0 : top(j - 1, phase));
                double part = shared(i, j, phase) / thickness;
                mass += part * old[Column.massIndex(j)];
                energy += part * old[Column.massIndex(j) + 1];
            }
            y[Column.massIndex(i)] = mass;
            y[Column.massIndex(i) + 1] = energy;
        }
        y[column.phaseIndex()] = SLICE;
        shareOut(y, old);
    }
}
