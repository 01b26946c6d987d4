package io.github.heatswell.reference;

import java.util.List;
import java.util.Optional;
import java.util.function.ObjDoubleConsumer;

/**
 * Advances a {@link StiffProblem} with {@link RadauStep} under error control and stops where a {@link Trigger} first rises
 * above zero.
 *
 * <p>An instant at which something happens is found by repeating the step that passed it with shorter and shorter
 * lengths, so it has the accuracy of the method itself, not that of an interpolation.
 */
final class StiffIntegrator {

    private static final double SAFETY = 0.9;
    private static final double MAX_GROWTH = 8;
    private static final double LEAST_GROWTH = 0.2;
    private static final double FIRST_STEP = 1e-4;
    /**
     * No step is shorter (s). Where layers of a tank have just been mixed, pressures even out within 1e-8 s, and the first step
     * may need a hundredth of that, which is below the resolution of a time late in a day; so time counts from where an advance began.
     */
    private static final double SHORTEST_STEP = 1e-13;
    /** Instants are located to this (s), or to a few units in the last place of the time. */
    private static final double LOCATION = 1e-11;

    private static final long MAX_STEPS = 1_000_000;

    private final StiffProblem problem;
    private final RadauStep radau;
    private double next = FIRST_STEP;
    private boolean afterReset = true;
    private ObjDoubleConsumer<double[]> witness = (y, t) -> {};
    private long steps;
    private long rejected;

    /**
     * Prepares an integration.
     *
     * @param problem the equations
     * @param tolerance the relative tolerance of a step (-)
     */
    StiffIntegrator(StiffProblem problem, double tolerance) {
        this.problem = problem;
        radau = new RadauStep(problem, tolerance);
    }

    /**
     * Where an advance ended.
     *
     * @param t the time
     * @param y the solution there
     * @param fired the number of the trigger that ended it, or -1 if the end asked for was reached
     */
    record Arrival(double t, double[] y, int fired) {}

    /** Shows every state that the solution passes through at the end of a step, and its time, from now on. */
    void showTo(ObjDoubleConsumer<double[]> chosen) {
        witness = chosen;
    }

    /** Forgets the step length, because the equations are about to change. */
    void restart() {
        next = FIRST_STEP;
        afterReset = true;
    }

    /** {@return how many steps were accepted} */
    long steps() {
        return steps;
    }

    /** {@return how often the equations were evaluated} */
    long evaluations() {
        return radau.evaluations();
    }

    /**
     * Advances to a time, or to the first trigger before it.
     *
     * @param t where to begin
     * @param y the solution there, not changed
     * @param end where to end, at or after t
     * @param triggers what ends the advance early; the solution returned lies just past the zero
     * @return where it ended
     * @throws ArithmeticException if the steps become too short or too many
     */
    Arrival advance(double t, double[] y, double end, List<Trigger> triggers) {
        Reading now = Reading.of(t, y, triggers);
        if (now.fires()) {
            return new Arrival(t, y, now.highest());
        }
        double time = t;
        double elapsed = 0;
        double[] state = y;
        for (double room = end - t; room > 0; room = end - t - elapsed) {
            double taken = step(time, state, room);
            double[] reached = radau.end();
            double arrival = taken == room ? end : t + (elapsed + taken);
            Reading then = Reading.of(arrival, reached, triggers);
            if (then.fires()) {
                Arrival passed = new Arrival(arrival, reached, then.highest());
                Optional<Arrival> located = locate(new Bracket(time, taken, now, then), passed, triggers);
                if (located.isPresent()) {
                    return located.get();
                }
                next = taken / 2;
                continue;
            }
            time = arrival;
            elapsed += taken;
            state = reached;
            now = then;
            witness.accept(state, time);
        }
        return new Arrival(Math.max(t, end), state, -1);
    }

    /** The trigger that is highest in a state, read once: near zero a second reading could differ in sign by rounding. */
    private record Reading(int highest, double value) {
        static Reading of(double t, double[] y, List<Trigger> triggers) {
            int index = -1;
            double highest = Double.NEGATIVE_INFINITY;
            for (int i = 0; i < triggers.size(); i++) {
                double value = triggers.get(i).value(t, y);
                if (value > highest) {
                    highest = value;
                    index = i;
                }
            }
            return new Reading(index, highest);
        }

        boolean fires() {
            return value > 0;
        }
    }

    /** A step from t, of a length, at whose beginning no trigger fires and at whose end one does. */
    private record Bracket(double t, double length, Reading begin, Reading end) {}

    /** Takes one accepted step and returns its length. */
    private double step(double t, double[] y, double room) {
        radau.beginAt(t, y);
        double h = Math.min(next, room);
        boolean failed = false;
        while (true) {
            if (h < SHORTEST_STEP && h < room || steps + rejected > MAX_STEPS) {
                throw new ArithmeticException("steps of " + h + " at " + t + " after " + steps);
            }
            double growth = attempt(h, failed);
            if (growth > 0) {
                steps++;
                afterReset = false;
                double limited = failed ? Math.min(growth, 1) : growth;
                // A step cut short to end on time says nothing against the longer one that was planned.
                next = h < next && !failed ? Math.max(next, h * limited) : h * limited;
                return h;
            }
            rejected++;
            failed = true;
            h *= -growth;
        }
    }

    /** Tries a step; returns the factor for the next length, negative if this one must be repeated. */
    private double attempt(double h, boolean failed) {
        if (!radau.attempt(h)) {
            return -LEAST_GROWTH;
        }
        double error = radau.error(h, afterReset || failed);
        if (!(error < Double.POSITIVE_INFINITY)) {
            return -LEAST_GROWTH;
        }
        // Slowly converging iterations ask for more caution, as in Hairer and Wanner, (8.21).
        double caution = SAFETY * 25.0 / (24 + radau.iterations());
        double wanted = caution * Math.pow(Math.max(error, 1e-12), -0.25);
        double factor = Math.min(MAX_GROWTH, Math.max(LEAST_GROWTH, wanted));
        return error <= 1 ? factor : -Math.min(factor, SAFETY);
    }

    /** Closes in on the first moment of a step at which a trigger fires; empty if a shortened step did not converge. */
    private Optional<Arrival> locate(Bracket bracket, Arrival end, List<Trigger> triggers) {
        double low = 0;
        double high = bracket.length();
        double lowValue = bracket.begin().value();
        double highValue = bracket.end().value();
        Arrival past = end;
        double resolution = Math.max(LOCATION, 4 * Math.ulp(bracket.t()));
        for (int round = 0; high - low > resolution; round++) {
            double middle = low + (high - low) * share(round, lowValue, highValue, resolution / (high - low));
            if (!radau.attempt(middle)) {
                return Optional.empty();
            }
            double time = bracket.t() + middle;
            double[] reached = radau.end();
            Reading reading = Reading.of(time, reached, triggers);
            if (reading.fires()) {
                high = middle;
                highValue = reading.value();
                past = new Arrival(time, reached, reading.highest());
            } else {
                low = middle;
                lowValue = reading.value();
            }
        }
        return Optional.of(past);
    }

    /** Regula falsi, nudged to overshoot so that both ends close in, and every third time a bisection. */
    private static double share(int round, double lowValue, double highValue, double nudge) {
        if (round % 3 == 2) {
            return 0.5;
        }
        double root = -lowValue / (highValue - lowValue);
        double aimed = round % 2 == 0 ? root + nudge / 2 : root - nudge / 2;
        return Math.min(1 - nudge / 4, Math.max(nudge / 4, aimed));
    }
}
