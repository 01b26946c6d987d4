package io.github.heatswell.simulation;

/**
 * How the pressure responds to the flows last evaluated: how fast, how far it is from its equilibrium, and to what. All
 * distances are to first order. The choice of a {@link PressureRegime} rests on these.
 */
final class PressureResponse {

    /** An equilibrium reached faster than this (s) is treated as settled; a slower one is integrated. */
    static final double FAST = 5;
    /** A settled pressure whose equilibrium takes longer than this (s) is integrated again. */
    static final double SLOW = 2 * FAST;

    private final SupplyBoundary feed;
    private final ReliefFlows relief;
    private final Leaks leaks;
    private final ReducingValveOutlet outlet;
    private final Balance balance;
    private double slope;
    private double settlingSlope;

    PressureResponse(
            SupplyBoundary feed, ReliefFlows relief, Leaks leaks, ReducingValveOutlet outlet, Balance balance) {
        this.feed = feed;
        this.relief = relief;
        this.leaks = leaks;
        this.outlet = outlet;
        this.balance = balance;
    }

    /**
     * Adds up the slopes of a state.
     *
     * @param filling slope with which the flow of a feed that fills the system falls with pressure (kg/s/Pa), else 0
     */
    void prepare(double filling) {
        slope = relief.slope() + relief.seatLeakageSlope() + leaks.outSlope() + leaks.inSlope();
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
        double moves = leaks.inSlope() > 0 ? balance.mainsRate() * leaks.inSlope() / slope : 0;
        return (moves - balance.pressureRate()) * settlingTime();
    }

    /**
     * How far (Pa) the equilibrium with open valves and leaking seats is above the pressure of zero discharge; negative
     * if the water shrinks, so that they will close; infinite without such valves or seats.
     */
    double equilibriumLift() {
        double steep = relief.slope() > 0 ? relief.slope() : relief.seatLeakageSlope();
        double flow = relief.slope() > 0 ? balance.reliefFlow() : balance.seatLeakage();
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

    /** Name of the part that responds most steeply to pressure. */
    String steepest() {
        double valves = relief.slope() + relief.seatLeakageSlope();
        if (leaks.inSlope() >= Math.max(valves, leaks.outSlope()) && leaks.inSlope() > 0) {
            return "the seat leakage of the supply";
        }
        return valves >= leaks.outSlope() ? "a relief valve" : "a leak";
    }
}
