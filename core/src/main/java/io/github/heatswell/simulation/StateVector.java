package io.github.heatswell.simulation;

/**
 * Layout of the solver's state array: pressure, gas temperature, what follows a timetable, the accumulated amounts
 * (integrated with the same error control as the rest), and last the temperatures of the layers.
 */
final class StateVector {

    /** Pressure (Pa, absolute) at the height of the tank's drain cock. */
    static final int PRESSURE = 0;
    /** Vessel gas temperature (K); constant for isothermal gas. */
    static final int GAS = 1;
    /** Mains pressure (Pa, absolute), which follows its timetable. */
    static final int MAINS = 2;
    /** Cold water temperature (K), which follows the seasons. */
    static final int COLD = 3;
    /** Mass let in from the supply since the start (kg). */
    static final int LET_IN = 4;
    /** Mass returned to the mains since the start (kg). */
    static final int RETURNED = 5;
    /** Mass drawn from the tank since the start (kg). */
    static final int DRAWN = 6;
    /** Mass lost by leaks since the start (kg). */
    static final int LEAKED = 7;
    /** Heat delivered to the taps, above cold water, since the start (J). */
    static final int DELIVERED = 8;
    /** Standing loss since the start (J). */
    static final int HEAT_LOST = 9;
    /**
     * Energy carried into the tank water by flows, relative to the cold water of the start, minus the work done on its
     * shell, since the start (J).
     */
    static final int CARRIED = 10;
    /** Mass discharged by the first relief valve since the start (kg); the others follow. */
    static final int RELIEVED = 11;

    /** The temperature of the lowest layer (K); the others follow upwards. */
    final int lowest;
    /** The temperature of the highest layer (K). */
    final int highest;
    /** The length of the array. */
    final int length;

    StateVector(CompiledSystem plant) {
        lowest = RELIEVED + plant.valves.length;
        highest = lowest + plant.layers - 1;
        length = highest + 1;
    }

    /** Mean temperature (K) of the tank's layers, which have equal volumes. */
    double mean(double[] y) {
        double sum = 0;
        for (int i = lowest; i <= highest; i++) {
            sum += y[i];
        }
        return sum / (highest - lowest + 1);
    }

    /** Mass (kg) all relief valves have discharged. */
    double relieved(double[] y) {
        double sum = 0;
        for (int i = RELIEVED; i < lowest; i++) {
            sum += y[i];
        }
        return sum;
    }
}
