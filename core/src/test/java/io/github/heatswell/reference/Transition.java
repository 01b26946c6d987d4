package io.github.heatswell.reference;

import io.github.heatswell.result.Event;
import io.github.heatswell.system.Heater;
import io.github.heatswell.system.Tank;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * One way to leave a mode.
 *
 * @param kind what to report, or empty for a mere kink of the equations
 * @param device the relief valve, the vessel where there are several, or empty
 * @param cause the cause of a relief valve's opening, empty for all other events
 * @param trigger above zero once the mode is left
 * @param next the mode that follows, or empty if the run ends
 */
record Transition(
        Optional<Event.Kind> kind,
        String device,
        Optional<Event.OpeningCause> cause,
        Trigger trigger,
        Optional<Mode> next) {

    /**
     * Where one threshold serves both ways, the way back lies this much lower (Pa), so that rounding, a hundred
     * times smaller, cannot send the mode to and fro.
     */
    private static final double DEAD_BAND = 1e-4;

    /**
     * The same for the diaphragm, as a share of the water in the branch. Both sides of seat and stop agree about the
     * water, while a small pressure difference on the soft side would be a large one on the stiff side.
     */
    private static final double FILL_BAND = 1e-12;

    /**
     * The pressure difference (Pa) between tank and branch, or along a bypass, that must have turned to count, a few times its rounding.
     * With ample conductances the flow is then 1e-8 kg/s, and what it carries the wrong way until then is 2 mW.
     */
    private static final double TURNING = 1e-6;

    /** This close (Pa) to the pressure of the air an opening takes in air: where a run is said to end. */
    private static final double NO_WATER = 10;

    /** The temperatures (K) between which the properties of water hold. */
    private static final double COLDEST = 273.15;

    private static final double HOTTEST = 423.15;

    static Transition kink(Trigger trigger, Mode next) {
        return new Transition(Optional.empty(), "", Optional.empty(), trigger, Optional.of(next));
    }

    static Transition of(Event.Kind kind, Trigger trigger, Mode next) {
        return of(kind, "", trigger, next);
    }

    private static Transition of(Event.Kind kind, String device, Trigger trigger, Mode next) {
        return new Transition(Optional.of(kind), device, Optional.empty(), trigger, Optional.of(next));
    }

    /** {@return every way to leave a mode of a system} */
    static List<Transition> from(UnreducedSystem system, Mode mode) {
        List<Transition> list = new ArrayList<>();
        if (!system.description().heater().thermostatStuck()) {
            list.add(thermostat(system, mode));
        }
        if (!mode.day().cutOff()) {
            addMains(list, system, mode);
        }
        list.add(tankFlow(system, mode));
        for (int i = 0; i + 1 < system.column().waters(); i++) {
            list.add(layerFlow(system, mode, i));
        }
        for (int i = 0; i < system.reliefs().size(); i++) {
            if (system.reliefs().get(i).moves()) {
                addRelief(list, system, mode, i);
            }
        }
        if (mode.stack().moving()) {
            int phase = system.column().phaseIndex();
            double until = Stacking.until(mode);
            list.add(kink((t, y) -> y[phase] - until, mode));
        }
        DayTransitions.add(list, system, mode);
        for (int i = 0; i < system.branch().vessels().size(); i++) {
            addDiaphragm(list, system, mode, i);
        }
        addTank(list, system, mode);
        return list;
    }

    private static Transition thermostat(UnreducedSystem system, Mode mode) {
        Heater heater = system.description().heater();
        double off = heater.setPoint();
        double on = off - heater.differential();
        return mode.heating()
                ? of(
                        Event.Kind.HEATER_OFF,
                        (t, y) -> system.thermostatTemperature(y, mode) - off,
                        mode.withHeating(false))
                : of(
                        Event.Kind.HEATER_ON,
                        (t, y) -> on - system.thermostatTemperature(y, mode),
                        mode.withHeating(true));
    }

    private static void addMains(List<Transition> list, UnreducedSystem system, Mode mode) {
        MainsPort mains = system.mains();
        Trigger aboveFeed = (t, y) -> system.pressure(y, mode) - mains.feed(t);
        Trigger belowFeed = (t, y) -> -aboveFeed.value(t, y) - DEAD_BAND;
        // nothing comes in through a bypass: what would hold the pressure of a house that cools is less than the usual
        // band lets by
        Trigger aboveBack = (t, y) -> system.pressure(y, mode) - mains.back(t) - DEAD_BAND;
        Trigger belowBack = (t, y) -> mains.back(t) - system.pressure(y, mode) - TURNING;
        Mode in = mode.withMains(Mode.Mains.IN);
        Mode shut = mode.withMains(Mode.Mains.SHUT);
        Mode back = mode.withMains(Mode.Mains.BACK);
        switch (mode.mains()) {
            case IN -> list.add(mains.direct() ? kink(aboveFeed, back) : of(Event.Kind.SUPPLY_CLOSED, aboveFeed, shut));
            case BACK -> list.add(mains.direct() ? kink(belowFeed, in) : of(Event.Kind.BYPASS_CLOSED, belowBack, shut));
            case SHUT -> {
                list.add(of(Event.Kind.SUPPLY_OPENED, belowFeed, in));
                if (mains.hasBypass()) {
                    list.add(of(Event.Kind.BYPASS_OPENED, aboveBack, back));
                }
            }
        }
    }

    /** The enthalpy that crosses between tank and branch has a kink where the flow turns. */
    private static Transition tankFlow(UnreducedSystem system, Mode mode) {
        return mode.warming()
                ? kink((t, y) -> -system.tankExcess(y, mode) - TURNING, mode.withWarming(false))
                : kink((t, y) -> system.tankExcess(y, mode) - TURNING, mode.withWarming(true));
    }

    private static Transition layerFlow(UnreducedSystem system, Mode mode, int boundary) {
        double sign = mode.rises(boundary) ? -1 : 1;
        return kink(
                (t, y) -> {
                    system.column().settle(y);
                    return sign * system.column().excess(boundary, mode) - TURNING;
                },
                mode.withTurned(boundary));
    }

    private static void addRelief(List<Transition> list, UnreducedSystem system, Mode mode, int valve) {
        ReliefPort port = system.reliefs().get(valve);
        Mode.Lift lift = mode.lifts().get(valve);
        if (lift != Mode.Lift.HOT && port.opensAt() < Double.POSITIVE_INFINITY) {
            list.add(new Transition(
                    Optional.of(lift == Mode.Lift.CLOSED ? Event.Kind.RELIEF_OPENED : Event.Kind.RELIEF_OPENED_FULLY),
                    port.name(),
                    Optional.of(Event.OpeningCause.TEMPERATURE),
                    (t, y) -> system.topTemperature(y) - port.opensAt(),
                    Optional.of(mode.withLift(valve, Mode.Lift.HOT))));
        }
        if (lift == Mode.Lift.HOT) {
            list.add(cooled(system, mode, valve));
            return;
        }
        if (lift == Mode.Lift.CLOSED) {
            Mode opened = mode.withLift(valve, port.whenOpened());
            list.add(new Transition(
                    Optional.of(Event.Kind.RELIEF_OPENED),
                    port.name(),
                    Optional.of(Event.OpeningCause.PRESSURE),
                    (t, y) -> system.pressure(y, mode) - port.setPressure(),
                    Optional.of(opened)));
            return;
        }
        list.add(new Transition(
                Optional.of(Event.Kind.RELIEF_RESEATED),
                port.name(),
                Optional.empty(),
                (t, y) -> port.reseatPressure() - system.pressure(y, mode),
                Optional.of(mode.withLift(valve, Mode.Lift.CLOSED))));
        if (!port.snaps()) {
            list.add(fullLiftPressure(system, mode, valve));
        }
    }

    private static Transition cooled(UnreducedSystem system, Mode mode, int valve) {
        ReliefPort port = system.reliefs().get(valve);
        return new Transition(
                Optional.of(Event.Kind.RELIEF_RESEATED),
                port.name(),
                Optional.empty(),
                (t, y) -> Math.min(
                        port.reseatsAt() - system.topTemperature(y),
                        (port.setPressure() - system.pressure(y, mode)) / port.setPressure()),
                Optional.of(mode.withLift(valve, Mode.Lift.CLOSED)));
    }

    private static Transition fullLiftPressure(UnreducedSystem system, Mode mode, int valve) {
        double full = system.reliefs().get(valve).fullLiftPressure();
        boolean partial = mode.lifts().get(valve) == Mode.Lift.PARTIAL;
        Trigger trigger = partial
                ? (t, y) -> system.pressure(y, mode) - full
                : (t, y) -> full - DEAD_BAND - system.pressure(y, mode);
        return kink(trigger, mode.withLift(valve, partial ? Mode.Lift.FULL : Mode.Lift.PARTIAL));
    }

    private static void addDiaphragm(List<Transition> list, UnreducedSystem system, Mode mode, int vessel) {
        Trigger aboveSeat = (t, y) -> system.branch(y)
                .fillAboveSeat(y[UnreducedSystem.BRANCH_MASS], y[UnreducedSystem.ADIABAT], mode.diaphragms(), vessel);
        Trigger aboveStop = (t, y) -> system.branch(y)
                .fillAboveStop(y[UnreducedSystem.BRANCH_MASS], y[UnreducedSystem.ADIABAT], mode.diaphragms(), vessel);
        Mode floating = mode.withDiaphragm(vessel, Mode.Diaphragm.FLOATING);
        String name = system.branch().vessels().get(vessel).name();
        switch (mode.diaphragms().get(vessel)) {
            case SEATED -> list.add(of(Event.Kind.VESSEL_LIFTED, name, past(aboveSeat), floating));
            case STOPPED -> list.add(of(Event.Kind.VESSEL_FREED, name, before(aboveStop), floating));
            case FLOATING -> {
                Mode seated = mode.withDiaphragm(vessel, Mode.Diaphragm.SEATED);
                list.add(of(Event.Kind.VESSEL_SEATED, name, before(aboveSeat), seated));
                Mode stopped = mode.withDiaphragm(vessel, Mode.Diaphragm.STOPPED);
                list.add(of(Event.Kind.VESSEL_BOTTOMED_OUT, name, past(aboveStop), stopped));
            }
        }
    }

    private static Trigger past(Trigger fill) {
        return (t, y) -> fill.value(t, y) - FILL_BAND;
    }

    private static Trigger before(Trigger fill) {
        return (t, y) -> -fill.value(t, y) - FILL_BAND;
    }

    private static void addTank(List<Transition> list, UnreducedSystem system, Mode mode) {
        Tank tank = system.description().tank();
        double working = tank.workingPressure().absolute(system.air());
        double test = tank.testPressureAbsolute(system.air());
        // A relief valve set to the working pressure comes first: it keeps the pressure from exceeding it.
        Trigger aboveWorking = (t, y) -> system.pressure(y, mode) - working - DEAD_BAND;
        if (mode.overworked()) {
            list.add(kink((t, y) -> -aboveWorking.value(t, y) - 2 * DEAD_BAND, mode.withOverworked(false)));
        } else {
            list.add(of(Event.Kind.WORKING_PRESSURE_EXCEEDED, aboveWorking, mode.withOverworked(true)));
        }
        list.add(end(Event.Kind.WATER_OUT_OF_RANGE, (t, y) -> system.topTemperature(y) - HOTTEST));
        list.add(end(
                Event.Kind.WATER_FREEZES,
                (t, y) -> COLDEST - system.column().bottom().temperature()));
        list.add(end(Event.Kind.TEST_PRESSURE_REACHED, (t, y) -> system.pressure(y, mode) - test));
        list.add(end(
                Event.Kind.ATMOSPHERE_REACHED, (t, y) -> lowest(system, mode) + NO_WATER - system.pressure(y, mode)));
        list.add(end(Event.Kind.VAPOUR_FORMS, (t, y) -> -system.untilSteam(y, mode)));
    }

    /** The pressure (Pa, absolute) of the system at which it begins to take in air. */
    private static double lowest(UnreducedSystem system, Mode mode) {
        double lowest = system.air();
        for (int i = 0; i < system.reliefs().size(); i++) {
            ReliefPort port = system.reliefs().get(i);
            boolean open = port.stuckOpen() || mode.lifts().get(i) != Mode.Lift.CLOSED;
            lowest = open ? Math.max(lowest, port.air()) : lowest;
        }
        return lowest;
    }

    private static Transition end(Event.Kind kind, Trigger trigger) {
        return new Transition(Optional.of(kind), "", Optional.empty(), trigger, Optional.empty());
    }
}
