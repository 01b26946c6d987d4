package io.github.heatswell.simulation;

import io.github.heatswell.result.Event;
import io.github.heatswell.simulation.StateVector.Slots;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.PipeRun;
import java.util.List;

/**
 * The pipes that carry hot water, between the top of the tank and whatever takes it: a volume with a temperature of its own, a wall that
 * stretches under pressure and with heat, and a heat loss to the room. It begins as warm as the room. What goes on in it follows from
 * {@link HotPipes}; it has one mode.
 */
final class HotPipe extends Device<Boolean> {

    /** A millikelvin below the range of the water properties (K), as in the tank. */
    private static final double FREEZES = 273.149;

    /** The slot of its temperature (K). */
    final int temperature;
    /** Volume (m3) at the cold fill. */
    final double volume;
    /** How it grows with pressure (m3/Pa) */
    final double byPressure;
    /** and with temperature (m3/K). */
    final double byTemperature;
    /** Heat loss (W/K) to the room. */
    final double heatLoss;

    private final double room;

    /**
     * Several runs of pipe, taken as one.
     *
     * @param slots gives its slots
     * @param system the system
     * @param runs the runs of pipe, at least one
     */
    HotPipe(Slots slots, HotWaterSystem system, List<PipeRun> runs) {
        super(slots);
        temperature = slots.temperature();
        volume = runs.stream().mapToDouble(PipeRun::volume).sum();
        byPressure = runs.stream()
                .mapToDouble(run -> run.volume() * run.compliance())
                .sum();
        byTemperature = runs.stream()
                .mapToDouble(run -> 3 * run.material().linearExpansion() * run.volume())
                .sum();
        heatLoss = runs.stream().mapToDouble(PipeRun::heatLoss).sum();
        room = system.site().roomTemperature();
    }

    @Override
    Boolean resting() {
        return true;
    }

    @Override
    void start(double[] y) {
        y[temperature] = room;
    }

    @Override
    void addDetectors(List<EventDetector> to, Segment now) {
        to.add(EventDetector.of(Event.Kind.WATER_FREEZES, EventDetector.SAME, y -> y[temperature] - FREEZES));
    }
}
