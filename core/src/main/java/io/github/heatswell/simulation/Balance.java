package io.github.heatswell.simulation;

import io.github.heatswell.water.LiquidWater;
import java.util.Arrays;

/**
 * Mass and energy balances: rates of change of the state for given modes.
 *
 * <p>The tank ({@link TankColumn}) gives the flow j (kg/s) it takes from the cold branch, linear in dp/dt. The branch
 * ({@link ColdBranch}) obeys
 *
 * <pre>
 *   S_b dp/dt + s_b = supply - relief - leaks - j
 * </pre>
 *
 * with its mass stiffness S_b and its source s_b. Water that flows back out of the tank carries its own enthalpy and
 * cools to branch temperature on the way. The {@link PressureRegime} determines which unknown the last equation is solved
 * for.
 *
 * <p>Holds working memory: one instance for one run, not thread-safe.
 */
final class Balance {

    /** Temperature step (K) of the difference quotient for how flows change during heating, */
    private static final double PROBE = 1e-3;
    /** its equivalent per pascal of the mains (K/Pa), */
    private static final double PROBE_PER_PASCAL = 1e-4;
    /** and its longest time (s). */
    private static final double MAX_PROBE = 10;
    /**
     * Relaxation time (s) of a settled pressure to its equilibrium. It only corrects small terms neglected in the
     * equilibrium's drift, and must not limit the solver's steps.
     */
    private static final double RETURN_TIME = 600;

    /** The same for the outlet of a reducing valve, where a pressure lag causes an error of the flow. */
    private static final double OUTLET_RETURN_TIME = 10;

    /** Droop below this (Pa) is neglected: the outlet is then taken as steady. */
    static final double LITTLE_DROOP = 10;
    /** An equilibrium reached faster than this (s) is treated as settled; a slower one is integrated. */
    static final double FAST = 5;
    /** A settled pressure whose equilibrium takes longer than this (s) is integrated again. */
    static final double SLOW = 2 * FAST;

    private static final int MAX_PASSES = 20;

    private final CompiledSystem plant;
    private final StateVector vector;
    private final LiquidWater water;
    private final TankColumn column;
    private final ColdBranch branch;
    private final ReliefFlows relief;
    private final Tap tap;
    private final LiquidWater.State cold = new LiquidWater.State();
    private final LiquidWater.State hot = new LiquidWater.State();
    private final double referenceEnthalpy;
    private final double[] probe;

    private double lastColdTemperature = Double.NaN;
    private double lastColdPressure = Double.NaN;
    /** Last evaluation; modes are null if the conditions have changed since. */
    private Modes lastModes;

    private final double[] lastState;
    private final double[] lastRates;
    private Conditions conditions;

    private double seatFlow;
    private double seatSlope;
    private double leakFlow;
    private double leakSlope;
    private double drawFlow;

    private double pressureRate;
    private double supplyFlow;
    private double reliefFlow;
    private double topFlow;
    private double topGiven;
    private double stiffness;
    private double slope;
    private double beyond;
    private double settlingSlope;

    Balance(CompiledSystem plant, StateVector vector, LiquidWater water) {
        this.plant = plant;
        this.vector = vector;
        this.water = water;
        column = new TankColumn(plant, water);
        branch = new ColdBranch(plant);
        relief = new ReliefFlows(plant);
        tap = new Tap(water, plant.coldPressure);
        probe = new double[vector.length];
        lastState = new double[vector.length];
        lastRates = new double[vector.length];
        water.evaluate(plant.coldTemperature, plant.coldPressure, cold);
        referenceEnthalpy = cold.enthalpy();
    }

    /** Sets the boundary conditions from now on. */
    void under(Conditions now) {
        conditions = now;
        lastModes = null;
        tap.serve(now.draw());
    }

    /** Whether any burner or element is on. */
    boolean isHeating(Modes modes) {
        for (int i = 0; i < plant.sources.length; i++) {
            if (modes.isOn(i, plant)) {
                return true;
            }
        }
        return false;
    }

    /** Flow (m3/s) of the open tap, 0 if there is none. */
    double drawn() {
        return tap.flow();
    }

    /**
     * Computes the rates. A repeated call for the same state and modes, as between segments, returns them without
     * recomputing.
     *
     * @param y the state, see {@link StateVector}
     * @param modes the modes
     * @param rates the rates of change of the state, overwritten
     */
    void evaluate(double[] y, Modes modes, double[] rates) {
        if (modes == lastModes && y[vector.highest] == lastState[vector.highest] && Arrays.equals(y, lastState)) {
            System.arraycopy(lastRates, 0, rates, 0, rates.length);
            return;
        }
        prepare(y, modes);
        modes.rule.solve(this, y, modes, rates);
        fill(y, modes, rates);
        lastModes = modes;
        System.arraycopy(y, 0, lastState, 0, y.length);
        System.arraycopy(rates, 0, lastRates, 0, y.length);
    }

    private void prepare(double[] y, Modes modes) {
        double p = y[StateVector.PRESSURE];
        prepareCold(y[StateVector.COLD], p);
        column.prepare(y, vector, modes);
        branch.prepare(y, modes.diaphragm, cold, conditions.coldRate());
        relief.prepare(p, modes, cold.density(), column.topDensity());
        prepareSeat(p, y[StateVector.MAINS]);
        leakFlow = 0;
        leakSlope = 0;
        if (plant.leakage > 0 && p > plant.atmosphere) {
            leakFlow = cold.density() * plant.leakage * Math.sqrt(p - plant.atmosphere);
            leakSlope = leakFlow / (2 * (p - plant.atmosphere));
        }
        drawFlow = tap.isOpen() ? tap.hotFlow(y[StateVector.COLD], column.topTemperature(), column.topDensity()) : 0;
        slope = relief.slope() + relief.seatLeakageSlope() + leakSlope + seatSlope;
        beyond = 0;
        settlingSlope = slope
                + (modes.rule == PressureRegime.FILLING
                        ? cold.density() * plant.feed.fillingSlope(p, y[StateVector.MAINS])
                        : 0);
    }

    private void prepareSeat(double p, double mains) {
        seatFlow = 0;
        seatSlope = 0;
        if (plant.feed.leaks() && conditions.supplyOpen()) {
            seatFlow = cold.density() * plant.feed.throughSeat(p, mains);
            seatSlope = cold.density() * plant.feed.seatSlope(p, mains);
        }
    }

    /** Cold water keeps one pressure and one temperature for most of a day, so its properties are cached. */
    private void prepareCold(double temperature, double p) {
        if (temperature != lastColdTemperature || p != lastColdPressure) {
            water.evaluate(temperature, p, cold);
            lastColdTemperature = temperature;
            lastColdPressure = p;
        }
    }

    /**
     * Mass flow (kg/s) to the taps in a state, without the balance as a whole.
     *
     * @param y the state
     */
    double drawFlow(double[] y) {
        if (!tap.isOpen()) {
            return 0;
        }
        water.evaluate(y[vector.highest], y[StateVector.PRESSURE], hot);
        return tap.hotFlow(y[StateVector.COLD], hot.temperature(), hot.density());
    }

    /** Leakage out of the branch through holes and closed seats, minus leakage in through the feed's seat (kg/s). */
    private double drain() {
        return leakFlow + relief.branchSeatLeakage() - seatFlow;
    }

    /** Flow out of the top of the tank apart from open valves (kg/s). */
    private double topDrain() {
        return drawFlow + relief.topSeatLeakage();
    }

    /** The feed holds the pressure, or a reducing valve lets it droop with the flow. */
    void solveAtFeed(double[] y, Modes modes, double[] rates) {
        if (droops(y)) {
            solveDrooping(y, modes, rates);
        } else {
            solveHeld(plant.feed.followsMains(y[StateVector.MAINS]) ? conditions.mainsRate() : 0);
        }
    }

    /** The mains hold the pressure. */
    void solveAtMains() {
        solveHeld(conditions.mainsRate());
    }

    /** Pressure follows the feed; the supply makes up the difference. */
    private void solveHeld(double rate) {
        pressureRate = rate;
        reliefFlow = relief.open();
        topFlow = relief.onTop();
        topGiven = topDrain();
        TankColumn.Linear inflow = column.inflow(topGiven, topFlow, rate, cold.enthalpy());
        supplyFlow =
                branch.stiffness() * rate + branch.source() + relief.onBranch() + drain() + inflow.at(rate, topFlow);
        stiffness = branch.stiffness() + inflow.byPressure;
    }

    /**
     * Outlet pressure is lock-up pressure minus droop times flow, and the flow changes with the tank and the mains, so
     * the pressure follows {@code lockUp - droop * flow} with a small lag.
     */
    private void solveDrooping(double[] y, Modes modes, double[] rates) {
        double now = drooped(y);
        column.fill(0, topFlow, rates, vector.lowest);
        rates[StateVector.MAINS] = conditions.mainsRate();
        double step = lookAhead(y, rates);
        prepare(probe, modes);
        double drift = (drooped(probe) - now) / step;
        prepare(y, modes);
        double moving = drift / resistance();
        double distance = (now - y[StateVector.PRESSURE]) / resistance();
        // water that the system stores or releases on the way passes the valve as well, so the outlet lags a little
        double lag = moving * stiffness * plant.feed.droop / cold.density() / resistance();
        solveHeld(moving + (distance - lag) / OUTLET_RETURN_TIME);
    }

    /**
     * Factor (-) by which the outlet falls less with demand, because open relief valves and leaking seats pass less as
     * the pressure falls.
     */
    private double resistance() {
        return 1 + plant.feed.droop * slope / cold.density();
    }

    /** Pressure (Pa, absolute) at which the feed supplies the demand in steady state. */
    private double drooped(double[] y) {
        solveHeld(0);
        return plant.feed.standing(y[StateVector.MAINS]) - plant.feed.droop * supplyFlow / cold.density();
    }

    /** Advances the probe along the rates of temperatures and mains; returns the time step (s). */
    private double lookAhead(double[] y, double[] rates) {
        double fastest = Math.abs(rates[StateVector.MAINS]) * PROBE_PER_PASCAL;
        for (int i = vector.lowest; i <= vector.highest; i++) {
            fastest = Math.max(fastest, Math.abs(rates[i]));
        }
        double step = fastest > 0 ? Math.min(PROBE / fastest, MAX_PROBE) : MAX_PROBE;
        System.arraycopy(y, 0, probe, 0, y.length);
        probe[StateVector.MAINS] += step * rates[StateVector.MAINS];
        for (int i = vector.lowest; i <= vector.highest; i++) {
            probe[i] += step * rates[i];
        }
        return step;
    }

    /**
     * The system fills towards the feed's pressure. A reducing valve passes the flow its droop allows. Any other feed
     * supplies what would hold the pressure constant, plus the flow through the service line's resistance, so the
     * system reaches the feed's pressure whatever it releases on the way.
     */
    void solveFilling(double[] y) {
        double p = y[StateVector.PRESSURE];
        double mains = y[StateVector.MAINS];
        boolean down = plant.feed.returns(p, mains);
        double filling = cold.density() * plant.feed.filling(p, mains);
        if (plant.feed.droop > 0 && !down) {
            solveFree(filling);
            return;
        }
        solveHeld(down || plant.feed.followsMains(mains) ? conditions.mainsRate() : 0);
        double holding = plant.feed.open ? supplyFlow : down ? Math.min(0, supplyFlow) : Math.max(0, supplyFlow);
        solveFree(holding + filling);
    }

    /** The flow of the feed is given; pressure takes up the difference. */
    void solveFree(double feed) {
        supplyFlow = feed;
        reliefFlow = relief.open();
        topFlow = relief.onTop();
        topGiven = topDrain();
        int passes = 0;
        do {
            TankColumn.Linear inflow = column.inflow(topGiven, topFlow, pressureRate, cold.enthalpy());
            stiffness = branch.stiffness() + inflow.byPressure;
            double surplus = feed - relief.onBranch() - drain() - branch.source() - inflow.at(0, topFlow);
            pressureRate = surplus / stiffness;
            passes++;
        } while (!column.agrees(pressureRate, topFlow) && passes < MAX_PASSES);
    }

    /**
     * Outflow through open valves and leaking seats always equals the water's expansion, so the pressure drifts with
     * it: {@code dp/dt = (d/dt excess) / (d flow/dp)}, where the excess is the expansion minus the flows by their
     * curves, a little of which is stored in the system. The actual flows are then taken from the balance, not from the
     * curves, shared in proportion to their slopes, which closes the balance exactly.
     */
    void solveSettled(double[] y, Modes modes, double[] rates) {
        supplyFlow = 0;
        double now = excess(0);
        column.fill(0, topFlow, rates, vector.lowest);
        rates[StateVector.MAINS] = 0;
        double step = lookAhead(y, rates);
        if (plant.hasGasState()) {
            probe[StateVector.GAS] += step * branch.gasTemperatureRate(y, modes.diaphragm, 0);
        }
        prepare(probe, modes);
        double drift = (excess(0) - now) / step;
        prepare(y, modes);
        // where nothing responds to pressure any more, the run is about to leave this rule and must not diverge
        // meanwhile
        double steep = Math.max(slope, stiffness / SLOW);
        double follows = (drift + seatSlope * conditions.mainsRate()) / steep;
        pressureRate = follows + (now - stiffness * follows) / steep / RETURN_TIME;
        double passed = excess(pressureRate);
        beyond = slope > 0 ? passed / slope : 0;
        reliefFlow = relief.open() + beyond * relief.slope();
        leakFlow += beyond * leakSlope;
        seatFlow -= beyond * seatSlope;
    }

    /**
     * Outflow (kg/s) beyond the flows by their curves for a given rate of pressure (Pa/s). Valves on the tank take
     * their share of the slope.
     */
    private double excess(double rate) {
        double topShare = slope > 0 ? relief.topSlope() / slope : 0;
        topGiven = topDrain() + relief.onTop();
        double excess = 0;
        int passes = 0;
        do {
            topFlow = topShare * excess;
            TankColumn.Linear inflow = column.inflow(topGiven, topFlow, rate, cold.enthalpy());
            stiffness = branch.stiffness() + inflow.byPressure;
            double missing =
                    branch.stiffness() * rate + branch.source() + relief.onBranch() + drain() + inflow.at(rate, 0);
            excess = -missing / (1 - topShare + topShare * inflow.byRelief);
            passes++;
        } while (!column.agrees(rate, topShare * excess) && passes < MAX_PASSES);
        topFlow = topShare * excess;
        return excess;
    }

    private void fill(double[] y, Modes modes, double[] rates) {
        double p = y[StateVector.PRESSURE];
        double tankInflow = column.inflow().at(pressureRate, topFlow);
        column.fill(pressureRate, topFlow, rates, vector.lowest);
        rates[StateVector.PRESSURE] = pressureRate;
        rates[StateVector.GAS] = branch.gasTemperatureRate(y, modes.diaphragm, pressureRate);
        rates[StateVector.MAINS] = conditions.mainsRate();
        rates[StateVector.COLD] = conditions.coldRate();
        // where the flow turns, it continues smoothly past zero, for the solver
        rates[StateVector.LET_IN] = modes.outward ? 0 : fromMains();
        rates[StateVector.RETURNED] = modes.outward ? -fromMains() : 0;
        rates[StateVector.DRAWN] = drawFlow;
        rates[StateVector.LEAKED] = leakFlow;
        // water no warmer than the feed delivers no heat to a tap
        double leaving = column.passingTop() == 0 ? 0 : column.passingTop() / overTop();
        rates[StateVector.DELIVERED] = drawFlow * Math.max(0, column.topEnthalpy() + leaving - cold.enthalpy());
        rates[StateVector.HEAT_LOST] = column.lost();
        double port = (tankInflow > 0 ? cold.enthalpy() : column.bottomEnthalpy()) - referenceEnthalpy;
        rates[StateVector.CARRIED] = tankInflow * port
                - overTop() * (column.topEnthalpy() - referenceEnthalpy)
                - column.passingTop()
                - p * column.shellRate(pressureRate);
        relief.fill(p, modes, beyond, rates);
    }

    /** Mass flow (kg/s) from the mains, through the supply or its leaking seat, as last evaluated; negative if back. */
    double fromMains() {
        return supplyFlow + seatFlow;
    }

    /** Mass flow (kg/s) from the supply as last evaluated; negative if water goes back. */
    double supplyFlow() {
        return supplyFlow;
    }

    /** Mass flow (kg/s) out of the top of the tank as last evaluated. */
    double overTop() {
        return topGiven + topFlow;
    }

    /** Mass (kg) the whole system takes up per pascal, as last evaluated. */
    double stiffness() {
        return stiffness;
    }

    /** Mass flow (kg/s) through open relief valves as last evaluated. */
    double reliefFlow() {
        return reliefFlow;
    }

    /** Mass flow (kg/s) through all relief valves, closed seats included, as last evaluated. */
    double discharged() {
        return reliefFlow + seatLeakage();
    }

    /** Mass flow (kg/s) past the closed seats of relief valves as last evaluated. */
    private double seatLeakage() {
        return relief.branchSeatLeakage() + relief.topSeatLeakage() + beyond * relief.seatLeakageSlope();
    }

    /** Whether the outlet of a reducing valve is below lock-up pressure, and so follows the flow. */
    boolean droops(double[] y) {
        return plant.feed.droop > 0
                && y[StateVector.PRESSURE] < plant.feed.standing(y[StateVector.MAINS]) - LITTLE_DROOP / 4;
    }

    /** Droop (Pa) of the reducing valve at the supply flow, as last evaluated. */
    double droopOfFlow() {
        return plant.feed.droop * supplyFlow / cold.density() / resistance();
    }

    /** Rate (Pa/s) of the pressure relative to the feed's, which may itself change, as last evaluated. */
    double rateAgainstFeed(double[] y) {
        double mains = y[StateVector.MAINS];
        boolean bypassed = y[StateVector.PRESSURE] > plant.feed.standing(mains);
        boolean moves = bypassed || plant.feed.followsMains(mains);
        return pressureRate - (moves ? conditions.mainsRate() : 0);
    }

    /** How far (Pa) the pressure is from following the feed, to first order, as last evaluated. */
    double distanceFromFollowing(double[] y) {
        return rateAgainstFeed(y) * settlingTime();
    }

    /** Whether the pressure is this close (Pa) to following the feed and would return to it within seconds. */
    boolean followsFast(double[] y, double within) {
        return settlingTime() < FAST && Math.abs(distanceFromFollowing(y)) <= within;
    }

    /**
     * Distance (Pa) of the pressure above its equilibrium with the flows, to first order, as last evaluated. Leakage
     * through the feed's seat varies with the mains.
     */
    double distanceFromEquilibrium() {
        double moves = seatSlope > 0 ? conditions.mainsRate() * seatSlope / slope : 0;
        return (moves - pressureRate) * settlingTime();
    }

    /**
     * How far (Pa) the equilibrium with open valves and leaking seats is above the pressure of zero discharge, to first
     * order; negative if the water shrinks, so that they will close; infinite without such valves or seats.
     */
    double equilibriumLift() {
        double steep = relief.slope() > 0 ? relief.slope() : relief.seatLeakageSlope();
        double flow = relief.slope() > 0 ? reliefFlow : seatLeakage();
        return steep > 0 ? flow / steep - distanceFromEquilibrium() : Double.POSITIVE_INFINITY;
    }

    /** Time constant (s) with which the pressure approaches its equilibrium; infinite with everything closed. */
    double settlingTime() {
        return stiffness / settlingSlope;
    }

    /** Name of the part that responds most steeply to pressure, as last evaluated. */
    String steepest() {
        double valves = relief.slope() + relief.seatLeakageSlope();
        if (seatSlope >= Math.max(valves, leakSlope) && seatSlope > 0) {
            return "the seat leakage of the supply";
        }
        return valves >= leakSlope ? "a relief valve" : "a leak";
    }

    /** Heat capacity (J/K) of one layer, as last prepared. */
    double capacity(int layer) {
        return column.capacity(layer);
    }

    /** Fraction of a layer's water replaced per second by the flow through its lower face (1/s), as last evaluated. */
    double turnover(int layer) {
        return column.turnover(layer, pressureRate, topFlow);
    }

    /**
     * Rate (K/s) at which the lower layers of a zone, up to the given one, would overtake those above in temperature if
     * unmixed, as last evaluated.
     */
    double inversionTendency(int layer) {
        return column.inversionTendency(layer, pressureRate, topFlow);
    }
}
