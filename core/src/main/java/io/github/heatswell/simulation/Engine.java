package io.github.heatswell.simulation;

import io.github.heatswell.result.Event;
import io.github.heatswell.result.Interval;
import io.github.heatswell.result.RunSummary;
import io.github.heatswell.result.Trace;
import io.github.heatswell.simulation.BalanceAudit.Inventory;
import io.github.heatswell.simulation.Device.Segment;
import io.github.heatswell.simulation.Recorder.SampleSink;
import io.github.heatswell.simulation.Schedule.Conditions;
import io.github.heatswell.system.Draw;
import io.github.heatswell.system.HotWaterSystem;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.function.DoubleConsumer;
import org.hipparchus.exception.MathRuntimeException;

/**
 * One run from start to end: a chain of segments with fixed modes and linear boundary conditions. Between segments, an
 * event or the schedule changes the modes, and the pressure rule is selected anew.
 */
final class Engine {

    /** A segment shorter than this (s) is not worth starting. */
    private static final double MIN_SEGMENT = 1e-6;
    /** This many mode changes at one instant mean that two rules contradict each other. */
    private static final int MAX_CHANGES_AT_ONCE = 500;
    /** After this many, a pressure that seems settled is integrated instead, */
    private static final int MAX_SETTLING_AT_ONCE = 50;
    /** for this many of its time constants; then it may have settled after all. */
    private static final double INTEGRATED_FOR = 1_000;

    private final HotWaterSystem system;
    private final double end;
    private final CompiledSystem plant;
    private final StateVector vector;
    private final Balance balance;
    private final EventDetectors watches;
    private final RegimeSelector chooser;
    private final Schedule schedule;
    private final SegmentSolver solver;
    private final Recorder recorder;
    private final BalanceAudit audit;
    private final Effort effort;
    private final Chatter chatter = new Chatter();
    private final StiffApproach approach;
    private final double[] rates;
    private final boolean underAir;
    private final Restacking stacking;

    private DoubleConsumer reached = now -> {};
    private double time;
    private double settledAt = Double.NaN;
    /** False at an instant where settling has just failed: pressure is then integrated. */
    private boolean maySettle = true;

    private double[] state;
    private Modes modes;
    private Modes reported;
    private Conditions conditions;
    private Draw draw;
    /** Whether it has just begun. */
    private boolean begun;

    private double drawEndsAt = Double.POSITIVE_INFINITY;
    private double drawEndsWith = Double.POSITIVE_INFINITY;
    private int drawsCutShort;
    private Optional<Schedule.Start> nextDraw;
    private Map<Interval.Phase, Set<String>> initially = Map.of();

    Engine(HotWaterSystem system, Trace.Grid planned, SampleSink sink, double relativeTolerance) {
        this(system, new CompiledSystem(system), planned, sink, relativeTolerance);
    }

    /** A run of a house as it has been compiled. */
    Engine(
            HotWaterSystem system,
            CompiledSystem compiled,
            Trace.Grid planned,
            SampleSink sink,
            double relativeTolerance) {
        this.system = system;
        end = planned.end();
        plant = compiled;
        vector = plant.vector;
        balance = new Balance(plant, plant.water);
        watches = new EventDetectors(plant, balance);
        chooser = new RegimeSelector(plant, balance);
        schedule = new Schedule(system);
        effort = new Effort(plant, balance);
        solver = new SegmentSolver(plant, balance, effort, relativeTolerance);
        recorder = new Recorder(plant, balance, planned.step(), sink);
        Inventory inventory = new Inventory(plant, plant.water);
        approach = new StiffApproach(vector, balance, inventory);
        rates = new double[vector.length];
        underAir = !plant.air().isEmpty();
        state = startState();
        modes = plant.atStart(state);
        reported = Modes.resting(plant);
        audit = new BalanceAudit(plant, inventory);
        stacking = new Restacking(plant, balance, audit);
        nextDraw = schedule.nextDraw(-MIN_SEGMENT);
    }

    private double[] startState() {
        double[] y = new double[vector.length];
        y[StateVector.PRESSURE] = plant.startPressure;
        y[StateVector.MAINS] = schedule.mains(0);
        y[StateVector.COLD] = schedule.cold(0);
        if (vector.phase >= 0) {
            y[vector.phase] = 1;
        }
        Arrays.fill(y, vector.lowest, vector.length, plant.startTemperature);
        for (Device<?> device : plant.devices) {
            device.start(y);
        }
        return y;
    }

    /** Tells the time (s) reached, as it goes on. */
    Engine telling(DoubleConsumer listener) {
        reached = listener;
        return this;
    }

    RunSummary run() {
        try {
            return toTheEnd();
        } catch (UndefinedCurveException undefined) {
            throw failure(undefined.getMessage(), undefined);
        }
    }

    private RunSummary toTheEnd() {
        applySchedule();
        audit.open(state, modes);
        choose(modes);
        boolean ended = false;
        int changesAtOnce = 0;
        while (!ended && end - time > MIN_SEGMENT) {
            if (Thread.currentThread().isInterrupted()) {
                throw new CancellationException(
                        "interrupted before the run was done, at " + time + " s of " + end + " s");
            }
            if (time == 0) {
                initially = phases();
            }
            double before = time;
            Optional<EventDetector> due = advance();
            audit.follow(state, modes, time - before);
            reached.accept(time);
            maySettle |= time > before;
            changesAtOnce = time > before ? 0 : changesAtOnce + 1;
            maySettle &= changesAtOnce < MAX_SETTLING_AT_ONCE;
            if (changesAtOnce > MAX_CHANGES_AT_ONCE) {
                throw failure(
                        "pressure rules alternate endlessly at one moment; set the devices that open or close at"
                                + " this pressure further apart, or use fewer of them",
                        null);
            }
            if (due.isPresent()) {
                ended = apply(due.get());
            } else if (time < end) {
                applySchedule();
                choose(modes);
            }
        }
        recorder.begin(time, state, modes, draw != null);
        recorder.end(time, state);
        return new RunSummary(
                system,
                time,
                recorder.events(),
                recorder.extremes(),
                audit.totals(state, recorder.events(), drawsCutShort),
                audit.audit(state, modes),
                solver.numerics(),
                initially);
    }

    /** Phases already under way at the start, which have no starting event. */
    private Map<Interval.Phase, Set<String>> phases() {
        Map<Interval.Phase, Set<String>> phases = new EnumMap<>(Interval.Phase.class);
        if (feeds(modes.rule)) {
            phases.put(Interval.Phase.SUPPLY_FEEDING, Set.of(""));
        } else if (returns(modes.rule)) {
            phases.put(Interval.Phase.BYPASS_OPEN, Set.of(""));
        }
        for (Device<?> device : plant.devices) {
            device.addPhases(
                    modes,
                    (phase, name) -> phases.computeIfAbsent(phase, any -> new HashSet<>())
                            .add(name));
        }
        return phases;
    }

    /** Integrates to the next event or scheduled change; returns the event, if any. */
    private Optional<EventDetector> advance() {
        recorder.begin(time, state, modes, draw != null);
        balance.evaluate(state, modes, rates);
        List<EventDetector> now = watches.during(new Segment(modes, conditions, state, time, balance), drawEndsWith);
        if (!maySettle) {
            now.removeIf(EventDetector::settles);
        } else if (modes.rule == PressureRegime.FILLING && plant.feed.droop > 0) {
            double drawn = state[StateVector.DRAWN];
            state = approach.from(state, modes, now);
            shortenDraw(state[StateVector.DRAWN] - drawn);
            balance.evaluate(state, modes, rates);
        }
        for (EventDetector watch : now) {
            if (watch.distance().from(state) <= 0) {
                return Optional.of(watch);
            }
        }
        double until = Math.min(Math.min(end, conditions.until()), plant.nextChange(modes, time));
        if (!maySettle) {
            until = Math.min(until, time + INTEGRATED_FOR * balance.response().settlingTime());
        }
        if (until - time <= MIN_SEGMENT) {
            time = until;
            return Optional.empty();
        }
        solver.at(time, drawEndsIn());
        try {
            SegmentSolver.Outcome outcome = solver.advance(state, modes, now, until - time, recorder::step);
            state = outcome.state();
            if (solver.tookTooMuch()) {
                time += outcome.elapsed();
                throw failure(
                        effort.explain(recorder.events(), solver.numerics().steps(), time), null);
            }
            time = outcome.due().isPresent() ? time + outcome.elapsed() : until;
            return outcome.due();
        } catch (ArithmeticException | MathRuntimeException | IllegalArgumentException stopped) {
            throw failure(effort.explain(stopped), stopped);
        }
    }

    /** When (s from now) a draw ends that ends by the heat it delivers, at the rate of now. */
    private double drawEndsIn() {
        double rate = rates[StateVector.DELIVERED];
        return rate > 0 ? (drawEndsWith - state[StateVector.DELIVERED]) / rate : Double.POSITIVE_INFINITY;
    }

    private SimulationException failure(String message, Throwable cause) {
        return new SimulationException(message, time, state[StateVector.PRESSURE], vector.mean(state), cause);
    }

    /** Applies scheduled changes: a tap opened or closed, the supply shut off or opened, a new slope. */
    private void applySchedule() {
        if (draw != null && time >= drawEndsAt - MIN_SEGMENT) {
            closeTap();
        }
        if (nextDraw.isPresent() && time >= nextDraw.get().time() - MIN_SEGMENT) {
            if (draw != null) {
                // a draw of known volume ends on its own: descriptions whose next draw would begin earlier are refused
                drawsCutShort += draw.heat().isPresent() ? 1 : 0;
                closeTap();
            }
            openTap(nextDraw.get());
            nextDraw = schedule.nextDraw(time + MIN_SEGMENT);
        }
        boolean wasOpen = conditions == null || conditions.supplyOpen();
        world();
        if (wasOpen != conditions.supplyOpen()) {
            recorder.event(time, wasOpen ? Event.Kind.SUPPLY_SHUT_OFF : Event.Kind.SUPPLY_RESTORED, "", state);
        }
        state[StateVector.MAINS] = schedule.mains(time);
        state[StateVector.COLD] = schedule.cold(time);
    }

    private void world() {
        conditions = schedule.from(time + MIN_SEGMENT, draw, drawEndsAt);
        balance.under(conditions);
    }

    private void openTap(Schedule.Start start) {
        draw = start.draw();
        begun = true;
        drawEndsAt = draw.volume().isPresent()
                ? start.time() + draw.volume().getAsDouble() / draw.flow()
                : Double.POSITIVE_INFINITY;
        drawEndsWith = draw.heat().isPresent()
                ? state[StateVector.DELIVERED] + draw.heat().getAsDouble()
                : Double.POSITIVE_INFINITY;
        recorder.event(time, Event.Kind.DRAW_STARTED, "", state);
    }

    /** A draw of known volume ends the earlier by what it took at once (kg). */
    private void shortenDraw(double taken) {
        if (taken > 0 && drawEndsAt < Double.POSITIVE_INFINITY) {
            drawEndsAt = Math.max(time, drawEndsAt - taken / rates[StateVector.DRAWN]);
            world();
        }
    }

    private void closeTap() {
        draw = null;
        drawEndsAt = Double.POSITIVE_INFINITY;
        drawEndsWith = Double.POSITIVE_INFINITY;
        recorder.event(time, Event.Kind.DRAW_ENDED, "", state);
    }

    /** Applies the modes after an event; returns whether the run ends there. */
    private boolean apply(EventDetector due) {
        Event.Kind kind = due.kind();
        if (kind == Event.Kind.DRAW_ENDED) {
            closeTap();
            world();
        } else if (kind != null) {
            recorder.event(time, due, state);
            if (kind == Event.Kind.RELIEF_OPENED && chatter.seen(time, due.device(), fedAboveReseat(due.device()))) {
                recorder.event(time, Event.Kind.RELIEF_CHATTERS, due.device(), state);
                return true;
            }
            if (kind.endsRun()) {
                return true;
            }
        }
        if (due.after() == plant.feed.turn) {
            modes = due.after().apply(modes);
            return false;
        }
        Modes after = plant.permitted(modes, due.after().apply(modes), time);
        if (modes.rule == PressureRegime.FREE && after.rule == PressureRegime.SETTLED) {
            modes = after;
            settledAt = time;
        } else {
            maySettle &= modes.rule != PressureRegime.SETTLED || time > settledAt;
            choose(after);
        }
        return false;
    }

    private boolean fedAboveReseat(String valve) {
        double standing = plant.feed.standing(state[StateVector.MAINS]);
        return conditions.supplyOpen()
                && Arrays.stream(plant.valves).anyMatch(v -> v.name.equals(valve) && v.reseatPressure < standing);
    }

    /** Selects the modes that follow from the state, and reports the changes an owner would notice. */
    private void choose(Modes candidate) {
        Modes before = modes;
        Modes wanted = stacking.follow(candidate, state, draw != null, begun);
        begun = false;
        double pressure = stacking.pressure();
        double top = state[vector.highest];
        double water = underAir ? audit.tankWater(state, modes) : 0;
        modes = chooser.choose(wanted, conditions, state, maySettle);
        if (underAir && state[vector.highest] != top) {
            pressure = audit.giveBack(state, modes, water, pressure, balance);
        }
        if (state[StateVector.PRESSURE] != pressure) {
            audit.adjust(state, modes, plant.moved(modes, state), pressure);
        }
        reportSupply(before.rule, modes.rule);
        reportHeater();
    }

    private void reportHeater() {
        for (int i = 0; i < plant.heat.count(); i++) {
            boolean on = plant.heat.isOn(i, modes);
            if (on != plant.heat.isOn(i, reported)) {
                Event.Kind kind = on ? Event.Kind.HEATER_ON : Event.Kind.HEATER_OFF;
                recorder.event(time, kind, plant.heat.get(i).name, state);
            }
        }
        reported = modes;
    }

    private void reportSupply(PressureRegime before, PressureRegime after) {
        if (time == 0) {
            return;
        }
        boolean feeds = feeds(after);
        if (feeds(before) != feeds && (feeds || conditions.supplyOpen())) {
            recorder.event(time, feeds ? Event.Kind.SUPPLY_OPENED : Event.Kind.SUPPLY_CLOSED, "", state);
        }
        boolean returns = returns(after);
        if (returns(before) != returns) {
            recorder.event(time, returns ? Event.Kind.BYPASS_OPENED : Event.Kind.BYPASS_CLOSED, "", state);
        }
    }

    private boolean feeds(PressureRegime rule) {
        return rule == PressureRegime.HELD || rule == PressureRegime.FILLING && !fillsDownwards();
    }

    private boolean returns(PressureRegime rule) {
        return rule == PressureRegime.RETURNING || rule == PressureRegime.FILLING && fillsDownwards();
    }

    /** Above the bypass pressure, flow reverses. */
    private boolean fillsDownwards() {
        return plant.feed.returns(state[StateVector.PRESSURE], state[StateVector.MAINS]);
    }
}
