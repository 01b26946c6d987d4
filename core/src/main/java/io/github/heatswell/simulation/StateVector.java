package io.github.heatswell.simulation;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Layout of the solver's state array: pressure, what follows a timetable, the accumulated amounts (integrated with the
 * same error control as the rest), the slots that devices own, and last the temperatures of the layers.
 */
final class StateVector {

    /** Pressure (Pa, absolute) at the height of the tank's drain cock. */
    static final int PRESSURE = 0;
    /** Mains pressure (Pa, absolute), which follows its timetable. */
    static final int MAINS = 1;
    /** Cold water temperature (K), which follows the seasons. */
    static final int COLD = 2;
    /** Mass let in from the supply since the start (kg). */
    static final int LET_IN = 3;
    /** Mass returned to the mains since the start (kg). */
    static final int RETURNED = 4;
    /** Mass drawn from the tank since the start (kg). */
    static final int DRAWN = 5;
    /** Mass lost by leaks since the start (kg). */
    static final int LEAKED = 6;
    /** Heat delivered to the taps, above cold water, since the start (J). */
    static final int DELIVERED = 7;
    /** Heat lost to the room by the tank and by hot pipes since the start (J). */
    static final int HEAT_LOST = 8;
    /**
     * Energy carried into the tank water by flows, relative to the cold water of the start, minus the work done on its
     * shell, since the start (J).
     */
    static final int CARRIED = 9;
    /** The first slot that a device may own; they end before {@link #lowest}. */
    static final int OWN = 10;

    /** How thick the lowest of several layers is, in even layers (-); -1 where there is one. */
    final int phase;
    /** The temperature of the lowest layer (K); the others follow upwards. */
    final int lowest;
    /** The temperature of the highest layer (K). */
    final int highest;
    /** The length of the array. */
    final int length;

    private final int[] discharges;
    private final int[] temperatures;
    private final int[] energies;

    StateVector(Slots slots, int layers) {
        phase = layers > 1 ? slots.next() : -1;
        lowest = slots.next() + (layers > 1 ? 1 : 0);
        highest = lowest + layers - 1;
        length = highest + 1;
        discharges = taken(slots.discharges);
        temperatures = taken(slots.temperatures);
        energies = taken(slots.energies);
    }

    private static int[] taken(List<Integer> of) {
        int[] slots = new int[of.size()];
        for (int i = 0; i < slots.length; i++) {
            slots[i] = of.get(i);
        }
        return slots;
    }

    /** Hands out the slots of a system's devices, in the order of their construction. */
    static final class Slots {

        private final List<Integer> discharges = new ArrayList<>();
        private final List<Integer> temperatures = new ArrayList<>();
        private final List<Integer> energies = new ArrayList<>();
        private int devices;

        /** The place of a device among the {@link Modes}. */
        int device() {
            return devices++;
        }

        /** A slot for the mass that a device has discharged since the start (kg). */
        int discharge() {
            return taken(discharges);
        }

        /** A slot for a temperature of a device's own (K). */
        int temperature() {
            return taken(temperatures);
        }

        /** A slot for an energy that a device has counted since the start (J). */
        int energy() {
            return taken(energies);
        }

        private int taken(List<Integer> of) {
            int slot = next();
            of.add(slot);
            return slot;
        }

        private int next() {
            return OWN + discharges.size() + temperatures.size() + energies.size();
        }
    }

    /** Which components are running totals. */
    boolean[] totals() {
        boolean[] totals = new boolean[length];
        Arrays.fill(totals, LET_IN, OWN, true);
        for (int slot : discharges) {
            totals[slot] = true;
        }
        for (int slot : energies) {
            totals[slot] = true;
        }
        return totals;
    }

    /** Sets a value for each temperature of a device. */
    void setTemperatures(double[] into, double value) {
        for (int slot : temperatures) {
            into[slot] = value;
        }
    }

    /** Sets a value for each energy that a device counts. */
    void setEnergies(double[] into, double value) {
        for (int slot : energies) {
            into[slot] = value;
        }
    }

    /** Temperature (K) of the highest layer of a state, which stands last. */
    static double top(double[] y) {
        return y[y.length - 1];
    }

    /** Mean temperature (K) of the tank's layers. */
    double mean(double[] y) {
        double sum = phase < 0 ? 0 : (y[phase] - 1) * (y[lowest] - y[highest]);
        for (int i = lowest; i <= highest; i++) {
            sum += y[i];
        }
        return sum / (highest - lowest + 1);
    }

    /** Mass (kg) that devices have discharged, drawn water and leaks apart. */
    double relieved(double[] y) {
        double sum = 0;
        for (int slot : discharges) {
            sum += y[slot];
        }
        return sum;
    }

    /** Adds a time (s) at given rates to everything that devices have discharged. */
    void discharge(double[] y, double seconds, double[] rates) {
        for (int slot : discharges) {
            y[slot] += seconds * rates[slot];
        }
    }
}
