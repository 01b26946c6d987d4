package io.github.heatswell.simulation;

/**
 * Where each quantity stands in the array the solver advances: pressure, tank temperature, gas temperature, and then the
 * accumulated amounts, which are integrated with the same error control as the rest.
 */
final class StateVector {

    /** Pressure (Pa, absolute). */
    static final int PRESSURE = 0;
    /** Tank water temperature (K). */
    static final int TANK = 1;
    /** Vessel gas temperature (K); constant for isothermal gas. */
    static final int GAS = 2;
    /** Mass let in from the supply since the start (kg). */
    static final int LET_IN = 3;
    /** Mass returned to the street since the start (kg). */
    static final int RETURNED = 4;
    /** Standing loss since the start (J). */
    static final int HEAT_LOST = 5;
    /**
     * Energy carried into the tank water by flows, relative to cold water, less the work its shell took up, since the
     * start (J).
     */
    static final int CARRIED = 6;
    /** Mass given off by the first relief valve since the start (kg); the others follow. */
    static final int RELIEVED = 7;

    private StateVector() {}

    /** The length of the array for a number of valves. */
    static int length(int valves) {
        return RELIEVED + valves;
    }
}
