package io.github.heatswell.simulation;

import io.github.heatswell.simulation.Schedule.Conditions;
import io.github.heatswell.water.LiquidWater;

/**
 * What the devices add to the balances of a state: water they hold in the cold branch, and water they pass by their
 * curves. The mass of the branch changes by {@code S dp/dt + s}, with its stiffness S and a source s due to temperature
 * changes of gas or cold water.
 *
 * <p>Working memory of one run, not thread-safe.
 */
final class Contributions {

    /** What lets water pass. */
    enum Outlet {
        /** A valve off its seat. */
        VALVE("a relief valve"),
        /** The leaking seat of a closed valve. */
        SEAT("a relief valve"),
        /** A hole. */
        HOLE("a leak"),
        /** The leaking seat of the closed supply, whose flow varies with the mains; negative as water comes in. */
        SUPPLY("the seat leakage of the supply"),
        /** A tap. */
        TAP("a tap");

        private static final Outlet[] ALL = values();

        final String label;

        Outlet(String label) {
            this.label = label;
        }
    }

    private final Device<?>[] devices;
    private final Device<?>[] active;
    private int activeCount;
    private Modes selectedFor;
    private Conditions conditions;

    private LiquidWater.State cold;
    private double topDensity;
    private double tapTemperature;
    private double tapDensity;

    private double volume;
    private double growth;
    private double inflow;
    private double branchFlow;
    private double topFlow;
    private double slope;
    private double topSlope;
    private final double[] flows = new double[Outlet.ALL.length];
    private final double[] slopes = new double[Outlet.ALL.length];

    private final int[] slots;
    private final double[] slotFlows;
    private final double[] slotSlopes;
    private int slotCount;

    Contributions(CompiledSystem plant) {
        devices = plant.devices;
        active = new Device<?>[devices.length];
        slots = new int[devices.length];
        slotFlows = new double[devices.length];
        slotSlopes = new double[devices.length];
    }

    /** Sets the boundary conditions from now on. */
    void under(Conditions now) {
        conditions = now;
        selectedFor = null;
        for (Device<?> device : devices) {
            device.under(now);
        }
    }

    /**
     * Collects the contributions to a state.
     *
     * @param y the state
     * @param modes the modes
     * @param coldWater the cold water, at the state's pressure
     * @param column the water of the tank, evaluated for the state
     */
    void prepare(double[] y, Modes modes, LiquidWater.State coldWater, TankColumn column) {
        if (selectedFor == null || !modes.sameDevices(selectedFor)) {
            select(modes);
        }
        cold = coldWater;
        topDensity = column.topDensity();
        tapTemperature = column.tapTemperature();
        tapDensity = column.tapDensity();
        clear();
        for (int i = 0; i < activeCount; i++) {
            active[i].contribute(y, modes, this);
        }
    }

    private void select(Modes modes) {
        selectedFor = modes;
        activeCount = 0;
        for (Device<?> device : devices) {
            if (device.contributes(modes, conditions)) {
                active[activeCount++] = device;
            }
        }
    }

    private void clear() {
        volume = 0;
        growth = 0;
        inflow = 0;
        branchFlow = 0;
        topFlow = 0;
        slope = 0;
        topSlope = 0;
        slotCount = 0;
        for (int i = 0; i < flows.length; i++) {
            flows[i] = 0;
            slopes[i] = 0;
        }
    }

    /** Density (kg/m3) of the water at a port. */
    double density(boolean onTank) {
        return onTank ? topDensity : cold.density();
    }

    /** Temperature (K) of the hot water at the tap. */
    double tapTemperature() {
        return tapTemperature;
    }

    /** Its density (kg/m3). */
    double tapDensity() {
        return tapDensity;
    }

    /**
     * Adds water held in the cold branch.
     *
     * @param held its volume (m3) if it were cold
     * @param byPressure how its room grows with pressure (m3/Pa)
     * @param byItself how its room grows at constant pressure (m3/s)
     */
    void store(double held, double byPressure, double byItself) {
        volume += held;
        growth += byPressure;
        inflow += byItself;
    }

    /**
     * Adds a flow out of the system by a device's curve. Each device has at most one.
     *
     * @param what what it passes
     * @param onTank whether it leaves the top of the tank; otherwise the cold branch
     * @param slot the slot of the state that counts it
     * @param flow the flow (kg/s)
     * @param byPressure how it grows with pressure (kg/s/Pa)
     */
    void pass(Outlet what, boolean onTank, int slot, double flow, double byPressure) {
        flows[what.ordinal()] += flow;
        slopes[what.ordinal()] += byPressure;
        slope += byPressure;
        if (onTank) {
            topFlow += flow;
            topSlope += byPressure;
        } else {
            branchFlow += flow;
        }
        if (slot >= 0) {
            slots[slotCount] = slot;
            slotFlows[slotCount] = flow;
            slotSlopes[slotCount] = byPressure;
            slotCount++;
        }
    }

    /** Mass (kg) the branch takes up per pascal. */
    double stiffness() {
        return cold.density() * (cold.compressibility() * volume + growth);
    }

    /** Mass (kg/s) the branch takes up at constant pressure. */
    double source() {
        return cold.density() * (inflow - cold.expansivity() * volume * conditions.coldRate());
    }

    /** Flow (kg/s) by the curves out of the branch, less what comes in through the supply's seat. */
    double branchFlow() {
        return branchFlow;
    }

    /** Flow (kg/s) by the curves out of the top of the tank, taps included. */
    double topFlow() {
        return topFlow;
    }

    /** How much more everything passes per pascal (kg/s/Pa). */
    double slope() {
        return slope;
    }

    /** The part of it (kg/s/Pa) at the top of the tank. */
    double topSlope() {
        return topSlope;
    }

    /** Flow (kg/s) by the curves through all outlets of a kind. */
    double flow(Outlet what) {
        return flows[what.ordinal()];
    }

    /** Its slope (kg/s/Pa). */
    double slope(Outlet what) {
        return slopes[what.ordinal()];
    }

    /** Flow (kg/s) through all outlets of a kind at a pressure this much (Pa) higher, along their slopes. */
    double flow(Outlet what, double beyond) {
        return flows[what.ordinal()] + beyond * slopes[what.ordinal()];
    }

    /**
     * Writes what each device discharges (kg/s).
     *
     * @param beyond pressure (Pa) that the flows are ahead of it, along the slopes of their curves
     * @param rates the rates of change of the state, 0 so far for everything discharged
     */
    void fill(double beyond, double[] rates) {
        for (int i = 0; i < slotCount; i++) {
            rates[slots[i]] += slotFlows[i] + beyond * slotSlopes[i];
        }
    }

    /** Name of the part that responds most steeply to pressure. */
    String steepest() {
        double valves = slope(Outlet.VALVE) + slope(Outlet.SEAT);
        double supply = slope(Outlet.SUPPLY);
        double holes = slope(Outlet.HOLE);
        if (supply > 0 && supply >= Math.max(valves, holes)) {
            return Outlet.SUPPLY.label;
        }
        return valves >= holes ? Outlet.VALVE.label : Outlet.HOLE.label;
    }
}
