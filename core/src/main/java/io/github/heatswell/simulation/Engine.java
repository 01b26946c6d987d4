package io.github.heatswell.simulation;

import io.github.heatswell.plant.HotWaterSystem;
import io.github.heatswell.result.Audit;
import io.github.heatswell.result.EventKind;
import io.github.heatswell.result.ReliefTotal;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.result.TimeGrid;
import io.github.heatswell.result.Totals;
import io.github.heatswell.result.Trace;
import io.github.heatswell.simulation.Modes.Diaphragm;
import io.github.heatswell.simulation.Modes.PressureRule;
import io.github.heatswell.water.GibbsPolynomialWater;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hipparchus.exception.MathRuntimeException;

/**
 * One run, from its start to its end: a chain of segments in each of which the modes stand still. Between two segments
 * the watch that fell due changes the modes, and the rule that fixes the pressure is chosen afresh.
 */
final class Engine {

    /** A segment shorter than this (s) is not worth starting: the run is over. */
    private static final double SHORTEST_SEGMENT = 1e-6;
    /** So many changes of mode without time passing mean that two rules contradict each other. */
    private static final int MOST_CHANGES_AT_ONCE = 200;
    /** An inflow above this (kg/s) counts as none; below, the supply would take water back. */
    private static final double NO_FLOW = -1e-10;

    private final HotWaterSystem system;
    private final TimeGrid planned;
    private final Plant plant;
    private final Balance balance;
    private final Watches watches;
    private final SegmentSolver solver;
    private final Recorder recorder;
    private final double coldDensity;
    private final double[] rates;

    private double time;
    private double[] state;
    private Modes modes;
    private double heaterOnTime;

    Engine(HotWaterSystem system, TimeGrid planned) {
        this(system, planned, SegmentSolver.RELATIVE_TOLERANCE);
    }

    Engine(HotWaterSystem system, TimeGrid planned, double relativeTolerance) {
        this.system = system;
        this.planned = planned;
        plant = new Plant(system);
        balance = new Balance(plant, GibbsPolynomialWater.instance());
        watches = new Watches(plant, balance);
        solver = new SegmentSolver(plant, balance, relativeTolerance);
        coldDensity = GibbsPolynomialWater.instance().density(plant.coldTemperature, plant.atmosphere);
        recorder = new Recorder(plant, balance, coldDensity, planned);
        rates = new double[StateVector.length(plant.valves.size())];
        state = new double[rates.length];
        state[StateVector.PRESSURE] = plant.startPressure;
        state[StateVector.TANK] = plant.startTemperature;
        state[StateVector.GAS] = plant.roomTemperature;
        modes = Modes.resting(plant.valves.size()).withDiaphragm(startOfDiaphragm());
    }

    private Diaphragm startOfDiaphragm() {
        if (plant.vessel == null) {
            return Diaphragm.ABSENT;
        }
        double water = plant.vessel.freeWater(plant.startPressure, plant.roomTemperature);
        if (water <= 0) {
            return Diaphragm.SEATED;
        }
        return water < plant.vessel.largestWater ? Diaphragm.FLOATING : Diaphragm.BOTTOMED_OUT;
    }

    RunResult run() {
        Books opening = Books.of(balance, state, modes);
        double displaced = 0;
        double tankMass = balance.tankMassAt(state[StateVector.TANK]);
        int changesAtOnce = 0;
        boolean ended = false;
        modes = chooseRule(modes);
        while (!ended && planned.end() - time > SHORTEST_SEGMENT) {
            double before = time;
            Optional<Watch> due = advance();
            double swollen = balance.tankMassAt(state[StateVector.TANK]);
            displaced += Math.abs(swollen - tankMass);
            tankMass = swollen;
            changesAtOnce = time > before ? 0 : changesAtOnce + 1;
            if (changesAtOnce > MOST_CHANGES_AT_ONCE) {
                throw failure("the modes do not settle", null);
            }
            ended = due.isPresent() && apply(due.get());
        }
        recorder.begin(time, state, modes);
        Trace trace = recorder.end(ended ? time : planned.end(), state);
        Totals totals = totals();
        Audit audit = audit(opening, Books.of(balance, state, modes), displaced, totals);
        return new RunResult(system, trace, recorder.events(), recorder.extremes(), totals, audit, solver.numerics());
    }

    /** Goes on until a watch is due or the run is over; says which watch. */
    private Optional<Watch> advance() {
        List<Watch> now = watches.during(modes, state[StateVector.PRESSURE]);
        recorder.begin(time, state, modes);
        balance.evaluate(state, modes, rates);
        for (Watch watch : now) {
            if (watch.distance().from(state) <= 0) {
                return Optional.of(watch);
            }
        }
        try {
            SegmentSolver.Outcome outcome = solver.advance(state, modes, now, planned.end() - time, recorder::step);
            heaterOnTime += modes.heaterOn ? outcome.elapsed() : 0;
            time += outcome.elapsed();
            state = outcome.state();
            return outcome.due();
        } catch (MathRuntimeException stopped) {
            throw failure(stopped.getMessage(), stopped);
        }
    }

    private SimulationException failure(String message, Throwable cause) {
        return new SimulationException(message, time, state[StateVector.PRESSURE], state[StateVector.TANK], cause);
    }

    /** Takes over the modes after a watch; says whether the run ends there. */
    private boolean apply(Watch due) {
        due.kind().ifPresent(kind -> recorder.event(time, kind, due.device(), state));
        if (due.kind().map(EventKind::endsRun).orElse(false)) {
            return true;
        }
        PressureRule before = modes.rule;
        modes = due.after().rule == PressureRule.SETTLED && before == PressureRule.FREE
                ? due.after()
                : chooseRule(due.after());
        reportSupply(before);
        return false;
    }

    private void reportSupply(PressureRule before) {
        if (before != PressureRule.HELD && modes.rule == PressureRule.HELD) {
            recorder.event(time, EventKind.SUPPLY_OPENED, "", state);
        } else if (before == PressureRule.HELD && modes.rule != PressureRule.HELD) {
            recorder.event(time, EventKind.SUPPLY_CLOSED, "", state);
        }
    }

    /**
     * Chooses what fixes the pressure: the supply, if it is connected and would not have to take water back; else the
     * balance of mass.
     */
    private Modes chooseRule(Modes candidate) {
        Modes held = candidate.withRule(PressureRule.HELD);
        if (!plant.checked) {
            return held;
        }
        if (state[StateVector.PRESSURE] <= plant.supplyPressure) {
            state[StateVector.PRESSURE] = plant.supplyPressure;
            balance.evaluate(state, held, rates);
            if (balance.supplyFlow() >= NO_FLOW) {
                return held;
            }
        }
        return candidate.withRule(PressureRule.FREE);
    }

    private Totals totals() {
        List<ReliefTotal> relief = new ArrayList<>();
        for (int i = 0; i < plant.valves.size(); i++) {
            String name = plant.valves.get(i).name;
            double mass = state[StateVector.RELIEVED + i];
            relief.add(new ReliefTotal(name, mass, mass / coldDensity, openings(name)));
        }
        return new Totals(
                relief,
                state[StateVector.LET_IN] / coldDensity,
                state[StateVector.RETURNED] / coldDensity,
                plant.heaterInput * heaterOnTime,
                plant.heaterOutput * heaterOnTime,
                state[StateVector.HEAT_LOST]);
    }

    private int openings(String valve) {
        return (int) recorder.events().stream()
                .filter(event -> event.kind() == EventKind.RELIEF_OPENED
                        && event.device().equals(valve))
                .count();
    }

    private Audit audit(Books opening, Books closing, double displaced, Totals totals) {
        double relieved =
                totals.relief().stream().mapToDouble(ReliefTotal::mass).sum();
        double in = state[StateVector.LET_IN];
        double back = state[StateVector.RETURNED];
        double heat = totals.heatToWater() - totals.heatLost();
        return new Audit(
                in - back - relieved - (closing.mass - opening.mass),
                in + back + relieved + displaced,
                heat + state[StateVector.CARRIED] - (closing.energy - opening.energy),
                totals.heatToWater() + Math.abs(totals.heatLost()) + Math.abs(state[StateVector.CARRIED]));
    }

    /** What the system holds at one moment. */
    private record Books(double mass, double energy) {
        static Books of(Balance balance, double[] state, Modes modes) {
            return new Books(balance.inventory(state, modes.diaphragm), balance.tankEnergy(state));
        }
    }
}
