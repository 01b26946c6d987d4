package io.github.heatswell.simulation;

import io.github.heatswell.result.RunSummary;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Integrates one segment: from a state with fixed modes to the first event, or to the given end.
 *
 * <p>The method is Dormand-Prince 5(4): a run is a chain of short segments, and it needs few evaluations per start.
 * Time runs from zero in every segment, so that a late event of a long run is located as finely as an early one.
 */
final class SegmentSolver {

    /** The relative tolerance of a step (-) of a run, unless it asks for another. */
    static final double RELATIVE_TOLERANCE = 1e-8;

    /** Errors below these are ignored: temperatures (K), masses (kg), energies (J). */
    private static final double TEMPERATURE_TOLERANCE = 1e-8;

    private static final double MASS_TOLERANCE = 1e-9;
    private static final double ENERGY_TOLERANCE = 1e-2;
    /** Pressure may always err by what stores this many times the error of a mass. */
    private static final double LITTLE_STORED = 10;

    /**
     * A pressure that returns to its equilibrium within seconds forgets its errors. So while it moves, it may err by this part (-) of
     * how far a step moves it, or this many times the relative tolerance if that is less,
     */
    private static final double FORGOTTEN_PART = 1e-5;

    private static final double FORGOTTEN_TOLERANCES = 1000;

    /** but by no more than this many times (-) as much as else: thousands of such segments a day would leave a balance open. */
    private static final double FORGOTTEN = 5;
    /** What it lets in or out meanwhile may err by this many times (-) as much: little of what a day moves. */
    private static final double FORGOTTEN_MASS = 10;

    /** Largest fraction (-) of the tank's water that a heat-up displaces, */
    private static final double HEAT_UP = 0.01;
    /** and per kelvin (1/K) by which a thermostat's cycle warms it: a few times the actual value. */
    private static final double HEAT_UP_PER_KELVIN = 0.002;
    /** How much softer (-) air under the top of the tank makes a house as it warms. Own choice. */
    private static final double AIR_SOFTENS = 10;
    /** Errors of running totals add up over a run: fraction (-) of the tolerance per step. */
    private static final double OF_TOTALS = 0.1;

    /** Where a draw is likely to end within the first step, the step is this much (-) longer, and the end falls near its own. */
    private static final double LITTLE_LONGER = 1.1;

    private static final double MIN_STEP = 1e-13;
    /**
     * The longest step (s), and so the longest time between two event checks, while water is heated, drawn or relieved.
     * A crossing and its return are both seen if pressure turns round between them; for anything else, half an hour
     * holds both only if they fit into a few kelvin of heating.
     */
    private static final double MAX_STEP = 1_800;
    /** The same (s) for a system at rest, which only cools. */
    private static final double MAX_STEP_AT_REST = 21_600;

    private final CompiledSystem plant;
    private final DormandPrince stepper;
    private final Balance balance;
    private final Effort effort;
    private final double relativeTolerance;
    private final double massTolerance;
    private final double pressureTolerance;
    /** The error of pressure (Pa) that a step may make at most. */
    private final double mostOfPressure;

    private final EventLocator first;
    private final FirstSteps firstSteps = new FirstSteps();
    private long steps;
    private int segments;
    private double time;
    private double likelyLength;
    private boolean tooMuch;

    SegmentSolver(CompiledSystem plant, Balance balance, Effort effort, double relativeTolerance) {
        StateVector vector = plant.vector;
        this.plant = plant;
        this.balance = balance;
        this.effort = effort;
        this.relativeTolerance = relativeTolerance;
        first = new EventLocator(balance, vector.length);
        mostOfPressure = mostOfPressure(plant);
        massTolerance = massTolerance(plant);
        pressureTolerance = Math.min(mostOfPressure, LITTLE_STORED * massTolerance / plant.coldDensity / give(plant));
        double[] absolute = new double[vector.length];
        double[] relative = new double[vector.length];
        Arrays.fill(absolute, massTolerance);
        boolean[] totals = vector.totals();
        for (int i = 0; i < vector.length; i++) {
            relative[i] = totals[i] ? OF_TOTALS * relativeTolerance : relativeTolerance;
        }
        // pressure is a total as well: that of the water stored
        totals[StateVector.PRESSURE] = true;
        relative[StateVector.PRESSURE] = 1;
        // a relative error of temperature counts against 300 K, of which a heat-up is a sixth
        Arrays.fill(relative, vector.lowest, vector.length, 0.1 * relativeTolerance);
        Arrays.fill(absolute, vector.lowest, vector.length, TEMPERATURE_TOLERANCE);
        vector.setTemperatures(absolute, TEMPERATURE_TOLERANCE);
        vector.setEnergies(absolute, ENERGY_TOLERANCE);
        absolute[StateVector.DELIVERED] = ENERGY_TOLERANCE;
        absolute[StateVector.HEAT_LOST] = ENERGY_TOLERANCE;
        absolute[StateVector.CARRIED] = ENERGY_TOLERANCE;
        stepper = new DormandPrince(MIN_STEP, absolute, relative, totals, vector.lowest);
        // an error of temperature matters by the water that has it
        stepper.allowFirstByPart(vector.phase);
    }

    /**
     * The error of pressure (Pa) that a step may make at most. Pressure stands for stored water, the more of it the softer
     * the system is: with a large vessel a pascal is a tenth of a gram. The tolerance is the pressure that stores the
     * relative tolerance's part of what a small heat-up moves. A large tank that warms by a kelvin a day moves far less: a
     * step that hardly changes the pressure may err by a part of that change.
     */
    private double mostOfPressure(CompiledSystem plant) {
        return relativeTolerance * Math.min(plant.startPressure, moved(plant) / give(plant));
    }

    /** Roughly how far (m3/Pa) the system gives to pressure, at its softest. */
    private static double give(CompiledSystem plant) {
        double give = plant.tankVolume * (HotPipe.WATER_GIVES + plant.shellCompliance)
                + plant.compliance()
                + plant.air().compliance(plant.startPressure, plant.startTemperature);
        return plant.air().isEmpty() ? give : AIR_SOFTENS * give;
    }

    /** The error of a mass (kg) that a step may make: in a small tank, which heats up hundreds of times a day, a part of that. */
    private double massTolerance(CompiledSystem plant) {
        return Math.min(MASS_TOLERANCE, relativeTolerance * moved(plant) * plant.coldDensity);
    }

    private static double moved(CompiledSystem plant) {
        return Math.min(HEAT_UP, HEAT_UP_PER_KELVIN * plant.heat.smallestWarming()) * plant.tankVolume;
    }

    /**
     * How a segment ended.
     *
     * @param elapsed its length (s)
     * @param state the state at its end
     * @param due the watch that ended it, or empty if it ran its full time
     */
    record Outcome(double elapsed, double[] state, Optional<EventDetector> due) {}

    /** Reads the finished steps of a segment. */
    interface StepReader {
        /**
         * Takes one step.
         *
         * @param step the continuous solution over the step, in time since the start of the segment; valid during the
         *     call
         */
        void read(DenseOutput step);
    }

    /**
     * Integrates.
     *
     * @param start the state at the start
     * @param modes the modes
     * @param watches what may end the segment, none of them due
     * @param length the longest time (s)
     * @param reader reads the steps
     * @throws ArithmeticException if the solver gives up
     */
    Outcome advance(double[] start, Modes modes, List<EventDetector> watches, double length, StepReader reader) {
        double begins = time;
        first.begin(modes, watches);
        boolean heating = plant.heat.anyOn(modes);
        double drawn = balance.drawn();
        boolean drawing = drawn > 0;
        boolean atRest = !heating && !drawing && !modes.anyValveOpen();
        double longest = atRest ? MAX_STEP_AT_REST : MAX_STEP;
        allow(balance.response().settlingTime() < PressureResponse.FAST);
        DenseOutput last = stepper.integrate(
                (since, y, rates) -> balance.evaluate(y, modes, rates),
                start,
                length,
                longest,
                Math.min(Math.min(firstSteps.of(modes, heating, drawn), LITTLE_LONGER * likelyLength), longest),
                new DormandPrince.Reader() {
                    @Override
                    public void cut(DenseOutput step) {
                        first.lookAt(step);
                    }

                    @Override
                    public boolean read(DenseOutput step) {
                        steps++;
                        reader.read(step);
                        tooMuch = effort.isTooMuch(steps, begins + step.to());
                        return first.due() == null && !tooMuch;
                    }
                });
        firstSteps.learn(stepper.firstStep());
        segments++;
        return new Outcome(last.to(), last.last().clone(), Optional.ofNullable(first.due()));
    }

    /** Sets how far the pressure may err in a step, and what it lets in or out. */
    private void allow(boolean forgets) {
        double limit = forgets ? FORGOTTEN * mostOfPressure : mostOfPressure;
        double mass = forgets ? FORGOTTEN_MASS * massTolerance : massTolerance;
        double part = forgets
                ? Math.min(FORGOTTEN_PART, FORGOTTEN_TOLERANCES * relativeTolerance)
                : DormandPrince.OF_INCREMENT;
        stepper.allow(StateVector.PRESSURE, pressureTolerance, part, limit);
        allowMass(StateVector.LET_IN, mass);
        for (Valve valve : plant.valves) {
            allowMass(valve.relieved, mass);
        }
    }

    private void allowMass(int total, double tolerance) {
        stepper.allow(total, tolerance, DormandPrince.OF_INCREMENT, Double.POSITIVE_INFINITY);
    }

    /** Sets when the next segment begins (s since the start of the run), and what it will likely last at most (s). */
    void at(double now, double likely) {
        time = now;
        likelyLength = likely;
    }

    /** Whether the run has taken more steps than it may. */
    boolean tookTooMuch() {
        return tooMuch;
    }

    /** How the numbers were made so far. */
    RunSummary.Numerics numerics() {
        return new RunSummary.Numerics(DormandPrince.NAME, relativeTolerance, stepper.evaluations(), steps, segments);
    }

    /**
     * First trial step of a segment. A run is a chain of short segments of a few kinds, and those of one kind that follow the same kind
     * are alike. So a segment starts with the step with which the last of these might have begun, or else the last of its kind, instead
     * of the solver's estimate, which starts small and grows tenfold with each step. The solver rejects a step that is too long and
     * retries a shorter one.
     *
     * <p>With a tap open, the first step is set by a volume drawn, whatever the flow.
     */
    private static final class FirstSteps {

        /** Leaves the guess to the solver. */
        private static final double UNKNOWN = -1;

        private static final int RULES = PressureRegime.values().length;
        private static final int KINDS = 8 * RULES;
        /** First trial of a run (s) while water is heated, */
        private static final double HEATING = 400;
        /** and at rest. */
        private static final double RESTING = 3_600;
        /** First trial of a run (m3) with a tap open, which exchanges a small part of the tank's water, */
        private static final double DRAWING = 10e-3;
        /** and one that empties a small part of a vessel. */
        private static final double DRAWING_OFF = 0.7e-3;

        /** Lengths (s) of steps by kind; volumes (m3) where a tap is open. */
        private final double[] lengths = unknown();
        /** The same by the kind before and the kind, for those that have followed on each other. */
        private final double[][] pairs = new double[KINDS][];

        private double pace;
        private int before;
        private int now;

        FirstSteps() {
            for (PressureRegime rule : List.of(PressureRegime.FREE, PressureRegime.HELD)) {
                double drawing = rule == PressureRegime.HELD ? DRAWING : DRAWING_OFF;
                lengths[kind(rule, false, false, false)] = RESTING;
                lengths[kind(rule, false, true, false)] = HEATING;
                lengths[kind(rule, false, false, true)] = drawing;
                lengths[kind(rule, false, true, true)] = drawing;
            }
        }

        private static double[] unknown() {
            double[] lengths = new double[KINDS];
            Arrays.fill(lengths, UNKNOWN);
            return lengths;
        }

        private static int kind(PressureRegime rule, boolean valveOpen, boolean heating, boolean drawing) {
            int circumstances = (valveOpen ? 1 : 0) + (heating ? 2 : 0) + (drawing ? 4 : 0);
            return rule.ordinal() + RULES * circumstances;
        }

        /**
         * The step to begin a segment with.
         *
         * @param modes the modes
         * @param heating whether water is heated
         * @param drawn flow of the open tap (m3/s), 0 if there is none
         * @return its length (s), negative if the solver should estimate it
         */
        double of(Modes modes, boolean heating, double drawn) {
            before = now;
            now = kind(modes.rule, modes.anyValveOpen(), heating, drawn > 0);
            pace = drawn > 0 ? drawn : 1;
            double alike = pairs[before] == null ? UNKNOWN : pairs[before][now];
            return (alike > 0 ? alike : lengths[now]) / pace;
        }

        /** The segment might have begun with a step of this length (s). */
        void learn(double length) {
            lengths[now] = length * pace;
            if (pairs[before] == null) {
                pairs[before] = unknown();
            }
            pairs[before][now] = lengths[now];
        }
    }
}
