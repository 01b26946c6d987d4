package io.github.heatswell.diagnosis;

import io.github.heatswell.system.HotWaterSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/**
 * Counts how often the diagnosis of a log of known truth is right.
 *
 * <p>Where the log can tell, the cause must be found. It can tell if no other cause comes as close as the truth does, by
 * the criterion the diagnosis uses, so that an unfinished search for the right cause counts as a failure.
 */
public final class RoundTrips {

    /** How long a log is (h). */
    public static final double HOURS = KnownTruth.HOURS;

    private final Function<HotWaterSystem, double[]> gauge;
    private final List<String> wrong = new ArrayList<>();
    private int cases;
    private int telling;
    private int right;
    private int numbers;
    private int inside;
    private int misfits;

    /**
     * Begins to count.
     *
     * @param gauge what a perfect gauge in a house shows (Pa, gauge), once a minute over the hours of a log
     */
    public RoundTrips(Function<HotWaterSystem, double[]> gauge) {
        this.gauge = gauge;
    }

    /**
     * Draws a case, diagnoses its log, and counts.
     *
     * @param seed the same case comes from the same seed
     */
    public void add(long seed) {
        KnownTruth known = KnownTruth.random(seed, gauge);
        DiagnosisResult found =
                Diagnosis.builder(known.described()).log(known.log()).build().run();
        String line = look(known, found);
        cases++;
        misfits += found.misfit() ? 1 : 0;
        if (!line.isEmpty()) {
            wrong.add(seed + line);
        }
    }

    /** {@return whether a cause was found as often, and numbers lay in their intervals as often, as is promised} */
    public boolean keepsItsPromise() {
        return 3 * telling >= cases
                && right >= 0.95 * telling
                && inside >= 0.9 * numbers - 1
                && misfits <= 0.05 * cases + 1;
    }

    /** {@return the counts, and what was wrong, in words} */
    @Override
    public String toString() {
        return "right " + right + " of " + telling + ", inside " + inside + " of " + numbers + ", misfits " + misfits
                + " of " + cases + ": " + wrong;
    }

    private String look(KnownTruth known, DiagnosisResult found) {
        Cause truth = known.truth().cause();
        double logarithm = Math.log(known.log().count());
        double atTruth = known.costAtTruth() + known.truth().open().size() * logarithm;
        double others = Double.POSITIVE_INFINITY;
        for (HypothesisFit fit : found.fits()) {
            long open = Hypothesis.of(known.described()).stream()
                    .filter(h -> h.cause() == fit.cause())
                    .mapToLong(h -> h.open().size())
                    .max()
                    .orElseThrow();
            if (fit.cause() != truth) {
                others = Math.min(others, fit.sumOfSquares() + open * logarithm);
            }
        }
        String line = "";
        if (others > atTruth + DiagnosisResult.ALIKE) {
            telling++;
            boolean hit = found.best().cause() == truth;
            right += hit ? 1 : 0;
            line = hit ? "" : " " + truth + " taken for " + found.best().cause();
        }
        return line + numbers(known, found.of(truth).orElseThrow());
    }

    private String numbers(KnownTruth known, HypothesisFit fit) {
        StringBuilder line = new StringBuilder();
        for (int i = 0; i < fit.ownNumbers(); i++) {
            Estimate estimate = fit.estimates().get(i);
            if (estimate.standing() != Estimate.Standing.NOT_CARRIED) {
                numbers++;
                boolean hit = estimate.contains(known.values()[i]);
                inside += hit ? 1 : 0;
                line.append(hit ? "" : " " + known.values()[i] + " not in " + estimate);
            }
        }
        return line.toString();
    }
}
