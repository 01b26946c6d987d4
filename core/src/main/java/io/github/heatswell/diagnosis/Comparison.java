package io.github.heatswell.diagnosis;

import io.github.heatswell.simulation.Workers;
import io.github.heatswell.system.DrawProfile;
import io.github.heatswell.system.HotWaterSystem;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Fits every hypothesis, puts them in order, and looks closer at those that explain the readings about as well as the best. */
final class Comparison {

    /** Hypotheses further behind than this get no intervals of their own. */
    private static final double FAR_BEHIND = 20;

    /** A hypothesis whose sum of squares is within this of the least may still win when looked at closely. */
    private static final double CONTENDING = 1.3;

    private static final double CLOSE = 40;

    /**
     * A cause whose first look ends at more than so many times the least sum of squares is followed no further: of 90 causes, no second
     * look brought one from beyond that to the best.
     */
    private static final double LOST = 5;

    /** Where the best still lies at so many times one for each residual, nothing explains them, and no profile is worth its runs. */
    private static final double HOPELESS = 3;

    /** So many causes are looked at thoroughly after the first look at all. */
    private static final int THOROUGHLY = 4;

    /**
     * How much larger the variance of an estimate is than the curvature of the sum of squares says, because valves that open and
     * close make that sum rough. Not derived but chosen on 60 logs of known truth. On 216 others, the true cause alone fitted, 162
     * of 166 intervals made with it hold the truth.
     */
    private static final double ROUGHNESS = 2.25;

    /** So many causes are looked at closely even if far behind, though not {@link #LOST}, where the description is not the best. */
    private static final int RUNNERS_UP = 3;

    /** A check is sought that tells the best from one of so many. */
    private static final int TOLD_APART = 3;

    /** So many causes that come closest alone are tried with each of the others beside them. */
    private static final int BEGUN_WITH = 3;

    /** So many pairs are looked at closely. */
    private static final int CLOSEST_PAIRS = 3;

    /** Of so many houses with a fault one has a second beside it (-), which makes two that much less likely beforehand; our own judgement. */
    private static final double SECOND_FAULT = 20;

    /** So many readings that speak most for a hazard, and as many that stand most alone, are tried to count for nothing before it is called. */
    private static final int TELLING = 2;

    private static final int MAX_ROUNDS = 3;
    /** A gain in the sum of squares below this changes no conclusion. */
    private static final double WORTH_IT = 0.5;

    /** Two faults whose sums of squares differ by less (-) fit equally well: odds of less than two to one; our own judgement. */
    private static final double EQUALLY_WELL = 1;

    private static final double LITTLE_CORRELATION = 0.1;

    /** So many causes are looked at a second time. */
    private static final int LEADING = 3;

    private static final double EVEN = 0.5;

    /**
     * A cause that the second look brings closer by more than this (-) keeps the numbers of that look. Otherwise it keeps those of the
     * first, whose intervals are worked out with less left open.
     */
    private static final double NUMBERS_DIFFER = 4;

    private final HotWaterSystem house;
    private final Target target;
    private final Workers workers;

    Comparison(HotWaterSystem house, Target target, int threads) {
        this(house, target, Workers.of(threads));
    }

    private Comparison(HotWaterSystem house, Target target, Workers workers) {
        this.house = house;
        this.target = target;
        this.workers = workers;
    }

    /** A hypothesis with the end of its search. */
    private record Ended(Trial trial, Search.End end, List<Profile> profiles) {

        /** The same cause with another end of its search. */
        Ended at(Search.End other) {
            return new Ended(trial, other, profiles);
        }

        Place place() {
            return new Place(trial, end.position());
        }

        double[] circumstances(Trial other) {
            return place().circumstances(other);
        }

        /** Whether every other hypothesis contains this one as its slightest case, so that none may come closer for want of a search. */
        boolean isContained() {
            return trial.hypothesis().cause() == Cause.AS_DESCRIBED;
        }

        boolean isPair() {
            return trial.hypothesis().also().isPresent();
        }

        /** The same cause held against other readings of the same log, from its place and from its starts. */
        Ended lookedAtAgain(Target other) {
            Trial again = trial.against(other);
            Ended fresh = new Ended(again, Search.quickly(again, circumstances(again)), List.of());
            return first(List.of(within(again), fresh));
        }

        /** The same cause at the same place in a trial that leaves draws open as well, none of which was. */
        Ended within(Trial drawn) {
            double[] position = new double[drawn.parameters().size()];
            int own = drawn.hypothesis().open().size();
            System.arraycopy(end.position(), 0, position, 0, own);
            double[] circumstances = circumstances(drawn);
            System.arraycopy(circumstances, 0, position, own, circumstances.length);
            for (int draw : drawn.guessed().toArray()) {
                position = place().leavesOpen(draw, drawn) ? position : drawn.without(draw, position);
            }
            double cost = Trial.sumOfSquares(drawn.residuals(position));
            return new Ended(drawn, new Search.End(position, cost, false, end.rough()), List.of());
        }

        /** With another cause beside it, which is still to be searched. */
        Ended beside(Ended other) {
            Trial both = trial.of(trial.hypothesis().and(other.trial.hypothesis()));
            int own = trial.hypothesis().open().size();
            double[] position = new double[both.parameters().size()];
            System.arraycopy(end.position(), 0, position, 0, own);
            System.arraycopy(
                    other.end.position(),
                    0,
                    position,
                    own,
                    both.hypothesis().open().size() - own);
            double[] circumstances = circumstances(both);
            System.arraycopy(circumstances, 0, position, position.length - circumstances.length, circumstances.length);
            return new Ended(both, new Search.End(position, Double.POSITIVE_INFINITY), List.of());
        }

        double criterion(double inflation) {
            int open = trial.hypothesis().numbers() + trial.guessedDraws(end.position());
            return end.cost() / inflation
                    + open * Math.log(Math.max(2, trial.target().readings()))
                    + (isPair() ? 2 * Math.log(SECOND_FAULT) : 0);
        }
    }

    /** Every cause compared with the readings; where one stands out, the first of them a second time. */
    DiagnosisResult of(List<Hypothesis> hypotheses) {
        HotWaterSystem undrawn = undrawn();
        List<Ended> ends = withPairs(undrawn == house ? ofLogger(hypotheses) : byHand(hypotheses, undrawn));
        DiagnosisResult found = result(compared(ends));
        return accuses(found) ? result(weaker(found.fits(), secondLook(ends, found.fits()))) : found;
    }

    /** Whether somebody would act on an answer: a fault that stands alone, none but such of the vessel, or a hazard that is likelier than not. */
    private static boolean accuses(DiagnosisResult found) {
        HypothesisFit best = found.best();
        boolean ofVessel = found.alike().stream().allMatch(fit -> fit.cause().isOfVessel());
        return best.cause() != Cause.AS_DESCRIBED
                && best.also().isEmpty()
                && !found.misfit()
                && (found.alike().size() == 1 || ofVessel || best.isHazard() && best.weight() > EVEN);
    }

    /**
     * The first few causes, the house as described and water that is too hot, with every draw that may have left a mark, and with what is
     * only described less sure. A fault is named only if that leaves it alone too.
     */
    private List<HypothesisFit> secondLook(List<Ended> ends, List<HypothesisFit> found) {
        Target doubted = target.withDoubts();
        List<Ended> leading = ends.stream()
                .filter(one -> one.isContained()
                        || one.trial.hypothesis().cause() == Cause.WATER_TOO_HOT
                        || found.stream().limit(LEADING).anyMatch(one.trial.hypothesis()::isOf))
                .toList();
        Comparison doubting = new Comparison(house, doubted, workers);
        return doubting.compared(doubting.followed(workers.map(leading, one -> one.lookedAtAgain(doubted))));
    }

    /** Of two looks the one that leaves more open: each cause as close to the best as in the better of both. */
    static List<HypothesisFit> weaker(List<HypothesisFit> first, List<HypothesisFit> second) {
        List<HypothesisFit> closer = first.stream()
                .map(fit -> second.stream()
                        .filter(other -> other.isSame(fit))
                        .findFirst()
                        .map(other -> other.criterion() < fit.criterion() - NUMBERS_DIFFER
                                ? other
                                : fit.at(Math.min(fit.criterion(), other.criterion()), fit.weight()))
                        .orElse(fit))
                .sorted(Comparator.comparingDouble(
                        fit -> fit.criterion() - (fit.cause() == Cause.AS_DESCRIBED ? WORTH_IT : 0)))
                .toList();
        double sum = closer.stream()
                .mapToDouble(fit -> Math.exp(-fit.criterion() / 2))
                .sum();
        return closer.stream()
                .map(fit -> fit.at(fit.criterion(), Math.exp(-fit.criterion() / 2) / sum))
                .toList();
    }

    /**
     * Of few readings by hand nobody knows what was drawn between two of them, least of all by a usual day of the description: they are
     * first read without it, with the draws they show themselves.
     */
    private List<Ended> byHand(List<Hypothesis> hypotheses, HotWaterSystem undrawn) {
        List<Ended> first = followed(screened(hypotheses, undrawn, target, beforeDraws(hypotheses, undrawn)));
        boolean explained =
                first.stream().anyMatch(end -> end.isContained() && isAlike(end, first, 1) && !leavesOff(end));
        if (explained) {
            return first;
        }
        List<Ended> second = followed(screened(hypotheses, house, target.asNoted(), Optional.empty()));
        return better(first, second);
    }

    /**
     * A logger's readings show draws that nobody described only where nothing else explains them: where ordinary expansion does without,
     * there are none. Every cause may do without too.
     */
    private List<Ended> ofLogger(List<Hypothesis> hypotheses) {
        List<Ended> screened = screened(hypotheses, house, target.asNoted(), Optional.empty());
        if (!target.draws().anyGuessed()) {
            return followed(screened);
        }
        boolean ordinary = isOrdinary(screened);
        List<Ended> dry = ordinary ? followed(screened) : screened;
        if (ordinary && first(dry).isContained() && !leavesOff(first(dry))) {
            return dry;
        }
        List<Ended> drawn = screened(hypotheses, house, target, beforeDraws(hypotheses, house));
        return followed(IntStream.range(0, dry.size())
                .mapToObj(i -> first(List.of(drawn.get(i), dry.get(i).within(drawn.get(i).trial))))
                .toList());
    }

    /** Whether the house as described explains the readings as it is, and no cause comes clearly closer at a first look. */
    private boolean isOrdinary(List<Ended> screened) {
        Ended described = screened.get(0);
        if (!described.isContained()) {
            return false;
        }
        double[] circumstances = closest(screened).circumstances(described.trial);
        Ended closer = described.at(Search.widely(described.trial, described.end, circumstances));
        return !leavesOff(closer)
                && screened.stream().allMatch(other -> closer.criterion(1) < other.criterion(1) + WORTH_IT);
    }

    /**
     * With two causes at once, where no single one explains what a logger recorded. A pair that leaves readings unexplained too is none.
     * Where water may have been drawn otherwise than somebody noted, it is that which is not explained, and no pair is tried.
     */
    private List<Ended> withPairs(List<Ended> singles) {
        boolean known = house.draws().draws().isEmpty() && !target.draws().anyGuessed();
        if (!known
                || target.log() == null
                || !target.log().tellsItsScatter()
                || singles.stream().anyMatch(one -> isAlike(one, singles, 1) && !leavesOff(one))) {
            return singles;
        }
        List<Ended> faults = singles.stream()
                .sorted(Comparator.comparingDouble(e -> e.criterion(1)))
                .toList();
        List<Ended> pairs = IntStream.range(0, Math.min(BEGUN_WITH, faults.size()))
                .boxed()
                .flatMap(i -> faults.stream()
                        .skip(i + 1L)
                        .filter(other -> faults.get(i).trial.hypothesis().goesWith(other.trial.hypothesis()))
                        .map(other -> faults.get(i).beside(other)))
                .toList();
        List<Ended> closest =
                workers.map(pairs, pair -> pair.at(Search.beside(pair.trial, pair.end.position()))).stream()
                        .sorted(Comparator.comparingDouble(e -> e.criterion(1)))
                        .limit(CLOSEST_PAIRS)
                        .toList();
        List<Ended> explaining =
                workers.map(closest, pair -> pair.at(Search.closer(pair.trial, pair.end, new double[0]))).stream()
                        .filter(pair -> !leavesOff(pair))
                        .toList();
        return Stream.concat(
                        singles.stream(),
                        workers.map(explaining, Comparison::profiled).stream().filter(pair -> !leavesOff(pair)))
                .toList();
    }

    /** The house, without the draws of its description where readings by hand tell of their own. */
    private HotWaterSystem undrawn() {
        boolean byHand = target.log() != null && !target.log().tellsItsScatter();
        return byHand && !house.draws().draws().isEmpty()
                ? house.toBuilder().draws(DrawProfile.none()).build()
                : house;
    }

    /** Whether an end explains the readings about as well as the best of all. */
    private static boolean isAlike(Ended end, List<Ended> all, double inflation) {
        double least =
                all.stream().mapToDouble(one -> one.criterion(inflation)).min().orElseThrow();
        return end.criterion(inflation) < least + DiagnosisResult.ALIKE;
    }

    private static Ended first(List<Ended> all) {
        return all.stream().min(Comparator.comparingDouble(e -> e.criterion(1))).orElseThrow();
    }

    /** Of each cause the better end. */
    private static List<Ended> better(List<Ended> first, List<Ended> second) {
        return IntStream.range(0, first.size())
                .mapToObj(i -> first(List.of(first.get(i), second.get(i))))
                .toList();
    }

    /** A house as described, as the readings before the first draw have it: a beginning for a search with draws. */
    private Optional<Ended> beforeDraws(List<Hypothesis> hypotheses, HotWaterSystem described) {
        if (target.draws().isEmpty()) {
            return Optional.empty();
        }
        Ended quick = search(hypotheses.get(0), described, target.beforeDraws(), Optional.empty());
        return Optional.of(quick.at(Search.widely(quick.trial, quick.end, new double[0])));
    }

    /** A first look at every cause, begun from what others say of the circumstances too. */
    private List<Ended> screened(
            List<Hypothesis> hypotheses, HotWaterSystem described, Target readings, Optional<Ended> earlier) {
        return workers.map(hypotheses, hypothesis -> search(hypothesis, described, readings, earlier));
    }

    private static Ended closest(List<Ended> all) {
        return all.stream().min(Comparator.comparingDouble(e -> e.end.cost())).orElseThrow();
    }

    /** The ends of all searches, closer where a cause may still win. */
    private List<Ended> followed(List<Ended> screened) {
        Ended least = closest(screened);
        double lost = CLOSE
                + LOST * screened.stream().mapToDouble(e -> e.end.rough()).min().orElseThrow();
        List<Ended> alone = again(screened, least, lost);
        Ended nearest = closest(alone);
        List<Ended> second = workers.map(
                alone, ended -> ended.at(Search.sharing(ended.trial, ended.end, nearest.circumstances(ended.trial))));
        Ended better = closest(second);
        double among = first(second).isContained()
                ? Double.NEGATIVE_INFINITY
                : second.stream()
                        .mapToDouble(e -> e.criterion(1))
                        .sorted()
                        .limit(RUNNERS_UP)
                        .max()
                        .orElseThrow();
        List<Ended> all = workers.map(
                second,
                ended -> ended.end.rough() < lost && (ended.isContained() || ended.criterion(1) <= among)
                                || ended.end.cost() < CONTENDING * better.end.cost() + CLOSE
                        ? ended.at(Search.widely(ended.trial, ended.end, better.circumstances(ended.trial)))
                        : ended);
        List<Ended> extended = workers.map(all, ended -> extending(all.get(0), ended));
        double worth = contending(extended);
        boolean hopeless =
                first(extended).end.cost() > HOPELESS * better.trial.target().count();
        List<Ended> profiled =
                workers.map(extended, ended -> ended.criterion(1) < worth && !hopeless ? profiled(ended) : ended);
        List<Ended> near =
                workers.map(profiled, ended -> ended.isContained() ? nearTheBest(ended, profiled, worth) : ended);
        List<Ended> good = workers.map(near, ended -> extending(near.get(0), ended));
        Ended best = first(good);
        return workers.map(good, ended -> ended == best ? ended : asGoodAs(best, ended));
    }

    /**
     * The slightest case of most faults is the house as described, so that none is left behind that one for want of a search: each is
     * taken on from there, and from hotter water that expands as it does, wherever that is closer to the readings than its own end.
     */
    private static Ended extending(Ended described, Ended ended) {
        if (!described.isContained()
                || ended.isPair()
                || ended.trial.hypothesis().open().isEmpty()) {
            return ended;
        }
        Place simpler = described.place();
        return ended.at(
                Search.extending(ended.trial, ended.end, simpler.slightest(ended.trial), simpler.hotter(ended.trial)));
    }

    /** The gravest case of some faults is another: each is tried with what the best makes of everything else, and followed where that helps. */
    private static Ended asGoodAs(Ended best, Ended ended) {
        if (ended.end.cost() <= best.end.cost() + WORTH_IT) {
            return ended;
        }
        Search.End shared = Search.sharing(ended.trial, ended.end, best.circumstances(ended.trial));
        return shared == ended.end || shared.cost() > CONTENDING * best.end.cost() + CLOSE
                ? ended.at(shared)
                : profiled(ended.at(Search.closer(ended.trial, shared, new double[0])));
    }

    private static Ended search(
            Hypothesis hypothesis, HotWaterSystem described, Target readings, Optional<Ended> earlier) {
        Trial trial = new Trial(described, hypothesis, readings);
        double[] circumstances =
                earlier.map(ended -> ended.circumstances(trial)).orElse(new double[0]);
        return new Ended(trial, Search.quickly(trial, circumstances), List.of());
    }

    /**
     * A cause that leaves something unexplained is tried once more with the circumstances of the one that came closest, thoroughly
     * if it is among the first; the house as described unless it is lost, so that no fault is named for want of a search.
     */
    private List<Ended> again(List<Ended> screened, Ended least, double lost) {
        double worth = screened.stream()
                .mapToDouble(e -> e.criterion(1))
                .sorted()
                .limit(THOROUGHLY)
                .max()
                .orElseThrow();
        double explained = CONTENDING * screened.get(0).trial.target().count();
        return workers.map(screened, ended -> {
            boolean stays = ended.end.cost() < explained && !ended.isContained() || ended.end.rough() > lost;
            if (stays) {
                return ended;
            }
            boolean thorough = ended.isContained() || ended.criterion(1) <= worth;
            double[] circumstances = least.circumstances(ended.trial);
            return ended.at(
                    Search.again(ended.trial, ended.end, circumstances, thorough, CLOSE + LOST * least.end.cost()));
        });
    }

    /** The search went on for others; with what they say of the circumstances it may come closer too. */
    private static Ended nearTheBest(Ended ended, List<Ended> all, double worth) {
        Search.End end = ended.end;
        for (Ended other : all) {
            if (other.end.cost() < end.cost() - WORTH_IT && other.criterion(1) < worth) {
                end = Search.closer(ended.trial, end, other.circumstances(ended.trial));
            }
        }
        return ended.at(end);
    }

    /** The criterion below which a hypothesis is looked at along its profiles. */
    private static double contending(List<Ended> all) {
        return all.stream().mapToDouble(e -> e.criterion(1)).min().orElseThrow() + FAR_BEHIND;
    }

    /** With the profile of each number of the cause; where one of them finds a better place, from there anew. */
    private static Ended profiled(Ended ended) {
        Trial trial = ended.trial;
        Search.End end = ended.end;
        List<Profile> profiles = List.of();
        for (int round = 0; round < MAX_ROUNDS; round++) {
            profiles = profiles(trial, end);
            Search.End best = end;
            for (Profile profile : profiles) {
                best = profile.best().cost() < best.cost() ? profile.best() : best;
            }
            if (end.cost() - best.cost() < WORTH_IT) {
                break;
            }
            end = Search.closer(trial, best, new double[0]);
        }
        return new Ended(trial, end, profiles);
    }

    private static List<Profile> profiles(Trial trial, Search.End end) {
        int open = trial.hypothesis().open().size();
        if (open == 0) {
            return List.of();
        }
        Slopes slopes = new Intervals(trial, end, 1).slopes();
        List<Profile> profiles = new ArrayList<>();
        for (int i = 0; i < open; i++) {
            profiles.add(Profile.of(trial, end, i, slopes));
        }
        return profiles;
    }

    /**
     * With the profile of the water at first, where nothing says how warm it was: thermometer, tank and start of the heat-up make up for
     * it along a ridge so bent that no slope at the end tells how long it is. Where no thermometer was read, with that of the water at the
     * end too, by the readings alone: nobody is to take what the dial says for what a gauge has shown.
     */
    private List<Profile> withTemperatures(Ended ended) {
        Trial trial = ended.trial;
        int warmth = trial.index(Parameter.START_TEMPERATURE);
        int hot = trial.index(Parameter.SET_POINT);
        boolean warmthOpen = warmth >= 0 && trial.parameters().get(warmth).isOpen();
        boolean hotUnread = trial.heatUnread() && !trial.heatHidden(ended.end.position());
        if (!warmthOpen && !hotUnread) {
            return ended.profiles;
        }
        Slopes slopes = new Intervals(trial, ended.end, 1).slopes();
        List<Profile> profiles = new ArrayList<>(ended.profiles);
        if (warmthOpen) {
            profiles.add(Profile.of(trial, ended.end, warmth, slopes));
        }
        if (hotUnread) {
            profiles.add(Profile.of(trial, ended.end, hot, slopes).asRead());
        }
        return profiles;
    }

    /** The causes in order; the house as described goes before one without numbers of its own that does no better. */
    private List<HypothesisFit> compared(List<Ended> all) {
        double least = all.stream().mapToDouble(e -> e.end.cost()).min().orElseThrow();
        // what is known beforehand of a parameter is a reading that makes up for it
        long circumstances = all.get(0).trial.parameters().stream()
                .filter(FreeParameter::isOpen)
                .count();
        double inflation = Math.max(1, least / Math.max(1, target.count() - circumstances));
        // of those alike, one that leaves readings unexplained explains them less well, whatever its sum of squares
        Ended best = all.stream()
                .min(Comparator.<Ended, Boolean>comparing(e -> !isAlike(e, all, inflation) || leavesOff(e))
                        .thenComparing(e -> e.criterion(inflation) - (e.isContained() ? WORTH_IT : 0)))
                .orElseThrow();
        Forecaster.Forecast forecast = best.trial.forecast(best.end.position());
        double doubtful = withoutOneReading(all, best, inflation);
        ToDoubleFunction<Ended> alone = ended -> {
            double whole = behind(ended, best, inflation);
            return ended.isContained() ? Math.min(whole, doubtful) : whole;
        };
        ToDoubleFunction<Ended> behind = ended -> all.stream()
                .filter(other -> isTwin(ended, other))
                .mapToDouble(alone)
                .reduce(alone.applyAsDouble(ended), Math::min);
        List<Ended> order = Stream.concat(
                        Stream.of(best),
                        all.stream()
                                .filter(e -> e != best)
                                .sorted(Comparator.comparingDouble(
                                        e -> behind.applyAsDouble(e) - (e.isContained() ? WORTH_IT : 0))))
                .toList();
        double sum = order.stream()
                .mapToDouble(e -> Math.exp(-behind.applyAsDouble(e) / 2))
                .sum();
        return workers.map(order, ended -> {
            double after = behind.applyAsDouble(ended);
            return fit(ended, after, Math.exp(-after / 2) / sum, forecast);
        });
    }

    /** With the check that tells the first of them apart. */
    private DiagnosisResult result(List<HypothesisFit> fits) {
        double uncertainty = target.log() == null ? Double.NaN : target.log().uncertainty();
        DiagnosisResult unchecked = new DiagnosisResult(
                fits, target.readings(), uncertainty, target.balances().sum(), Optional.empty(), List.of());
        Optional<SeparatingCheck> check = check(unchecked);
        return new DiagnosisResult(
                fits, target.readings(), uncertainty, target.balances().sum(), check, List.of());
    }

    /**
     * How little the description lies behind a hazard if one of few readings by hand counts for nothing: a slip of the pen, or a needle
     * that stuck for once, calls no hazard. Looked at are those readings that speak most for the hazard or stand most alone. Infinite
     * where the best is no hazard, or the description is not far behind it.
     */
    private double withoutOneReading(List<Ended> all, Ended best, double inflation) {
        Ended described = all.stream().filter(Ended::isContained).findFirst().orElse(best);
        if (!best.trial.hypothesis().cause().isHazard()
                || target.log() == null
                || target.log().tellsItsScatter()
                || described == best
                || behind(described, best, inflation) < DiagnosisResult.ALIKE) {
            return Double.POSITIVE_INFINITY;
        }
        double[] ofBest = target.squares(best.trial.forecast(best.end.position()));
        double[] ofDescribed = target.squares(described.trial.forecast(described.end.position()));
        // one that stands alone bends the whole course and is met itself, so that others seem to speak
        List<Integer> telling = Stream.concat(
                        readings(Comparator.comparingDouble(i -> ofBest[i] - ofDescribed[i])),
                        readings(Comparator.comparingDouble(i -> -alone(i))))
                .distinct()
                .toList();
        return workers.map(telling, reading -> apart(described, best, reading)).stream()
                .mapToDouble(apart -> Math.max(0, apart / inflation))
                .min()
                .orElseThrow();
    }

    /** The first few readings of the log in an order. */
    private Stream<Integer> readings(Comparator<Integer> order) {
        return IntStream.range(0, target.log().count()).boxed().sorted(order).limit(TELLING);
    }

    /** Whether one cause looks like another, of which only the gauge was read. */
    private boolean isTwin(Ended one, Ended other) {
        return one.trial.hypothesis().looksLike(other.trial.hypothesis())
                && target.spots().all().keySet().stream().allMatch(SiteCheck::byLoggedGauge)
                && (target.log() == null || target.log().sightings().isEmpty());
    }

    /** How far (s) a reading is from the nearest other. */
    private double alone(int i) {
        PressureLog log = target.log();
        double before = i == 0 ? Double.POSITIVE_INFINITY : log.time(i) - log.time(i - 1);
        double after = i == log.count() - 1 ? Double.POSITIVE_INFINITY : log.time(i + 1) - log.time(i);
        return Math.min(before, after);
    }

    /** How far (-) the description lies behind another cause, both searched anew, where a reading counts for nothing. */
    private static double apart(Ended described, Ended best, int reading) {
        Ended other = without(best, best, reading);
        return without(described, best, reading).criterion(1) - other.criterion(1);
    }

    private static Ended without(Ended ended, Ended best, int reading) {
        Trial trial = ended.trial.without(reading);
        double[] position = ended.end.position();
        Search.End here = new Search.End(position, Trial.sumOfSquares(trial.residuals(position)));
        Search.End fresh = Search.quickly(trial);
        Search.End from = fresh.cost() < here.cost() ? fresh : here;
        return new Ended(trial, Search.closer(trial, from, best.circumstances(trial)), List.of());
    }

    /**
     * How far a cause lies behind the best. Of two faults that fit equally well, the number of their parameters settles nothing: a second
     * number that the readings do not carry makes a fault no less likely. Only the description needs no fault beside it.
     */
    private static double behind(Ended ended, Ended best, double inflation) {
        return behind(
                ended.criterion(inflation) - best.criterion(inflation),
                (ended.end.cost() - best.end.cost()) / inflation,
                !best.isContained() && !ended.isContained() && best.isPair() == ended.isPair());
    }

    /**
     * The same.
     *
     * @param criterion the difference of the criteria
     * @param squares that of the sums of squares
     * @param faults whether both are faults
     */
    static double behind(double criterion, double squares, boolean faults) {
        double behind = Math.max(0, criterion);
        double apart = Math.max(0, squares);
        return faults && apart <= EQUALLY_WELL ? Math.min(behind, EQUALLY_WELL + apart) : behind;
    }

    /**
     * What tells the best from the first possible of those that the readings test but leave open, or else from the next. Where the
     * gauge may be dead, another gauge comes before any check.
     */
    private Optional<SeparatingCheck> check(DiagnosisResult found) {
        if (found.mayBeDeadGauge()) {
            return Optional.empty();
        }
        List<HypothesisFit> untested = found.untested();
        List<HypothesisFit> open = found.alike().stream()
                .skip(1)
                .filter(fit -> !untested.contains(fit))
                .limit(TOLD_APART)
                .toList();
        Set<SiteCheck> done = done();
        return (open.isEmpty() ? found.fits().stream().skip(1).limit(1) : open.stream())
                .map(other -> SeparatingCheck.between(
                        found.best(), other, other.criterion() <= 0 ? byOtherMeans(done) : done, target.balances()))
                .flatMap(Optional::stream)
                .findFirst();
    }

    /** Without any check by a gauge, which shows the same of both. */
    private static Set<SiteCheck> byOtherMeans(Set<SiteCheck> done) {
        return EnumSet.allOf(SiteCheck.class).stream()
                .filter(check -> done.contains(check) || check.byLoggedGauge())
                .collect(Collectors.toCollection(() -> EnumSet.noneOf(SiteCheck.class)));
    }

    /** What was read on site, or can be taken from the log: what its gauge shows need not be read of it again. */
    private Set<SiteCheck> done() {
        Set<SiteCheck> done = EnumSet.noneOf(SiteCheck.class);
        done.addAll(target.spots().all().keySet());
        if (target.log() != null && target.log().showsHeatUp()) {
            done.add(SiteCheck.COLD_STATIC);
            done.add(SiteCheck.HEAT_UP_MAXIMUM);
        }
        if (target.log() != null && target.log().end() >= SpotReadings.UNTIL_MORNING) {
            done.add(SiteCheck.NEXT_MORNING);
        }
        return done;
    }

    private Optional<Misfit> misfit(Ended ended, Forecaster.Forecast forecast, List<Misfit.Stray> strays) {
        int open = (int)
                ended.trial.parameters().stream().filter(FreeParameter::isOpen).count();
        return Optional.ofNullable(target.log())
                .map(log ->
                        new Misfit.Residuals(target, forecast).misfit(ended.end.cost(), target.count(), open, strays));
    }

    /** Whether an end leaves readings unexplained. */
    private boolean leavesOff(Ended ended) {
        double[] position = ended.end.position();
        return target.log() != null
                && misfit(ended, ended.trial.forecast(position), ended.trial.strays(position))
                        .filter(Misfit::isSerious)
                        .isPresent();
    }

    private HypothesisFit fit(Ended ended, double behind, double weight, Forecaster.Forecast best) {
        Trial trial = ended.trial;
        double[] position = ended.end.position();
        Forecaster.Forecast forecast = trial.forecast(position);
        List<Misfit.Stray> strays = target.log() == null ? List.of() : trial.strays(position);
        Optional<Misfit> misfit = misfit(ended, forecast, strays);
        List<Estimate> estimates = behind > FAR_BEHIND
                ? List.of()
                : new Intervals(
                                trial,
                                ended.end,
                                misfit.map(Comparison::inflation).orElse(ROUGHNESS))
                        .estimates(behind > 0 ? ended.profiles : withTemperatures(ended));
        return new HypothesisFit(
                trial.hypothesis().cause(),
                trial.hypothesis().device(),
                trial.hypothesis().also().map(second -> new HypothesisFit.Also(second.cause(), second.device())),
                ended.end.cost(),
                behind,
                weight,
                estimates,
                Math.min(estimates.size(), trial.hypothesis().open().size()),
                misfit,
                new Evidence.Finder(target, best).about(forecast, strays),
                trial.house(position),
                Arrays.stream(forecast.gauge()).boxed().toList(),
                trial.course(position));
    }

    /**
     * How much larger the variance of an estimate is than the uncertainty of the readings says. Residuals that follow each other
     * carry less than as many that do not.
     */
    static double inflation(Misfit misfit) {
        double correlation = Math.min(0.95, misfit.correlation());
        double fewer = correlation > LITTLE_CORRELATION ? (1 + correlation) / (1 - correlation) : 1;
        return Math.max(1, misfit.reduced()) * fewer * ROUGHNESS;
    }
}
