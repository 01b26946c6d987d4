package io.github.heatswell.simulation;

import java.util.Arrays;

/**
 * Relief flows by the valves' curves, separately for the cold branch and the tank top, and for open valves and leaking
 * closed seats.
 *
 * <p>Working memory of one run, not thread-safe.
 */
final class ReliefFlows {

    private final CompiledSystem plant;
    private double coldDensity;
    private double topDensity;
    private double onBranch;
    private double onTop;
    private double slope;
    private double seatLeakageSlope;
    private double topSlope;
    private double branchSeatLeakage;
    private double topSeatLeakage;
    private boolean quiet;

    ReliefFlows(CompiledSystem plant) {
        this.plant = plant;
    }

    /**
     * Works out the flows.
     *
     * @param p pressure (Pa, absolute)
     * @param modes the modes
     * @param cold density of what a valve on the branch discharges (kg/m3)
     * @param top density of what a valve on the tank discharges (kg/m3)
     */
    void prepare(double p, Modes modes, double cold, double top) {
        coldDensity = cold;
        topDensity = top;
        onBranch = 0;
        onTop = 0;
        slope = 0;
        seatLeakageSlope = 0;
        topSlope = 0;
        branchSeatLeakage = 0;
        topSeatLeakage = 0;
        quiet = !plant.anySeatLeaks && !modes.anyValveOpen();
        if (quiet) {
            return;
        }
        for (int i = 0; i < plant.valves.length; i++) {
            Valve valve = plant.valves[i];
            boolean open = modes.lift(i).isOpen();
            double flow = flow(i, p, modes);
            onBranch += open && !valve.onTank ? flow : 0;
            onTop += open && valve.onTank ? flow : 0;
            branchSeatLeakage += !open && !valve.onTank ? flow : 0;
            topSeatLeakage += !open && valve.onTank ? flow : 0;
            double steep = steepness(i, p, modes);
            slope += open ? steep : 0;
            seatLeakageSlope += open ? 0 : steep;
            topSlope += valve.onTank ? steep : 0;
        }
    }

    private double steepness(int index, double p, Modes modes) {
        Valve valve = plant.valves[index];
        Valve.Lift lift = modes.lift(index);
        return density(valve) * (lift.isOpen() ? valve.flowSlope(p, lift) : valve.seatLeakageSlope(lift));
    }

    private double flow(int index, double p, Modes modes) {
        Valve valve = plant.valves[index];
        return density(valve) * valve.flow(p, modes.lift(index));
    }

    private double density(Valve valve) {
        return valve.onTank ? topDensity : coldDensity;
    }

    /** Flow of open valves on the branch (kg/s). */
    double onBranch() {
        return onBranch;
    }

    /** Flow of open valves on the tank (kg/s). */
    double onTop() {
        return onTop;
    }

    /** Flow of all open valves (kg/s). */
    double open() {
        return onBranch + onTop;
    }

    /** Its slope with pressure (kg/s/Pa). */
    double slope() {
        return slope;
    }

    /** Slope of the seat leakage with pressure (kg/s/Pa). */
    double seatLeakageSlope() {
        return seatLeakageSlope;
    }

    /** Slope of the total flow of valves on the tank with pressure (kg/s/Pa). */
    double topSlope() {
        return topSlope;
    }

    /** Seat leakage on the branch (kg/s). */
    double branchSeatLeakage() {
        return branchSeatLeakage;
    }

    /** Seat leakage on the tank (kg/s). */
    double topSeatLeakage() {
        return topSeatLeakage;
    }

    /**
     * Writes what each valve discharges (kg/s).
     *
     * @param p pressure (Pa, absolute)
     * @param modes the modes
     * @param beyond pressure (Pa) that the flows are ahead of it, along the slopes of their curves
     * @param rates the rates of change of the state
     */
    void fill(double p, Modes modes, double beyond, double[] rates) {
        if (quiet) {
            Arrays.fill(rates, StateVector.RELIEVED, StateVector.RELIEVED + plant.valves.length, 0);
            return;
        }
        for (int i = 0; i < plant.valves.length; i++) {
            double ahead = beyond == 0 ? 0 : beyond * steepness(i, p, modes);
            rates[StateVector.RELIEVED + i] = flow(i, p, modes) + ahead;
        }
    }
}
