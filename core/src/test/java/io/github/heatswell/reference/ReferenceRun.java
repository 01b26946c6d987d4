package io.github.heatswell.reference;

import io.github.heatswell.result.Event;
import java.util.ArrayList;
import java.util.List;

/**
 * What an integration of an {@link UnreducedSystem} found: samples at regular instants and at the end, events at their
 * located times, and the last state with all that crossed the boundary.
 */
final class ReferenceRun {

    /** A mode that ends this often without time passing is a defect of the equations. */
    private static final int MAX_CHANGES_AT_ONCE = 20;

    private final UnreducedSystem system;
    private final double tolerance;
    private final Stacking stacking;
    private final List<Sample> samples = new ArrayList<>();
    private final List<Event> events = new ArrayList<>();
    private double time;
    private double[] state;
    private Mode mode;
    private StiffIntegrator integrator;
    private long evaluations;
    private long steps;
    private boolean ended;
    private double highestPressure;

    private ReferenceRun(UnreducedSystem system, double tolerance) {
        this.system = system;
        this.tolerance = tolerance;
        stacking = new Stacking(system);
        state = system.start();
        mode = system.firstMode();
        integrator = integrator();
    }

    private StiffIntegrator integrator() {
        StiffIntegrator fresh = new StiffIntegrator(system.equations(mode), tolerance);
        fresh.showTo((y, t) -> look(y));
        return fresh;
    }

    private void look(double[] y) {
        highestPressure = Math.max(highestPressure, system.pressure(y, mode));
    }

    /**
     * One instant.
     *
     * @param time since the start (s)
     * @param pressure of the branch (Pa, absolute)
     * @param temperature of the tank's water (K)
     * @param vesselWater in the vessel (m3)
     */
    record Sample(double time, double pressure, double temperature, double vesselWater) {}

    /**
     * Integrates.
     *
     * @param system the equations
     * @param duration how long (s)
     * @param interval the distance of the samples (s)
     * @param tolerance the relative tolerance of a step (-)
     * @return what was found; shorter than asked for where a limit of the model was reached
     */
    static ReferenceRun of(UnreducedSystem system, double duration, double interval, double tolerance) {
        ReferenceRun run = new ReferenceRun(system, tolerance);
        run.look(run.state);
        run.sample();
        for (int i = 1; !run.ended && run.time < duration; i++) {
            run.advance(Math.min(i * interval, duration));
            run.sample();
        }
        run.close();
        return run;
    }

    private void advance(double end) {
        List<Transition> transitions = Transition.from(system, mode);
        int changes = 0;
        while (true) {
            List<Trigger> triggers =
                    transitions.stream().map(Transition::trigger).toList();
            StiffIntegrator.Arrival arrival = integrator.advance(time, state, end, triggers);
            changes = arrival.t() > time ? 0 : changes + 1;
            if (changes > MAX_CHANGES_AT_ONCE) {
                throw new ArithmeticException("the mode changes without end at " + time + " s: " + mode);
            }
            time = arrival.t();
            state = arrival.y();
            look(state);
            if (arrival.fired() < 0) {
                return;
            }
            Transition taken = transitions.get(arrival.fired());
            taken.kind().ifPresent(kind -> note(kind, taken));
            if (taken.next().isEmpty()) {
                ended = true;
                return;
            }
            close();
            Mode before = mode;
            mode = stacking.follow(before, taken.next().get(), state);
            integrator = integrator();
            transitions = Transition.from(system, mode);
        }
    }

    private void close() {
        evaluations += integrator.evaluations();
        steps += integrator.steps();
    }

    private void note(Event.Kind kind, Transition taken) {
        events.add(new Event(
                time, kind, taken.device(), system.pressure(state, mode), system.temperature(state), taken.cause()));
    }

    private void sample() {
        double p = system.pressure(state, mode);
        double water = system.branch().vesselWater(p, state[UnreducedSystem.ADIABAT], mode.diaphragms());
        samples.add(new Sample(time, p, system.temperature(state), water));
    }

    /** {@return the samples in the order of time, the first at 0, the last at the end} */
    List<Sample> samples() {
        return List.copyOf(samples);
    }

    /** {@return the last sample} */
    Sample last() {
        return samples.get(samples.size() - 1);
    }

    /** {@return the highest pressure of the branch (Pa, absolute) at the end of any step} */
    double highestPressure() {
        return highestPressure;
    }

    /** {@return what happened, in the order of time} */
    List<Event> events() {
        return List.copyOf(events);
    }

    /** {@return the times (s) at which something of a kind happened} */
    List<Double> times(Event.Kind kind) {
        return events.stream().filter(e -> e.kind() == kind).map(Event::time).toList();
    }

    /** {@return the state at the end, a new array; {@link UnreducedSystem} has the indices} */
    double[] state() {
        return state.clone();
    }

    /** {@return the mode at the end} */
    Mode mode() {
        return mode;
    }

    /** {@return the mass (kg) a relief valve gave off, by its place in the description} */
    double relieved(int valve) {
        return state[system.indexOfRelief(valve)];
    }

    /** {@return something added up over the run, in its own unit} */
    double total(UnreducedSystem.Integral what) {
        return state[system.indexOf(what)];
    }

    /** {@return the mass (kg) let in from the mains, without what went back} */
    double letIn() {
        return total(UnreducedSystem.Integral.LET_IN);
    }

    /** {@return the mass (kg) that went back to the mains} */
    double returned() {
        return total(UnreducedSystem.Integral.RETURNED);
    }

    /** {@return how often the equations were evaluated} */
    long evaluations() {
        return evaluations;
    }

    /** {@return how many steps were taken} */
    long steps() {
        return steps;
    }
}
