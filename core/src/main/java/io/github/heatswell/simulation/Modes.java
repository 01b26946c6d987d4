package io.github.heatswell.simulation;

import java.util.Arrays;

/**
 * Everything that is either one way or the other while the equations are integrated: changed only between two segments of
 * the integration, never inside one.
 */
final class Modes {

    /** What fixes the pressure. */
    enum PressureRule {
        /** The supply holds it; the flow from the supply follows from the balance. */
        HELD,
        /** It follows from the balance of mass, valve flow included. */
        FREE,
        /**
         * It follows the slow equilibrium between an open valve and the growth of the water; the valve's flow follows
         * from the balance.
         */
        SETTLED
    }

    /** Where the diaphragm of the vessel is. */
    enum Diaphragm {
        /** There is no vessel. */
        ABSENT,
        /** On its seat: the vessel holds no water. */
        SEATED,
        /** Between seat and limit: gas and water at one pressure. */
        FLOATING,
        /** At its limit: the vessel takes no more water. */
        BOTTOMED_OUT
    }

    final boolean heaterOn;
    final PressureRule rule;
    final Diaphragm diaphragm;
    private final boolean[] valveOpen;

    private Modes(boolean heaterOn, PressureRule rule, Diaphragm diaphragm, boolean[] valveOpen) {
        this.heaterOn = heaterOn;
        this.rule = rule;
        this.diaphragm = diaphragm;
        this.valveOpen = valveOpen;
    }

    /** Heater off, all valves closed, pressure free. */
    static Modes resting(int valves) {
        return new Modes(false, PressureRule.FREE, Diaphragm.ABSENT, new boolean[valves]);
    }

    boolean valveOpen(int index) {
        return valveOpen[index];
    }

    boolean anyValveOpen() {
        for (boolean open : valveOpen) {
            if (open) {
                return true;
            }
        }
        return false;
    }

    Modes withHeater(boolean on) {
        return new Modes(on, rule, diaphragm, valveOpen);
    }

    Modes withRule(PressureRule value) {
        return new Modes(heaterOn, value, diaphragm, valveOpen);
    }

    Modes withDiaphragm(Diaphragm value) {
        return new Modes(heaterOn, rule, value, valveOpen);
    }

    Modes withValve(int index, boolean open) {
        boolean[] changed = Arrays.copyOf(valveOpen, valveOpen.length);
        changed[index] = open;
        return new Modes(heaterOn, rule, diaphragm, changed);
    }
}
