package io.github.heatswell.simulation;

import io.github.heatswell.simulation.Contributions.Outlet;
import io.github.heatswell.simulation.Schedule.Conditions;
import io.github.heatswell.water.LiquidWater;
import java.util.Arrays;
import java.util.function.ToDoubleFunction;

/**
 * Mass and energy balances: rates of change of the state for given modes.
 *
 * <p>The tank ({@link TankColumn}) gives the flow j (kg/s) it takes from the cold branch, linear in dp/dt. The branch
 * obeys
 *
 * <pre>
 *   S_b dp/dt + s_b = supply - outflows - j
 * </pre>
 *
 * with its mass stiffness S_b, its source s_b and the outflows that the devices add ({@link Contributions}). Water that flows back out of the tank carries its own enthalpy and
 * cools to branch temperature on the way. The {@link PressureRegime} determines which unknown the last equation is
 * solved for; {@link PressureResponse} judges how the pressure responds to the flows found.
 *
 * <p>Holds working memory: one instance for one run, not thread-safe.
 */
final class Balance {

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
    private final Contributions flows;
    private final ReducingValveOutlet outlet;
    private final PressureResponse response;
    private final LiquidWater.State cold = new LiquidWater.State();
    private final double referenceEnthalpy;
    private final Probe probe;

    private double lastColdTemperature = Double.NaN;
    private double lastColdPressure = Double.NaN;
    /** Last evaluation; modes are null if the conditions have changed since. */
    private Modes lastModes;

    private final double[] lastState;
    private final double[] lastRates;
    private Conditions conditions;

    private final boolean leaky;
    private double branchStiffness;
    private double branchSource;
    private double pressureRate;
    private double supplyFlow;
    /** Flow (kg/s) of outlets on the tank beyond their curves, in equilibrium. */
    private double topBeyond;

    private double stiffness;
    /** Pressure (Pa) that the flows are ahead of, along the slopes of their curves. */
    private double beyond;

    Balance(CompiledSystem plant, LiquidWater water) {
        this.plant = plant;
        vector = plant.vector;
        this.water = water;
        column = new TankColumn(plant, water);
        flows = new Contributions(plant);
        outlet = new ReducingValveOutlet(plant.feed);
        response = new PressureResponse(plant.feed, flows, outlet, this);
        leaky = Arrays.stream(plant.devices).anyMatch(Device::leaks);
        probe = new Probe(plant);
        lastState = new double[vector.length];
        lastRates = new double[vector.length];
        water.evaluate(plant.coldTemperature, plant.coldPressure, cold);
        referenceEnthalpy = cold.enthalpy();
    }

    /** Sets the boundary conditions from now on. */
    void under(Conditions now) {
        conditions = now;
        lastModes = null;
        flows.under(now);
    }

    /** Flow (m3/s) of the open tap, 0 if there is none. */
    double drawn() {
        return plant.tap.flow();
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
            copy(lastRates, rates);
            return;
        }
        prepare(y, modes);
        modes.rule.solve(this, y, modes, rates);
        fill(y, modes, rates);
        lastModes = modes;
        copy(y, lastState);
        copy(rates, lastRates);
    }

    /** In script {@code System.arraycopy} makes an object for every copy, an eighth of a run's time. */
    private static void copy(double[] from, double[] to) {
        for (int k = 0; k < from.length; k++) {
            to[k] = from[k];
        }
    }

    private void prepare(double[] y, Modes modes) {
        double p = y[StateVector.PRESSURE];
        prepareCold(y[StateVector.COLD], p);
        column.prepare(y, vector, modes);
        flows.prepare(y, modes, cold, column);
        column.draw(flows.flow(Outlet.TAP));
        branchStiffness = flows.stiffness();
        branchSource = flows.source();
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
        return plant.tap.hotFlowAt(y[StateVector.COLD], y[plant.atTap()], y[StateVector.PRESSURE]);
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
        topBeyond = 0;
        TankColumn.Linear inflow = column.inflow(flows.topFlow(), 0, rate, cold.enthalpy());
        supplyFlow = branchStiffness * rate + branchSource + flows.branchFlow() + inflow.at(rate, 0);
        stiffness = branchStiffness + inflow.byPressure;
    }

    /** The pressure follows the outlet of a reducing valve. */
    private void solveDrooping(double[] y, Modes modes, double[] rates) {
        double now = drooped(y);
        rates[StateVector.MAINS] = conditions.mainsRate();
        // gas that was compressed a moment ago still cools, and takes the less water the cooler it is
        fillTemperatures(y, modes, 0, rates);
        double drift = drift(now, 0, this::drooped, y, modes, rates);
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
     * @param rate rate of pressure (Pa/s) that the tank meets meanwhile
     * @param equilibrium finds it for a state that is prepared
     * @param rates rates of the devices' temperatures and of the mains; receives those of the tank
     */
    private double drift(
            double now, double rate, ToDoubleFunction<double[]> equilibrium, double[] y, Modes modes, double[] rates) {
        column.fill(rate, topBeyond, rates, vector.lowest);
        double step = probe.advance(y, rates);
        prepare(probe.state, modes);
        double drift = (equilibrium.applyAsDouble(probe.state) - now) / step;
        prepare(y, modes);
        return drift;
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
        topBeyond = 0;
        int passes = 0;
        do {
            TankColumn.Linear inflow = column.inflow(flows.topFlow(), 0, pressureRate, cold.enthalpy());
            stiffness = branchStiffness + inflow.byPressure;
            double surplus = feed - flows.branchFlow() - branchSource - inflow.at(0, 0);
            pressureRate = surplus / stiffness;
            passes++;
        } while (!column.agrees(pressureRate, 0) && passes < MAX_PASSES);
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
        // where nothing responds to pressure any more, the run is about to leave this rule and must not diverge
        // meanwhile
        double slope = response.slope();
        double steep = Math.max(slope, stiffness / PressureResponse.SLOW);
        // gas that expands with the mains cools as fast as it is warmed again, and its expansion goes on as it is
        double withMains = flows.slope(Outlet.SUPPLY) * conditions.mainsRate() / steep;
        fillTemperatures(y, modes, withMains, rates);
        double drift = drift(now, withMains, ahead -> excess(0), y, modes, rates);
        double follows = withMains + drift / steep;
        pressureRate = follows + (now - stiffness * follows) / steep / RETURN_TIME;
        double passed = excess(pressureRate);
        beyond = slope > 0 ? passed / slope : 0;
    }

    /**
     * Outflow (kg/s) beyond the flows by their curves for a given rate of pressure (Pa/s). Valves on the tank take
     * their share of the slope.
     */
    private double excess(double rate) {
        double slope = response.slope();
        double topShare = slope > 0 ? flows.topSlope() / slope : 0;
        double excess = 0;
        int passes = 0;
        do {
            topBeyond = topShare * excess;
            TankColumn.Linear inflow = column.inflow(flows.topFlow(), topBeyond, rate, cold.enthalpy());
            stiffness = branchStiffness + inflow.byPressure;
            double missing = branchStiffness * rate + branchSource + flows.branchFlow() + inflow.at(rate, 0);
            excess = -missing / (1 - topShare + topShare * inflow.byRelief);
            passes++;
        } while (!column.agrees(rate, topShare * excess) && passes < MAX_PASSES);
        topBeyond = topShare * excess;
        return excess;
    }

    private void fill(double[] y, Modes modes, double[] rates) {
        double p = y[StateVector.PRESSURE];
        boolean outward = modes.of(plant.feed);
        double tankInflow = column.inflow().at(pressureRate, topBeyond);
        double drawFlow = flows.flow(Outlet.TAP);
        fillTemperatures(y, modes, pressureRate, rates);
        column.fill(pressureRate, topBeyond, rates, vector.lowest);
        rates[StateVector.PRESSURE] = pressureRate;
        rates[StateVector.MAINS] = conditions.mainsRate();
        rates[StateVector.COLD] = conditions.coldRate();
        // where the flow turns, it continues smoothly past zero, for the solver
        rates[StateVector.LET_IN] = outward ? 0 : fromMains();
        rates[StateVector.RETURNED] = outward ? -fromMains() : 0;
        rates[StateVector.DRAWN] = 0;
        rates[StateVector.LEAKED] = 0;
        // water no warmer than the feed delivers no heat to a tap
        rates[StateVector.DELIVERED] = delivered(drawFlow);
        rates[StateVector.HEAT_LOST] = column.lost();
        double port = (tankInflow > 0 ? cold.enthalpy() : column.bottomEnthalpy()) - referenceEnthalpy;
        rates[StateVector.CARRIED] = tankInflow * port
                - column.heatOut(overTop(), referenceEnthalpy)
                - (column.pipes().isEmpty() ? column.passingTop() : 0)
                - p * column.roomRate(pressureRate);
        flows.fill(beyond, rates);
    }

    /** Heat (W) above that of cold water that reaches the tap. */
    private double delivered(double drawFlow) {
        if (!column.pipes().isEmpty()) {
            return Math.max(0, column.pipes().tapHeat(cold.enthalpy()));
        }
        double leaving = column.passingTop() == 0 ? 0 : column.passingTop() / overTop();
        return drawFlow * Math.max(0, column.topEnthalpy() + leaving - cold.enthalpy());
    }

    /** Writes the rates of the devices' own temperatures, and 0 for whatever else they own. */
    private void fillTemperatures(double[] y, Modes modes, double rate, double[] rates) {
        Arrays.fill(rates, StateVector.OWN, vector.lowest, 0);
        for (Device<?> device : plant.warming) {
            device.fillRates(y, modes, rate, rates);
        }
    }

    /** Mass flow (kg/s) from the mains, through the supply or its leaking seat, as last evaluated; negative if back. */
    double fromMains() {
        return supplyFlow - flows.flow(Outlet.SUPPLY, beyond);
    }

    /** Mass flow (kg/s) from the supply as last evaluated; negative if water goes back. */
    double supplyFlow() {
        return supplyFlow;
    }

    /** Mass flow (kg/s) out of the top of the tank as last evaluated. */
    double overTop() {
        return flows.topFlow() + topBeyond;
    }

    /** Mass (kg) the whole system takes up per pascal, as last evaluated. */
    double stiffness() {
        return stiffness;
    }

    /** Mass flow (kg/s) through open relief valves as last evaluated. */
    double reliefFlow() {
        return flows.flow(Outlet.VALVE, beyond);
    }

    /** Mass flow (kg/s) through all relief valves, closed seats included, as last evaluated. */
    double discharged() {
        return reliefFlow() + seatLeakage();
    }

    /** Mass flow (kg/s) past the closed seats of relief valves as last evaluated. */
    double seatLeakage() {
        return flows.flow(Outlet.SEAT, beyond);
    }

    /** The water of the tank, as last evaluated. */
    TankColumn column() {
        return column;
    }

    /** Whether water can leave a closed system through a seat or a hole. */
    boolean leaks() {
        return leaky;
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
