package io.github.heatswell.simulation;

/**
 * A state a little later, for a difference quotient: temperatures and mains move on along their rates. Working memory of one run, not
 * thread-safe.
 */
final class Probe {

    /** Temperature step (K) of the difference quotient for how an equilibrium drifts, */
    private static final double STEP = 1e-3;
    /** its equivalent per pascal of the mains (K/Pa), */
    private static final double STEP_PER_PASCAL = 1e-4;
    /** and its longest time (s). */
    private static final double MAX_TIME = 10;

    /** The state ahead; see {@link #advance}. */
    final double[] state;

    private final StateVector vector;
    private final HotPipe[] hotPipes;

    Probe(CompiledSystem plant) {
        vector = plant.vector;
        hotPipes = plant.hotPipes;
        state = new double[vector.length];
    }

    /** Copies a state and advances it along its rates; returns the time step (s). */
    double advance(double[] y, double[] rates) {
        double fastest = Math.abs(rates[StateVector.MAINS]) * STEP_PER_PASCAL;
        for (int i = vector.lowest; i <= vector.highest; i++) {
            fastest = Math.max(fastest, Math.abs(rates[i]));
        }
        for (HotPipe pipe : hotPipes) {
            fastest = Math.max(fastest, Math.abs(rates[pipe.temperature]));
        }
        double step = fastest > 0 ? Math.min(STEP / fastest, MAX_TIME) : MAX_TIME;
        System.arraycopy(y, 0, state, 0, y.length);
        state[StateVector.MAINS] += step * rates[StateVector.MAINS];
        for (int i = StateVector.OWN; i <= vector.highest; i++) {
            state[i] += step * rates[i];
        }
        return step;
    }
}
