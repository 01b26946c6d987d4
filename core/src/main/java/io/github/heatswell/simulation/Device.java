package io.github.heatswell.simulation;

import io.github.heatswell.result.Interval;
import io.github.heatswell.simulation.Schedule.Conditions;
import java.util.List;
import java.util.function.BiConsumer;

/**
 * A part of the installation with a behaviour of its own. It owns its slots of the {@link StateVector}, its mode, what
 * it adds to the balances in that mode ({@link #contribute}), how its own temperatures change, and the detectors of
 * what ends the mode. The engine knows devices only through this class, but for the heat sources and the supply, whose state
 * also decides the tank's heat and the {@link PressureRegime}.
 *
 * <p>A new device is
 *
 * <ul>
 *   <li>a subclass, which takes its slots from {@code StateVector.Slots} and overrides what it needs: {@code contribute} adds stored cold
 *       water or a flow by a curve to the {@code Contributions};
 *   <li>one line in {@code CompiledSystem}, where the description becomes devices: the order there decides which of two
 *       simultaneous events is taken first;
 *   <li>a description in {@code system}, and a channel in {@code Recorder} if its course is to be seen.
 * </ul>
 *
 * <p>It may hold cold water under the system's pressure, and pass water out of the cold branch or the top of the tank. A
 * {@code HotPipe} holds hot water beyond that top, on its way to the tap or round a loop: its balances, {@code HotPipes}, are solved with
 * those of the tank. What goes on inside the tank (layers, heat, the shell) belongs to {@code TankColumn}; what fixes the pressure
 * is a {@code PressureRegime}.
 *
 * <p>A device computes from state and mode and remembers nothing about either. So a mode holds whatever must outlast a
 * segment, such as when a burner went off.
 *
 * @param <M> its modes: an immutable value that changes between segments only
 */
abstract class Device<M> {

    /** Its place among the {@link Modes}. */
    final int place;

    Device(StateVector.Slots slots) {
        place = slots.device();
    }

    /** The mode of a device that neither calls, passes nor holds anything. */
    abstract M resting();

    /** The modes at the start of a run, for the state; so far, the device is at rest. */
    Modes atStart(Modes modes, double[] y) {
        return moved(modes, y);
    }

    /** The modes to which a state moves the device, by an event that falls due at once. */
    Modes moved(Modes modes, double[] y) {
        return modes;
    }

    /** The modes that a state brings about without any event, between two segments. */
    Modes adapted(Modes modes, double[] y) {
        return modes;
    }

    /**
     * The modes after an event of any device.
     *
     * @param before the modes so far
     * @param wanted the modes by the event
     * @param time when (s since the start of the run)
     */
    Modes permitted(Modes before, Modes wanted, double time) {
        return wanted;
    }

    /** When (s since the start of the run) the device next needs a new segment; infinite if no time is known. */
    double nextChange(Modes modes, double time) {
        return Double.POSITIVE_INFINITY;
    }

    /** Prepares for the boundary conditions of the next segment. */
    void under(Conditions now) {
        // most devices have none
    }

    /** Sets its own temperatures at the start of a run. */
    void start(double[] y) {
        // most devices have none
    }

    /** Hands over the phases under way at the start of a run, which no event begins, each with its device. */
    void addPhases(Modes modes, BiConsumer<Interval.Phase, String> to) {
        // most devices have none
    }

    /** Adds the detectors of what ends its mode. Of simultaneous events, the first in the list is taken. */
    void addDetectors(List<EventDetector> to, Segment now) {
        // a device may have one mode only
    }

    /** Whether the device adds anything to the balances of a segment; if not, it is not asked to. */
    boolean contributes(Modes modes, Conditions now) {
        return false;
    }

    /**
     * Adds stored water and flows. Called at every evaluation: allocates nothing, and has no discontinuity within a
     * mode.
     *
     * @param y the state
     * @param modes the modes
     * @param to takes the contributions, and gives the water at the ports
     */
    void contribute(double[] y, Modes modes, Contributions to) {
        // see contributes
    }

    /** Water (m3) it holds in the cold branch, as much as it would fill if it were cold. */
    double volume(double[] y, Modes modes) {
        return 0;
    }

    /** Roughly how far (m3/Pa) it gives to pressure, at its softest. */
    double compliance(double pressure) {
        return 0;
    }

    /** Whether it has a temperature of its own that changes. */
    boolean hasTemperature() {
        return false;
    }

    /** Writes the rates (K/s) of its own temperatures, with the rate of pressure (Pa/s). */
    void fillRates(double[] y, Modes modes, double pressureRate, double[] rates) {
        // see hasTemperature
    }

    /** Whether it is open to the outside because of its pressure or temperature. */
    boolean releases(M mode) {
        return false;
    }

    /** Whether water can pass a closed system's wall here: a seat that leaks, a hole. */
    boolean leaks() {
        return false;
    }

    /**
     * A segment about to begin.
     *
     * @param modes its modes
     * @param conditions its boundary conditions
     * @param start the state it starts from
     * @param time when (s since the start of the run)
     * @param balance the balance, which detectors of flows ask
     */
    record Segment(Modes modes, Conditions conditions, double[] start, double time, Balance balance) {}
}
