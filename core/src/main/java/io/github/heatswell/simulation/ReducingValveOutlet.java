package io.github.heatswell.simulation;

/**
 * Outlet pressure of a reducing valve with droop: lock-up pressure minus droop times flow. Flow changes with the tank
 * and the mains, so the outlet is quasi-steady: it drifts with its equilibrium, with a small lag.
 *
 * <p>Working memory of one run, not thread-safe.
 */
final class ReducingValveOutlet {

    /** Droop below this (Pa) is neglected: the outlet is then taken as steady. */
    static final double LITTLE_DROOP = 10;
    /**
     * Relaxation time (s) of the outlet to its equilibrium. Shorter than for a sealed system, because a pressure lag
     * causes an error of the flow.
     */
    private static final double RETURN_TIME = 10;

    private final SupplyBoundary feed;
    private double density;
    private double resistance;

    ReducingValveOutlet(SupplyBoundary feed) {
        this.feed = feed;
    }

    /**
     * Evaluates the outlet for a state.
     *
     * @param coldDensity density of the water that passes the valve (kg/m3)
     * @param slope how much more the system discharges per pascal (kg/s/Pa): open relief valves and leaking seats pass
     *     less as the pressure falls, so the outlet falls less with demand
     */
    void prepare(double coldDensity, double slope) {
        density = coldDensity;
        resistance = 1 + feed.droop * slope / coldDensity;
    }

    /** Whether an outlet pressure (Pa, absolute) is below lock-up pressure, and so follows the flow. */
    boolean droops(double pressure, double mains) {
        return feed.droop > 0 && pressure < feed.standing(mains) - LITTLE_DROOP / 4;
    }

    /** Droop (Pa) at which the outlet meets a demand, which shrinks with the pressure: the demand at lock-up (kg/s). */
    double droop(double demand) {
        return feed.droop * demand / density / resistance;
    }

    /** Pressure (Pa, absolute) at which the valve passes a flow (kg/s) in steady state. */
    double passing(double flow, double mains) {
        return feed.standing(mains) - feed.droop * flow / density;
    }

    /**
     * Rate of the outlet pressure (Pa/s). Water that the system stores or releases on the way passes the valve as well,
     * so the outlet lags a little.
     *
     * @param pressure the outlet pressure (Pa, absolute)
     * @param passing the pressure at which the valve would pass the present demand (Pa, absolute)
     * @param drift how fast that changes with the tank and the mains (Pa/s)
     * @param stiffness mass the system takes up per pascal (kg/Pa)
     */
    double rate(double pressure, double passing, double drift, double stiffness) {
        double moving = drift / resistance;
        double distance = (passing - pressure) / resistance;
        double lag = moving * stiffness * feed.droop / density / resistance;
        return moving + (distance - lag) / RETURN_TIME;
    }
}
