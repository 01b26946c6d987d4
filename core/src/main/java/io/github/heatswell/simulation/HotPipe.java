package io.github.heatswell.simulation;

import io.github.heatswell.result.Event;
import io.github.heatswell.simulation.Schedule.Conditions;
import io.github.heatswell.simulation.StateVector.Slots;
import io.github.heatswell.system.Circulation;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.PipeRun;
import java.util.List;
import java.util.Optional;

/**
 * The pipes that carry hot water, between the top of the tank and whatever takes it: a volume with a temperature of its own, a wall that
 * stretches under pressure and with heat, and a heat loss to the room. It begins as warm as the room, or as the tank where a pump runs
 * at the start. What goes on in it follows from {@link HotPipes}; the timetable alone starts and stops the pump, so it has one mode.
 */
final class HotPipe extends Device<Boolean> {

    /** A millikelvin below the range of the water properties (K), as in the tank. */
    private static final double FREEZES = 273.149;
    /** How far water gives to pressure (1/Pa), roughly. */
    static final double WATER_GIVES = 5e-10;

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

    private final String name;
    private final double atStart;
    private final double pumped;
    private boolean running;

    /**
     * All runs of pipe that carry the same, taken as one.
     *
     * @param slots gives its slots
     * @param system the system
     * @param what what they carry: at least one does
     */
    HotPipe(Slots slots, HotWaterSystem system, PipeRun.Carries what) {
        super(slots);
        name = what == PipeRun.Carries.LOOP ? "circulation loop" : "hot branch";
        List<PipeRun> runs = system.piping(what);
        temperature = slots.temperature();
        volume = runs.stream().mapToDouble(PipeRun::volume).sum();
        byPressure = runs.stream()
                .mapToDouble(run -> run.volume() * run.compliance())
                .sum();
        byTemperature = runs.stream()
                .mapToDouble(run -> 3 * run.material().linearExpansion() * run.volume())
                .sum();
        heatLoss = runs.stream().mapToDouble(PipeRun::heatLoss).sum();
        Optional<Circulation> loop = what == PipeRun.Carries.LOOP ? system.circulation() : Optional.empty();
        pumped = loop.map(Circulation::flow).orElse(0.0);
        double room = system.site().roomTemperature();
        double tank = system.start().waterTemperature().orElse(system.coldAtStart());
        atStart = loop.filter(pump -> pump.runs(system.start().timeOfDay())).isPresent() ? tank : room;
    }

    /** Starts or stops the pump. */
    @Override
    void under(Conditions now) {
        running = now.pumping();
    }

    /** Flow (m3/s) of the pump, 0 while it rests. */
    double pumped() {
        return running ? pumped : 0;
    }

    @Override
    Boolean resting() {
        return true;
    }

    @Override
    void start(double[] y) {
        y[temperature] = atStart;
    }

    @Override
    double compliance(double pressure) {
        return byPressure + WATER_GIVES * volume;
    }

    @Override
    void addDetectors(List<EventDetector> to, Segment now) {
        to.add(EventDetector.of(Event.Kind.WATER_FREEZES, name, EventDetector.SAME, y -> y[temperature] - FREEZES));
    }
}
