package io.github.heatswell.reference;

import java.util.List;

/**
 * Everything discrete about a system at a moment. The equations are smooth in one mode; {@link UnreducedSystem} says what
 * ends it and which mode follows.
 *
 * @param heating whether the heater is on
 * @param street which way water moves between street and branch
 * @param warming whether warm water leaves the tank; if not, cold water enters it
 * @param lifts what each relief valve does, in the order of the description
 * @param diaphragm where the vessel's diaphragm is
 * @param overworked whether the pressure is above the tank's working pressure, which changes nothing but is reported
 */
record Mode(
        boolean heating, Street street, boolean warming, List<Lift> lifts, Diaphragm diaphragm, boolean overworked) {

    /** Which way water moves between street and branch. */
    enum Street {
        /** No way: the check valve is closed. */
        SHUT,
        /** In from the street. */
        IN,
        /** Back to the street, where no check valve hinders it. */
        BACK
    }

    /** What a relief valve does. */
    enum Lift {
        /** On its seat. */
        CLOSED,
        /** Open, with a lift that follows the pressure. */
        PARTIAL,
        /** Open as far as it goes. */
        FULL
    }

    /** Where the diaphragm is. */
    enum Diaphragm {
        /** Pressed on its seat by the gas; also where there is no vessel. */
        SEATED,
        /** Free between seat and stop. */
        FLOATING,
        /** Stretched to its limit. */
        STOPPED
    }

    /** Copies the list. */
    Mode {
        lifts = List.copyOf(lifts);
    }

    Mode withHeating(boolean on) {
        return new Mode(on, street, warming, lifts, diaphragm, overworked);
    }

    Mode withStreet(Street way) {
        return new Mode(heating, way, warming, lifts, diaphragm, overworked);
    }

    Mode withWarming(boolean out) {
        return new Mode(heating, street, out, lifts, diaphragm, overworked);
    }

    Mode withLift(int valve, Lift lift) {
        Lift[] changed = lifts.toArray(Lift[]::new);
        changed[valve] = lift;
        return new Mode(heating, street, warming, List.of(changed), diaphragm, overworked);
    }

    Mode withDiaphragm(Diaphragm position) {
        return new Mode(heating, street, warming, lifts, position, overworked);
    }

    Mode withOverworked(boolean above) {
        return new Mode(heating, street, warming, lifts, diaphragm, above);
    }
}
