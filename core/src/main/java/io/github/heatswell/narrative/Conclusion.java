package io.github.heatswell.narrative;

import io.github.heatswell.diagnosis.Cause;
import io.github.heatswell.diagnosis.DiagnosisResult;
import io.github.heatswell.diagnosis.HypothesisFit;
import io.github.heatswell.diagnosis.Misfit;
import io.github.heatswell.diagnosis.PressureLog;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.Supply;
import java.util.Optional;
import java.util.stream.IntStream;

/** How far readings settle the cause. Immutable. */
final class Conclusion {

    /** From this weight on a cause is called settled; our own judgement. */
    private static final double SETTLED = 0.9;

    /** What is called likely is likelier than not, and so many times as likely as anything else; our own judgement. */
    private static final double EVEN = 0.5;

    private static final double CLEARLY = 3;

    /** Two predictions that differ by less (Pa, difference) from readings that neither explains are equally far off; our own judgement. */
    private static final double INDISTINCT = 0.05e5;

    private final DiagnosisResult result;
    private final HotWaterSystem house;
    private final Optional<PressureLog> log;
    private final OrdinaryExpansion expansion;
    private final boolean doubted;

    Conclusion(
            DiagnosisResult result,
            HotWaterSystem house,
            Optional<PressureLog> log,
            OrdinaryExpansion expansion,
            boolean doubted) {
        this.result = result;
        this.house = house;
        this.log = log;
        this.expansion = expansion;
        this.doubted = doubted;
    }

    boolean isSettled() {
        return !doubted && result.isDecided() && result.best().weight() >= SETTLED;
    }

    /** Whether what is said, the house as described or the best cause, is likelier than not, clearly ahead, and leaves no reading off; no fault is where there may be none. */
    boolean isLikely() {
        Cause said = isAsDescribed() ? Cause.AS_DESCRIBED : result.best().cause();
        double weight = 0;
        double next = 0;
        for (HypothesisFit fit : result.fits()) {
            boolean same = fit.cause() == said && weight == 0;
            weight = same ? fit.weight() : weight;
            next = same ? next : Math.max(next, fit.weight());
        }
        boolean soundToo = said != Cause.AS_DESCRIBED
                && result.tested().stream().anyMatch(fit -> fit.cause() == Cause.AS_DESCRIBED && !isMissing(fit));
        return weight > EVEN && weight >= CLEARLY * next && !result.misfit() && !soundToo;
    }

    /** Whether several causes would explain the readings, and heated water has nowhere to go in any. */
    boolean isShared() {
        return result.tested().size() > 1 && isShut();
    }

    /** Whether heated water has nowhere to go in any of the causes that would explain the readings. */
    boolean isShut() {
        boolean described = expansion.isAnswer();
        boolean alone = house.vessels().size() == 1 && house.supply().arrangement() != Supply.Arrangement.DIRECT;
        return expansion.isHeated()
                && (described || alone)
                && result.tested().stream().allMatch(fit -> fit.shutsIn(described));
    }

    /**
     * Whether nearly all that comes close says that the only vessel does not do its work, and what keeps it from that is not settled. Where a
     * hazard would explain the readings too, nobody is to mend a vessel first.
     */
    boolean isOfVessel() {
        double vessel = result.fits().stream()
                .filter(fit -> fit.cause().isOfVessel() && fit.also().isEmpty())
                .mapToDouble(HypothesisFit::weight)
                .sum();
        return !doubted
                && house.vessels().size() == 1
                && expansion.isHeated()
                && !isSettled()
                && !isAsDescribed()
                && vessel >= SETTLED
                && result.tested().stream().noneMatch(HypothesisFit::isHazard)
                && !(result.isUnexplained() && isSoundAsClose());
    }

    /** Whether the house as described comes about as close as the faults of the vessel, by what the gauge shows or by what separates these. */
    private boolean isSoundAsClose() {
        double[] faults = result.alike().stream()
                .filter(fit -> fit.cause().isOfVessel())
                .mapToDouble(this::offBy)
                .sorted()
                .toArray();
        double worst = faults[faults.length - 1];
        double clearly = Math.max(worst - faults[0], INDISTINCT);
        return result.of(Cause.AS_DESCRIBED)
                .filter(sound -> offBy(sound) <= worst + clearly)
                .isPresent();
    }

    /** The root mean square (Pa, difference) of prediction less reading. */
    private double offBy(HypothesisFit fit) {
        return log.map(one -> Math.sqrt(IntStream.range(0, one.count())
                        .mapToDouble(i -> Math.pow(fit.gauge().get(i) - one.gauge(i), 2))
                        .average()
                        .orElseThrow()))
                .orElse(0.0);
    }

    /**
     * Whether the readings are explained without any fault: by the house as described, which comes first, or which explains them about
     * as well as the first and lets heated water go nowhere.
     */
    boolean isAsDescribed() {
        return result.best().cause() == Cause.AS_DESCRIBED
                || result.tested().stream().anyMatch(fit -> fit.cause() == Cause.AS_DESCRIBED && !isMissing(fit))
                        && expansion.isAnswer();
    }

    private static boolean isMissing(HypothesisFit fit) {
        return fit.misfit().filter(Misfit::isSerious).isPresent();
    }

    /** Whether there is a log, and neither it nor any reading shows a heat-up. */
    boolean isWithoutHeatUp() {
        return log.isPresent() && !expansion.isHeated();
    }

    /** Whether the gauge of a house that is shut in rests although the log says that the tank was heated. */
    boolean isUnmoved() {
        return house.supply().arrangement() != Supply.Arrangement.DIRECT
                && log.filter(PressureLog::restsWhileHeated).isPresent();
    }
}
