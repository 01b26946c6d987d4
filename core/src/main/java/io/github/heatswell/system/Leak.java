package io.github.heatswell.system;

import io.github.heatswell.units.FlowUnit;
import io.github.heatswell.units.Limits;
import io.github.heatswell.units.Pressure;

/**
 * A tap that does not close, or any other small hole in the piping: a fixed orifice from the cold branch to the air. It
 * can hide the expansion, or be taken for it.
 */
public final class Leak {

    private static final Limits FLOW = Limits.above("flow", 0, 20e-3 / 60);
    private static final Limits AT = Limits.between("at", 0.1e5, 25e5);

    private final double flow;
    private final Pressure at;

    private Leak(double flow, Pressure at) {
        this.flow = flow;
        this.at = at;
    }

    /**
     * A leak known by what it loses.
     *
     * @param flow the flow it was measured with, above 0 to 20 L/min
     * @param unit the unit of the flow
     * @param at the pressure it was measured at, 0.1 bar to 25 bar
     * @return the leak
     * @throws IllegalArgumentException if a number is outside its range
     */
    public static Leak of(double flow, FlowUnit unit, Pressure at) {
        AT.check(at);
        return new Leak(FLOW.check(flow, unit), at);
    }

    /**
     * The flow the leak was measured with.
     *
     * @return the flow (m3/s)
     */
    public double flow() {
        return flow;
    }

    /**
     * The pressure the leak was measured at.
     *
     * @return the pressure
     */
    public Pressure at() {
        return at;
    }
}
