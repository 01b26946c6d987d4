package io.github.heatswell.simulation;

import io.github.heatswell.simulation.Contributions.Outlet;

/**
 * How the pressure responds to the flows last evaluated: how fast, how far it is from its equilibrium, and to what. All
 * distances are to first order. The choice of a {@link PressureRegime} rests on these.
 */
final class PressureResponse {

    /** An equilibrium reached faster than this (s) is treated as settled; a slower one is integrated. */
    static final double FAST = 5;
    /** A settled pressure whose equilibrium takes longer than this (s) is integrated again. */
    static final double SLOW = 2 * FAST;

    /** A pressure this close (Pa) to equilibrium with the flows counts as settled, */
    private static final double SETTLED_WITHIN = 1;
    /** provided it is also this close (-) relative to the valve's lift at equilibrium. */
    private static final double SETTLED_WITHIN_LIFT = 0.05;
    /** But not closer than this (Pa): again a drop an hour, and more than the solver's noise. */
    private static final double SETTLED_ENOUGH = Valve.RESEAT_GAP;

    private final SupplyBoundary feed;
    private final Contributions flows;
    private final ReducingValveOutlet outlet;
    private final Balance balance;
    private double slope;
    private double settlingSlope;

    PressureResponse(SupplyBoundary feed, Contributions flows, ReducingValveOutlet outlet, Balance balance) {
        this.feed = feed;
        this.flows = flows;
        this.outlet = outlet;
        this.balance = balance;
    }

    /**
     * Adds up the slopes of a state.
     *
     * @param filling slope with which the flow of a feed that fills the system falls with pressure (kg/s/Pa), else 0
     */
    void prepare(double filling) {
        slope = flows.slope();
        settlingSlope = slope + filling;
    }

    /** How much more all valves, seats and leaks discharge per pascal (kg/s/Pa). */
    double slope() {
        return slope;
    }

    /** Time constant (s) with which the pressure approaches its equilibrium; infinite with everything closed. */
    double settlingTime() {
        return balance.stiffness() / settlingSlope;
    }

    /** Rate (Pa/s) of the pressure relative to the feed's, which may itself change. */
    double rateAgainstFeed(double[] y) {
        double mains = y[StateVector.MAINS];
        boolean bypassed = y[StateVector.PRESSURE] > feed.standing(mains);
        boolean moves = bypassed || feed.followsMains(mains);
        return balance.pressureRate() - (moves ? balance.mainsRate() : 0);
    }

    /** How far (Pa) the pressure is from following the feed. */
    double distanceFromFollowing(double[] y) {
        return rateAgainstFeed(y) * settlingTime();
    }

    /** Whether the pressure is this close (Pa) to following the feed and would return to it within seconds. */
    boolean followsFast(double[] y, double within) {
        return settlingTime() < FAST && Math.abs(distanceFromFollowing(y)) <= within;
    }

    /**
     * Distance (Pa) of the pressure above its equilibrium with the flows. Leakage through the feed's seat varies with
     * the mains.
     */
    double distanceFromEquilibrium() {
        double bySupply = flows.slope(Outlet.SUPPLY);
        double moves = bySupply > 0 ? balance.mainsRate() * bySupply / slope : 0;
        return (moves - balance.pressureRate()) * settlingTime();
    }

    /**
     * How far (Pa) the equilibrium with open valves and leaking seats is above the pressure of zero discharge; negative
     * if the water shrinks, so that they will close; infinite without such valves or seats.
     */
    double equilibriumLift() {
        boolean open = flows.slope(Outlet.VALVE) > 0;
        double steep = flows.slope(open ? Outlet.VALVE : Outlet.SEAT);
        double flow = open ? balance.reliefFlow() : balance.seatLeakage();
        return steep > 0 ? flow / steep - distanceFromEquilibrium() : Double.POSITIVE_INFINITY;
    }

    /** Whether the outlet of a reducing valve is below lock-up pressure, and so follows the flow. */
    boolean droops(double[] y) {
        return outlet.droops(y[StateVector.PRESSURE], y[StateVector.MAINS]);
    }

    /** Droop (Pa) of the reducing valve at the supply flow. */
    double droopOfFlow() {
        return outlet.droop(balance.supplyFlow());
    }

    /** How far (Pa) the pressure still is from counting as settled; a constant if there is nothing to settle at. */
    double distanceFromSettled(double[] y, boolean supplyOpen) {
        double distance = distanceFromEquilibrium();
        double lift = equilibriumLift();
        double aboveFeed = supplyOpen ? y[StateVector.PRESSURE] - distance - feed.standing(y[StateVector.MAINS]) : lift;
        // the solver's noise may keep the pressure above an equilibrium this little below the feed, which then never
        // opens
        if (!(lift > 0 && aboveFeed > -SETTLED_ENOUGH && settlingTime() < FAST)) {
            return SETTLED_WITHIN;
        }
        double nearer = SETTLED_WITHIN_LIFT * Math.min(lift, aboveFeed);
        return Math.abs(distance) - Math.min(SETTLED_WITHIN, Math.max(SETTLED_ENOUGH, nearer));
    }

    /** Distance (Pa) of the pressure from the feed's, while filling up or falling to it. */
    double distanceFromFilled(double[] y) {
        double p = y[StateVector.PRESSURE];
        double mains = y[StateVector.MAINS];
        if (feed.droop > 0 && !feed.returns(p, mains)) {
            boolean slow = settlingTime() >= FAST;
            return slow ? SETTLED_WITHIN : Math.abs(distanceFromFollowing(y)) - SETTLED_WITHIN;
        }
        return Math.abs(p - feed.target(p, mains)) - SETTLED_WITHIN;
    }

    /** Name of the part that responds most steeply to pressure. */
    String steepest() {
        boolean byFeed = settlingSlope - slope > slope;
        return byFeed ? feed.droop > 0 ? "the reducing valve" : "the service line" : flows.steepest();
    }
}
