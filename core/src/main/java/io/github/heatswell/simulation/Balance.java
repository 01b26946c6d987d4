package io.github.heatswell.simulation;

import io.github.heatswell.simulation.Schedule.Conditions;
import io.github.heatswell.water.LiquidWater;
import java.util.Arrays;
import java.util.function.ToDoubleFunction;

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
 * cools to branch temperature on the way. The {@link PressureRegime} determines which unknown the last equation is
 * solved for; {@link PressureResponse} judges how the pressure responds to the flows found.
 *
 * <p>Holds working memory: one instance for one run, not thread-safe.
 */
final class Balance {

    /** Temperature step (K) of the difference quotient for how an equilibrium drifts, */
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

    private static final int MAX_PASSES = 20;

    private final CompiledSystem plant;
    private final StateVector vector;
    private final LiquidWater water;
    private final TankColumn column;
    private final ColdBranch branch;
    private final ReliefFlows relief;
    private final Leaks leaks;
    private final ReducingValveOutlet outlet;
    private final PressureResponse response;
    private final Tap tap;
    private final LiquidWater.State cold = new LiquidWater.State();
    private final double referenceEnthalpy;
    private final double[] probe;

    private double lastColdTemperature = Double.NaN;
    private double lastColdPressure = Double.NaN;
    /** Last evaluation; modes are null if the conditions have changed since. */
    private Modes lastModes;

    private final double[] lastState;
    private final double[] lastRates;
    private Conditions conditions;

    private double drawFlow;
    private double pressureRate;
    private double supplyFlow;
    private double reliefFlow;
    private double topFlow;
    private double topGiven;
    private double stiffness;
    private double beyond;

    Balance(CompiledSystem plant, StateVector vector, LiquidWater water) {
        this.plant = plant;
        this.vector = vector;
        this.water = water;
        column = new TankColumn(plant, water);
        branch = new ColdBranch(plant);
        relief = new ReliefFlows(plant);
        leaks = new Leaks(plant);
        outlet = new ReducingValveOutlet(plant.feed);
        response = new PressureResponse(plant.feed, relief, leaks, outlet, this);
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
        leaks.prepare(p, y[StateVector.MAINS], cold.density(), conditions.supplyOpen());
        drawFlow = tap.hotFlow(y[StateVector.COLD], column.topTemperature(), column.topDensity());
        beyond = 0;
        response.prepare(
                modes.rule == PressureRegime.FILLING
                        ? cold.density() * plant.feed.fillingSlope(p, y[StateVector.MAINS])
                        : 0);
        outlet.prepare(cold.density(), response.slope());
    }

    /** Cold water keeps one pressure and one temperature for most of a day, so its properties are cached. */
    private void prepareCold(double temperature, double p) {
        if (temperature != lastColdTemperature || p != lastColdPressure) {
            water.evaluate(temperature, p, cold);
            lastColdTemperature = temperature;
            lastColdPressure = p;
        }
    }

    /** Mass flow (kg/s) to the taps in a state, without the balance as a whole. */
    double drawFlow(double[] y) {
        return tap.hotFlowAt(y[StateVector.COLD], y[vector.highest], y[StateVector.PRESSURE]);
    }

    /** Leakage out of the branch through holes and closed seats, minus leakage in through the feed's seat (kg/s). */
    private double drain() {
        return leaks.out() + relief.branchSeatLeakage() - leaks.in();
    }

    /** Flow out of the top of the tank apart from open valves (kg/s). */
    private double topDrain() {
        return drawFlow + relief.topSeatLeakage();
    }

    /** The feed holds the pressure, or a reducing valve lets it droop with the flow. */
    void solveAtFeed(double[] y, Modes modes, double[] rates) {
        if (response.droops(y)) {
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

    /** The pressure follows the outlet of a reducing valve. */
    private void solveDrooping(double[] y, Modes modes, double[] rates) {
        double now = drooped(y);
        rates[StateVector.MAINS] = conditions.mainsRate();
        rates[StateVector.GAS] = 0;
        double drift = drift(now, this::drooped, y, modes, rates);
        solveHeld(outlet.rate(y[StateVector.PRESSURE], now, drift, stiffness));
    }

    /** Pressure (Pa, absolute) at which the feed supplies the demand in steady state. */
    private double drooped(double[] y) {
        solveHeld(0);
        return outlet.passing(supplyFlow, y[StateVector.MAINS]);
    }

    /**
     * How fast an equilibrium changes as temperatures and mains move on, by a difference quotient.
     *
     * @param now the equilibrium, just found for the state
     * @param equilibrium finds it for a state that is prepared
     * @param rates rates of gas temperature and mains; receives those of the tank
     */
    private double drift(double now, ToDoubleFunction<double[]> equilibrium, double[] y, Modes modes, double[] rates) {
        column.fill(0, topFlow, rates, vector.lowest);
        double step = lookAhead(y, rates);
        prepare(probe, modes);
        double drift = (equilibrium.applyAsDouble(probe) - now) / step;
        prepare(y, modes);
        return drift;
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
        probe[StateVector.GAS] += step * rates[StateVector.GAS];
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
        rates[StateVector.MAINS] = 0;
        rates[StateVector.GAS] = branch.gasTemperatureRate(y, modes.diaphragm, 0);
        double drift = drift(now, ahead -> excess(0), y, modes, rates);
        // where nothing responds to pressure any more, the run is about to leave this rule and must not diverge
        // meanwhile
        double slope = response.slope();
        double steep = Math.max(slope, stiffness / PressureResponse.SLOW);
        double follows = (drift + leaks.inSlope() * conditions.mainsRate()) / steep;
        pressureRate = follows + (now - stiffness * follows) / steep / RETURN_TIME;
        double passed = excess(pressureRate);
        beyond = slope > 0 ? passed / slope : 0;
        reliefFlow = relief.open() + beyond * relief.slope();
        leaks.shift(beyond);
    }

    /**
     * Outflow (kg/s) beyond the flows by their curves for a given rate of pressure (Pa/s). Valves on the tank take
     * their share of the slope.
     */
    private double excess(double rate) {
        double slope = response.slope();
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
        rates[StateVector.LEAKED] = leaks.out();
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
        return supplyFlow + leaks.in();
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
    double seatLeakage() {
        return relief.branchSeatLeakage() + relief.topSeatLeakage() + beyond * relief.seatLeakageSlope();
    }

    /** The water of the tank, as last evaluated. */
    TankColumn column() {
        return column;
    }

    /** How the pressure responds to the flows last evaluated. */
    PressureResponse response() {
        return response;
    }

    /** Rate of pressure (Pa/s) as last evaluated. */
    double pressureRate() {
        return pressureRate;
    }

    /** Rate of the mains pressure (Pa/s). */
    double mainsRate() {
        return conditions.mainsRate();
    }
}
