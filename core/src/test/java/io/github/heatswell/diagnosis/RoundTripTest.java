package io.github.heatswell.diagnosis;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Regression: logs made by the library itself from a known cause, read by the diagnosis. More houses are looked at with {@code
 * -Dtest.jvm.options=-Ddiagnosis.cases=200}, and others from another {@code diagnosis.from} on. With the true cause alone fitted to 216 logs (the houses 1000 to 1269 whose cause has
 * numbers), 162 of 166 carried numbers lay inside their 95 % interval; in 8 searches the end was worse than the truth.
 */
class RoundTripTest {

    private static final int ORDINARY = 5;
    private static final int CASES = Integer.getInteger("diagnosis.cases", ORDINARY);
    private static final int FROM = Integer.getInteger("diagnosis.from", 0);

    private int telling;
    private int right;
    private int numbers;
    private int inside;
    private int misfits;

    /**
     * Where the log can tell, the cause must be found. It can tell if no other cause comes as close as the truth does, by the
     * criterion the diagnosis uses, so that an unfinished search for the right cause counts as a failure.
     */
    @Test
    void findsTheCauseAndItsNumbers() {
        List<String> wrong = new ArrayList<>();
        for (int seed = FROM; seed < FROM + CASES; seed++) {
            KnownTruth known = KnownTruth.random(seed);
            DiagnosisResult found = Diagnosis.builder(known.described())
                    .log(known.log())
                    .build()
                    .run();
            String line = look(known, found);
            misfits += found.misfit() ? 1 : 0;
            if (!line.isEmpty()) {
                wrong.add(seed + line);
            }
        }
        String summary = "right " + right + " of " + telling + ", inside " + inside + " of " + numbers + ", misfits "
                + misfits + " of " + CASES + ": " + wrong;
        if (CASES > ORDINARY) {
            System.out.println(summary); // a long look is for reading
        }
        assertTrue(telling >= CASES / 3, summary);
        assertTrue(right >= 0.95 * telling, summary);
        assertTrue(inside >= 0.9 * numbers - 1, summary);
        assertTrue(misfits <= 0.05 * CASES + 1, summary);
    }

    private String look(KnownTruth known, DiagnosisResult found) {
        Cause truth = known.truth().cause();
        double logarithm = Math.log(known.log().count());
        double atTruth = known.costAtTruth() + known.truth().open().size() * logarithm;
        double others = Double.POSITIVE_INFINITY;
        for (HypothesisFit fit : found.fits()) {
            long open = Hypotheses.of(known.described()).stream()
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
