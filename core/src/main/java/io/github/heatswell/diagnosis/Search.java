package io.github.heatswell.diagnosis;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.hipparchus.exception.MathRuntimeException;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.DecompositionSolver;
import org.hipparchus.linear.QRDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresBuilder;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LevenbergMarquardtOptimizer;
import org.hipparchus.optim.nonlinear.vector.leastsquares.ValueAndJacobianFunction;
import org.hipparchus.util.Pair;

/**
 * Looks for the position at which a trial comes closest to the readings: it tries every start, and follows the best of them by the
 * method of Levenberg and Marquardt with derivatives from differences. A parameter may be held.
 */
final class Search {

    /** The change of a position for a derivative: small against what matters, large against the events of a run. */
    static final double DIFFERENCE = 0.02;

    /** So many steps in a row are taken with slopes that only the step before has changed. */
    private static final int MAX_UPDATES = 2;
    /** So many near the end of a search, where slopes change little. */
    private static final int NEAR_THE_END = 4;

    private static final Effort SCREENING = new Effort(8, 2e-3, 0.3, MAX_UPDATES);
    private static final Effort FINISHING = new Effort(20, 5e-5, 0.03, NEAR_THE_END);
    private static final Effort PROFILING = new Effort(5, 2e-3, 0.1, NEAR_THE_END);
    private static final int MAX_RENEWALS = 6;

    private static final int RIDGES = 3;
    /** Steps along a ridge in standard deviations. */
    private static final List<Double> ALONG = List.of(-8.0, -3.0, -1.0, 1.0, 3.0, 8.0);

    /** A gain in the sum of squares below this changes no conclusion. */
    private static final double WORTH_IT = 0.3;

    private static final Breadth QUICK = new Breadth(2, 1, false);
    private static final Breadth AGAIN = new Breadth(2, 1, true);
    private static final Breadth THOROUGH = new Breadth(4, 3, true);
    private static final int BEGINNINGS = 16;
    private static final double BEGINNING = 0.3;
    /** How warm a tank may be, as shares of the range. */
    private static final List<Double> WARMTHS = List.of(0.06, 0.2, 0.35, 0.5, 0.65, 0.8);
    /** A place is followed that at once comes so close, in terms of the best sum of squares and one for each residual; our own judgement. */
    private static final double WORTH_FOLLOWING = 8;
    /** What a vessel may give alone (m3); our own judgement. */
    private static final double LITTLE = 0.002;

    /** So many places that show nearly what a simpler cause does are followed. */
    private static final int FOLLOWED_ALONG = 2;

    private static final List<Double> FAR = List.of(-2.5, -1.2, -0.5, 0.5, 1.2);
    private static final List<Double> NEAR = List.of(-0.6, -0.15, 0.15, 0.6);
    /** Steps are bounded in units of the residuals, of which a log has hundreds. */
    private static final double FIRST_STEP = 500;

    private final Trial trial;
    private final Effort effort;
    private final boolean[] held;
    private double[] bestPosition;
    private double bestCost = Double.POSITIVE_INFINITY;
    private double[] lastPosition;
    private double[] lastResiduals;

    private Search(Trial trial, int heldIndex, Effort effort) {
        this.trial = trial;
        this.effort = effort;
        held = new boolean[trial.parameters().size()];
        if (heldIndex >= 0) {
            held[heldIndex] = true;
        }
    }

    /** When a search may stop: after so many iterations, or when one gains less than this share, or less of the sum of squares; how often it carries slopes on. */
    private record Effort(int iterations, double gain, double least, int updates) {

        /** Whether so little is gained from one norm of the residuals to the next. */
        boolean isEnough(double before, double after) {
            return before >= after && before * before - after * after < Math.max(2 * gain * after * after, least);
        }
    }

    /** Of how many starts the surroundings are looked at, how many of these are followed, and whether the end is, with all readings. */
    private record Breadth(int promising, int followed, boolean finely) {}

    /**
     * Where a search ended.
     *
     * @param position the position
     * @param cost the sum of squares there
     * @param settled whether a search that went on from there is known to end there
     * @param rough the sum of squares of the {@linkplain Trial#coarse() coarse} search that led there, by which causes are screened
     */
    record End(double[] position, double cost, boolean settled, double rough) {

        End(double[] position, double cost) {
            this(position, cost, false, cost);
        }
    }

    /**
     * Searches from all starts, in long blocks first, just well enough to tell which causes are worth more.
     *
     * @param trial what is searched
     * @param circumstances the last coordinates of another search, to begin from too; possibly none
     */
    static End quickly(Trial trial, double... circumstances) {
        List<double[]> starts = new ArrayList<>(trial.starts());
        if (circumstances.length > 0) {
            starts.addAll(trial.starts(with(new double[trial.parameters().size()], circumstances)));
        }
        return everywhere(trial, starts, QUICK, 0);
    }

    /**
     * Searches for two causes from every start of each, with the other where it came closest alone, and with all else as there and as
     * described: one cause alone bends what else is open to make up for the other.
     */
    static End beside(Trial trial, double[] position) {
        double[] asDescribed =
                Arrays.copyOf(Arrays.copyOf(position, trial.hypothesis().open().size()), position.length);
        List<double[]> starts = new ArrayList<>();
        for (double[] from : List.of(position, asDescribed)) {
            starts.add(from);
            starts.addAll(trial.starts(from));
        }
        return everywhere(trial, starts, QUICK, 0);
    }

    /**
     * A second look at a cause, also with what a better cause says of everything else.
     *
     * @param trial what is searched
     * @param from where the first look ended
     * @param circumstances the last coordinates of a better search
     * @param thorough whether it is worth more than a quick look
     * @param worth the sum of squares from which on a house with many layers is worth no more runs
     */
    static End again(Trial trial, End from, double[] circumstances, boolean thorough, double worth) {
        List<double[]> starts = new ArrayList<>(trial.starts(with(new double[from.position().length], circumstances)));
        if (thorough) {
            starts.addAll(trial.starts());
        }
        Breadth once = trial.simpler() == trial ? QUICK : AGAIN;
        End end = everywhere(trial, starts, thorough ? THOROUGH : once, worth);
        return end.cost() < from.cost() ? end : from;
    }

    /**
     * Where a search ended, or there and at each start of the cause's own numbers with what a better cause says of everything else: twins
     * are found together or not at all.
     */
    static End sharing(Trial trial, End from, double[] circumstances) {
        Search search = new Search(trial, -1, SCREENING);
        double[] shared = with(from.position(), circumstances);
        search.begun(shared);
        trial.starts(shared).forEach(search::cost);
        return search.bestCost < from.cost()
                ? new End(search.bestPosition, search.bestCost, false, from.rough())
                : from;
    }

    /**
     * Where a search ended, or what is found from the end of a simpler cause, so that none ends further from the readings than one that
     * it extends.
     *
     * @param trial what is searched
     * @param from where its search ended
     * @param slightest where the simpler cause ended, as this one's slightest cases
     * @param along places that show nearly the same
     */
    static End extending(Trial trial, End from, List<double[]> slightest, List<double[]> along) {
        Search search = new Search(trial, -1, SCREENING);
        search.cost(from.position());
        List<End> starts =
                closest(along.stream().map(search::begun)).limit(FOLLOWED_ALONG).toList();
        Optional<End> slight = closest(slightest.stream().map(search::at)).findFirst();
        double worth = WORTH_FOLLOWING * (from.cost() + trial.target().count());
        Stream.concat(starts.stream(), slight.filter(start -> start.cost() < from.cost() - WORTH_IT).stream())
                .filter(start -> start.cost() < worth)
                .forEach(start -> search.followed(start.position()));
        return search.bestCost < from.cost() - WORTH_IT
                ? closer(trial, new End(search.bestPosition, search.bestCost, false, from.rough()), new double[0])
                : from;
    }

    private End at(double[] position) {
        return new End(position, cost(position));
    }

    /** A position with other last coordinates. */
    private static double[] with(double[] position, double... circumstances) {
        double[] other = position.clone();
        int shared = Math.min(circumstances.length, other.length);
        System.arraycopy(circumstances, circumstances.length - shared, other, other.length - shared, shared);
        return other;
    }

    private static End everywhere(Trial trial, List<double[]> starts, Breadth breadth, double worth) {
        Trial coarse = trial.coarse();
        Search first = new Search(coarse, -1, SCREENING);
        List<End> promising = closest(starts.stream().map(first::begun))
                .limit(breadth.promising)
                .toList();
        List<End> followed = closest(promising.stream().map(start -> first.scanned(start, FAR)))
                .limit(breadth.followed)
                .toList();
        Search search = new Search(trial, -1, SCREENING);
        double rough = Double.POSITIVE_INFINITY;
        for (End start : followed) {
            first.bestCost = Double.POSITIVE_INFINITY;
            first.follow(start.position());
            rough = Math.min(rough, first.bestCost);
            search.cost(first.bestPosition);
        }
        if (breadth.finely) {
            search.followed(worth);
        }
        return new End(search.bestPosition, search.bestCost, false, rough);
    }

    /** The closest to the readings first. */
    private static Stream<End> closest(Stream<End> ends) {
        return ends.sorted(Comparator.comparingDouble(End::cost));
    }

    /** A start with the best start of the heat-up, and the best errors of the instruments for that, neither of which costs a run. */
    private End begun(double[] start) {
        End best = shown(new End(start, cost(start)));
        if (!trial.startCostsNothing(start)) {
            return best;
        }
        int last = start.length - 1;
        double[] home = best.position();
        for (int i = -BEGINNINGS; i <= BEGINNINGS; i++) {
            best = better(best, with(home, last, BEGINNING * i));
        }
        best = shown(best);
        for (double step = BEGINNING / 2; step > DIFFERENCE / 2; step /= 2) {
            double middle = best.position()[last];
            best = better(best, with(best.position(), last, middle - step));
            best = better(best, with(best.position(), last, middle + step));
        }
        return shown(best);
    }

    private End better(End one, double[] other) {
        double cost = cost(other);
        return cost < one.cost() ? new End(other, cost) : one;
    }

    private static double[] with(double[] position, int index, double value) {
        double[] aside = position.clone();
        aside[index] = value;
        return aside;
    }

    /** A position with the errors of gauge and thermometer that suit it, by one step of Gauss and Newton: but for outliers they are linear. */
    private End shown(End end) {
        double[] position = end.position();
        int[] errors = IntStream.range(0, position.length)
                .filter(i -> trial.parameters().get(i).parameter().isOfInstrument())
                .toArray();
        double[] here = residuals(position);
        RealMatrix slopes = new Array2DRowRealMatrix(here.length, Math.max(1, errors.length));
        for (int k = 0; k < errors.length; k++) {
            double[] there = residuals(with(position, errors[k], position[errors[k]] + DIFFERENCE));
            for (int j = 0; j < here.length; j++) {
                slopes.setEntry(j, k, (there[j] - here[j]) / DIFFERENCE);
            }
        }
        DecompositionSolver solver = new QRDecomposition(slopes).getSolver();
        if (!solver.isNonSingular()) {
            return end;
        }
        RealVector step = solver.solve(new ArrayRealVector(here, false));
        double[] moved = position.clone();
        for (int k = 0; k < errors.length; k++) {
            moved[errors[k]] -= step.getEntry(k);
        }
        return better(end, trial.clamp(moved));
    }

    /**
     * The best of the positions around a start, one coordinate after the other, the last first: when the heat-up began. What is roughly
     * known is left where it is: from there small steps lead on.
     */
    private End scanned(End start, List<Double> steps) {
        End best = start;
        for (int i = start.position().length - 1; i >= 0; i--) {
            if (trial.parameters().get(i).isRoughlyKnown()) {
                continue;
            }
            double home = best.position()[i];
            for (double step : steps) {
                best = better(best, with(best.position(), i, home + step));
            }
        }
        return best;
    }

    /**
     * Goes on from where a search ended, for as long as it gets better.
     *
     * @param trial what is searched
     * @param from where the search ended
     * @param circumstances the last coordinates of a better search, with which it may go on as well
     */
    static End closer(Trial trial, End from, double[] circumstances) {
        return closer(trial, from, circumstances, false);
    }

    /** The same, where it has not yet been looked for {@linkplain #elsewhere() elsewhere}. */
    static End widely(Trial trial, End from, double[] circumstances) {
        return closer(trial, from, circumstances, true);
    }

    private static End closer(Trial trial, End from, double[] circumstances, boolean widely) {
        Search search = new Search(trial, -1, FINISHING);
        search.cost(from.position());
        if (circumstances.length > 0) {
            search.begun(with(from.position(), circumstances));
        }
        double[] start = search.bestPosition;
        boolean same = Arrays.equals(start, from.position());
        if (same && from.settled()) {
            return from;
        }
        if (widely) {
            search.elsewhere();
        }
        for (int i = 0; i < MAX_RENEWALS && search.bestCost > WORTH_IT; i++) {
            if (i == 0) {
                search.followed(Double.POSITIVE_INFINITY);
            } else {
                search.follow(search.bestPosition);
            }
            double followed = search.bestCost;
            if (trial.hypothesis()
                    .open()
                    .isEmpty()) { // otherwise the profile of the cause's own number goes along its ridge
                search.ridges();
            }
            if (i == 0 || followed - search.bestCost > WORTH_IT) {
                search.scanned(new End(search.bestPosition, search.bestCost), NEAR);
            }
            search.begun(search.bestPosition);
            if (followed - search.bestCost < WORTH_IT) {
                break;
            }
        }
        boolean settled = same && search.bestPosition == start;
        return dry(trial, new End(search.bestPosition, search.bestCost, settled, from.rough()));
    }

    /**
     * A tank that was warm when the log began, and one that was heated before from cold, show nearly the same, and so do a draw that a
     * vessel gives all of and a long one; but no search gets from one to the other by small steps. So other warmths are tried, begun with
     * the log and, where that costs no run, at their best start, and each draw as a small one. The best of each kind is followed.
     */
    private void elsewhere() {
        double[] home = bestPosition;
        double worth = WORTH_FOLLOWING * (bestCost + trial.target().count());
        List<End> starts = new ArrayList<>();
        closest(warmths(home).map(place -> shown(new End(place, cost(place)))))
                .limit(1)
                .forEach(starts::add);
        if (trial.startCostsNothing(home)) {
            closest(warmths(home).map(this::begun)).limit(1).forEach(starts::add);
        }
        trial.drawn()
                .filter(draw -> trial.parameters().get(draw).value(home[draw]) > 2 * LITTLE)
                .mapToObj(draw -> with(home, draw, trial.parameters().get(draw).position(LITTLE)))
                .forEach(place -> starts.add(new End(place, cost(place))));
        Search other = new Search(trial, -1, SCREENING);
        starts.stream().filter(start -> start.cost() < worth).forEach(start -> other.follow(start.position()));
        if (other.bestCost < bestCost) {
            cost(other.bestPosition);
        }
    }

    /** Other warmths of the tank, all begun with the log. */
    private Stream<double[]> warmths(double[] home) {
        int warmth = trial.index(Parameter.START_TEMPERATURE);
        if (warmth < 0 || trial.parameters().get(warmth).isOpen() || !trial.startIsOpen()) {
            return Stream.empty();
        }
        FreeParameter water = trial.parameters().get(warmth);
        int last = home.length - 1;
        double[] begun = with(home, last, trial.parameters().get(last).position(0));
        return WARMTHS.stream()
                .map(share -> water.position(water.low() + share * (water.high() - water.low())))
                .map(position -> with(begun, warmth, position));
    }

    /** Without those draws that nobody noted and that explain no more than such a number costs. */
    private static End dry(Trial trial, End end) {
        double worth = Math.log(Math.max(2, trial.target().readings()));
        End best = end;
        for (int draw : trial.guessed().toArray()) {
            double[] without = trial.without(draw, best.position());
            double cost = Trial.sumOfSquares(trial.residuals(without));
            best = cost < best.cost() + worth ? new End(without, cost, false, end.rough()) : best;
        }
        return best;
    }

    /** Searches with one parameter held where it is, from the best start and with slopes known nearby, unless even that is too far off. */
    static End holding(Trial trial, int index, double tooMuch, List<double[]> starts, Slopes near) {
        Search search = new Search(trial, index, PROFILING);
        starts.forEach(search::cost);
        if (search.bestCost < tooMuch) {
            search.follow(search.bestPosition, search.new Residuals(near.matrix()));
        }
        return new End(search.bestPosition, search.bestCost);
    }

    /**
     * Goes along the ridges on which the position is known least, steps across them as the slopes promise, and keeps the best.
     */
    private void ridges() {
        double[] lengths = new double[held.length];
        Arrays.fill(lengths, DIFFERENCE);
        double[] home = bestPosition;
        Slopes slopes = new Slopes(trial, home, lengths);
        for (int rank = 0; rank < Math.min(RIDGES, home.length); rank++) {
            double[] direction = slopes.weakest(rank);
            for (double along : ALONG) {
                double[] aside = trial.clamp(sum(home, direction, along));
                double[] across = slopes.across(residuals(aside), direction);
                cost(sum(aside, across, 1));
            }
        }
    }

    private static double[] sum(double[] position, double[] step, double times) {
        double[] sum = position.clone();
        for (int i = 0; i < sum.length; i++) {
            sum[i] += times * step[i];
        }
        return sum;
    }

    private double cost(double[] position) {
        return Trial.sumOfSquares(residuals(position));
    }

    private double[] residuals(double[] asked) {
        double[] position = trial.clamp(asked);
        if (!Arrays.equals(position, lastPosition)) {
            lastResiduals = trial.residuals(position);
            lastPosition = position;
            double cost = Trial.sumOfSquares(lastResiduals);
            if (cost < bestCost) {
                bestCost = cost;
                bestPosition = position;
            }
        }
        return lastResiduals;
    }

    /** With slopes of the simpler house first, which cost little, and then, where that comes close enough, with its own. */
    private void followed(double worth) {
        Trial simpler = trial.simpler();
        if (simpler != trial) {
            follow(bestPosition, new Residuals(simpler));
        }
        if (bestCost < worth) {
            follow(bestPosition);
        }
    }

    /** The same from a start that need not be the best place seen. */
    private void followed(double[] start) {
        Search other = new Search(trial, -1, effort);
        other.cost(start);
        other.followed(Double.POSITIVE_INFINITY);
        cost(other.bestPosition);
    }

    private void follow(double[] start) {
        follow(start, new Residuals(trial));
    }

    private void follow(double[] start, Residuals model) {
        try {
            new LevenbergMarquardtOptimizer(FIRST_STEP, effort.gain, effort.gain, 0, 1e-30)
                    .optimize(new LeastSquaresBuilder()
                            .model(model)
                            .target(new double[trial.residuals()])
                            .start(trial.clamp(start))
                            .lazyEvaluation(true)
                            .maxIterations(effort.iterations)
                            .maxEvaluations(3 * effort.iterations)
                            .parameterValidator(point -> new ArrayRealVector(trial.clamp(point.toArray()), false))
                            .checker((iteration, before, after) -> effort.isEnough(before.getCost(), after.getCost()))
                            .build());
        } catch (MathRuntimeException atItsEnd) {
            // out of iterations, or no step improves any more: the best position seen is the answer
        }
    }

    /**
     * Residuals and their derivatives: from differences at first and after every few steps, and in between as the
     * last step has it (Broyden, "A class of methods for solving nonlinear simultaneous equations", Mathematics of Computation 19, 1965;
     * from memory), which costs no run.
     */
    private final class Residuals implements ValueAndJacobianFunction {
        private final Trial sloping;
        private RealMatrix slopes;
        private double[] at;
        private double[] there;
        private int updates = effort.updates;

        /** With slopes taken from a trial, such as that of a simpler house: where it differs, it hardly differs in what a number changes. */
        private Residuals(Trial sloping) {
            this.sloping = sloping;
        }

        /** With the slopes known nearby to begin with. */
        private Residuals(RealMatrix near) {
            this(trial);
            slopes = near;
            for (int i = 0; i < held.length; i++) {
                for (int j = 0; held[i] && j < slopes.getRowDimension(); j++) {
                    slopes.setEntry(j, i, 0);
                }
            }
            updates = 0;
        }

        @Override
        public Pair<RealVector, RealMatrix> value(RealVector point) {
            return new Pair<>(computeValue(point.toArray()), computeJacobian(point.toArray()));
        }

        @Override
        public RealVector computeValue(double[] position) {
            return new ArrayRealVector(residuals(position));
        }

        @Override
        public RealMatrix computeJacobian(double[] position) {
            double[] here = residuals(position).clone();
            double[] home = position.clone();
            if (at == null && slopes != null) {
                updates++;
            } else if (updates < effort.updates && !Arrays.equals(home, at)) {
                slopes = updated(home, here);
                updates++;
            } else {
                slopes = differences(home, here);
                updates = 0;
            }
            at = home;
            there = here;
            return slopes.copy();
        }

        /** The slopes nearest to those before that the last step agrees with. */
        private RealMatrix updated(double[] home, double[] here) {
            RealVector step = new ArrayRealVector(home, false).subtract(new ArrayRealVector(at, false));
            RealVector missed = new ArrayRealVector(here, false)
                    .subtract(new ArrayRealVector(there, false))
                    .subtract(slopes.operate(step));
            return slopes.add(missed.mapDivide(step.dotProduct(step)).outerProduct(step));
        }

        private RealMatrix differences(double[] home, double[] found) {
            double[] here = sloping == trial ? found : sloping.residuals(home).clone();
            RealMatrix jacobian = new Array2DRowRealMatrix(here.length, home.length);
            for (int i = home.length - 1; i >= 0; i--) {
                if (held[i]) {
                    continue;
                }
                double[] aside = home.clone();
                aside[i] += DIFFERENCE;
                if (trial.clamp(aside)[i] != aside[i]) {
                    aside[i] = home[i] - DIFFERENCE;
                }
                double[] moved = sloping == trial ? residuals(aside) : sloping.residuals(aside);
                for (int j = 0; j < here.length; j++) {
                    jacobian.setEntry(j, i, (moved[j] - here[j]) / (aside[i] - home[i]));
                }
            }
            return jacobian;
        }
    }
}
