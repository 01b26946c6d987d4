package io.github.heatswell.reference;

import java.util.List;

/**
 * Everything discrete about a system at a moment. The equations are smooth in one mode; {@link UnreducedSystem} says what
 * ends it and which mode follows.
 *
 * @param heating whether the heater is on
 * @param mains which way water moves between mains and branch
 * @param warming whether warm water leaves the tank for the branch; if not, cold water enters it
 * @param rising for each boundary between layers, from below, whether water rises through it; a bit each
 * @param lifts what each relief valve does, in the order of the description
 * @param diaphragms where the vessels' diaphragms are
 * @param overworked whether the pressure is above the tank's working pressure, which changes nothing but is reported
 * @param day how far the day has got
 * @param stack what the boundaries between layers do
 */
record Mode(
        boolean heating,
        Mains mains,
        boolean warming,
        int rising,
        List<Lift> lifts,
        List<Diaphragm> diaphragms,
        boolean overworked,
        Day day,
        Stack stack) {

    /** Which way water moves between mains and branch. */
    enum Mains {
        /** No way: the check valve is closed. Its seat may still leak. */
        SHUT,
        /** In from the mains. */
        IN,
        /** Back to the mains, where no check valve hinders it or a bypass is open. */
        BACK
    }

    /** What a relief valve does. */
    enum Lift {
        /** On its seat. */
        CLOSED,
        /** Open, with a lift that follows the pressure. */
        PARTIAL,
        /** Open as far as it goes. */
        FULL,
        /** Open as far as it goes because the water is hot. */
        HOT
    }

    /** Where the diaphragm is. */
    enum Diaphragm {
        /** Pressed on its seat by the gas. */
        SEATED,
        /** Free between seat and stop. */
        FLOATING,
        /** Stretched to its limit. */
        STOPPED
    }

    /**
     * What the clock and the people in the house have brought about.
     *
     * @param next the place in the {@link Agenda} of what comes next
     * @param tap the place in the agenda of the draw that runs, or -1
     * @param mixing whether cold water is mixed in at the tap
     * @param cutOff whether the supply is shut off
     * @param pumping whether the pump of a circulation loop runs
     */
    record Day(int next, int tap, boolean mixing, boolean cutOff, boolean pumping) {
        Day advanced() {
            return new Day(next + 1, tap, mixing, cutOff, pumping);
        }

        Day withTap(int entry) {
            return new Day(next, entry, mixing, cutOff, pumping);
        }

        Day withMixing(boolean mixed) {
            return new Day(next, tap, mixed, cutOff, pumping);
        }

        Day withPumping(boolean runs) {
            return new Day(next, tap, mixing, cutOff, runs);
        }

        Day withCutOff(boolean shut) {
            return new Day(next, tap, mixing, shut, pumping);
        }
    }

    /** Copies the lists. */
    Mode {
        diaphragms = List.copyOf(diaphragms);
        lifts = List.copyOf(lifts);
    }

    /**
     * What the boundaries between layers do.
     *
     * @param moving whether they move with the water that the tap takes
     * @param raised whether the middle of an even part of the tank stands in the layer above that of its number
     */
    record Stack(boolean moving, boolean raised) {
        static final Stack STILL = new Stack(false, false);
    }

    Mode withStack(Stack changed) {
        return new Mode(heating, mains, warming, rising, lifts, diaphragms, overworked, day, changed);
    }

    Mode withHeating(boolean on) {
        return new Mode(on, mains, warming, rising, lifts, diaphragms, overworked, day, stack);
    }

    Mode withMains(Mains way) {
        return new Mode(heating, way, warming, rising, lifts, diaphragms, overworked, day, stack);
    }

    Mode withWarming(boolean out) {
        return new Mode(heating, mains, out, rising, lifts, diaphragms, overworked, day, stack);
    }

    /** {@return whether water rises through a boundary between layers} */
    boolean rises(int boundary) {
        return (rising >> boundary & 1) == 1;
    }

    Mode withTurned(int boundary) {
        return new Mode(heating, mains, warming, rising ^ 1 << boundary, lifts, diaphragms, overworked, day, stack);
    }

    Mode withLift(int valve, Lift lift) {
        Lift[] changed = lifts.toArray(Lift[]::new);
        changed[valve] = lift;
        return new Mode(heating, mains, warming, rising, List.of(changed), diaphragms, overworked, day, stack);
    }

    Mode withDiaphragm(int vessel, Diaphragm position) {
        return new Mode(
                heating, mains, warming, rising, lifts, moved(diaphragms, vessel, position), overworked, day, stack);
    }

    /** {@return diaphragms of which one has moved} */
    static List<Diaphragm> moved(List<Diaphragm> diaphragms, int vessel, Diaphragm position) {
        Diaphragm[] changed = diaphragms.toArray(Diaphragm[]::new);
        changed[vessel] = position;
        return List.of(changed);
    }

    Mode withOverworked(boolean above) {
        return new Mode(heating, mains, warming, rising, lifts, diaphragms, above, day, stack);
    }

    Mode withDay(Day changed) {
        return new Mode(heating, mains, warming, rising, lifts, diaphragms, overworked, changed, stack);
    }
}
